import { DomainError } from '../../errors.ts';
import { isKnown, measured, type Quantity, type Reading } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { type Aim, passesAim } from './passesAim.ts';
import { falling, launch } from './path.ts';
import { airInputs, airOf, type AirQuantities, refuseImpossibleRelease, type Release } from './release.ts';

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

const NO_U = 'a property of exactly this release and target, not a measurement';
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
 * @param ballRadius m, > 0
 * @returns all Unknown, with the reason, where this release does not pass in the first place
 * @throws DomainError 'input-out-of-range'
 * @source geometry; Brancazio 1981
 */
export function marginForError(release: Release, aim: Aim, ballRadius: number, air: AirQuantities): Margin {
  refuseImpossibleRelease('marginForError', release, air);
  if (!(ballRadius > 0)) {
    throw new DomainError('input-out-of-range', `marginForError needs a ball radius above 0 m, got ${ballRadius} m`);
  }
  const { k, l } = airInputs(air);
  const around = airOf({ k: k.value, l: l.value });
  const [v, θ, y0] = [release.speed.value, release.angle.value, release.height.value];
  const room: Reading<'m'> =
    aim.kind === 'ring' ? roomInRing(release, aim, ballRadius, air) : { unknown: 'only a ring has this' };
  const heldRoom = isKnown(room) ? room.value : null;
  const isThrough = (speed: number, angle: number, ownRoom = false) =>
    passesAim(launch(speed, angle, y0), aim, ballRadius, around, ownRoom ? null : heldRoom);

  if (!isThrough(v, θ)) {
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
  const speed = (name: string, sign: number): Reading<'m/s'> =>
    edge(name, 'm/s', SPEED_SPAN * v, (off) => isThrough(v + sign * off, θ));
  const angle = (name: string, sign: number, ownRoom = false): Reading<'rad'> =>
    edge(name, 'rad', ANGLE_SPAN, (off) => isThrough(v, θ + sign * off, ownRoom));
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

function roomInRing(
  release: Release,
  aim: Extract<Aim, { kind: 'ring' }>,
  radius: number,
  air: AirQuantities,
): Reading<'m'> {
  const sineOf = (p: { v: number; θ: number; y_0: number; k: number; l: number }): number => {
    const state = falling(launch(p.v, p.θ, p.y_0), aim.height, airOf(p));
    return state === null ? Number.NaN : -state.vy / Math.hypot(state.vx, state.vy);
  };
  const inputs = { v: release.speed, θ: release.angle, y_0: release.height, ...airInputs(air) };
  const values = { v: inputs.v.value, θ: inputs.θ.value, y_0: inputs.y_0.value, k: inputs.k.value, l: inputs.l.value };
  if (!(sineOf(values) > 0)) return { unknown: 'the ball does not come down through the ring' };
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
    (p) => (p.D_ring - p.D_ball / sineOf(p)) / 2,
  );
}

/** The largest deviation up to `span` that still passes, walking outwards, then halving. */
function edge<U extends 'm/s' | 'rad'>(
  name: string,
  unit: U,
  span: number,
  isThrough: (off: number) => boolean,
): Quantity<U> {
  const step = span / STEPS;
  let inside = 0;
  while (inside + step <= span && isThrough(inside + step)) inside += step;
  let outside = Math.min(span, inside + step);
  for (let i = 0; i < 40 && outside - inside > 1e-9; i += 1) {
    const middle = (inside + outside) / 2;
    if (isThrough(middle)) inside = middle;
    else outside = middle;
  }
  return {
    ...measured('δ', name, inside, unit, NO_U, SOURCE),
    working: {
      symbol: 'δ',
      name,
      formula: 'largest change that still passes, the rest held fixed',
      inputs: [],
      variant: null,
      source: SOURCE,
    },
  };
}
