import type { RandomSource } from '../../demo/randomSource.ts';

/** A number between two, by chance. */
export function between(random: RandomSource, low: number, high: number): number {
  return low + (high - low) * random.uniform();
}
