"""What a job holds, in memory: visible at once to everybody, while the writer brings it to the file."""

from __future__ import annotations

import threading
from collections.abc import Sequence
from dataclasses import asdict, dataclass, field, replace
from datetime import datetime

from acquisition.fitted import Corrected, RangeChange
from acquisition.job.encoding import document_text, utc_text
from acquisition.job.records import (
    AnswerRecord,
    BuildingVersion,
    Edit,
    Ending,
    JobDetails,
    MarkRecord,
    RecordState,
    RunRecord,
    TestRecord,
)
from acquisition.job.writer import SqlValue, Writer
from acquisition.plan import TestPlan
from acquisition.rig import FLOW_ELEMENTS, FLOWS, INDOORS, OUTDOORS, TAPS, ZONES, RigSpec, Role
from acquisition.series import WindowRecord
from acquisition.snapshot import Flag
from acquisition.stages import Stages
from acquisition.version import PROGRAM_VERSION
from analysis.records import Air, Direction

UNITS = {
    **dict.fromkeys((*TAPS, *ZONES), "Pa"),
    **dict.fromkeys(FLOW_ELEMENTS, "Pa"),
    **dict.fromkeys(FLOWS, "m3/h"),
    **dict.fromkeys((*INDOORS, *OUTDOORS), "°C"),
    Role.BAROMETER: "Pa",
}

ReadingRow = tuple[int, int, int, float | None, float, str, int]
"""Series id, t_ns, utc_ns, value, round trip, quality, sequence."""


@dataclass(slots=True)
class Contents:
    """The parts of a job that are kept in memory; readings are not."""

    details: JobDetails
    buildings: list[BuildingVersion] = field(default_factory=list)
    draft: TestPlan | None = None
    stages: Stages = ()
    edits: list[Edit] = field(default_factory=list)
    tests: dict[int, TestRecord] = field(default_factory=dict)
    runs: dict[int, RunRecord] = field(default_factory=dict)
    windows: int = 0
    series: int = 0


