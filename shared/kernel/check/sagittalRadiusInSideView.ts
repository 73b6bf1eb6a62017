import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import type { SegmentRow } from '../anthropometry/segmentTable.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'de Leva 1996, J Biomech 29(9):1223-1230, table 4: radii are named after the axis, and side-view motion turns about the transverse one',
  status: 'published',
};

/**
 * Mistake 26: was the radius of the "sagittal" column used for motion seen from the side? That column belongs to the
 * front-to-back axis. Asked of a radius that comes from elsewhere; segmentInertia takes the axis by name.
 *
 * @param seen radius of gyration over segment length as used, and the row of the table it should come from
 * @source de Leva 1996, J Biomech 29(9):1223-1230, table 4
 */
export function sagittalRadiusInSideView(seen: {
  readonly radius: number | null;
  readonly row: SegmentRow | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'sagittal-radius-in-side-view', about: seen.about, source: SOURCE };
  const { radius, row } = seen;
  if (radius === null || row === null || row.kTransverse === null) {
    return cannotTell(
      base,
      `Which axis the radius belongs to cannot be told: ${radius === null ? 'none is stated' : 'no table row to hold it against has one for the transverse axis'}.`,
    );
  }
  // The table prints three digits.
  const isPrinted = (k: number | null) => k !== null && Math.abs(radius - k) < 0.0005;
  if (isPrinted(row.kTransverse)) return fine(base, 'The radius is that about the transverse axis.');
  return questioned(
    base,
    `${radius.toFixed(3)} is ${isPrinted(row.kSagittal) ? 'the radius about the front-to-back axis' : 'not in the table for this segment'}. Seen from the side the ${row.segment.replaceAll('-', ' ')} turns about the transverse axis: ${row.kTransverse.toFixed(3)}.`,
    { label: 'Radius over length as used', value: radius, unit: '1' },
    { label: 'About the transverse axis', value: row.kTransverse, unit: '1' },
  );
}
