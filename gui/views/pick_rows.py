"""The numbers that were pointed at while an instrument is taught, each in a row: its name, what it is, its unit."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from gui.theme import BODY, GAP_4, GAP_8
from gui.viewmodels.teach import PickPicture
from gui.views.choices import Choice
from gui.views.parts import button, column, label, monospaced, row, set_text
from gui.words import say


class PickRow(QWidget):
    """A number that was pointed at. `said` carries its place in the list, the field and the text."""

    said = Signal(int, str, str)
    removed = Signal(int)

    def __init__(self, at: int, quantities: tuple[str, ...]) -> None:
        """Lay it out."""
        super().__init__()
        self.text = label(role="strong")
        self.text.setFont(monospaced(BODY))
        self.name = QLineEdit()
        self.name.setMaximumWidth(80)
        self.name.setAccessibleName(say("Name of the channel"))
        self.quantity, self.unit = Choice(), Choice()
        self.quantity.setAccessibleName(say("What the number is"))
        self.unit.setAccessibleName(say("Its unit"))
        for quantity in quantities:
            self.quantity.addItem(quantity.capitalize(), quantity)
        self.value = label(role="quiet")
        self.value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        remove = button(say("Remove"), "slim")
        remove.clicked.connect(lambda: self.removed.emit(at))
        self.name.editingFinished.connect(lambda: self.said.emit(at, "name", self.name.text()))
        self.quantity.activated.connect(lambda: self.said.emit(at, "quantity", str(self.quantity.currentData())))
        self.unit.activated.connect(lambda: self.said.emit(at, "unit", self.unit.currentText()))
        for choice in (self.quantity, self.unit):
            choice.setMinimumContentsLength(5)
            choice.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        head = row(self.text, self.value, remove)
        head.setStretch(1, 1)
        said = row(self.name, self.quantity, self.unit)
        said.setStretch(1, 2)
        said.setStretch(2, 1)
        box = column(GAP_4)
        box.addLayout(head)
        box.addLayout(said)
        self.setLayout(box)

    def show_pick(self, pick: PickPicture) -> None:
        """Show a moment."""
        set_text(self.text, pick.text)
        if self.name.text() != pick.name and not self.name.hasFocus():
            self.name.setText(pick.name)
        self.quantity.setCurrentIndex(max(self.quantity.findData(pick.quantity), 0))
        if tuple(self.unit.itemText(at) for at in range(self.unit.count())) != pick.units:
            self.unit.clear()
            self.unit.addItems(list(pick.units))
        self.unit.setCurrentText(pick.unit)
        set_text(self.value, pick.value)


class PickRows(QWidget):
    """A row for each number. `said` carries its place, a field and a text; `removed` its place."""

    said = Signal(int, str, str)
    removed = Signal(int)

    def __init__(self, quantities: tuple[str, ...]) -> None:
        """Begin without rows."""
        super().__init__()
        self.rows: list[PickRow] = []
        self._quantities = quantities
        self._box = column(GAP_8)
        self.setLayout(self._box)

    def show_picks(self, picks: Sequence[PickPicture]) -> None:
        """Show so many rows; further ones are made as they are needed and kept."""
        while len(self.rows) < len(picks):
            made = PickRow(len(self.rows), self._quantities)
            made.said.connect(self.said)
            made.removed.connect(self.removed)
            self._box.addWidget(made)
            self.rows.append(made)
        for at, view in enumerate(self.rows):
            view.setVisible(at < len(picks))
            if at < len(picks):
                view.show_pick(picks[at])
