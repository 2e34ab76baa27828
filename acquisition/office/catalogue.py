"""The jobs of a folder in one table: read from the files without opening them as jobs, searched by words."""

from __future__ import annotations

import csv
import io
import json
import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing
from dataclasses import asdict, dataclass, fields, replace
from datetime import datetime
from pathlib import Path
from typing import Any

from acquisition.job import SUFFIX
from acquisition.job.export import Dialect

DETAILS = ("name", "site", "client", "tester", "number")
QUANTITIES = ("n50_per_h", "q50_m3_h", "qe50_m3_h_m2", "qf50_m3_h_m2")
HEADINGS = {
    "file": "file", "name": "name", "site": "site", "client": "client", "tester": "tester", "number": "job number",
    "test": "test", "started": "started (UTC)", "stage": "stage", "kind": "kind", "method": "method", "state": "state",
    "n50_per_h": "n50 (1/h)", "n50_low": "n50 low (95 %)", "n50_high": "n50 high (95 %)", "q50_m3_h": "q50 (m³/h)",
    "qe50_m3_h_m2": "qE50 (m³/(h·m²))", "qf50_m3_h_m2": "qF50 (m³/(h·m²))", "verdict": "verdict",
    "issued": "issued as", "trouble": "trouble",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class JobLine:
    """One test of a job, or a job without one (`test` is then None). SI units; what is not known is empty or None."""

    file: str
    name: str = ""
    site: str = ""
    client: str = ""
    tester: str = ""
    number: str = ""
    test: int | None = None
    started: str = ""
    stage: str = ""
    kind: str = ""
    method: str = ""
    state: str = ""
    n50_per_h: float | None = None
    n50_low: float | None = None
    n50_high: float | None = None
    q50_m3_h: float | None = None
    qe50_m3_h_m2: float | None = None
    qf50_m3_h_m2: float | None = None
    verdict: str = ""
    issued: str = ""
    trouble: str = ""

    @property
    def words(self) -> str:
        """Everything that a search looks at, in small letters."""
        day = self.started[:10]
        shown = datetime.fromisoformat(day).strftime("%d.%m.%Y") if day else ""
        parts = (
            Path(self.file).stem, self.name, self.site, self.client, self.tester, self.number, day, shown, self.stage,
            self.kind, self.method, self.issued,
        )  # fmt: skip
        return "\n".join(parts).casefold()


class Catalogue:
    """The jobs of a folder. Files that did not change since they were read are not read again."""

    def __init__(self) -> None:
        """Know nothing yet."""
        self.lines: tuple[JobLine, ...] = ()
        self._known: dict[Path, tuple[int, int, tuple[JobLine, ...]]] = {}
        self._words: tuple[str, ...] = ()

    def read(self, folder: Path, progress: Callable[[int, int], None] = lambda _at, _count: None) -> None:
        """Read the jobs of a folder and of those in it; `progress` is told how many of how many. Never raises."""
        paths = sorted(path for path in folder.rglob(f"*{SUFFIX}") if path.is_file())
        known: dict[Path, tuple[int, int, tuple[JobLine, ...]]] = {}
        for at, path in enumerate(paths, 1):
            known[path] = self._lines_of(path)
            progress(at, len(paths))
        self._known = known
        found = [line for _, _, lines in known.values() for line in lines]
        self.lines = tuple(sorted(found, key=lambda line: line.started, reverse=True))
        self._words = tuple(line.words for line in self.lines)

    def search(self, text: str) -> tuple[JobLine, ...]:
        """Return the lines that have every word of the text, newest first."""
        wanted = text.casefold().split()
        return tuple(
            line for line, words in zip(self.lines, self._words, strict=True) if all(word in words for word in wanted)
        )

    def _lines_of(self, path: Path) -> tuple[int, int, tuple[JobLine, ...]]:
        try:
            stat = path.stat()
        except OSError as error:
            return (0, 0, (JobLine(str(path), trouble=f"it cannot be read ({error.strerror})"),))
        before = self._known.get(path)
        if before is not None and before[:2] == (stat.st_mtime_ns, stat.st_size):
            return before
        return (stat.st_mtime_ns, stat.st_size, tuple(job_lines(path)))


def job_lines(path: Path) -> Iterator[JobLine]:
    """Yield a line for each test of a job file; one with its trouble where it cannot be read."""
    try:
        with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro&immutable=1", uri=True)) as db:
            yield from _read(db, str(path))
    except (sqlite3.Error, ValueError, TypeError, KeyError, AttributeError) as error:
        yield JobLine(str(path), trouble=f"it is no job, or damaged ({error})")


def write_table(lines: Sequence[JobLine], dialect: Dialect) -> bytes:
    """Return the table as CSV, its units in the headings."""
    text = io.StringIO()
    writer = csv.writer(text, delimiter=dialect.delimiter, lineterminator="\r\n")
    writer.writerow([HEADINGS[field.name] for field in fields(JobLine)])
    for line in lines:
        writer.writerow([dialect.cell(value) for value in asdict(line).values()])
    return text.getvalue().encode(dialect.encoding)


def _read(db: sqlite3.Connection, file: str) -> Iterator[JobLine]:
    details: dict[str, str] = dict(db.execute("SELECT field, value FROM details"))
    blank = JobLine(file, **{name: details.get(name, "") for name in DETAILS})  # type: ignore[arg-type]  # all texts
    issued = _issued(db)
    found = False
    for number, started, plan, state, document in db.execute(
        "SELECT test.id, test.started_utc, test.plan, test.state, result.document FROM test LEFT JOIN result"
        " ON result.id = (SELECT max(id) FROM result WHERE result.test = test.id) ORDER BY test.id"
    ):
        found = True
        table = json.loads(plan)
        yield replace(
            blank,
            test=number,
            started=started[:19],
            stage=table.get("stage", ""),
            kind=table.get("kind", ""),
            method=table.get("method", ""),
            state=state,
            issued=issued.get(number, ""),
            **_result(json.loads(document) if document else {}),
        )
    if not found:
        yield replace(blank, issued=issued.get(None, ""))


def _issued(db: sqlite3.Connection) -> dict[int | None, str]:
    (version,) = db.execute("PRAGMA user_version").fetchone()
    if version < 4:
        return {}
    rows = db.execute("SELECT test, number, revision FROM issue ORDER BY id")
    return {test: f"{number or 'without a number'}{f' rev. {at}' if at else ''}" for test, number, at in rows}


def _result(document: dict[str, Any]) -> dict[str, Any]:
    mean = document.get("mean") or {}
    values = {name: (mean.get(name) or {}).get("value") for name in QUANTITIES}
    n50 = mean.get("n50_per_h") or {}
    verdicts = document.get("verdicts") or []
    return {
        **values,
        "n50_low": n50.get("low"),
        "n50_high": n50.get("high"),
        "verdict": verdicts[0].get("verdict", "") if verdicts else "",
    }
