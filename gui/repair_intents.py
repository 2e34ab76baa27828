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
from gui.viewmodels.prompt import (
    CORRECT,
    FIT,
    RESUME,
    STRIKE,
    STRIKE_ALL,
    Prompt,
    PromptKind,
    range_prompt,
    strike_prompt,
)
from gui.viewmodels.range_question import Offer, correction_of
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
        self._offers: tuple[Offer, ...] = ()
        points = window.test.points
        points.strike_asked.connect(self._ask_strike)
        points.restore_asked.connect(desk.repairs.restore)
        points.again_asked.connect(desk.repairs.take_again)
        points.range_asked.connect(self._ask_correction)
        actions.strike.triggered.connect(points.toggle_chosen)
        actions.again.triggered.connect(points.take_chosen_again)
        actions.correct_range.triggered.connect(points.correct_range)
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
                if choice in (STRIKE, STRIKE_ALL):
                    self._desk.repairs.strike(tuple(map(int, prompt.id.split())), reason)
            case PromptKind.CORRECT:
                self._screen.strike = None
                if choice == CORRECT:
                    self._correct(prompt, reason)
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

    def _ask_strike(self, windows: tuple[int, ...], targets: str) -> None:
        self._screen.strike = strike_prompt(windows, targets, tuple(say(reason) for reason in STRIKE_REASONS))
        self._screen.touch()

    def _ask_correction(self, windows: tuple[int, ...]) -> None:
        shown = self._desk.showing.test(self._desk.snapshot())
        question = correction_of(shown, windows, self._screen.direction, self._screen.display)
        if question is None:
            self._desk.tell(
                Severity.ATTENTION, say("A test with points, and a rig with more than one flow range, are needed.")
            )
            return
        self._screen.strike, self._offers = question.prompt, question.offers
        self._go_to(Place.TEST)

    def _correct(self, prompt: Prompt, chosen: str) -> None:
        # Whoever types the name of a range instead means it for all points that were asked about.
        windows = tuple(map(int, prompt.id.split()))
        offer = next((item for item in self._offers if item.label == chosen), Offer(chosen, windows, chosen.strip()))
        self._desk.repairs.correct_range(offer.windows, offer.name, offer.fan)

    def _ask_range(self) -> None:
        spec = self._desk.rig().spec
        if spec is None or len(spec.ranges) < 2:
            self._desk.tell(Severity.ATTENTION, say("A rig with more than one flow range has to be connected."))
            return
        self._screen.strike = range_prompt(spec.fitted, tuple(item.name for item in spec.ranges))
        self._go_to(Place.TEST)
