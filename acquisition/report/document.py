"""The report in words: turns the content into the texts that the page lays out. No text here is markup."""

from __future__ import annotations

import math
from datetime import UTC

from acquisition.report import wording
from acquisition.report.annex import annex_parts, leak_parts
from acquisition.report.certificate import certificate_words, code_of, stamps, utc_words
from acquisition.report.content import ReportContent
from acquisition.report.facts import fact_groups
from acquisition.report.letterhead import office_words
from acquisition.report.names import KINDS, SYMBOLS, Json, interval_text
from acquisition.report.remarks import deviations, proof
from acquisition.report.tables import checks_table, points_table, results_table
from acquisition.report.typeface import printable
from acquisition.told.headline import headline, total_of
from acquisition.told.texts import limit_text
from acquisition.told.titles import method_title
from acquisition.told.verdicts import likelihood, limit_title
from analysis.effective import QUANTITIES
from analysis.records import Estimate, Verdict
from analysis.units import Display, Quantity, format_estimate, unit_symbol
from analysis.verdict import settling_words

_FOOTER_CHARACTERS = 64


def report_document(content: ReportContent, display: Display) -> Json:
    """Return everything that the page prints, as JSON."""
    building = printable(content.test.building.name) or wording.NO_NAME
    verdicts = content.result.verdicts
    kind = content.file.kind
    return {
        "title": wording.TITLE,
        "heading": _heading(content),
        "building": building,
        "author": printable(content.details.tester) or wording.PROGRAM,
        "date": list(content.date.astimezone(UTC).timetuple()[:6]),
        "stamps": stamps(content),
        "office": office_words(content.file.office),
        "lines": _lines(content),
        "hero": _hero(content, display),
        "verdict": _verdict(verdicts[0], content, display) if verdicts else None,
        "further": [_verdict(item, content, display) for item in verdicts[1:]],
        "no-limit": wording.NO_LIMIT,
        "validity": _validity(content),
        "certificate": certificate_words(content, display),
        "facts": fact_groups(content, display),
        "figure-head": "Leakage curve with the 95 % band of the line",
        "figure-alt": _figure_alt(content, display),
        "points": [points_table(run, display) for run in content.runs],
        "results": results_table(content, display),
        "checks": checks_table(content, display),
        "checked": wording.checked_sentence(content.result.method),
        "deviations": {"head": "Deviations and gaps", "items": deviations(content, display)},
        "cautions": {"head": "Limits of this report", "items": list(wording.CAUTIONS)},
        "proof": {"head": "Proof", "code": code_of(content)[1], **proof(content)},
        "leaks": leak_parts(content, display),
        "leaks-first": not kind.certified,
        "annex": annex_parts(content, display),
        "attachments": [
            {"name": "test.json", "description": "The test in the format airseam-test-1"},
            {"name": "result.json", "description": "The result in the format airseam-result-1"},
        ],
        "footer-name": building,
        "footer": f"{_short(building)}  ·  {_heading(content)}  ·  {wording.PROGRAM} {content.program}",
    }


def _heading(content: ReportContent) -> str:
    """Return what the report is called, with its number and revision where it was issued."""
    kind, mark = content.file.kind, content.file.mark
    if not content.from_job:
        return wording.TITLE
    title = wording.CERTIFICATE if kind.certified else wording.FINDING_REPORT
    if mark is None:
        return title
    number = f" {printable(mark.number)}" if mark.number else ""
    revision = f", revision {mark.revision}" if mark.revision else ""
    return f"{title}{number}{revision}"


def _short(text: str) -> str:
    return text if len(text) <= _FOOTER_CHARACTERS else f"{text[: _FOOTER_CHARACTERS - 1].rstrip()}…"


def _lines(content: ReportContent) -> list[list[str]]:
    """Return the lines under the name: where and at which stage, then when and under which numbers."""
    stage, site = printable(content.test.stage), printable(content.details.site)
    number = "" if content.test_number is None else f"Test {content.test_number}"
    when = "Date not recorded" if content.started is None else utc_words(content.started, content.ended)
    job = printable(content.details.number)
    what = (site, f"Stage: {stage}" if stage else "")
    who = (when, number, f"Job {job}" if job else "")
    return [line for line in ([part for part in parts if part] for parts in (what, who)) if line]


