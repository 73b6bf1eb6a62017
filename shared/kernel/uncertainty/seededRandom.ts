import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { DomainError } from '../../errors.ts';

/**
 * Uniform random numbers, 0 ≤ value < 1 with 53 bits, the same sequence every time for one seed.
 *
 * @param seed integer of up to 32 bits
 * @throws DomainError 'input-out-of-range' if the seed is no integer
 * @source xoroshiro128+, Blackman & Vigna, as implemented by pure-rand
 */
export function seededRandom(seed: number): () => number {
  if (!Number.isInteger(seed)) {
    throw new DomainError('input-out-of-range', `seededRandom needs an integer seed, got ${seed}`);
  }
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}
