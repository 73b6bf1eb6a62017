import { DomainError } from '../../errors.ts';
import { alignTemplate } from './alignTemplate.ts';
import { correlation } from './correlation.ts';
import { findTemplate, type Match, type Pair, REFINE_PX } from './findTemplate.ts';
import { halve } from './halve.ts';
import type { Luma, Place } from './image.ts';
import { cutTemplate, fits, type Template } from './template.ts';

/** How a point is followed. */
export interface TrackOptions {
  /** Radius of the disc that is recognised, px, even. */
  readonly halfPx: number;
  /** How far from the predicted place it is looked for, px; three times as far while nothing is known of its motion. */
  readonly reachPx: number;
  /** Likeness (correlation) below which it counts as lost, where it is just where it was expected … */
  readonly leastScore: number;
  /** … and as far off as it may be: what turns up elsewhere must look the more like it. */
  readonly sureScore: number;
  /** Likeness to what was first put down, below which what it has become is not followed further. */
  readonly leastFirst: number;
  /** Followed back, it must arrive this near to where it came from, px. */
  readonly mostReturnPx: number;
  /** Uncertainty at which it is not followed further, px. */
  readonly mostUPx: number;
}

/** Conventions of this program, chosen on made clips: few points put down by hand, hardly one followed astray. */
export const TRACK_OPTIONS: TrackOptions = {
  halfPx: 10,
  reachPx: 32,
  leastScore: 0.65,
  sureScore: 0.85,
  leastFirst: 0.4,
  mostReturnPx: 0.7,
  mostUPx: 1,
};

/** Likeness from which on what was first put down is followed as it is. */
const FRESH_SCORE = 0.9;
/** Expected: so far from the prediction, and so many times farther as predictions were off lately. Conventions. */
const EXPECTED_PX = 6;
const EXPECTED_TIMES = 2.5;
/** Back, it is looked for so far beyond where anything could have come from that was found. */
const BACK_PX = 8;
/**
 * Parts of the uncertainty beside that of the fit, px: for all of the likeness to the first that is lost, and in shares
 * of how far it missed in following it back. Conventions, validated on made clips.
 */
const UNLIKE_PX = 1.2;
const MISSED = 1;

/** Where a point is, how like and how exact. */
export interface Tracked extends Place {
  /** Correlation, −1 to 1. */
  readonly score: number;
  /** Standard uncertainty of one coordinate, beside that of the place it was put down at, px. */
  readonly uPx: number;
}

/** One step: where the point is now, or in words why it is not followed further. */
export type TrackStep = Tracked | { readonly lost: string };

export interface PointTracker {
  /** @param image the next picture, of the same size */
  next(image: Luma): TrackStep;
}

/**
 * Follows one point from picture to picture by the disc around it.
 *
 * 1. Where it is next is predicted at constant acceleration; how far around that it is looked for follows from how far
 *    off predictions were lately.
 * 2. The disc as first put down is looked for there by correlation, and the disc as it looked later (cut anew whenever it
 *    had changed) where the first no longer fits well. The farther from the prediction, the more alike it must be.
 * 3. Between the pixels it is the first disc again that is laid upon the picture, with what is covered left out, so that
 *    errors do not add up; the later one only where the first finds no place.
 * 4. Followed back, what was found must lead to where it came from. It is looked for there as widely as anything moved
 *    or still could have come from, so that another marker that looks alike gives itself away.
 * 5. The uncertainty is that of the fit, of the likeness lost and of the way back, and of the later disc where that was
 *    used. Once it is too large the point counts as lost, as it does when any of the above fails.
 *
 * @param first the picture the point was put down in
 * @param start px, inside the picture by at least `halfPx`
 * @param past where it was in the pictures before, the latest first, as far as that is known: its motion is taken up
 * @throws DomainError 'input-out-of-range' too near the edge; 'not-enough-data' where nothing can be recognised;
 *   'not-comparable' for a picture of another size
 * @source correlation and alignment as in their files; following back: Kalal, Mikolajczyk & Matas 2010, ICPR, section 2;
 *   first template before later ones: Matthews, Ishikawa & Baker 2004, IEEE PAMI 26(6) (strategy 3, from memory)
 */
