"""The bridge: the only module that knows the engine and Qt. Pulls a snapshot 30 times a second and has it drawn."""

from __future__ import annotations

import gc
from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer

from acquisition.rig import Role
from acquisition.snapshot import Snapshot
from drivers.clock import NS_PER_S
from gui.desk import Desk
from gui.hunt_drawing import HuntDrawing
from gui.intents import Intents
from gui.report_pages import Wanted
from gui.screen import Screen
from gui.stages import Stages
from gui.viewmodels.details import corrections_picture, detail_picture
from gui.viewmodels.flow_plot import flow_picture
from gui.viewmodels.health import Health, Zeros, rig_health
from gui.viewmodels.hints import volume_worth
from gui.viewmodels.issuing import DRAFT
from gui.viewmodels.job_place import JobSheetModel
from gui.viewmodels.moment import Moment, Place
from gui.viewmodels.next_step import next_step
from gui.viewmodels.outcome import outcome_picture
from gui.viewmodels.over import Over
from gui.viewmodels.points import table_picture
from gui.viewmodels.prompt import close_prompt, owed_prompt, running_prompt
from gui.viewmodels.rail import rail
from gui.viewmodels.report_place import report_picture, title_of
from gui.viewmodels.residuals import residual_picture
from gui.viewmodels.ribbon import ribbon
from gui.viewmodels.rig_place import Newest, newest_reading, rig_picture
from gui.viewmodels.rooms import RoomsModel
from gui.viewmodels.setup_place import setup_picture
from gui.viewmodels.shown import Reading, ShownTest, seen_by
from gui.viewmodels.trace import KEPT_S, TracePicture, live_trace, recorded_trace
from gui.views.rig_place import EQUIPMENT
from gui.views.test_place import TestPicture
from gui.window import Window
from gui.words import say

PERIOD_MS = 33
COLLECT_EVERY = 150
"""Ticks between two runs of the garbage collector, which must not run in another thread while widgets live."""
NEWEST_S = 5.0
Stamp = tuple[object, ...]


