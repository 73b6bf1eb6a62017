import type { Matrix } from 'ml-matrix';
import { DomainError } from '../../errors.ts';
import type { Calibration, Depth } from '../../model/trial.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { depthFactor } from './depthFactor.ts';
import { homography, project } from './homography.ts';
import { scalesDiffer } from './scalesDiffer.ts';
import { centreOf, distance, type Point, type PointU } from './point.ts';

/** How a trial's coordinates become metres in the plane of motion, y up, and how far that can be trusted. */
export interface Plane {
  readonly toMetres: (point: Point) => Point;
  /** Of one coordinate, from digitising alone, m. For a plane of points: at the middle of the calibrated area. */
  readonly pointU: PointU;
  /** Relative, shared by every length: it does not shrink with more points. */
  readonly scaleU: PointU;
  /** Of the calibration's points or lengths against the plane they made, m; empty where there is nothing to compare. */
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
/** A length further off the common scale than this was misread or lies in another plane: a convention. */
const WORST_LENGTH = 0.1;
/** Smallest height of a triangle over its longest side for three points to count as not in line: a convention. */
const LEAST_HEIGHT = 0.02;

/**
 * Pixels to metres, from any of the three kinds of calibration.
 *
 * - `metres`: passed through.
 * - `length`: scale s = L/√(Δu² + Δv²), y flipped, then turned by the tilt (the image's down is `tiltDeg` anticlockwise
 *   of true down). Origin: the image's top left corner.
 *   With more lengths, the scale that fits them best by least squares, s = Σ L p / Σ p².
 * - `plane`: the projective map of a plane on an image by the 2-D direct linear transformation
 *   u = (L1 X + L2 Y + L3)/(L7 X + L8 Y + 1), v = (L4 X + L5 Y + L6)/(L7 X + L8 Y + 1), least squares on normalised
 *   coordinates by singular values, inverted. Walton 1981 (from memory); Brewin & Kerwin 2003, J Appl Biomech 19(1):79-88.
 *   Then turned by the tilt, where the places were measured from something that does not stand true.
 *
 * Where the calibration says how far in front of or behind the scale the movement is, every place is drawn towards the
 * one the camera points at by 1 + d/(D − d), and what is not known of those distances is added to the scale's.
 *
 * @param of body and ball may be at different distances from the camera
 * @throws DomainError 'poor-geometry' for a base too short, points in one line, lengths or points that no plane fits;
 *   'input-out-of-range' for a coordinate that is not finite or a movement behind the camera
 * @source as named above; depthFactor
 */
export function planeFromCalibration(calibration: Calibration, of: 'body' | 'ball' = 'body'): Plane {
  const plane = planeOfScale(calibration);
  const depth = calibration.kind === 'metres' ? undefined : calibration.depth;
  return depth === undefined ? plane : atDepth(plane, depth, of);
}

/** Corrects what the plane of the scale says for something nearer or farther (V5). */
function atDepth(plane: Plane, depth: Depth, of: 'body' | 'ball'): Plane {
  const factor = depthFactor(
    measured('D', 'Camera to the scale', depth.cameraM, 'm', depth.uM),
    measured('d', 'Nearer than the scale', of === 'ball' ? depth.ballNearerM : depth.bodyNearerM, 'm', depth.uM),
  );
  const tooLong = 1 + factor.value;
  const axis = plane.toMetres({ x: depth.axis.xPx, y: depth.axis.yPx });
  return {
    ...plane,
    toMetres: (point) => {
      const { x, y } = plane.toMetres(point);
      return { x: axis.x + (x - axis.x) / tooLong, y: axis.y + (y - axis.y) / tooLong };
    },
    pointU: typeof plane.pointU === 'number' ? plane.pointU / tooLong : plane.pointU,
    scaleU: typeof plane.scaleU === 'number' ? Math.hypot(plane.scaleU, (factor.u ?? 0) / tooLong) : plane.scaleU,
  };
}

function planeOfScale(calibration: Calibration): Plane {
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

type Length = Extract<Calibration, { kind: 'length' }>;

function planeFromLength(calibration: Length): Plane {
  const uPx = calibration.pointUPx;
  const lengths = [calibration, ...(calibration.others ?? [])].map(imageLength);
  const scale = lengths.length === 1 ? scaleOfOne(lengths[0] as KnownLength, uPx) : scaleOfSeveral(lengths, uPx);
  const residualsM = lengths.length === 1 ? [] : lengths.map(({ lengthM, px }) => lengthM - scale.value * px);
  lengths.forEach(({ lengthM }, i) => {
    if (!(Math.abs(residualsM[i] ?? 0) <= WORST_LENGTH * lengthM)) {
      throw new DomainError(
        'poor-geometry',
        `planeFromCalibration needs known lengths that agree on one scale; that of ${lengthM} m is ${Math.abs(residualsM[i] as number).toFixed(3)} m off the scale of all. Check its ends, or use points of a plane`,
        i === 0 ? 'calibration.to' : `calibration.others.${i - 1}`,
      );
    }
  });
  const upright = turnBy(calibration.tiltDeg);
  return {
    toMetres: (point) => {
      const { x, y } = finitePoint(point);
      return upright({ x: x * scale.value, y: -y * scale.value });
    },
    pointU: uPx === null ? NO_POINT_U : uPx * scale.value,
    scaleU: scale.u === null ? NO_POINT_U : scale.u / scale.value,
    residualsM,
    metresPerPixel: scale,
    spanPx: null,
    warnings: stretched(lengths),
  };
}

interface KnownLength {
  readonly lengthM: number;
  readonly lengthUM: number;
  readonly px: number;
  /** Whether it runs along the rows of the picture rather than its columns. */
  readonly isLevel: boolean;
}

function imageLength(
  { from, to, lengthM, lengthUM }: Pick<Length, 'from' | 'to' | 'lengthM' | 'lengthUM'>,
  i: number,
): KnownLength {
  const [x, y] = [to.xPx - from.xPx, to.yPx - from.yPx];
  const px = Math.hypot(x, y);
  if (!(px >= LEAST_BASE_PX)) {
    throw new DomainError(
      'poor-geometry',
      `planeFromCalibration needs a known length of at least ${LEAST_BASE_PX} px in the image, got ${px.toFixed(1)} px: choose a longer one`,
      i === 0 ? 'calibration.to' : `calibration.others.${i - 1}.to`,
    );
  }
  return { lengthM, lengthUM, px, isLevel: Math.abs(x) >= Math.abs(y) };
}

function inputsOf({ lengthM, lengthUM, px }: KnownLength, uPx: number | null) {
  return {
    L: measured('L', 'Known length', lengthM, 'm', lengthUM),
    // Two ends, each misread by uPx along the line.
    p: measured('p', 'The same length in the image', px, '{px}', uPx === null ? NO_POINT_U : Math.SQRT2 * uPx),
  };
}

function scaleOfOne(length: KnownLength, uPx: number | null): Quantity<'m/{px}'> {
  return derive(
    { symbol: 's', name: 'Scale', unit: 'm/{px}', formula: 's = L / p', source: SCALE },
    inputsOf(length, uPx),
    ({ L, p }) => L / p,
  );
}

function scaleOfSeveral(lengths: readonly KnownLength[], uPx: number | null): Quantity<'m/{px}'> {
  const inputs = Object.fromEntries(
    lengths.flatMap((length, i) => {
      const { L, p } = inputsOf(length, uPx);
      return [[`L_${i + 1}`, L] as const, [`p_${i + 1}`, p] as const];
    }),
  );
  return derive(
    {
      symbol: 's',
      name: 'Scale',
      unit: 'm/{px}',
      formula: 's = Σ(L p) / Σ(p^2)',
      variant: `least squares over ${lengths.length} lengths`,
      source: SCALE,
    },
    inputs,
    (values) => {
      let [lp, pp] = [0, 0];
      lengths.forEach((_, i) => {
        const [L, p] = [values[`L_${i + 1}`] as number, values[`p_${i + 1}`] as number];
        lp += L * p;
        pp += p * p;
      });
      return lp / pp;
    },
  );
}

/** V4, where there are lengths both ways. */
function stretched(lengths: readonly KnownLength[]): string[] {
  const scaleAlong = (isLevel: boolean) => {
    const some = lengths.filter((length) => length.isLevel === isLevel);
    return some.reduce((sum, { lengthM, px }) => sum + lengthM / px, 0) / some.length;
  };
  const said = scalesDiffer(scaleAlong(true), scaleAlong(false));
  return said === null ? [] : [said];
}

/** Turns places anticlockwise about the origin, so that what the picture calls down points truly down. */
function turnBy(tiltDeg: number): (place: Point) => Point {
  const tilt = (tiltDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  return ({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos });
}

function planeFromPoints(calibration: Extract<Calibration, { kind: 'plane' }>): Plane {
  const image = calibration.points.map(({ image }) => finitePoint({ x: image.xPx, y: image.yPx }));
  const ground = calibration.points.map(({ plane }) => finitePoint({ x: plane.xM, y: plane.yM }));
  refusePoorGeometry(image, 'in the image', 'image');
  refusePoorGeometry(ground, 'in the plane', 'plane');

  const toImage = homography(ground, image);
  const toGround = homography(image, ground);
  const upright = turnBy(calibration.tiltDeg ?? 0);
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
    toMetres: (point) => upright(project(toGround, finitePoint(point))),
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
