-- One table a kind of record; columns are the fields of its schema in shared/model, units in their names.
-- `place` orders records as they were first made and is one series for all tables: the row of `change` that made the
-- record. Lists of words that may grow (conditions, regions, methods) are checked by the schemas, not here.

CREATE TABLE athlete (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  is_pseudonym INTEGER NOT NULL CHECK (is_pseudonym IN (0, 1)),
  birth_date TEXT,
  reference_sex TEXT,
  mass_kg REAL CHECK (mass_kg > 0),
  mass_u_kg REAL CHECK (mass_u_kg >= 0),
  mass_on TEXT,
  stature_m REAL CHECK (stature_m > 0),
  stature_u_m REAL CHECK (stature_u_m >= 0),
  stature_on TEXT,
  dominant_side TEXT,
  sport TEXT NOT NULL,
  position TEXT NOT NULL,
  level TEXT NOT NULL,
  goals TEXT NOT NULL,
  consent_for TEXT NOT NULL,
  consent_on TEXT,
  consent_to_images INTEGER CHECK (consent_to_images IN (0, 1)),
  has_red_flags INTEGER CHECK (has_red_flags IN (0, 1)),
  red_flags_cleared_by TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE case_record (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  athlete_id TEXT NOT NULL REFERENCES athlete (id) ON DELETE RESTRICT,
  number TEXT NOT NULL,
  purpose TEXT NOT NULL,
  opened_on TEXT NOT NULL,
  practitioner TEXT NOT NULL,
  question TEXT NOT NULL,
  addressee TEXT NOT NULL,
  urgency TEXT,
  urgency_reason TEXT NOT NULL,
  note TEXT NOT NULL,
  is_invented INTEGER NOT NULL CHECK (is_invented IN (0, 1)),
  archived_on TEXT
) STRICT;
CREATE INDEX case_record_by_athlete ON case_record (athlete_id);
CREATE INDEX case_record_by_number ON case_record (number);

CREATE TABLE injury (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  athlete_id TEXT NOT NULL REFERENCES athlete (id) ON DELETE CASCADE,
  condition TEXT NOT NULL,
  region TEXT NOT NULL,
  side TEXT NOT NULL,
  diagnosis TEXT NOT NULL,
  onset TEXT,
  mechanism TEXT NOT NULL,
  status TEXT NOT NULL,
  episodes INTEGER CHECK (episodes >= 1),
  time_loss_days REAL CHECK (time_loss_days >= 0),
  had_surgery INTEGER CHECK (had_surgery IN (0, 1)),
  restrictions TEXT NOT NULL,
  cleared_by TEXT NOT NULL,
  cleared_on TEXT,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX injury_by_athlete ON injury (athlete_id);

CREATE TABLE screening_session (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  held_on TEXT NOT NULL,
  rater TEXT NOT NULL,
  battery_id TEXT NOT NULL,
  battery_version TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX screening_session_by_case ON screening_session (case_id);

CREATE TABLE screening_result (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  session_id TEXT NOT NULL REFERENCES screening_session (id) ON DELETE CASCADE,
  item_id TEXT NOT NULL,
  side TEXT NOT NULL,
  value_si REAL,
  grade TEXT,
  is_positive INTEGER CHECK (is_positive IN (0, 1)),
  pain_nrs INTEGER CHECK (pain_nrs BETWEEN 0 AND 10),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX screening_result_by_session ON screening_result (session_id);

CREATE TABLE jump_test (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  held_on TEXT NOT NULL,
  kind TEXT NOT NULL,
  method TEXT NOT NULL,
  arms TEXT,
  shoes INTEGER CHECK (shoes IN (0, 1)),
  device TEXT NOT NULL,
  frame_rate_hz REAL CHECK (frame_rate_hz > 0),
  standing_reach_m REAL CHECK (standing_reach_m > 0),
  drop_height_m REAL CHECK (drop_height_m > 0),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX jump_test_by_case ON jump_test (case_id);

CREATE TABLE jump_trial (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  test_id TEXT NOT NULL REFERENCES jump_test (id) ON DELETE CASCADE,
  number INTEGER NOT NULL CHECK (number >= 1),
  flight_time_s REAL CHECK (flight_time_s > 0),
  contact_time_s REAL CHECK (contact_time_s > 0),
  jump_reach_m REAL CHECK (jump_reach_m > 0),
  force TEXT CHECK (json_valid(force)),
  media_sha256 TEXT,
  pain_nrs INTEGER CHECK (pain_nrs BETWEEN 0 AND 10),
  is_set_aside INTEGER NOT NULL CHECK (is_set_aside IN (0, 1)),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX jump_trial_by_test ON jump_trial (test_id);

CREATE TABLE movement_trial (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  movement_id TEXT NOT NULL,
  filmed_on TEXT NOT NULL,
  label TEXT NOT NULL,
  side TEXT NOT NULL,
  capture_rate_hz REAL CHECK (capture_rate_hz > 0),
  playback_rate_hz REAL CHECK (playback_rate_hz > 0),
  calibration TEXT CHECK (json_valid(calibration)),
  ball_id TEXT,
  target_distance_m REAL CHECK (target_distance_m > 0),
  target_height_m REAL CHECK (target_height_m >= 0),
  pain_nrs INTEGER CHECK (pain_nrs BETWEEN 0 AND 10),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX movement_trial_by_case ON movement_trial (case_id);

CREATE TABLE landmark_track (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  trial_id TEXT NOT NULL REFERENCES movement_trial (id) ON DELETE CASCADE,
  point TEXT NOT NULL,
  origin TEXT NOT NULL,
  samples TEXT NOT NULL CHECK (json_valid(samples))
) STRICT;
CREATE INDEX landmark_track_by_trial ON landmark_track (trial_id);

CREATE TABLE trial_event (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  trial_id TEXT NOT NULL REFERENCES movement_trial (id) ON DELETE CASCADE,
  event TEXT NOT NULL,
  time_s REAL NOT NULL,
  u_s REAL CHECK (u_s >= 0),
  origin TEXT NOT NULL
) STRICT;
CREATE INDEX trial_event_by_trial ON trial_event (trial_id);

CREATE TABLE entered_measure (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  trial_id TEXT REFERENCES movement_trial (id) ON DELETE CASCADE,
  measure_id TEXT NOT NULL,
  phase TEXT,
  side TEXT NOT NULL,
  taken_on TEXT NOT NULL,
  value_si REAL,
  u_si REAL CHECK (u_si >= 0),
  flag INTEGER CHECK (flag IN (0, 1)),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX entered_measure_by_case ON entered_measure (case_id);
CREATE INDEX entered_measure_by_trial ON entered_measure (trial_id);

CREATE TABLE finding_decision (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  finding_key TEXT NOT NULL,
  decision TEXT NOT NULL,
  wording TEXT NOT NULL,
  reason TEXT NOT NULL,
  decided_outcome TEXT NOT NULL,
  decided_text TEXT NOT NULL
) STRICT;
CREATE INDEX finding_decision_by_case ON finding_decision (case_id);

CREATE TABLE report (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  kind TEXT NOT NULL,
  paper TEXT NOT NULL,
  made_at TEXT NOT NULL,
  pdf_sha256 TEXT NOT NULL,
  case_sha256 TEXT NOT NULL,
  app_version TEXT NOT NULL,
  kernel_version TEXT NOT NULL,
  rules_version TEXT NOT NULL,
  page_count INTEGER NOT NULL CHECK (page_count >= 1)
) STRICT;
CREATE INDEX report_by_case ON report (case_id);

CREATE TABLE media (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE CASCADE,
  sha256 TEXT NOT NULL,
  file_name TEXT NOT NULL,
  media_type TEXT NOT NULL,
  size_bytes REAL NOT NULL CHECK (size_bytes >= 0)
) STRICT;
CREATE INDEX media_by_case ON media (case_id);

-- How far a case has come, and what the shelf says of it.
CREATE TABLE case_state (
  case_id TEXT PRIMARY KEY REFERENCES case_record (id) ON DELETE CASCADE,
  revision INTEGER NOT NULL,
  touched_at TEXT NOT NULL,
  missing TEXT NOT NULL CHECK (json_valid(missing)),
  cautions TEXT NOT NULL CHECK (json_valid(cautions))
) STRICT;
CREATE INDEX case_state_by_touch ON case_state (touched_at);

-- History: one row a step of undo, and what each step changed. Deferred, since the first step is what makes the case.
CREATE TABLE edit_step (
  case_id TEXT NOT NULL REFERENCES case_record (id) ON DELETE RESTRICT DEFERRABLE INITIALLY DEFERRED,
  step INTEGER NOT NULL CHECK (step >= 1),
  at TEXT NOT NULL,
  label TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('done', 'undone', 'abandoned')),
  is_undoable INTEGER NOT NULL CHECK (is_undoable IN (0, 1)),
  PRIMARY KEY (case_id, step)
) STRICT;

CREATE TABLE change (
  place INTEGER PRIMARY KEY AUTOINCREMENT,
  case_id TEXT NOT NULL,
  step INTEGER NOT NULL,
  kind TEXT NOT NULL,
  record_id TEXT NOT NULL,
  op TEXT NOT NULL CHECK (op IN ('create', 'patch', 'remove')),
  before TEXT CHECK (json_valid(before)),
  after TEXT CHECK (json_valid(after)),
  FOREIGN KEY (case_id, step) REFERENCES edit_step (case_id, step) ON DELETE RESTRICT
) STRICT;
CREATE INDEX change_by_step ON change (case_id, step);
CREATE INDEX change_by_record ON change (record_id);

-- Everything typed: one row a record, its rowid the place of the record, written with the record.
CREATE VIRTUAL TABLE search USING fts5 (
  body,
  case_id UNINDEXED,
  athlete_id UNINDEXED,
  tokenize = "unicode61 remove_diacritics 2"
);
