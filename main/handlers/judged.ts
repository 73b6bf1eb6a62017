import { setImmediate } from 'node:timers/promises';
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
export async function judged(context: Context, caseId: string, edits?: readonly Edit[]): Promise<void> {
  const isShared = edits === undefined || edits.some(({ kind }) => kind === 'athlete' || kind === 'injury');
  await judgeAll(context, isShared ? await context.store.casesOfSameAthlete(caseId) : [caseId]);
}

/** Cases written to disk at once; between two such batches whoever else asks gets a turn. */
const BATCH = 50;

/** The same for cases of which nothing is shared. */
export async function judgeAll({ store, emit }: Context, caseIds: readonly string[]): Promise<void> {
  for (let from = 0; from < caseIds.length; from += BATCH) {
    if (from > 0) await setImmediate();
    const files = await Promise.all(caseIds.slice(from, from + BATCH).map((caseId) => store.open(caseId)));
    await store.writeSummaries(new Map(files.map((file) => [file.case.id, summaryOf(file)])));
    for (const file of files) emit('case.changed', { caseId: file.case.id, revision: file.revision });
  }
}

/** Every case of which the shelf still says what other rules said, or what an earlier edit of it left. */
export async function judgeOutdated(context: Context): Promise<void> {
  await judgeAll(context, await context.store.unjudged());
}

/** The edit is stored by now: what cannot be judged is said on the shelf, and never answered as a failed edit. */
function summaryOf(file: CaseFile): CaseSummary {
  try {
    return summarise(assessCase(file));
  } catch (thrown) {
    return { missing: [], cautions: [`This case could not be judged: ${toFailure(thrown).message}`] };
  }
}