class Ledger:
    """Keeps `Contents` and the file in step. Any thread may call it; nothing here waits for the disk."""

    def __init__(self, contents: Contents, writer: Writer) -> None:
        """Take over what was read from the file."""
        self._contents = contents
        self._writer = writer
        self._lock = threading.RLock()

    @property
    def details(self) -> JobDetails:
        """Administrative data."""
        return self._contents.details

    @property
    def draft(self) -> TestPlan | None:
        """The test being prepared."""
        return self._contents.draft

    @property
    def stages(self) -> Stages:
        """What is remembered of the stages."""
        return self._contents.stages

    @property
    def buildings(self) -> tuple[BuildingVersion, ...]:
        """All versions of the building, oldest first."""
        with self._lock:
            return tuple(self._contents.buildings)

    @property
    def edits(self) -> tuple[Edit, ...]:
        """The edit log, oldest first."""
        with self._lock:
            return tuple(self._contents.edits)

    @property
    def tests(self) -> tuple[TestRecord, ...]:
        """All tests, oldest first."""
        with self._lock:
            return tuple(self._contents.tests.values())

    @property
    def runs(self) -> tuple[RunRecord, ...]:
        """All runs of all tests, oldest first."""
        with self._lock:
            return tuple(self._contents.runs.values())

    def edit_details(self, details: JobDetails, utc: datetime) -> None:
        """Replace the administrative data and log each field that changes."""
        with self._lock:
            old, new = asdict(self._contents.details), asdict(details)
            for name in (name for name in new if new[name] != old[name]):
                self._post("INSERT OR REPLACE INTO details VALUES (?, ?)", (name, new[name]))
                self.log(Edit(utc, "details", name, old[name], new[name]))
            self._contents.details = details

    def log(self, edit: Edit) -> None:
        """Add to the edit log."""
        with self._lock:
            self._contents.edits.append(edit)
            row = (utc_text(edit.utc), edit.subject, edit.field, edit.old, edit.new)
            self._post("INSERT INTO edit (utc, subject, field, old, new) VALUES (?, ?, ?, ?, ?)", row)

    def add_building(self, version: BuildingVersion) -> None:
        """Add a version of the building."""
        with self._lock:
            self._contents.buildings.append(version)
            b = version.building
            row = (utc_text(version.utc), version.reason, b.name, b.volume_m3, b.envelope_area_m2, b.floor_area_m2)
            self._post(
                "INSERT INTO building_version (utc, reason, name, volume_m3, envelope_area_m2, floor_area_m2, height_m,"
                " altitude_m) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                (*row, b.height_m, b.altitude_m),
            )

    def set_draft(self, plan: TestPlan) -> None:
        """Replace the test being prepared."""
        text = document_text(plan)
        with self._lock:
            self._contents.draft = plan
            self._post("INSERT OR REPLACE INTO draft (id, plan) VALUES (1, ?)", (text,))

    def set_stages(self, stages: Stages) -> None:
        """Replace what is remembered of the stages."""
        with self._lock:
            known = {item.stage: item for item in self._contents.stages}
            self._contents.stages = stages
            for item in stages:
                if known.pop(item.stage, None) != item:
                    row = (item.stage, document_text(item))
                    # The row stays where it is: the order of the stages is that in which they were first met.
                    self._post(
                        "INSERT INTO stage_goals VALUES (?, ?)"
                        " ON CONFLICT (stage) DO UPDATE SET document = excluded.document",
                        row,
                    )
            for gone in known:
                self._post("DELETE FROM stage_goals WHERE stage = ?", (gone,))

    def begin_test(self, plan: TestPlan, rig: RigSpec, utc: datetime) -> TestRecord:
        """Add a test that is being recorded."""
        plan_text, rig_text = document_text(plan), document_text(rig)
        with self._lock:
            number = max(self._contents.tests, default=0) + 1
            record = TestRecord(number, utc, PROGRAM_VERSION, plan, rig, RecordState.RECORDING)
            self._contents.tests[number] = record
            row = (number, utc_text(utc), PROGRAM_VERSION, plan_text, rig_text, RecordState.RECORDING.value)
            self._post(
                "INSERT INTO test (id, started_utc, program, plan, rig, state) VALUES (?, ?, ?, ?, ?, ?)",
                row,
                urgent=True,
            )
            return record

    def resume_test(self, test_id: int, utc: datetime) -> TestRecord:
        """Take up a test again that was cut short, and say so in the log."""
        with self._lock:
            earlier = self._contents.tests[test_id]
            record = replace(earlier, state=RecordState.RECORDING, ended=None)
            self._contents.tests[test_id] = record
            row = (RecordState.RECORDING.value, test_id)
            self._post("UPDATE test SET state = ?, ended_utc = NULL WHERE id = ?", row, urgent=True)
            self.log(Edit(utc, f"test {test_id}", "state", earlier.state, RecordState.RECORDING))
            return record

    def end_test(self, test_id: int, state: Ending, utc: datetime) -> None:
        """Give a test its end."""
        with self._lock:
            record = self._contents.tests[test_id]
            self._contents.tests[test_id] = replace(record, state=RecordState(state), ended=utc)
            row = (state, utc_text(utc), test_id)
            self._post("UPDATE test SET state = ?, ended_utc = ? WHERE id = ?", row, urgent=True)

    def add_result(self, test_id: int, document: str, gap: str, utc: datetime) -> None:
        """Store a result, or why there is none."""
        with self._lock:
            record = self._contents.tests[test_id]
            self._contents.tests[test_id] = replace(record, result_json=document, result_gap=gap)
            row = (test_id, utc_text(utc), PROGRAM_VERSION, document or None, gap)
            self._post(
                "INSERT INTO result (test, utc, program, document, gap) VALUES (?, ?, ?, ?, ?)", row, urgent=True
            )

    def begin_run(
        self, test_id: int, direction: Direction, air: Air, utc: datetime, now_ns: int, continues: int | None = None
    ) -> RunRecord:
        """Add a run that is being recorded, or that goes on with an earlier one."""
        air_text = document_text(air)
        with self._lock:
            number = max(self._contents.runs, default=0) + 1
            state = RecordState.RECORDING
            record = RunRecord(number, test_id, direction, air, utc, now_ns, state, continues=continues)
            self._contents.runs[number] = record
            row = (number, test_id, direction.value, air_text, utc_text(utc), now_ns, RecordState.RECORDING.value)
            self._post(
                "INSERT INTO run (id, test, direction, air, started_utc, started_ns, state)"
                " VALUES (?, ?, ?, ?, ?, ?, ?)",
                row,
                urgent=True,
            )
            if continues is not None:
                self._post("INSERT INTO continuation VALUES (?, ?)", (number, continues), urgent=True)
            return record

    def digest_of(self, run_id: int | None) -> str:
        """Return the digest of a run, empty without one."""
        with self._lock:
            return "" if run_id is None else self._contents.runs[run_id].digest

    def add_range_change(self, run_id: int, change: RangeChange) -> None:
        """Add a flow range that is fitted from now on."""
        row = (run_id, change.t_ns, change.fan, document_text(change.flow_range))
        sql = "INSERT INTO range_change (run, t_ns, fan, flow_range) VALUES (?, ?, ?, ?)"
        self._post(sql, row, urgent=True)

    def end_run(self, run_id: int, state: Ending, utc: datetime, now_ns: int, digest: str) -> None:
        """Give a run its end and its digest."""
        with self._lock:
            record = self._contents.runs[run_id]
            self._contents.runs[run_id] = replace(
                record, state=RecordState(state), ended=utc, ended_ns=now_ns, digest=digest
            )
            row = (state, utc_text(utc), now_ns, digest, run_id)
            self._post(
                "UPDATE run SET state = ?, ended_utc = ?, ended_ns = ?, digest = ? WHERE id = ?", row, urgent=True
            )

    def add_series(self, run_id: int, role: Role, channel: str) -> int:
        """Add a series of readings and return its id."""
        with self._lock:
            self._contents.series += 1
            row = (self._contents.series, run_id, role.value, channel, UNITS[role])
            self._post("INSERT INTO series (id, run, role, channel, unit) VALUES (?, ?, ?, ?, ?)", row)
            return self._contents.series

    def add_readings(self, rows: Sequence[ReadingRow]) -> None:
        """Add readings."""
        self._writer.post(
            "INSERT INTO reading (series, t_ns, utc_ns, value, round_trip_s, quality, sequence)"
            " VALUES (?, ?, ?, ?, ?, ?, ?)",
            rows,
        )

    def add_fan(self, run_id: int, now_ns: int, fraction: float) -> None:
        """Add a fan command."""
        self._post("INSERT INTO fan (run, t_ns, fraction) VALUES (?, ?, ?)", (run_id, now_ns, fraction))

    def add_window(self, run_id: int, window: WindowRecord) -> int:
        """Add an averaging window and return its id in the file."""
        with self._lock:
            self._contents.windows += 1
            number = self._contents.windows
            row = (number, run_id, window.id, window.kind.value, window.start_ns, window.end_ns, window.target_pa)
            self._post(
                "INSERT INTO averaging_window (id, run, number, kind, start_ns, end_ns, target_pa)"
                " VALUES (?, ?, ?, ?, ?, ?, ?)",
                row,
                urgent=True,
            )
            return number

    def add_strike(self, window: int, utc: datetime, reason: str, *, struck: bool) -> None:
        """Strike a window, or put it back."""
        row = (window, utc_text(utc), "strike" if struck else "restore", reason)
        self._post("INSERT INTO strike (averaging_window, utc, action, reason) VALUES (?, ?, ?, ?)", row, urgent=True)

    def add_correction(self, window: int, utc: datetime, fan: int, right: Corrected | None) -> None:
        """Correct the flow range of a fan in a window, or take it as it was entered again."""
        row = (window, utc_text(utc), fan, None if right is None else document_text(right.flow_range))
        sql = "INSERT INTO range_correction (averaging_window, utc, fan, flow_range) VALUES (?, ?, ?, ?)"
        self._post(sql, row, urgent=True)

    def add_mark(self, test_id: int, run_id: int | None, mark: MarkRecord) -> None:
        """Add a remark."""
        row = (test_id, run_id, mark.t_ns, utc_text(mark.utc), mark.kind, mark.text)
        self._post("INSERT INTO mark (test, run, t_ns, utc, kind, text) VALUES (?, ?, ?, ?, ?, ?)", row)

    def add_flag(self, test_id: int, run_id: int | None, flag: Flag) -> None:
        """Add a flag."""
        row = (test_id, run_id, utc_text(flag.utc), flag.id, flag.severity.value, flag.sentence)
        self._post("INSERT INTO flag (test, run, utc, flag, severity, sentence) VALUES (?, ?, ?, ?, ?, ?)", row)

    def add_answer(self, test_id: int, run_id: int | None, answer: AnswerRecord) -> None:
        """Add an answer."""
        row = (test_id, run_id, answer.t_ns, utc_text(answer.utc), answer.ask_id, answer.text, answer.choice)
        self._post("INSERT INTO answer (test, run, t_ns, utc, ask, text, choice) VALUES (?, ?, ?, ?, ?, ?, ?)", row)

    def seal_interrupted(self, run_id: int, digest: str, utc: datetime) -> None:
        """Close a run that a crash left open, with the digest of what is there, and say so in the log."""
        with self._lock:
            record = self._contents.runs[run_id]
            self._contents.runs[run_id] = replace(record, state=RecordState.INTERRUPTED, digest=digest)
            self._post(
                "UPDATE run SET state = ?, digest = ? WHERE id = ?", (RecordState.INTERRUPTED.value, digest, run_id)
            )
            self.log(Edit(utc, f"run {run_id}", "state", RecordState.RECORDING, RecordState.INTERRUPTED))

    def interrupt_test(self, test_id: int, utc: datetime) -> None:
        """Mark a test that a crash left open."""
        with self._lock:
            record = self._contents.tests[test_id]
            self._contents.tests[test_id] = replace(record, state=RecordState.INTERRUPTED)
            self._post("UPDATE test SET state = ? WHERE id = ?", (RecordState.INTERRUPTED.value, test_id))
            self.log(Edit(utc, f"test {test_id}", "state", RecordState.RECORDING, RecordState.INTERRUPTED))

    def _post(self, sql: str, row: Sequence[SqlValue], *, urgent: bool = False) -> None:
        self._writer.post(sql, (row,), urgent=urgent)
