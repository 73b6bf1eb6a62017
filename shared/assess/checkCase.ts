import type { CaseFile } from '../model/records.ts';
import type { CaseCheck, Fact } from './assessment.ts';

/** The case checks, each asked wherever the file holds what it needs. */
export function checkCase(_file: CaseFile, _facts: readonly Fact[]): CaseCheck[] {
  return [];
}
