import type { Place } from '../../../shared/kernel/track/image.ts';
import type { Landmark } from '../../../shared/model/trial.ts';

/** Where the model believes a point to be. Counts for nothing until a person confirms it. */
export interface Suggestion extends Place {
  readonly point: Landmark;
}

export interface SuggestedFrame {
  readonly frame: number;
  readonly points: readonly Suggestion[];
  /** Standard uncertainty of one coordinate, px. */
  readonly uPx: number;
}

/** A landmark as the model gives it: place in px, and how sure it is, 0 to 1. */
export interface ModelPoint {
  readonly x: number;
  readonly y: number;
  readonly score?: number | undefined;
  readonly name?: string | undefined;
}

/** Less sure than this is not shown: a convention. */
const LEAST_SCORE = 0.5;

/**
 * Standard uncertainty of one coordinate over the size of the person in the picture: a convention, from a measurement. On
 * an invented figure 455 px tall the median error of a joint was 8 to 21 px; for errors alike in both directions the
 * median distance is 1.18 standard uncertainties of one coordinate, which gives 2.7 % in the middle.
 */
const U_OVER_SIZE = 0.03;

/** The model's names beside ours. It knows neither the top of the head nor the neck. Its index finger is the knuckle's. */
const POINTS: Readonly<Record<string, Landmark>> = Object.fromEntries(
  (['left', 'right'] as const).flatMap((side) => [
    ...(['shoulder', 'elbow', 'wrist', 'hip', 'knee', 'ankle', 'heel'] as const).map((part): [string, Landmark] => [
      `${side}_${part}`,
      `${part}-${side}`,
    ]),
    [`${side}_index`, `knuckle-${side}`] as const,
    [`${side}_foot_index`, `toe-${side}`] as const,
  ]),
);

/** What the model found in one frame, under our names. @param found in px of the picture as shown */
export function suggestedFrame(
  frame: number,
  found: readonly ModelPoint[],
  width: number,
  height: number,
): SuggestedFrame {
  const points = found.flatMap(({ name = '', score = 0, x, y }): Suggestion[] => {
    const point = POINTS[name];
    const isInside = x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1;
    return point === undefined || score < LEAST_SCORE || !isInside ? [] : [{ point, x: rounded(x), y: rounded(y) }];
  });
  return {
    frame,
    points,
    uPx: rounded(U_OVER_SIZE * Math.max(spread(points.map(({ x }) => x)), spread(points.map(({ y }) => y)))),
  };
}

function spread(values: readonly number[]): number {
  return values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
}

/** A hundredth of a pixel is far below what the model can tell. */
function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
