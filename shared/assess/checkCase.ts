import type { CaseFile } from '../model/records.ts';
import type { CaseCheck, Fact } from './assessment.ts';
import { checkJumps } from './checkJumps.ts';
import { checkStated } from './checkStated.ts';
import { checkTrial } from './checkTrial.ts';

/**
 * The case checks, each asked wherever the file holds something that it could question. `about` is the key of the fact
 * questioned, or the id of the record where there is no fact of it.
 */
export function checkCase(file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  return [
    ...checkStated(file, facts),
    ...checkJumps(file, facts),
    ...file.movementTrials.flatMap((trial) => checkTrial(trial, file, facts)),
  ];
}
