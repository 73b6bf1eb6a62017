import { expect, test } from 'vitest';
import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { after, EXAMPLES } from '../../conformance/examples.ts';
import { HOLDER } from './aFolder.ts';
import { anOldStore } from './anOldStore.ts';

test.each([null, 'jumpTrial'] as const)(
  'jumps of a store from before warm-ups are still there, with none recorded; %s removed comes back',
  async (removed) => {
    const store = openSqliteCaseStore(anOldStore(12, ['athlete', 'case', 'jumpTest', 'jumpTrial'], removed), HOLDER);
    expect(await store.verify()).toEqual([]);
    if (removed !== null) await store.undo(EXAMPLES.case.id, after(120_000));
    const { jumpTests, jumpTrials } = await store.open(EXAMPLES.case.id);
    expect(jumpTests).toEqual([{ ...EXAMPLES.jumpTest, warmUp: '' }]);
    expect(jumpTrials).toEqual([{ ...EXAMPLES.jumpTrial, movementTrialId: null }]);
    expect(await store.verify()).toEqual([]);
    await store.close();
  },
);
