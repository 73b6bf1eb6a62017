import type { Fact } from '../../assess/assessment.ts';
import { movementById } from '../../knowledge/movements/index.ts';
import { isKnown } from '../../quantity.ts';
import type { Block } from '../blocks/block.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { right, table } from '../blocks/table.ts';
import { plain, quantityRuns, quiet, type Runs } from '../runs.ts';
import { GRADE_WORDS, SIDE_WORDS } from '../words.ts';
import type { Writing } from './writing.ts';

/** Every measure of the movement trials, phase by phase, with ± or the reason why it is not known. */
export function trialMeasures({ file, assessment }: Writing): Block[] {
  const blocks = file.movementTrials.flatMap((trial) => {
    const movement = movementById(trial.movementId);
    const order = movement?.phases.map((phase) => phase.id) ?? [];
    const facts = assessment.facts
      .filter((fact) => fact.movement === trial.movementId && ofTrial(fact, trial.id, file))
      .toSorted((a, b) => order.indexOf(a.phase ?? '') - order.indexOf(b.phase ?? ''));
    if (facts.length === 0) return [];
    const rows = facts.map((fact) => [
      movement?.phases.find((phase) => phase.id === fact.phase)?.label ?? 'Whole',
      fact.label,
      SIDE_WORDS[fact.side],
      valueRuns(fact),
    ]);
    return [
      table(
        `${movement?.label ?? trial.movementId}, ${trial.label}`,
        ['Phase', 'Measure', 'Side', right('Value')],
        rows,
      ),
    ];
  });
  return blocks.length === 0 ? [paragraph('No measures of a filmed movement.')] : blocks;
}

/** A fact may come from the trial itself or from a record under it. */
function ofTrial(fact: Fact, trialId: string, file: Writing['file']): boolean {
  if (fact.from.id === trialId) return true;
  const under = [...file.landmarkTracks, ...file.trialEvents, ...file.enteredMeasures].find(
    (one) => one.id === fact.from.id,
  );
  return under?.trialId === trialId;
}

export function valueRuns({ value, displayUnit }: Fact): Runs {
  switch (value.kind) {
    case 'number':
      return isKnown(value.reading)
        ? quantityRuns(value.reading, displayUnit ?? value.reading.unit)
        : quiet(`not known: ${value.reading.unknown}`);
    case 'flag':
      return plain(value.flag ? 'yes' : 'no');
    case 'grade':
      return plain(GRADE_WORDS[value.grade as keyof typeof GRADE_WORDS] ?? value.grade);
    case 'unknown':
      return quiet(`not known: ${value.reason}`);
  }
}
