import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import type { SecondOrderFilter } from '../signal/butterworthCoefficients.ts';
import { cannotTell, fine, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Winter 2009, Biomechanics and Motor Control of Human Movement, 2.2.4.4; Robertson & Dowling 2003, J Electromyogr Kinesiol 13:569-573',
  status: 'published',
};

/** Gain of a low-pass filter at its cut-off. */
const HALF_POWER = Math.SQRT1_2;
/** Rounding C to 0.802 moves the gain by 0.0003; dividing before the tangent by up to a tenth. Convention. */
const BAND = 0.02;

/**
 * Mistake 18: was a filter run forwards and backwards without widening it first? Its cut-off is then lower than stated:
 * the gain there is 0.5 instead of 0.707. Asked of coefficients that come from elsewhere; the kernel's own are corrected.
 *
 * @param seen coefficients of one pass; cut-off as stated and sampling rate, Hz; number of passes
 * @source Winter 2009, 2.2.4.4; Robertson & Dowling 2003, J Electromyogr Kinesiol 13:569-573
 */
export function dualPassUncorrected(seen: {
  readonly filter: SecondOrderFilter | null;
  readonly cutoffHz: number;
  readonly rateHz: number;
  readonly passes: 1 | 2;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'dual-pass-uncorrected', about: seen.about, source: SOURCE };
  if (seen.filter === null) {
    return cannotTell(
      base,
      'Whether the filter was widened for its second pass cannot be told without its coefficients.',
    );
  }
  const gain = gainOf(seen.filter, (2 * Math.PI * seen.cutoffHz) / seen.rateHz) ** seen.passes;
  if (isNear(gain, HALF_POWER, BAND))
    return fine(base, 'At its cut-off the filter passes 71 % of the amplitude, as it should.');
  return questioned(
    base,
    `At ${seen.cutoffHz} Hz, the cut-off stated, this filter passes ${(100 * gain).toFixed(0)} % of the amplitude in place of 71 %.${
      isNear(gain, HALF_POWER ** 2, BAND) && seen.passes === 2
        ? ' It was run twice without dividing by C = 0.802 first: its true cut-off is lower.'
        : ''
    }`,
    { label: 'Gain at the cut-off', value: gain, unit: '1' },
    { label: 'Gain that defines a cut-off', value: HALF_POWER, unit: '1' },
  );
}

/** |H| at an angular frequency in radians a sample. */
function gainOf({ a0, a1, a2, b1, b2 }: SecondOrderFilter, ω: number): number {
  const size = (c0: number, c1: number, c2: number) =>
    Math.hypot(c0 + c1 * Math.cos(ω) + c2 * Math.cos(2 * ω), c1 * Math.sin(ω) + c2 * Math.sin(2 * ω));
  return size(a0, a1, a2) / size(1, -b1, -b2);
}
