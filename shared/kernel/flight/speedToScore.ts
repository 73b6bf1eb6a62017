import type { Quantity, Reading } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { deriveWhereBent } from '../uncertainty/deriveWhereBent.ts';
import { refuseNoDistance } from './refuseNoDistance.ts';
import {
  airInputs,
  type AirQuantities,
  drawsIn,
  isVacuum,
  PATH_FORMULA,
  PATH_SOURCE,
  VACUUM_SOURCE,
} from './release.ts';
import { speedThrough } from './speedThrough.ts';

/**
 * The release speed that takes a ball at a given angle through a point.
 * Vacuum: v² = g d² / [2 cos²θ (d tan θ − Δh)]. With drag: the same, corrected until the integrated path passes the point.
 *
 * @param distance d, m, > 0
 * @param rise Δh, target height minus release height, m
 * @param angle θ, rad, −π/2 to π/2
 * @param mustFall true for a ring: the ball has to come down through it. Then a ball still rising there is refused,
 *   though the algebra gives a speed.
 * @returns m/s; Unknown with the reason where no speed will do
 * @throws DomainError 'input-out-of-range'
 * @source constant acceleration; with drag see release.ts
 */
export function speedToScore(
  distance: Quantity<'m'>,
  rise: Quantity<'m'>,
  angle: Quantity<'rad'>,
  air: AirQuantities,
  mustFall: boolean,
): Reading<'m/s'> {
  refuseNoDistance('speedToScore', distance);
  const [d0, h0, θ0] = [distance.value, rise.value, angle.value];
  const degrees = ((θ0 * 180) / Math.PI).toFixed(1);
  if (!(Math.abs(θ0) < Math.PI / 2) || d0 * Math.tan(θ0) - h0 <= 0) {
    return {
      unknown: `at ${degrees}° the straight line of release already passes below the target: no speed reaches it`,
    };
  }
  if (mustFall && Math.tan(θ0) - (2 * h0) / d0 <= 0) {
    return { unknown: `at ${degrees}° the ball is still rising at the target: it cannot fall into it` };
  }
  if (isVacuum(air)) {
    return deriveWhereBent(
      {
        symbol: 'v',
        name: 'Speed to score',
        unit: 'm/s',
        formula: 'v = sqrt(g d^2 / (2 cos^2 θ (d tan θ - Δh)))',
        variant: 'in a vacuum; through air a basketball needs 4 to 7 % more',
        source: VACUUM_SOURCE,
      },
      { g: standardGravity, d: distance, Δh: rise, θ: angle },
      (p) => speedThrough({ ...p, k: 0, l: 0 }),
    );
  }
  const inputs = { d: distance, Δh: rise, θ: angle, ...airInputs(air) };
  const values = { d: d0, Δh: h0, θ: θ0, k: inputs.k.value, l: inputs.l.value };
  if (Number.isNaN(speedThrough(values))) {
    return { unknown: `at ${degrees}° no speed carries this ball to the target through the air` };
  }
  return deriveWhereBent(
    {
      symbol: 'v',
      name: 'Speed to score',
      unit: 'm/s',
      formula: PATH_FORMULA,
      variant: 'with drag, solved until the path passes the target',
      source: PATH_SOURCE,
    },
    inputs,
    (p) => speedThrough(p),
    drawsIn(air),
  );
}
