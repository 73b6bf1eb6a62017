import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { meanPushOffForce } from '../jump/meanPushOffForce.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: "Newton's second law: a ground force equal to body weight accelerates nothing. Mean push-off force by work and energy, F = W (1 + h / s)",
  status: 'derived',
};

/** A stated force this close to body weight, or below it, is body weight. Convention. */
const SAME = 0.02;

/**
 * Was body weight given as the force needed to jump? The ground must push harder than that to raise anything.
 *
 * @param seen the force as stated, N (null: none), body weight, and height and push-off distance where known, for the answer
 * @source work-energy theorem, F = W (1 + h / s)
 */
export function bodyWeightAsForceNeeded(seen: {
  readonly statedForceN: number | null;
  readonly weight: Reading<'N'>;
  readonly height: Reading<'m'>;
  readonly pushOffDistance: Reading<'m'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'body-weight-as-force-needed', about: seen.about, source: SOURCE };
  const { statedForceN: stated, weight, height, pushOffDistance } = seen;
  if (stated === null || !isKnown(weight)) {
    return cannotTell(
      base,
      `Whether the force stated could lift the body cannot be told: ${stated === null ? 'no force is stated' : 'body weight is not known'}.`,
    );
  }
  if (stated > weight.value * (1 + SAME)) {
    return fine(base, 'The force stated exceeds body weight.');
  }
  const needed =
    isKnown(height) && isKnown(pushOffDistance) && height.value > 0 && pushOffDistance.value > 0
      ? meanPushOffForce(weight, height, pushOffDistance)
      : null;
  return questioned(
    base,
    `A ground force of ${stated.toFixed(0)} N only holds ${weight.value.toFixed(0)} N of body weight up: nothing accelerates and nobody leaves the ground.${
      needed === null
        ? ' What a jump needs follows from its height and the push-off distance: F = W (1 + h / s).'
        : ` This jump needed ${needed.value.toFixed(0)} N on average over the push-off.`
    }`,
    { label: 'Force as stated', value: stated, unit: 'N' },
    needed === null
      ? { label: 'Body weight', value: weight.value, unit: 'N' }
      : { label: 'Mean force over the push-off', value: needed.value, unit: 'N' },
  );
}
