import type { Calibration } from '../../model/trial.ts';
import { homography, project } from './homography.ts';
import type { Point } from './point.ts';

/**
 * Where the plane that a calibration found would show each of its points, beside where it was clicked.
 *
 * @returns px, in the order of the points; what lies between the two is the residual as seen in the picture
 * @throws DomainError as homography
 * @source 2-D direct linear transformation, see homography
 */
export function seenInImage(
  calibration: Extract<Calibration, { kind: 'plane' }>,
): readonly { readonly clicked: Point; readonly fitted: Point }[] {
  const image = calibration.points.map(({ image: { xPx, yPx } }) => ({ x: xPx, y: yPx }));
  const ground = calibration.points.map(({ plane: { xM, yM } }) => ({ x: xM, y: yM }));
  const toImage = homography(ground, image);
  return image.map((clicked, i) => ({ clicked, fitted: project(toImage, ground[i] as Point) }));
}
