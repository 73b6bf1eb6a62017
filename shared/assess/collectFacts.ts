import type { CaseFile } from '../model/records.ts';
import type { Fact } from './assessment.ts';
import { factsFromAthlete } from './factsFromAthlete.ts';
import { factsFromEntered } from './factsFromEntered.ts';
import { factsFromJumps } from './factsFromJumps.ts';
import { factsFromScreening } from './factsFromScreening.ts';
import { factsFromTrial } from './factsFromTrial.ts';
import { sideFacts } from './sideFacts.ts';

/** Everything a case file says, as facts: what was recorded, what is computed from it, and why something is not known. */
export function collectFacts(file: CaseFile): Fact[] {
  const standing = [...factsFromScreening(file), ...factsFromEntered(file)];
  return [
    ...factsFromAthlete(file),
    ...standing,
    ...sideFacts(standing, file),
    ...factsFromJumps(file),
    ...factsFromTrial(file),
  ];
}
