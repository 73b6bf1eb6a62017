import { assessCase } from '../../shared/assess/assessCase.ts';
import { summarise } from '../../shared/assess/summarise.ts';
import type { Context } from './context.ts';

/**
 * After a change: judges every case that shows what was changed, writes what the shelf says of it, and tells the
 * windows. Injuries belong to the athlete, so a second case of the same person is judged too.
 */
export async function judged(context: Context, caseId: string): Promise<void> {
  for (const id of await context.store.casesOfSameAthlete(caseId)) {
    const file = await context.store.open(id);
    await context.store.writeSummary(id, summarise(assessCase(file)));
    context.emit('case.changed', { caseId: id, revision: file.revision });
  }
}
