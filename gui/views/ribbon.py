"""The ribbon on top: what is tested, three figures, links, the record, STOP FAN."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QWidget

from gui.look import Look
from gui.theme import GAP_8, GAP_12, GAP_16, Tone
from gui.viewmodels.ribbon import MOST_LINKS, Figure, RibbonPicture
from gui.viewmodels.ribbon import Lamp as LampPicture
from gui.views.parts import ElidedLabel, Lamp, StopButton, column, label, row, set_text
from gui.words import say

RIBBON_HEIGHT = 64
LAMP_WIDTH = 108
INDENT = 16
"""What stands under a lamp begins where its words do."""
WIDEST_FIGURES = ("−888.8", "88 888", "888")


class FigureView(QWidget):
    """One live figure with its caption and unit."""

    def __init__(self, tone: Tone, widest: str) -> None:
        """Leave room for the widest value, so that nothing moves while it changes."""
        super().__init__()
        self._caption = label(role="small")
        self._value = label(role="figure", tone=tone)
        self._unit = label(role="quiet")
        self._widest = widest
        line = row(self._value, self._unit, gap=6)
        line.setAlignment(self._unit, Qt.AlignmentFlag.AlignBottom)
        line.addStretch(1)
        self._unit.setContentsMargins(0, 0, 0, 4)
        box = column(0)
        box.addStretch(1)
        box.addWidget(self._caption)
        box.addLayout(line)
        box.addStretch(1)
        self.setLayout(box)

    def show_figure(self, figure: Figure) -> None:
        """Show a figure."""
        set_text(self._caption, figure.caption)
        set_text(self._value, figure.value)
        set_text(self._unit, figure.unit)
        if self.accessibleName() != figure.spoken:
            self.setAccessibleName(figure.spoken)
        for part in (self._value, self._unit):
            part.ensurePolished()
        metrics = self._value.fontMetrics()
        room = metrics.horizontalAdvance(self._widest) + 8 + self._unit.sizeHint().width()
        if self.minimumWidth() < room:
            self.setMinimumWidth(room)


class LampRow(QWidget):
    """A lamp with its words."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._lamp = Lamp(look)
        self._words = ElidedLabel("quiet")
        line = row(self._lamp, self._words, gap=6)
        line.setStretch(1, 1)
        self.setLayout(line)

    def show_lamp(self, lamp: LampPicture | None) -> None:
        """Show a lamp, or nothing."""
        self._lamp.setVisible(lamp is not None)
        if lamp is None:
            self._words.show_text("")
            return
        self._lamp.show_tone(lamp.tone)
        self._words.show_text(lamp.words, lamp.tip)


class Ribbon(QFrame):
    """The whole ribbon."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self.setProperty("role", "bar")
        self.setFixedHeight(RIBBON_HEIGHT)
        self._shown: RibbonPicture | None = None
        self._title = ElidedLabel("head")
        self._subtitle = ElidedLabel("quiet")
        names = column(2)
        names.addStretch(1)
        names.addWidget(self._title)
        names.addWidget(self._subtitle)
        names.addStretch(1)
        tones = (Tone.PRESSURE, Tone.FLOW, Tone.PLAIN)
        self._figures = [FigureView(*pair) for pair in zip(tones, WIDEST_FIGURES, strict=True)]
        self._links = [LampRow(look) for _ in range(MOST_LINKS)]
        self._record = LampRow(look)
        self._record_detail = ElidedLabel("quiet")
        self.stop = StopButton()
        line = QHBoxLayout()
        line.setContentsMargins(GAP_16 + 4, 0, GAP_16, 0)
        line.setSpacing(GAP_16)
        line.addLayout(names, 5)
        for figure in self._figures:
            line.addWidget(figure)
        line.addLayout(self._lamps(), 3)
        line.addWidget(self.stop)
        self.setLayout(line)

    def show_picture(self, picture: RibbonPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        self._title.show_text(picture.title)
        self._subtitle.show_text(picture.subtitle)
        for view, figure in zip(self._figures, picture.figures, strict=True):
            view.show_figure(figure)
        for at, lamp_row in enumerate(self._links):
            lamp_row.show_lamp(picture.links[at] if at < len(picture.links) else None)
            lamp_row.setVisible(at < max(len(picture.links), 1))
        self._record.show_lamp(picture.record)
        self._record.setVisible(picture.record is not None)
        self._record_detail.setVisible(picture.record is not None)
        # Measured now: when the window is laid out the theme has not given the label its font yet.
        time = self._record_detail.fontMetrics().horizontalAdvance(say("saved {time}", time="00:00:00"))
        self._record_detail.setMinimumWidth(max(LAMP_WIDTH, INDENT + time + 2))
        self._record_detail.show_text(picture.record_detail)

    def _lamps(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setContentsMargins(0, GAP_12, 0, GAP_12)
        grid.setHorizontalSpacing(GAP_8)
        grid.setVerticalSpacing(4)
        for at, view in enumerate(self._links):
            view.setMinimumWidth(LAMP_WIDTH)
            grid.addWidget(view, at % 2, at // 2)
        grid.addWidget(self._record, 0, 2)
        self._record_detail.setContentsMargins(INDENT, 0, 0, 0)
        self._record.setMinimumWidth(LAMP_WIDTH)
        grid.addWidget(self._record_detail, 1, 2)
        for at in range(3):
            grid.setColumnStretch(at, 1)
        return grid
