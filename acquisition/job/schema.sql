-- An Airseam job: one file holds one building and every test made of it.
-- SQLite 3, application_id 0x41495253 ("AIRS"). Any SQLite tool can read it. Version 1 (user_version); what later ones
-- added stands in schema_2.sql and so on.
--
-- Reading this file
--   Units stand in the column names and in series.unit; everything is SI. A pressure is indoor minus outdoor: negative
--   while depressurizing. A time named utc is ISO 8601 in UTC. A time named t_ns is in nanoseconds of the clock of the
--   program that recorded: only differences within one run mean something. utc_ns is nanoseconds since 1970-01-01 UTC.
--   Columns named plan, rig, air, document hold JSON with sorted keys and no blanks.
--   The views at the end put the names together: start with reading_named, window_now and test_now.
--
-- What never changes
--   Measured data is only ever added. Triggers refuse to change or delete it. A point is struck by a row in strike, and
--   the point stays. A test or run gets its end, its state and its digest once and is then fixed by its digest.
--
-- The digest of a run (run.digest) is the SHA-256, in hexadecimal, of these lines in UTF-8, each ended by a line feed,
-- fields separated by a tab, numbers that are not whole given as the 16 hexadecimal digits of their IEEE 754 double,
-- most significant first, "nan" where the value is NULL and nothing where a field may be missing:
--   airseam-digest-1
--   r  role  channel  t_ns  utc_ns  value  round_trip_s  quality  sequence     each reading, in the order of reading.id
--   f  t_ns  fraction                                                          each fan command, in the order of fan.id
--   w  number  kind  start_ns  end_ns  target_pa                               each averaging window, in the order of its id
--   direction  the text of run.direction
--   started  the text of run.started_utc
--   plan  the text of test.plan
--   rig  the text of test.rig
--   air  the text of run.air