def _hero(content: ReportContent, display: Display) -> Json:
    """Return the number in front: its digits and its interval are those of everything that makes it uncertain."""
    result = content.result
    direction = wording.DIRECTIONS[content.runs[0].run.direction]
    scope = "Mean of both directions" if len(content.runs) > 1 else direction
    name, official = headline(result.mean, next((item.limit for item in result.verdicts), None))
    total = total_of(result, name)
    estimate = total if total is not None and math.isfinite(total.high) else official
    text = format_estimate(estimate, KINDS[name], display)
    interval = f"95 % interval {interval_text(text)} {text.unit}" if text.low else wording.NO_INTERVAL
    line = "" if estimate is official else _line_alone(official, name, display)
    return {
        "symbol": SYMBOLS[name],
        "value": text.value,
        "unit": text.unit,
        "words": QUANTITIES[name].title,
        "interval": f"{interval}{', extrapolated' if official.extrapolated else ''}",
        "scope": f"{scope}, {method_title(result.method)}. {line}".rstrip(),
    }


def _line_alone(official: Estimate, quantity: str, display: Display) -> str:
    """Return what the method's own line says, without instruments, zero-flow pressure, wind and measures."""
    text = format_estimate(official, KINDS[quantity], display)
    if not text.low:
        return ""
    return f"By the scatter of the line alone {text.value} ({interval_text(text)})."


def _verdict(verdict: Verdict, content: ReportContent, display: Display) -> Json:
    quantity = verdict.limit.quantity
    kind = KINDS[quantity]
    tone, word = wording.VERDICTS[verdict.verdict]
    limit = limit_text(verdict.limit.value, kind, display)
    title = f"{limit_title(verdict.limit)}: " if verdict.limit.id != "stage" else ""
    likely = likelihood(verdict.probability)
    text = f"{title}at most {limit} {unit_symbol(kind, display)}. Probability of meeting it: {likely}."
    estimate = total_of(content.result, quantity) or getattr(content.result.mean, quantity, None)
    return {
        "tone": tone,
        "word": word,
        "symbol": SYMBOLS[quantity],
        "text": text if verdict.settling is None else f"{text} {settling_words(verdict.settling)}",
        "strip": None if estimate is None else _strip(estimate, verdict.limit.value, f"limit {limit}", kind, display),
    }


def _strip(estimate: Estimate, limit: float, limit_words: str, kind: Quantity, display: Display) -> Json | None:
    """Return positions 0..1 on a scale that starts at zero; None without an interval."""
    text = format_estimate(estimate, kind, display)
    if not text.low:
        return None
    full = 1.25 * max(limit, estimate.high)
    return {
        "low": max(estimate.low, 0.0) / full,
        "value": estimate.value / full,
        "high": estimate.high / full,
        "limit": limit / full,
        "limit-text": limit_words,
        "value-text": f"{text.value} ({interval_text(text)})",
    }


def _validity(content: ReportContent) -> Json:
    checks = [check for run in content.runs for check in run.result.checks]
    failed = sum(check.ok is False for check in checks)
    missing = sum(check.ok is None for check in checks)
    if failed:
        text = f"{failed} of {len(checks)} checks of the method {'is' if failed == 1 else 'are'} not met"
        return {"tone": "bad", "text": text + (f", {missing} could not be made." if missing else ".")}
    if missing:
        return {"tone": "open", "text": f"{missing} of {len(checks)} checks of the method could not be made."}
    return {"tone": "good", "text": f"All {len(checks)} checks of the method that are listed here are met."}


def _figure_alt(content: ReportContent, display: Display) -> str:
    parts = [
        f"{wording.DIRECTIONS[run.run.direction]}: {len(run.run.points)} points, exponent "
        f"{format_estimate(run.result.n, Quantity.EXPONENT, display).value}"
        for run in content.runs
    ]
    return f"Envelope flow against induced pressure on logarithmic scales. {'. '.join(parts)}."
