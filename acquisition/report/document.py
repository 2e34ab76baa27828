"""The report in words: turns the content into the texts that the page lays out. No text here is markup."""

from __future__ import annotations

import math
from datetime import UTC

from acquisition.languages import Language
from acquisition.report import wording
from acquisition.report.annex import annex_parts, leak_parts
from acquisition.report.certificate import certificate_words, code_of, stamps, utc_words
from acquisition.report.content import ReportContent
from acquisition.report.everypage import grouped, marked, page_words
from acquisition.report.facts import fact_groups
from acquisition.report.letterhead import office_words
from acquisition.report.names import KINDS, SYMBOLS, Json, interval_text
from acquisition.report.remarks import deviations, proof
from acquisition.report.tables import checks_table, points_table, results_table
from acquisition.report.typeface import printable
from acquisition.told.headline import headline, lacking, official, total_of
from acquisition.told.texts import limit_text
from acquisition.told.titles import method_title
from acquisition.told.verdicts import STAGE, likelihood, limit_title
from analysis.effective import QUANTITIES
from analysis.records import Estimate, Verdict
from analysis.units import Display, Quantity, format_estimate, unit_symbol
from analysis.verdict import settling_words

_FOOTER_CHARACTERS = 64


def report_document(content: ReportContent, display: Display) -> Json:
    """Return everything that the page prints, as JSON."""
    language, say = content.language, content.language.say
    display = language.display(display)
    building = printable(content.test.building.name) or say(wording.NO_NAME)
    verdicts = content.result.verdicts
    kind = content.file.kind
    document: Json = {
        "language": language.tag,
        "words": page_words(language),
        "title": say(wording.TITLE),
        "heading": _heading(content),
        "building": building,
        "author": printable(content.details.tester) or wording.PROGRAM,
        "date": list(content.date.astimezone(UTC).timetuple()[:6]),
        "stamps": stamps(content),
        "office": office_words(content.file.office, language),
        "lines": _lines(content),
        "hero": _hero(content, display),
        "verdict": _verdict(verdicts[0], content, display) if verdicts else None,
        "further": [_verdict(item, content, display) for item in verdicts[1:]],
        "no-limit": say(wording.NO_LIMIT),
        "validity": _validity(content),
        "certificate": certificate_words(content, display),
        "facts": fact_groups(content, display),
        "figure-head": say("Leakage curve with the 95 % band of the line"),
        "figure-alt": _figure_alt(content, display),
        "points": [points_table(run, display, language) for run in content.runs],
        "results": results_table(content, display),
        "checks": checks_table(content, display),
        "checked": wording.checked_sentence(content.result.method, language),
        "deviations": {"head": say("Deviations and gaps"), "items": deviations(content, display)},
        "cautions": {"head": say("Limits of this report"), "items": [say(words) for words in wording.CAUTIONS]},
        "proof": {"head": say("Proof"), "code": code_of(content)[1], **proof(content)},
        "leaks": leak_parts(content, display),
        "leaks-first": not kind.certified,
        "annex": annex_parts(content, display),
        "attachments": [
            {"name": "test.json", "description": say("The test in the format airseam-test-1")},
            {"name": "result.json", "description": say("The result in the format airseam-result-1")},
        ],
        "footer-name": building,
        "footer": f"{_short(building)}  ·  {_heading(content)}  ·  {wording.PROGRAM} {content.program}",
    }
    return grouped(document, language)


def _heading(content: ReportContent) -> str:
    """Return what the report is called, with its number and revision where it was issued."""
    kind, say = content.file.kind, content.language.say
    if not content.from_job:
        return say(wording.TITLE)
    title = say(wording.CERTIFICATE if kind.certified else wording.FINDING_REPORT)
    return marked(title, content.file.mark, content.language)


def _short(text: str) -> str:
    return text if len(text) <= _FOOTER_CHARACTERS else f"{text[: _FOOTER_CHARACTERS - 1].rstrip()}…"


def _lines(content: ReportContent) -> list[list[str]]:
    """Return the lines under the name: where and at which stage, then when and under which numbers."""
    say = content.language.say
    stage, site = printable(content.test.stage), printable(content.details.site)
    number = "" if content.test_number is None else say("Test {number}", number=content.test_number)
    when = say("Date not recorded")
    if content.started is not None:
        when = utc_words(content.started, content.language, content.ended)
    job = printable(content.details.number)
    what = (site, say("Stage: {stage}", stage=stage) if stage else "")
    who = (when, number, say("Job {number}", number=job) if job else "")
    return [line for line in ([part for part in parts if part] for parts in (what, who)) if line]


