import { DomainError } from '../../errors.ts';
import { measured, type Quantity, type Reading } from '../../quantity.ts';
import type { PointU } from '../plane/point.ts';
import { type Correlations, derive, pairKey } from '../quantity/derive.ts';
import { type Aim, clearances } from './passesAim.ts';
import { falling, launch } from './path.ts';
import { airOf, type AirQuantities, flightInputs, refuseImpossibleRelease, type Release } from './release.ts';

export interface Margin {
  /** Whether this very release passes. */
  readonly passes: boolean;
  /** Ring only: half the room along the path, m; negative: the ball does not fit at this entry angle. */
  readonly room: Reading<'m'>;
  /** How much slower, faster, flatter, steeper it may be and still pass. */
  readonly slower: Reading<'m/s'>;
  readonly faster: Reading<'m/s'>;
  readonly flatter: Reading<'rad'>;
  readonly steeper: Reading<'rad'>;
  /**
   * Ring only: the same for a ball that may not touch the ring at all, with the entry angle each trial release really
   * has. Smaller than `flatter`, because a flatter ball also finds less room. Null for other targets.
   */
  readonly untouched: { readonly flatter: Reading<'rad'>; readonly steeper: Reading<'rad'> } | null;
}

/** How exactly the target's place is known, m; or why that is not known. */
export interface AimU {
  readonly distance: PointU;
  readonly height: PointU;
}

const EXACT: AimU = { distance: 0, height: 0 };
const SOURCE = {
  cite: 'Geometry of a sphere and an opening: a ball fits a ring untouched if sin θ_e ≥ D_ball/D_ring',
  status: 'derived',
} as const;

/** Searched this far either way: half the speed, 45°. */
const SPEED_SPAN = 0.5;
const ANGLE_SPAN = Math.PI / 4;
const STEPS = 180;

/**
 * How far the speed alone, or the angle alone, may be off before the ball no longer passes its target.
 * Ring: the centre stays within ±½(D_ring − D_ball/sin θ_e) of the ring's middle, with θ_e of the release judged, as
 * published margins are worked out; `untouched` lets θ_e change too. Goal: the whole ball between bottom and top. Net:
 * the whole ball over it, and down within the court.
 *
 * Uncertainty: of the release, the ball's drag and the target's place, each carried to the edge it moves.
 *
 * @param ballRadius m, > 0
 * @param aimU of the target's place; absent: exact
 * @returns all Unknown, with the reason, where this release does not pass in the first place
 * @throws DomainError 'input-out-of-range'
 * @source geometry; Brancazio 1981
 */
export function marginForError(
  release: Release,
  aim: Aim,
  ballRadius: number,
  air: AirQuantities,
  aimU: AimU = EXACT,
): Margin {
  refuseImpossibleRelease('marginForError', release, air);
  if (!(ballRadius > 0)) {
    throw new DomainError('input-out-of-range', `marginForError needs a ball radius above 0 m, got ${ballRadius} m`);
  }
  const inputs = {
    ...flightInputs(release, air),
    Δd: measured('Δd', 'Target farther than entered', 0, 'm', aimU.distance),
    Δy: measured('Δy', 'Target higher than entered', 0, 'm', aimU.height),
  };
  const here = valuesOf(inputs);
  const room: Reading<'m'> =
    aim.kind === 'ring' ? roomInRing(release, aim, ballRadius, air) : { unknown: 'only a ring has this' };
  const clear = (p: Placed, faster: number, steeper: number, ownRoom: boolean) =>
    clearances(
      launch(p.v + faster, p.θ + steeper, p.y_0),
      movedAim(aim, p),
      ballRadius,
      airOf(p),
      ownRoom || aim.kind !== 'ring' ? null : roomAt(p, movedAim(aim, p), ballRadius),
    );

  if (!clear(here, 0, 0, false).every((one) => one >= 0)) {
    const missed = { unknown: 'this release does not pass the target, so there is no margin to give' };
    const both = { flatter: missed, steeper: missed };
    return {
      passes: false,
      room,
      slower: missed,
      faster: missed,
      ...both,
      untouched: aim.kind === 'ring' ? both : null,
    };
  }
  const correlations = { [pairKey('v', 'θ')]: release.correlation ?? 0 };
  const speed = (name: string, sign: 1 | -1): Reading<'m/s'> =>
    edge(name, 'm/s', SPEED_SPAN * here.v, inputs, correlations, (p, off) => clear(p, sign * off, 0, false));
  const angle = (name: string, sign: 1 | -1, ownRoom = false): Reading<'rad'> =>
    edge(name, 'rad', ANGLE_SPAN, inputs, correlations, (p, off) => clear(p, 0, sign * off, ownRoom));
  return {
    passes: true,
    room,
    slower: speed('May be slower by', -1),
    faster: speed('May be faster by', 1),
    flatter: angle('May be flatter by', -1),
    steeper: angle('May be steeper by', 1),
    untouched:
      aim.kind === 'ring'
        ? {
            flatter: angle('May be flatter without touching by', -1, true),
            steeper: angle('May be steeper without touching by', 1, true),
          }
        : null,
  };
}

