import { DomainError } from '../../errors.ts';
import { convert, type Unit } from '../../units.ts';
import type { Measure } from '../measure.ts';
import { ballMeasures } from './ball.ts';
import { jumpMeasures } from './jump.ts';
import { movementMeasures } from './movement.ts';
import { planMeasures } from './plan.ts';
import { screeningMeasures } from './screening.ts';
import { shoulderMeasures } from './shoulder.ts';

/** Everything that can be known about an athlete, by topic. */
export const MEASURES: readonly Measure[] = [
  ...movementMeasures,
  ...ballMeasures,
  ...jumpMeasures,
  ...shoulderMeasures,
  ...screeningMeasures,
  ...planMeasures,
];

const byId = new Map(MEASURES.map((measure) => [measure.id, measure]));

export function measureById(id: string): Measure | null {
  return byId.get(id) ?? null;
}

/**
 * The range outside which a value is refused, in the measure's SI unit. Null for flags and grades.
 * @throws DomainError 'not-found' for an unknown measure
 */
export function possibleRangeSi(id: string): readonly [number, number] | null {
  return rangeSi(id, 'possible');
}

/** The range outside which a value is asked about, in the measure's SI unit. */
export function plausibleRangeSi(id: string): readonly [number, number] | null {
  return rangeSi(id, 'plausible');
}

function rangeSi(id: string, which: 'possible' | 'plausible'): readonly [number, number] | null {
  const measure = measureById(id);
  if (measure === null) throw new DomainError('not-found', `There is no measure called "${id}"`);
  const range = measure[which];
  if (range === null || measure.unit === null || measure.displayUnit === null) return null;
  return [convert(range[0], measure.displayUnit, measure.unit), convert(range[1], measure.displayUnit, measure.unit)];
}

/** Half-width around a threshold inside which one value cannot decide, in `unit`; null where no figure is known. */
export function borderIn(measure: Measure, unit: Unit): number | null {
  const border = measure.error?.border ?? null;
  return border === null || measure.displayUnit === null ? null : convert(border, measure.displayUnit, unit);
}
