import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { highest, launch, type State } from './path.ts';
import {
  airOf,
  type AirQuantities,
  flightInputs,
  isVacuum,
  PATH_FORMULA,
  PATH_SOURCE,
  PATH_VARIANT,
  refuseImpossibleRelease,
  type Release,
  VACUUM_SOURCE,
} from './release.ts';

/**
 * The highest point of a flight. For a ball thrown level or downwards: the release itself.
 *
 * @returns time s ≥ 0 after release, height m
 * @throws DomainError 'input-out-of-range'
 * @source constant acceleration; with drag see release.ts
 */
export function apex(release: Release, air: AirQuantities): { time: Quantity<'s'>; height: Quantity<'m'> } {
  refuseImpossibleRelease('apex', release, air);
  const inputs = flightInputs(release, air);
  const still = isVacuum(air);
  const source = still ? VACUUM_SOURCE : PATH_SOURCE;
  const variant = still ? `in a vacuum, g = ${standardGravity.value} m/s²` : PATH_VARIANT;
  return {
    time: derive(
      {
        symbol: 't_a',
        name: 'Time to the highest point',
        unit: 's',
        formula: still ? 't_a = v sin θ / g' : PATH_FORMULA,
        variant,
        source,
      },
      inputs,
      (p) => at(p).t,
    ),
    height: derive(
      {
        symbol: 'y_a',
        name: 'Highest point',
        unit: 'm',
        formula: still ? 'y_a = y_0 + (v sin θ)^2 / (2 g)' : PATH_FORMULA,
        variant,
        source,
      },
      inputs,
      (p) => at(p).y,
    ),
  };
}

function at(p: { v: number; θ: number; y_0: number; k: number; l: number }): State {
  return highest(launch(p.v, p.θ, p.y_0), airOf(p));
}
