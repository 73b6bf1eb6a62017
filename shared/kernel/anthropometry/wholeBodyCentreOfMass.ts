import type { Unknown } from '../../quantity.ts';
import type { Point } from '../plane/point.ts';
import { type BodyPoints, type PlacedSegment, segmentCentres } from './segmentCentres.ts';
import type { SegmentTable } from './segmentTable.ts';

export type { BodyPoints } from './segmentCentres.ts';

export interface BodyCentre extends Point {
  /** Part of the body's mass that the digitised segments hold, 0 to 1. */
  readonly massShare: number;
  /** Segments left out because an end point was not digitised: `forearm left`. */
  readonly missing: readonly string[];
}

/**
 * Centre of mass of the whole body in the plane of motion, from named landmarks: Σ mᵢ pᵢ / Σ mᵢ over the segments whose
 * end points are there (segmentCentres). A segment without its end points is left out, named in `missing`, and its mass
 * does not count: the rest is then taken for the whole. Plain numbers, for whole tracks; bodyCentreOfMass adds
 * uncertainty and working for one instant.
 *
 * @param points metres in the plane of motion
 * @returns metres; Unknown if no segment is complete
 * @throws DomainError 'input-out-of-range' if a coordinate is not finite
 * @source the table's own; the weighted mean is the definition of a centre of mass
 */
export function wholeBodyCentreOfMass(points: BodyPoints, table: SegmentTable): BodyCentre | Unknown {
  const { segments, missing } = segmentCentres(points, table);
  if (segments.length === 0) return { unknown: 'no segment of the body has both its end points digitised' };
  return { ...weightedCentre(segments), missing };
}

/** Σ mᵢ pᵢ / Σ mᵢ. Dividing by the sum matters: the female table sums to 0.9999 as published. */
export function weightedCentre(segments: readonly PlacedSegment[]): Point & { readonly massShare: number } {
  let [massShare, x, y] = [0, 0, 0];
  for (const { row, centre } of segments) {
    massShare += row.massShare;
    x += row.massShare * centre.x;
    y += row.massShare * centre.y;
  }
  return { x: x / massShare, y: y / massShare, massShare };
}
