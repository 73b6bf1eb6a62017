import { expect, test } from 'vitest';
import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { after, EXAMPLES } from '../../conformance/examples.ts';
import { HOLDER } from './aFolder.ts';
import { anOldStore } from './anOldStore.ts';

test.each([
  [
    'movementTrial',
    'movementTrials',
    {
      clipSha256: null,
      targetDistanceUM: null,
      targetHeightUM: null,
      captureRateFrom: null,
      calibrationDraft: null,
      frameTimesS: null,
    },
  ],
  ['landmarkTrack', 'landmarkTracks', { uPx: null }],
] as const)(
  'a %s of a store from before films is still there, and one removed comes back',
  async (kind, list, since) => {
    const kinds = ['athlete', 'case', 'movementTrial', 'landmarkTrack'] as const;
    const known = { ...EXAMPLES[kind], ...since };
    for (const removed of [null, kind]) {
      // A trial taken out took its tracks along.
      const left = kind === 'movementTrial' ? kinds.slice(0, 3) : kinds;
      const store = openSqliteCaseStore(anOldStore(1, left, removed), HOLDER);
      expect(await store.verify()).toEqual([]);
      if (removed !== null) await store.undo(EXAMPLES.case.id, after(120_000));
      expect((await store.open(EXAMPLES.case.id))[list]).toEqual([known]);
      expect(await store.verify()).toEqual([]);
      await store.close();
    }
  },
);
