import type { CaseFile } from '../../shared/model/records.ts';
import type { Context } from './context.ts';

const PAGE = 500;

/** Every case that is not archived, one after the other. */
export async function* openCases(store: Context['store']): AsyncGenerator<CaseFile> {
  for (let offset = 0, total = 1; offset < total; offset += PAGE) {
    const page = await store.shelf({ search: '', archived: false, offset, limit: PAGE });
    total = page.total;
    for (const { caseId } of page.rows) yield store.open(caseId);
  }
}
