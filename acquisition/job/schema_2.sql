-- Version 2 of the job file: the geometry of the building, and what was done to it before and after a test.

-- The geometry that is being entered (JSON: rooms, surfaces, how it was measured); one row at most.
CREATE TABLE geometry_draft (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    document TEXT NOT NULL
) STRICT;

-- The geometry as it was kept, with a name and a reason; all stages share the newest one.
CREATE TABLE geometry_version (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    name TEXT NOT NULL,
    reason TEXT NOT NULL,
    document TEXT NOT NULL
) STRICT;

-- What was done to the building and answered about it; the newest row of a kind and subject holds.
-- kind: opening (as is, closed, sealed, not present), seal (on, off), restore (done, left), safety (yes, no,
-- not present), check (by a second person), site (what changed there before the test of that number). who: the person who did or answered it, where that was said.
CREATE TABLE preparation (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    kind TEXT NOT NULL,
    subject TEXT NOT NULL,
    state TEXT NOT NULL,
    who TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

-- Pictures, as they came from the camera. subject: an opening, a seal.
CREATE TABLE photo (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    subject TEXT NOT NULL,
    name TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    content BLOB NOT NULL
) STRICT;

CREATE TRIGGER geometry_version_is_final BEFORE UPDATE ON geometry_version
    BEGIN SELECT raise(ABORT, 'keep another version of the geometry instead'); END;
CREATE TRIGGER geometry_version_stays BEFORE DELETE ON geometry_version
    BEGIN SELECT raise(ABORT, 'versions of the geometry stay'); END;
CREATE TRIGGER preparation_is_final BEFORE UPDATE ON preparation
    BEGIN SELECT raise(ABORT, 'add what is so now instead'); END;
CREATE TRIGGER preparation_stays BEFORE DELETE ON preparation
    BEGIN SELECT raise(ABORT, 'what was done to the building stays'); END;
CREATE TRIGGER photo_is_final BEFORE UPDATE ON photo BEGIN SELECT raise(ABORT, 'photos are never changed'); END;
CREATE TRIGGER photo_stays BEFORE DELETE ON photo BEGIN SELECT raise(ABORT, 'photos are never deleted'); END;
