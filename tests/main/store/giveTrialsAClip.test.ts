import path from 'node:path';
import { expect, test } from 'vitest';
import { openDatabase } from '../../../main/store/database.ts';
import { DATABASE_FILE, openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { after, AT, EXAMPLES, WHOLE_CASE } from '../../conformance/examples.ts';
import { aFolder, HOLDER } from './aFolder.ts';

test('a store from before films and uncertain targets opens with every trial, sound, and a trial removed then comes back', async () => {
  const folder = aFolder();
  const caseId = EXAMPLES.case.id;
  const unknown = {
    clipSha256: null,
    targetDistanceUM: null,
    targetHeightUM: null,
    captureRateFrom: null,
    calibrationDraft: null,
  };
  const trial = { ...EXAMPLES.movementTrial, ...unknown };
  let store = openSqliteCaseStore(folder, HOLDER);
  await store.create(WHOLE_CASE, AT);
  await store.apply(
    caseId,
    [
      { op: 'patch', kind: 'movementTrial', id: trial.id, fields: unknown },
      { op: 'remove', kind: 'ownMovement', id: EXAMPLES.ownMovement.id },
      { op: 'remove', kind: 'pointRepeat', id: EXAMPLES.pointRepeat.id },
      { op: 'remove', kind: 'still', id: EXAMPLES.still.id },
      { op: 'patch', kind: 'landmarkTrack', id: EXAMPLES.landmarkTrack.id, fields: { uPx: null } },
    ],
    AT,
  );
  await store.apply(caseId, [{ op: 'remove', kind: 'movementTrial', id: trial.id }], after(60_000));
  await store.close();

  // As version 1 of the layout would have left it.
  const database = openDatabase(path.join(folder, DATABASE_FILE));
  database.exec(`
    UPDATE change SET before = json_remove(before, '$.clipSha256', '$.targetDistanceUM', '$.targetHeightUM'),
      after = json_remove(after, '$.clipSha256', '$.targetDistanceUM', '$.targetHeightUM')
      WHERE kind = 'movementTrial';
    UPDATE change SET
        before = json_remove(before, '$.captureRateFrom', '$.calibrationDraft'),
        after = json_remove(after, '$.captureRateFrom', '$.calibrationDraft')
      WHERE kind = 'movementTrial';
    UPDATE change SET
        after = json_remove(after, '$.isFinal', '$.isDeidentified', '$.holdsCase', '$.replacesId', '$.changes')
      WHERE kind = 'report';
    ALTER TABLE report DROP COLUMN is_final;
    ALTER TABLE report DROP COLUMN is_deidentified;
    ALTER TABLE report DROP COLUMN holds_case;
    ALTER TABLE report DROP COLUMN replaces_id;
    ALTER TABLE report DROP COLUMN changes;
    UPDATE change SET before = json_remove(before, '$.uPx'), after = json_remove(after, '$.uPx')
      WHERE kind = 'landmarkTrack';
    DELETE FROM change WHERE kind IN ('pointRepeat', 'still');
    DROP TABLE point_repeat;
    DROP TABLE still;
    ALTER TABLE landmark_track DROP COLUMN u_px;
    DELETE FROM change WHERE kind = 'ownMovement';
    DROP TABLE own_movement;
    ALTER TABLE movement_trial DROP COLUMN capture_rate_from;
    ALTER TABLE movement_trial DROP COLUMN calibration_draft;
    ALTER TABLE movement_trial DROP COLUMN clip_sha256;
    ALTER TABLE movement_trial DROP COLUMN target_distance_u_m;
    ALTER TABLE movement_trial DROP COLUMN target_height_u_m;
    ALTER TABLE case_state DROP COLUMN is_judged;
    PRAGMA user_version = 1;
  `);
  database.close();

  store = openSqliteCaseStore(folder, HOLDER);
  await store.undo(caseId, after(120_000));
  expect((await store.open(caseId)).movementTrials).toEqual([trial]);
  expect((await store.open(caseId)).landmarkTracks).toEqual([{ ...EXAMPLES.landmarkTrack, uPx: null }]);
  expect(await store.verify()).toEqual([]);
  await store.close();
});
