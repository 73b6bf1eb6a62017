import type { Matrix } from 'ml-matrix';
import { DomainError } from '../../errors.ts';
import type { Calibration } from '../../model/trial.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { homography, project } from './homography.ts';
import { centreOf, distance, type Point, type PointU } from './point.ts';

/** How a trial's coordinates become metres in the plane of motion, y up, and how far that can be trusted. */
export interface Plane {
  readonly toMetres: (point: Point) => Point;
  /** Of one coordinate, from digitising alone, m. For a plane of points: at the middle of the calibrated area. */
  readonly pointU: PointU;
  /** Relative, shared by every length: it does not shrink with more points. */
  readonly scaleU: PointU;
  /** Of the calibration points against the plane they made, m; empty where there is nothing to compare. */
  readonly residualsM: readonly number[];
  /** Null for coordinates that arrive in metres and for a plane, whose scale changes over the image. */
  readonly metresPerPixel: Quantity<'m/{px}'> | null;
  /** Corners of the area the calibration spans, in image pixels; null: everywhere. */
  readonly spanPx: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  } | null;
  readonly warnings: readonly string[];
}

const NO_POINT_U = 'how exactly points were digitised was not entered';
const SCALE = {
  cite: 'Scaling by one length, image plane parallel to the plane of motion; JCGM 100 propagation',
  status: 'derived',
} as const;

/** A base of fewer pixels than this makes every length uncertain by more than 5 % at one pixel of error: a convention. */
const LEAST_BASE_PX = 20;
/** Smallest height of a triangle over its longest side for three points to count as not in line: a convention. */
const LEAST_HEIGHT = 0.02;

/**
 * Pixels to metres, from any of the three kinds of calibration.
 *
 * - `metres`: passed through.
 * - `length`: scale s = L/√(Δu² + Δv²), y flipped, then turned by the tilt (the image's down is `tiltDeg` anticlockwise
 *   of true down). Origin: the image's top left corner.
 * - `plane`: the projective map of a plane on an image by the 2-D direct linear transformation
 *   u = (L1 X + L2 Y + L3)/(L7 X + L8 Y + 1), v = (L4 X + L5 Y + L6)/(L7 X + L8 Y + 1), least squares on normalised
 *   coordinates by singular values, inverted. Walton 1981 (from memory); Brewin & Kerwin 2003, J Appl Biomech 19(1):79-88.
 *
 * @throws DomainError 'poor-geometry' for a base too short, points in one line, or points that no plane fits;
 *   'input-out-of-range' for a coordinate that is not finite
 * @source as named above
 */
export function planeFromCalibration(calibration: Calibration): Plane {
  switch (calibration.kind) {
    case 'metres':
      return {
        toMetres: finitePoint,
        pointU: calibration.pointUM ?? NO_POINT_U,
        scaleU: 'coordinates arrived in metres: the scale behind them is not known here',
        residualsM: [],
        metresPerPixel: null,
        spanPx: null,
        warnings: [],
      };
    case 'length':
      return planeFromLength(calibration);
    case 'plane':
      return planeFromPoints(calibration);
  }
}

