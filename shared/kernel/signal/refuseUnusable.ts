import { DomainError } from '../../errors.ts';

/**
 * The door of every signal function: all samples finite, and enough of them.
 *
 * @param name the function that asks
 * @param samples of any unit
 * @param least how many it needs
 * @throws DomainError 'not-enough-data' or 'input-out-of-range', naming the function and the first bad sample
 * @source the filters and derivatives that call it
 */
export function refuseUnusable(name: string, samples: readonly number[], least: number): void {
  if (samples.length < least) {
    throw new DomainError('not-enough-data', `${name} needs at least ${least} samples, got ${samples.length}`);
  }
  const bad = samples.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0) {
    throw new DomainError(
      'input-out-of-range',
      `${name} needs finite samples, got ${samples[bad]} at sample ${bad}: fill or cut the gap first`,
      `samples.${bad}`,
    );
  }
}
