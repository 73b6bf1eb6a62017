import { expect, test } from 'vitest';
import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { UNSAID } from '../../../shared/model/blank.ts';
import { after, EXAMPLES } from '../../conformance/examples.ts';
import { HOLDER } from './aFolder.ts';
import { anOldStore } from './anOldStore.ts';

test.each([null, 'screeningResult'] as const)(
  'results of a store from before batteries of one’s own are still there, nothing said of how taken; %s removed comes back',
  async (removed) => {
    const kinds = ['athlete', 'case', 'screeningSession', 'screeningResult'] as const;
    const store = openSqliteCaseStore(anOldStore(14, kinds, removed), HOLDER);
    expect(await store.verify()).toEqual([]);
    if (removed !== null) await store.undo(EXAMPLES.case.id, after(120_000));
    const { screeningSessions, screeningResults } = await store.open(EXAMPLES.case.id);
    expect(screeningSessions).toEqual([{ ...EXAMPLES.screeningSession, battery: null }]);
    expect(screeningResults).toEqual([{ ...EXAMPLES.screeningResult, ...UNSAID }]);
    expect(await store.verify()).toEqual([]);
    await store.close();
  },
);
