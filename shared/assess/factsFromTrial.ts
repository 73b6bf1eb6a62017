import { measured } from '../quantity.ts';
import type { CaseFile } from '../model/records.ts';
import type { Fact } from './assessment.ts';
import { computed, makeFact } from './makeFact.ts';

/** What each filmed trial yields, phase by phase, and the pain that went with it. */
export function factsFromTrial(file: CaseFile): Fact[] {
  return file.movementTrials.flatMap((trial) => {
    const base = {
      from: { kind: 'movementTrial', id: trial.id },
      takenOn: trial.filmedOn,
      movement: trial.movementId,
    } as const;
    if (trial.painNrs === null) return [];
    const nrs = trial.painNrs;
    const value = computed(() => measured('NRS', 'pain', nrs, '{score}', 'a rating given by the athlete'));
    return [
      makeFact({
        ...base,
        measure: 'pain.nrs',
        label: 'Pain in the trial',
        value,
        provenance: 'as given for the trial',
      }),
    ];
  });
}
