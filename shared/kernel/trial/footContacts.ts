import { airborneSpan, CONTACT_HEIGHT_M } from '../event/airborneSpan.ts';
import { lowLevel } from '../event/lowLevel.ts';
import { upwardJolt } from '../event/upwardJolt.ts';
import { zeroLagButterworth } from '../signal/zeroLagButterworth.ts';
import { longestRun } from './longestRun.ts';
import { SHORTEST_SMOOTHED } from './pointSeries.ts';
import type { Scene } from './scene.ts';

type Side = 'left' | 'right';

/** When a foot leaves the floor or comes down on it. Frames of the scene, between them where it is known so well. */
export interface FootInstant {
  readonly frame: number;
  readonly uFrames: number;
}

export interface FootContact extends FootInstant {
  /** The last frame with the lowest foot near the floor before, or the first after. */
  readonly low: number;
}

export interface FootContacts {
  /** Null where the clip begins or ends in the air. */
  readonly takeoff: FootContact | null;
  readonly landing: FootContact | null;
}

/** A foot is 3 cm up within a frame or so of leaving: ± 1 frame, rectangular. */
const LOW_FRAME_U = 1 / Math.sqrt(3);
/** A foot takes those 3 cm at about 2 m/s, up as down; rectangular: a convention. */
const LOW_U_S = CONTACT_HEIGHT_M / 2 / Math.sqrt(12);
/** Low-pass of feet where contact is looked for: contact is sudden, so above that of the other points. A convention. */
const FOOT_CUTOFF_HZ = 20;
/**
 * As wide as that low-pass makes what has no width, in periods of its cutoff: full width at half height of the impulse response
 * of a Butterworth of second order run both ways, e^−x (cos x + sin x) = ½ at x = 1.0137, so 2 x √2 / 2π, its cutoff raised
 * by 1/0.802 for the two passes.
 */
const FILTER_WIDTH = ((2 * 1.0137 * Math.SQRT2) / (2 * Math.PI)) * 0.802;
/**
 * How far the jolt lies from what a force plate says, standard deviation over runners: their 95 % intervals, −8.1 to 12.2 ms
 * for leaving (by the jolt's own beginning) and −11.8 to 18.1 ms for coming down, over 3.92. Handsaker et al. 2016.
 */
const METHOD_U_S = { leaving: 0.0203 / 3.92, comingDown: 0.0299 / 3.92 };
/** So far into the contact and so far into the flight the jolt is looked for: conventions, short against any jump. */
const INTO_CONTACT_S = 0.05;
const INTO_FLIGHT_S = 0.1;
/** A point higher above its own low level than this, where the lowest foot is down, is of another leg: a convention. */
const STANDS_WITHIN_M = 2 * CONTACT_HEIGHT_M;

/**
 * When the body leaves the floor and comes back: roughly from the height of its lowest foot, then, for each of heels and
 * toes that are down there, at its hardest upward jolt; the last of them to leave and the first to come down. A marker on
 * the foot rises while the toes still push, so height alone would say that it left long before.
 *
 * @returns null where nothing stays up; each with the jolt's own width (less the filter's) and a frame as rectangular
 *   uncertainties and the method's own, or, where there is no jolt to be seen, where the lowest foot was low
 * @source airborneSpan, upwardJolt; which points count, and the windows, are conventions
 */
export function footContacts(view: Scene): FootContacts | null {
  const feet = lowestFeet(view);
  const span = feet === null ? null : airborneSpan(feet.heights, view.rateHz);
  if (feet === null || span === null) return null;
  const contact = (sample: number | null, into: 1 | -1): FootContact | null => {
    if (sample === null) return null;
    const low = feet.firstFrame + sample;
    const jolts = jolted(view, low, ['left', 'right'], into === 1 ? LEAVING : COMING_DOWN);
    if (jolts.length === 0) return { frame: low, uFrames: Math.hypot(LOW_FRAME_U, LOW_U_S * view.rateHz), low };
    const { frame, uFrames } = jolts.reduce((a, b) => ((b.frame - a.frame) * into > 0 ? b : a));
    return { frame, uFrames, low };
  };
  return { takeoff: contact(span.takeoff, 1), landing: contact(span.landing, -1) };
}

/**
 * When a foot that is seen to stand came down: at the hardest upward jolt of its heel or its toe, whichever is harder, for
 * the other may still turn about it.
 *
 * @param stands a frame of the scene soon after
 * @returns null where there is no jolt to be seen
 * @source as footContacts
 */
