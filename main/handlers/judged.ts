import { assessCase } from '../../shared/assess/assessCase.ts';
import { summarise } from '../../shared/assess/summarise.ts';
import { toFailure } from '../../shared/errors.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { CaseSummary } from '../../shared/ports/caseStore.ts';
import type { Context } from './context.ts';

/**
 * After a change: judges every case that shows what was changed, writes what the shelf says of it, and tells the
 * windows. Injuries belong to the athlete, so a second case of the same person is judged too.
 * @param edits what was changed, if known: an edit of one case's own records leaves its athlete's other cases alone
 */
export async function judged({ store, emit }: Context, caseId: string, edits?: readonly Edit[]): Promise<void> {
  const isShared = edits === undefined || edits.some(({ kind }) => kind === 'athlete' || kind === 'injury');
  for (const id of isShared ? await store.casesOfSameAthlete(caseId) : [caseId]) {
    const file = await store.open(id);
    await store.writeSummary(id, summaryOf(file));
    emit('case.changed', { caseId: id, revision: file.revision });
  }
}

/** The edit is stored by now: what cannot be judged is said on the shelf, and never answered as a failed edit. */
function summaryOf(file: CaseFile): CaseSummary {
  try {
    return summarise(assessCase(file));
  } catch (thrown) {
    return { missing: [], cautions: [`This case could not be judged: ${toFailure(thrown).message}`] };
  }
}
