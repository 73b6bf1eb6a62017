-- Of a film with unevenly spaced frames, the time of each. Nothing of this was known so far, and history is brought into line
-- with the records.

ALTER TABLE movement_trial ADD COLUMN frame_times_s TEXT CHECK (json_valid(frame_times_s));
UPDATE change SET after = json_set(after, '$.frameTimesS', json('null')) WHERE kind = 'movementTrial' AND op = 'create';
UPDATE change SET before = json_set(before, '$.frameTimesS', json('null')) WHERE kind = 'movementTrial' AND op = 'remove';
