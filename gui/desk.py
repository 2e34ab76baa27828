"""What lies on the desk: the open job, the connected rig, the engine that runs on it. Knows no Qt.

Every command returns at once. What goes wrong becomes a notice, one sentence for the person at the screen.
"""

from __future__ import annotations

import logging
from collections import deque
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path

from acquisition.engine import Engine
from acquisition.geometry import Geometry, applied
from acquisition.holding import direction_of, held_plan
from acquisition.job import Entry, Job, PreparationKind, TestRecord
from acquisition.languages import TAGS
from acquisition.openrig import RigSource
from acquisition.plan import TestPlan
from acquisition.setup import board_of, gate_of, obeying
from acquisition.setup.board import LEFT, SET_UP
from acquisition.snapshot import EngineState, Severity, Snapshot
from analysis.errors import InvalidInput
from analysis.records import Building
from drivers.clock import Clock
from drivers.transport import TransportOpener
from gui.connection import Connection
from gui.errands import Errands
from gui.hunting import Hunting
from gui.phone_page import PhonePage
from gui.repairs import Repairs
from gui.replaying import Replaying
from gui.showing import Showing
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.moment import JobMoment, RigMoment
from gui.viewmodels.retold import retold
from gui.viewmodels.sheet import Sheet, sheet_of
from gui.words import say, spoken

log = logging.getLogger(__name__)


SAMPLE_JOB, VERSION, ISSUE = "sample job", "version of the geometry", "issue of the report"
"""Matters that are told of."""


@dataclass(frozen=True, slots=True)
class Notice:
    """Something to tell; `number` tells one from another.

    What is told about a matter takes the place of what was told about it before; without a sentence it is settled.
    """

    number: int
    severity: Severity
    sentence: str
    matter: str = ""


