"""What the report admits and what it proves: deviations, gaps, digests."""

from __future__ import annotations

from acquisition.languages import Language
from acquisition.regimes import AFTER_STEP, BEFORE_STEP, regimes_sentence, regimes_through
from acquisition.register import DueState, due_of_rig, in_use
from acquisition.report import wording
from acquisition.report.content import ReportContent, RunContent
from acquisition.report.names import BLANK, Json, check_value
from acquisition.report.typeface import printable
from analysis.methods import method_of
from analysis.units import Display, Quantity, format_value, format_with_unit

_MOST_NOTICED = 5


def deviations(content: ReportContent, display: Display) -> list[str]:
    """Return a sentence for everything that departs from the method or is not known."""
    language, say = content.language, content.language.say
    items = [say(wording.STATES[content.state.value])] if content.state.value in wording.STATES else []
    if content.typed:
        items.append(say(wording.TYPED_GAP))
    if len(content.runs) == 1:
        way = say(content.runs[0].run.direction.value)
        items.append(say("Measured in one direction only ({direction}).", direction=way))
    for run in content.runs:
        of_run = f" ({say(run.run.direction.value)})" if len(content.runs) > 1 else ""
        items += _run_deviations(run, of_run, display, language)
    items += _regimes(content, display)
    items += _overdue(content)
    if any(check.ok is None for run in content.runs for check in run.result.checks):
        items.append(say("Not checked: what is marked with a question mark in the list of checks."))
    items += [printable(sentence) for sentence in content.setup]
    items += _noticed(content)
    if missing := _missing(content):
        items.append(say("Not recorded: {things}.", things=", ".join(missing)))
    if unseen := method_of(content.result.method).not_in_record:
        items.append(say("Not in the record of readings: {things}.", things="; ".join(say(thing) for thing in unseen)))
    return items


def _regimes(content: ReportContent, display: Display) -> list[str]:
    """Return a sentence for each direction in which something came off, or closed, between two points."""
    items = []
    for run in content.runs:
        told = [
            (run.run.direction.sign * row.induced_pa, row.envelope_flow_m3_h)
            for row in run.rows
            if row.induced_pa is not None
            and row.envelope_flow_m3_h is not None
            and row.struck_reason in (None, BEFORE_STEP, AFTER_STEP)
        ]
        found = regimes_through([pressure for pressure, _ in told], [flow for _, flow in told])
        if found is not None:
            items.append(printable(regimes_sentence(found, run.run.direction, display, content.language)))
    return items


def _overdue(content: ReportContent) -> list[str]:
    """Return the calibrations that had run out on the day of the test."""
    if content.rig is None or content.started is None:
        return []
    found = due_of_rig(in_use(content.rig), content.started.astimezone().date())
    return [printable(content.language.said(status.sentence)) for status in found if status.state is DueState.OVERDUE]


def proof(content: ReportContent) -> Json:
    """Return the digests."""
    say = content.language.say
    rows = [
        [say("SHA-256 of readings and inputs, {direction}", direction=say(run.run.direction.value)), run.digest]
        for run in content.runs
        if run.digest
    ]
    return {
        "rows": [*rows, [say("SHA-256 of the attached test.json"), content.data_digest()]],
        "note": say("The test and the result are attached to this PDF as JSON: the result can be made anew from them."),
    }


def _run_deviations(run: RunContent, of_run: str, display: Display, language: Language) -> list[str]:
    say, items = language.say, []
    for check in run.result.checks:
        if check.ok is False:
            found = "" if check.value is None else say(" (found {value})", value=check_value(check, display))
            text = printable(language.said(check.text))
            items.append(say("Not met{of_run}: {text}{found}.", of_run=of_run, text=text, found=found))
    for row in run.rows:
        if row.struck_reason is not None:
            target = BLANK if row.target_pa is None else format_with_unit(row.target_pa, Quantity.PRESSURE, display, 0)
            reason = printable(language.said(row.struck_reason, wording.REASONS))
            items.append(say("Point struck{of_run}: {target}, {reason}.", of_run=of_run, target=target, reason=reason))
    for name, old in dict.fromkeys(pair for row in run.rows for pair in row.read_with):
        targets = [row.target_pa for row in run.rows if (name, old) in row.read_with and row.target_pa is not None]
        items.append(
            say(
                "Worked out{of_run} with flow range {name}, where {old} had been entered: {targets} Pa.",
                of_run=of_run,
                name=printable(name),
                old=printable(old),
                targets="; ".join(format_value(target, Quantity.PRESSURE, display, 0) for target in targets),
            )
        )
    return items


def _noticed(content: ReportContent) -> list[str]:
    """Return what the program noticed during the test, each thing once."""
    language, say = content.language, content.language.say
    # Each kind has its line; what of a kind was said with other figures comes after, as far as there is room.
    first = {flag.id: flag for flag in reversed(content.flags)}
    ordered = sorted(content.flags, key=lambda flag: first[flag.id] is not flag)
    sentences = list(dict.fromkeys(printable(language.said(flag.sentence)) for flag in ordered))
    kinds = min(len(first), len(sentences))
    shown = [say("Noticed: {sentence}", sentence=sentence) for sentence in sentences[: max(kinds, _MOST_NOTICED)]]
    more = len(sentences) - len(shown)
    return [*shown, say("Noticed: {count} further things, all in the job file.", count=more)] if more > 0 else shown


def _missing(content: ReportContent) -> list[str]:
    building = content.test.building
    known = {
        "site": content.details.site,
        "client": content.details.client,
        "tester": content.details.tester,
        "volume": building.volume_m3,
        "envelope area": building.envelope_area_m2,
        "floor area": building.floor_area_m2,
        "height": building.height_m,
        "wind": content.runs[0].run.air.wind_m_s,
        "rig": content.rig,
    }
    return [content.language.say(name) for name, value in known.items() if value is None or value == ""]
