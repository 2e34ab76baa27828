"""The list of what is owned, each with the state of its calibration in words."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from acquisition.register.records import KINDS
from gui.theme import GAP_4, GAP_8, GAP_12, GAP_16, Tone
from gui.viewmodels.register import ItemCard, RegisterPicture
from gui.views.choices import Choice
from gui.views.parts import ElidedLabel, button, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.words import say


class ItemButton(QPushButton):
    """One thing in the list."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.setCheckable(True)
        self.setProperty("role", "card")
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self._title, self._state, self._words = ElidedLabel("strong"), label(), wrapped("quiet")
        head = row(self._title, self._state)
        head.setStretch(0, 1)
        box = column(GAP_4)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addWidget(self._words)
        self.setLayout(box)
        for part in (self._title, self._state, self._words):
            part.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def show_card(self, card: ItemCard) -> None:
        """Show a moment."""
        self._title.show_text(card.title)
        set_text(self._state, card.state)
        set_tone(self._state, card.tone)
        set_text(self._words, card.words)
        self.setChecked(card.chosen)
        self.setAccessibleName(f"{card.title}, {card.state}. {card.words}")
        inside = self.layout()
        assert inside is not None
        self.setFixedHeight(inside.heightForWidth(max(self.width(), 240)))


class RegisterPage(QWidget):
    """The list. `chosen` carries an id, `added` a kind."""

    chosen = Signal(str)
    added = Signal(str)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self._shown: RegisterPicture | None = None
        self._ids: list[str] = []
        self.cards: list[ItemButton] = []
        self._empty, self._trouble = wrapped("quiet"), wrapped()
        set_tone(self._trouble, Tone.BAD)
        self.kind = Choice()
        self.kind.setAccessibleName(say("What to add"))
        for kind in KINDS:
            self.kind.addItem(say(kind.capitalize()), kind)
        self.add = button(say("Add"))
        self.add.setAccessibleName(say("Add equipment"))
        self.add.clicked.connect(lambda: self.added.emit(str(self.kind.currentData())))
        self.check = button(say("Check two gauges on one hose"))
        self._cards = column(GAP_8)
        inside = column(GAP_8)
        inside.addWidget(self._trouble)
        inside.addWidget(self._empty)
        inside.addLayout(self._cards)
        inside.addStretch(1)
        adding = row(self.kind, self.add)
        adding.setStretch(0, 1)
        box = column(GAP_8)
        box.addWidget(scrolled(inside, say("Equipment register")), 1)
        box.addLayout(adding)
        box.addWidget(self.check)
        self.setLayout(box)

    def show_picture(self, picture: RegisterPicture) -> None:
        """Show a moment."""
        set_text(self._empty, picture.empty)
        self._empty.setVisible(bool(picture.empty))
        set_text(self._trouble, picture.trouble)
        self._trouble.setVisible(bool(picture.trouble))
        self._ids = [card.id for card in picture.cards]
        while len(self.cards) < len(picture.cards):
            made, at = ItemButton(), len(self.cards)
            made.clicked.connect(lambda _=False, at=at: self.chosen.emit(self._ids[at]))
            self.cards.append(made)
            self._cards.addWidget(made)
        for at, view in enumerate(self.cards):
            view.setVisible(at < len(picture.cards))
            if at < len(picture.cards):
                view.show_card(picture.cards[at])
