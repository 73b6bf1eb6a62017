import { airborneSpan, CONTACT_HEIGHT_M } from '../event/airborneSpan.ts';
import { lowLevel } from '../event/lowLevel.ts';
import { upwardJolt } from '../event/upwardJolt.ts';
import { zeroLagButterworth } from '../signal/zeroLagButterworth.ts';
import { longestRun } from './longestRun.ts';
import { SHORTEST_SMOOTHED } from './pointSeries.ts';
import type { Scene } from './scene.ts';

type Side = 'left' | 'right';

/** A foot that leaves the floor or comes down on it. Frames of the scene, between them where it is known so well. */
export interface FootContact {
  readonly frame: number;
  readonly uFrames: number;
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
    const jolts = jolted(view, low, into);
    if (jolts.length === 0) return { frame: low, uFrames: Math.hypot(LOW_FRAME_U, LOW_U_S * view.rateHz), low };
    return { ...jolts.reduce((a, b) => ((b.frame - a.frame) * into > 0 ? b : a)), low };
  };
  return { takeoff: contact(span.takeoff, 1), landing: contact(span.landing, -1) };
}

/** @param into the flight: on in time from take-off, back from landing */
function jolted(view: Scene, low: number, into: 1 | -1): Omit<FootContact, 'low'>[] {
  const { rateHz } = view;
  const methodU = rateHz * (into === 1 ? METHOD_U_S.leaving : METHOD_U_S.comingDown);
  const [back, on] = [INTO_CONTACT_S, INTO_FLIGHT_S].map((s) => Math.round(s * rateHz)) as [number, number];
  return (['left', 'right'] as const).flatMap((side) =>
    (['toe', 'heel'] as const).flatMap((part) => {
      const seen = longestRun(
        new Map([...(view.points.get(`${part}-${side}`)?.raw ?? [])].map(([frame, { y }]) => [frame, y])),
      );
      if (seen === null || seen.values.length < SHORTEST_SMOOTHED) return [];
      const cutoffHz = Math.min(FOOT_CUTOFF_HZ, rateHz / 3);
      const heights = zeroLagButterworth(seen.values, rateHz, cutoffHz);
      const at = low - seen.firstFrame;
      if (!((heights[at] ?? Infinity) <= lowLevel(heights) + STANDS_WITHIN_M)) return [];
      const jolt = upwardJolt(
        heights,
        at - (into === 1 ? back : fastest(heights, at, -1, on)),
        at + (into === 1 ? fastest(heights, at, 1, on) : back),
      );
      if (jolt === null) return [];
      const own = Math.sqrt(Math.max(0, jolt.width ** 2 - ((FILTER_WIDTH * rateHz) / cutoffHz) ** 2));
      return [
        { frame: seen.firstFrame + jolt.index, uFrames: Math.hypot(methodU, Math.hypot(own, 1) / Math.sqrt(12)) },
      ];
    }),
  );
}

/** Samples into the flight until the foot is fastest: nothing pushes it from there on, what follows is the leg's own swing. */
function fastest(heights: readonly number[], at: number, step: 1 | -1, most: number): number {
  const speed = (i: number) => ((heights[i + step] ?? Number.NaN) - (heights[i - step] ?? Number.NaN)) / 2;
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
