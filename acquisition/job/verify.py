"""Holding a job file against itself: digests and results are made anew from the readings."""

from __future__ import annotations

import hashlib
import json
import math
import sqlite3

from acquisition.job.issues import Issue
from acquisition.job.loading import compute_digest, read_test
from acquisition.job.records import RunRecord, TestRecord, Verification
from acquisition.job.results import result_text

RELATIVE_TOLERANCE = 1e-9
"""Between two machines the last binary digits of a sum may differ; a digit that anybody prints may not."""


def verify_file(db: sqlite3.Connection) -> Verification:
    """Check the structure of the file; raises `sqlite3.Error`."""
    findings = [row[0] for row in db.execute("PRAGMA integrity_check(3)")]
    broken = db.execute("PRAGMA foreign_key_check").fetchall()
    if findings == ["ok"] and not broken:
        return Verification("file", True, "The structure of the file is sound.")
    reason = findings[0] if findings != ["ok"] else f"{len(broken)} rows point nowhere"
    return Verification("file", False, f"The file is damaged: {reason}.")


def verify_run(db: sqlite3.Connection, run: RunRecord) -> Verification:
    """Compute the digest of a run anew and compare; raises `sqlite3.Error`."""
    subject = f"test {run.test_id}, {run.direction}{', gone on with' if run.continues is not None else ''}"
    if not run.digest:
        return Verification(subject, None, f"The run is not sealed (state: {run.state}).")
    digest = compute_digest(db, run)
    if digest == run.digest:
        return Verification(subject, True, f"Readings and inputs give the stored digest {run.digest[:16]}.")
    sentence = f"Readings or inputs were changed: they give digest {digest[:16]}, stored is {run.digest[:16]}."
    return Verification(subject, False, sentence)


def verify_result(db: sqlite3.Connection, record: TestRecord) -> Verification:
    """Compute the result of a test anew from its readings and compare; raises `sqlite3.Error`."""
    subject = f"test {record.id}, result"
    document, gap = result_text(record, read_test(db, record).test)
    if not record.result_json:
        if record.result_gap and not document:
            return Verification(subject, True, f"There is no result, as stored: {record.result_gap}.")
        return Verification(subject, None, f"No result is stored (state: {record.state}).")
    if not document:
        return Verification(subject, False, f"A result is stored, and the readings give none: {gap}.")
    where = first_difference(json.loads(record.result_json), json.loads(document))
    if where:
        return Verification(subject, False, f"The readings give another result than the stored one: {where}.")
    return Verification(subject, True, "The readings give the stored result.")


def verify_issue(db: sqlite3.Connection, issue: Issue) -> Verification:
    """Compute the digest of an issued report anew and compare; raises `sqlite3.Error`."""
    subject = f"issued report {issue.mark.number or issue.id}, revision {issue.mark.revision}"
    (content,) = db.execute("SELECT pdf FROM issue WHERE id = ?", (issue.id,)).fetchone()
    if hashlib.sha256(content).hexdigest() == issue.sha256:
        return Verification(subject, True, f"The file is the one that was issued, digest {issue.sha256[:16]}.")
    return Verification(subject, False, "The file is not the one that was issued.")


def first_difference(stored: object, computed: object, where: str = "") -> str:
    """Return where two JSON documents differ, with both values; empty when they agree in all printed digits."""
    if isinstance(stored, dict) and isinstance(computed, dict) and stored.keys() == computed.keys():
        steps = [(f"{where}.{key}" if where else str(key), stored[key], computed[key]) for key in stored]
    elif isinstance(stored, list) and isinstance(computed, list) and len(stored) == len(computed):
        steps = [(f"{where}[{i}]", pair[0], pair[1]) for i, pair in enumerate(zip(stored, computed, strict=True))]
    elif _same(stored, computed):
        return ""
    else:
        return f"{where or 'document'} is {stored!r} in the file and {computed!r} now"
    return next((found for name, a, b in steps if (found := first_difference(a, b, name))), "")


def _same(stored: object, computed: object) -> bool:
    if isinstance(stored, bool) or isinstance(computed, bool):
        return stored is computed
    if isinstance(stored, int | float) and isinstance(computed, int | float):
        return math.isclose(float(stored), float(computed), rel_tol=RELATIVE_TOLERANCE, abs_tol=1e-12)
    return type(stored) is type(computed) and stored == computed
