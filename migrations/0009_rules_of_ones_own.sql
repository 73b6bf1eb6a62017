-- Rules of the user's own, kept with the case they judge.

CREATE TABLE own_rule (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  is_on INTEGER NOT NULL CHECK (is_on IN (0, 1)),
  rule TEXT NOT NULL CHECK (json_valid(rule))
) STRICT;
CREATE INDEX own_rule_by_case ON own_rule (case_id);
