-- Version 5 of the job file: marks that were set by mistake.

-- The mark of this moment no longer counts; it stays in the file. mark_utc, mark_t_ns and mark_kind are those of its row.
CREATE TABLE sealing_mark_taken_back (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    mark_utc TEXT NOT NULL,
    mark_t_ns INTEGER NOT NULL,
    mark_kind TEXT NOT NULL
) STRICT;

CREATE VIEW sealing_mark_now AS
    SELECT sealing_mark.* FROM sealing_mark WHERE NOT EXISTS (
        SELECT 1 FROM sealing_mark_taken_back WHERE mark_utc = sealing_mark.utc AND mark_t_ns = sealing_mark.t_ns AND mark_kind = kind
    ) ORDER BY sealing_mark.id;

CREATE TRIGGER sealing_mark_taken_back_is_final BEFORE UPDATE ON sealing_mark_taken_back
    BEGIN SELECT raise(ABORT, 'set a new mark instead'); END;
CREATE TRIGGER sealing_mark_taken_back_stays BEFORE DELETE ON sealing_mark_taken_back
    BEGIN SELECT raise(ABORT, 'set a new mark instead'); END;
