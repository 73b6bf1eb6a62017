import type { Quantity, Reading } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { launch, passing } from './path.ts';
import { refuseNoDistance } from './refuseNoDistance.ts';
import { airInputs, airOf, type AirQuantities, isVacuum, PATH_FORMULA, PATH_SOURCE, VACUUM_SOURCE } from './release.ts';

/**
 * The release angle that takes a ball of a given speed through a point: the flat one, as throwers use.
 * Vacuum: tan θ = (v² − √(v⁴ − g(g d² + 2 Δh v²)))/(g d). With drag: from there until the integrated path passes.
 *
 * @param distance d, m, > 0
 * @param rise Δh, target height minus release height, m
 * @param speed v, m/s
 * @returns rad; Unknown where the speed does not reach
 * @throws DomainError 'input-out-of-range'
 * @source constant acceleration; with drag see release.ts
 */
export function angleToScore(
  distance: Quantity<'m'>,
  rise: Quantity<'m'>,
  speed: Quantity<'m/s'>,
  air: AirQuantities,
): Reading<'rad'> {
  refuseNoDistance('angleToScore', distance);
  const inputs = { d: distance, Δh: rise, v: speed, ...airInputs(air) };
  const values = { d: distance.value, Δh: rise.value, v: speed.value, k: inputs.k.value, l: inputs.l.value };
  const solve = isVacuum(air) ? vacuumAngle : angleThroughAir;
  if (Number.isNaN(solve(values))) {
    return {
      unknown: `at ${speed.value.toFixed(2)} m/s no angle reaches a target ${distance.value.toFixed(2)} m away`,
    };
  }
  return derive(
    {
      symbol: 'θ',
      name: 'Angle to score',
      unit: 'rad',
      formula: isVacuum(air) ? 'tan θ = (v^2 - sqrt(v^4 - g (g d^2 + 2 Δh v^2))) / (g d)' : PATH_FORMULA,
      variant: isVacuum(air) ? 'in a vacuum, the flatter of two' : 'with drag, the flatter of two',
      source: isVacuum(air) ? VACUUM_SOURCE : PATH_SOURCE,
    },
    inputs,
    solve,
  );
}

interface Values {
  readonly d: number;
  readonly Δh: number;
  readonly v: number;
  readonly k: number;
  readonly l: number;
}

function vacuumAngle({ d, Δh, v }: Values): number {
  const g = standardGravity.value;
  return Math.atan((v * v - Math.sqrt(v ** 4 - g * (g * d * d + 2 * Δh * v * v))) / (g * d));
}

/** Aims higher by as much as the ball arrived low, until it arrives. NaN where the speed does not reach. */
function angleThroughAir(p: Values): number {
  const mark = { ...p };
  for (let i = 0; i < 60; i += 1) {
    const angle = vacuumAngle(mark);
    const state = Number.isNaN(angle) ? null : passing(launch(p.v, angle, 0), p.d, airOf(p));
    if (state === null) return Number.NaN;
    const low = p.Δh - state.y;
    if (Math.abs(low) < 1e-10) return angle;
    mark.Δh += low;
  }
  return Number.NaN;
}
