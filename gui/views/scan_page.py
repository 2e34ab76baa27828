"""The page on which a Modbus instrument is taught: read its registers, choose what the display shows, save."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QListWidget, QListWidgetItem, QWidget

from gui.theme import GAP_8, Tone
from gui.viewmodels.scan import PARITIES, SPEEDS, WIRES, ScanPicture
from gui.viewmodels.sheet import Kind
from gui.views.choices import Choice
from gui.views.fields import FieldView
from gui.views.parts import button, column, label, row, set_text, wrapped
from gui.views.pick_rows import PickRows
from gui.views.scrolled import scrolled
from gui.words import say

LIST_HEIGHT = 148


class ScanPage(QWidget):
    """The page. `typed` carries field and text; `pointed` a reading; `said` a number, a field and a text."""

    typed = Signal(str, str)
    pointed = Signal(int)
    said = Signal(int, str, str)
    removed = Signal(int)
    titled = Signal(str)
    shown = Signal(str)

    def __init__(self, quantities: tuple[str, ...]) -> None:
        """Lay it out."""
        super().__init__()
        self._picture: ScanPicture | None = None
        self._picks = PickRows(quantities)
        self._picks.said.connect(self.said)
        self._picks.removed.connect(self.removed)
        self.rows = self._picks.rows
        self.port = Choice()
        self.port.setEditable(True)
        self.port.setAccessibleName(say("Port of the instrument"))
        self._port_line = QLineEdit()
        self.port.setLineEdit(self._port_line)
        self._port_line.editingFinished.connect(lambda: self.typed.emit("port", self.port.currentText()))
        self.port.activated.connect(lambda _: self.typed.emit("port", self.port.currentText()))
        self._port_error = wrapped("small")
        self.fields = {
            "wire": FieldView("wire", Kind.CHOICE, say("Wire"), [(wire.value, words) for wire, words in WIRES.items()]),
            "unit": FieldView("unit", Kind.NUMBER, say("Unit")),
            "baud": FieldView("baud", Kind.CHOICE, say("Speed"), [(str(speed), str(speed)) for speed in SPEEDS]),
            "parity": FieldView("parity", Kind.CHOICE, say("Parity"), [(item, item) for item in PARITIES]),
            "first": FieldView("first", Kind.NUMBER, say("First register")),
            "count": FieldView("count", Kind.NUMBER, say("How many")),
        }
        for view in self.fields.values():
            view.committed.connect(self.typed)
        self.scan = button(say("Read the registers"))
        self.sentence, self.empty, self.verdict = wrapped("quiet"), wrapped("quiet"), wrapped("quiet")
        self.display = QLineEdit()
        self.display.setPlaceholderText(say("such as 21.3"))
        self.display.setAccessibleName(say("What its display shows"))
        self.display.textEdited.connect(self.shown)
        self.list = QListWidget()
        self.list.setFixedHeight(LIST_HEIGHT)
        self.list.setMinimumWidth(120)
        self.list.setAccessibleName(say("Readings of the registers"))
        self.list.itemClicked.connect(lambda item: self.pointed.emit(self.list.row(item)))
        self.list.itemActivated.connect(lambda item: self.pointed.emit(self.list.row(item)))
        self.title = QLineEdit()
        self.title.setAccessibleName(say("Name of the profile"))
        self.title.editingFinished.connect(lambda: self.titled.emit(self.title.text()))
        self.save = button(say("Save the profile and use it"))
        self._lay_out()

    def show_ports(self, names: tuple[str, ...]) -> None:
        """Offer ports."""
        typed = self.port.currentText()
        self.port.clear()
        self.port.addItems(list(names))
        self.port.setEditText(typed or (names[0] if names else ""))
        if self.port.currentText() != typed:
            self.typed.emit("port", self.port.currentText())

    def show_picture(self, picture: ScanPicture) -> None:
        """Show a moment."""
        if picture == self._picture:
            return
        self._picture = picture
        for field, view in self.fields.items():
            error = picture.errors.get(field, "")
            view.show_value(getattr(picture.fields, field), "", error, Tone.BAD if error else Tone.QUIET)
        set_text(self._port_error, picture.errors.get("port", ""))
        self._port_error.setVisible("port" in picture.errors)
        set_text(self.sentence, picture.sentence)
        self.scan.setEnabled(not picture.scanning)
        self._show_list(picture)
        for words, text in ((self.empty, picture.empty), (self.verdict, picture.verdict)):
            set_text(words, text)
            words.setVisible(bool(text))
        if self.title.text() != picture.title and not self.title.hasFocus():
            self.title.setText(picture.title)
        self.save.setEnabled(picture.ready)
        self._picks.show_picks(picture.picks)

    def _show_list(self, picture: ScanPicture) -> None:
        self._results.setVisible(bool(picture.rows) or bool(picture.empty))
        self.list.setVisible(bool(picture.rows))
        texts = [f"{'✓' if chosen else ' '} {words}" for words, chosen in picture.rows]
        if texts != [self.list.item(at).text() for at in range(self.list.count())]:
            where = self.list.currentRow()
            self.list.clear()
            for text in texts:
                self.list.addItem(QListWidgetItem(text))
            self.list.setCurrentRow(min(where, len(texts) - 1))

    def _lay_out(self) -> None:
        inside = column(GAP_8)
        ports = column(3)
        ports.addWidget(label(say("Port"), "small"))
        ports.addWidget(self.port)
        ports.addWidget(self._port_error)
        ports.addStretch(1)
        where = row()
        where.addLayout(ports, 1)
        where.addWidget(self.fields["wire"], 1)
        inside.addLayout(where)
        for names in (("unit", "baud", "parity"), ("first", "count")):
            line = row(*(self.fields[name] for name in names))
            for at in range(len(names)):
                line.setStretch(at, 1)
            inside.addLayout(line)
        inside.addWidget(self.scan)
        inside.addWidget(self.sentence)
        self._results = QWidget()
        results = column(GAP_8)
        results.addWidget(label(say("What its display shows now"), "small"))
        results.addWidget(self.display)
        results.addWidget(self.list)
        results.addWidget(self.empty)
        self._results.setLayout(results)
        inside.addWidget(self._results)
        inside.addWidget(self.verdict)
        inside.addWidget(self._picks)
        inside.addWidget(label(say("Name of the profile"), "small"))
        inside.addWidget(self.title)
        inside.addWidget(self.save)
        inside.addStretch(1)
        box = column(0)
        box.addWidget(scrolled(inside, say("Teach a Modbus instrument")), 1)
        self.setLayout(box)
