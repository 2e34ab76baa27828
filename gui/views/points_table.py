"""The table of points, with striking and restoring."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import QAction, QColor, QFont, QPalette
from PySide6.QtWidgets import (
    QAbstractItemView,
    QButtonGroup,
    QHeaderView,
    QMenu,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
)

from analysis.records import Direction
from gui.look import Look, tabular
from gui.theme import BODY, GAP_4, Tone
from gui.viewmodels.points import PointRow, TablePicture
from gui.views.choices import Names
from gui.views.parts import ElidedLabel, Panel, button, row
from gui.words import mark, say, within

ROW_HEIGHT = 24
SIGN_WIDTH = 26
LABELS = {Direction.DEPRESSURIZE: mark("Depressurize"), Direction.PRESSURIZE: mark("Pressurize")}
Index = QModelIndex | QPersistentModelIndex
NOWHERE = QModelIndex()


class ToneDelegate(QStyledItemDelegate):
    """Keeps the tone of a cell where its row is chosen."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: Index) -> None:
        """Take the colour of the chosen text from the cell."""
        super().initStyleOption(option, index)
        ink = index.data(Qt.ItemDataRole.ForegroundRole)
        if isinstance(ink, QColor):
            option.palette.setColor(QPalette.ColorRole.HighlightedText, ink)


class PointsModel(QAbstractTableModel):
    """The rows for the view; what they say comes from the picture."""

    def __init__(self, look: Look) -> None:
        """Begin without rows."""
        super().__init__()
        self._look = look
        self.picture: TablePicture | None = None

    def take(self, picture: TablePicture) -> None:
        """Show a moment; the view is told no more than what changed."""
        old, self_rows = self.picture, len(picture.rows)
        if old is None or len(old.rows) != self_rows or old.headings != picture.headings:
            self.beginResetModel()
            self.picture = picture
            self.endResetModel()
            return
        self.picture = picture
        for at, (before, after) in enumerate(zip(old.rows, picture.rows, strict=True)):
            if before != after:
                self.dataChanged.emit(self.index(at, 0), self.index(at, self.columnCount() - 1))

    def rowCount(self, parent: Index = NOWHERE) -> int:
        """Return how many points there are."""
        return 0 if parent.isValid() or self.picture is None else len(self.picture.rows)

    def columnCount(self, parent: Index = NOWHERE) -> int:
        """Return how many columns there are."""
        return 0 if parent.isValid() or self.picture is None else len(self.picture.headings)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return the heading of a column."""
        if orientation is not Qt.Orientation.Horizontal or self.picture is None:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.picture.headings[section]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return what a cell says and how it looks."""
        if self.picture is None or not index.isValid():
            return None
        item, at = self.picture.rows[index.row()], index.column()
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return item.sign if at == 0 else item.cells[at - 1]
            case Qt.ItemDataRole.AccessibleTextRole:
                return item.state.value if at == 0 else item.cells[at - 1]
            case Qt.ItemDataRole.TextAlignmentRole:
                side = Qt.AlignmentFlag.AlignHCenter if at == 0 else Qt.AlignmentFlag.AlignRight
                return side | Qt.AlignmentFlag.AlignVCenter
            case Qt.ItemDataRole.ForegroundRole:
                tone = item.tone if at == 0 else Tone.QUIET if item.struck or item.window is None else Tone.PLAIN
                return self._look.ink(Tone.PLAIN if index.row() == self.picture.current and at else tone)
            case Qt.ItemDataRole.BackgroundRole:
                return QColor(self._look.theme.raised) if index.row() == self.picture.current else None
            case Qt.ItemDataRole.FontRole:
                font = tabular(QFont(), BODY, QFont.Weight.Bold if at == 0 else QFont.Weight.Normal)
                font.setStrikeOut(item.struck and at > 0)
                return font
            case Qt.ItemDataRole.ToolTipRole:
                return item.tip or None
        return None


