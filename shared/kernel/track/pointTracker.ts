import { DomainError } from '../../errors.ts';
import { findTemplate, type Match, type Pair, REFINE_PX } from './findTemplate.ts';
import { halve } from './halve.ts';
import type { Luma, Place } from './image.ts';
import { cutTemplate, fits, type Template } from './template.ts';

/** How a point is followed. */
export interface TrackOptions {
  /** Half the side of the square that is recognised, px, even. */
  readonly halfPx: number;
  /** How far from the predicted place it is looked for, px. */
  readonly reachPx: number;
  /** Correlation below which the point counts as lost. */
  readonly leastScore: number;
  /** Followed back, it must arrive this near to where it came from, px. */
  readonly mostReturnPx: number;
}

/** Conventions of this program: a square of 21 px, 32 px a frame, and scores that a hidden point does not reach. */
export const TRACK_OPTIONS: TrackOptions = { halfPx: 10, reachPx: 32, leastScore: 0.75, mostReturnPx: 1.5 };

/** One step: where the point is now, or in words why it is not followed further. */
export type TrackStep = Match | { readonly lost: string };

export interface PointTracker {
  /** @param image the next picture, of the same size */
  next(image: Luma): TrackStep;
}

/**
 * Follows one point from picture to picture by what surrounds it. The place is predicted at constant velocity, the
 * square first put down is looked for around it, and the square as it was in the picture before wherever the first no
 * longer fits (a limb turns). Every step is checked by following it back. Stops by itself: a low score, a step that does
 * not lead back, or the edge of the picture.
 *
 * @param first the picture the point was put down in
 * @param start px, inside the picture by at least `halfPx`
 * @throws DomainError 'input-out-of-range' too near the edge; 'not-enough-data' where nothing can be recognised;
 *   'not-comparable' for a picture of another size
 * @source correlation as in correlation.ts; forward-backward check: Kalal, Mikolajczyk & Matas 2010, ICPR, section 2
 */
export function pointTracker(first: Luma, start: Place, options: TrackOptions = TRACK_OPTIONS): PointTracker {
  const { halfPx, reachPx, leastScore, mostReturnPx } = options;
  // From a prediction to what is found, from there to what is compared in following it back, and the squares around.
  const seenPx = 2 * (reachPx + halfPx + REFINE_PX);
  const pairOf = (full: Luma, near: Place): Pair<Luma> => ({ full, half: halve(full, near, seenPx) });
  let before = pairOf(first, start);
  let here: Place = start;
  let velocity: Place = { x: 0, y: 0 };
  const anchor = cutBoth(before, start, halfPx);
  if (anchor.template.full.norm === 0) {
    throw new DomainError(
      'not-enough-data',
      'pointTracker needs something to recognise around the point, and found an even surface',
    );
  }
  let recent = anchor;

  return {
    next(image) {
      if (image.width !== first.width || image.height !== first.height) {
        throw new DomainError('not-comparable', 'pointTracker needs pictures of one size');
      }
      const near = { x: here.x + velocity.x, y: here.y + velocity.y };
      const now = pairOf(image, near);
      const byAnchor = placed(findTemplate(now, anchor.template, near, reachPx), anchor.offset);
      const byRecent =
        byAnchor !== null && byAnchor.score >= leastScore
          ? null
          : placed(findTemplate(now, recent.template, near, reachPx), recent.offset);
      const found = byRecent !== null && byRecent.score > (byAnchor?.score ?? -1) ? byRecent : byAnchor;
      if (found === null) return { lost: 'it left the picture' };
      if (found.score < leastScore) return { lost: `nothing there looks like it (likeness ${found.score.toFixed(2)})` };
      const middle = { x: Math.round(found.x), y: Math.round(found.y) };
      if (!fits(now.full, middle.x, middle.y, halfPx) || !fitsHalf(now.half, found, halfPx))
        return { lost: 'it is at the edge of the picture' };
      const forward = cutBoth(now, found, halfPx);
      const back = placed(findTemplate(before, forward.template, here, reachPx), forward.offset);
      const missedBy = back === null ? Infinity : Math.hypot(back.x - here.x, back.y - here.y);
      if (missedBy > mostReturnPx) return { lost: 'followed back, it does not lead to where it came from' };
      velocity = { x: found.x - here.x, y: found.y - here.y };
      here = found;
      before = now;
      recent = forward;
      return found;
    },
  };
}

interface Cut {
  readonly template: Pair<Template>;
  /** From the middle pixel of the square to the point itself, px. */
  readonly offset: Place;
}

/** Templates are cut at whole pixels; how far the point lies off the middle is kept, so that nothing is rounded away. */
function cutBoth(image: Pair<Luma>, point: Place, halfPx: number): Cut {
  const [x, y] = [Math.round(point.x), Math.round(point.y)];
  const half = halfMiddle(point);
  return {
    template: {
      full: cutTemplate(image.full, x, y, halfPx),
      half: cutTemplate(image.half, half.x, half.y, halfPx >> 1),
    },
    offset: { x: point.x - x, y: point.y - y },
  };
}

function halfMiddle({ x, y }: Place): Place {
  return { x: Math.round((x - 0.5) / 2), y: Math.round((y - 0.5) / 2) };
}

function fitsHalf(half: Luma, point: Place, halfPx: number): boolean {
  const middle = halfMiddle(point);
  return fits(half, middle.x, middle.y, halfPx >> 1);
}

function placed(match: Match | null, offset: Place): Match | null {
  return match === null ? null : { x: match.x + offset.x, y: match.y + offset.y, score: match.score };
}
