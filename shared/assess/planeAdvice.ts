import { DomainError } from '../errors.ts';
import { homography, project } from '../kernel/plane/homography.ts';
import { planeFromCalibration } from '../kernel/plane/planeFromCalibration.ts';
import { distance } from '../kernel/plane/point.ts';
import type { Calibration, CalibrationDraft } from '../model/trial.ts';

/** Points further off the plane than this many times what they were read to are not reading error alone: a convention. */
const MOST_RESIDUAL = 3;
/** Scale changing by more than this across the calibrated area shows a camera that does not face the plane: a convention. */
const SQUARE_ON = 0.02;
/** The outer part of a picture in which wide lenses bend most: a convention. */
const EDGE = 0.1;

export interface PlaneAdvice {
  /** Why nothing can be made of the calibration; null: it serves. */
  readonly refusal: string | null;
  /** What looks wrong, or cannot show, each with what to do. */
  readonly advice: readonly string[];
}

/**
 * What a practitioner should know of a calibration: why it is refused, and whether lens, tilt or a misread point show.
 * @param draft says whether anything vertical was shown
 * @param picture its size in pixels; null: not known here
 */
export function planeAdvice(
  calibration: Calibration,
  draft: Pick<CalibrationDraft, 'plumb'> | null,
  picture: { readonly width: number; readonly height: number } | null,
): PlaneAdvice {
  if (calibration.kind === 'metres') return { refusal: null, advice: [] };
  try {
    const { warnings } = planeFromCalibration(calibration);
    return {
      refusal: null,
      advice: [
        ...warnings,
        ...(calibration.kind === 'plane' ? planeWords(calibration) : []),
        ...uprightWords(calibration, draft),
        ...edgeWords(calibration, picture),
      ],
    };
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown;
    return { refusal: thrown.message.replace(/^planeFromCalibration /, 'This '), advice: [] };
  }
}

function planeWords(calibration: Extract<Calibration, { kind: 'plane' }>): string[] {
  const { residualsM, pointU } = planeFromCalibration(calibration);
  const image = calibration.points.map(({ image: { xPx, yPx } }) => ({ x: xPx, y: yPx }));
  const ground = calibration.points.map(({ plane: { xM, yM } }) => ({ x: xM, y: yM }));
  const words: string[] = [];
  const worst = Math.max(...residualsM);
  if (image.length > 4 && typeof pointU === 'number' && worst > MOST_RESIDUAL * Math.max(pointU, 1e-4)) {
    const at = residualsM.indexOf(worst) + 1;
    words.push(
      `Point ${at} lies ${(100 * worst).toFixed(1)} cm off the plane of all, more than it was read to. Look at it again; if every point is right, the lens bends the picture: film from farther away, with the movement in the middle.`,
    );
  }
  const toGround = homography(image, ground);
  const scales = image.map((point) => {
    const here = project(toGround, point);
    return distance(here, project(toGround, { x: point.x + 1, y: point.y }));
  });
  const [least, most] = [Math.min(...scales), Math.max(...scales)];
  if (most / least - 1 > SQUARE_ON) {
    words.push(
      `The scale changes by ${(100 * (most / least - 1)).toFixed(0)} % across the points: the camera does not face the plane squarely. These points allow for it; one length alone would not.`,
    );
  }
  return words;
}

function uprightWords(calibration: Calibration, draft: Pick<CalibrationDraft, 'plumb'> | null): string[] {
  const isShown = draft !== null && draft.plumb.top.xPx !== null;
  if (calibration.kind !== 'length' || calibration.tiltDeg !== 0 || isShown) return [];
  return [
    'Nothing shows yet which way is down: the picture’s own edges are taken for it. Click along a plumb line, a post or a door, or let the free flight tell.',
  ];
}

function isOut(at: number, size: number): boolean {
  return at < EDGE * size || at > (1 - EDGE) * size;
}

function edgeWords(calibration: Calibration, picture: { width: number; height: number } | null): string[] {
  if (picture === null || calibration.kind === 'metres') return [];
  const points =
    calibration.kind === 'plane' ? calibration.points.map(({ image }) => image) : [calibration.from, calibration.to];
  if (!points.some(({ xPx, yPx }) => isOut(xPx, picture.width) || isOut(yPx, picture.height))) return [];
  return [
    'A point of the scale lies near the edge of the picture, where wide lenses bend straight lines. If a straight edge looks bent there, take the scale nearer the middle.',
  ];
}
