"""What is asked for while leaks are hunted: holding a pressure, marks, the place itself."""

from __future__ import annotations

from PySide6.QtCore import QObject

from acquisition.snapshot import Severity
from analysis.errors import InvalidInput
from analysis.records import Direction
from analysis.units import Quantity, parse_value
from drivers.clock import seconds
from gui.actions import Actions
from gui.desk import Desk
from gui.hunting import HIGHEST_HELD_PA, LOWEST_HELD_PA
from gui.screen import Screen
from gui.viewmodels.errors import sentence
from gui.viewmodels.hunt import HuntTab
from gui.viewmodels.hunt_zero import LATER_S, READ_AGAIN
from gui.viewmodels.moment import Place
from gui.viewmodels.prompt import Prompt, PromptKind
from gui.window import Window

HOLD_STEP_PA = 5.0


class HuntIntents(QObject):
    """Hears the Hunt place and its keys, and calls the desk."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, actions: Actions) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._hunting = desk.hunting
        place = window.hunt
        place.tab_chosen.connect(self.show_tab)
        place.prompt.chosen.connect(self._prompted)
        controls = place.controls
        controls.target_chosen.connect(self.choose_target)
        controls.typed.connect(self.type_target)
        controls.direction_chosen.connect(self.choose_direction)
        controls.begin.clicked.connect(self.begin)
        controls.end.clicked.connect(self._hunting.end_hold)
        controls.afar.clicked.connect(self.toggle_afar)
        for action, call in (
            (actions.hold, self.begin),
            (actions.hold_more, self._more),
            (actions.hold_less, self._less),
            (actions.hold_other_way, self._hunting.hold_other_way),
            (actions.hold_end, self._hunting.end_hold),
            (actions.zero_again, self.zero_again),
            (actions.seal_starts, self.seal_starts),
            (actions.seal_done, self.seal_done),
            (actions.count_from_here, self.count_from_here),
        ):
            action.triggered.connect(call)

    def begin(self) -> None:
        """Hold the chosen pressure, and show it."""
        choices = self._screen.hunt
        direction = self._hunting.direction(choices.direction)
        if self._desk.start_test(hold_pa=direction.sign * choices.target_pa):
            self._window.hunt.trace.touched = False
            choices.tab = HuntTab.TRACE
        self._screen.go_to(Place.HUNT)

    def choose_target(self, size_pa: float) -> None:
        """Hold this pressure: now, where one is held, else when the hold begins."""
        self._screen.hunt.target_pa = size_pa
        self._hunting.hold_at(size_pa)
        self._screen.touch()

    def type_target(self, text: str) -> None:
        """Take a pressure that was typed."""
        try:
            size_pa = abs(parse_value(text, Quantity.PRESSURE, self._screen.display, "pressure"))
            if not LOWEST_HELD_PA <= size_pa <= HIGHEST_HELD_PA:
                allowed = f"{LOWEST_HELD_PA:g} to {HIGHEST_HELD_PA:g} Pa can be held"
                raise InvalidInput("pressure", size_pa, allowed, shown=text)
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
            self._screen.touch()
            return
        self._window.hunt.controls.entry.clearFocus()
        self.choose_target(size_pa)

    def choose_direction(self, direction: object) -> None:
        """Hold in this direction: now, where a pressure is held, else when the hold begins."""
        assert isinstance(direction, Direction)
        self._screen.hunt.direction = direction
        snapshot = self._desk.snapshot()
        if snapshot is not None and snapshot.hold_pa is not None and snapshot.hold_pa * direction.sign < 0.0:
            self._hunting.hold_other_way()
        self._screen.touch()

    def show_tab(self, tab: object) -> None:
        """Show something else below the figures."""
        assert isinstance(tab, HuntTab)
        self._screen.hunt.tab = tab
        self._screen.touch()

    def toggle_afar(self) -> None:
        """Show few huge figures, or everything again."""
        self._screen.hunt.afar = not self._screen.hunt.afar
        self._screen.touch()

    def seal_starts(self) -> None:
        """Mark that the chosen leak is being sealed; where it is sealed already, that a new one is."""
        choices = self._screen.hunt
        number = self._hunting.starts(self._hunting.still_open(choices.chosen))
        if number is not None:
            choices.chosen = number
        self._screen.touch()

    def seal_done(self) -> None:
        """Mark that the seal is done."""
        self._hunting.done()
        self._screen.touch()

    def count_from_here(self) -> None:
        """Count the change from this moment on."""
        self._hunting.count_from_here()
        self._screen.touch()

    def zero_again(self) -> None:
        """Read the zero-flow pressure again."""
        self._hunting.zero_again()
        self._screen.touch()

    def _prompted(self, prompt: Prompt, choice: str) -> None:
        if prompt.kind is not PromptKind.ZERO:
            return
        self._screen.hunt.zero_later_ns = self._desk.now_ns() + seconds(LATER_S)
        if choice == READ_AGAIN:
            self._hunting.zero_again()
        self._screen.touch()

    def _more(self) -> None:
        self._hunting.hold_by(HOLD_STEP_PA)

    def _less(self) -> None:
        self._hunting.hold_by(-HOLD_STEP_PA)
