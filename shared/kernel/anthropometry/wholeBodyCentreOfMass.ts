import { DomainError } from '../../errors.ts';
import type { Landmark } from '../../model/trial.ts';
import type { Unknown } from '../../quantity.ts';
import { centreOf, type Point } from '../plane/point.ts';
import type { Endpoint, SegmentTable } from './segmentTable.ts';

export type BodyPoints = Readonly<Partial<Record<Landmark, Point>>>;

export interface BodyCentre extends Point {
  /** Part of the body's mass that the digitised segments hold, 0 to 1. */
  readonly massShare: number;
  /** Segments left out because an end point was not digitised: `forearm left`. */
  readonly missing: readonly string[];
}

/**
 * Centre of mass of the whole body in the plane of motion, from named landmarks: Σ mᵢ pᵢ / Σ mᵢ over the segments whose
 * end points are there, each pᵢ between its end points as the table says. A segment without its end points is left
 * out, named in `missing`, and its mass does not count: the rest is then taken for the whole.
 *
 * Where a table wants a point that no landmark names, the nearest landmark stands in: the wrist for the ulnar styloid,
 * the ankle for malleolus and sphyrion, the hip for the greater trochanter, the toe tip for the second metatarsal head,
 * and the middle between cervicale and vertex for the ear canal (where de Leva's head rows put the centre of the head).
 * The standing-in is a convention.
 *
 * @param points metres in the plane of motion
 * @returns metres; Unknown if no segment is complete
 * @throws DomainError 'input-out-of-range' if a coordinate is not finite
 * @source the table's own; the weighted mean is the definition of a centre of mass
 */
export function wholeBodyCentreOfMass(points: BodyPoints, table: SegmentTable): BodyCentre | Unknown {
  for (const [name, point] of Object.entries(points)) {
    if (!Number.isFinite(point.x) || !Number.isFinite(point.y)) {
      throw new DomainError(
        'input-out-of-range',
        `wholeBodyCentreOfMass needs finite coordinates, got ${point.x}, ${point.y} for ${name}`,
      );
    }
  }
  const missing: string[] = [];
  let [massShare, x, y] = [0, 0, 0];
  for (const row of table.rows.filter(({ isInBody }) => isInBody)) {
    for (const side of row.sides === 2 ? (['left', 'right'] as const) : (['left'] as const)) {
      const origin = endpoint(row.origin, side, points);
      const other = endpoint(row.other, side, points);
      if (origin === null || other === null) {
        missing.push(row.sides === 2 ? `${row.segment} ${side}` : row.segment);
        continue;
      }
      massShare += row.massShare;
      x += row.massShare * (origin.x + row.centre * (other.x - origin.x));
      y += row.massShare * (origin.y + row.centre * (other.y - origin.y));
    }
  }
  if (massShare === 0) return { unknown: 'no segment of the body has both its end points digitised' };
  // The female table sums to 0.9999 as published: dividing by the sum keeps the point where it belongs.
  return { x: x / massShare, y: y / massShare, massShare, missing };
}

type Side = 'left' | 'right';

/** Landmarks whose middle an end point is. Paired ones are named without their side. */
const LANDMARKS_OF: Readonly<Partial<Record<Endpoint, (side: Side) => readonly Landmark[]>>> = {
  VERT: () => ['vertex'],
  CERV: () => ['cervicale'],
  EAR: () => ['cervicale', 'vertex'],
  MIDS: () => ['shoulder-left', 'shoulder-right'],
  MIDH: () => ['hip-left', 'hip-right'],
  SJC: (side) => [`shoulder-${side}`],
  EJC: (side) => [`elbow-${side}`],
  WJC: (side) => [`wrist-${side}`],
  STYL: (side) => [`wrist-${side}`],
  MET3: (side) => [`knuckle-${side}`],
  HJC: (side) => [`hip-${side}`],
  TROC: (side) => [`hip-${side}`],
  KJC: (side) => [`knee-${side}`],
  AJC: (side) => [`ankle-${side}`],
  LMAL: (side) => [`ankle-${side}`],
  SPHY: (side) => [`ankle-${side}`],
  HEEL: (side) => [`heel-${side}`],
  TTIP: (side) => [`toe-${side}`],
  MT2: (side) => [`toe-${side}`],
};

function endpoint(name: Endpoint, side: Side, points: BodyPoints): Point | null {
  const landmarks = LANDMARKS_OF[name]?.(side) ?? [];
  const found = landmarks.flatMap((landmark) => points[landmark] ?? []);
  return landmarks.length > 0 && found.length === landmarks.length ? centreOf(found) : null;
}
