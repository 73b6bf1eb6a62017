import type { CaseFile } from '../model/records.ts';
import type { JudgingOptions } from '../rules/evaluate.ts';
import { asOf } from './asOf.ts';

/** Whom the rules judge in a case, and on which day. */
export function judgedAs(file: CaseFile): JudgingOptions {
  const { referenceSex, birthDate, ageBand } = file.athlete;
  return { referenceSex, birthDate, ageBand, asOf: asOf(file) };
}
