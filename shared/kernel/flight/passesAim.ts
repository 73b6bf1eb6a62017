import { type Air, falling, passing, type State } from './path.ts';

/** What the ball has to pass, seen from the side. Distances from release, heights above the floor, metres. */
export type Aim =
  /** A level ring, entered from above without touching it. */
  | { readonly kind: 'ring'; readonly distance: number; readonly height: number; readonly diameter: number }
  /** An upright opening between two heights. */
  | { readonly kind: 'goal'; readonly distance: number; readonly bottom: number; readonly top: number }
  /** Over a net and down before the end of the court. */
  | { readonly kind: 'net'; readonly distance: number; readonly height: number; readonly courtEnd: number };

/**
 * Whether a ball set off like this passes its target. Ring: its centre within the room left by a ball of that size at
 * the entry angle, without touching. Goal: the whole ball between bottom and top. Net: the whole ball over it, and down
 * within the court.
 *
 * @param radius of the ball, m
 * @param heldRoom ring only: this much room either side of its middle, m, whatever the entry angle; null: what this path
 *   itself has
 * @param fallen ring only: where the ball comes down through its height, if that is known already
 * @source geometry of a sphere and an opening
 */
export function passesAim(
  start: State,
  aim: Aim,
  radius: number,
  air: Air,
  heldRoom: number | null,
  fallen?: State | null,
): boolean {
  return clearances(start, aim, radius, air, heldRoom, fallen).every((clear) => clear >= 0);
}

/**
 * How far the ball clears each of the two edges of its target, m: near and far edge of a ring or a court, bottom and top
 * of a goal; the net counts as near. Negative: it does not; NaN: it never gets there.
 */
export function clearances(
  start: State,
  aim: Aim,
  radius: number,
  air: Air,
  heldRoom: number | null,
  fallen?: State | null,
): readonly [number, number] {
  switch (aim.kind) {
    case 'ring': {
      const state = fallen ?? falling(start, aim.height, air);
      if (state === null || state.vx <= 0) return NOWHERE;
      const sine = -state.vy / Math.hypot(state.vx, state.vy);
      const room = heldRoom ?? (aim.diameter - (2 * radius) / sine) / 2;
      return [state.x - aim.distance + room, aim.distance + room - state.x];
    }
    case 'goal': {
      const state = passing(start, aim.distance, air);
      return state === null ? NOWHERE : [state.y - radius - aim.bottom, aim.top - state.y - radius];
    }
    case 'net': {
      const over = passing(start, aim.distance, air);
      const down = falling(start, radius, air);
      return over === null || down === null ? NOWHERE : [over.y - radius - aim.height, aim.courtEnd - down.x];
    }
  }
}

const NOWHERE = [Number.NaN, Number.NaN] as const;
