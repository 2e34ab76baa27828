"""A copy of a job in another folder: whole or not there at all, while the job is open too."""

from __future__ import annotations

import sqlite3
from contextlib import closing, suppress
from pathlib import Path

from acquisition.job import Job
from analysis.errors import InvalidInput


def back_up(job: Job, folder: Path) -> Path:
    """Copy an open job into a folder, in the place of an earlier copy of the same job; raises `InvalidInput`."""
    target = folder / job.path.name
    if folder.resolve() == job.path.parent.resolve():
        raise InvalidInput("backup folder", str(folder), "another folder than that of the job is needed")
    fresh = target.with_name(f"{target.name}.new")
    try:
        folder.mkdir(parents=True, exist_ok=True)
        job.copy_to(fresh)
        if target.exists() and not same_job(target, fresh):
            target = free_name(target)
        fresh.replace(target)
    except OSError as error:
        with suppress(OSError):
            fresh.unlink()
        raise InvalidInput("backup folder", str(folder), f"the copy cannot be written ({error.strerror})") from error
    return target


def same_job(one: Path, other: Path) -> bool:
    """Tell whether two files are the same job, by the moment at which it was made."""
    return created(one) == created(other) != ""


def created(path: Path) -> str:
    """Return when a job was made, empty for what is no job."""
    try:
        with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro&immutable=1", uri=True)) as db:
            row = db.execute("SELECT value FROM about WHERE key = 'created_utc'").fetchone()
    except sqlite3.Error:
        return ""
    return "" if row is None else str(row[0])


def free_name(path: Path) -> Path:
    """Return the next name that is not taken."""
    return next(
        candidate
        for number in range(2, 10_000)
        if not (candidate := path.with_name(f"{path.stem}-{number}{path.suffix}")).exists()
    )
