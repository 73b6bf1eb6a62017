import { measured, type Quantity, type Reading } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';
import type { SegmentRow, SegmentTable } from './segmentTable.ts';

export interface SegmentInertia {
  readonly mass: Quantity<'kg'>;
  readonly aboutCentre: Reading<'kg.m2'>;
  readonly aboutOrigin: Reading<'kg.m2'>;
  readonly aboutOther: Reading<'kg.m2'>;
}

/**
 * Mass of one segment and its moments of inertia about its centre and either end: I = m (k L)², and by the parallel-axis
 * theorem I = m ((k L)² + (c L)²).
 *
 * @param bodyMass kg, > 0
 * @param length m, > 0, between the row's end points
 * @param axis `transverse` for bending in a side view; de Leva's `sagittal` is the antero-posterior axis, not the
 *   sagittal plane, and is the wrong one there
 * @returns unknown where the table has no radius for the axis
 * @throws DomainError 'input-out-of-range' if mass or length is not above zero
 * @source parallel-axis theorem; de Leva 1996 and Winter 2009 for the radii
 */
export function segmentInertia(
  row: SegmentRow,
  table: SegmentTable,
  bodyMass: Quantity<'kg'>,
  length: Quantity<'m'>,
  axis: 'transverse' | 'sagittal' | 'longitudinal',
): SegmentInertia {
  requirePositive('segmentInertia', bodyMass, length);
  const { source } = table;
  const share = measured('f', `share of body mass, ${row.segment}`, row.massShare, '1', 0, source);
  const mass = derive(
    { symbol: 'm', name: `mass, ${row.segment}`, unit: 'kg', formula: 'm = f m_b', source },
    { f: share, m_b: bodyMass },
    ({ f, m_b }) => f * m_b,
  );
  const radius = { transverse: row.kTransverse, sagittal: row.kSagittal, longitudinal: row.kLongitudinal }[axis];
  if (radius === null) {
    const unknown = { unknown: `${table.name} gives no ${axis} radius of gyration for the ${row.segment}` };
    return { mass, aboutCentre: unknown, aboutOrigin: unknown, aboutOther: unknown };
  }
  const k = measured('k', `${axis} radius of gyration in parts of length, ${row.segment}`, radius, '1', 0, source);
  const about = (place: string, distance: number): Quantity<'kg.m2'> =>
    derive(
      {
        symbol: 'I',
        name: `moment of inertia about the ${place}, ${row.segment}`,
        unit: 'kg.m2',
        formula: 'I = m ((k L)^2 + (c L)^2)',
        variant: `${axis} axis; parallel-axis theorem`,
        source,
      },
      {
        m: mass,
        k,
        L: length,
        c: measured('c', `centre from the ${place} in parts of length`, distance, '1', 0, source),
      },
      ({ m, k: radiusPart, L, c }) => m * ((radiusPart * L) ** 2 + (c * L) ** 2),
    );
  // An end lies on the long axis itself.
  const lever = axis === 'longitudinal' ? 0 : 1;
  return {
    mass,
    aboutCentre: derive(
      {
        symbol: 'I',
        name: `moment of inertia about its centre, ${row.segment}`,
        unit: 'kg.m2',
        formula: 'I = m (k L)^2',
        variant: `${axis} axis`,
        source,
      },
      { m: mass, k, L: length },
      ({ m, k: radiusPart, L }) => m * (radiusPart * L) ** 2,
    ),
    aboutOrigin: about(row.origin, lever * row.centre),
    aboutOther: about(row.other, lever * (1 - row.centre)),
  };
}
