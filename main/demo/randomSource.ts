import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers that look random and are the same every time: one numbered source gives one sequence. */
export interface RandomSource {
  /** 0 ≤ value < 1. */
  readonly uniform: () => number;
  /** Normal with mean 0. */
  readonly normal: (sd: number) => number;
  /** An id in the form of a version 4 UUID. */
  readonly id: () => string;
}

export function randomSource(number: number): RandomSource {
  const generator = xoroshiro128plus(number);
  const uniform = () => uniformFloat64(generator);
  return {
    uniform,
    // Box and Muller; 1 − uniform keeps the logarithm finite.
    normal: (sd) => sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    id: () => 'xxxxxxxx-xxxx-4xxx-axxx-xxxxxxxxxxxx'.replaceAll('x', () => uniformInt(generator, 0, 15).toString(16)),
  };
}