export function pointTracker(
  first: Luma,
  start: Place,
  options: TrackOptions = TRACK_OPTIONS,
  past: readonly Place[] = [],
): PointTracker {
  const { halfPx, reachPx, leastScore, sureScore, leastFirst, mostReturnPx, mostUPx } = options;
  const pairOf = (full: Luma, near: Place, reach: number): Pair<Luma> => ({
    full,
    half: halve(full, near, reach + halfPx + 2 * REFINE_PX),
  });
  const anchor = cutBoth(pairOf(first, start, reachPx), start, halfPx, 0);
  if (anchor.template.full.norm === 0) {
    throw new DomainError(
      'not-enough-data',
      'pointTracker needs something to recognise around the point, and found an even surface',
    );
  }
  let later = anchor;
  let before = first;
  let path: readonly Place[] = [start, ...past].slice(0, 3);
  /** How far the last predictions were off, px, the older ones counting less; null: not known. */
  let offBy = past.length < 3 ? null : apart(predicted(past), start);

  return {
    next(image) {
      if (image.width !== first.width || image.height !== first.height) {
        throw new DomainError('not-comparable', 'pointTracker needs pictures of one size');
      }
      const near = predicted(path);
      const expected = offBy === null ? reachPx : Math.min(reachPx, EXPECTED_PX + EXPECTED_TIMES * offBy);
      const wide = path.length === 1 ? 3 * reachPx : reachPx;
      let step = find(image, near, expected, expected);
      if ('lost' in step && wide > expected) {
        const again = find(image, near, wide, expected);
        if (!('lost' in again)) step = again;
      }
      if ('lost' in step) return step;
      if (path.length > 1) offBy = Math.max((offBy ?? 0) / 2, apart(step, near));
      [path, before] = [[step, ...path].slice(0, 3), image];
      if (step.score < FRESH_SCORE) later = cutBoth(pairOf(image, step, 0), step, halfPx, step.uPx);
      return step;
    },
  };

  function find(image: Luma, near: Place, reach: number, expected: number): TrackStep {
    const [here = start] = path;
    const now = pairOf(image, near, reach);
    const asFirst = matched(now, anchor, near, reach);
    const isChanged = later !== anchor && (asFirst === null || asFirst.score < FRESH_SCORE);
    const asLater = isChanged ? matched(now, later, near, reach) : null;
    const rough = asLater !== null && asLater.score > (asFirst?.score ?? -1) ? asLater : asFirst;
    if (rough === null) return { lost: 'it left the picture' };
    const share = Math.min(1, apart(rough, near) / expected);
    if (rough.score < leastScore + (sureScore - leastScore) * share)
      return { lost: `nothing there looks like it (likeness ${rough.score.toFixed(2)})` };
    const fine = aligned(now.full, anchor, rough) ?? aligned(now.full, later, rough);
    if (fine === null) return { lost: 'too little of it is to be seen' };
    if (!isInside(now, fine, halfPx)) return { lost: 'it is at the edge of the picture' };
    const { template, offset } = anchor;
    const [column, row] = [Math.round(fine.x - offset.x), Math.round(fine.y - offset.y)];
    const likeFirst = correlation(now.full, template.full, column, row) ?? -1;
    if (likeFirst < leastFirst) return { lost: 'it no longer looks as it did where it was put down' };
    const back = Math.max(apart(fine, here), apart(fine, near)) + BACK_PX;
    const returned = matched(pairOf(before, here, back), cutBoth(now, fine, halfPx, 0), here, back);
    const missed = returned === null ? Infinity : apart(returned, here);
    if (missed > mostReturnPx) return { lost: 'followed back, it does not lead to where it came from' };
    const uPx = Math.hypot(fine.uPx, UNLIKE_PX * (1 - likeFirst), MISSED * missed);
    if (uPx > mostUPx) return { lost: `where it is has become too uncertain (${uPx.toFixed(1)} px)` };
    return { x: fine.x, y: fine.y, score: rough.score, uPx };
  }
}

function apart(a: Place, b: Place): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Where it is next at constant acceleration, at constant velocity or at rest, as far as places are known. */
function predicted([a, b, c]: readonly Place[]): Place {
  if (a === undefined) throw new DomainError('not-enough-data', 'predicted needs a place');
  if (b === undefined) return a;
  if (c === undefined) return { x: 2 * a.x - b.x, y: 2 * a.y - b.y };
  return { x: 3 * a.x - 3 * b.x + c.x, y: 3 * a.y - 3 * b.y + c.y };
}

interface Cut {
  readonly template: Pair<Template>;
  /** From the middle pixel of the disc to the point itself, px. */
  readonly offset: Place;
  /** How uncertain the point was where it was cut, px. */
  readonly uPx: number;
}

function matched(image: Pair<Luma>, { template, offset }: Cut, near: Place, reachPx: number): Match | null {
  const match = findTemplate(image, template, { x: near.x - offset.x, y: near.y - offset.y }, reachPx);
  return match === null ? null : { x: match.x + offset.x, y: match.y + offset.y, score: match.score };
}

function aligned(image: Luma, { template, offset, uPx }: Cut, near: Place): (Place & { uPx: number }) | null {
  const fine = alignTemplate(image, template.full, { x: near.x - offset.x, y: near.y - offset.y });
  return fine === null ? null : { x: fine.x + offset.x, y: fine.y + offset.y, uPx: Math.hypot(fine.uPx, uPx) };
}

/** Templates are cut at whole pixels; how far the point lies off the middle is kept, so that nothing is rounded away. */
function cutBoth(image: Pair<Luma>, point: Place, halfPx: number, uPx: number): Cut {
  const [x, y] = [Math.round(point.x), Math.round(point.y)];
  const half = halfMiddle(point);
  return {
    template: {
      full: cutTemplate(image.full, x, y, halfPx),
      half: cutTemplate(image.half, half.x, half.y, halfPx >> 1),
    },
    offset: { x: point.x - x, y: point.y - y },
    uPx,
  };
}

function halfMiddle({ x, y }: Place): Place {
  return { x: Math.round((x - 0.5) / 2), y: Math.round((y - 0.5) / 2) };
}

function isInside({ full, half }: Pair<Luma>, point: Place, halfPx: number): boolean {
  const middle = halfMiddle(point);
  const isInFull = fits(full, Math.round(point.x), Math.round(point.y), halfPx);
  return isInFull && fits(half, middle.x, middle.y, halfPx >> 1);
}
