import { DomainError } from '../../errors.ts';
import { inUnit, type Quantity, type Reading } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';
import { POWER_EQUATIONS, type PowerEquation, type PowerEquationId } from './powerEquations.ts';

/** Peak power of a jump per kilogram of body mass that a person can show. Convention. */
const CREDIBLE_PEAK_W_PER_KG = [20, 90] as const;

/**
 * Power of a jump predicted from its height and the jumper's mass by one named regression equation.
 *
 * Carries no uncertainty: the prediction error of the equations could not be verified, and that of height and mass
 * alone would look far too good.
 *
 * @param height m, > 0, measured as the equation's `validFor` says
 * @param mass kg, > 0
 * @returns W; or unknown where a peak comes out beyond 20 to 90 W/kg, which no person shows
 * @throws DomainError 'not-found' for an unknown equation, 'input-out-of-range' if height or mass is not above zero
 * @source each equation's own, in powerEquations
 */
export function predictPower(id: PowerEquationId, height: Quantity<'m'>, mass: Quantity<'kg'>): Reading<'W'> {
  const equation: PowerEquation | undefined = POWER_EQUATIONS.find((candidate) => candidate.id === id);
  if (!equation) throw new DomainError('not-found', `predictPower knows no equation called ${id}`);
  requirePositive('predictPower', height, mass);
  const { perCentimetre: a, perKilogram: b, constant: d } = equation;
  const predicted = derive(
    {
      symbol: 'P',
      name: equation.name,
      unit: 'W',
      formula: `P = ${a} h + ${b} m - ${-d}`,
      variant: `height in centimetres; made on ${equation.validFor}`,
      source: equation.source,
    },
    { h: inUnit(height, 'cm'), m: mass },
    ({ h, m }) => a * h + b * m + d,
  );
  return credible(predicted, equation.predicts, mass);
}

function credible(power: Quantity<'W'>, predicts: 'peak' | 'mean', mass: Quantity<'kg'>): Reading<'W'> {
  const perKilogram = power.value / mass.value;
  const [low, high] = CREDIBLE_PEAK_W_PER_KG;
  if (predicts === 'peak' && !(perKilogram >= low && perKilogram <= high)) {
    return {
      unknown: `The equation gives ${power.value.toFixed(0)} W, ${perKilogram.toFixed(1)} W/kg; a jumper's peak power lies between ${low} and ${high} W/kg. Check the height and its unit, or whether the equation suits this person.`,
    };
  }
  return {
    ...power,
    u: null,
    uReason:
      'the prediction error of this equation is not verified, and that of height and mass alone would look too good',
  };
}
