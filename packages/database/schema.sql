CREATE TRIGGER records_are_never_changed BEFORE UPDATE ON records
BEGIN SELECT RAISE (ABORT, 'a record is never changed'); END;

CREATE TABLE programmes (
  programmeId TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  madeAt TEXT NOT NULL
) STRICT;

CREATE TABLE records (
  position INTEGER PRIMARY KEY,
  programmeId TEXT NOT NULL REFERENCES programmes (programmeId),
  device TEXT NOT NULL,
  number INTEGER NOT NULL,
  record TEXT NOT NULL, digest TEXT NOT NULL DEFAULT '',
  UNIQUE (programmeId, device, number)
) STRICT;
