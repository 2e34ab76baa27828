"""The report of a visit without a test: why none was possible, as plain text."""

from __future__ import annotations

from acquisition.job import JobDetails
from acquisition.setup.safety import Gate
from analysis.errors import InvalidInput

CLOSING = "Local codes and licensed practice decide; this page records what was found on the day."


def refusal(details: JobDetails, gate: Gate) -> str:
    """Return the page; raises `InvalidInput` where a test is possible."""
    if not gate.forbids:
        raise InvalidInput("safety", None, "a report of no test needs an answer that forbids it", shown="given")
    lines = ["No test possible", details.name]
    lines += [f"{name}: {text}" for name, text in (("Site", details.site), ("Client", details.client)) if text]
    lines += ["", "What is not so", *(f"- {text}" for text in gate.refusals), "", "All answers"]
    for question, entry in gate.answers:
        if entry is None:
            lines.append(f"[not asked] {question.text}")
            continue
        who = f", {entry.who}" if entry.who else ""
        note = f" ({entry.note})" if entry.note else ""
        lines.append(f"[{entry.state}] {question.text}{note} {entry.utc:%Y-%m-%d %H:%M} UTC{who}")
    return "\n".join([*lines, "", CLOSING]) + "\n"
