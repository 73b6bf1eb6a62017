-- The rules each case was last judged by, kept whole, so that an update of the program can say what it would change
-- before it does; and rules of one's own for every case, with their history. Which rules judged the cases so far is not
-- known, so nothing is held back from them.

CREATE TABLE rule_pack (
  digest TEXT PRIMARY KEY,
  version TEXT NOT NULL,
  rules TEXT NOT NULL CHECK (json_valid(rules)),
  is_current INTEGER NOT NULL CHECK (is_current IN (0, 1))
) STRICT;
ALTER TABLE case_state ADD COLUMN rules_digest TEXT REFERENCES rule_pack (digest);

CREATE TABLE shared_rule (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  is_on INTEGER NOT NULL CHECK (is_on IN (0, 1)),
  rule TEXT NOT NULL CHECK (json_valid(rule))
) STRICT;
CREATE TABLE shared_rule_step (
  step INTEGER PRIMARY KEY AUTOINCREMENT,
  at TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('done', 'undone', 'abandoned')),
  changes TEXT NOT NULL CHECK (json_valid(changes))
) STRICT;