class Desk:
    """The state of the program behind the window."""

    def __init__(self, sources: Sequence[RigSource], clock: Clock, opener: TransportOpener, errands: Errands) -> None:
        """Begin with an empty desk on the clock of the machine."""
        self.job: Job | None = None
        self.notices: deque[Notice] = deque()
        self.job_opened = 0
        """Counts up with each job that is opened."""
        self.changed = 0
        """Counts up with everything that a snapshot of the engine does not show."""
        self._clock = clock
        self.errands = errands
        self.job_closing: Callable[[Job], None] = lambda _job: None
        """Called with each job before it is closed."""
        self._reason = ""
        self._fresh = False
        self._was_busy = False
        self._told_flags = 0
        self._told_fault: BaseException | None = None
        self._notice_number = 0
        self.phone = PhonePage(self.tell)
        self.hunting = Hunting(errands, self.tell, self._news)
        self.showing = Showing(self)
        self.repairs = Repairs(self)
        self.replaying = Replaying(self)
        self.connection = Connection(sources, clock, opener, errands, self.tell, self._rig_connected, self._rig_parted)

    # --- what is so -----------------------------------------------------------------------------------------------

    @property
    def engine(self) -> Engine | None:
        """The engine of the connected rig."""
        return self.connection.engine

    @property
    def busy(self) -> bool:
        """Whether a test is under way."""
        return self.connection.busy

    def snapshot(self) -> Snapshot | None:
        """Return the newest snapshot, None without a rig."""
        return self.engine.snapshot() if self.engine is not None else None

    def rig(self) -> RigMoment:
        """Return the rig as it is."""
        return self.connection.moment()

    def job_moment(self) -> JobMoment | None:
        """Return the job as it is."""
        job = self.job
        if job is None:
            return None
        draft, entries = job.draft(), job.house.entries
        gate = gate_of(entries, self._clock.utc())
        return JobMoment(
            path=str(job.path),
            details=job.details,
            plan=draft,
            interrupted=self.repairs.interrupted(),
            alarm=job.alarm(),
            fresh=self._fresh,
            forbidden=gate.sentence if gate.forbids else "",
            pressurize_only=gate.pressurize_only,
            cap_pa=gate.cap_pa,
            owed=board_of(draft, entries).owed,
        )

    def tests(self) -> tuple[TestRecord, ...]:
        """Return the tests of the job, oldest first."""
        return self.job.tests() if self.job is not None else ()

    def sheet(self) -> Sheet | None:
        """Return the job sheet."""
        return (
            sheet_of(self.job.details, self.job.draft(), self.job.stages, self._reason)
            if self.job is not None
            else None
        )

    def tested_building(self) -> Building | None:
        """Return the building as the last test of the job had it."""
        tests = self.tests()
        return tests[-1].plan.building if tests else None

    # --- what goes on by itself ------------------------------------------------------------------------------------

    def tend(self) -> None:
        """Look after what has ended, failed or been noticed since the last call."""
        self.errands.collect()
        engine = self.engine
        snapshot = engine.snapshot() if engine is not None else None
        self.hunting.tend(self.job, engine, self._clock, snapshot)
        if engine is None or snapshot is None:
            return
        busy = engine.busy
        self.replaying.tend(snapshot)
        if self._was_busy and not busy and snapshot.state is EngineState.IDLE:
            self._was_busy, self._fresh = False, snapshot.result is not None
            self.changed += 1
            self.replaying.ended()
        for flag in snapshot.flags[self._told_flags :]:
            if flag.severity is not Severity.NOTE:
                self.tell(flag.severity, flag.sentence)
        self._told_flags = len(snapshot.flags)
        if engine.fault is not None and engine.fault is not self._told_fault:
            self._told_fault = engine.fault
            self.tell(Severity.ALARM, snapshot.last_error or say("The test ended by a fault of the program."))

    def _news(self) -> None:
        self.changed += 1

    def tell(self, severity: Severity, sentence: str, matter: str = "") -> None:
        """Add a notice; one about a matter takes the place of the last about it."""
        self._notice_number += 1
        self.notices.append(Notice(self._notice_number, severity, sentence, matter))

    def settle(self, matter: str) -> None:
        """Take back what was told about a matter."""
        self.tell(Severity.NOTE, "", matter)

    # --- rig --------------------------------------------------------------------------------------------------------

    def _rig_connected(self, clock: Clock, source: RigSource | None) -> None:
        self._on_clock(clock)
        self._suggest(source)
        self._set_air()
        self.changed += 1

    def _rig_parted(self) -> None:
        self.showing.part()
        self._was_busy, self._told_flags = False, 0
        if self.replaying.playing:
            # What is written into the job from now on happens today, and no more at the time of the record.
            self.replaying.parted()
            fresh = self._fresh
            self._on_clock(self.connection.clock)
            self._fresh = fresh
        self.changed += 1

    def _on_clock(self, clock: Clock) -> None:
        """Keep the job on the clock that the readings are stamped with."""
        if clock is self._clock:
            return
        self._clock = clock
        if self.job is not None:
            path = self.job.path
            self._close_job()
            self.open_job(path)

    def _suggest(self, source: RigSource | None) -> None:
        """Fill a job that knows no building yet with what a simulated house is."""
        job = self.job
        if source is None or job is None or source.building is None or job.tests():
            return
        draft = job.draft()
        if draft.building.volume_m3 is not None:
            return
        building = replace(source.building, name=job.details.name)
        job.set_draft(replace(draft, building=building, air=source.air or draft.air))
        self.job_opened += 1

    def _set_air(self) -> None:
        if self.engine is not None and self.job is not None:
            self.engine.set_air(self.job.draft().air)

    # --- job --------------------------------------------------------------------------------------------------------

    def new_job(self, path: Path, name: str) -> bool:
        """Make a job and open it; its reports are in the language on the screen until another one is chosen."""
        language = spoken().value if spoken() in TAGS else ""
        return self._open(lambda: Job.create(path, self._clock, name, language))

    def open_job(self, path: Path) -> bool:
        """Open a job; the one that is open stays as it is."""
        if self.job is not None and self.job.path.resolve() == path.resolve():
            return True
        return self._open(lambda: Job.open(path, self._clock))

    def edit(self, sheet: Sheet) -> None:
        """Keep an edited job sheet."""
        job = self.job
        if job is None:
            return
        if sheet.details != job.details:
            job.edit_details(sheet.details)
        if sheet.stages != job.stages:
            job.set_stages(sheet.stages)
        if sheet.plan != job.draft():
            job.set_draft(sheet.plan)
        self._reason = sheet.reason
        self._set_air()
        self.changed += 1

    def edit_geometry(self, geometry: Geometry) -> None:
        """Keep edited rooms and surfaces; what they add up to goes onto the job sheet."""
        job = self.job
        if job is None:
            return
        job.edit_house().set_geometry(geometry)
        plan = job.draft()
        building = applied(plan.building, geometry)
        if building != plan.building:
            job.set_draft(replace(plan, building=building))
        self.changed += 1

    def keep_geometry(self, name: str, reason: str) -> bool:
        """Keep the geometry as a version; return whether it was."""
        if self.job is None:
            return False
        try:
            self.job.edit_house().keep_version(name, reason, self._clock.utc())
        except InvalidInput as error:
            self.tell(Severity.ATTENTION, sentence(error), VERSION)
            return False
        self.settle(VERSION)
        self.changed += 1
        return True

    def note(self, kind: PreparationKind, subject: str, state: str, reason: str = "", who: str = "") -> bool:
        """Keep what was done to the building, or answered about it; return whether it was."""
        job = self.job
        if job is None:
            return False
        if state == LEFT and not reason.strip():
            self.tell(Severity.ATTENTION, say("Say why it is left as it is."), SET_UP)
            return False
        if subject == SET_UP and not who.strip():
            self.tell(Severity.ATTENTION, say("The name of the second person is needed."), SET_UP)
            return False
        self.settle(SET_UP)
        by = " ".join(who.split()) or job.details.tester
        job.edit_house().note(Entry(self._clock.utc(), kind, subject, state, by, reason.strip()))
        self.changed += 1
        return True

    def add_photo(self, subject: str, path: Path) -> None:
        """Put a copy of a picture into the job."""
        if self.job is None:
            return
        try:
            self.job.edit_house().add_photo(subject, path.name, path.read_bytes(), self._clock.utc())
        except InvalidInput as error:
            self.tell(Severity.ATTENTION, sentence(error))
        except OSError as error:
            self.tell(
                Severity.ATTENTION,
                say("The picture cannot be read ({reason}): {path}.", reason=error.strerror, path=path),
            )
        self.changed += 1

    def now(self) -> datetime:
        """Return the time of day on the clock of the job."""
        return self._clock.utc()

    def now_ns(self) -> int:
        """Return the stamp that a reading of this moment would have."""
        return self._clock.now_ns()

    def choose_test(self, number: int) -> None:
        """Show another test of the job."""
        self.showing.choose(number)
        self.repairs.forget()
        self.changed += 1

    def report_opened(self) -> None:
        """Note that the report of the last test was looked at."""
        if self._fresh:
            self._fresh = False
            self.changed += 1

    def _open(self, make: Callable[[], Job]) -> bool:
        if self.busy:
            self.tell(Severity.ATTENTION, say("A test is running: end it before another job is opened."))
            return False
        try:
            job = make()
        except InvalidInput as error:
            self.tell(Severity.ATTENTION, sentence(error))
            return False
        self._remind_of_owed()
        self._close_job()
        self.job = job
        self.settle(SAMPLE_JOB)
        self.showing.forget()
        self._fresh, self._reason = False, ""
        self.job_opened += 1
        self._set_air()
        self.changed += 1
        return True

    def _remind_of_owed(self) -> None:
        """Say what is not put back in the job that is left."""
        left = self.job_moment()
        if left is not None and left.owed:
            what = "; ".join(retold(item) for item in left.owed)
            words = say("Not put back in {name}: {what}.", name=left.details.name, what=what)
            self.tell(Severity.ATTENTION, words)

    def _close_job(self) -> None:
        if self.job is not None:
            self.job_closing(self.job)
            sentence = self.job.close()
            self.job = None
            if sentence:
                self.tell(Severity.ALARM, sentence)

    # --- test -------------------------------------------------------------------------------------------------------

    def start_test(self, hold_pa: float | None = None) -> bool:
        """Begin a test by the sheet of the job, or hold a pressure, its sign that of the direction."""
        engine, rig, job = self.engine, self.connection.rig, self.job
        if engine is None or rig is None or job is None or engine.busy:
            return False
        gate = gate_of(job.house.entries, self._clock.utc())
        if gate.forbids:
            self.tell(Severity.ATTENTION, retold(gate.sentence))
            return False
        plan = job.draft()
        self._keep_building(job, plan)
        if hold_pa is not None:
            plan = held_plan(plan, hold_pa)
        try:
            plan = obeying(plan, gate)
            recorder = job.record(plan, rig.spec)
            engine.begin(plan, recorder)
        except InvalidInput as error:
            self.tell(Severity.ATTENTION, say("The test cannot start: {error}.", error=error_words(error)))
            return False
        if hold_pa is not None and plan.directions[0] is not direction_of(hold_pa):
            self.tell(
                Severity.ATTENTION, say("The safety answers do not allow to depressurize: the house is pressurized.")
            )
        self.follow(recorder.test_id)
        return True

    def follow(self, number: int) -> None:
        """Show the test that the engine has begun, or goes on with."""
        self.showing.follow(number)
        self._was_busy, self._fresh, self._told_flags = True, False, 0
        self.repairs.forget()
        self.changed += 1

    def _keep_building(self, job: Job, plan: TestPlan) -> None:
        """Make a version of the building where it differs from the last one."""
        if plan.building != job.building:
            first = job.building is None
            job.add_building(plan.building, "as first entered" if first else self._reason or "no reason given")
        self._reason = ""

    def answer(self, ask_id: str, choice: str) -> None:
        """Answer a question of the test."""
        if self.engine is not None:
            self.engine.answer(ask_id, choice)

    def pause(self) -> None:
        """Pause the running test."""
        if self.engine is not None:
            self.engine.pause()

    def go_on(self) -> None:
        """Go on with a paused test."""
        if self.engine is not None:
            self.engine.resume()
            self.replaying.wake()

    def stop_fan(self) -> None:
        """Bring the fan to rest at once."""
        if self.engine is not None:
            self.engine.stop_fan()

    def end_test(self) -> None:
        """End the test where it is."""
        if self.engine is not None:
            self.engine.abandon()
            self.replaying.wake()

    # --- the end ----------------------------------------------------------------------------------------------------

    def clear(self, then: Callable[[], None]) -> None:
        """Stop the fan, close rig and job, then call `then`."""

        def rig_gone() -> None:
            self._close_job()
            then()

        if self.engine is not None:
            self.engine.stop_fan()
        self.phone.stop()
        self.hunting.tone.close()
        self.connection.disconnect(rig_gone)
