-- Whether a report is final, and which one it takes the place of; whether it names the athlete and holds the case data.
-- History is brought into line with the records, which are checked against it: every report so far was a draft, a study
-- without names, and none held the case data.

ALTER TABLE report ADD COLUMN is_final INTEGER NOT NULL DEFAULT 0 CHECK (is_final IN (0, 1));
ALTER TABLE report ADD COLUMN is_deidentified INTEGER NOT NULL DEFAULT 0 CHECK (is_deidentified IN (0, 1));
ALTER TABLE report ADD COLUMN holds_case INTEGER NOT NULL DEFAULT 0 CHECK (holds_case IN (0, 1));
ALTER TABLE report ADD COLUMN replaces_id TEXT;
ALTER TABLE report ADD COLUMN changes TEXT NOT NULL DEFAULT '';
UPDATE report SET is_deidentified = 1 WHERE kind = 'study';
UPDATE change SET after = json_set(after, '$.isFinal', json('false'),
    '$.isDeidentified', json(iif(after ->> '$.kind' = 'study', 'true', 'false')), '$.holdsCase', json('false'),
    '$.replacesId', json('null'), '$.changes', '')
  WHERE kind = 'report' AND op = 'create';
