-- Version 4 of the job file: what is remembered of each stage, and the reports that were issued.

-- What holds at a stage (JSON: kind of test, its own limit, limits of codes, state of the building). No measured data:
-- it is edited until the test, which takes its own copy in test.plan.
CREATE TABLE stage_goals (
    stage TEXT PRIMARY KEY,
    document TEXT NOT NULL
) STRICT;

-- A report as it left the office. test: its number, NULL for a report that no test was possible. number: that of the
-- certificate, empty for a test that was made to find leaks only. revision counts from 0; reason says why there is
-- another one. document: JSON of what was printed beside the test: texts of the office, details, equipment.
-- pdf: the file, byte for byte; sha256 is over it.
CREATE TABLE issue (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    test INTEGER REFERENCES test (id),
    number TEXT NOT NULL,
    revision INTEGER NOT NULL,
    reason TEXT NOT NULL,
    signed_by TEXT NOT NULL,
    program TEXT NOT NULL,
    document TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    pdf BLOB NOT NULL
) STRICT;

-- The pages of an issued report as pictures (PNG), to be looked at without a reader for PDF.
CREATE TABLE issue_page (
    id INTEGER PRIMARY KEY,
    issue INTEGER NOT NULL REFERENCES issue (id),
    page INTEGER NOT NULL,
    png BLOB NOT NULL
) STRICT;

CREATE TRIGGER issue_is_final BEFORE UPDATE ON issue BEGIN SELECT raise(ABORT, 'issue a revision instead'); END;
CREATE TRIGGER issue_stays BEFORE DELETE ON issue BEGIN SELECT raise(ABORT, 'issued reports stay'); END;
CREATE TRIGGER issue_page_is_final BEFORE UPDATE ON issue_page
    BEGIN SELECT raise(ABORT, 'issue a revision instead'); END;
CREATE TRIGGER issue_page_stays BEFORE DELETE ON issue_page BEGIN SELECT raise(ABORT, 'issued reports stay'); END;
