"""What the person asks for when a test has to be mended: points, flow range, a test that was cut short."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from acquisition.snapshot import Severity
from gui.actions import Actions
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.moment import Place
from gui.viewmodels.points import STRIKE_REASONS
from gui.viewmodels.prompt import FIT, RESUME, STRIKE, Prompt, PromptKind, range_prompt, strike_prompt
from gui.window import Window
from gui.words import say


class RepairIntents(QObject):
    """Hears the table of points and the menu; `go_to` shows a place."""

    def __init__(
        self, desk: Desk, screen: Screen, window: Window, actions: Actions, go_to: Callable[[Place], None]
    ) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._go_to = go_to
        points = window.test.points
        points.strike_asked.connect(self._ask_strike)
        points.restore_asked.connect(desk.repairs.restore)
        points.again_asked.connect(desk.repairs.take_again)
        actions.strike.triggered.connect(points.toggle_chosen)
        actions.again.triggered.connect(points.take_chosen_again)
        actions.fit_range.triggered.connect(self._ask_range)
        actions.go_on.triggered.connect(self.resume_test)

    def resume_test(self) -> None:
        """Go on with a test that was cut short, and show it."""
        self._screen.direction, self._screen.strike = None, None
        if self._desk.repairs.go_on():
            self._go_to(Place.TEST)

    def prompted(self, prompt: Prompt, choice: str, reason: str) -> bool:
        """Take the answer to a question that was asked here; return whether it was."""
        match prompt.kind:
            case PromptKind.STRIKE:
                self._screen.strike = None
                if choice == STRIKE:
                    self._desk.repairs.strike(int(prompt.id), reason)
            case PromptKind.RANGE:
                self._screen.strike = None
                if choice == FIT:
                    self._desk.repairs.fit_range(reason)
            case PromptKind.RESUME:
                if choice == RESUME:
                    self.resume_test()
                else:
                    self._desk.repairs.leave()
            case _:
                return False
        return True

    def _ask_strike(self, window: int, target: str) -> None:
        self._screen.strike = strike_prompt(window, target, tuple(say(reason) for reason in STRIKE_REASONS))
        self._screen.touch()

    def _ask_range(self) -> None:
        spec = self._desk.rig().spec
        if spec is None or len(spec.ranges) < 2:
            self._desk.tell(Severity.ATTENTION, say("A rig with more than one flow range has to be connected."))
            return
        self._screen.strike = range_prompt(spec.fitted, tuple(item.name for item in spec.ranges))
        self._go_to(Place.TEST)
