"""Draws the Hunt place: brings the session of the desk and the choices of the person together."""

from __future__ import annotations

from acquisition.rig import Role
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.way import at_50_pa, target_flow_m3_h, way_of
from acquisition.told import Table
from acquisition.told.way import way_tables
from analysis.units import Display
from drivers.clock import NS_PER_S
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.hunt import HuntFacts, HuntTab, hunt_picture
from gui.viewmodels.hunt_trace import HuntTrace, hunt_trace
from gui.viewmodels.leak_sheet import LeakPicture
from gui.viewmodels.moment import Moment
from gui.viewmodels.prompt import running_prompt
from gui.views.hunt_place import HuntPlacePicture
from gui.window import Window


class HuntDrawing:
    """Draws a moment; the trace is made once for each look."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Draw nothing yet."""
        self._desk = desk
        self._screen = screen
        self._window = window
        self._traced: tuple[HoldLook, int, Display, HuntTrace | None] | None = None

    def draw(self, moment: Moment) -> None:
        """Draw the place."""
        choices, hunting, job = self._screen.hunt, self._desk.hunting, self._desk.job
        leaks = job.leaks.leaks if job is not None else {}
        session = hunting.session
        counted = session.counted_from if session is not None else None
        facts = HuntFacts(
            hunting.look,
            leaks,
            "" if counted is None else f"{counted.utc.astimezone():%H:%M}",
            self._age_s(),
        )
        snapshot = moment.snapshot
        target_pa, direction = choices.target_pa, hunting.direction(choices.direction)
        if snapshot is not None and snapshot.held is not None and snapshot.target_pa is not None:
            target_pa, direction = abs(snapshot.target_pa), snapshot.direction or direction
        self._window.hunt.show_picture(
            HuntPlacePicture(
                figures=hunt_picture(moment, facts),
                trace=self._trace(hunting.look, moment.display),
                prompt=running_prompt(moment),
                tab=choices.tab,
                tabs=tuple(_words(tab, len(leaks)) for tab in HuntTab),
                afar=choices.afar,
                target_pa=target_pa,
                direction=direction,
                decimal_mark=moment.display.decimal_mark,
                leaks=self._leaks(moment) if choices.tab is HuntTab.LEAKS else None,
                left=self._left(moment) if choices.tab is HuntTab.LEFT else (),
                photo=self._photo,
            )
        )

    def _leaks(self, moment: Moment) -> LeakPicture | None:
        job, screen = self._desk.job, self._screen
        if job is None or moment.job is None:
            return None
        register, volume = job.leaks, moment.job.plan.building.volume_m3
        return screen.leaks.picture(
            register.leaks,
            register.drops,
            job.house.photos,
            screen.hunt.chosen,
            moment.display,
            (self._desk.hunting.exponent, volume),
        )

    def _photo(self, number: int) -> bytes | None:
        return self._desk.job.house.photo(number) if self._desk.job is not None else None

    def _left(self, moment: Moment) -> tuple[Table, ...]:
        job, look = self._desk.job, self._desk.hunting.look
        if job is None or moment.job is None:
            return ()
        now = look.now_m3_h if look is not None else None
        flow = at_50_pa(now, look) if now is not None and look is not None else None
        register = job.leaks
        way = way_of(
            target_flow_m3_h(moment.job.plan), flow, register.leaks, register.drops, self._desk.hunting.exponent
        )
        return way_tables(way, register.leaks, moment.display)

    def _age_s(self) -> float | None:
        engine = self._desk.engine
        newest_ns = engine.live.newest_ns(Role.ENVELOPE) if engine is not None else None
        return None if newest_ns is None else max(self._desk.now_ns() - newest_ns, 0) / NS_PER_S

    def _trace(self, look: HoldLook | None, display: Display) -> HuntTrace | None:
        if look is None:
            return None
        job, session = self._desk.job, self._desk.hunting.session
        marks = session.marks if session is not None else ()
        known = self._traced
        if known is None or known[0] is not look or known[1] != len(marks) or known[2] != display:
            leaks = job.leaks.leaks if job is not None else {}
            if session is None and known is not None and known[0] is look:
                return known[3]
            self._traced = (look, len(marks), display, hunt_trace(look, marks, leaks, display))
        assert self._traced is not None
        return self._traced[3]


def _words(tab: HuntTab, leaks: int) -> str:
    return f"{tab.word} ({leaks})" if tab is HuntTab.LEAKS and leaks else tab.word
