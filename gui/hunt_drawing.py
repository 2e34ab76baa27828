"""Draws the Hunt place: brings the session of the desk and the choices of the person together."""

from __future__ import annotations

from collections.abc import Sequence

import segno

from acquisition.holding import direction_of
from acquisition.job import Entry
from acquisition.phone.addresses import private_addresses
from acquisition.rig import INDOORS, OUTDOORS, Role
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.looking import ALARM, CAUTIONS, advice
from acquisition.sealing.way import at_50_pa, target_flow_m3_h, way_of
from acquisition.setup.board import ON
from acquisition.told import Table
from acquisition.told.way import way_tables
from acquisition.zonetest import KeptZone, kept_zones
from analysis.records import Direction
from analysis.units import Display
from drivers.clock import NS_PER_S
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.hunt import HuntFacts, HuntTab, hunt_picture
from gui.viewmodels.hunt_trace import HuntTrace, hunt_trace
from gui.viewmodels.hunt_zero import zero_prompt
from gui.viewmodels.leak_sheet import LeakPicture
from gui.viewmodels.moment import Moment
from gui.viewmodels.prompt import Prompt, running_prompt
from gui.viewmodels.zone_walk import ZonePicture
from gui.views.hunt_pages import LookPicture, PhonePicture
from gui.views.hunt_place import HuntPlacePicture
from gui.window import Window
from gui.words import say


class HuntDrawing:
    """Draws a moment; the trace is made once for each look."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Draw nothing yet."""
        self._desk = desk
        self._screen = screen
        self._window = window
        self._addresses = private_addresses()
        self._coded: tuple[str, tuple[bytes, ...]] = ("", ())
        self._kept: tuple[tuple[Entry, ...], tuple[KeptZone, ...]] = ((), ())
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
        if snapshot is not None and snapshot.hold_pa is not None:
            target_pa, direction = abs(snapshot.hold_pa), direction_of(snapshot.hold_pa)
        self._window.hunt.show_picture(
            HuntPlacePicture(
                figures=hunt_picture(moment, facts),
                trace=self._trace(hunting.look, moment.display),
                prompt=running_prompt(moment) or self._zero_prompt(moment),
                tab=choices.tab,
                tabs=tuple(self._words(tab, len(leaks)) for tab in HuntTab),
                afar=choices.afar,
                target_pa=target_pa,
                direction=direction,
                decimal_mark=moment.display.decimal_mark,
                leaks=self._leaks(moment) if choices.tab is HuntTab.LEAKS else None,
                left=self._left(moment) if choices.tab is HuntTab.LEFT else (),
                photo=self._photo,
                look=self._how_to_look(moment, direction, target_pa) if choices.tab is HuntTab.LOOK else None,
                zones=self._zones(moment.display) if choices.tab is HuntTab.ZONES else None,
                phone=self._phone() if choices.tab is HuntTab.PHONE else None,
                tone=hunting.tone.on,
            )
        )

    def _zones(self, display: Display) -> ZonePicture:
        entries = self._desk.job.house.entries if self._desk.job is not None else ()
        if entries != self._kept[0]:
            self._kept = entries, kept_zones(entries)
        return self._screen.zones.picture(display, self._kept[1])

    def _zero_prompt(self, moment: Moment) -> Prompt | None:
        """Return the question for the zero-flow pressure; nobody is asked in the middle of a seal."""
        held = moment.snapshot is not None and moment.snapshot.held is not None
        if not held or moment.sealing or self._desk.now_ns() < self._screen.hunt.zero_later_ns:
            return None
        return zero_prompt(self._desk.hunting.look, moment.display)

    def _how_to_look(self, moment: Moment, direction: Direction, target_pa: float) -> LookPicture:
        choices, job = self._screen.hunt, self._desk.job
        air = moment.job.plan.air if moment.job is not None else None
        told = advice(
            self._mean(INDOORS, air.indoor_c if air is not None else None),
            self._mean(OUTDOORS, air.outdoor_c if air is not None else None),
            direction,
            target_pa,
        )
        ticks = [entry.state for entry in (job.house.entries if job is not None else ()) if entry.subject == ALARM]
        left_s = None if choices.timer_end_ns is None else (choices.timer_end_ns - self._desk.now_ns()) / NS_PER_S
        return LookPicture(
            told.infra_red,
            told.usable,
            told.fog,
            CAUTIONS,
            ticks[-1] == ON if ticks else None,
            timer_words(left_s),
            choices.timer_end_ns is not None,
        )

    def _mean(self, roles: Sequence[Role], entered: float | None) -> float | None:
        """Return what the thermometers read over the last seconds, what was entered where there is none."""
        engine = self._desk.engine
        now_ns = self._desk.now_ns()
        read = [engine.live.mean(role, 10.0, now_ns) for role in roles] if engine is not None else []
        known = [value for value in read if value is not None]
        return sum(known) / len(known) if known else entered

    def _phone(self) -> PhonePicture:
        page = self._desk.phone
        if page.link != self._coded[0]:
            rows = tuple(bytes(line) for line in segno.make(page.link).matrix) if page.link else ()
            self._coded = (page.link, rows)
        return PhonePicture(self._addresses, page.link, page.phones, self._coded[1])

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

    def _words(self, tab: HuntTab, leaks: int) -> str:
        if tab is HuntTab.LEAKS and leaks:
            return f"{tab.word} ({leaks})"
        if tab is HuntTab.PHONE and self._desk.phone.link:
            return say("{word}: on, {phones}", word=tab.word, phones=self._desk.phone.phones)
        return tab.word

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


def timer_words(left_s: float | None) -> str:
    """Return what is left of a timer."""
    if left_s is None:
        return ""
    if left_s <= 0.0:
        return say("The time is up: stop the fog, look once more.")
    return say("{time} left", time=f"{int(left_s) // 60}:{int(left_s) % 60:02d}")
