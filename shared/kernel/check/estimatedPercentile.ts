import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'A percentile from mean and standard deviation assumes a normal curve nobody has checked: it is an estimate',
  status: 'convention',
};

/**
 * Mistake 30: is a percentile worked out from a mean and a standard deviation shown as if it had been counted in a
 * group? Asked by whatever prints one; a case holds only percentiles counted in its own squad.
 *
 * @param seen percentile 0 to 100; how it was found; whether the words beside it say that it is estimated
 * @source assumption of a normal curve
 */
export function estimatedPercentile(seen: {
  readonly percentile: number | null;
  readonly foundBy: 'counting' | 'normal curve' | null;
  readonly isCalledEstimated: boolean;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'estimated-percentile', about: seen.about, source: SOURCE };
  const { percentile, foundBy } = seen;
  if (percentile === null || foundBy === null) {
    return cannotTell(
      base,
      `Whether the percentile is an estimate cannot be told: ${percentile === null ? 'none is stated' : 'how it was found is not recorded'}.`,
    );
  }
  if (foundBy === 'counting') return fine(base, 'The percentile was counted in its group.');
  if (seen.isCalledEstimated) return fine(base, 'The percentile is said to be estimated.');
  return questioned(
    base,
    `The percentile ${percentile.toFixed(0)} comes from a normal curve, not from a count. Write “estimated” beside it.`,
    { label: 'Percentile', value: percentile, unit: '{percentile}' },
  );
}
