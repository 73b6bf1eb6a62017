import { isKnown, type Quantity, type Reading, type Unknown } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { measured } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { MAY_LEAVE_OUT } from '../uncertainty/deriveWhereBent.ts';
import { standardNormal } from '../uncertainty/distribution.ts';
import {
  monteCarloTogether,
  type MonteCarloOptions,
  type MonteCarloResult,
} from '../uncertainty/monteCarloTogether.ts';
import { seededRandom } from '../uncertainty/seededRandom.ts';
import { forwardFlight } from './forwardFlight.ts';
import { type Aim, passesAim } from './passesAim.ts';
import { falling, launch } from './path.ts';
import { airOf, type AirQuantities, drawsIn, flightInputs, type Release } from './release.ts';
import { speedThrough } from './speedThrough.ts';
import { speedToScore } from './speedToScore.ts';

/** Where a release is meant to go. */
export interface SpreadTarget {
  readonly distance: Quantity<'m'>;
  /** Above the floor. */
  readonly height: Quantity<'m'>;
  /** Whether the target is entered from above. */
  readonly mustFall: boolean;
  /** Its shape and the ball's radius, m, for the chance of passing it; null: a mere point. */
  readonly aim: { readonly shape: Aim; readonly ballRadius: number } | null;
}

/** A result whose uncertainty comes from random draws, with the interval they fill. */
export interface Spread<U extends Unit> {
  readonly reading: Reading<U>;
  /** Holds 95 % of the draws, as much outside either end; null where the reading has no uncertainty. */
  readonly interval: readonly [low: number, high: number] | null;
}

export interface ReleaseSpread {
  readonly entryAngle: Spread<'rad'>;
  /** Past the target at its height; negative: short of it. */
  readonly missDistance: Spread<'m'>;
  readonly timeOfFlight: Spread<'s'>;
  readonly speedToScore: Spread<'m/s'>;
  /** Share of the draws that pass the target; Unknown for a mere point. */
  readonly chance: Reading<'1'>;
  readonly draws: number;
  /** Whether every figure is settled to one digit of its uncertainty. */
  readonly isStable: boolean;
  readonly seed: number;
}

const SEED = 1;
const MONTE_CARLO = {
  cite: 'Random draws of all inputs at once: JCGM 101:2008, 6.4.8 and 7',
  status: 'published',
} as const;
/** Of the path of one draw, relative: far below any uncertainty, and half the work. */
const DRAW_TOLERANCE = 1e-8;

/**
 * What a release leads to when release, target and air are each known only so well: the path bends, and where a ball
 * barely gets there it bends so much that first-order propagation misleads. All inputs are drawn together, normal, speed
 * and angle correlated as given; the draws stop by themselves once they are stable.
 *
 * @param seed the same gives the same numbers
 * @returns Unknown where an input has no uncertainty, naming it. A result that fails in more than 1 % of the draws
 *   keeps its value and has no uncertainty, with the share that failed
 * @throws DomainError 'input-out-of-range' as forwardFlight
 * @source JCGM 101:2008; flight as in forwardFlight and speedToScore
 */
