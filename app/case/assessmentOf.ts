import { type Assessment, SECTIONS } from '../../shared/assess/assessment.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { KERNEL_VERSION, RULES_VERSION } from '../../shared/versions.ts';

/** Stands in until shared/assess/assessCase.ts is there. */
function assessCase(_file: CaseFile): Assessment {
  return {
    facts: [],
    findings: [],
    checks: [],
    sections: SECTIONS.map((section) => ({ section, words: 'not judged', isRequired: false, isComplete: false })),
    stops: [],
    missing: [],
    kernelVersion: KERNEL_VERSION,
    rulesVersion: RULES_VERSION,
  };
}

const known = new WeakMap<CaseFile, Assessment>();

/** What follows from a case file, worked out once for each version of it. */
export function assessmentOf(file: CaseFile): Assessment {
  const found = known.get(file) ?? assessCase(file);
  known.set(file, found);
  return found;
}
