"""Find a job: the jobs of a folder, searched by words, exported together."""

from __future__ import annotations

from dataclasses import dataclass, replace

from acquisition.office.catalogue import JobLine
from acquisition.told.jobs import jobs_table
from gui.viewmodels.retold import retold, retold_part
from gui.words import say


@dataclass(frozen=True, slots=True)
class JobsPicture:
    """The page. `paths` are the files of the rows, one for each."""

    folder: str
    status: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    paths: tuple[str, ...]
    tips: tuple[str, ...]


def jobs_picture(
    folder: str, found: tuple[JobLine, ...], known: int, words: str, progress: str, mark: str
) -> JobsPicture:
    """Return the page; `known` is how many lines there are in all, `progress` says what is being read."""
    told = tuple(replace(line, verdict=retold_part(line.verdict)) for line in found)
    table = jobs_table(told, mark)
    return JobsPicture(
        folder=folder,
        status=progress or _status(found, known, words),
        heads=table.heads,
        rows=tuple(row.cells for row in table.rows),
        paths=tuple(line.file for line in found),
        tips=tuple(f"{line.file}\n{retold(line.trouble)}".strip() for line in found),
    )


def _status(found: tuple[JobLine, ...], known: int, words: str) -> str:
    if not known:
        return say("There is no job in this folder yet. Choose the folder in which your jobs are kept.")
    lines = (
        say("{count} of {known} lines", count=len(found), known=known)
        if words.strip()
        else say("{known} lines, newest first", known=known)
    )
    return (
        say("{lines}, one for each test.", lines=lines)
        if found
        else say("No job has these words; {known} lines were looked at.", known=known)
    )
