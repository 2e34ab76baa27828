"""Reading a job file back: its small parts into memory at opening, a test with all its readings when asked for."""

from __future__ import annotations

import math
import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass, fields, replace

from acquisition.fitted import Corrected, RangeChange
from acquisition.job.digest import RunDigest, digest_inputs
from acquisition.job.encoding import air_from, plan_from, range_from, rig_from, utc_from
from acquisition.job.ledger import Contents
from acquisition.job.pieces import joined_all
from acquisition.job.records import (
    AnswerRecord,
    BuildingVersion,
    Edit,
    FanRecord,
    JobDetails,
    LoadedRun,
    LoadedTest,
    MarkRecord,
    RecordState,
    RunRecord,
    StrikeRecord,
    TestRecord,
)
from acquisition.rig import RigSpec, Role
from acquisition.series import RunData, WindowRecord
from acquisition.snapshot import Flag, Severity
from acquisition.stages import goals_from
from acquisition.steps import WindowKind
from analysis.records import Building, Direction
from drivers.reading import Quality


@dataclass(frozen=True, slots=True)
class StoredReading:
    """A reading as it stands in the file; `value` is None where the instrument gave no number."""

    role: Role
    channel: str
    t_ns: int
    utc_ns: int
    value: float | None
    round_trip_s: float
    quality: Quality
    sequence: int


def read_contents(db: sqlite3.Connection) -> Contents:
    """Read everything but readings; raises `InvalidInput` or `sqlite3.Error`."""
    stored = dict(db.execute("SELECT field, value FROM details"))
    known = {field.name for field in fields(JobDetails)}
    draft = db.execute("SELECT plan FROM draft").fetchone()
    return Contents(
        details=JobDetails(**{name: value for name, value in stored.items() if name in known}),
        buildings=[
            BuildingVersion(utc_from(utc), reason, Building(*rest))
            for utc, reason, *rest in db.execute(
                "SELECT utc, reason, name, volume_m3, envelope_area_m2, floor_area_m2, height_m, altitude_m"
                " FROM building_version ORDER BY id"
            )
        ],
        draft=None if draft is None else plan_from(draft[0]),
        stages=tuple(goals_from(text) for (text,) in db.execute("SELECT document FROM stage_goals ORDER BY rowid")),
        edits=[
            Edit(utc_from(utc), *rest)
            for utc, *rest in db.execute("SELECT utc, subject, field, old, new FROM edit ORDER BY id")
        ],
        tests={record.id: record for record in _tests(db)},
        runs={record.id: record for record in _runs(db)},
        windows=db.execute("SELECT coalesce(max(id), 0) FROM averaging_window").fetchone()[0],
        series=db.execute("SELECT coalesce(max(id), 0) FROM series").fetchone()[0],
    )


def read_test(db: sqlite3.Connection, record: TestRecord) -> LoadedTest:
    """Read a test with its readings; raises `sqlite3.Error`."""
    test = (record.id,)
    strikes = tuple(
        StrikeRecord(number, utc_from(utc), action == "strike", reason)
        for number, utc, action, reason in db.execute(
            "SELECT span.number, strike.utc, strike.action, strike.reason FROM strike"
            " JOIN averaging_window AS span ON span.id = strike.averaging_window JOIN run ON run.id = span.run"
            " WHERE run.test = ? ORDER BY strike.id",
            test,
        )
    )
    return LoadedTest(
        record=record,
        runs=joined_all([_load_run(db, run, strikes, record.rig) for run in _runs(db) if run.test_id == record.id]),
        marks=tuple(
            MarkRecord(t_ns, utc_from(utc), kind, text)
            for t_ns, utc, kind, text in db.execute(
                "SELECT t_ns, utc, kind, text FROM mark WHERE test = ? ORDER BY id", test
            )
        ),
        flags=tuple(
            Flag(flag, Severity(severity), sentence, utc_from(utc))
            for flag, severity, sentence, utc in db.execute(
                "SELECT flag, severity, sentence, utc FROM flag WHERE test = ? ORDER BY id", test
            )
        ),
        answers=tuple(
            AnswerRecord(t_ns, utc_from(utc), ask, text, choice)
            for t_ns, utc, ask, text, choice in db.execute(
                "SELECT t_ns, utc, ask, text, choice FROM answer WHERE test = ? ORDER BY id", test
            )
        ),
        strikes=strikes,
    )


def read_readings(db: sqlite3.Connection, run_id: int) -> Iterator[StoredReading]:
    """Yield the readings of a run in the order in which they came."""
    rows = db.execute(
        "SELECT series.role, series.channel, t_ns, utc_ns, value, round_trip_s, quality, sequence FROM reading"
        " JOIN series ON series.id = reading.series WHERE series.run = ? ORDER BY reading.id",
        (run_id,),
    )
    for role, channel, t_ns, utc_ns, value, round_trip_s, quality, sequence in rows:
        yield StoredReading(Role(role), channel, t_ns, utc_ns, value, round_trip_s, Quality(quality), sequence)


