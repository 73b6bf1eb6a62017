import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { cannotTell, fine, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'W = m g; gravity at sea level lies between 9.78 and 9.84 m/s². The width of each band is a convention',
  status: 'derived',
};

/** Weight over mass may stray this far from standard gravity by rounding alone. */
const ROUNDING = 0.01;
/** A ratio this close to 10 or to 1 is that number. */
const SAME = 0.005;

/**
 * Was the weight taken as ten times the mass, or the mass given as a force? Weight over mass must be near 9.81 m/s².
 *
 * @param seen weight as stated, N, and mass, kg; null: not stated
 * @source W = m g, g from 9.78 to 9.84 m/s² at sea level; widths: convention
 */
export function weightAsMassTimesTen(seen: {
  readonly statedWeightN: number | null;
  readonly massKg: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'weight-as-mass-times-ten', about: seen.about, source: SOURCE };
  const { statedWeightN: stated, massKg } = seen;
  if (stated === null || massKg === null || !(massKg > 0)) {
    return cannotTell(
      base,
      `Whether the weight fits the mass cannot be told: ${stated === null ? 'no weight is stated' : 'the mass is not recorded'}.`,
    );
  }
  const right = massKg * standardGravity.value;
  const ratio = stated / massKg;
  // Ten lies 2 % off gravity, so the band for rounding cannot hide it.
  if (isNear(ratio, standardGravity.value, ROUNDING)) {
    return fine(base, 'The weight fits the mass.');
  }
  const why = isNear(ratio, 10, SAME)
    ? `${stated.toFixed(0)} N is the mass times ten. Use g = 9.81 m/s²: every force built on it is 2 % too big.`
    : isNear(ratio, 1, SAME)
      ? `${stated.toFixed(1)} is the mass in kilograms, not the weight in newtons.`
      : `${stated.toFixed(0)} N does not belong to ${massKg.toFixed(1)} kg.`;
  return questioned(
    base,
    `${why} A body of ${massKg.toFixed(1)} kg weighs ${right.toFixed(0)} N.`,
    { label: 'Weight as stated', value: stated, unit: 'N' },
    { label: 'Mass × 9.81 m/s²', value: right, unit: 'N' },
  );
}
