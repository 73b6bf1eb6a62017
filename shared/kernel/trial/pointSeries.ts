import type { LandmarkTrack } from '../../model/trial.ts';
import type { Point } from '../plane/point.ts';
import type { FrameClock } from '../event/frameClock.ts';
import { fillGaps } from '../signal/fillGaps.ts';
import { resample } from '../signal/resample.ts';
import { zeroLagButterworth } from '../signal/zeroLagButterworth.ts';

/**
 * One digitised point through time, in the plane of motion, short gaps closed. Frames are even: of the film itself, or, where
 * its own are uneven, of a grid at its mean rate.
 */
export interface PointSeries {
  /** Smoothed. Null in a frame without the point. */
  readonly smooth: ReadonlyMap<number, Point>;
  /** Not smoothed, gaps closed. */
  readonly raw: ReadonlyMap<number, Point>;
  /**
   * As digitised, each at its own instant, for fits that do their own smoothing: the same as `raw`; of an uneven film by
   * fractions of a frame, and nothing made up.
   */
  readonly seen: ReadonlyMap<number, Point>;
  readonly filledFrames: readonly number[];
  readonly openGaps: readonly (readonly [number, number])[];
}

/** Gaps up to this long are closed: a convention, short against any phase. */
export const LONGEST_GAP_S = 0.05;
/** Stretches shorter than this many frames are left unsmoothed: a filter would be all ends. */
export const SHORTEST_SMOOTHED = 10;

/**
 * A track in metres, gap-filled and low-pass filtered run by run. A filter needs even times, so this is the one place where
 * an uneven film is resampled: by the cubic through the four samples around each instant of the grid. Free flight comes out
 * exactly; the noise of a sample made up between two is a little less than that of one digitised, so that its stated
 * uncertainty errs on the wide side; the grid has as many frames a second as the film, so a filter leaves of the noise what
 * is stated.
 *
 * @param toMetres the trial's plane
 * @param cutoffHz 0 < fc < fs/2
 * @throws DomainError from fillGaps for frames out of order or coordinates that are not finite
 * @source fillGaps, resample, zeroLagButterworth
 */
export function pointSeries(
  track: LandmarkTrack,
  toMetres: (point: Point) => Point,
  clock: FrameClock,
  cutoffHz: number,
): PointSeries {
  const { rateHz } = clock;
  const places = track.samples.map(([frame, x, y]) => ({ frame, ...toMetres({ x, y }) }));
  const longest = Math.max(2, Math.floor(LONGEST_GAP_S * rateHz));
  const xs = fillGaps(
    places.map(({ frame, x }) => [frame, x]),
    longest,
  );
  const ys = fillGaps(
    places.map(({ frame, y }) => [frame, y]),
    longest,
  );
  const raw = new Map<number, Point>();
  const smooth = new Map<number, Point>();
  const isMadeUp = new Set(xs.filledFrames);
  const runs = xs.runs.map(({ firstFrame, values }, r) => ({ firstFrame, values, heights: ys.runs[r]?.values ?? [] }));
  const even = clock.isEven ? runs : runs.flatMap((run) => onEvenGrid(run, clock, isMadeUp, longest));
  for (const { firstFrame, values, heights } of even) {
    const [x, y] = [smoothed(values, rateHz, cutoffHz), smoothed(heights, rateHz, cutoffHz)];
    values.forEach((value, i) => {
      raw.set(firstFrame + i, { x: value, y: heights[i] as number });
      smooth.set(firstFrame + i, { x: x[i] as number, y: y[i] as number });
    });
  }
  const seen = clock.isEven
    ? raw
    : new Map(places.map(({ frame, x, y }) => [clock.timeOf(frame) * rateHz, { x, y }] as const));
  return { smooth, raw, seen, filledFrames: xs.filledFrames, openGaps: xs.openGaps };
}

interface Run {
  readonly firstFrame: number;
  readonly values: readonly number[];
  readonly heights: readonly number[];
}

/** A run of an uneven film's frames as runs of the even grid: none across a hole in time that is too long to fill. */
function onEvenGrid(
  { firstFrame, values, heights }: Run,
  clock: FrameClock,
  isMadeUp: ReadonlySet<number>,
  longest: number,
): Run[] {
  const { rateHz } = clock;
  const stretches: { t: number; x: number; y: number }[][] = [];
  values.forEach((x, i) => {
    if (isMadeUp.has(firstFrame + i)) return;
    const here = { t: clock.timeOf(firstFrame + i), x, y: heights[i] as number };
    const stretch = stretches.at(-1);
    const before = stretch?.at(-1);
    if (stretch !== undefined && before !== undefined && (here.t - before.t) * rateHz < longest + 1.5)
      stretch.push(here);
    else stretches.push([here]);
  });
  return stretches.flatMap((stretch): Run[] => {
    const times = stretch.map(({ t }) => t);
    const first = Math.ceil((times[0] as number) * rateHz - 1e-6);
    // Too few for a cubic: each goes to the frame of the grid nearest to it.
    if (stretch.length < 4) {
      return stretch.map(({ t, x, y }) => ({ firstFrame: Math.round(t * rateHz), values: [x], heights: [y] }));
    }
    const at = (axis: 'x' | 'y') =>
      resample(
        times,
        stretch.map((one) => one[axis]),
        rateHz,
        first / rateHz,
      ).values;
    return [{ firstFrame: first, values: at('x'), heights: at('y') }];
  });
}

function smoothed(samples: readonly number[], rateHz: number, cutoffHz: number): readonly number[] {
  return samples.length < SHORTEST_SMOOTHED ? samples : zeroLagButterworth(samples, rateHz, cutoffHz);
}

/** The point at an instant, between frames by a straight line; null if it was not digitised there. */
export function pointAt(points: ReadonlyMap<number, Point> | undefined, timeS: number, rateHz: number): Point | null {
  if (points === undefined) return null;
  const exact = timeS * rateHz;
  const before = Math.floor(exact + 1e-6);
  const share = Math.max(0, exact - before);
  const [a, b] = [points.get(before) ?? null, points.get(before + 1) ?? null];
  if (share < 1e-6 || (b === null && share <= 0.5)) return a;
  if (a === null) return share >= 0.5 ? b : null;
  return b === null ? null : { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}
