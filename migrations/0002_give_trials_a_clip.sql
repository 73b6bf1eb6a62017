-- A trial may have a film in the media store. History is brought into line with the records, which are made again from it
-- by undo and checked against it: every trial made or removed so far had no film.

ALTER TABLE movement_trial ADD COLUMN clip_sha256 TEXT;
UPDATE change SET after = json_set(after, '$.clipSha256', json('null')) WHERE kind = 'movementTrial' AND op = 'create';
UPDATE change SET before = json_set(before, '$.clipSha256', json('null')) WHERE kind = 'movementTrial' AND op = 'remove';
