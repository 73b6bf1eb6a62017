import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import { pointUncertainty } from '../kernel/trial/pointUncertainty.ts';
import { measured } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { computed, makeFact, number } from './makeFact.ts';
import { measuredTrial } from './measuredTrial.ts';

/** What each filmed trial yields, phase by phase, and the pain that went with it. */
export function factsFromTrial(file: CaseFile): Fact[] {
  return file.movementTrials.flatMap((trial) => [...measuredIn(trial, file), ...painIn(trial)]);
}

function measuredIn(trial: MovementTrial, file: CaseFile): Fact[] {
  const measures = measuredTrial(file, trial)?.measures ?? [];
  const of = ({ trialId }: { readonly trialId: string }) => trialId === trial.id;
  const { said } = pointUncertainty(trial, file.landmarkTracks.filter(of), file.pointRepeats.filter(of));
  const provenance = ['computed from the points and events of the trial', ...said.map((one) => one.replace(/\.$/, ''))];
  return measures.map(({ measure, phase, side, reading, height }) =>
    makeFact({
      ...placeOf(trial),
      measure,
      side,
      height,
      value: number(reading),
      provenance: provenance.join('. '),
      ...(phase === null ? {} : { phase }),
    }),
  );
}

function painIn(trial: MovementTrial): Fact[] {
  const { painNrs } = trial;
  if (painNrs === null) return [];
  const value = computed(() => measured('NRS', 'pain', painNrs, '{score}', 'a rating given by the athlete'));
  return [
    makeFact({ ...placeOf(trial), measure: 'pain.nrs', label: 'Pain in the trial', value, provenance: 'as given' }),
  ];
}

function placeOf(trial: MovementTrial) {
  return {
    from: { kind: 'movementTrial', id: trial.id },
    takenOn: trial.filmedOn,
    movement: trial.movementId,
  } as const;
}
