"""Choosing an exercise and writing one: what is wrong is said with its line while it is typed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QColor, QTextCharFormat, QTextCursor
from PySide6.QtWidgets import QPlainTextEdit, QTextEdit, QWidget

from gui.look import Look
from gui.theme import GAP_8, GAP_12, SMALL, Tone
from gui.views.choices import Choice
from gui.views.parts import button, column, monospaced, row, set_text, set_tone, wrapped
from gui.words import say


class ExercisePage(QWidget):
    """`picked` carries the id of a shipped exercise, `edited` the text."""

    picked = Signal(str)
    edited = Signal(str)
    load_asked = Signal()
    save_asked = Signal()

    def __init__(self, look: Look, exercises: Sequence[tuple[str, str]]) -> None:
        """Lay it out."""
        super().__init__()
        self._look = look
        self.choice = Choice()
        self.choice.setAccessibleName(say("Exercise"))
        for name, title in exercises:
            self.choice.addItem(title, name)
        self.choice.setPlaceholderText(say("An exercise of your own"))
        self.choice.activated.connect(lambda _: self.picked.emit(str(self.choice.currentData())))
        self.editor = QPlainTextEdit()
        self.editor.setFont(monospaced(SMALL + 1))
        self.editor.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.editor.setTabChangesFocus(True)
        self.editor.setAccessibleName(say("The exercise as text"))
        self.editor.textChanged.connect(lambda: self.edited.emit(self.editor.toPlainText()))
        self.problem = wrapped("quiet")
        self.load, self.save = button(say("Load a file…")), button(say("Save as…"))
        self.load.clicked.connect(self.load_asked)
        self.save.clicked.connect(self.save_asked)
        box = column(GAP_8)
        box.setContentsMargins(0, GAP_12, 0, 0)
        box.addWidget(self.choice)
        box.addWidget(self.editor, 1)
        box.addWidget(self.problem)
        box.addLayout(row(self.load, self.save))
        self.setLayout(box)

    def show_text(self, text: str, name: str) -> None:
        """Show a text that did not come from here; one with a name that no shipped exercise has is one's own."""
        self.choice.setCurrentIndex(self.choice.findData(name))
        if self.editor.toPlainText() != text:
            self.editor.blockSignals(True)
            self.editor.setPlainText(text)
            self.editor.blockSignals(False)

    def show_problem(self, line: int | None, sentence: str, sound: str) -> None:
        """Say what is wrong, and mark its line; `sound` stands there where nothing is."""
        set_text(self.problem, f"✗ {sentence}" if sentence else f"✓ {sound}")
        set_tone(self.problem, Tone.BAD if sentence else Tone.GOOD)
        marks = []
        if sentence and line is not None:
            mark = QTextEdit.ExtraSelection()
            block = self.editor.document().findBlockByNumber(line - 1)
            cursor = QTextCursor(block)
            form = QTextCharFormat()
            ground = QColor(self._look.theme.bad)
            ground.setAlpha(70)
            form.setBackground(ground)
            form.setProperty(QTextCharFormat.Property.FullWidthSelection, True)
            mark.cursor, mark.format = cursor, form
            marks.append(mark)
        self.editor.setExtraSelections(marks)
