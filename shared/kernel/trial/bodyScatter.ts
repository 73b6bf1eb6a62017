import type { PointU } from '../plane/point.ts';
import { pointAt } from './pointSeries.ts';
import type { Scene } from './scene.ts';

/**
 * How exact the body's centre of mass is in one frame: the root mean square of one coordinate about its smoothed path.
 * The errors of many points average out in it, so that of a single point would be too large.
 *
 * @returns standard uncertainty of one coordinate, m; or why there is none
 * @source JCGM 100:2008, 4.2 (type A); what the filter takes out of the movement itself counts as scatter too
 */
export function bodyScatter({ body, rateHz }: Pick<Scene, 'body' | 'rateHz'>): PointU {
  const off = [...body.seen].flatMap(([frame, { x, y }]) => {
    const smooth = pointAt(body.smooth, frame / rateHz, rateHz);
    return smooth === null ? [] : [x - smooth.x, y - smooth.y];
  });
  return off.length === 0 ? 'the body is not digitised' : Math.hypot(...off) / Math.sqrt(off.length);
}
