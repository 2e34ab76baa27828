"""The page on which a person teaches a gauge: listen, click the numbers, say what they are, save."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QTextCharFormat, QTextCursor
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QTextEdit, QVBoxLayout, QWidget

from gui.look import Look
from gui.theme import BODY, GAP_8, SMALL
from gui.viewmodels.teach import TeachPicture
from gui.views.choices import Choice
from gui.views.parts import button, column, label, monospaced, row, set_text, wrapped
from gui.views.pick_rows import PickRows
from gui.views.scrolled import scrolled
from gui.words import say

RAW_HEIGHT, SAMPLE_HEIGHT = 150, 44


class SampleLine(QPlainTextEdit):
    """The line whose numbers are clicked; with the keyboard: the arrows and Enter. `pointed` carries the place."""

    pointed = Signal(int)

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._look = look
        self._marks: tuple[tuple[int, int, bool], ...] = ()
        self.setReadOnly(True)
        self.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFixedHeight(SAMPLE_HEIGHT)
        self.setFont(monospaced(BODY + 2))
        self.setAccessibleName(say("A line of the gauge: click its numbers"))
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )

    def show_line(self, text: str, marks: tuple[tuple[int, int, bool], ...]) -> None:
        """Show a line; numbers are underlined, those that were pointed at filled."""
        if text != self.toPlainText():
            self.setPlainText(text)
        self._marks = marks
        selections = []
        for start, end, chosen in marks:
            selection = QTextEdit.ExtraSelection()
            cursor = QTextCursor(self.document())
            cursor.setPosition(start)
            cursor.setPosition(end, QTextCursor.MoveMode.KeepAnchor)
            form = QTextCharFormat()
            form.setFontUnderline(True)
            if chosen:
                form.setBackground(QColor(self._look.theme.primary))
                form.setForeground(QColor(self._look.theme.on_primary))
            selection.cursor, selection.format = cursor, form
            selections.append(selection)
        self.setExtraSelections(selections)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Point at what is under the mouse."""
        super().mouseReleaseEvent(event)
        if event.button() is Qt.MouseButton.LeftButton:
            self.pointed.emit(self.cursorForPosition(event.position().toPoint()).position())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Point at what is at the cursor."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.pointed.emit(self.textCursor().position())
            return
        super().keyPressEvent(event)


class TeachPage(QWidget):
    """The page. `pointed` carries a place in the line; `said` a number, a field and a text; `removed` a number."""

    pointed = Signal(int)
    said = Signal(int, str, str)
    removed = Signal(int)
    titled = Signal(str)

    def __init__(self, look: Look, quantities: tuple[str, ...]) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: TeachPicture | None = None
        self._picks = PickRows(quantities)
        self._picks.said.connect(self.said)
        self._picks.removed.connect(self.removed)
        self.rows = self._picks.rows
        self.port = Choice()
        self.port.setEditable(True)
        self.port.setAccessibleName(say("Port of the gauge"))
        self.ask = QLineEdit()
        self.ask.setPlaceholderText(say("empty: it sends by itself"))
        self.ask.setAccessibleName(say("What it is asked, if it only answers"))
        self.listen = button(say("Listen"))
        self.sentence = wrapped("quiet")
        self.raw = QPlainTextEdit()
        self.raw.setReadOnly(True)
        self.raw.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.raw.setFont(monospaced(SMALL))
        self.raw.setFixedHeight(RAW_HEIGHT)
        self.raw.setMinimumWidth(120)
        self.raw.setAccessibleName(say("What came over the wire, as text and as bytes"))
        self.sample = SampleLine(look)
        self.sample.pointed.connect(self.pointed)
        self.verdict = wrapped("quiet")
        self.title = QLineEdit()
        self.title.setAccessibleName(say("Name of the profile"))
        self.title.editingFinished.connect(lambda: self.titled.emit(self.title.text()))
        self.save = button(say("Save the profile and use it"))
        self.setLayout(self._laid_out())

    def show_ports(self, names: tuple[str, ...]) -> None:
        """Offer ports."""
        typed = self.port.currentText()
        self.port.clear()
        self.port.addItems(list(names))
        self.port.setEditText(typed or (names[0] if names else ""))

    def show_picture(self, picture: TeachPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        set_text(self.sentence, picture.sentence)
        self.listen.setEnabled(not picture.listening)
        if self.raw.toPlainText() != picture.raw:
            self.raw.setPlainText(picture.raw)
        self.sample.show_line(picture.sample, picture.marks)
        self.sample.setVisible(bool(picture.sample))
        set_text(self.verdict, picture.verdict)
        self.verdict.setVisible(bool(picture.verdict))
        if self.title.text() != picture.title and not self.title.hasFocus():
            self.title.setText(picture.title)
        self.save.setEnabled(picture.ready)
        self._picks.show_picks(picture.picks)

    def _laid_out(self) -> QVBoxLayout:
        inside = column(GAP_8)
        ports, asks = column(3), column(3)
        ports.addWidget(label(say("Port"), "small"))
        ports.addWidget(self.port)
        asks.addWidget(label(say("Asked with"), "small"))
        asks.addWidget(self.ask)
        where = row()
        where.addLayout(ports, 1)
        where.addLayout(asks, 1)
        inside.addLayout(where)
        inside.addWidget(self.listen)
        inside.addWidget(self.sentence)
        inside.addWidget(label(say("What came, as text and as bytes"), "small"))
        inside.addWidget(self.raw)
        inside.addWidget(self.sample)
        inside.addWidget(self.verdict)
        inside.addWidget(self._picks)
        inside.addWidget(label(say("Name of the profile"), "small"))
        inside.addWidget(self.title)
        inside.addWidget(self.save)
        inside.addStretch(1)
        box = column(0)
        box.addWidget(scrolled(inside, say("Teach a gauge")), 1)
        return box
