-- Which cases a roster opened, so that it can be taken back later; and how the columns of a file were read, so that the
-- next file with the same heads is read alike. Neither is part of a case: nothing of it is in a history or a report.

CREATE TABLE roster_case (
  case_id TEXT PRIMARY KEY REFERENCES case_record (id) ON DELETE CASCADE,
  roster_id TEXT NOT NULL,
  file_name TEXT NOT NULL,
  taken_at TEXT NOT NULL
) STRICT;

CREATE TABLE column_mapping (
  door TEXT NOT NULL,
  -- The heads of the file, as a JSON list.
  heads TEXT NOT NULL CHECK (json_valid(heads)),
  mapping TEXT NOT NULL CHECK (json_valid(mapping)),
  used_at TEXT NOT NULL,
  PRIMARY KEY (door, heads)
) STRICT;
