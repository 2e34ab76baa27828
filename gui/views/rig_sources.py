"""Choosing a simulated house and its speed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QButtonGroup, QPushButton, QSizePolicy, QWidget

from gui.theme import GAP_4, GAP_8, GAP_12, GAP_16, Tone
from gui.viewmodels.rig_place import SPEEDS, RigPicture, SourceCard, factor_words
from gui.views.parts import button, column, in_order, label, row, set_text, wrapped
from gui.views.scrolled import scrolled
from gui.words import say

LEAST_HEIGHT = 60


class CardButton(QPushButton):
    """A house to choose: title and description."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.setCheckable(True)
        self.setProperty("role", "card")
        self.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.setMinimumHeight(LEAST_HEIGHT)
        self._title = label(role="strong")
        self._state = label(role="quiet", tone=Tone.GOOD)
        self._words = wrapped("quiet")
        head = row(self._title)
        head.addStretch(1)
        head.addWidget(self._state)
        box = column(GAP_4)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addWidget(self._words)
        self.setLayout(box)
        for part in (self._title, self._state, self._words):
            part.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def show_card(self, card: SourceCard) -> None:
        """Show a house."""
        set_text(self._title, card.title)
        set_text(self._state, say("✓ connected") if card.connected else "")
        set_text(self._words, card.description)
        self.setAccessibleName(f"{card.title}. {card.description}")

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the height that the description needs at this width: a list that has little room scrolls instead."""
        super().resizeEvent(event)
        self.setMinimumHeight(self.sizeHint().height())

    def sizeHint(self) -> QSize:
        """Leave room for the description."""
        inside = self.layout()
        assert inside is not None
        height = inside.heightForWidth(max(self.width(), 240)) if inside.hasHeightForWidth() else 0
        return QSize(240, max(height, inside.sizeHint().height(), LEAST_HEIGHT))


class RigSources(QWidget):
    """The houses there are. `connect_asked` carries id and speed, `chosen` the id of the one that is selected."""

    connect_asked = Signal(str, float)
    disconnect_asked = Signal()
    selected = Signal()

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self._ids: list[str] = []
        self._cards: list[CardButton] = []
        self._disconnects = False
        self._houses = QButtonGroup(self)
        self._houses.idClicked.connect(self._selected)
        self._speeds = QButtonGroup(self)
        self._speeds.idClicked.connect(self._selected)
        self._box = column(GAP_8)
        speeds = row(gap=GAP_4)
        for at, factor in enumerate(SPEEDS):
            made = button(factor_words(factor), "speed")
            made.setCheckable(True)
            made.setChecked(factor == 1.0)
            made.setAccessibleName(say("{factor} times as fast as real time", factor=f"{factor:g}"))
            self._speeds.addButton(made, at)
            speeds.addWidget(made, 1)
        self.connect_button = button(say("Connect"))
        self.connect_button.clicked.connect(self._connect)
        box = column(GAP_12)
        box.addWidget(
            self._note(say("Invented houses that leak, with wind, fan and gauges. They run the real program."))
        )
        self._list = scrolled(self._box, say("Simulated houses"))
        # The list takes what room there is up to its own height; the stretch below gets the rest.
        box.addWidget(self._list, 1000)
        box.addWidget(label(say("Speed against real time"), "small"))
        box.addLayout(speeds)
        box.addWidget(self.connect_button)
        box.addStretch(1)
        self.setLayout(box)

    @property
    def chosen(self) -> str:
        """The house that is selected."""
        at = self._houses.checkedId()
        return self._ids[at] if 0 <= at < len(self._ids) else ""

    @property
    def factor(self) -> float:
        """The speed that is selected."""
        return SPEEDS[max(self._speeds.checkedId(), 0)]

    def choose(self, source_id: str, factor: float) -> None:
        """Select a house and a speed."""
        if source_id in self._ids:
            self._cards[self._ids.index(source_id)].setChecked(True)
        if factor in SPEEDS:
            self._speeds.button(SPEEDS.index(factor)).setChecked(True)

    def show_picture(self, picture: RigPicture) -> None:
        """Show a moment."""
        self._have(picture.sources)
        for view, card in zip(self._cards, picture.sources, strict=True):
            view.show_card(card)
        heights = [view.sizeHint().height() for view in self._cards]
        self._list.setMaximumHeight(sum(heights) + GAP_8 * max(len(heights) - 1, 0))
        self._disconnects = picture.disconnects
        set_text_of(self.connect_button, picture.simulated_button)
        self.connect_button.setEnabled(picture.enabled and bool(self._cards))

    def _have(self, cards: Sequence[SourceCard]) -> None:
        ids = [card.id for card in cards]
        if ids == self._ids:
            return
        self._ids = ids
        for at in range(len(self._cards), len(cards)):
            made = CardButton()
            self._houses.addButton(made, at)
            self._cards.append(made)
            self._box.addWidget(made)
        in_order(*self._cards, *self._speeds.buttons(), self.connect_button)
        if self._cards and self._houses.checkedId() < 0:
            connected = next((at for at, card in enumerate(cards) if card.connected), 0)
            self._cards[connected].setChecked(True)

    def _connect(self) -> None:
        if self._disconnects:
            self.disconnect_asked.emit()
        elif self.chosen:
            self.connect_asked.emit(self.chosen, self.factor)

    def _selected(self) -> None:
        self.selected.emit()

    def _note(self, text: str) -> QWidget:
        made = wrapped("quiet")
        made.setText(text)
        return made


def set_text_of(view: QPushButton, text: str) -> None:
    """Change the word on a button; cheap when it does not change."""
    if view.text() != text:
        view.setText(text)
