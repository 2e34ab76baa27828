"""What the report admits and what it proves: deviations, gaps, digests."""

from __future__ import annotations

from acquisition.regimes import AFTER_STEP, BEFORE_STEP, regimes_sentence, regimes_through
from acquisition.register import DueState, due_of_rig, in_use
from acquisition.report import wording
from acquisition.report.content import ReportContent, RunContent
from acquisition.report.names import BLANK, Json, check_value
from acquisition.report.typeface import printable
from analysis.methods import method_of
from analysis.units import Display, Quantity, format_with_unit

_MOST_NOTICED = 5


def deviations(content: ReportContent, display: Display) -> list[str]:
    """Return a sentence for everything that departs from the method or is not known."""
    items = [wording.STATES[content.state.value]] if content.state.value in wording.STATES else []
    if content.typed:
        items.append(wording.TYPED_GAP)
    if len(content.runs) == 1:
        items.append(f"Measured in one direction only ({content.runs[0].run.direction}).")
    for run in content.runs:
        items += _run_deviations(run, f" ({run.run.direction})" if len(content.runs) > 1 else "", display)
    items += _regimes(content, display)
    items += _overdue(content)
    if any(check.ok is None for run in content.runs for check in run.result.checks):
        items.append("Not checked: what is marked with a question mark in the list of checks.")
    items += [printable(sentence) for sentence in content.setup]
    items += _noticed(content)
    if missing := _missing(content):
        items.append(f"Not recorded: {', '.join(missing)}.")
    if unseen := method_of(content.result.method).not_in_record:
        items.append(f"Not in the record of readings: {'; '.join(unseen)}.")
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
            items.append(printable(regimes_sentence(found, run.run.direction, display)))
    return items


def _overdue(content: ReportContent) -> list[str]:
    """Return the calibrations that had run out on the day of the test."""
    if content.rig is None or content.started is None:
        return []
    found = due_of_rig(in_use(content.rig), content.started.astimezone().date())
    return [printable(status.sentence) for status in found if status.state is DueState.OVERDUE]


def proof(content: ReportContent) -> Json:
    """Return the digests."""
    rows = [[f"SHA-256 of readings and inputs, {run.run.direction}", run.digest] for run in content.runs if run.digest]
    return {
        "rows": [*rows, ["SHA-256 of the attached test.json", content.data_digest()]],
        "note": "The test and the result are attached to this PDF as JSON: the result can be made anew from them.",
    }


def _run_deviations(run: RunContent, name: str, display: Display) -> list[str]:
    items = []
    for check in run.result.checks:
        if check.ok is False:
            found = f" (found {check_value(check, display)})" if check.value is not None else ""
            items.append(f"Not met{name}: {printable(check.text)}{found}.")
    for row in run.rows:
        if row.struck_reason is not None:
            target = BLANK if row.target_pa is None else format_with_unit(row.target_pa, Quantity.PRESSURE, display, 0)
            items.append(f"Point struck{name}: {target}, {printable(row.struck_reason)}.")
    return items


def _noticed(content: ReportContent) -> list[str]:
    """Return what the program noticed during the test, each thing once."""
    sentences = list(dict.fromkeys(printable(flag.sentence) for flag in content.flags))
    shown = [f"Noticed: {sentence}" for sentence in sentences[:_MOST_NOTICED]]
    more = len(sentences) - len(shown)
    return [*shown, f"Noticed: {more} further things, all in the job file."] if more > 0 else shown


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
    return [name for name, value in known.items() if value is None or value == ""]
