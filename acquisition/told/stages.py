"""The tests of a job one after the other, and what lies between two of them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

from acquisition.job import Entry, Job, PreparationKind, TestRecord
from acquisition.job.leaks import LeakRegister, SealingMarkKind
from acquisition.job.results import analyse_record
from acquisition.sealing.leaks import Drop, LeakStatus
from acquisition.setup.record import said_of_setup
from acquisition.told.comparison import Side, comparison_tables
from acquisition.told.headline import USUAL, in_order
from acquisition.told.sealing import leak_table
from acquisition.told.table import Row, Table, Tone
from acquisition.told.texts import BLANK, interval, plus_minus
from analysis.effective import QUANTITIES, mean_flow
from analysis.errors import InvalidInput
from analysis.records import Estimate
from analysis.units import Display, Quantity, unit_symbol

TONES = {"meets": Tone.GOOD, "does not meet": Tone.BAD, "cannot tell": Tone.OPEN}
PRESSURES_PA = (10.0, 50.0)
CLOSED = (LeakStatus.SEALED, LeakStatus.VERIFIED)
OPEN_AGAIN = "in the list it is open again now"
NO_TESTS = "No test of this job has a result yet."


@dataclass(frozen=True, slots=True)
class StageTest:
    """A test of the job with its result, as stored, and the verdict on its target.

    The intervals of the rates hold everything that makes them uncertain, where that was worked out.
    """

    record: TestRecord
    rates: Mapping[str, Estimate]
    """What the building allows of the quantities there are, by their ids."""
    target: tuple[str, float] | None
    verdict: str

    @property
    def q50_m3_h(self) -> Estimate:
        """The flow at 50 Pa."""
        return self.rates["q50_m3_h"]

    @property
    def title(self) -> str:
        """What it is called in a list."""
        stage = self.record.plan.stage or "no stage"
        return f"Test {self.record.id}, {self.record.started.astimezone():%d.%m.%Y}, {stage}"


def stage_tests(records: Iterable[TestRecord]) -> tuple[StageTest, ...]:
    """Return the tests that have a result, oldest first; held pressures are none."""
    return tuple(_read(record) for record in records if record.result_json and not record.plan.hold)


def in_front(tests: Sequence[StageTest]) -> tuple[str, str]:
    """Return the two quantities that tests side by side are told by: those of their method, the usual ones of several.

    What no test has is left out.
    """
    methods = {test.record.plan.method for test in tests}
    order = in_order(methods.pop()) if len(methods) == 1 else USUAL
    first, second = [name for name in order if name in USUAL[:2] or any(name in test.rates for test in tests)][:2]
    return first, second


def site_note(test: int, text: str, utc: datetime, who: str = "") -> Entry:
    """Return the entry that says what changed on site before a test. Raises `InvalidInput` for an empty one."""
    words = " ".join(text.split())
    if not words:
        raise InvalidInput("note", text, "say what changed on site since the test before", shown="empty")
    return Entry(utc, PreparationKind.SITE, str(test), words, who)


def site_notes(entries: Iterable[Entry]) -> Mapping[int, str]:
    """Return what changed on site, by the number of the test before which it did."""
    return {int(entry.subject): entry.state for entry in entries if entry.kind is PreparationKind.SITE}


def stage_table(tests: Sequence[StageTest], notes: Mapping[int, str], display: Display) -> Table:
    """Return all tests against their targets."""
    shown = [QUANTITIES[name] for name in in_front(tests)]
    rows = []
    for test in tests:
        note = notes.get(test.record.id, "")
        ways = " and ".join(item.value for item in test.record.plan.directions)
        said = [ways, f"on site: {note}" if note else ""]
        cells = (
            test.title,
            *(plus_minus(test.rates.get(item.id), item.kind, display) for item in shown),
            BLANK if test.target is None else f"{test.target[1]:g}".replace(".", display.decimal_mark),
            test.verdict or BLANK,
        )
        rows.append(Row(cells, "; ".join(item for item in said if item), TONES.get(test.verdict, Tone.PLAIN)))
    heads = ("", *(f"{item.symbol}, {unit_symbol(item.kind, display)}" for item in shown), "Target", "Verdict")
    return Table("Stages", heads, tuple(rows), (), NO_TESTS)


def between_tables(job: Job, before: int, after: int, display: Display) -> tuple[Table, ...]:
    """Return the change between two tests, what else differs, and the leaks between. Raises `InvalidInput`."""
    one, other = (_side(job, number) for number in (before, after))
    same = one.conditions[1] == other.conditions[1]
    tables = comparison_tables(one, other, display, same_instruments=same)
    records = {record.id: record for record in job.tests()}
    begin, end = records[before].started, records[after].started
    closed = _closed(job.leaks, begin, end, one, other, display)
    return (*tables, _pressures(one, other, display), closed, _found(job.leaks, begin, end, display))


def marked_between(register: LeakRegister, kind: SealingMarkKind, begin: datetime, end: datetime) -> tuple[int, ...]:
    """Return the listed leaks that have a mark of a kind after one moment and not after another."""
    marked = {mark.leak for mark in register.marks if mark.kind is kind and begin < mark.utc <= end}
    return tuple(number for number in register.leaks if number in marked)


def _read(record: TestRecord) -> StageTest:
    document: dict[str, Any] = json.loads(record.result_json)
    means, totals = document["mean"], {item["quantity"]: item["total"] for item in document.get("budgets") or ()}

    known = {name: mean for name, mean in {**totals, **means}.items() if mean}
    verdicts = document.get("verdicts") or ()
    first = verdicts[0] if verdicts else None
    return StageTest(
        record,
        {name: _estimate({**mean, **totals.get(name, {})}) for name, mean in known.items()},
        None if first is None else (str(first["quantity"]), float(first["value"])),
        "" if first is None else str(first["verdict"]),
    )


def _estimate(document: Mapping[str, Any]) -> Estimate:
    value = float(document["value"])
    low, high = document.get("low"), document.get("high")
    return Estimate(value, value if low is None else float(low), value if high is None else float(high))


def _side(job: Job, number: int) -> Side:
    loaded = job.load(number)
    record, test = loaded.record, loaded.test()
    plan = record.plan
    conditions = (
        ("Method", plan.method),
        ("Rig", record.rig.name),
        ("Set-up", " ".join(said_of_setup(plan, job.house.entries, record.started))),
        ("Highest pressure allowed", "" if plan.cap_pa is None else f"{plan.cap_pa:g} Pa"),
    )
    return Side(f"Test {number}", test, analyse_record(record, test), conditions)


def _pressures(before: Side, after: Side, display: Display) -> Table:
    """Return the flow at a low and at the usual pressure: a change of one kind of leak moves them differently."""
    unit = unit_symbol(Quantity.FLOW, display)
    rows = []
    for pressure in PRESSURES_PA:
        values = [_flow(side, pressure) for side in (before, after)]
        cells = tuple(plus_minus(value, Quantity.FLOW, display) for value in values)
        rows.append(Row((f"At {pressure:g} Pa, {unit}", *cells)))
    return Table("The curves", ("", before.title, after.title), tuple(rows))


def _flow(side: Side, pressure_pa: float) -> Estimate:
    lines = [line for run in side.result.runs if (line := run.reference_line) is not None]
    return mean_flow(lines, pressure_pa).estimate


def _closed(
    register: LeakRegister, begin: datetime, end: datetime, before: Side, after: Side, display: Display
) -> Table:
    """Return the leaks that were closed between, and what of the change they do not explain."""
    unit = unit_symbol(Quantity.FLOW, display)
    leaks, drops = register.leaks, register.drops
    numbers = marked_between(register, SealingMarkKind.DONE, begin, end)
    rows = []
    told: list[Drop] = []
    for number in numbers:
        drop = drops.get(number)
        brought = BLANK if drop is None else plus_minus(drop.difference_m3_h, Quantity.FLOW, display)
        between = BLANK if drop is None else interval(drop.difference_m3_h, Quantity.FLOW, display)
        known = () if drop is None else (f"{drop.sureness}, at {drop.reference_pa:g} Pa",)
        still = leaks[number].status in CLOSED
        note = "; ".join((*known, *(() if still else (OPEN_AGAIN,))))
        rows.append(Row((f"{number} {leaks[number].place}", brought, between), note, Tone.GOOD if still else Tone.OPEN))
        if drop is not None:
            told.append(drop)
    if told:
        rows += _explained(told, before, after, display)
    heads = ("", f"Brought, {unit}", "95 % interval")
    return Table("Leaks closed between", heads, tuple(rows), (), "No seal was marked between these two tests.")


def _found(register: LeakRegister, begin: datetime, end: datetime, display: Display) -> Table:
    """Return the leaks that were added to the list between."""
    numbers = marked_between(register, SealingMarkKind.NEW_LEAK, begin, end)
    table = leak_table({number: register.leaks[number] for number in numbers}, register.drops, display)
    return replace(table, title="Leaks found between", empty="No leak was added to the list between these two tests.")


def _explained(drops: Sequence[Drop], before: Side, after: Side, display: Display) -> list[Row]:
    seals = sum(drop.difference_m3_h.value for drop in drops)
    half = sum(((drop.difference_m3_h.high - drop.difference_m3_h.low) / 2) ** 2 for drop in drops) ** 0.5
    one, other = _flow(before, 50.0), _flow(after, 50.0)
    change = other.value - one.value
    wide = (((one.high - one.low) / 2) ** 2 + ((other.high - other.low) / 2) ** 2 + half**2) ** 0.5
    rest = Estimate(change - seals, change - seals - wide, change - seals + wide)
    worse, better = rest.low > 0.0, rest.high < 0.0
    words = (
        "Something got worse between: a seal came off, or something new leaks."
        if worse
        else "More went than the marked seals brought."
        if better
        else "The seals explain the change."
    )
    total = Estimate(seals, seals - half, seals + half)
    return [
        Row(("All of them", plus_minus(total, Quantity.FLOW, display), interval(total, Quantity.FLOW, display))),
        Row(
            ("Change that they do not explain", plus_minus(rest, Quantity.FLOW, display),
             interval(rest, Quantity.FLOW, display)),
            words,
            Tone.BAD if worse else Tone.PLAIN,
        ),
    ]  # fmt: skip
