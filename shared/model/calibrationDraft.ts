import type { Calibration, CalibrationDraft, Depth } from './trial.ts';

type DraftPixel = CalibrationDraft['from'];
const NOWHERE: DraftPixel = { xPx: null, yPx: null };

/** A calibration as it is edited: nothing entered yet, or what is stored with nothing open. */
export function draftFrom(calibration: Calibration | null): CalibrationDraft {
  const blank: CalibrationDraft = {
    kind: calibration?.kind === 'plane' ? 'plane' : 'length',
    from: NOWHERE,
    to: NOWHERE,
    lengthM: null,
    lengthUM: null,
    points: [],
    pointUPx: null,
    tiltDeg: 0,
    plumb: { top: NOWHERE, bottom: NOWHERE },
    others: [],
    depth: { cameraM: null, bodyNearerM: null, ballNearerM: null, uM: null, axis: NOWHERE },
  };
  if (calibration === null || calibration.kind === 'metres') return blank;
  const common = {
    ...blank,
    pointUPx: calibration.pointUPx,
    tiltDeg: calibration.tiltDeg ?? 0,
    depth: calibration.depth ?? blank.depth,
  };
  if (calibration.kind === 'plane')
    return { ...common, points: calibration.points.map(({ image, plane }) => ({ image, ...plane })) };
  const { from, to, lengthM, lengthUM, others = [] } = calibration;
  return { ...common, from, to, lengthM, lengthUM, others };
}

/** The calibration a draft amounts to, from what is complete of it; null while that is too little. */
export function calibrationFrom(draft: CalibrationDraft): Calibration | null {
  const { pointUPx, tiltDeg, others } = draft;
  const depth = depthOf(draft.depth);
  const withDepth = depth === null ? {} : { depth };
  if (draft.kind === 'length') {
    const [from, to] = [placed(draft.from), placed(draft.to)];
    const { lengthM, lengthUM } = draft;
    if (from === null || to === null || lengthM === null || lengthUM === null) return null;
    if (from.xPx === to.xPx && from.yPx === to.yPx) return null;
    const more = others.length === 0 ? {} : { others };
    return { kind: 'length', from, to, lengthM, lengthUM, pointUPx, tiltDeg, ...more, ...withDepth };
  }
  const points = draft.points.flatMap(({ image, xM, yM }) => {
    const pixel = placed(image);
    return pixel === null || xM === null || yM === null ? [] : [{ image: pixel, plane: { xM, yM } }];
  });
  if (points.length < 4) return null;
  return { kind: 'plane', points, pointUPx, ...(tiltDeg === 0 ? {} : { tiltDeg }), ...withDepth };
}

function depthOf({ cameraM, bodyNearerM, ballNearerM, uM, axis }: CalibrationDraft['depth']): Depth | null {
  const middle = placed(axis);
  if (cameraM === null || bodyNearerM === null || ballNearerM === null || uM === null || middle === null) return null;
  return { cameraM, bodyNearerM, ballNearerM, uM, axis: middle };
}

/** A place in the picture both coordinates of which are known. */
export function placed({ xPx, yPx }: DraftPixel): { xPx: number; yPx: number } | null {
  return xPx === null || yPx === null ? null : { xPx, yPx };
}