class Bridge(QObject):
    """Lives with the window and stops before it goes."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, intents: Intents) -> None:
        """Join the parts; `start` begins to draw."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._intents = intents
        self._drawn: Stamp = ()
        self._recorded: tuple[ShownTest, int, TracePicture] | None = None
        self._reread: tuple[ShownTest, Reading, ShownTest] | None = None
        self._healthy: tuple[object, int, Health] = (None, 0, {})
        self._zeros: Zeros = {}
        self._ticks = 0
        self.awake: Callable[[bool], None] = lambda _: None
        """Told whether a test is under way, for the computer to stay awake."""
        self._timer = QTimer(self)
        self._timer.setInterval(PERIOD_MS)
        self._timer.timeout.connect(self.tick)
        self._draw: dict[Place, Callable[[Moment], None]] = {
            Place.JOB: self._draw_job,
            Place.SETUP: self._draw_setup,
            Place.RIG: self._draw_rig,
            Place.TEST: self._draw_test,
            Place.HUNT: HuntDrawing(desk, screen, window).draw,
            Place.STAGES: Stages(desk, screen, window).draw,
            Place.REPORT: self._draw_report,
        }
        intents.gone.connect(self.stop)

    def start(self) -> None:
        """Begin to draw; the collector runs here from now on."""
        gc.disable()
        self._timer.start()

    def stop(self) -> None:
        """Draw no more."""
        self._timer.stop()
        gc.enable()

    def tick(self) -> None:
        """Draw what has changed."""
        self._ticks += 1
        if self._timer.isActive() and self._ticks % COLLECT_EVERY == 0:
            gc.collect()
        self._desk.tend()
        if self._screen.teach.refresh() or self._screen.scan.refresh():
            self._screen.touch()
        snapshot = self._desk.snapshot()
        if snapshot is not None and self._screen.check.refresh(snapshot.now_ns, self._desk.rig().spec, self._samples):
            self._screen.touch()
        hunting = self._desk.hunting
        seen = hunting.look if hunting.session is not None else None
        if self._desk.phone.tend(snapshot, seen, self._screen.display):
            self._screen.touch()
        while self._desk.notices:
            self._window.notices.add(self._desk.notices.popleft())
        alarm = self._desk.job.alarm() if self._desk.job is not None else ""
        stamp = (snapshot, self._desk.changed, self._screen.version, self._screen.pages.version, alarm)
        if len(self._drawn) == len(stamp) and all(a is b or a == b for a, b in zip(self._drawn, stamp, strict=True)):
            return
        self._drawn = stamp
        self.draw(self.moment(snapshot))

    def moment(self, snapshot: Snapshot | None) -> Moment:
        """Return everything that the pictures are made from."""
        screen = self._screen
        return Moment(
            place=screen.place,
            display=screen.display,
            rig=self._desk.rig(),
            job=self._desk.job_moment(),
            snapshot=snapshot,
            shown=self._seen(self._desk.showing.test(snapshot)),
            report_saved=screen.pages.saved,
            closing=screen.closing,
            sealing=self._desk.hunting.sealing,
            health=self._health(snapshot),
        )

    def _health(self, snapshot: Snapshot | None) -> Health:
        """Return the health of the instruments, looked at once a second."""
        rig, engine = self._desk.connection.rig, self._desk.engine
        if snapshot is None or rig is None or engine is None:
            self._healthy = (None, 0, {})
            return {}
        known, looked_ns, health = self._healthy
        if known is not engine or not 0 <= snapshot.now_ns - looked_ns < NS_PER_S:
            if known is not engine:
                self._zeros.clear()
            health = rig_health(rig.spec, snapshot, self._stamped, rig.batteries, self._zeros)
            self._healthy = (engine, snapshot.now_ns, health)
        return health

    def _stamped(self, role: Role, since_ns: int) -> tuple[list[int], list[float]]:
        """Return the readings of a channel; those of the first tap are its own and not the mean of all."""
        engine = self._desk.engine
        if engine is None:
            return [], []
        stamps, values = engine.live.first_tap(since_ns) if role is Role.ENVELOPE else engine.live.since(role, since_ns)
        return stamps.tolist(), values.tolist()

    def _seen(self, shown: ShownTest | None) -> ShownTest | None:
        """Return the test as the person looks at it; a running one is always looked at as planned."""
        if shown is None or self._desk.busy or self._screen.reading.own:
            return shown
        before = self._reread
        if before is None or before[0] is not shown or before[1] != self._screen.reading:
            self._reread = (shown, self._screen.reading, seen_by(shown, self._screen.reading))
        assert self._reread is not None
        return self._reread[2]

    def draw(self, moment: Moment) -> None:
        """Draw a moment."""
        window, screen = self._window, self._screen
        self._follow_job()
        self.awake(moment.busy)
        window.ribbon.show_picture(ribbon(moment))
        window.rail.show_items(rail(moment))
        window.next_bar.show_step(next_step(moment))
        leaving = close_prompt() if self._desk.busy else owed_prompt(moment.job.owed if moment.job is not None else ())
        window.close_prompt.show_prompt(leaving if screen.asking_to_close and not screen.closing else None)
        window.show_place(moment.place, keys=screen.keys_shown, over=screen.over)
        self._draw_over()
        self._intents.refresh(moment)
        self._draw[moment.place](moment)

    def _draw_over(self) -> None:
        """Draw the page that lies over the place, if there is one."""
        window, screen = self._window, self._screen
        match screen.over:
            case Over.SETTINGS:
                window.settings.show_pictures(self._intents.office.pictures())
            case Over.JOBS:
                window.jobs.show_picture(self._intents.jobs.picture())
            case Over.TYPED:
                window.typed.show_picture(screen.typed.picture(screen.display))
            case Over.WORST_CASE:
                window.worst_case.show_picture(self._intents.worst_case.picture())

    def _follow_job(self) -> None:
        """Take up the sheet of a job that was opened."""
        screen, desk = self._screen, self._desk
        if screen.sheet_of_job == desk.job_opened:
            return
        screen.sheet_of_job = desk.job_opened
        screen.no_test, screen.version_shown = False, DRAFT
        sheet = desk.sheet()
        screen.sheet = JobSheetModel(sheet, desk.tested_building()) if sheet is not None else None
        screen.rooms = RoomsModel(desk.job.house.geometry) if desk.job is not None else None

    def _draw_test(self, moment: Moment) -> None:
        screen, shown = self._screen, moment.shown
        table = table_picture(moment, screen.direction)
        self._window.test.show_picture(
            TestPicture(
                flow=flow_picture(moment),
                residuals=residual_picture(moment),
                trace=self._trace(moment),
                outcome=outcome_picture(moment),
                table=table,
                details=detail_picture(moment, screen.detail),
                corrections=corrections_picture(moment) if screen.corrections else (),
                prompt=running_prompt(moment) or screen.strike,
                tests=() if moment.busy else tuple((item.id, title_of(item)) for item in self._desk.tests()),
                chosen=shown.number if shown is not None else None,
                decimal_mark=moment.display.decimal_mark,
                by_hand=screen.by_hand.picture(
                    moment.rig.spec, moment.snapshot, self._newest(moment, None), moment.display
                ),
            )
        )

    def _trace(self, moment: Moment) -> TracePicture | None:
        """Return the live trace, or that of the recorded run that the table shows."""
        shown, engine, snapshot = moment.shown, self._desk.engine, moment.snapshot
        if shown is not None and shown.recorded:
            wanted = self._screen.direction
            at = next((i for i, run in enumerate(shown.runs) if run.direction is wanted), len(shown.runs) - 1)
            if self._recorded is None or self._recorded[0] is not shown or self._recorded[1] != at:
                self._recorded = (shown, at, recorded_trace(shown, at))
            return self._recorded[2]
        if engine is None or snapshot is None:
            return None
        times, values = engine.live.since(Role.ENVELOPE, snapshot.now_ns - round(KEPT_S * 1e9))
        return live_trace(snapshot, times, values, self._screen.scale)

    def _draw_job(self, moment: Moment) -> None:
        sheet = self._screen.sheet
        if sheet is None or moment.job is None:
            return
        saved = moment.job.alarm or say("Everything is saved as you type.")
        if moment.busy:
            saved = say("A test is running: what you change here counts from the next test on.")
        sheet.tested = self._desk.tested_building()
        known = self._desk.sheet()
        if known is not None:
            sheet.follow(known)
        result = moment.shown.result if moment.shown is not None else None
        place, rooms, job = self._window.job, self._screen.rooms, self._desk.job
        place.show_picture(sheet.picture(moment.display, moment.rig.spec, result, moment.job.path, saved))
        place.show_page(rooms=self._screen.rooms_shown)
        if rooms is not None and job is not None and self._screen.rooms_shown:
            worth = volume_worth(sheet.sheet, result, moment.display)
            picture = rooms.picture(moment.display, sheet.sheet.plan.building, worth, job.house.versions)
            place.rooms.show_picture(picture)
            place.show_undo(picture.undo, picture.redo)

    def _draw_setup(self, moment: Moment) -> None:
        job = self._desk.job
        if job is not None and moment.job is not None:
            house = job.house
            picture = setup_picture(moment.job.plan, house.entries, house.photos, self._desk.now())
            self._window.setup.show_picture(picture)

    def _draw_rig(self, moment: Moment) -> None:
        rig, place = self._screen.rig, self._window.rig
        latest = self._newest(moment, NEWEST_S)
        picture = rig_picture(
            moment,
            self._desk.connection.sources,
            (place.sources.chosen, place.sources.factor),
            rig.spec,
            rig.problem(),
            latest,
            self._intents.register.today(),
            self._intents.rig.ports,
        )
        place.show_picture(picture)
        place.own.editor.show_sheet(rig)
        place.teach.show_picture(self._screen.teach.picture())
        place.scan.show_picture(self._screen.scan.picture())
        if place.pages.currentIndex() == EQUIPMENT:
            self._draw_register(moment, latest)

    def _newest(self, moment: Moment, longest_s: float | None) -> Newest:
        """Return what gives the newest reading of a role, of any age or not older than so long."""
        engine, snapshot = self._desk.engine, moment.snapshot

        def newest(role: Role) -> tuple[int, float] | None:
            if engine is None or snapshot is None:
                return None
            since_ns = 0 if longest_s is None else snapshot.now_ns - round(longest_s * 1e9)
            times, values = self._stamped(role, since_ns)
            return (times[-1], values[-1]) if values else None

        return newest_reading(snapshot, newest)

    def _draw_register(self, moment: Moment, newest: Newest) -> None:
        place, model, today = self._window.rig, self._screen.register, self._intents.register.today()
        picture = model.picture(today, moment.display.decimal_mark)
        place.register.show_picture(picture)
        place.detail.show_item(picture.item, model.undo_label)
        place.check.show_picture(
            self._screen.check.picture(moment.rig.spec, model.register, newest, moment.display, today)
        )

    def _samples(self, role: Role, since_ns: int) -> list[float]:
        return self._stamped(role, since_ns)[1]

    def _draw_report(self, moment: Moment) -> None:
        screen, desk, shown = self._screen, self._desk, moment.shown
        job, office = desk.job, self._intents.office
        if job is None or not moment.job or not moment.job.forbidden:
            screen.no_test = False
        ready = shown is not None and shown.result is not None and not (moment.busy and shown.live)
        if job is not None and (ready or screen.no_test):
            wanted = Wanted(
                opened=desk.job_opened,
                test=office.test_number(),
                issue=screen.version_shown if screen.version_shown in {item.id for item in office.issues()} else DRAFT,
                display=screen.display,
                office=screen.office,
                register=screen.register.register,
                state=(job.details, None if shown is None else shown.result, *job.printed()),
            )
            screen.pages.want(job, wanted, desk.now())
            desk.report_opened()
        picture = report_picture(
            moment,
            desk.tests(),
            screen.pages.pages,
            screen.pages.trouble,
            office=screen.office.name,
            no_test=screen.no_test,
            issued_in=office.issued_in(),
            leaks=job is not None and bool(job.leaks.leaks),
        )
        self._window.report.show_picture(picture, office.picture(possible=picture.can_save))
