import type { Unit } from '../../units.ts';
import type { Measure, MeasurementError } from '../measure.ts';
import { SOURCES } from '../sources/index.ts';

interface Numbers {
  readonly short?: string;
  readonly possible: readonly [number, number];
  readonly plausible: readonly [number, number];
  readonly error?: MeasurementError;
  readonly adultsOnly?: boolean;
}

/** A measured or computed number. `displayUnit` is also the unit of the ranges and the error. */
export function numeric(
  id: string,
  label: string,
  unit: Unit,
  displayUnit: Unit,
  numbers: Numbers,
  description: string,
): Measure {
  return {
    id,
    label,
    short: numbers.short ?? label,
    kind: 'number',
    unit,
    displayUnit,
    possible: numbers.possible,
    plausible: numbers.plausible,
    error: numbers.error ?? null,
    adultsOnly: numbers.adultsOnly ?? false,
    description,
  };
}

const withoutUnit = { unit: null, displayUnit: null, possible: null, plausible: null, error: null, adultsOnly: false };

export function flag(id: string, label: string, description: string): Measure {
  return { ...withoutUnit, id, label, short: label, kind: 'flag', description };
}

export function grade(id: string, label: string, description: string): Measure {
  return { ...withoutUnit, id, label, short: label, kind: 'grade', description };
}

/** An error figure chosen here because none was found: shown as a convention wherever it decides. */
export function assumedError(mdc: number, border: number): MeasurementError {
  return { mdc, border, source: SOURCES.convention };
}
