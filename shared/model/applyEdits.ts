import type { Edit } from './edit.ts';
import { recordChanges } from './recordChanges.ts';
import type { CaseFile } from './records.ts';

/**
 * A case file after edits, by the same rules as the store: a new value, `revision` one higher.
 * @throws DomainError as recordChanges does; then nothing was applied
 */
export function applyEdits(file: CaseFile, edits: readonly Edit[]): CaseFile {
  return recordChanges(file, edits).file;
}
