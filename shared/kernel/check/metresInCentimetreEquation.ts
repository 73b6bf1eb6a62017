import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { POWER_EQUATIONS, type PowerEquation } from '../jump/powerEquations.ts';
import { cannotTell, fine, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Power equations take the height in centimetres: Sayers et al. 1999, Med Sci Sports Exerc 31(4):572-577',
  status: 'published',
};

/** Rounding of a typed power. Convention. */
const SAME = 0.01;

/**
 * Mistake 21: were metres put into an equation made for centimetres? The height then counts for next to nothing.
 *
 * @param seen power as stated, W; height of the jump, m; body mass, kg. Every equation on file is tried
 * @source Sayers et al. 1999, Med Sci Sports Exerc 31(4):572-577, and the other equations on file
 */
export function metresInCentimetreEquation(seen: {
  readonly statedPowerW: number | null;
  readonly height: Reading<'m'>;
  readonly massKg: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'metres-in-centimetre-equation', about: seen.about, source: SOURCE };
  const { statedPowerW: stated, height, massKg } = seen;
  if (stated === null || !isKnown(height) || massKg === null) {
    const why =
      stated === null
        ? 'no power is stated'
        : massKg === null
          ? 'body mass is not recorded'
          : 'no jump height is recorded';
    return cannotTell(base, `Whether the power follows from the height cannot be told: ${why}.`);
  }
  const power = (equation: PowerEquation, h: number) =>
    equation.perCentimetre * h + equation.perKilogram * massKg + equation.constant;
  const equations: readonly PowerEquation[] = POWER_EQUATIONS;
  const right = equations.find((one) => isNear(stated, power(one, 100 * height.value), SAME));
  if (right !== undefined) return fine(base, `The power follows by the ${right.name}.`);
  const wrong = equations.find((one) => isNear(stated, power(one, height.value), SAME));
  if (wrong === undefined) {
    return cannotTell(
      base,
      'Which equation this power came from cannot be told: none on file gives it. Name it beside the number.',
    );
  }
  const meant = power(wrong, 100 * height.value);
  return questioned(
    base,
    `${stated.toFixed(0)} W is what the ${wrong.name} gives for ${height.value.toFixed(2)} centimetres. The jump was ${(100 * height.value).toFixed(0)} cm: ${meant.toFixed(0)} W.`,
    { label: 'Power as stated', value: stated, unit: 'W' },
    { label: 'Power with the height in centimetres', value: meant, unit: 'W' },
  );
}
