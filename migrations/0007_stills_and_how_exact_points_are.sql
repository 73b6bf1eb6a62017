-- Pictures of single frames for the report, points put down twice to learn a person's own error, and how exact the points
-- of a track are. History is brought into line with the records: nothing was known of any track so far.

CREATE TABLE point_repeat (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  trial_id TEXT NOT NULL REFERENCES movement_trial (id) ON DELETE CASCADE,
  point TEXT NOT NULL,
  frame INTEGER NOT NULL CHECK (frame >= 0),
  first TEXT NOT NULL CHECK (json_valid(first)),
  again TEXT NOT NULL CHECK (json_valid(again))
) STRICT;
CREATE INDEX point_repeat_by_trial ON point_repeat (trial_id);

CREATE TABLE still (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  trial_id TEXT NOT NULL REFERENCES movement_trial (id) ON DELETE CASCADE,
  time_s REAL NOT NULL,
  caption TEXT NOT NULL,
  alt TEXT NOT NULL,
  media_sha TEXT NOT NULL
) STRICT;
CREATE INDEX still_by_trial ON still (trial_id);

ALTER TABLE landmark_track ADD COLUMN u_px REAL CHECK (u_px >= 0);
UPDATE change SET after = json_set(after, '$.uPx', json('null')) WHERE kind = 'landmarkTrack' AND op = 'create';
UPDATE change SET before = json_set(before, '$.uPx', json('null')) WHERE kind = 'landmarkTrack' AND op = 'remove';
