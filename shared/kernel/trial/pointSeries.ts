import type { LandmarkTrack } from '../../model/trial.ts';
import type { Point } from '../plane/point.ts';
import { fillGaps } from '../signal/fillGaps.ts';
import { zeroLagButterworth } from '../signal/zeroLagButterworth.ts';

/** One digitised point through time, in the plane of motion, short gaps closed. */
export interface PointSeries {
  /** Smoothed. Null in a frame without the point. */
  readonly smooth: ReadonlyMap<number, Point>;
  /** As digitised, gaps closed: for fits that do their own smoothing. */
  readonly raw: ReadonlyMap<number, Point>;
  readonly filledFrames: readonly number[];
  readonly openGaps: readonly (readonly [number, number])[];
}

/** Gaps up to this long are closed: a convention, short against any phase. */
export const LONGEST_GAP_S = 0.05;
/** Stretches shorter than this many frames are left unsmoothed: a filter would be all ends. */
export const SHORTEST_SMOOTHED = 10;

/**
 * A track in metres, gap-filled and low-pass filtered run by run.
 *
 * @param toMetres the trial's plane
 * @param rateHz frames a second, > 0
 * @param cutoffHz 0 < fc < fs/2
 * @throws DomainError from fillGaps for frames out of order or coordinates that are not finite
 * @source fillGaps, zeroLagButterworth
 */
export function pointSeries(
  track: LandmarkTrack,
  toMetres: (point: Point) => Point,
  rateHz: number,
  cutoffHz: number,
): PointSeries {
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
  xs.runs.forEach(({ firstFrame, values }, r) => {
    const heights = ys.runs[r]?.values ?? [];
    const [x, y] = [smoothed(values, rateHz, cutoffHz), smoothed(heights, rateHz, cutoffHz)];
    values.forEach((value, i) => {
      raw.set(firstFrame + i, { x: value, y: heights[i] as number });
      smooth.set(firstFrame + i, { x: x[i] as number, y: y[i] as number });
    });
  });
  return { smooth, raw, filledFrames: xs.filledFrames, openGaps: xs.openGaps };
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
