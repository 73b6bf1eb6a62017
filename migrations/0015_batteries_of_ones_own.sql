-- Batteries of one's own: the store keeps what is written and every version saved, with their history; a session keeps
-- the very version it was taken with. Of a result: its trials, device, position and shoes. Only adds: nothing of these
-- was known so far. History is brought into line with the records.

CREATE TABLE own_battery (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  battery TEXT NOT NULL CHECK (json_valid(battery))
) STRICT;
CREATE TABLE own_battery_step (
  step INTEGER PRIMARY KEY AUTOINCREMENT,
  at TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('done', 'undone', 'abandoned')),
  changes TEXT NOT NULL CHECK (json_valid(changes))
) STRICT;

ALTER TABLE screening_session ADD COLUMN battery TEXT CHECK (json_valid(battery));
UPDATE change SET after = json_set(after, '$.battery', json('null')) WHERE kind = 'screeningSession' AND op = 'create';
UPDATE change SET before = json_set(before, '$.battery', json('null')) WHERE kind = 'screeningSession' AND op = 'remove';

ALTER TABLE screening_result ADD COLUMN trials_si TEXT CHECK (json_valid(trials_si));
ALTER TABLE screening_result ADD COLUMN device TEXT NOT NULL DEFAULT '';
ALTER TABLE screening_result ADD COLUMN position TEXT NOT NULL DEFAULT '';
ALTER TABLE screening_result ADD COLUMN shoes INTEGER CHECK (shoes IN (0, 1));
UPDATE change
  SET after = json_set(after, '$.trialsSi', json('null'), '$.device', '', '$.position', '', '$.shoes', json('null'))
  WHERE kind = 'screeningResult' AND op = 'create';
UPDATE change
  SET before = json_set(before, '$.trialsSi', json('null'), '$.device', '', '$.position', '', '$.shoes', json('null'))
  WHERE kind = 'screeningResult' AND op = 'remove';
