import { measured, type Quantity, type Source, type Unknown } from '../../quantity.ts';
import type { PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { type BodyPoints, type PlacedSegment, segmentCentres } from './segmentCentres.ts';
import type { SegmentTable } from './segmentTable.ts';
import { weightedCentre, wholeBodyCentreOfMass } from './wholeBodyCentreOfMass.ts';

export interface BodyCentreQuantities {
  readonly x: Quantity<'m'>;
  readonly y: Quantity<'m'>;
  readonly massShare: number;
  readonly missing: readonly string[];
}

const SOURCE: Source = {
  cite: 'Definition of the centre of mass; where segments are missing, the centre of the rest stands for it',
  status: 'convention',
};

/**
 * Centre of mass of the whole body at one instant with uncertainty and working; value as wholeBodyCentreOfMass.
 *
 * Uncertainty: that of the digitised points, every coordinate independent, and for missing mass its share times the
 * spread of the segments that are there, as if it lay anywhere among them (convention). How far this body departs from
 * the table is not included: the tables do not say.
 *
 * @param points metres in the plane of motion
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @returns metres; Unknown if no segment is complete
 * @throws DomainError 'input-out-of-range' if a coordinate is not finite
 * @source definition of the centre of mass; the table's own; JCGM 100:2008, 5.1
 */
export function bodyCentreOfMass(
  points: BodyPoints,
  table: SegmentTable,
  pointU: PointU,
): BodyCentreQuantities | Unknown {
  const whole = wholeBodyCentreOfMass(points, table);
  if ('unknown' in whole) return whole;
  const { segments, missing } = segmentCentres(points, table);
  const leverage = pointLeverage(points, table);
  const one = (axis: 'x' | 'y'): Quantity<'m'> => {
    const spread = Math.sqrt(
      segments.reduce((sum, { row, centre }) => sum + row.massShare * (centre[axis] - whole[axis]) ** 2, 0) /
        whole.massShare,
    );
    const u = typeof pointU === 'number' ? Math.hypot(pointU * leverage, (1 - whole.massShare) * spread) : pointU;
    const result = measured(axis, `centre of mass of the body, ${axis}`, whole[axis], 'm', u, SOURCE);
    return {
      ...result,
      working: {
        ...result.working,
        formula: `${axis} = Σ(m ${axis}) / Σ m`,
        variant: variantOf(table, whole.massShare, missing),
        inputs: segments.map((segment) => ({
          symbol: `${axis}_${segment.name.replaceAll(' ', '')}`,
          quantity: segmentCentre(segment, axis, table, pointU),
        })),
      },
    };
  };
  return { x: one('x'), y: one('y'), massShare: whole.massShare, missing };
}

function variantOf(table: SegmentTable, massShare: number, missing: readonly string[]): string {
  if (missing.length === 0) return table.name;
  return `${table.name}; ${(100 * massShare).toFixed(1)} % of the mass, without ${missing.join(', ')}`;
}

/** √Σwⱼ² over the landmarks: the centre is linear in them, so moving one by 1 m shows its weight. */
function pointLeverage(points: BodyPoints, table: SegmentTable): number {
  const at = (moved: BodyPoints) => weightedCentre(segmentCentres(moved, table).segments).x;
  const centre = at(points);
  const weights = Object.entries(points).map(
    ([name, point]) => at({ ...points, [name]: { x: point.x + 1, y: point.y } }) - centre,
  );
  return Math.hypot(...weights);
}

/** One coordinate of a segment's centre of mass, with the share of the body's mass named in its variant. */
function segmentCentre(
  { row, name, origin, other }: PlacedSegment,
  axis: 'x' | 'y',
  table: SegmentTable,
  pointU: PointU,
): Quantity<'m'> {
  return derive(
    {
      symbol: axis,
      name: `centre of mass, ${name}`,
      unit: 'm',
      formula: `${axis} = ${axis}_o + c (${axis}_d - ${axis}_o)`,
      variant: `${(100 * row.massShare).toFixed(2)} % of body mass`,
      source: table.source,
    },
    {
      [`${axis}_o`]: measured(`${axis}_o`, `${name}, ${row.origin}`, origin[axis], 'm', pointU),
      c: measured('c', `centre of ${name} from ${row.origin}`, row.centre, '1', 0, table.source),
      [`${axis}_d`]: measured(`${axis}_d`, `${name}, ${row.other}`, other[axis], 'm', pointU),
    },
    (values: Readonly<Record<string, number>>) => {
      const [start, c, end] = [values[`${axis}_o`], values.c, values[`${axis}_d`]] as [number, number, number];
      return start + c * (end - start);
    },
  );
}
