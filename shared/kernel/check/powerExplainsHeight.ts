import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'The correlation of jump height and peak power is inflated, as both hold take-off velocity: Linthorne 2021, Sports Biomech 20(1):3-21',
  status: 'published',
};

/**
 * Mistake 35: is jump height said to be explained by power because the two correlate? Both come from one take-off
 * velocity. A case holds one athlete and so no correlation; asked by whatever compares a squad.
 *
 * @param seen coefficient of correlation, −1 to 1, and whether both numbers come from the same jumps
 * @source Linthorne 2021, Sports Biomech 20(1):3-21
 */
export function powerExplainsHeight(seen: {
  readonly correlation: number | null;
  readonly isFromSameJumps: boolean | null;
  readonly isCalledCause: boolean;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'power-explains-height', about: seen.about, source: SOURCE };
  const { correlation: r, isFromSameJumps } = seen;
  if (!seen.isCalledCause) return fine(base, 'Power is not said to explain height.');
  if (r === null || isFromSameJumps === null) {
    return cannotTell(
      base,
      `What the correlation is worth cannot be told: ${r === null ? 'it is not stated' : 'whether both numbers come from the same jumps is not recorded'}.`,
    );
  }
  if (!isFromSameJumps) return fine(base, 'Power and height come from different jumps.');
  return questioned(
    base,
    `Power and height of the same jumps share their take-off velocity, so that they correlate (r = ${r.toFixed(2)}, ${(100 * r * r).toFixed(0)} % in common) whatever makes people jump. It explains nothing.`,
    { label: 'Correlation', value: r, unit: '1' },
    { label: 'In common', value: r * r, unit: '1' },
  );
}
