import type { Source } from '../quantity.ts';
import type { Unit } from '../units.ts';

/** One thing that can be known about an athlete. Ranges and error are written in `displayUnit`, as sources print them. */
export interface Measure {
  readonly id: string;
  readonly label: string;
  /** For table heads and axis ends. */
  readonly short: string;
  readonly kind: 'number' | 'flag' | 'grade';
  /** Unit values are kept in. Flags and grades have none. */
  readonly unit: Unit | null;
  readonly displayUnit: Unit | null;
  /** Outside: refused. */
  readonly possible: readonly [number, number] | null;
  /** Outside, yet possible: asked about. */
  readonly plausible: readonly [number, number] | null;
  readonly error: MeasurementError | null;
  /** Reference values for it come from adults only; under 16 and from 65 on no verdict is given from them. */
  readonly adultsOnly: boolean;
  readonly description: string;
}

/**
 * `border` is for one value against a threshold (1.96 standard errors of measurement), `mdc` for two sessions
 * (minimal detectable change, 95 %). Null where no figure is known.
 */
export interface MeasurementError {
  readonly border: number | null;
  readonly mdc: number | null;
  readonly source: Source;
}
