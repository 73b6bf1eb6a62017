import { planeFromCalibration } from '../../../shared/kernel/plane/planeFromCalibration.ts';
import { tiltFromPlumbLine } from '../../../shared/kernel/plane/tiltFromPlumbLine.ts';
import { DomainError } from '../../../shared/errors.ts';
import { calibrationFrom, placed } from '../../../shared/model/calibrationDraft.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import type { CalibrationDraft, MovementTrial } from '../../../shared/model/trial.ts';
import { isKnown, type Reading } from '../../../shared/quantity.ts';

/** What the next click on the picture sets: an end of the length or of the plumb line, or a point of the plane by its number from 0. */
export type Aim = 'from' | 'to' | 'top' | 'bottom' | number;
type Pixel = CalibrationDraft['from'];

const NOWHERE: Pixel = { xPx: null, yPx: null };
const LEAST_POINTS = 4;

/** Keeps a draft, and uses what is complete of it. */
export function keepDraft(trial: MovementTrial, draft: CalibrationDraft): Edit[] {
  const fields = { calibrationDraft: draft, calibration: calibrationFrom(draft) };
  return [{ op: 'patch', kind: 'movementTrial', id: trial.id, fields }];
}

/** The draft with one place set. A plumb line that is thereby whole sets the tilt. */
export function placeIn(draft: CalibrationDraft, aim: Aim, at: Pixel): CalibrationDraft {
  if (typeof aim === 'number') {
    const point = draft.points[aim] ?? { image: NOWHERE, xM: null, yM: null };
    const points =
      aim < draft.points.length
        ? draft.points.with(aim, { ...point, image: at })
        : [...draft.points, { ...point, image: at }];
    return { ...draft, points };
  }
  if (aim === 'from' || aim === 'to') return { ...draft, [aim]: at };
  const next = { ...draft, plumb: { ...draft.plumb, [aim]: at } };
  const tilt = tiltOfPlumb(next);
  return isKnown(tilt) ? { ...next, tiltDeg: clampTilt((tilt.value * 180) / Math.PI) } : next;
}

/** A turn that can be kept: to a thousandth of a degree, and no more than the 45° beyond which the picture lies on its side. */
export function clampTilt(deg: number): number {
  return Number(Math.min(45, Math.max(-45, deg)).toFixed(3));
}

/** What the click after this one sets; null: nothing, until asked. */
export function aimAfter(aim: Aim, draft: CalibrationDraft): Aim | null {
  if (aim === 'from') return placed(draft.to) === null ? 'to' : null;
  if (aim === 'top') return 'bottom';
  if (typeof aim === 'number') return openPoint(draft);
  return null;
}

/** What a click sets where nothing was asked for: the first place that is missing. */
export function firstAim(draft: CalibrationDraft): Aim | null {
  if (draft.kind === 'plane') return openPoint(draft);
  return placed(draft.from) === null ? 'from' : placed(draft.to) === null ? 'to' : null;
}

function openPoint({ points }: CalibrationDraft): number | null {
  const open = points.findIndex(({ image }) => placed(image) === null);
  if (open !== -1) return open;
  return points.length < LEAST_POINTS ? points.length : null;
}

export function aimWords(aim: Aim, { plumb }: CalibrationDraft): string {
  switch (aim) {
    case 'from':
      return 'Click one end of a known length in the plane of motion.';
    case 'to':
      return 'The first end is set: click the second.';
    case 'top':
      return 'Click the upper end of something that hangs or stands true.';
    case 'bottom':
      return placed(plumb.top) === null ? 'Click the lower end.' : 'The upper end is set: click the lower.';
    default:
      return `Click point ${aim + 1} of the plane.`;
  }
}

/** How far the picture, or the plane as measured, is turned from true down, by the plumb line. */
export function tiltOfPlumb(draft: CalibrationDraft): Reading<'rad'> {
  const [top, bottom] = [placed(draft.plumb.top), placed(draft.plumb.bottom)];
  if (top === null || bottom === null) return { unknown: 'the plumb line is not clicked' };
  const [a, b] = [top, bottom].map(({ xPx, yPx }) => ({ x: xPx, y: yPx })) as [Point, Point];
  const why = 'how exactly points were clicked was not entered';
  try {
    if (draft.kind === 'length') return tiltFromPlumbLine(a, b, draft.pointUPx ?? why);
    const calibration = calibrationFrom({ ...draft, tiltDeg: 0 });
    if (calibration === null) return { unknown: 'the plane needs its four points first' };
    const plane = planeFromCalibration(calibration);
    const [upper, lower] = [a, b].map(plane.toMetres).map(({ x, y }) => ({ x, y: -y })) as [Point, Point];
    const u = plane.pointU;
    return tiltFromPlumbLine(upper, lower, typeof u === 'number' ? u : why);
  } catch (thrown) {
    if (thrown instanceof DomainError) return { unknown: thrown.message };
    throw thrown;
  }
}

interface Point {
  readonly x: number;
  readonly y: number;
}
