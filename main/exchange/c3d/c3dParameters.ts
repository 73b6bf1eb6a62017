import type { C3dNumbers } from './c3dNumbers.ts';

export interface C3dParameter {
  /** First dimension runs fastest; of text the first is the length of each line. */
  readonly dimensions: readonly number[];
  readonly numbers: readonly number[];
  readonly texts: readonly string[];
}

/** Every parameter by `GROUP:NAME` in capitals. */
export type C3dParameters = ReadonlyMap<string, C3dParameter>;

const TEXT = -1;
const SIZE_OF = { [TEXT]: 1, 1: 1, 2: 2, 4: 4 } as const;

/**
 * The parameters of a C3D file. A type of data the format does not name is passed over, as is a group without a name.
 * @param start byte of the parameter section
 * @throws DomainError 'input-malformed' where the section points outside of the file
 * @source the public description of the C3D format, c3d.org, parameter section
 */
export function c3dParameters(file: C3dNumbers, start: number): C3dParameters {
  const groups = new Map<number, string>();
  const found: { group: number; name: string; parameter: C3dParameter }[] = [];
  let at = start + 4;
  while (at + 2 <= file.length) {
    const nameLength = Math.abs(file.signedByte(at));
    const group = file.signedByte(at + 1);
    if (nameLength === 0 || group === 0) break;
    const name = file
      .text(at + 2, nameLength)
      .trim()
      .toUpperCase();
    const link = at + 2 + nameLength;
    const step = file.word(link);
    if (group < 0) groups.set(-group, name);
    else found.push({ group, name, parameter: readParameter(file, link + 2) });
    if (step === 0) break;
    at = link + step;
  }
  return new Map(found.map(({ group, name, parameter }) => [`${groups.get(group) ?? group}:${name}`, parameter]));
}

function readParameter(file: C3dNumbers, at: number): C3dParameter {
  const type = file.signedByte(at);
  const rank = file.byte(at + 1);
  const dimensions = Array.from({ length: rank }, (_, i) => file.byte(at + 2 + i));
  const size = type === TEXT || type === 1 || type === 2 || type === 4 ? SIZE_OF[type] : null;
  if (size === null) return { dimensions, numbers: [], texts: [] };
  const data = at + 2 + rank;
  const count = dimensions.reduce((product, one) => product * one, 1);
  // Said before anything as long as a damaged file claims is made.
  if (count > 0) file.byte(data + count * size - 1);
  if (type === TEXT) {
    const width = dimensions[0] ?? 1;
    const lines = width === 0 ? 0 : count / width;
    const texts = Array.from({ length: lines }, (_, i) =>
      file
        .text(data + i * width, width)
        .replaceAll('\0', ' ')
        .trim(),
    );
    return { dimensions, numbers: [], texts };
  }
  const read = size === 1 ? file.signedByte : size === 2 ? file.signedWord : file.real;
  return { dimensions, numbers: Array.from({ length: count }, (_, i) => read(data + i * size)), texts: [] };
}
