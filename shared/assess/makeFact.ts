import { DomainError } from '../errors.ts';
import { measureById, possibleRangeSi } from '../knowledge/measures/index.ts';
import type { Kind } from '../model/records.ts';
import type { SideOrNone } from '../model/parts.ts';
import { isKnown, type Reading } from '../quantity.ts';
import { convert, type Unit } from '../units.ts';
import type { Fact, FactValue } from './assessment.ts';

export interface FactParts {
  readonly measure: string;
  readonly value: FactValue;
  readonly from: { readonly kind: Kind; readonly id: string };
  readonly provenance: string;
  readonly takenOn: string | null;
  readonly movement?: string;
  readonly phase?: string;
  readonly side?: SideOrNone;
  /** Where the measure's own label says too little: `Pain in the single-leg squat`. */
  readonly label?: string;
  readonly height?: Fact['height'];
  readonly takenAs?: string;
  /** Of an item of one's own, whose measure the knowledge does not have. */
  readonly ownUnit?: Unit | null;
  /** Told apart from other facts of the same record by this, where measure, phase and side do not. */
  readonly recordId?: string;
}

/** A fact with its label, display unit and key filled in. An impossible number becomes unknown, with the reason. */
export function makeFact(parts: FactParts): Fact {
  const measure = measureById(parts.measure);
  const side = parts.side ?? 'none';
  const phase = parts.phase ?? null;
  return {
    key: `${parts.measure}/${parts.recordId ?? parts.from.id}/${phase ?? ''}/${side}`,
    measure: parts.measure,
    label: parts.label ?? measure?.label ?? parts.measure,
    movement: parts.movement ?? null,
    phase,
    side,
    value: measure !== null ? refuseImpossible(parts) : parts.ownUnit === undefined ? unknownMeasure : parts.value,
    displayUnit: measure?.displayUnit ?? parts.ownUnit ?? null,
    height: parts.height ?? null,
    takenOn: parts.takenOn,
    from: parts.from,
    provenance: parts.provenance,
    takenAs: parts.takenAs ?? null,
  };
}

function refuseImpossible({ measure, value }: FactParts): FactValue {
  if (value.kind !== 'number' || !isKnown(value.reading)) return value;
  const range = possibleRangeSi(measure);
  const unit = measureById(measure)?.unit;
  if (range === null || unit === undefined || unit === null) return value;
  const inSi = convert(value.reading.value, value.reading.unit, unit);
  // A hair's breadth for what conversion adds to a value that stands exactly on the edge.
  const slack = 1e-9 * Math.max(1, Math.abs(inSi));
  if (inSi >= range[0] - slack && inSi <= range[1] + slack) return value;
  return unknown('the value is beyond what is possible: check it and its unit');
}

export function number(reading: Reading): FactValue {
  return { kind: 'number', reading };
}

export function unknown(reason: string): FactValue {
  return { kind: 'unknown', reason };
}

const unknownMeasure = unknown('this version does not know the measure');

/** What a computation gives, or why it gives nothing. Only errors thrown on purpose are turned into a reason. */
export function computed(compute: () => Reading): FactValue {
  try {
    return number(compute());
  } catch (thrown) {
    if (thrown instanceof DomainError) return unknown(thrown.message);
    throw thrown;
  }
}
