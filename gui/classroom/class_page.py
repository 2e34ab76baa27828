"""The class: where it is served, who is there, and the marks."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QSpinBox, QTableWidget, QTableWidgetItem, QWidget

from acquisition.marking import Marking
from analysis.units import Display, Quantity, format_value, unit_symbol
from gui.classroom.trainer import SeatLine
from gui.theme import GAP_8, GAP_12
from gui.viewmodels.retold import retold
from gui.views.choices import Choice
from gui.views.parts import button, column, label, row, wrapped
from gui.words import mark, say

HEADS = ("", mark("student"), mark("program"))
WIDTHS = (40, 190)
MARK_HEADS = (mark("student"), mark("points"), mark("result, {unit}"), mark("true, {unit}"), mark("missed"))
MARK_WIDTHS = (118, 72, 84, 72)
FIRST_HIDDEN = 2
COVERED = mark("covered")
ONE_EACH, SHARED = 0, 1


class ClassPage(QWidget):
    """`open_asked` carries host, port, how many houses, and whether one is shared."""

    open_asked = Signal(str, int, int, bool)
    close_asked = Signal()
    chosen = Signal(int)
    mark_asked = Signal()
    sheets_asked = Signal()
    join_asked = Signal()
    files_asked = Signal()

    def __init__(self, addresses: Sequence[str]) -> None:
        """Lay it out."""
        super().__init__()
        self._seats: tuple[SeatLine, ...] = ()
        self._marked: tuple[tuple[Marking, ...], Display, bool] | None = None
        self.host = Choice()
        for at, address in enumerate(addresses):
            reach = say("{address}, this network", address=address)
            if at == 0:
                reach = say("{address}, this machine alone", address=address)
            self.host.addItem(reach, address)
        self.host.setAccessibleName(say("Where the class can be reached"))
        self.port = _whole(1, 65000, 4700, say("port "), say("Port"))
        self.students = _whole(1, 40, 1, say("houses "), say("Houses"))
        self._ways = QButtonGroup(self)
        ways = row()
        for at, words in enumerate((say("A house for each"), say("One house for all"))):
            made = button(words, "speed")
            made.setCheckable(True)
            made.setChecked(at == ONE_EACH)
            self._ways.addButton(made, at)
            ways.addWidget(made, 1)
        self._ways.idClicked.connect(lambda at: self.students.setEnabled(at == ONE_EACH))
        self.open_button = button(say("Open the class"), "primary")
        self.open_button.clicked.connect(self._opened)
        self.join_button = button(say("Connect the program beside"))
        self.join_button.setToolTip(say("The normal window of this machine joins as a student: for the beamer"))
        self.join_button.clicked.connect(self.join_asked)
        self.files_button = button(say("Rig files…"))
        self.files_button.setToolTip(say("A rig file for each house: who loads it needs no host and port"))
        self.files_button.clicked.connect(self.files_asked)
        self.where = wrapped("strong")
        self.where.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.table = _table(tuple(say(head) if head else "" for head in HEADS), say("Houses of the class"), WIDTHS)
        self.table.itemSelectionChanged.connect(lambda: self.chosen.emit(self.table.currentRow()))
        self.marks = _table(MARK_HEADS, say("Marks"), MARK_WIDTHS)
        self.mark_button, self.sheets_button = button(say("Mark jobs…")), button(say("Write the sheets…"))
        self.sheets_button.setEnabled(False)
        self.mark_button.clicked.connect(self.mark_asked)
        self.sheets_button.clicked.connect(self.sheets_asked)
        self._marks_title = label(say("Marks"), "title")
        for part in (self._marks_title, self.marks):
            part.hide()
        self._lay_out(ways)

    def _lay_out(self, ways: QHBoxLayout) -> None:
        box = column(GAP_8)
        box.setContentsMargins(0, GAP_12, 0, 0)
        box.addLayout(row(self.host))
        box.addLayout(row(self.port, self.students))
        box.addLayout(ways)
        box.addWidget(self.open_button)
        box.addWidget(self.where)
        box.addLayout(row(self.join_button, self.files_button))
        box.addWidget(self.table, 3)
        box.addWidget(self._marks_title)
        box.addWidget(self.marks, 2)
        box.addLayout(row(self.mark_button, self.sheets_button))
        self.setLayout(box)

    def _opened(self) -> None:
        if self.open_button.property("closes"):
            self.close_asked.emit()
            return
        shared = self._ways.checkedId() == SHARED
        self.open_asked.emit(str(self.host.currentData()), self.port.value(), self.students.value(), shared)

    def show_class(self, seats: Sequence[SeatLine], where: str, chosen: int, *, may_join: bool) -> None:
        """Show who is there; `where` is empty while no class is open."""
        is_open = bool(where)
        self.open_button.setText(say("Close the class") if is_open else say("Open the class"))
        self.open_button.setProperty("closes", is_open)
        for part in (self.host, self.port, *self._ways.buttons()):
            part.setEnabled(not is_open)
        self.students.setEnabled(not is_open and self._ways.checkedId() == ONE_EACH)
        self.join_button.setEnabled(is_open and may_join)
        self.files_button.setEnabled(is_open)
        self.where.setText(where)
        self.where.setVisible(is_open)
        if tuple(seats) != self._seats:
            self._seats = tuple(seats)
            self.table.setRowCount(len(seats))
            for at, seat in enumerate(seats):
                sign = "✓ " if seat.connected else ""
                for column_at, text in enumerate((f"{seat.number}", seat.student or "–", f"{sign}{seat.state}")):
                    self.table.setItem(at, column_at, QTableWidgetItem(text))
        if seats and self.table.currentRow() != chosen:
            self.table.blockSignals(True)
            self.table.selectRow(chosen)
            self.table.blockSignals(False)

    def show_marks(self, markings: Sequence[Marking], display: Display, *, covered: bool) -> None:
        """Show what was marked; a cover leaves names and points."""
        wanted = (tuple(markings), display, covered)
        if wanted == self._marked:
            return
        self._marked = wanted
        self.marks.setRowCount(len(markings))
        unit = unit_symbol(Quantity.FLOW, display)
        self.marks.setHorizontalHeaderLabels([say(head, unit=unit) for head in MARK_HEADS])
        for at, item in enumerate(markings):
            result = say("none") if item.result is None else format_value(item.result.value, Quantity.FLOW, display)
            true = "" if item.true_m3_h is None else format_value(item.true_m3_h, Quantity.FLOW, display)
            cells = (
                item.student,
                say("{points} of {most}", points=f"{item.points:g}", most=f"{item.of:g}"),
                result,
                true,
                f"{len(item.missed)}",
            )
            for column_at, text in enumerate(cells):
                hidden = covered and column_at >= FIRST_HIDDEN
                cell = QTableWidgetItem(say(COVERED) if hidden else text)
                lines = "\n".join(
                    f"{line.points:g}/{line.of:g} {retold(line.says)} {retold(line.found)}" for line in item.lines
                )
                cell.setToolTip("" if covered else lines)
                self.marks.setItem(at, column_at, cell)
        for part in (self._marks_title, self.marks):
            part.setVisible(bool(markings))
        self.sheets_button.setEnabled(bool(markings))


def _table(heads: Sequence[str], name: str, widths: Sequence[int]) -> QTableWidget:
    made = QTableWidget(0, len(heads))
    made.setHorizontalHeaderLabels(list(heads))
    made.verticalHeader().hide()
    made.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
    made.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
    made.setSelectionMode(QTableWidget.SelectionMode.SingleSelection)
    made.horizontalHeader().setStretchLastSection(True)
    made.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
    for at, width in enumerate(widths):
        made.setColumnWidth(at, width)
    made.setShowGrid(False)
    made.setAccessibleName(name)
    made.setMinimumHeight(90)
    return made


def _whole(low: int, high: int, value: int, words: str, name: str) -> QSpinBox:
    made = QSpinBox()
    made.setRange(low, high)
    made.setValue(value)
    made.setPrefix(words)
    made.setAccessibleName(name)
    made.setMinimumHeight(36)
    return made
