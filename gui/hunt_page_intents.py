"""What is asked for on the pages of the hunt: ticks and timer for fog, readings of zones, phones, the tone."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.job import PreparationKind
from acquisition.rig import ZONES, Role
from acquisition.sealing.looking import ALARM
from acquisition.setup.board import DONE, OFF, ON
from acquisition.snapshot import Severity
from acquisition.zonetest import zone_entry
from analysis.errors import InvalidInput
from drivers.clock import seconds
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.errors import sentence
from gui.window import Window
from gui.words import say

READ_S = 10.0
"""Over which a reading of a zone is averaged."""
ALARMS = "alarms"
"""What is put back where an alarm was isolated."""


class HuntPageIntents(QObject):
    """Hears the pages below the figures."""

    def __init__(self, desk: Desk, screen: Screen, window: Window) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        place = self._place = window.hunt
        place.look.isolate.clicked.connect(self.isolate_alarm)
        place.look.reinstate.clicked.connect(self.reinstate_alarm)
        place.look.timer.clicked.connect(self.toggle_timer)
        place.zones.committed.connect(self.type_zone)
        place.zones.hole_chosen.connect(self.choose_hole)
        place.zones.before.clicked.connect(self.read_before)
        place.zones.after.clicked.connect(self.read_after)
        place.zones.named.connect(self.name_zone)
        place.zones.keep.clicked.connect(self.keep_zone)
        place.zones.again.clicked.connect(self.another_zone)
        place.phone.switch.clicked.connect(self.toggle_phone)
        place.controls.tone.clicked.connect(self.toggle_tone)

    def isolate_alarm(self) -> None:
        """Tick that the alarm is isolated: the seal board keeps it until it is reinstated."""
        self._desk.note(PreparationKind.SEAL, ALARM, ON)
        self._screen.touch()

    def reinstate_alarm(self) -> None:
        """Tick that the alarm is reinstated."""
        self._desk.note(PreparationKind.SEAL, ALARM, OFF)
        self._desk.note(PreparationKind.RESTORE, ALARMS, DONE)
        self._screen.touch()

    def toggle_timer(self) -> None:
        """Start the timer, or take it away."""
        choices = self._screen.hunt
        minutes = self._place.look.minutes.currentData()
        running = choices.timer_end_ns is not None
        choices.timer_end_ns = None if running else self._desk.now_ns() + seconds(60.0 * minutes)
        self._screen.touch()

    def type_zone(self, name: str, text: str) -> None:
        """Take a reading that was typed."""
        self._screen.zones.type_field(name, text, self._screen.display)
        self._screen.touch()

    def choose_hole(self, hole: str) -> None:
        """Say which hole is added."""
        self._screen.zones.hole = hole
        self._screen.touch()

    def read_before(self) -> None:
        """Read house, zone and flow without the hole."""
        self._read("house_pa", "zone_pa", "flow_before")

    def read_after(self) -> None:
        """Read zone and flow with the hole."""
        self._read(None, "zone_after_pa", "flow_after")

    def name_zone(self, name: str) -> None:
        """Say what the zone is called."""
        self._screen.zones.name = name
        self._screen.touch()

    def keep_zone(self) -> None:
        """Keep what was read in the job: the report tells it."""
        job, walk = self._desk.job, self._screen.zones
        question = walk.question()
        if job is None or question is None:
            return
        try:
            entry = zone_entry(walk.name, question, self._desk.now(), job.details.tester)
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
            self._place.zones.name.input.setFocus()
        else:
            self._desk.note(entry.kind, entry.subject, entry.state, who=entry.who)
        self._screen.touch()

    def another_zone(self) -> None:
        """Begin anew."""
        self._screen.zones.clear()
        self._screen.touch()

    def toggle_phone(self) -> None:
        """Show the page on phones, or stop it."""
        if self._desk.phone.link:
            self._desk.phone.stop()
        else:
            self._desk.phone.start(self._place.phone.addresses.currentText(), self._screen.display.decimal_mark)
        self._screen.touch()

    def toggle_tone(self) -> None:
        """Let a tone be heard, or silence."""
        tone = self._desk.hunting.tone
        tone.on = not tone.on
        if tone.on and not tone.possible:
            tone.on = False
            self._desk.tell(
                Severity.ATTENTION, say("This machine has no program that plays a sound (paplay or aplay).")
            )
        self._screen.touch()

    def _read(self, house: str | None, zone: str, flow: str) -> None:
        """Take the means of the last seconds; what no gauge reads is typed."""
        engine, snapshot, walk = self._desk.engine, self._desk.snapshot(), self._screen.zones
        if engine is None or snapshot is None or snapshot.held is None:
            self._desk.tell(
                Severity.ATTENTION, say("Hold a pressure first: the house has to stand while a zone is read.")
            )
            self._screen.touch()
            return
        envelope = engine.live.mean(Role.ENVELOPE, READ_S, snapshot.now_ns)
        induced = None if envelope is None else envelope - (snapshot.zero_pa or 0.0)
        if house is not None:
            walk.read(house, induced)
        read = (engine.live.mean(role, READ_S, snapshot.now_ns) for role in ZONES)
        against = next((pressure for pressure in read if pressure is not None), None)
        if against is not None and induced is not None:
            # The gauge reads indoors against the zone; the zone against outdoors is what is left of the house.
            walk.read(zone, induced - against)
        elif against is None:
            self._desk.tell(Severity.NOTE, say("No gauge of the rig reads a zone: type what your gauge shows."))
        walk.read(flow, snapshot.held.flow_m3_h)
        self._screen.touch()