def compute_digest(db: sqlite3.Connection, run: RunRecord) -> str:
    """Return the digest of a run from what the file holds."""
    digest = RunDigest()
    for item in read_readings(db, run.id):
        rest = (item.round_trip_s, item.quality.value, item.sequence)
        digest.reading(item.role.value, item.channel, item.t_ns, item.utc_ns, item.value, *rest)
    plan_text, rig_text, air_text = db.execute(
        "SELECT test.plan, test.rig, run.air FROM run JOIN test ON test.id = run.test WHERE run.id = ?", (run.id,)
    ).fetchone()
    earlier = db.execute("SELECT coalesce(digest, '') FROM run WHERE id = ?", (run.continues,)).fetchone()
    inputs = digest_inputs(run, plan_text, rig_text, air_text, "" if earlier is None else earlier[0])
    return digest.finish(_fan(db, run.id), _windows(db, run.id), inputs, _changes(db, run.id))


def _tests(db: sqlite3.Connection) -> Iterator[TestRecord]:
    rows = db.execute(
        "SELECT test.id, started_utc, test.program, plan, rig, state, ended_utc, coalesce(document, ''),"
        " coalesce(gap, '') FROM test LEFT JOIN result"
        " ON result.id = (SELECT max(id) FROM result WHERE result.test = test.id) ORDER BY test.id"
    )
    for number, started, program, plan, rig, state, ended, document, gap in rows:
        yield TestRecord(
            id=number,
            started=utc_from(started),
            program=program,
            plan=plan_from(plan),
            rig=rig_from(rig),
            state=RecordState(state),
            ended=None if ended is None else utc_from(ended),
            result_json=document,
            result_gap=gap,
        )


def _runs(db: sqlite3.Connection) -> Iterator[RunRecord]:
    rows = db.execute(
        "SELECT id, test, direction, air, started_utc, started_ns, state, ended_utc, ended_ns, coalesce(digest, ''),"
        " earlier FROM run LEFT JOIN continuation ON continuation.run = run.id ORDER BY id"
    )
    for number, test, direction, air, started, started_ns, state, ended, ended_ns, digest, earlier in rows.fetchall():
        yield RunRecord(
            id=number,
            test_id=test,
            direction=Direction(direction),
            air=air_from(air),
            started=utc_from(started),
            started_ns=started_ns,
            state=RecordState(state),
            ended=None if ended is None else utc_from(ended),
            ended_ns=ended_ns,
            digest=digest,
            continues=earlier,
        )


def _load_run(db: sqlite3.Connection, run: RunRecord, strikes: tuple[StrikeRecord, ...], rig: RigSpec) -> LoadedRun:
    data, corrections = RunData(), rig.corrections_by_channel()
    rows = db.execute(
        "SELECT role, channel, t_ns, value, quality = ? FROM reading JOIN series ON series.id = reading.series"
        " WHERE series.run = ? ORDER BY reading.id",
        (Quality.GOOD.value, run.id),
    )
    roles = {role.value: role for role in Role}
    for role, channel, t_ns, shown, good in rows:
        value = math.nan if shown is None else shown
        if channel in corrections:
            value = corrections[channel].true_pa(value)
        data.append_value(roles[role], t_ns, value, bool(good))
    # The newest judgement of each window holds.
    reasons = {strike.window_id: strike.reason if strike.struck else None for strike in strikes}
    corrected = _corrected(db, run.id)
    windows = tuple(
        replace(item, struck_reason=reasons.get(item.id), corrected=corrected.get(item.id, ()))
        for item in _windows(db, run.id)
    )
    fan = tuple(_fan(db, run.id))
    for told in fan:
        data.drive(told.t_ns, told.fraction)
    return LoadedRun(run, data, windows, fan, tuple(_changes(db, run.id)))


def _windows(db: sqlite3.Connection, run_id: int) -> Iterator[WindowRecord]:
    rows = db.execute(
        "SELECT number, kind, start_ns, end_ns, target_pa FROM averaging_window WHERE run = ? ORDER BY id", (run_id,)
    )
    for number, kind, start_ns, end_ns, target_pa in rows:
        yield WindowRecord(number, WindowKind(kind), start_ns, end_ns, target_pa)


def _corrected(db: sqlite3.Connection, run_id: int) -> dict[int, tuple[Corrected, ...]]:
    """Return the ranges that windows were read with, by their numbers; the newest of each window and fan holds."""
    rows = db.execute(
        "SELECT span.number, fan, flow_range FROM range_correction AS item"
        " JOIN averaging_window AS span ON span.id = item.averaging_window WHERE span.run = ? ORDER BY item.id",
        (run_id,),
    )
    newest: dict[int, dict[int, Corrected | None]] = {}
    for number, fan, flow_range in rows:
        right = None if flow_range is None else Corrected(fan, range_from(flow_range))
        newest.setdefault(number, {})[fan] = right
    return {number: tuple(item for item in fans.values() if item is not None) for number, fans in newest.items()}


def _changes(db: sqlite3.Connection, run_id: int) -> Iterator[RangeChange]:
    rows = db.execute("SELECT t_ns, fan, flow_range FROM range_change WHERE run = ? ORDER BY id", (run_id,))
    for t_ns, fan, flow_range in rows:
        yield RangeChange(t_ns, fan, range_from(flow_range))


def _fan(db: sqlite3.Connection, run_id: int) -> Iterator[FanRecord]:
    for t_ns, fraction in db.execute("SELECT t_ns, fraction FROM fan WHERE run = ? ORDER BY id", (run_id,)):
        yield FanRecord(t_ns, fraction)
