"""The panel that asks: in the place where it matters, never a window of its own."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QButtonGroup, QFrame, QGridLayout, QHBoxLayout, QLineEdit, QSizePolicy, QWidget

from gui.theme import GAP_8, GAP_12, GAP_16, SIGNS, Tone
from gui.viewmodels.prompt import Prompt
from gui.viewmodels.retold import retold
from gui.views.choices import Choice
from gui.views.parts import button, column, label, set_text, wrapped
from gui.words import say

MOST_CHOICES = 4


class Places(QGridLayout):
    """A table that may become as narrow as its widest button: whoever holds it then puts them below each other."""

    def minimumSize(self) -> QSize:
        """Return the least size."""
        views = [item.widget() for at in range(self.count()) if (item := self.itemAt(at)) is not None]
        widest = max((view.minimumSizeHint().width() for view in views if view is not None), default=0)
        return QSize(widest, super().minimumSize().height())


class PromptPanel(QFrame):
    """Shows a question with all its choices. `chosen` carries the prompt, the choice and the reason typed."""

    chosen = Signal(object, str, str)

    def __init__(self) -> None:
        """Make it empty and hidden."""
        super().__init__()
        self.setProperty("role", "ask")
        self.prompt: Prompt | None = None
        self._title = label(role="head")
        self._text = wrapped()
        self._sign = label(SIGNS[Tone.ATTENTION], "strong", Tone.ATTENTION)
        self._caution = wrapped("quiet")
        self.reason = Choice()
        self.reason.setAccessibleName(say("Reason"))
        self._reason = QLineEdit()
        self._reason.setPlaceholderText(say("Reason"))
        self.reason.setLineEdit(self._reason)
        self._group = QButtonGroup(self)
        self.choices = [button("", "primary" if at == 0 else "") for at in range(MOST_CHOICES)]
        self._places = Places()
        self._places.setSpacing(GAP_8)
        self._across = 0
        for at, view in enumerate(self.choices):
            self._group.addButton(view, at)
            self._places.addWidget(view, 0, at)
        caution = QHBoxLayout()
        caution.setSpacing(GAP_8)
        caution.addWidget(self._sign)
        caution.addWidget(self._caution, 1)
        box = column(GAP_8)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addWidget(self._title)
        box.addWidget(self._text)
        box.addLayout(caution)
        box.addWidget(self.reason)
        box.addLayout(self._places)
        self.setLayout(box)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self._group.idClicked.connect(self._clicked)
        self.hide()

    def show_prompt(self, prompt: Prompt | None) -> None:
        """Show a question, or none."""
        if prompt == self.prompt:
            return
        self.prompt = prompt
        if prompt is None:
            self.hide()
            return
        set_text(self._title, prompt.title)
        set_text(self._text, retold(prompt.text))
        set_text(self._caution, retold(prompt.caution))
        for part in (self._sign, self._caution):
            part.setVisible(bool(prompt.caution))
        self.reason.setVisible(bool(prompt.reasons))
        self.reason.clear()
        self.reason.addItems(prompt.reasons)
        self._reason.setCursorPosition(0)  # a long one shows its beginning
        for at, view in enumerate(self.choices):
            there = at < len(prompt.choices)
            view.setVisible(there)
            view.setText(retold(prompt.choices[at]) if there else "")
        self._across = 0
        self._place_choices()
        self.setAccessibleName(f"{prompt.title}. {retold(prompt.text)}")
        self.show()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the choices beside or below each other, whichever there is room for."""
        super().resizeEvent(event)
        self._place_choices()

    def _place_choices(self) -> None:
        """Put all in a row, or half of them, or each below the other: so that they can be read whole."""
        views = [view for at, view in enumerate(self.choices) if self.prompt and at < len(self.prompt.choices)]
        if not views:
            return
        room = self.width() - 2 * GAP_16
        across = next((n for n in (len(views), (len(views) + 1) // 2) if _width(views, n) <= room), 1)
        if across == self._across:
            return
        self._across = across
        for view in self.choices:
            self._places.removeWidget(view)
        for at, view in enumerate(views):
            self._places.addWidget(view, at // across, at % across)
        for at in range(MOST_CHOICES + 1):
            self._places.setColumnStretch(at, int(at == across))

    def _clicked(self, at: int) -> None:
        prompt = self.prompt
        if prompt is not None and at < len(prompt.choices):
            self.chosen.emit(prompt, prompt.choices[at], self.reason.currentText())


def _width(views: Sequence[QWidget], across: int) -> int:
    """Return how wide a table of so many columns is."""
    columns = [max(view.sizeHint().width() for view in views[at::across]) for at in range(across)]
    return sum(columns) + GAP_8 * across
