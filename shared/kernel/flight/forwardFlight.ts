import type { Quantity, Unknown } from '../../quantity.ts';
import { derive, pairKey } from '../quantity/derive.ts';
import { deriveWhereBent } from '../uncertainty/deriveWhereBent.ts';
import { falling, launch, passing, type State } from './path.ts';
import {
  airOf,
  type AirQuantities,
  drawsIn,
  flightInputs,
  isVacuum,
  PATH_FORMULA,
  PATH_SOURCE,
  PATH_VARIANT,
  refuseImpossibleRelease,
  type Release,
  VACUUM_SOURCE,
} from './release.ts';

/** The ball as it gets somewhere. */
export interface Arrival {
  readonly time: Quantity<'s'>;
  readonly distance: Quantity<'m'>;
  readonly height: Quantity<'m'>;
  readonly speed: Quantity<'m/s'>;
  /** Below the horizontal, rad; negative: still rising. */
  readonly entryAngle: Quantity<'rad'>;
}

export interface ForwardFlight {
  /** As the ball passes a distance, rising or falling. */
  readonly passing: (distance: Quantity<'m'>) => Arrival | Unknown;
  /** As the ball falls through a height. */
  readonly fallingTo: (height: Quantity<'m'>) => Arrival | Unknown;
}

/**
 * Where a released ball goes: in closed form in a vacuum, else by an adaptive integrator with quadratic drag and, if
 * given, lift by backspin. Uncertainties are carried through to first order, or by random draws where the path bends over
 * the width of what is known of the release; each result is worked out when it is asked for.
 *
 * @param release speed m/s ≥ 0, angle −π/2 to π/2 rad, height m
 * @param air drag and lift factors, /m
 * @param uncertainty `first-order`: never by random draws, for those who draw themselves
 * @throws DomainError 'input-out-of-range'
 * @source motion under gravity and quadratic drag; see release.ts
 */
export function forwardFlight(
  release: Release,
  air: AirQuantities,
  uncertainty: 'where-bent' | 'first-order' = 'where-bent',
): ForwardFlight {
  refuseImpossibleRelease('forwardFlight', release, air);
  const correlations = { [pairKey('v', 'θ')]: release.correlation ?? 0 };
  const carry: typeof derive =
    uncertainty === 'first-order'
      ? derive
      : (what, inputs, f) => deriveWhereBent(what, inputs, f, { ...drawsIn(air), correlations });
  const arrival = (
    target: Record<string, Quantity<'m'>>,
    find: (from: State, at: number, air: ReturnType<typeof airOf>) => State | null,
    unknown: string,
    formulas: { time: string; distance: string; height: string },
  ): Arrival | Unknown => {
    const [symbol] = Object.keys(target) as [string];
    const inputs = { ...flightInputs(release, air), ...target } as ReturnType<typeof flightInputs> &
      Record<string, Quantity>;
    const at = (p: { readonly [name: string]: number }): State | null =>
      find(
        launch(p.v as number, p.θ as number, p.y_0 as number),
        p[symbol] as number,
        airOf(p as { k: number; l: number }),
      );
    const values = Object.fromEntries(Object.entries(inputs).map(([name, quantity]) => [name, quantity.value]));
    if (at(values) === null) return { unknown };
    const source = isVacuum(air) ? VACUUM_SOURCE : PATH_SOURCE;
    const variant = isVacuum(air) ? 'in a vacuum' : PATH_VARIANT;
    const get = <U extends 's' | 'm' | 'm/s' | 'rad'>(
      what: { symbol: string; name: string; unit: U; formula: string },
      read: (state: State) => number,
    ) =>
      carry(
        { ...what, formula: isVacuum(air) ? what.formula : PATH_FORMULA, source, variant },
        inputs,
        (p) => {
          const state = at(p);
          return state === null ? Number.NaN : read(state);
        },
        correlations,
      );
    return {
      get time() {
        return get({ symbol: 't', name: 'Time of flight', unit: 's', formula: formulas.time }, (s) => s.t);
      },
      get distance() {
        return get({ symbol: 'x', name: 'Distance covered', unit: 'm', formula: formulas.distance }, (s) => s.x);
      },
      get height() {
        return get({ symbol: 'y', name: 'Height', unit: 'm', formula: formulas.height }, (s) => s.y);
      },
      get speed() {
        const formula = 'v_e = sqrt((v cos θ)^2 + (v sin θ - g t)^2)';
        return get({ symbol: 'v_e', name: 'Speed on arrival', unit: 'm/s', formula }, (s) => Math.hypot(s.vx, s.vy));
      },
      get entryAngle() {
        const formula = 'tan θ_e = (g t - v sin θ) / (v cos θ)';
        return get({ symbol: 'θ_e', name: 'Entry angle', unit: 'rad', formula }, (s) => Math.atan2(-s.vy, s.vx));
      },
    };
  };
  return {
    passing: (distance) =>
      arrival({ d: distance }, passing, `this release never gets ${distance.value.toFixed(2)} m far`, {
        time: 't = d / (v cos θ)',
        distance: 'x = d',
        height: 'y = y_0 + d tan θ - g d^2 / (2 v^2 cos^2 θ)',
      }),
    fallingTo: (height) =>
      arrival({ y_t: height }, falling, `this release never gets ${height.value.toFixed(2)} m high`, {
        time: 't = (v sin θ + sqrt((v sin θ)^2 + 2 g (y_0 - y_t))) / g',
        distance: 'x = v cos θ t',
        height: 'y = y_t',
      }),
  };
}
