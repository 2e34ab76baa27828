-- Version 6 of the job file: a test that goes on after an interruption, and a flow range that is changed in the middle.

-- A run that goes on with an earlier one of the same direction and test: both are pieces of one measurement. t_ns of the
-- two are of different clocks; started_utc of each says how far they lie apart. The digest of such a run has one more
-- line after "air": continues  the digest of the earlier run. So the last piece seals all of them.
CREATE TABLE continuation (
    run INTEGER PRIMARY KEY REFERENCES run (id),
    earlier INTEGER NOT NULL UNIQUE REFERENCES run (id)
) STRICT;

-- From t_ns on the fan (counted from 0) has another flow range (JSON, with its calibration). What the rig of the test says
-- is fitted at the beginning. Each change is a line of the digest, after the windows and before "direction":
--   c  t_ns  fan  flow_range
CREATE TABLE range_change (
    id INTEGER PRIMARY KEY,
    run INTEGER NOT NULL REFERENCES run (id),
    t_ns INTEGER NOT NULL,
    fan INTEGER NOT NULL,
    flow_range TEXT NOT NULL
) STRICT;

CREATE TRIGGER continuation_is_final BEFORE UPDATE ON continuation
    BEGIN SELECT raise(ABORT, 'the pieces of a run are never changed'); END;
CREATE TRIGGER continuation_stays BEFORE DELETE ON continuation
    BEGIN SELECT raise(ABORT, 'the pieces of a run stay'); END;
CREATE TRIGGER range_change_is_final BEFORE UPDATE ON range_change
    BEGIN SELECT raise(ABORT, 'measured data is never changed'); END;
CREATE TRIGGER range_change_stays BEFORE DELETE ON range_change
    BEGIN SELECT raise(ABORT, 'measured data is never deleted'); END;

-- A test that was cut short may be taken up again; a complete one is never changed.
DROP TRIGGER test_ends_once;
CREATE TRIGGER test_ends_once BEFORE UPDATE ON test
    WHEN old.state = 'complete' OR (old.state <> 'recording' AND new.state <> 'recording')
    BEGIN SELECT raise(ABORT, 'an ended test is never changed'); END;