-- Facts about the file: format, created_utc, program (the version that made it).
CREATE TABLE about (
    key TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;

-- Administrative data (name, site, client, tester, note): may be edited, and every edit is in the table edit.
CREATE TABLE details (
    field TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;

-- What was edited: the field, its value before and after. Also says when an interrupted run was found and sealed.
CREATE TABLE edit (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    subject TEXT NOT NULL,
    field TEXT NOT NULL,
    old TEXT NOT NULL,
    new TEXT NOT NULL
) STRICT;

-- The building as it was known at the time; the newest row holds. What is not known is NULL.
CREATE TABLE building_version (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    reason TEXT NOT NULL,
    name TEXT NOT NULL,
    volume_m3 REAL,
    envelope_area_m2 REAL,
    floor_area_m2 REAL,
    height_m REAL,
    altitude_m REAL NOT NULL
) STRICT;

-- The next test as it is being prepared (JSON as in test.plan); no measured data, one row at most.
CREATE TABLE draft (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    plan TEXT NOT NULL
) STRICT;

-- A test: what was to be done (plan) and with which rig and calibration (rig), both as they were at its start.
-- state: recording, complete, stopped (by a person), faulted, interrupted (the program or the machine went down).
CREATE TABLE test (
    id INTEGER PRIMARY KEY,
    started_utc TEXT NOT NULL,
    program TEXT NOT NULL,
    plan TEXT NOT NULL,
    rig TEXT NOT NULL,
    state TEXT NOT NULL,
    ended_utc TEXT
) STRICT;

-- One direction of a test. air is what was entered by hand; temperature and barometer readings override it.
CREATE TABLE run (
    id INTEGER PRIMARY KEY,
    test INTEGER NOT NULL REFERENCES test (id),
    direction TEXT NOT NULL CHECK (direction IN ('depressurize', 'pressurize')),
    air TEXT NOT NULL,
    started_utc TEXT NOT NULL,
    started_ns INTEGER NOT NULL,
    state TEXT NOT NULL,
    ended_utc TEXT,
    ended_ns INTEGER,
    digest TEXT
) STRICT;

-- A channel of an instrument in its role in one run, for instance role envelope-pressure, channel gauge.p1, unit Pa.
CREATE TABLE series (
    id INTEGER PRIMARY KEY,
    run INTEGER NOT NULL REFERENCES run (id),
    role TEXT NOT NULL,
    channel TEXT NOT NULL,
    unit TEXT NOT NULL
) STRICT;

-- Every reading. sequence counts the readings of the channel without gaps, so that a lost one shows. round_trip_s is the
-- time between request and reply, 0 for an instrument that sends by itself. quality: good, or over range. value is what
-- the instrument showed: a channel named in corrections of test.rig is corrected as it says before it is averaged.
CREATE TABLE reading (
    id INTEGER PRIMARY KEY,
    series INTEGER NOT NULL REFERENCES series (id),
    t_ns INTEGER NOT NULL,
    utc_ns INTEGER NOT NULL,
    value REAL,
    round_trip_s REAL NOT NULL,
    quality TEXT NOT NULL,
    sequence INTEGER NOT NULL
) STRICT;
CREATE INDEX reading_of_series ON reading (series);

-- Each commanded fan speed (0 to 1) from its time on.
CREATE TABLE fan (
    id INTEGER PRIMARY KEY,
    run INTEGER NOT NULL REFERENCES run (id),
    t_ns INTEGER NOT NULL,
    fraction REAL NOT NULL
) STRICT;

-- The spans over which readings are averaged: from start_ns up to, not including, end_ns. number counts within the test.
CREATE TABLE averaging_window (
    id INTEGER PRIMARY KEY,
    run INTEGER NOT NULL REFERENCES run (id),
    number INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('zero before', 'point', 'zero after')),
    start_ns INTEGER NOT NULL,
    end_ns INTEGER NOT NULL,
    target_pa REAL
) STRICT;

-- Points taken out of the result, or put back, each with its reason. The newest row of a window holds.
CREATE TABLE strike (
    id INTEGER PRIMARY KEY,
    averaging_window INTEGER NOT NULL REFERENCES averaging_window (id),
    utc TEXT NOT NULL,
    action TEXT NOT NULL CHECK (action IN ('strike', 'restore')),
    reason TEXT NOT NULL
) STRICT;

-- Remarks during a test.
CREATE TABLE mark (
    id INTEGER PRIMARY KEY,
    test INTEGER NOT NULL REFERENCES test (id),
    run INTEGER REFERENCES run (id),
    t_ns INTEGER NOT NULL,
    utc TEXT NOT NULL,
    kind TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT;

-- What the program noticed. severity: note, attention, alarm.
CREATE TABLE flag (
    id INTEGER PRIMARY KEY,
    test INTEGER NOT NULL REFERENCES test (id),
    run INTEGER REFERENCES run (id),
    utc TEXT NOT NULL,
    flag TEXT NOT NULL,
    severity TEXT NOT NULL,
    sentence TEXT NOT NULL
) STRICT;

-- What a person was asked and answered, the safety questions among them.
CREATE TABLE answer (
    id INTEGER PRIMARY KEY,
    test INTEGER NOT NULL REFERENCES test (id),
    run INTEGER REFERENCES run (id),
    t_ns INTEGER NOT NULL,
    utc TEXT NOT NULL,
    ask TEXT NOT NULL,
    text TEXT NOT NULL,
    choice TEXT NOT NULL
) STRICT;

-- The result at the end of a test and after every strike; the newest row of a test holds. document is JSON in the format
-- airseam-result-1; where there is no result it is NULL and gap says why.
CREATE TABLE result (
    id INTEGER PRIMARY KEY,
    test INTEGER NOT NULL REFERENCES test (id),
    utc TEXT NOT NULL,
    program TEXT NOT NULL,
    document TEXT,
    gap TEXT NOT NULL
) STRICT;

CREATE VIEW reading_named AS
    SELECT run.test, series.run, run.direction, series.role, series.channel,
           strftime('%Y-%m-%dT%H:%M:%S', reading.utc_ns / 1000000000, 'unixepoch')
               || printf('.%03dZ', reading.utc_ns / 1000000 % 1000) AS utc,
           (reading.t_ns - run.started_ns) / 1e9 AS elapsed_s, reading.value, series.unit, reading.quality
    FROM reading JOIN series ON series.id = reading.series JOIN run ON run.id = series.run
    ORDER BY reading.id;

CREATE VIEW window_now AS
    SELECT run.test, span.run, run.direction, span.number, span.kind, span.target_pa,
           (span.start_ns - run.started_ns) / 1e9 AS start_s, (span.end_ns - run.started_ns) / 1e9 AS end_s,
           coalesce(last.action = 'strike', 0) AS struck, iif(last.action = 'strike', last.reason, '') AS struck_reason
    FROM averaging_window AS span JOIN run ON run.id = span.run
    LEFT JOIN strike AS last ON last.id = (SELECT max(id) FROM strike WHERE strike.averaging_window = span.id)
    ORDER BY span.id;

CREATE VIEW test_now AS
    SELECT test.id, test.started_utc, test.ended_utc, test.state, json_extract(test.plan, '$.method') AS method,
           json_extract(test.plan, '$.stage') AS stage, json_extract(test.plan, '$.building.name') AS building,
           result.document, result.gap
    FROM test LEFT JOIN result ON result.id = (SELECT max(id) FROM result WHERE result.test = test.id);

CREATE TRIGGER edit_is_final BEFORE UPDATE ON edit BEGIN SELECT raise(ABORT, 'the edit log is never changed'); END;
CREATE TRIGGER edit_stays BEFORE DELETE ON edit BEGIN SELECT raise(ABORT, 'the edit log is never changed'); END;
CREATE TRIGGER building_version_is_final BEFORE UPDATE ON building_version
    BEGIN SELECT raise(ABORT, 'add a building version instead'); END;
CREATE TRIGGER building_version_stays BEFORE DELETE ON building_version
    BEGIN SELECT raise(ABORT, 'building versions stay'); END;
CREATE TRIGGER test_inputs_are_final BEFORE UPDATE OF id, started_utc, program, plan, rig ON test
    BEGIN SELECT raise(ABORT, 'the inputs of a test are never changed'); END;
CREATE TRIGGER test_ends_once BEFORE UPDATE ON test WHEN old.state <> 'recording'
    BEGIN SELECT raise(ABORT, 'an ended test is never changed'); END;
CREATE TRIGGER test_stays BEFORE DELETE ON test BEGIN SELECT raise(ABORT, 'tests are never deleted'); END;
CREATE TRIGGER run_inputs_are_final BEFORE UPDATE OF id, test, direction, air, started_utc, started_ns ON run
    BEGIN SELECT raise(ABORT, 'the inputs of a run are never changed'); END;
CREATE TRIGGER run_ends_once BEFORE UPDATE ON run WHEN old.state <> 'recording'
    BEGIN SELECT raise(ABORT, 'an ended run is never changed'); END;
CREATE TRIGGER run_stays BEFORE DELETE ON run BEGIN SELECT raise(ABORT, 'runs are never deleted'); END;
CREATE TRIGGER series_is_final BEFORE UPDATE ON series BEGIN SELECT raise(ABORT, 'measured data is never changed'); END;
CREATE TRIGGER series_stays BEFORE DELETE ON series BEGIN SELECT raise(ABORT, 'measured data is never deleted'); END;
CREATE TRIGGER reading_is_final BEFORE UPDATE ON reading BEGIN SELECT raise(ABORT, 'measured data is never changed'); END;
CREATE TRIGGER reading_stays BEFORE DELETE ON reading BEGIN SELECT raise(ABORT, 'measured data is never deleted'); END;
CREATE TRIGGER fan_is_final BEFORE UPDATE ON fan BEGIN SELECT raise(ABORT, 'measured data is never changed'); END;
CREATE TRIGGER fan_stays BEFORE DELETE ON fan BEGIN SELECT raise(ABORT, 'measured data is never deleted'); END;
CREATE TRIGGER window_is_final BEFORE UPDATE ON averaging_window
    BEGIN SELECT raise(ABORT, 'measured data is never changed'); END;
CREATE TRIGGER window_stays BEFORE DELETE ON averaging_window BEGIN SELECT raise(ABORT, 'strike it instead'); END;
CREATE TRIGGER strike_is_final BEFORE UPDATE ON strike BEGIN SELECT raise(ABORT, 'add a restore instead'); END;
CREATE TRIGGER strike_stays BEFORE DELETE ON strike BEGIN SELECT raise(ABORT, 'add a restore instead'); END;
CREATE TRIGGER mark_is_final BEFORE UPDATE ON mark BEGIN SELECT raise(ABORT, 'remarks are never changed'); END;
CREATE TRIGGER mark_stays BEFORE DELETE ON mark BEGIN SELECT raise(ABORT, 'remarks are never deleted'); END;
CREATE TRIGGER flag_is_final BEFORE UPDATE ON flag BEGIN SELECT raise(ABORT, 'flags are never changed'); END;
CREATE TRIGGER flag_stays BEFORE DELETE ON flag BEGIN SELECT raise(ABORT, 'flags are never deleted'); END;
CREATE TRIGGER answer_is_final BEFORE UPDATE ON answer BEGIN SELECT raise(ABORT, 'answers are never changed'); END;
CREATE TRIGGER answer_stays BEFORE DELETE ON answer BEGIN SELECT raise(ABORT, 'answers are never deleted'); END;
CREATE TRIGGER result_is_final BEFORE UPDATE ON result BEGIN SELECT raise(ABORT, 'add a result instead'); END;
CREATE TRIGGER result_stays BEFORE DELETE ON result BEGIN SELECT raise(ABORT, 'results are never deleted'); END;