/** The values of everything an edge depends on. */
type Placed = Readonly<Record<'v' | 'θ' | 'y_0' | 'k' | 'l' | 'Δd' | 'Δy', number>>;
type PlacedInputs = Readonly<Record<keyof Placed, Quantity>>;

function valuesOf(inputs: PlacedInputs): Placed {
  return Object.fromEntries(Object.entries(inputs).map(([symbol, { value }]) => [symbol, value])) as Placed;
}

function movedAim(aim: Aim, { Δd, Δy }: Placed): Aim {
  const distance = aim.distance + Δd;
  switch (aim.kind) {
    case 'ring':
      return { ...aim, distance, height: aim.height + Δy };
    case 'goal':
      return { ...aim, distance };
    case 'net':
      return { ...aim, distance, height: aim.height + Δy, courtEnd: aim.courtEnd + Δd };
  }
}

/** Sine of the angle at which the ball comes down through a height; NaN if it does not. */
function sineOfEntry(p: Omit<Placed, 'Δd' | 'Δy'>, height: number): number {
  const state = falling(launch(p.v, p.θ, p.y_0), height, airOf(p));
  return state === null ? Number.NaN : -state.vy / Math.hypot(state.vx, state.vy);
}

function roomAt(p: Placed, aim: Aim, radius: number): number | null {
  return aim.kind === 'ring' ? (aim.diameter - (2 * radius) / sineOfEntry(p, aim.height)) / 2 : null;
}

function roomInRing(
  release: Release,
  aim: Extract<Aim, { kind: 'ring' }>,
  radius: number,
  air: AirQuantities,
): Reading<'m'> {
  const inputs = flightInputs(release, air);
  const values = { v: inputs.v.value, θ: inputs.θ.value, y_0: inputs.y_0.value, k: inputs.k.value, l: inputs.l.value };
  if (!(sineOfEntry(values, aim.height) > 0)) return { unknown: 'the ball does not come down through the ring' };
  return derive(
    {
      symbol: 'r',
      name: 'Room either side of the middle of the ring',
      unit: 'm',
      formula: 'r = (D_ring - D_ball / sin θ_e) / 2',
      variant: 'along the path, no contact with the ring',
      source: SOURCE,
    },
    {
      ...inputs,
      D_ring: measured('D_ring', 'Ring', aim.diameter, 'm', 0),
      D_ball: measured('D_ball', 'Ball', 2 * radius, 'm', 0),
    },
    (p) => (p.D_ring - p.D_ball / sineOfEntry(p, aim.height)) / 2,
  );
}

type Clear = (p: Placed, off: number) => readonly [number, number];

/**
 * The largest deviation up to `span` that still passes, walking outwards, then halving. Its uncertainty: where the edge
 * that was met there lies for values a little different, by Newton's method from where it lies now.
 */
function edge<U extends 'm/s' | 'rad'>(
  name: string,
  unit: U,
  span: number,
  inputs: PlacedInputs,
  correlations: Correlations,
  clear: Clear,
): Quantity<U> {
  const here = valuesOf(inputs);
  const isThrough = (off: number) => clear(here, off).every((one) => one >= 0);
  const step = span / STEPS;
  let inside = 0;
  while (inside + step <= span && isThrough(inside + step)) inside += step;
  let outside = Math.min(span, inside + step);
  for (let i = 0; i < 40 && outside - inside > 1e-9; i += 1) {
    const middle = (inside + outside) / 2;
    if (isThrough(middle)) inside = middle;
    else outside = middle;
  }
  const what = {
    symbol: 'δ',
    name,
    unit,
    formula: 'largest change that still passes, the rest held fixed',
    source: SOURCE,
  };
  const [near, far] = clear(here, inside);
  if (isThrough(span) || Math.min(near, far) > 1e-6) {
    const why = isThrough(span)
      ? 'all that was searched passes'
      : 'beyond it the ball does not reach the target at all';
    return measured('δ', name, inside, unit, why, SOURCE);
  }
  const met = near <= far ? 0 : 1;
  const nearby = (p: Placed): number => {
    let off = inside;
    for (let i = 0; i < 8; i += 1) {
      const at = clear(p, off)[met];
      const slope = (clear(p, off + 1e-4 * span)[met] - at) / (1e-4 * span);
      off -= at / slope;
    }
    return off;
  };
  return derive(what, inputs, nearby, correlations);
}
