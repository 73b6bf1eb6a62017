import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Healy, Kenny & Harrison 2018, Int J Sports Physiol Perform: height over contact time is the index, flight over contact time the ratio; one jump gives 1.75 m/s and 2.67',
  status: 'published',
};

/** Rounding of a typed index. Convention. */
const SAME = 0.02;

/**
 * Mistake 23: was the ratio of flight to contact time, or the modified index of a countermovement jump, given as the
 * reactive strength index?
 *
 * @param seen index as stated, m/s; the index, the ratio and the modified index that the recorded jump itself gives
 * @source Healy, Kenny & Harrison 2018, Int J Sports Physiol Perform
 */
export function strengthIndicesMixed(seen: {
  readonly statedIndex: number | null;
  readonly index: Reading<'m/s'>;
  readonly ratio: Reading<'1'>;
  readonly modified: Reading<'m/s'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'strength-indices-mixed', about: seen.about, source: SOURCE };
  const { statedIndex: stated, index, ratio, modified } = seen;
  const shown = (other: number) =>
    [
      { label: 'Index as stated', value: stated ?? 0, unit: 'm/s' },
      { label: 'Height over contact time', value: other, unit: 'm/s' },
    ] as const;
  if (stated !== null && isKnown(index)) {
    if (isNear(stated, index.value, SAME)) return fine(base, 'The index is height over contact time.');
    if (isKnown(ratio) && isNear(stated, ratio.value, SAME)) {
      return questioned(
        base,
        `${stated.toFixed(2)} is flight time over contact time, a ratio. The reactive strength index of this jump, height over contact time, is ${index.value.toFixed(2)} m/s.`,
        ...shown(index.value),
      );
    }
    return questioned(
      base,
      `${stated.toFixed(2)} is not the reactive strength index of this jump: height over contact time is ${index.value.toFixed(2)} m/s.`,
      ...shown(index.value),
    );
  }
  if (stated !== null && isKnown(modified) && isNear(stated, modified.value, SAME)) {
    return questioned(
      base,
      `${stated.toFixed(2)} m/s is height over time to take-off of a countermovement jump, the modified index. The reactive strength index takes a drop jump and its contact time.`,
      { label: 'Index as stated', value: stated, unit: 'm/s' },
      { label: 'Modified index on record', value: modified.value, unit: 'm/s' },
    );
  }
  return cannotTell(
    base,
    `Which index this is cannot be told: ${stated === null ? 'none is stated' : 'no drop jump with its contact time is recorded'}.`,
  );
}
