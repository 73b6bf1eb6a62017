import { DomainError } from '../../../shared/errors.ts';
import type { ForceCsv, ForceCsvOptions } from '../forceCsv.ts';
import { c3dPlates } from './c3dPlates.ts';
import { readC3d } from './readC3d.ts';

/**
 * The vertical forces of a C3D file as a force record, one column a plate. Nothing is filtered.
 * @throws DomainError as readC3d; 'input-missing' where the file has no plate, or not the one asked for
 */
export function c3dForce(bytes: Uint8Array, { columns, rateHz }: ForceCsvOptions): ForceCsv {
  const file = readC3d(bytes);
  const plates = c3dPlates(file);
  const usable = plates.flatMap(({ number, verticalN }) =>
    verticalN === null ? [] : [{ name: `plate ${number}`, forcesN: Array.from(verticalN) }],
  );
  const left = plates.flatMap(({ number, reason }) =>
    reason === null ? [] : [`Plate ${number} is left out: ${reason}.`],
  );
  const available = usable.map(({ name }) => name);
  if (available.length === 0) {
    throw new DomainError(
      'input-missing',
      `c3dForce needs a force plate in the C3D file. ${left.length === 0 ? 'The file names none.' : left.join(' ')}`,
    );
  }
  const strange = columns.find((column) => !available.includes(column));
  if (strange !== undefined) {
    throw new DomainError(
      'input-missing',
      `c3dForce finds no ${strange} in the file; there is ${available.join(', ')}.`,
      `column ${strange}`,
    );
  }
  const chosen = columns.length === 0 ? usable.slice(0, 4) : usable.filter(({ name }) => columns.includes(name));
  return {
    available,
    columns: chosen.map(({ name }) => name),
    rateHz: rateHz ?? file.analogRateHz,
    plates: chosen.map(({ forcesN }) => forcesN),
    warnings: [...file.warnings, ...left],
  };
}
