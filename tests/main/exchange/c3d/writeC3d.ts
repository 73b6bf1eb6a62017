/** A C3D of two points and two channels, written by its public description, for what the open samples do not hold. */
export interface MadeC3d {
  readonly order: 'intel' | 'dec' | 'mips';
  readonly isReal: boolean;
  /** Of a frame: points as x, y, z and the fourth word, then samples. In steps of the scale for integers. */
  readonly frames: readonly (readonly number[])[];
  readonly points: number;
  readonly channels: number;
  readonly samplesPerFrame: number;
  readonly scale: number;
  readonly parameters: readonly (readonly [
    group: string,
    name: string,
    type: 'text' | 'word' | 'real',
    dimensions: readonly number[],
    values: readonly number[] | readonly string[],
  ])[];
}

const CODES = { intel: 84, dec: 85, mips: 86 } as const;

export function writeC3d(made: MadeC3d): Uint8Array {
  const word = (value: number) => {
    const bytes = new Uint8Array(2);
    new DataView(bytes.buffer).setUint16(0, value & 0xffff, made.order !== 'mips');
    return [...bytes];
  };
  const real = (value: number) => {
    const bytes = new Uint8Array(4);
    const view = new DataView(bytes.buffer);
    if (made.order !== 'dec') {
      view.setFloat32(0, value, made.order === 'intel');
      return [...bytes];
    }
    // DEC: the exponent is two higher, and the high word comes first, each word with its low byte first.
    view.setFloat32(0, value * 4, false);
    const [a = 0, b = 0, c = 0, d = 0] = bytes;
    return [b, a, d, c];
  };

  const groups = [...new Set(made.parameters.map(([group]) => group))];
  const section: number[] = [1, 0x50, 0, CODES[made.order]];
  const link = (name: string, id: number, body: readonly number[]) =>
    section.push(name.length, id & 0xff, ...text(name), ...word(body.length + 2), ...body);
  groups.forEach((group, i) => link(group, -(i + 1), [0]));
  for (const [group, name, type, dimensions, values] of made.parameters) {
    const data = values.flatMap((value) =>
      typeof value === 'string' ? text(value.padEnd(dimensions[0] ?? 0)) : type === 'word' ? word(value) : real(value),
    );
    const code = { text: 0xff, word: 2, real: 4 }[type];
    link(name, groups.indexOf(group) + 1, [code, dimensions.length, ...dimensions, ...data, 0]);
  }
  section.push(0, 0);
  const blocks = Math.ceil(section.length / 512);
  section[2] = blocks;
  while (section.length < blocks * 512) section.push(0);

  const header = [
    2,
    0x50,
    ...word(made.points),
    ...word(made.channels * made.samplesPerFrame),
    ...word(1),
    ...word(made.frames.length),
    ...word(0),
    ...real(made.isReal ? -made.scale : made.scale),
    ...word(2 + blocks),
    ...word(made.samplesPerFrame),
    ...real(100),
  ];
  while (header.length < 512) header.push(0);
  const data = made.frames.flatMap((frame) => frame.flatMap((value) => (made.isReal ? real(value) : word(value))));
  return Uint8Array.from([...header, ...section, ...data]);
}

function text(value: string): number[] {
  return Array.from(value, (letter) => letter.charCodeAt(0));
}
