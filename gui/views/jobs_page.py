"""The page on which a job is found in a folder."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QLineEdit, QTableWidget, QTableWidgetItem, QWidget

from gui.theme import GAP_8, GAP_12, GAP_16
from gui.viewmodels.jobs_page import JobsPicture
from gui.views.parts import ElidedLabel, button, column, label, row, set_text, wrapped
from gui.words import say

NUMBER_COLUMN = 7


class JobsPage(QWidget):
    """The page. `searched` carries what was typed, `open_asked` a file."""

    searched = Signal(str)
    open_asked = Signal(str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: JobsPicture | None = None
        self.back = button(say("Back"))
        head = row(label(say("Find a job"), "head"))
        head.addStretch(1)
        head.addWidget(self.back)
        self.folder = ElidedLabel("quiet")
        self.choose = button(say("Choose the folder"))
        self.again = button(say("Look again"))
        where = row(self.folder, self.again, self.choose)
        where.setStretch(0, 1)
        self.words = QLineEdit()
        self.words.setPlaceholderText(say("Street, client, number, date, stage or file name"))
        self.words.setAccessibleName(say("Words to look for"))
        self.words.textChanged.connect(self.searched)
        self.words.returnPressed.connect(self._open)
        self.table = QTableWidget()
        self.table.setAccessibleName(say("Jobs"))
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setWordWrap(False)
        self.table.verticalHeader().hide()
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.table.cellActivated.connect(lambda at, _: self._emit(at))
        self.status = wrapped("small")
        self.open = button(say("Open the job"))
        self.open.clicked.connect(self._open)
        self.export = button(say("Table as CSV"))
        self.tables = button(say("All tables as CSV"))
        foot = row(self.status, self.tables, self.export, self.open)
        foot.setStretch(0, 1)
        box = column(GAP_12)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addLayout(where)
        box.addWidget(self.words)
        box.addWidget(self.table, 1)
        box.addLayout(foot)
        box.setSpacing(GAP_8)
        self.setLayout(box)

    def show_picture(self, picture: JobsPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        before, self._shown = self._shown, picture
        self.folder.show_text(picture.folder)
        set_text(self.status, picture.status)
        if before is not None and (before.rows, before.paths) == (picture.rows, picture.paths):
            return
        self.table.setColumnCount(len(picture.heads))
        self.table.setHorizontalHeaderLabels([say(head) for head in picture.heads])
        self.table.setRowCount(len(picture.rows))
        for at, cells in enumerate(picture.rows):
            for column_at, text in enumerate(cells):
                item = QTableWidgetItem(text)
                item.setToolTip(picture.tips[at])
                if column_at == NUMBER_COLUMN:
                    item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
                self.table.setItem(at, column_at, item)
        if picture.rows:
            self.table.selectRow(0)
        for view in (self.open, self.export, self.tables):
            view.setEnabled(bool(picture.rows))

    def _open(self) -> None:
        self._emit(self.table.currentRow())

    def _emit(self, at: int) -> None:
        if self._shown is not None and 0 <= at < len(self._shown.paths):
            self.open_asked.emit(self._shown.paths[at])
