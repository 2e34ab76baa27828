"""Rooms and surfaces: two tables to type in, what they add up to, the versions that were kept."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QGridLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from acquisition.geometry import HOW
from gui.theme import GAP_8, GAP_12, SIGNS, Tone
from gui.viewmodels.rooms import Part, RoomsPicture, TablePicture
from gui.viewmodels.sheet import Kind
from gui.views.fields import FieldView
from gui.views.parts import Panel, button, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.words import mark, say

ROW_HEIGHT = 34
SIDE_WIDTH = 344
TITLES = {Part.ROOM: mark("Rooms"), Part.SURFACE: mark("Surfaces around them")}
NUMBERS = {Part.ROOM: (2, 3, 4), Part.SURFACE: (2,)}
STRETCHED = {Part.ROOM: (1, 5), Part.SURFACE: (1, 4)}
EMPTY = {
    Part.ROOM: mark("No room yet. Add one (Insert), or paste from a spreadsheet: name, floor area, height, volume."),
    Part.SURFACE: mark("No surface yet. Add one (Insert), or paste from a spreadsheet: name, area, what it adjoins."),
}


class PartTable(Panel):
    """One of the two tables. Its signals carry the part first."""

    typed = Signal(object, int, int, str)
    included = Signal(object, int, bool)
    added = Signal(object)
    removed = Signal(object, int)
    pasted = Signal(object, str)

    def __init__(self, part: Part) -> None:
        """Lay it out, empty."""
        super().__init__(TITLES[part])
        self.part = part
        self._shown: TablePicture | None = None
        self.add, self.remove, self.paste = (
            button(say("Add"), "slim"),
            button(say("Remove"), "slim"),
            button(say("Paste"), "slim"),
        )
        for view in (self.add, self.remove, self.paste):
            self.head.addWidget(view)
        self.table = QTableWidget()
        self.table.setAccessibleName(say(TITLES[part]))
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(True)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        self.table.setShowGrid(False)
        self._empty = wrapped("quiet")
        self._empty.setText(say(EMPTY[part]))
        self.body.addWidget(self._empty)
        self.body.addWidget(self.table, 1)
        self.table.itemChanged.connect(self._changed)
        self.add.clicked.connect(self._add)
        self.remove.clicked.connect(self._remove)
        self.paste.clicked.connect(self._paste)
        for keys, call in (("Ins", self._add), ("Del", self._remove), ("Ctrl+V", self._paste)):
            QShortcut(QKeySequence(keys), self, call, context=Qt.ShortcutContext.WidgetWithChildrenShortcut)

    def show_table(self, picture: TablePicture, *, afresh: bool) -> None:
        """Show the rows; `afresh` where what stands in a cell was refused."""
        if picture == self._shown and not afresh:
            return
        grown = self._shown is not None and len(picture.rows) > len(self._shown.rows)
        self._shown = picture
        self.table.blockSignals(True)
        at = self.table.currentRow(), self.table.currentColumn()
        self.table.setColumnCount(len(picture.head))
        self.table.setHorizontalHeaderLabels(picture.head)
        self.table.setRowCount(len(picture.rows))
        for line, shown in enumerate(picture.rows):
            tick = QTableWidgetItem()
            tick.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsUserCheckable)
            tick.setCheckState(Qt.CheckState.Checked if shown.included else Qt.CheckState.Unchecked)
            tick.setToolTip(say("Counts") if shown.included else say("Left out"))
            self.table.setItem(line, 0, tick)
            for side, (text, derived) in enumerate(zip(shown.cells, shown.derived, strict=True), 1):
                self.table.setItem(line, side, _cell(text, derived=derived, number=side in NUMBERS[self.part]))
        head = self.table.horizontalHeader()
        for side in range(len(picture.head)):
            across = Qt.AlignmentFlag.AlignRight if side in NUMBERS[self.part] else Qt.AlignmentFlag.AlignLeft
            title = self.table.horizontalHeaderItem(side)
            if title is not None:
                title.setTextAlignment(across | Qt.AlignmentFlag.AlignVCenter)
            stretched = side in STRETCHED[self.part]
            mode = QHeaderView.ResizeMode.Stretch if stretched else QHeaderView.ResizeMode.ResizeToContents
            head.setSectionResizeMode(side, mode)
        if grown:
            self.table.setCurrentCell(len(picture.rows) - 1, 1)
        elif picture.rows and at[0] >= 0:
            self.table.setCurrentCell(min(at[0], len(picture.rows) - 1), max(at[1], 0))
        self.table.blockSignals(False)
        self._empty.setVisible(not picture.rows)
        self.table.setVisible(bool(picture.rows))
        self.remove.setEnabled(bool(picture.rows))

    def _changed(self, item: QTableWidgetItem) -> None:
        if item.column() == 0:
            self.included.emit(self.part, item.row(), item.checkState() is Qt.CheckState.Checked)
        else:
            self.typed.emit(self.part, item.row(), item.column(), item.text())

    def _add(self) -> None:
        self.added.emit(self.part)
        self.table.setFocus()

    def _remove(self) -> None:
        if self.table.currentRow() >= 0:
            self.removed.emit(self.part, self.table.currentRow())

    def _paste(self) -> None:
        self.pasted.emit(self.part, QGuiApplication.clipboard().text())


def _cell(text: str, *, derived: bool, number: bool) -> QTableWidgetItem:
    item = QTableWidgetItem(text)
    if number:
        item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    if derived:
        item.setToolTip(say("Floor area by height. Type a volume to put it in its place."))
        font = item.font()
        font.setItalic(True)
        item.setFont(font)
    return item


class RoomsPage(QWidget):
    """The page."""

    how_chosen = Signal(str)
    keep_asked = Signal(str, str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: RoomsPicture | None = None
        self.tables = {part: PartTable(part) for part in Part}
        self.how = FieldView("how", Kind.CHOICE, say("How it was measured"), tuple(HOW.items()))
        self.how.committed.connect(self._how)
        self._error = wrapped()
        set_tone(self._error, Tone.BAD)
        left = column(GAP_12)
        left.addWidget(self._error)
        for view in self.tables.values():
            left.addWidget(view, 1)
        side = column(GAP_12)
        side.addWidget(self._sums_panel())
        side.addWidget(self._versions_panel())
        side.addStretch(1)
        area = scrolled(side, say("Sums and versions"))
        area.setFixedWidth(SIDE_WIDTH)
        box = row(gap=GAP_12)
        box.addLayout(left, 1)
        box.addWidget(area)
        self.setLayout(box)

    def show_picture(self, picture: RoomsPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        afresh = bool(picture.error) or bool(self._shown is not None and self._shown.error)
        self._shown = picture
        self.tables[Part.ROOM].show_table(picture.rooms, afresh=afresh)
        self.tables[Part.SURFACE].show_table(picture.surfaces, afresh=afresh)
        self.how.show_value(picture.how, "", "", Tone.QUIET)
        set_text(self._error, f"{SIGNS[Tone.BAD]} {picture.error}" if picture.error else "")
        self._error.setVisible(bool(picture.error))
        self._show_sums(picture.sums)
        set_text(self._worth, picture.worth)
        set_text(self._odd, "\n".join(f"{SIGNS[Tone.ATTENTION]} {sentence}" for sentence in picture.odd))
        self._odd.setVisible(bool(picture.odd))
        set_text(self._versions, "\n".join(picture.versions) or say("None is kept yet. A test keeps its own sizes."))

    def _sums_panel(self) -> Panel:
        panel = Panel(say("What it adds up to"))
        self._sums = QGridLayout()
        self._sums.setHorizontalSpacing(GAP_12)
        self._sums.setColumnStretch(1, 1)
        self._lines: list[tuple[QLabel, QLabel]] = []
        self._worth = wrapped("small")
        self._odd = wrapped()
        set_tone(self._odd, Tone.ATTENTION)
        panel.body.addLayout(self._sums)
        panel.body.addWidget(self._worth)
        panel.body.addWidget(self._odd)
        panel.body.addWidget(self.how)
        return panel

    def _versions_panel(self) -> Panel:
        panel = Panel(say("Versions"))
        self._versions = wrapped("small")
        self.version_name, self.version_reason = QLineEdit(), QLineEdit()
        self.version_name.setPlaceholderText(say("Name, such as: as built"))
        self.version_name.setAccessibleName(say("Name of the version"))
        self.version_reason.setPlaceholderText(say("Reason"))
        self.version_reason.setAccessibleName(say("Reason of the version"))
        self.keep = button(say("Keep this version"))
        self.keep.clicked.connect(self._keep)
        lines = column(GAP_8)
        for view in (self._versions, self.version_name, self.version_reason, self.keep):
            lines.addWidget(view)
        panel.body.addLayout(lines)
        return panel

    def _show_sums(self, sums: tuple[tuple[str, str], ...]) -> None:
        while len(self._lines) < len(sums):
            name, value = label(role="quiet"), wrapped("strong")
            value.setAlignment(Qt.AlignmentFlag.AlignRight)
            self._sums.addWidget(name, len(self._lines), 0)
            self._sums.addWidget(value, len(self._lines), 1)
            self._lines.append((name, value))
        for at, (name, value) in enumerate(self._lines):
            name.setVisible(at < len(sums))
            value.setVisible(at < len(sums))
            if at < len(sums):
                set_text(name, sums[at][0])
                set_text(value, sums[at][1])

    def _how(self, _: str, text: str) -> None:
        self.how_chosen.emit(text)

    def _keep(self) -> None:
        self.keep_asked.emit(self.version_name.text(), self.version_reason.text())

    def version_kept(self) -> None:
        """Empty the fields of the version."""
        self.version_name.clear()
        self.version_reason.clear()
