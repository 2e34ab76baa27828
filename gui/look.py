"""Puts a theme on the program and tells everybody who paints by hand when it changes."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QPalette
from PySide6.QtWidgets import QApplication

from gui.style import style_sheet
from gui.theme import DARK, LIGHT, SUNLIGHT, Mode, Theme, Tone


class Look(QObject):
    """The theme in force. Follows the system unless one is forced."""

    changed = Signal()

    def __init__(self, app: QApplication, mode: Mode = Mode.SYSTEM) -> None:
        """Choose the theme of `mode`; `put_on` shows it."""
        super().__init__(app)
        self._app = app
        self._mode = mode
        self.theme = self._wanted()
        app.setStyle("Fusion")
        app.styleHints().colorSchemeChanged.connect(self._system_changed)

    def put_on(self) -> None:
        """Dress the program. Best done once the window is built: every widget added later is dressed anew."""
        self._apply()

    def take_off(self) -> None:
        """Undress the program."""
        self._app.setStyleSheet("")

    @property
    def mode(self) -> Mode:
        """The choice of the user."""
        return self._mode

    def set_mode(self, mode: Mode) -> None:
        """Follow the system, or force a theme."""
        self._mode = mode
        self._apply()

    def colour(self, tone: Tone) -> QColor:
        """Return the colour of a line or mark."""
        return QColor(self.theme.mark(tone))

    def ink(self, tone: Tone) -> QColor:
        """Return the colour of text."""
        return QColor(self.theme.ink(tone))

    def _system_changed(self) -> None:
        if self._mode is Mode.SYSTEM:
            self._apply()

    def _apply(self) -> None:
        self.theme = self._wanted()
        # Dressing over an old sheet takes Qt nine times as long as undressing first.
        self.take_off()
        self._app.setPalette(palette(self.theme))
        self._app.setStyleSheet(style_sheet(self.theme))
        self.changed.emit()

    def _wanted(self) -> Theme:
        match self._mode:
            case Mode.DARK:
                return DARK
            case Mode.LIGHT:
                return LIGHT
            case Mode.SUNLIGHT:
                return SUNLIGHT
            case Mode.SYSTEM:
                light = self._app.styleHints().colorScheme() is Qt.ColorScheme.Light
                return LIGHT if light else DARK


def palette(theme: Theme) -> QPalette:
    """Return the palette for what the style sheet does not reach."""
    made = QPalette()
    roles = {
        QPalette.ColorRole.Window: theme.ground,
        QPalette.ColorRole.WindowText: theme.text,
        QPalette.ColorRole.Base: theme.panel,
        QPalette.ColorRole.AlternateBase: theme.raised,
        QPalette.ColorRole.Text: theme.text,
        QPalette.ColorRole.Button: theme.raised,
        QPalette.ColorRole.ButtonText: theme.text,
        QPalette.ColorRole.BrightText: theme.text,
        QPalette.ColorRole.ToolTipBase: theme.raised,
        QPalette.ColorRole.ToolTipText: theme.text,
        QPalette.ColorRole.PlaceholderText: theme.ink(Tone.QUIET),
        QPalette.ColorRole.Highlight: theme.primary,
        QPalette.ColorRole.HighlightedText: theme.on_primary,
        QPalette.ColorRole.Link: theme.ink(Tone.PRESSURE),
    }
    for role, colour in roles.items():
        made.setColor(role, QColor(colour))
    for role in (QPalette.ColorRole.WindowText, QPalette.ColorRole.Text, QPalette.ColorRole.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(theme.ink(Tone.QUIET)))
    return made


def tabular(font: QFont, pixels: int, weight: QFont.Weight = QFont.Weight.Normal) -> QFont:
    """Return `font` in a size, with figures of one width, so that numbers do not jump."""
    made = QFont(font)
    made.setPixelSize(pixels)
    made.setWeight(weight)
    made.setFeature(QFont.Tag("tnum"), 1)
    return made
