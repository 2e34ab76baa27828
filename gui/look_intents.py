"""How everything is to look: theme, units, decimal mark, the whole screen, the page of keys."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject

from analysis.units import System
from gui.actions import Actions
from gui.screen import Screen
from gui.settings import SettingsFile
from gui.theme import Mode
from gui.viewmodels.moment import Place
from gui.window import Window

MODE_ORDER = tuple(Mode)


class LookIntents(QObject):
    """Hears the menu; `finish_typing` takes what is still being typed, `afar` shows a hold for reading from afar."""

    def __init__(
        self,
        screen: Screen,
        window: Window,
        actions: Actions,
        settings: SettingsFile,
        finish_typing: Callable[[], None],
        afar: Callable[[], None],
    ) -> None:
        """Listen."""
        super().__init__(window)
        self._screen = screen
        self._window = window
        self._settings = settings
        self._finish_typing = finish_typing
        self._afar = afar
        window.keys.back.clicked.connect(self._toggle_keys)
        actions.keys.triggered.connect(self._toggle_keys)
        actions.full_screen.triggered.connect(self._toggle_full_screen)
        actions.next_mode.triggered.connect(self._next_mode)
        actions.mode_chosen.connect(self._set_mode)
        actions.swap_units.triggered.connect(self._swap_units)
        actions.units_chosen.connect(self._set_units)
        actions.comma.toggled.connect(self._set_comma)

    def _set_mode(self, mode: Mode) -> None:
        self._settings.set(replace(self._settings.value, mode=mode))
        self._window.look.set_mode(mode)
        self._screen.touch()

    def _next_mode(self) -> None:
        at = MODE_ORDER.index(self._settings.value.mode)
        self._set_mode(MODE_ORDER[(at + 1) % len(MODE_ORDER)])

    def _set_units(self, system: System) -> None:
        self._finish_typing()
        self._settings.set(replace(self._settings.value, units=system.value))
        self._screen.display = replace(self._screen.display, system=system)
        self._screen.touch()

    def _swap_units(self) -> None:
        self._set_units(System.SI if self._screen.display.system is System.US else System.US)

    def _set_comma(self, comma: bool) -> None:
        self._finish_typing()
        mark = "," if comma else "."
        self._settings.set(replace(self._settings.value, decimal_mark=mark))
        self._screen.display = replace(self._screen.display, decimal_mark=mark)
        self._screen.touch()

    def _toggle_keys(self) -> None:
        self._screen.keys_shown = not self._screen.keys_shown
        self._screen.touch()

    def _toggle_full_screen(self) -> None:
        if self._screen.place is Place.HUNT:
            self._afar()
        if self._window.isFullScreen():
            self._window.showNormal()
        else:
            self._window.showFullScreen()
