"""A field: its name, where it is typed, its unit, and one sentence below when there is something to say."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit, QWidget

from gui.theme import SIGNS, Tone
from gui.viewmodels.retold import retold
from gui.viewmodels.sheet import Kind
from gui.views.choices import Fitted, Names, Proposals
from gui.views.parts import column, label, row, set_text, set_tone, wrapped
from gui.words import say

LONG_HEIGHT = 84
UNIT_WIDTH = 28


class FieldView(QWidget):
    """One field. `committed` carries its id and what was typed, when the person is done with it.

    It says its name, its choices and its placeholder in the language on the screen; what is proposed stays as it is.
    """

    committed = Signal(str, str)

    def __init__(self, field_id: str, kind: Kind, name: str, choices: Sequence[tuple[str, str]] = ()) -> None:
        """Make it empty."""
        super().__init__()
        self.field_id = field_id
        self._shown: tuple[str, str, str, Tone] | None = None
        self._offered: tuple[tuple[str, str], ...] = ()
        self._name = label(say(name), "small")
        self._unit = label(role="quiet")
        self._unit.setMinimumWidth(UNIT_WIDTH)
        self._message = wrapped("small")
        self._message.hide()
        self.line: QLineEdit | None = None
        self.choice: QComboBox | None = None
        self.long: QPlainTextEdit | None = None
        self.input = self._made(kind, choices)
        for view in (self.input, self.line):
            if view is not None:
                view.setAccessibleName(say(name))
        self._name.setBuddy(self.input)
        entry = row(self.input, self._unit)
        entry.setStretch(0, 1)
        box = column(3)
        box.addWidget(self._name)
        box.addLayout(entry)
        box.addWidget(self._message)
        box.addStretch(1)
        self.setLayout(box)

    def text(self) -> str:
        """Return what stands in the field."""
        if self.line is not None:
            return self.line.text()
        if self.choice is not None:
            data = self.choice.currentData()
            return str(data) if data is not None else self.choice.currentText()
        assert self.long is not None
        return self.long.toPlainText()

    def show_value(self, text: str, unit: str, message: str, tone: Tone, placeholder: str = "") -> None:
        """Show a value; what is being typed is not disturbed as long as the value stays what it was."""
        state = (text, unit, message, tone)
        if state == self._shown:
            return
        if self._shown is None or self._shown[0] != text or self.text() != text:
            self._put(text)
        self._shown = state
        set_text(self._unit, unit)
        self._unit.setVisible(bool(unit))
        sign = {Tone.BAD: SIGNS[Tone.BAD], Tone.ATTENTION: SIGNS[Tone.ATTENTION]}.get(tone, "")
        set_text(self._message, f"{sign} {message}".strip())
        set_tone(self._message, tone)
        self._message.setVisible(bool(message))
        self.input.setAccessibleDescription(message)
        if self.line is not None and self.line.placeholderText() != say(placeholder):
            self.line.setPlaceholderText(say(placeholder))
        wrong = "true" if tone is Tone.BAD else "false"
        if self.input.property("wrong") != wrong:
            self.input.setProperty("wrong", wrong)
            self.input.style().unpolish(self.input)
            self.input.style().polish(self.input)

    def show_choices(self, choices: Sequence[tuple[str, str]]) -> None:
        """Offer these choices; what is chosen follows by `show_value`."""
        if self.choice is None or self._offered == tuple(choices):
            return
        self._offered, self._shown = tuple(choices), None
        self.choice.clear()
        for value, words in choices:
            self.choice.addItem(words if self.line is not None else retold(words), value)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Notice when somebody leaves the long text."""
        if watched is self.long and event.type() is QEvent.Type.FocusOut:
            self._commit()
        return bool(super().eventFilter(watched, event))

    def _made(self, kind: Kind, choices: Sequence[tuple[str, str]]) -> QWidget:
        if kind in (Kind.CHOICE, Kind.NAMES):
            self.choice = Names() if kind is Kind.NAMES else Fitted()
            self.show_choices(choices)
            self.choice.activated.connect(self._commit)
            return self.choice
        if kind is Kind.PROPOSED:
            self.choice = Proposals()
            self.line = self.choice.lineEdit()
            assert self.line is not None
            self.show_choices(choices)
            self.choice.activated.connect(self._commit)
            self.line.editingFinished.connect(self._commit)
            return self.choice
        if kind is Kind.LONG:
            self.long = QPlainTextEdit()
            self.long.setFixedHeight(LONG_HEIGHT)
            self.long.setTabChangesFocus(True)
            self.long.installEventFilter(self)
            return self.long
        self.line = QLineEdit()
        self.line.setMinimumWidth(60)
        self.line.editingFinished.connect(self._commit)
        return self.line

    def _put(self, text: str) -> None:
        if self.line is not None:
            self.line.setText(text)
            self.line.setCursorPosition(0)
        elif self.choice is not None:
            at = self.choice.findData(text)
            if at >= 0:
                self.choice.setCurrentIndex(at)
        elif self.long is not None and self.long.toPlainText() != text:
            self.long.setPlainText(text)

    def _commit(self) -> None:
        self.committed.emit(self.field_id, self.text())
