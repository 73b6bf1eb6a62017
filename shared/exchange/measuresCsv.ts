import type { Fact } from '../assess/assessment.ts';
import type { Movement } from '../knowledge/movement.ts';
import { inUnit, isKnown } from '../quantity.ts';
import { csvRow } from './csvRow.ts';

const HEAD = ['phase', 'measure', 'label', 'side', 'value', 'unit', 'standard_uncertainty', 'reason', 'how'] as const;

/**
 * Measures as a table of comma-separated values (RFC 4180): a row each, angles in degrees and all else in SI units, units
 * as UCUM codes. Of what is not known the reason stands in its place.
 */
export function measuresCsv(facts: readonly Fact[], movement: Movement | null): string {
  const rows = facts.map((fact) => {
    const { phase, measure, label, side, provenance } = fact;
    const phaseLabel = movement?.phases.find(({ id }) => id === phase)?.label ?? phase ?? 'whole';
    return [phaseLabel, measure, label, side, ...valueCells(fact), provenance];
  });
  return [HEAD, ...rows].map(csvRow).join('');
}

/** Value, unit, uncertainty, and the reason for what of these is missing. */
function valueCells({ value }: Fact): (string | number)[] {
  switch (value.kind) {
    case 'flag':
      return [value.flag ? 'yes' : 'no', '', '', ''];
    case 'grade':
      return [value.grade, '', '', ''];
    case 'unknown':
      return ['', '', '', value.reason];
    case 'number': {
      if (!isKnown(value.reading)) return ['', '', '', value.reading.unknown];
      const shown = value.reading.unit === 'rad' ? inUnit(value.reading, 'deg') : value.reading;
      return [shown.value, shown.unit, shown.u ?? '', shown.uReason ?? ''];
    }
  }
}
