"""The reports of a job that were issued: frozen, numbered, signed; kept byte for byte.

The table `issue_page` of the file held pictures of their pages once; they are drawn from the PDF now.
"""

from __future__ import annotations

import hashlib
import sqlite3
import threading
from dataclasses import dataclass, field
from datetime import datetime

from acquisition.job.encoding import utc_from, utc_text
from acquisition.job.writer import Writer
from analysis.errors import InvalidInput

LONGEST_TEXT = 240


@dataclass(frozen=True, slots=True)
class IssueMark:
    """What an issued report carries. `number` is empty where the kind of test has none; revisions count from 0."""

    number: str
    revision: int
    signed_by: str
    utc: datetime
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Issue:
    """An issued report, without its file. `test_id` is None for the report that no test was possible."""

    id: int
    test_id: int | None
    mark: IssueMark
    program: str
    document: str
    sha256: str


@dataclass(slots=True)
class IssueContents:
    """All issued reports, oldest first."""

    issues: list[Issue] = field(default_factory=list)


class Issues:
    """Keeps `IssueContents` and the file in step. Any thread may call it; only `pdf` waits for the disk."""

    def __init__(self, contents: IssueContents, writer: Writer) -> None:
        """Take over what was read from the file."""
        self._contents = contents
        self._writer = writer
        self._lock = threading.RLock()

    @property
    def all(self) -> tuple[Issue, ...]:
        """All issued reports, oldest first."""
        with self._lock:
            return tuple(self._contents.issues)

    def of_test(self, test_id: int | None) -> tuple[Issue, ...]:
        """Return the issued reports of a test, or those that no test was possible, oldest first."""
        return tuple(item for item in self.all if item.test_id == test_id)

    def add(self, test_id: int | None, mark: IssueMark, program: str, document: str, pdf: bytes) -> Issue:
        """Keep an issued report with its file.

        Raises `InvalidInput` without a signature, or where the revision is not the next one.
        """
        if not mark.signed_by.strip():
            raise InvalidInput("signed by", mark.signed_by, "the name of who signs is needed", shown="empty")
        for name, text in (("signed by", mark.signed_by), ("reason", mark.reason), ("number", mark.number)):
            if len(text) > LONGEST_TEXT:
                raise InvalidInput(name, text, f"at most {LONGEST_TEXT} characters fit", shown=f"{len(text)} long")
        with self._lock:
            wanted = len(self.of_test(test_id))
            if mark.revision != wanted:
                raise InvalidInput("revision", mark.revision, f"revision {wanted} is the next one of this report")
            if wanted and not mark.reason.strip():
                raise InvalidInput("reason", mark.reason, "say why it is issued again", shown="empty")
            number = max((item.id for item in self._contents.issues), default=0) + 1
            issue = Issue(number, test_id, mark, program, document, hashlib.sha256(pdf).hexdigest())
            self._contents.issues.append(issue)
            row = (
                number, utc_text(mark.utc), test_id, mark.number, mark.revision, mark.reason, mark.signed_by, program,
                document, issue.sha256, pdf,
            )  # fmt: skip
            self._writer.post(
                "INSERT INTO issue (id, utc, test, number, revision, reason, signed_by, program, document, sha256, pdf)"
                " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                (row,),
                urgent=True,
            )
        return issue

    def pdf(self, issue_id: int) -> bytes:
        """Return the file as it was issued; raises `InvalidInput` where there is none, or it is not what it was."""
        issue = self._known(issue_id)

        def read(db: sqlite3.Connection) -> bytes:
            return bytes(db.execute("SELECT pdf FROM issue WHERE id = ?", (issue_id,)).fetchone()[0])

        content = self._writer.read(read)
        if hashlib.sha256(content).hexdigest() != issue.sha256:
            raise InvalidInput("issued report", issue_id, "its file is not the one that was issued", shown="damaged")
        return content

    def _known(self, issue_id: int) -> Issue:
        found = next((item for item in self.all if item.id == issue_id), None)
        if found is None:
            known = ", ".join(str(item.id) for item in self.all) or "none yet"
            raise InvalidInput("issued report", issue_id, f"its number in the job is needed, there are: {known}")
        return found


def read_issues(db: sqlite3.Connection) -> IssueContents:
    """Read what was issued, without the files; raises `sqlite3.Error`."""
    return IssueContents(
        [
            Issue(number, test, IssueMark(name, revision, signed, utc_from(utc), reason), program, document, sha256)
            for number, utc, test, name, revision, reason, signed, program, document, sha256 in db.execute(
                "SELECT id, utc, test, number, revision, reason, signed_by, program, document, sha256 FROM issue"
                " ORDER BY id"
            )
        ]
    )