def _hero(content: ReportContent, display: Display) -> Json:
    """Return the number in front: its digits and its interval are those of everything that makes it uncertain."""
    result, say = content.result, content.language.say
    direction = wording.DIRECTIONS[content.runs[0].run.direction]
    scope = say("Mean of both directions" if len(content.runs) > 1 else direction)
    building = content.test.building
    name, own = headline(result, building, next((item.limit for item in result.verdicts), None))
    total = total_of(result, name)
    estimate = total if total is not None and math.isfinite(total.high) else own
    text = format_estimate(estimate, KINDS[name], display)
    interval = say(wording.NO_INTERVAL)
    if text.low:
        between = interval_text(text, content.language)
        interval = say("95 % interval {interval} {unit}", interval=between, unit=text.unit)
    line = "" if estimate is own else _line_alone(own, name, display, content.language)
    beyond = f", {say('extrapolated')}" if own.extrapolated else ""
    said = (f"{scope}, {method_title(result.method)}.", line, lacking(result.method, building, say))
    return {
        "symbol": SYMBOLS[name],
        "value": text.value,
        "unit": say("in {unit}", unit=text.unit),
        "words": say(QUANTITIES[name].title),
        "interval": f"{interval}{beyond}",
        "scope": " ".join(words for words in said if words),
    }


def _line_alone(own: Estimate, quantity: str, display: Display, language: Language) -> str:
    """Return what the method's own line says, without instruments, zero-flow pressure, wind and measures."""
    text = format_estimate(own, KINDS[quantity], display)
    if not text.low:
        return ""
    between = interval_text(text, language)
    return language.say("By the scatter of the line alone {value} ({interval}).", value=text.value, interval=between)


def _verdict(verdict: Verdict, content: ReportContent, display: Display) -> Json:
    quantity = verdict.limit.quantity
    kind = KINDS[quantity]
    tone, word = wording.VERDICTS[verdict.verdict]
    limit = limit_text(verdict.limit.value, kind, display)
    say, language = content.language.say, content.language
    parts = {"limit": limit, "unit": unit_symbol(kind, display), "likely": likelihood(verdict.probability, language)}
    if verdict.limit.id == STAGE:
        text = say("at most {limit} {unit}. Probability of meeting it: {likely}.", **parts)
    else:
        title = limit_title(verdict.limit, language)
        text = say("{title}: at most {limit} {unit}. Probability of meeting it: {likely}.", title=title, **parts)
    estimate = total_of(content.result, quantity) or official(content.result, content.test.building, quantity)
    return {
        "tone": tone,
        "word": say(word),
        "symbol": SYMBOLS[quantity],
        "text": text if verdict.settling is None else f"{text} {settling_words(verdict.settling, say)}",
        "strip": None if estimate is None else _strip(estimate, verdict, kind, display, language),
    }


def _strip(estimate: Estimate, verdict: Verdict, kind: Quantity, display: Display, language: Language) -> Json | None:
    """Return positions 0..1 on a scale that starts at zero; None without an interval."""
    text = format_estimate(estimate, kind, display)
    if not text.low:
        return None
    limit = verdict.limit.value
    full = 1.25 * max(limit, estimate.high)
    return {
        "low": max(estimate.low, 0.0) / full,
        "value": estimate.value / full,
        "high": estimate.high / full,
        "limit": limit / full,
        "limit-text": language.say("limit {limit}", limit=limit_text(limit, kind, display)),
        "value-text": f"{text.value} ({interval_text(text, language)})",
    }


def _validity(content: ReportContent) -> Json:
    checks = [check for run in content.runs for check in run.result.checks]
    failed = sum(check.ok is False for check in checks)
    missing = sum(check.ok is None for check in checks)
    say, count = content.language.say, len(checks)
    if failed:
        rest = say(", {missing} could not be made", missing=missing) if missing else ""
        if failed == 1:
            text = say("1 of {count} checks of the method is not met{rest}.", count=count, rest=rest)
        else:
            text = say(
                "{failed} of {count} checks of the method are not met{rest}.", failed=failed, count=count, rest=rest
            )
        return {"tone": "bad", "text": text}
    if missing:
        text = say("{missing} of {count} checks of the method could not be made.", missing=missing, count=count)
        return {"tone": "open", "text": text}
    return {"tone": "good", "text": say("All {count} checks of the method that are listed here are met.", count=count)}


def _figure_alt(content: ReportContent, display: Display) -> str:
    say = content.language.say
    parts = [
        say(
            "{direction}: {count} points, exponent {exponent}.",
            direction=say(wording.DIRECTIONS[run.run.direction]),
            count=len(run.run.points),
            exponent=format_estimate(run.result.n, Quantity.EXPONENT, display).value,
        )
        for run in content.runs
    ]
    return " ".join([say("Envelope flow against induced pressure on logarithmic scales."), *parts])
