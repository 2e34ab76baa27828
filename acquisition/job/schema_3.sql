-- Version 3 of the job file: leaks, marks set while a pressure is held, and what each seal brought.

-- A leak as it was known from utc on; the newest row of a number holds. document is JSON: part (an id of the list of
-- parts), storey, side, room, how it was found, trade, status (found, sealed, verified, left), material, minutes, cost,
-- size_guess_m3_h at 50 Pa, numbers of photos, pins on photos.
CREATE TABLE leak (
    id INTEGER PRIMARY KEY,
    number INTEGER NOT NULL,
    utc TEXT NOT NULL,
    document TEXT NOT NULL
) STRICT;
CREATE INDEX leak_of_number ON leak (number);

-- One key each while a pressure is held. kind: sealing starts, sealing done, note, new leak. leak: its number, if any.
-- t_ns is of the clock of the program that recorded.
CREATE TABLE sealing_mark (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    t_ns INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('sealing starts', 'sealing done', 'note', 'new leak')),
    leak INTEGER,
    text TEXT NOT NULL
) STRICT;

-- What sealing a leak brought, measured; the newest row of a leak holds. document is JSON: flow before and after at
-- reference_pa in m3/h, their difference with its 95 % interval, the smallest change that could be told, how sure.
CREATE TABLE leak_drop (
    id INTEGER PRIMARY KEY,
    utc TEXT NOT NULL,
    leak INTEGER NOT NULL,
    document TEXT NOT NULL
) STRICT;

CREATE VIEW leak_now AS
    SELECT number, utc, json_extract(document, '$.status') AS status, json_extract(document, '$.part') AS part,
           json_extract(document, '$.storey') AS storey, json_extract(document, '$.room') AS room,
           json_extract(document, '$.side') AS side, json_extract(document, '$.trade') AS trade
    FROM leak WHERE id IN (SELECT max(id) FROM leak GROUP BY number) ORDER BY number;

CREATE TRIGGER leak_is_final BEFORE UPDATE ON leak BEGIN SELECT raise(ABORT, 'add what is so now instead'); END;
CREATE TRIGGER leak_stays BEFORE DELETE ON leak BEGIN SELECT raise(ABORT, 'leaks are never deleted'); END;
CREATE TRIGGER sealing_mark_is_final BEFORE UPDATE ON sealing_mark
    BEGIN SELECT raise(ABORT, 'marks are never changed'); END;
CREATE TRIGGER sealing_mark_stays BEFORE DELETE ON sealing_mark
    BEGIN SELECT raise(ABORT, 'marks are never deleted'); END;
CREATE TRIGGER leak_drop_is_final BEFORE UPDATE ON leak_drop
    BEGIN SELECT raise(ABORT, 'measured data is never changed'); END;
CREATE TRIGGER leak_drop_stays BEFORE DELETE ON leak_drop
    BEGIN SELECT raise(ABORT, 'measured data is never deleted'); END;
