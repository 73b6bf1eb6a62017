import type { Quantity, Reading } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { launch, passing } from './path.ts';
import { refuseNoDistance } from './refuseNoDistance.ts';
import { airInputs, airOf, type AirQuantities, isVacuum, PATH_FORMULA, PATH_SOURCE, VACUUM_SOURCE } from './release.ts';

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
    return derive(
      {
        symbol: 'v',
        name: 'Speed to score',
        unit: 'm/s',
        formula: 'v = sqrt(g d^2 / (2 cos^2 θ (d tan θ - Δh)))',
        variant: 'in a vacuum; through air a basketball needs 4 to 7 % more',
        source: VACUUM_SOURCE,
      },
      { g: standardGravity, d: distance, Δh: rise, θ: angle },
      ({ d, Δh, θ, g }) => vacuumSpeed(d, Δh, θ, g),
    );
  }
  const inputs = { d: distance, Δh: rise, θ: angle, ...airInputs(air) };
  const values = { d: d0, Δh: h0, θ: θ0, k: inputs.k.value, l: inputs.l.value };
  if (Number.isNaN(speedThroughAir(values))) {
    return { unknown: `at ${degrees}° no speed carries this ball to the target through the air` };
  }
  return derive(
    {
      symbol: 'v',
      name: 'Speed to score',
      unit: 'm/s',
      formula: PATH_FORMULA,
      variant: 'with drag, solved until the path passes the target',
      source: PATH_SOURCE,
    },
    inputs,
    speedThroughAir,
  );
}

function vacuumSpeed(d: number, Δh: number, θ: number, g: number): number {
  return Math.sqrt((g * d * d) / (2 * Math.cos(θ) ** 2 * (d * Math.tan(θ) - Δh)));
}

/** Secant method on the height missed by, from the vacuum speed up; NaN where it does not settle. */
function speedThroughAir(p: { d: number; Δh: number; θ: number; k: number; l: number }): number {
  const missedBy = (v: number): number => (passing(launch(v, p.θ, 0), p.d, airOf(p))?.y ?? Number.NaN) - p.Δh;
  let before = vacuumSpeed(p.d, p.Δh, p.θ, standardGravity.value);
  let missedBefore = missedBy(before);
  let speed = before * 1.05;
  for (let i = 0; i < 40; i += 1) {
    const missed = missedBy(speed);
    if (Math.abs(missed) < 1e-10) return speed;
    const next = speed - (missed * (speed - before)) / (missed - missedBefore);
    [before, missedBefore, speed] = [speed, missed, next];
    if (!(speed > 0)) return Number.NaN;
  }
  return Number.NaN;
}
