import { DomainError } from '../../errors.ts';
import type { Landmark, Side } from '../../model/trial.ts';
import { centreOf, type Point } from '../plane/point.ts';
import type { Endpoint, SegmentRow, SegmentTable } from './segmentTable.ts';

export type BodyPoints = Readonly<Partial<Record<Landmark, Point>>>;

/** One segment of the body as it lies in the plane of motion. */
export interface PlacedSegment {
  readonly row: SegmentRow;
  /** Null for a segment of the middle. */
  readonly side: Side | null;
  /** `forearm left`. */
  readonly name: string;
  readonly origin: Point;
  readonly other: Point;
  /** Its centre of mass. */
  readonly centre: Point;
}

export interface PlacedBody {
  readonly segments: readonly PlacedSegment[];
  /** Segments left out because an end point was not digitised: `forearm left`. */
  readonly missing: readonly string[];
}

/**
 * Places every segment that has both its end points: p = p_origin + c (p_other − p_origin).
 *
 * Where a table wants a point that no landmark names, the nearest landmark stands in: the wrist for the ulnar styloid,
 * the ankle for malleolus and sphyrion, the hip for the greater trochanter, the toe tip for the second metatarsal head,
 * and the middle between cervicale and vertex for the ear canal (where de Leva's head rows put the centre of the head).
 * The standing-in is a convention.
 *
 * @param points metres in the plane of motion
 * @throws DomainError 'input-out-of-range' if a coordinate is not finite
 * @source the table's own
 */
export function segmentCentres(points: BodyPoints, table: SegmentTable): PlacedBody {
  for (const [name, point] of Object.entries(points)) {
    if (!Number.isFinite(point.x) || !Number.isFinite(point.y)) {
      throw new DomainError(
        'input-out-of-range',
        `segmentCentres needs finite coordinates, got ${point.x}, ${point.y} for ${name}`,
        name,
      );
    }
  }
  const segments: PlacedSegment[] = [];
  const missing: string[] = [];
  for (const row of table.rows) {
    if (!row.isInBody) continue;
    for (const side of row.sides === 2 ? (['left', 'right'] as const) : [null]) {
      const name = side === null ? row.segment : `${row.segment} ${side}`;
      const origin = endpoint(row.origin, side ?? 'left', points);
      const other = endpoint(row.other, side ?? 'left', points);
      if (origin === null || other === null) {
        missing.push(name);
        continue;
      }
      const x = origin.x + row.centre * (other.x - origin.x);
      const y = origin.y + row.centre * (other.y - origin.y);
      segments.push({ row, side, name, origin, other, centre: { x, y } });
    }
  }
  return { segments, missing };
}

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
