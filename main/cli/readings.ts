import { quantityText } from '../../shared/format/number.ts';
import { inUnit, isKnown, quantityToJson, type Reading } from '../../shared/quantity.ts';
import type { Unit } from '../../shared/units.ts';
import type { Output } from './command.ts';

/** One line of an answer: key for programs, label for people, and the unit people are used to. */
export interface Row {
  readonly key: string;
  readonly label: string;
  readonly reading: Reading | null;
  readonly shownIn?: Unit;
}

/**
 * A value that is not known is null, with the reason beside it under `<key>Reason`; an uncertainty that is not known is
 * null, with the reason under `<key>UReason`. Programs get SI units, except angles: those are in degrees on the way in, so they are
 * on the way out.
 */
export function readingsToJson(rows: readonly Row[]): Record<string, unknown> {
  return Object.fromEntries(
    rows.flatMap(({ key, reading }): [string, unknown][] => {
      if (reading === null) return [[key, null]];
      if (!isKnown(reading)) {
        return [
          [key, null],
          [`${key}Reason`, reading.unknown],
        ];
      }
      const quantity: [string, unknown] = [
        key,
        quantityToJson(reading.unit === 'rad' ? inUnit(reading, 'deg') : reading),
      ];
      return reading.u === null ? [quantity, [`${key}UReason`, reading.uReason]] : [quantity];
    }),
  );
}

export function readingsToLines(rows: readonly Row[]): string[] {
  const width = Math.max(...rows.map(({ label }) => label.length));
  return rows
    .filter(({ reading }) => reading !== null)
    .map(({ label, reading, shownIn }) => `${label.padEnd(width)}  ${inWords(reading, shownIn)}`);
}

function inWords(reading: Reading | null, shownIn: Unit | undefined): string {
  if (reading === null) return '';
  if (!isKnown(reading)) return `not known: ${reading.unknown}`;
  return quantityText(reading, shownIn ?? (reading.unit === 'rad' ? 'deg' : reading.unit));
}

export function readingsOutput(rows: readonly Row[]): Output {
  return { json: readingsToJson(rows), lines: readingsToLines(rows) };
}
