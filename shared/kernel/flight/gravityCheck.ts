import type { Quantity, Reading } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import type { PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { type DragGiven, type FitOptions, type FlightSample, fitRelease, type ReleaseFit } from './fitRelease.ts';

export interface GravityCheck {
  readonly gravity: Quantity<'m/s2'>;
  readonly verdict: ReleaseFit['verdict'];
  /** How many times slower than real the clip's seconds run, if the scale is right; Unknown where none is implied. */
  readonly slowMotionFactor: Reading<'1'>;
  readonly sentence: string;
}

/**
 * Does something in free flight (a ball, a body's centre of mass) fall with g on this clip's clock and scale?
 * Slowed seconds show as g/k², so k = √(9.80665/g_found) when the scale is trusted. Drag holds whatever the clock: it
 * grows with the square of a speed, which slowed seconds shrink as they shrink g.
 *
 * @param samples, pointU, options as for fitRelease
 * @param drag of the ball, /m; null: none, as for a body, or none known
 * @throws as fitRelease
 * @source free fall; standard gravity
 */
export function gravityCheck(
  samples: readonly FlightSample[],
  pointU: PointU,
  drag: DragGiven | null = null,
  options: Pick<FitOptions, 'scaleU' | 'sharedU'> = {},
): GravityCheck {
  const fit = fitRelease(samples, pointU, drag, options);
  const { gravity, verdict } = fit;
  const reason = fit.reasons.join('; ');
  if (verdict !== 'questioned') {
    return {
      gravity,
      verdict,
      slowMotionFactor: { unknown: verdict === 'fine' ? 'the clock is right' : reason },
      sentence: verdict === 'fine' ? `Scale and clock hold: ${reason}.` : `Cannot tell: ${reason}.`,
    };
  }
  if (gravity.value <= 0) {
    return {
      gravity,
      verdict,
      slowMotionFactor: { unknown: 'what flies here falls upwards, which no slow motion explains' },
      sentence: 'What flies here falls upwards: check which way y points.',
    };
  }
  const slowMotionFactor = derive(
    {
      symbol: 'k',
      name: 'Slow-motion factor',
      unit: '1',
      formula: 'k = sqrt(g / g_found)',
      variant: 'if the scale is right',
      source: { cite: 'Times k times longer make accelerations k² times smaller', status: 'derived' },
    },
    { g: standardGravity, g_found: gravity },
    ({ g, g_found }) => Math.sqrt(g / g_found),
  );
  const k = slowMotionFactor.value;
  const size = (gravity.value / standardGravity.value).toFixed(2);
  return {
    gravity,
    verdict,
    slowMotionFactor,
    sentence:
      k > 1
        ? `Gravity comes out at ${gravity.value.toFixed(2)} m/s². If the scale is right, these seconds are slowed ${k.toFixed(2)} times; if the clock is right, lengths read ${size} times their true size.`
        : `Gravity comes out at ${gravity.value.toFixed(2)} m/s², more than it is. If the scale is right, the capture rate entered is ${(1 / k).toFixed(2)} times too high; if the clock is right, lengths read ${size} times their true size.`,
  };
}
