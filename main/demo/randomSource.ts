/** Numbers that look random and are the same every time: one numbered source gives one sequence. */
export interface RandomSource {
  /** 0 ≤ value < 1. */
  readonly uniform: () => number;
  /** Normal with mean 0. */
  readonly normal: (sd: number) => number;
  /** An id in the form of a version 4 UUID. */
  readonly id: () => string;
}

/** Mixes a 32-bit counter by multiply and shift ("mulberry32"; public domain, in common use). Not for secrets. */
export function randomSource(number: number): RandomSource {
  let state = number >>> 0;
  const bits = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (mixed ^ (mixed >>> 14)) >>> 0;
  };
  const uniform = () => bits() / 2 ** 32;
  return {
    uniform,
    // Box and Muller; 1 − uniform keeps the logarithm finite.
    normal: (sd) => sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    id: () => {
      const hex = Array.from({ length: 4 }, () => bits().toString(16).padStart(8, '0')).join('');
      return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-a${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
    },
  };
}
