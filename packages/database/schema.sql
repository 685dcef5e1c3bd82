CREATE TRIGGER programme_changes_are_never_changed BEFORE UPDATE ON programmeChanges
BEGIN SELECT RAISE (ABORT, 'a change of a programme is never changed'); END;

CREATE TRIGGER records_are_never_changed BEFORE UPDATE ON records
BEGIN SELECT RAISE (ABORT, 'a record is never changed'); END;

CREATE TABLE programmeChanges (
  position INTEGER PRIMARY KEY,
  programmeId TEXT NOT NULL REFERENCES programmes (programmeId),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  name TEXT NOT NULL,
  isSetAside INTEGER NOT NULL CHECK (isSetAside IN (0, 1))
) STRICT;

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