export function releaseSpread(
  release: Release,
  target: SpreadTarget,
  air: AirQuantities,
  options: MonteCarloOptions & { readonly seed?: number } = {},
): ReleaseSpread | Unknown {
  const { distance, height, mustFall, aim } = target;
  const arrival = forwardFlight(release, air, 'first-order').fallingTo(height);
  const inputs = { ...flightInputs(release, air), d: distance, y_t: height };
  const without = Object.values(inputs).find(({ u }) => u === null);
  if (without !== undefined) return { unknown: `${without.working.name} has no uncertainty: ${without.uReason}` };

  const rise = derive(
    { symbol: 'Δh', name: 'Target above release', unit: 'm', formula: 'Δh = y_t - y_0', source: DEFINITION },
    { y_t: height, y_0: release.height },
    (p) => p.y_t - p.y_0,
  );
  const scoring = speedToScore(distance, rise, release.angle, air, mustFall);
  const { seed = SEED, ...rest } = options;
  const draw = drawer(inputs, release.correlation ?? 0, seed);
  const { θ, y_0, d, y_t } = draw.values;
  const start = 'unknown' in arrival ? null : arrival.time.value;
  const similar = isKnown(scoring) ? scoring.value / speedThrough({ d, Δh: y_t - y_0, θ, k: 0, l: 0 }) : null;

  // Entry angle, distance past the target, time, speed to score, 1 where the target is passed.
  const nominal = [0, 0, 0, isKnown(scoring) ? scoring.value : 0, 0];
  if (!('unknown' in arrival)) {
    nominal[0] = arrival.entryAngle.value;
    nominal[1] = arrival.distance.value - d;
    nominal[2] = arrival.time.value;
  }
  let [all, short, unsolved] = [0, 0, 0];
  const results = monteCarloTogether(
    5,
    (into) => {
      all += 1;
      // What has no value in this draw stands at its own: too few to matter, or there is no uncertainty in the end.
      into.set(nominal);
      const p = draw.next();
      const [from, around] = [launch(p.v, p.θ, p.y_0), { ...airOf(p), tolerance: DRAW_TOLERANCE }];
      const state = start === null ? null : falling(from, p.y_t, around, start);
      if (state === null) short += 1;
      else {
        into[0] = Math.atan2(-state.vy, state.vx);
        into[1] = state.x - p.d;
        into[2] = state.t;
      }
      if (aim !== null) {
        const shape = moved(aim.shape, p.d, p.y_t);
        into[4] = Number(passesAim(from, shape, aim.ballRadius, around, null, state));
      }
      if (similar === null) return;
      const speed = speedThrough({ ...p, Δh: p.y_t - p.y_0 }, similar, DRAW_TOLERANCE);
      if (speed > 0) into[3] = speed;
      else unsolved += 1;
    },
    { ...drawsIn(air), ...rest },
  );

  const spread = <U extends Unit>(first: Reading<U>, at: number, failed: number, why: string): Spread<U> => {
    const result = results[at] as MonteCarloResult;
    if (!isKnown(first)) return { reading: first, interval: null };
    if (failed > MAY_LEAVE_OUT * all) {
      const uReason = `in ${((100 * failed) / all).toPrecision(2)} % of the draws ${why}`;
      return { reading: { ...first, u: null, uReason }, interval: null };
    }
    const variant = `${first.working.variant ?? ''}; u from ${result.draws} random draws (JCGM 101)`;
    return {
      reading: { ...first, u: result.sd, uReason: null, working: { ...first.working, variant } },
      interval: result.symmetric,
    };
  };
  const notThere = 'the ball never gets that high';
  const miss: Reading<'m'> =
    'unknown' in arrival
      ? arrival
      : derive(
          { symbol: 'e', name: 'Distance past the target', unit: 'm', formula: 'e = x - d', source: DEFINITION },
          { x: arrival.distance, d: distance },
          (p) => p.x - p.d,
        );
  const passed = results[4] as MonteCarloResult;
  return {
    entryAngle: spread('unknown' in arrival ? arrival : arrival.entryAngle, 0, short, notThere),
    missDistance: spread(miss, 1, short, notThere),
    timeOfFlight: spread('unknown' in arrival ? arrival : arrival.time, 2, short, notThere),
    speedToScore: spread(scoring, 3, unsolved, 'no speed reaches the target'),
    chance:
      aim === null
        ? { unknown: 'only for a ball and a target whose size is known' }
        : measured(
            'P',
            'Chance of passing the target',
            passed.mean,
            '1',
            Math.sqrt((passed.mean * (1 - passed.mean)) / passed.draws),
            MONTE_CARLO,
          ),
    draws: passed.draws,
    isStable: results.every((result) => result.isStable),
    seed,
  };
}

const DEFINITION = { cite: 'Definition', status: 'derived' } as const;

function moved(shape: Aim, distance: number, height: number): Aim {
  switch (shape.kind) {
    case 'ring':
      return { ...shape, distance, height };
    case 'goal':
      return { ...shape, distance };
    case 'net':
      return { ...shape, distance, height, courtEnd: shape.courtEnd + distance - shape.distance };
  }
}

/** Draws of all inputs: independent normals, but for speed and angle. Drag below 0 does not exist and counts as 0. */
function drawer<K extends string>(inputs: Readonly<Record<K | 'v' | 'θ' | 'k', Quantity>>, r: number, seed: number) {
  const normal = standardNormal(seededRandom(seed));
  const names = Object.keys(inputs) as (K | 'v' | 'θ' | 'k')[];
  const values = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<
    (typeof names)[number],
    number
  >;
  const us = names.map((name) => inputs[name].u ?? 0);
  return {
    values,
    next: () => {
      const drawn = { ...values };
      let speedZ = 0;
      names.forEach((name, i) => {
        let z = normal();
        if (name === 'v') speedZ = z;
        if (name === 'θ') z = r * speedZ + Math.sqrt(1 - r * r) * z;
        drawn[name] += (us[i] as number) * z;
      });
      if (drawn.k < 0) drawn.k = 0;
      return drawn;
    },
  };
}
