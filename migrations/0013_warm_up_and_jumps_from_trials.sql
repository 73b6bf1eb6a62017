-- What was done before a jump test, and which filmed trial a jump was taken from. Only adds: nothing of these was known so
-- far. History is brought into line with the records, which are made again from it by undo and checked against it.

ALTER TABLE jump_test ADD COLUMN warm_up TEXT NOT NULL DEFAULT '';
UPDATE change SET after = json_set(after, '$.warmUp', '') WHERE kind = 'jumpTest' AND op = 'create';
UPDATE change SET before = json_set(before, '$.warmUp', '') WHERE kind = 'jumpTest' AND op = 'remove';

ALTER TABLE jump_trial ADD COLUMN movement_trial_id TEXT;
UPDATE change SET after = json_set(after, '$.movementTrialId', json('null')) WHERE kind = 'jumpTrial' AND op = 'create';
UPDATE change SET before = json_set(before, '$.movementTrialId', json('null')) WHERE kind = 'jumpTrial' AND op = 'remove';