export function touchdown(view: Scene, stands: number, sides: readonly Side[]): FootInstant | null {
  const jolts = jolted(view, stands, sides, HAS_COME_DOWN);
  return jolts.length === 0 ? null : jolts.reduce((a, b) => (b.strength > a.strength ? b : a));
}

interface Jolted extends FootInstant {
  readonly strength: number;
}

/** Where the jolt is looked for, about a sample at which the foot is low, and how far off it may be. */
interface Search {
  readonly methodUS: number;
  readonly stretch: (heights: readonly number[], at: number, rateHz: number) => readonly [first: number, last: number];
}

const LEAVING: Search = {
  methodUS: METHOD_U_S.leaving,
  stretch: (heights, at, rateHz) => [at - samplesIn(INTO_CONTACT_S, rateHz), at + untilFastest(heights, at, 1, rateHz)],
};
const COMING_DOWN: Search = {
  methodUS: METHOD_U_S.comingDown,
  stretch: (heights, at, rateHz) => [
    at - untilFastest(heights, at, -1, rateHz),
    at + samplesIn(INTO_CONTACT_S, rateHz),
  ],
};
/** The foot stands already: it was stopped before, after it fell fastest. */
const HAS_COME_DOWN: Search = {
  methodUS: METHOD_U_S.comingDown,
  stretch: (heights, at, rateHz) => {
    const before = Array.from({ length: samplesIn(INTO_FLIGHT_S, rateHz) }, (_, n) => at - n);
    return [before.reduce((a, b) => (fall(heights, b) > fall(heights, a) ? b : a), at), at + 1];
  },
};

const samplesIn = (s: number, rateHz: number) => Math.round(s * rateHz);
const fall = (heights: readonly number[], i: number) => (heights[i - 1] ?? Number.NaN) - (heights[i + 1] ?? Number.NaN);

function jolted(view: Scene, low: number, sides: readonly Side[], search: Search): Jolted[] {
  const { rateHz } = view;
  return sides.flatMap((side) =>
    (['toe', 'heel'] as const).flatMap((part) => {
      const seen = longestRun(
        new Map([...(view.points.get(`${part}-${side}`)?.raw ?? [])].map(([frame, { y }]) => [frame, y])),
      );
      if (seen === null || seen.values.length < SHORTEST_SMOOTHED) return [];
      const cutoffHz = Math.min(FOOT_CUTOFF_HZ, rateHz / 3);
      const heights = zeroLagButterworth(seen.values, rateHz, cutoffHz);
      const at = low - seen.firstFrame;
      if (!((heights[at] ?? Infinity) <= lowLevel(heights) + STANDS_WITHIN_M)) return [];
      const jolt = upwardJolt(heights, ...search.stretch(heights, at, rateHz));
      if (jolt === null) return [];
      const own = Math.sqrt(Math.max(0, jolt.width ** 2 - ((FILTER_WIDTH * rateHz) / cutoffHz) ** 2));
      const uFrames = Math.hypot(search.methodUS * rateHz, Math.hypot(own, 1) / Math.sqrt(12));
      return [{ frame: seen.firstFrame + jolt.index, uFrames, strength: jolt.strength }];
    }),
  );
}

/** Samples into the flight until the foot is fastest: nothing pushes it from there on, what follows is the leg's own swing. */
function untilFastest(heights: readonly number[], at: number, step: 1 | -1, rateHz: number): number {
  const most = samplesIn(INTO_FLIGHT_S, rateHz);
  const speed = (i: number) => -step * fall(heights, i);
  for (let n = 1; n < most; n += 1) {
    if (!(speed(at + step * (n + 1)) > speed(at + step * n))) return n;
  }
  return most;
}

/** Height of the lowest of heels and toes, frame by frame. */
export function lowestFeet(
  { points }: Scene,
  sides: readonly Side[] = ['left', 'right'],
): { firstFrame: number; heights: readonly number[] } | null {
  const lowest = new Map<number, number>();
  for (const name of sides.flatMap((side) => [`toe-${side}`, `heel-${side}`])) {
    for (const [frame, { y }] of points.get(name)?.smooth ?? []) lowest.set(frame, Math.min(y, lowest.get(frame) ?? y));
  }
  const stretch = longestRun(lowest);
  return stretch === null ? null : { firstFrame: stretch.firstFrame, heights: stretch.values };
}