function planeFromLength(calibration: Extract<Calibration, { kind: 'length' }>): Plane {
  const basePx = Math.hypot(calibration.to.xPx - calibration.from.xPx, calibration.to.yPx - calibration.from.yPx);
  if (!(basePx >= LEAST_BASE_PX)) {
    throw new DomainError(
      'poor-geometry',
      `planeFromCalibration needs a known length of at least ${LEAST_BASE_PX} px in the image, got ${basePx.toFixed(1)} px: choose a longer one`,
      'calibration.to',
    );
  }
  const uPx = calibration.pointUPx;
  const scale = derive(
    { symbol: 's', name: 'Scale', unit: 'm/{px}', formula: 's = L / p', source: SCALE },
    {
      L: measured('L', 'Known length', calibration.lengthM, 'm', calibration.lengthUM),
      // Two ends, each misread by uPx along the line.
      p: measured('p', 'The same length in the image', basePx, '{px}', uPx === null ? NO_POINT_U : Math.SQRT2 * uPx),
    },
    ({ L, p }) => L / p,
  );
  const tilt = (calibration.tiltDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  return {
    toMetres: (point) => {
      const { x: px, y: py } = finitePoint(point);
      const x = px * scale.value;
      const y = -py * scale.value;
      return { x: x * cos - y * sin, y: x * sin + y * cos };
    },
    pointU: uPx === null ? NO_POINT_U : uPx * scale.value,
    scaleU: scale.u === null ? NO_POINT_U : scale.u / scale.value,
    residualsM: [],
    metresPerPixel: scale,
    spanPx: null,
    warnings: [],
  };
}

function planeFromPoints(calibration: Extract<Calibration, { kind: 'plane' }>): Plane {
  const image = calibration.points.map(({ image }) => finitePoint({ x: image.xPx, y: image.yPx }));
  const ground = calibration.points.map(({ plane }) => finitePoint({ x: plane.xM, y: plane.yM }));
  refusePoorGeometry(image, 'in the image', 'image');
  refusePoorGeometry(ground, 'in the plane', 'plane');

  const toImage = homography(ground, image);
  const toGround = homography(image, ground);
  const centre = centreOf(image);
  const residualsM = image.map((point, i) => distance(project(toGround, point), ground[i] as Point));
  const baseM = greatestDistance(ground);
  const rms = Math.sqrt(residualsM.reduce((sum, r) => sum + r * r, 0) / residualsM.length);
  if (!(rms < 0.1 * baseM)) {
    throw new DomainError(
      'poor-geometry',
      `planeFromCalibration found no plane through these points: they miss it by ${rms.toFixed(3)} m on average over ${baseM.toFixed(2)} m. Check that each image point stands beside its own place`,
      'calibration.points',
    );
  }

  const warnings: string[] = [];
  if (image.length === 4) {
    warnings.push('Four points fit a plane exactly, so a misread one cannot show. A fifth or sixth would check it.');
  }
  const uPx = calibration.pointUPx;
  // Metres per pixel at the middle of the area, the larger of the two directions.
  const middle = project(toGround, centre);
  const step = Math.max(
    distance(middle, project(toGround, { x: centre.x + 1, y: centre.y })),
    distance(middle, project(toGround, { x: centre.x, y: centre.y + 1 })),
  );
  return {
    toMetres: (point) => project(toGround, finitePoint(point)),
    pointU: uPx === null ? NO_POINT_U : uPx * step,
    scaleU: uPx === null ? NO_POINT_U : lengthU(ground, image, toImage, uPx),
    residualsM,
    metresPerPixel: null,
    spanPx: {
      left: Math.min(...image.map((p) => p.x)),
      right: Math.max(...image.map((p) => p.x)),
      top: Math.min(...image.map((p) => p.y)),
      bottom: Math.max(...image.map((p) => p.y)),
    },
    warnings,
  };
}

/**
 * Relative standard uncertainty of the length across the calibrated area, from misreading the calibration points:
 * each image coordinate is moved by one standard uncertainty in turn and the plane solved again (JCGM 100, 5.1.3 note 2).
 */
function lengthU(ground: readonly Point[], image: readonly Point[], toImage: Matrix, uPx: number): number {
  const [a, b] = farthestPair(ground);
  const [pa, pb] = [project(toImage, a), project(toImage, b)];
  const length = (moved: readonly Point[]): number => {
    const map = homography(moved, ground);
    return distance(project(map, pa), project(map, pb));
  };
  let variance = 0;
  image.forEach((point, i) => {
    for (const shift of [
      { x: uPx, y: 0 },
      { x: 0, y: uPx },
    ]) {
      const at = (sign: number) => image.with(i, { x: point.x + sign * shift.x, y: point.y + sign * shift.y });
      const half = (length(at(1)) - length(at(-1))) / 2;
      variance += half * half;
    }
  });
  return Math.sqrt(variance) / distance(a, b);
}

function refusePoorGeometry(points: readonly Point[], where: string, field: 'image' | 'plane'): void {
  const base = greatestDistance(points);
  const refuse = (need: string) => {
    throw new DomainError('poor-geometry', `planeFromCalibration needs ${need}`, `calibration.points.*.${field}`);
  };
  if (field === 'image' && base < 5 * LEAST_BASE_PX) {
    refuse(
      `points at least ${5 * LEAST_BASE_PX} px apart ${where}, got ${base.toFixed(0)} px: spread them over the picture`,
    );
  }
  // Enough that some four points have no three in line; with four points in all, those four.
  const usable = fours(points).some((four) => triples(four).every((three) => !isInLine(three, base)));
  if (!usable) refuse(`four points of which no three lie in one line ${where}: move one of them off the line`);
}

function isInLine(three: readonly Point[], base: number): boolean {
  const [a, b, c] = three as [Point, Point, Point];
  const area = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  const longest = Math.max(distance(a, b), distance(b, c), distance(a, c));
  return !(longest > 0.02 * base && area / (longest * longest) >= LEAST_HEIGHT);
}

/** With many points only the outermost matter for geometry; a dozen keep the search short. */
function fours(points: readonly Point[]): Point[][] {
  const c = centreOf(points);
  const outer = points.toSorted((p, q) => distance(q, c) - distance(p, c)).slice(0, 12);
  const found: Point[][] = [];
  outer.forEach((a, i) =>
    outer.slice(i + 1).forEach((b, j) =>
      outer.slice(i + j + 2).forEach((d, k) =>
        outer.slice(i + j + k + 3).forEach((e) => {
          found.push([a, b, d, e]);
        }),
      ),
    ),
  );
  return found;
}

function triples(four: readonly Point[]): Point[][] {
  return four.map((_, i) => four.filter((__, j) => j !== i));
}

function farthestPair(points: readonly Point[]): [Point, Point] {
  let best: [Point, Point] = [points[0] as Point, points[1] as Point];
  points.forEach((a, i) =>
    points.slice(i + 1).forEach((b) => {
      if (distance(a, b) > distance(...best)) best = [a, b];
    }),
  );
  return best;
}

function greatestDistance(points: readonly Point[]): number {
  return distance(...farthestPair(points));
}

function finitePoint(point: Point): Point {
  if (!Number.isFinite(point.x) || !Number.isFinite(point.y)) {
    throw new DomainError(
      'input-out-of-range',
      `planeFromCalibration needs finite coordinates, got (${point.x}, ${point.y})`,
    );
  }
  return point;
}