class PointsTable(Panel):
    """The panel. `again_asked` carries the window of a point, the others the windows of those that are chosen."""

    strike_asked = Signal(object, str)
    restore_asked = Signal(object)
    range_asked = Signal(object)
    again_asked = Signal(object)
    direction_asked = Signal(object)
    test_asked = Signal(int)

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__(say("Points"))
        self._folded = False
        self.model = PointsModel(look)
        self.model.setParent(self)
        self.view = QTableView()
        self.view.setModel(self.model)
        self.view.setAccessibleName(say("Points"))
        self._prepare_view()
        self._foot = ElidedLabel("small")
        self._group = QButtonGroup(self)
        self._ways = [button(say(LABELS[direction]), "slim") for direction in Direction]
        for at, view in enumerate(self._ways):
            view.setCheckable(True)
            self._group.addButton(view, at)
            self.head.addWidget(view)
        self._group.idClicked.connect(self._way_clicked)
        self.tests = Names()
        self.tests.setAccessibleName(say("Test on show"))
        self.tests.setProperty("role", "slim")
        self.tests.activated.connect(self._test_chosen)
        self.head.addWidget(self.tests)
        self.unfold = button(say("Show"), "slim")
        self.unfold.setAccessibleName(say("Show the points"))
        self.unfold.hide()
        self.head.addWidget(self.unfold)
        self.body.setSpacing(GAP_4)
        self.body.addWidget(self.view, 1)
        self.body.addLayout(row(self._foot))

    def show_picture(self, picture: TablePicture, tests: tuple[tuple[int, str], ...], chosen: int | None) -> None:
        """Show a moment, and the tests that can be chosen."""
        self._show_tests(tests, chosen)
        if picture == self.model.picture:
            return
        old = self.model.picture
        self.model.take(picture)
        both = len(picture.directions) > 1
        self.title.show_text(say("Points") if both else say("Points, {title}", title=within(picture.title)))
        for view, direction in zip(self._ways, Direction, strict=True):
            view.setVisible(both)
            view.setChecked(direction is picture.chosen)
        self._foot.show_text(picture.footer)
        if picture.current is not None and (old is None or old.current != picture.current):
            self.view.scrollTo(self.model.index(picture.current, 0))

    def toggle_chosen(self) -> None:
        """Ask to strike the chosen points, or to restore them where all are struck."""
        chosen = self._chosen()
        standing = [item for item in chosen if not item.struck]
        if standing:
            self.strike_asked.emit(_windows(standing), "; ".join(item.cells[0] for item in standing))
        elif chosen:
            self.restore_asked.emit(_windows(chosen))

    def take_chosen_again(self) -> None:
        """Ask to take the chosen point once more; without one, the point that is being taken."""
        chosen = self._chosen()
        self.again_asked.emit(chosen[0].window if chosen else None)

    def correct_range(self) -> None:
        """Ask with which flow range the chosen points were read; without any, those that leave the line."""
        self.range_asked.emit(_windows(self._chosen()))

    def _chosen(self) -> list[PointRow]:
        """Return the rows that are chosen and hold a point, from above."""
        picture, rows = self.model.picture, sorted(at.row() for at in self.view.selectionModel().selectedRows())
        chosen = [picture.rows[at] for at in rows] if picture is not None else []
        return [item for item in chosen if item.window is not None]

    def set_folded(self, folded: bool) -> None:
        """Show the head only."""
        self._folded = folded
        self.fold(folded, (self.view, self._foot))
        self.unfold.setVisible(folded)

    def recolour(self) -> None:
        """Take the colours of the theme."""
        self.view.viewport().update()

    def _prepare_view(self) -> None:
        view = self.view
        view.setShowGrid(False)
        view.setItemDelegate(ToneDelegate(view))
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerItem)
        view.verticalHeader().hide()
        view.verticalHeader().setMinimumSectionSize(ROW_HEIGHT)
        view.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        head = view.horizontalHeader()
        head.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        head.setHighlightSections(False)
        head.setSectionsClickable(False)
        self.model.modelReset.connect(self._fix_first)
        view.setMinimumHeight(4 * ROW_HEIGHT)
        view.setTabKeyNavigation(False)
        view.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        view.customContextMenuRequested.connect(self._menu)

    def _fix_first(self) -> None:
        head = self.view.horizontalHeader()
        if head.count():
            head.setSectionResizeMode(0, QHeaderView.ResizeMode.Fixed)
            head.resizeSection(0, SIGN_WIDTH)

    def _menu(self, where: QPoint) -> None:
        index = self.view.indexAt(where)
        picture = self.model.picture
        if not index.isValid() or picture is None or picture.rows[index.row()].window is None:
            return
        if not self.view.selectionModel().isRowSelected(index.row(), QModelIndex()):
            self.view.selectRow(index.row())
        several = len(self._chosen()) > 1
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        if all(item.struck for item in self._chosen()):
            words = say("Restore the points") if several else say("Restore the point")
        else:
            words = say("Strike the points…") if several else say("Strike the point…")
        action = QAction(words, menu)
        action.setShortcut("X")
        action.triggered.connect(self.toggle_chosen)
        menu.addAction(action)
        again = QAction(say("Take the point again"), menu)
        again.setShortcut("P")
        again.triggered.connect(self.take_chosen_again)
        again.setEnabled(not several)
        menu.addAction(again)
        correct = QAction(say("Correct the flow range…"), menu)
        correct.setShortcut("Shift+F")
        correct.triggered.connect(self.correct_range)
        menu.addAction(correct)
        menu.popup(self.view.viewport().mapToGlobal(where))

    def _show_tests(self, tests: tuple[tuple[int, str], ...], chosen: int | None) -> None:
        self.tests.setVisible(len(tests) > 1)
        shown = tuple((self.tests.itemData(at), self.tests.itemText(at)) for at in range(self.tests.count()))
        if shown != tests:
            self.tests.clear()
            for number, text in tests:
                self.tests.addItem(text, number)
        at = self.tests.findData(chosen)
        if at != self.tests.currentIndex():
            self.tests.setCurrentIndex(at)

    def _way_clicked(self, at: int) -> None:
        self.direction_asked.emit(list(Direction)[at])

    def _test_chosen(self, at: int) -> None:
        self.test_asked.emit(int(self.tests.itemData(at)))


def _windows(rows: Sequence[PointRow]) -> tuple[int, ...]:
    return tuple(item.window for item in rows if item.window is not None)
