import { assessCase } from '../../shared/assess/assessCase.ts';
import type { Assessment } from '../../shared/assess/assessment.ts';
import type { CaseFile } from '../../shared/model/records.ts';

const known = new WeakMap<CaseFile, Assessment>();

/** What follows from a case file, worked out once for each version of it. */
export function assessmentOf(file: CaseFile): Assessment {
  const found = known.get(file) ?? assessCase(file);
  known.set(file, found);
  return found;
}
