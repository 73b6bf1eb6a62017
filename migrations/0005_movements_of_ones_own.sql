-- Movements built in a case by its user; and of a trial how its capture rate is known, and a
-- calibration on its way. History is brought into line with the records: so far every trial had none of these.

CREATE TABLE own_movement (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  label TEXT NOT NULL,
  sport TEXT NOT NULL,
  events TEXT NOT NULL CHECK (json_valid(events)),
  phases TEXT NOT NULL CHECK (json_valid(phases)),
  checkpoints TEXT NOT NULL CHECK (json_valid(checkpoints)),
  aims_at_target INTEGER NOT NULL CHECK (aims_at_target IN (0, 1)),
  is_airborne_skill INTEGER NOT NULL CHECK (is_airborne_skill IN (0, 1))
) STRICT;
CREATE INDEX own_movement_by_case ON own_movement (case_id);

ALTER TABLE movement_trial ADD COLUMN capture_rate_from TEXT;
ALTER TABLE movement_trial ADD COLUMN calibration_draft TEXT CHECK (json_valid(calibration_draft));
UPDATE change
  SET after = json_set(after, '$.captureRateFrom', json('null'), '$.calibrationDraft', json('null'))
  WHERE kind = 'movementTrial' AND op = 'create';
UPDATE change
  SET before = json_set(before, '$.captureRateFrom', json('null'), '$.calibrationDraft', json('null'))
  WHERE kind = 'movementTrial' AND op = 'remove';
