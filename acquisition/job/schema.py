"""Making and opening the database of a job; schema.sql and its later steps describe what is in it."""

from __future__ import annotations

import os
import shutil
import sqlite3
import struct
import tempfile
from importlib.resources import files
from pathlib import Path

from analysis.errors import InvalidInput, in_short

APPLICATION_ID = 0x41495253
STEPS = ("schema_2.sql", "schema_3.sql", "schema_4.sql", "schema_5.sql", "schema_6.sql", "schema_7.sql")
"""What was added to `schema.sql`, oldest first: one file for each later version of the job file."""
USER_VERSION = 1 + len(STEPS)

_MAGIC = b"SQLite format 3\x00"
_HEADER_BYTES = 100
_VERSION_AT, APPLICATION_ID_AT = 60, 68
_BUSY_S = 0.3


def create_database(path: Path) -> sqlite3.Connection:
    """Make an empty job at `path`, which must not exist; raises `InvalidInput`."""
    _reserve(path)
    try:
        connection = _connect(path, "rw")
        try:
            # The first transaction goes past the log, so that the head of the file says from the start what it is.
            connection.executescript("BEGIN;" + "".join(map(_script, ("schema.sql", *STEPS))) + "COMMIT;")
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            connection.execute(f"PRAGMA user_version = {USER_VERSION}")
            _settle(connection)
        except BaseException:
            connection.close()
            raise
    except sqlite3.Error as error:
        path.unlink(missing_ok=True)
        raise InvalidInput("job file", str(path), f"it cannot be written ({error})") from error
    return connection


def open_database(path: Path, *, read_only: bool) -> sqlite3.Connection:
    """Open a job and recover what an interrupted program left in its log; raises `InvalidInput`.

    With `read_only` the connection is to a copy in memory, and nothing is left beside the file.
    """
    _check_head(path)
    if read_only:
        return _into_memory(path)
    try:
        connection = _connect(path, "rw")
    except sqlite3.Error as error:
        raise _cannot_open(path, error) from error
    try:
        _settle(connection)
        _check_body(connection, path)
        _bring_up(connection)
    except sqlite3.Error as error:
        connection.close()
        raise _cannot_open(path, error) from error
    except InvalidInput:
        connection.close()
        raise
    return connection


def _bring_up(connection: sqlite3.Connection) -> None:
    """Add to a file of an earlier version what later ones hold; each step whole or not at all."""
    version = connection.execute("PRAGMA user_version").fetchone()[0]
    for at, step in enumerate(STEPS, 2):
        if version < at:
            connection.executescript(f"BEGIN IMMEDIATE;{_script(step)}PRAGMA user_version = {at};COMMIT;")


def _script(name: str) -> str:
    return files(__package__).joinpath(name).read_text("utf-8")


def _into_memory(path: Path) -> sqlite3.Connection:
    """Read a whole job into memory, wherever it lies: on a full disk, on a medium that cannot be written."""
    memory = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
    log = path.with_name(path.name + "-wal")
    try:
        if not log.exists():
            # Nobody has it open: all of it is in the one file.
            _copy(path, "ro&immutable=1", memory)
        else:
            # It is open elsewhere, which the first look finds out, or a crash left the log: recover that on a copy.
            _look(path)
            with tempfile.TemporaryDirectory() as folder:
                for file in (path, log):
                    shutil.copyfile(file, Path(folder) / file.name)
                _copy(Path(folder) / path.name, "rw", memory)
        _check_body(memory, path)
        _bring_up(memory)
    except sqlite3.Error as error:
        memory.close()
        raise _cannot_open(path, error) from error
    except OSError as error:
        memory.close()
        raise InvalidInput("job file", str(path), f"it cannot be read ({error.strerror})") from error
    except InvalidInput:
        memory.close()
        raise
    return memory


def _copy(path: Path, mode: str, target: sqlite3.Connection) -> None:
    source = _connect(path, mode)
    try:
        source.backup(target)
    finally:
        source.close()


def _look(path: Path) -> None:
    """Raise `sqlite3.Error` when another program has the job open."""
    index = path.with_name(path.name + "-shm")
    was_there = index.exists()
    connection = _connect(path, "ro")
    try:
        connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()
    except sqlite3.OperationalError as error:
        if "locked" in str(error) or "busy" in str(error):
            raise
    finally:
        connection.close()
        if not was_there:
            index.unlink(missing_ok=True)


def _connect(path: Path, mode: str) -> sqlite3.Connection:
    connection = sqlite3.connect(
        f"{path.resolve().as_uri()}?mode={mode}",
        uri=True,
        timeout=_BUSY_S,
        isolation_level=None,
        check_same_thread=False,
    )
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("PRAGMA temp_store = MEMORY")
    return connection


def _settle(connection: sqlite3.Connection) -> None:
    """Take the file for this process alone and make every commit reach the disk."""
    connection.execute("PRAGMA locking_mode = EXCLUSIVE")
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("SELECT count(*) FROM about").fetchone()


def _reserve(path: Path) -> None:
    try:
        os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o666))
    except FileExistsError as error:
        raise InvalidInput("job file", str(path), "it exists already, open it or choose another name") from error
    except OSError as error:
        raise InvalidInput("job file", str(path), f"it cannot be made ({error.strerror})") from error


def _check_head(path: Path) -> None:
    try:
        with path.open("rb") as file:
            head = file.read(_HEADER_BYTES)
    except OSError as error:
        raise InvalidInput("job file", str(path), f"it cannot be read ({error.strerror})") from error
    if len(head) < _HEADER_BYTES or not head.startswith(_MAGIC):
        raise _not_a_job(path, "not an Airseam job")
    if struct.unpack_from(">I", head, APPLICATION_ID_AT)[0] != APPLICATION_ID:
        raise _not_a_job(path, "a database of another program, not an Airseam job")
    version = struct.unpack_from(">I", head, _VERSION_AT)[0]
    if version > USER_VERSION:
        allowed = f"it was written by a newer Airseam (file version {version}, this one knows up to {USER_VERSION})"
        raise InvalidInput("job file", str(path), allowed)


def _not_a_job(path: Path, shown: str) -> InvalidInput:
    allowed = "choose one that Airseam saved, its name ends in .airseam"
    return InvalidInput(f"the file {in_short(str(path))}", str(path), allowed, shown=shown)


def _check_body(connection: sqlite3.Connection, path: Path) -> None:
    finding = connection.execute("PRAGMA quick_check(1)").fetchone()[0]
    if finding != "ok":
        raise InvalidInput("job file", str(path), f"it is damaged ({finding.splitlines()[-1]})")
    if connection.execute("SELECT count(*) FROM sqlite_schema WHERE name = 'reading'").fetchone()[0] != 1:
        raise InvalidInput("job file", str(path), "it is damaged (its tables are missing)")


def _cannot_open(path: Path, error: sqlite3.Error) -> InvalidInput:
    text = str(error)
    if "locked" in text or "busy" in text:
        return InvalidInput("job file", str(path), "it is open in another window of Airseam, close it there first")
    if "readonly" in text:
        return InvalidInput("job file", str(path), "it cannot be written: the file or its folder is read-only")
    if "malformed" in text or "not a database" in text:
        return InvalidInput("job file", str(path), "it is damaged or cut short")
    return InvalidInput("job file", str(path), f"it cannot be opened ({text})")
