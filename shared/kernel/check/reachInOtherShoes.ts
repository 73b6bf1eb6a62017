import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Definition of jump and reach: both reaches in the same footwear. Reaches within 3 mm count as one; a convention',
  status: 'convention',
};

const SAME_M = 0.003;

interface ReachTest {
  readonly label: string;
  readonly standingReachM: number | null;
  /** Worn in the test; null: not recorded. */
  readonly hasShoes: boolean | null;
}

/**
 * Mistake 34: was the standing reach taken without shoes and the jump with them? The soles then count as jump. Shows
 * where one standing reach serves two tests in different footwear.
 *
 * @param seen the test, and the others of the same person
 * @source definition of jump and reach; 3 mm: convention
 */
export function reachInOtherShoes(seen: {
  readonly test: ReachTest;
  readonly others: readonly ReachTest[];
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'reach-in-other-shoes', about: seen.about, source: SOURCE };
  const { test } = seen;
  const reach = test.standingReachM;
  if (reach === null || test.hasShoes === null) {
    return cannotTell(
      base,
      `Whether standing reach and jump were in the same shoes cannot be told: ${reach === null ? 'the standing reach' : 'the footwear'} is not recorded.`,
    );
  }
  const other = seen.others.find(
    (one) =>
      one.hasShoes !== null &&
      one.hasShoes !== test.hasShoes &&
      one.standingReachM !== null &&
      Math.abs(one.standingReachM - reach) <= SAME_M,
  );
  if (other === undefined) return fine(base, 'The standing reach was taken in the footwear of the jump.');
  return questioned(
    base,
    `${test.label} and ${other.label} share a standing reach of ${reach.toFixed(2)} m, but only one was jumped in shoes. Measure the reach again in the footwear of the jump.`,
    { label: `Standing reach, ${test.label}`, value: reach, unit: 'm' },
    { label: `Standing reach, ${other.label}`, value: other.standingReachM ?? reach, unit: 'm' },
  );
}
