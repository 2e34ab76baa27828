-- Version 7 of the job file: the flow range of points already taken is corrected.

-- A point was read with this flow range (JSON, with its calibration) on a fan (counted from 0), whatever had been entered;
-- where flow_range is NULL it is as entered again. The newest row of a window and fan holds. What had been entered stands
-- where it always did: in the rig of the test and in range_change. Like a strike it is no part of the digest of the run.
CREATE TABLE range_correction (
    id INTEGER PRIMARY KEY,
    averaging_window INTEGER NOT NULL REFERENCES averaging_window (id),
    utc TEXT NOT NULL,
    fan INTEGER NOT NULL,
    flow_range TEXT
) STRICT;

CREATE TRIGGER range_correction_is_final BEFORE UPDATE ON range_correction
    BEGIN SELECT raise(ABORT, 'correct it once more instead'); END;
CREATE TRIGGER range_correction_stays BEFORE DELETE ON range_correction
    BEGIN SELECT raise(ABORT, 'corrections are never deleted'); END;
