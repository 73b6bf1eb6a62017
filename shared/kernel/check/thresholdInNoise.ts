import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Take-off threshold of the unloaded plate: mean + 5 SD, by convention. A plate reading 5.8 ± 5.8 N broke one flight up at 10 and at 15 N (open record, 600 Hz)',
  status: 'convention',
};

/**
 * Mistake 32: does the force that counts as take-off lie inside the noise of the empty plate? A flight then breaks up.
 * The kernel sets its own threshold by this rule; asked of one that comes from elsewhere.
 *
 * @param seen threshold used, N; mean and standard deviation of the plate with nobody on it, N
 * @source mean + 5 SD of the unloaded plate: convention
 */
export function thresholdInNoise(seen: {
  readonly thresholdN: number | null;
  readonly unloadedMeanN: number | null;
  readonly unloadedSdN: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'threshold-in-noise', about: seen.about, source: SOURCE };
  const { thresholdN, unloadedMeanN: mean, unloadedSdN: sd } = seen;
  if (thresholdN === null || mean === null || sd === null) {
    return cannotTell(
      base,
      `Whether the take-off threshold clears the noise cannot be told: ${thresholdN === null ? 'the threshold is not stated' : 'what the empty plate reads is not known'}.`,
    );
  }
  const least = mean + 5 * sd;
  if (thresholdN >= least) return fine(base, 'The take-off threshold lies above the noise of the empty plate.');
  return questioned(
    base,
    `The empty plate reads ${mean.toFixed(1)} ± ${sd.toFixed(1)} N, so a threshold of ${thresholdN.toFixed(0)} N is crossed by noise and breaks flights up. Use at least ${least.toFixed(0)} N.`,
    { label: 'Threshold used', value: thresholdN, unit: 'N' },
    { label: 'Mean + 5 SD of the empty plate', value: least, unit: 'N' },
  );
}
