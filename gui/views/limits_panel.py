"""The panel of published limits: a place, its climate zone, and ticks."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox

from gui.theme import GAP_4, GAP_8
from gui.viewmodels.published import PublishedPicture
from gui.viewmodels.retold import retold
from gui.views.choices import Choice, Fitted
from gui.views.parts import Panel, column, in_order, row
from gui.views.scrolled import scrolled
from gui.words import say

HEIGHT = 190
"""At most; longer lists are scrolled."""


class LimitsPanel(Panel):
    """The panel. `ticked` carries the id of a limit and whether it counts."""

    place_chosen = Signal(str)
    zone_chosen = Signal(str)
    ticked = Signal(str, bool)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__(say("Limits of codes and programmes"))
        self._shown: PublishedPicture | None = None
        self.place, self.zone = Fitted(), Fitted()
        self.boxes: dict[str, QCheckBox] = {}
        self.place.setAccessibleName(say("Place of the limits"))
        self.zone.setAccessibleName(say("Climate zone"))
        for choice, signal in ((self.place, self.place_chosen), (self.zone, self.zone_chosen)):
            choice.activated.connect(lambda at, choice=choice, signal=signal: signal.emit(str(choice.itemData(at))))
        self._lines = column(GAP_4)
        self._lines.addStretch(1)
        self.area = scrolled(self._lines, say("Limits to hold the result against"))
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        beside = row(self.place, self.zone, gap=GAP_8)
        beside.setStretch(0, 1)
        beside.setStretch(1, 1)
        self.body.addLayout(beside)
        self.body.addWidget(self.area)

    def show_picture(self, picture: PublishedPicture) -> None:
        """Show a moment; the ticks are made anew when the list changes."""
        if picture == self._shown:
            return
        self._shown = picture
        _fill(self.place, picture.places, picture.place)
        _fill(self.zone, picture.zones, picture.zone)
        self.zone.setVisible(bool(picture.zones))
        for box in self.boxes.values():
            self._lines.removeWidget(box)
            box.hide()
            box.deleteLater()
        self.boxes = {}
        for item in picture.items:
            box = QCheckBox(item.words)
            box.setToolTip(item.source)
            box.setAccessibleDescription(item.source)
            box.setChecked(item.ticked)
            box.toggled.connect(lambda on, limit_id=item.id: self.ticked.emit(limit_id, on))
            self._lines.insertWidget(len(self.boxes), box)
            box.show()  # counts for the height below only once it does
            self.boxes[item.id] = box
        in_order(self.place, self.zone, *self.boxes.values())
        self.area.setFixedHeight(min(self._lines.sizeHint().height(), HEIGHT))


def _fill(view: Choice, options: tuple[tuple[str, str], ...], chosen: str) -> None:
    shown = tuple((view.itemData(at), view.itemText(at)) for at in range(view.count()))
    if shown != options:
        view.clear()
        for value, words in options:
            view.addItem(retold(words), value)
    view.setCurrentIndex(max(view.findData(chosen), 0))
