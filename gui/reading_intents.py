"""Which test is looked at, and how: direction, page, another method or fit, the whole of its curves."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject

from gui.actions import Actions
from gui.desk import Desk
from gui.screen import Screen
from gui.viewmodels.issuing import DRAFT
from gui.viewmodels.moment import Place
from gui.viewmodels.report_place import NO_TEST
from gui.viewmodels.shown import Reading
from gui.views.test_place import CORRECTIONS, RESIDUALS
from gui.window import Window


class ReadingIntents(QObject):
    """Hears the Test and the Report place; `no_test` shows the report that no test could be made."""

    def __init__(
        self, desk: Desk, screen: Screen, window: Window, actions: Actions, no_test: Callable[[], None]
    ) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._no_test = no_test
        test = window.test
        test.points.direction_asked.connect(self._choose_direction)
        test.points.test_asked.connect(self._choose_test)
        test.details.chosen.connect(self._choose_detail)
        test.details.method_chosen.connect(self._read_by_method)
        test.details.fit_chosen.connect(self._read_by_fit)
        window.report.test_asked.connect(self._choose_test)
        actions.residuals.triggered.connect(lambda: self.show_page(RESIDUALS))
        actions.corrections.triggered.connect(lambda: self.show_page(CORRECTIONS))
        actions.all.triggered.connect(self._show_all)

    def show_page(self, page: int) -> None:
        """Show a page of the Test place beside its curves, or no page where that one is shown already."""
        shown = self._window.test.show_page(page)
        self._screen.corrections = shown == CORRECTIONS
        self._screen.go_to(Place.TEST)

    def _choose_direction(self, direction: object) -> None:
        self._screen.direction = direction  # type: ignore[assignment]  # the signal carries a Direction
        self._screen.touch()

    def _choose_test(self, number: int) -> None:
        self._screen.direction, self._screen.strike = None, None
        self._screen.reading = Reading()
        if number == NO_TEST:
            self._no_test()
            return
        self._screen.no_test, self._screen.version_shown = False, DRAFT
        self._desk.choose_test(number)

    def _choose_detail(self, detail: object) -> None:
        self._screen.detail = detail  # type: ignore[assignment]  # the signal carries a Detail
        self._screen.touch()

    def _read_by_method(self, method: str) -> None:
        self._screen.reading = Reading(method)
        self._screen.touch()

    def _read_by_fit(self, fit: str) -> None:
        self._screen.reading = replace(self._screen.reading, fit=fit)
        self._screen.touch()

    def _show_all(self) -> None:
        self._window.test.show_all()
        self._window.hunt.trace.show_all()
