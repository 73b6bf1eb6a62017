import type { Rule } from '../rules/rule.ts';
import type { CaseFile } from '../model/records.ts';
import type { CaseCheck } from './assessment.ts';
import { movementOf } from './movementOf.ts';

export const NO_RULES = 'trial/no-rules';

/** Says of every trial for whose movement there is no rule that nothing of it is judged: silence would read as praise. */
export function checkRuled(file: CaseFile, rules: readonly Rule[]): CaseCheck[] {
  const ruled = new Set(rules.filter((rule) => rule.supersededBy === null).map((rule) => rule.movement));
  return file.movementTrials
    .filter((trial) => !ruled.has(trial.movementId))
    .map((trial) => ({
      id: NO_RULES,
      verdict: 'cannot tell',
      sentence: `There are no rules for this movement (${movementOf(file, trial.movementId)?.label ?? trial.movementId}): its measures are shown, and nothing of them is judged.`,
      numbers: [],
      about: trial.id,
      source: null,
    }));
}
