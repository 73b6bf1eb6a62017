import { measureById } from '../knowledge/measures/index.ts';
import type { CaseFile } from '../model/records.ts';
import type { EnteredMeasure } from '../model/trial.ts';
import { measured } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { computed, type FactParts, makeFact } from './makeFact.ts';

/** Values measured elsewhere and typed in. One that belongs to a trial is judged with the trial. */
export function factsFromEntered(file: CaseFile): Fact[] {
  return file.enteredMeasures.flatMap((entered) => {
    const value = valueOf(entered);
    if (value === null) return [];
    const trial = file.movementTrials.find((one) => one.id === entered.trialId);
    const base = {
      measure: entered.measureId,
      value,
      side: entered.side,
      takenOn: entered.takenOn,
      provenance: 'entered by hand',
      recordId: entered.id,
      height: heightOf(entered.measureId),
      ...(entered.phase === null ? {} : { phase: entered.phase }),
    };
    if (trial === undefined) return [makeFact({ ...base, from: { kind: 'enteredMeasure', id: entered.id } })];
    return [makeFact({ ...base, movement: trial.movementId, from: { kind: 'movementTrial', id: trial.id } })];
  });
}

const REFERENCE: Readonly<Record<string, 'take-off' | 'standing'>> = {
  'com.riseInSkill': 'take-off',
  'com.riseAboveStanding': 'standing',
  'jump.height.flightTime': 'take-off',
  'jump.height.reach': 'standing',
  'jump.height.force': 'take-off',
  'jump.riseAboveStanding': 'standing',
};

/** A typed height says where its zero is, and no more: how it was taken is not known. */
function heightOf(measureId: string): Fact['height'] {
  const reference = REFERENCE[measureId];
  return reference === undefined ? null : { reference, method: `${measureId}, typed in`, arms: 'not recorded' };
}

function valueOf(entered: EnteredMeasure): FactParts['value'] | null {
  const { valueSi, flag } = entered;
  const measure = measureById(entered.measureId);
  if (flag !== null) return { kind: 'flag', flag };
  if (valueSi === null) return null;
  const unit = measure?.unit ?? '1';
  return computed(() =>
    measured(
      entered.measureId,
      measure?.label ?? entered.measureId,
      valueSi,
      unit,
      entered.uSi ?? 'entered without an uncertainty',
    ),
  );
}
