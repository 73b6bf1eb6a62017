import { refuseUnusable } from '../signal/refuseUnusable.ts';
import { turningPoint } from './turningPoint.ts';

export interface UpwardJolt {
  /** Where, in samples from the first; between samples by the parabola through the three around it. */
  readonly index: number;
  /** Its second difference there, in the unit of the heights. */
  readonly strength: number;
  /** How long it lasts: the full width at half its height, samples. */
  readonly width: number;
}

/**
 * The instant within a stretch of a height at which it is thrown upwards most: its greatest upward acceleration. A foot
 * that leaves the floor or strikes it has it there.
 *
 * @param heights evenly spaced, finite, low-passed, any unit
 * @param first,last samples of the stretch
 * @returns null where the acceleration has no peak inside the stretch
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source second difference; peaks of a foot marker's vertical acceleration as events: Handsaker et al. 2016 and Leitch et
 *   al. 2011, both against force plates in running (abstracts)
 */
export function upwardJolt(heights: readonly number[], first: number, last: number): UpwardJolt | null {
  refuseUnusable('upwardJolt', heights, 3);
  const bend = heights.map((y, i) => (heights[i - 1] ?? Number.NaN) - 2 * y + (heights[i + 1] ?? Number.NaN));
  const [from, to] = [Math.max(1, first), Math.min(heights.length - 2, last)];
  if (to - from < 2) return null;
  const peak = turningPoint(bend.slice(from, to + 1), 'highest');
  if (peak.isAtEdge || peak.value <= 0) return null;
  const index = from + peak.index;
  const half = peak.value / 2;
  return { index, strength: peak.value, width: halfAt(bend, index, half, 1) - halfAt(bend, index, half, -1) };
}

/** Where a curve has fallen to half beside its peak, by a straight line between samples; its end if it never does. */
function halfAt(bend: readonly number[], index: number, half: number, step: 1 | -1): number {
  let at = step === 1 ? Math.ceil(index) : Math.floor(index);
  for (; at > 1 && at < bend.length - 2; at += step) {
    const [here, next] = [bend[at] as number, bend[at + step] as number];
    if (next < half) return here <= half ? at : at + (step * (here - half)) / (here - next);
  }
  return at;
}
