"""The result of a test as the job file keeps it."""

from __future__ import annotations

import json
from collections.abc import Callable

from acquisition.job.records import TestRecord
from analysis.errors import InvalidInput
from analysis.methods import analyse
from analysis.records import Test, TestResult
from analysis.resultjson import result_document


def analyse_record(record: TestRecord, test: Test) -> TestResult:
    """Return the result by the method and limit of the test's plan; raises `InvalidInput`."""
    return analyse(test, record.plan.method, limits=record.plan.limits, kit=record.plan.kit)


def result_text(record: TestRecord, derive: Callable[[], Test]) -> tuple[str, str]:
    """Return the result document as text and "", or "" and the sentence that says why there is no result."""
    try:
        result = analyse_record(record, derive())
    except InvalidInput as error:
        return "", str(error)
    text = json.dumps(result_document(result), sort_keys=True, ensure_ascii=False, separators=(",", ":"))
    return text, ""
