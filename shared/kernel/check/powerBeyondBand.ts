import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Peak power of a jump lies between 20 and 90 W/kg: a convention. Group means of Canavan & Vescovi 2004, Med Sci Sports Exerc 36(9):1589-1593, settle the signs of the constants',
  status: 'convention',
};

/** Peak power of a jump per kilogram of body mass that a person can show. */
const BAND_W_PER_KG = [20, 90] as const;

/**
 * Mistake 22: did a wrong sign or a misplaced bracket spoil a power equation? The power per kilogram then falls out of
 * what people can do.
 *
 * @param seen peak power as stated, W; body mass, kg; null: not known
 * @source band of 20 to 90 W/kg: convention; Canavan & Vescovi 2004, Med Sci Sports Exerc 36(9):1589-1593
 */
export function powerBeyondBand(seen: {
  readonly statedPowerW: number | null;
  readonly massKg: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'power-beyond-band', about: seen.about, source: SOURCE };
  const { statedPowerW: stated, massKg } = seen;
  if (stated === null || massKg === null || !(massKg > 0)) {
    return cannotTell(
      base,
      `Whether this power is possible cannot be told: ${stated === null ? 'no power is stated' : 'body mass is not recorded'}.`,
    );
  }
  const perKg = stated / massKg;
  const [low, high] = BAND_W_PER_KG;
  if (perKg >= low && perKg <= high) return fine(base, `${perKg.toFixed(1)} W/kg is a power that people show.`);
  return questioned(
    base,
    `${stated.toFixed(0)} W is ${perKg.toFixed(1)} W/kg; a jump's peak lies between ${low} and ${high}. Check the sign of the constant, what stands under the root and the unit of the height.`,
    { label: 'Peak power over mass', value: perKg, unit: 'W/kg' },
    { label: perKg < low ? 'Least credible' : 'Greatest credible', value: perKg < low ? low : high, unit: 'W/kg' },
  );
}
