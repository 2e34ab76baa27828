"""Tables of texts on a scrolled page: the same that a terminal prints."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QScrollArea, QWidget

from acquisition.told import Row, Table
from acquisition.told import Tone as Said
from gui.look import tabular
from gui.theme import BODY, GAP_4, GAP_8, GAP_12, SIGNS, SMALL, Tone
from gui.viewmodels.retold import retold
from gui.views.parts import column, label, wrapped

TONES = {Said.PLAIN: Tone.PLAIN, Said.GOOD: Tone.GOOD, Said.BAD: Tone.BAD, Said.OPEN: Tone.ATTENTION}
STACKED_FROM = 3
"""With as many numbers in a row its title stands on a line of its own."""
CROWDED_FROM = 4
"""With as many columns the letters are small and the units of the headings on a line of their own."""
SIGN_WIDTH = 16


class TablesView(QScrollArea):
    """The page. It is laid out anew when the tables change."""

    def __init__(self, name: str, *, titled: bool = True, stacked: bool = True, whole: bool = False) -> None:
        """Make it empty; without `titled` a table's title is not repeated, without `stacked` rows stay on one line.

        One that is shown `whole` is as high as its tables, on a page that scrolls itself.
        """
        super().__init__()
        self._whole = whole
        self._titled = titled
        self._stacked = stacked
        self._shown: tuple[Table, ...] = ()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        if stacked:
            self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(name)
        self.setMinimumHeight(72)

    def show_tables(self, tables: tuple[Table, ...]) -> None:
        """Show tables, one below the other."""
        if tables == self._shown:
            return
        self._shown = tables
        where = self.verticalScrollBar().value()
        page = QWidget()
        page.setProperty("role", "scrolled")
        lines = column(GAP_12)
        lines.setContentsMargins(0, 0, GAP_4, 0)
        for table in tables:
            lines.addLayout(self._table(table))
        lines.addStretch(1)
        page.setLayout(lines)
        self.setWidget(page)
        if self._whole:
            self.setFixedHeight(page.sizeHint().height())
        self.verticalScrollBar().setValue(where)

    def _table(self, table: Table) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_8 if self._stacked else GAP_4 + 1)
        grid.setVerticalSpacing(GAP_4)
        numbers = len(table.heads) - table.text_columns
        stacked = self._stacked and numbers >= STACKED_FROM
        grid.setColumnStretch(1, 1)
        line = 0
        if self._titled:
            grid.addWidget(label(retold(table.title), "title"), line, 0, 1, -1)
            line += 1
        if table.rows and any(table.heads):
            for at, text in enumerate(table.heads):
                if text:
                    grid.addWidget(_cell(retold(text), "small", at, table), line, _place(at, stacked=stacked))
            line += 1
        if not table.rows and table.empty:
            grid.addWidget(_sentence(retold(table.empty)), line, 0, 1, -1)
            line += 1
        for row in table.rows:
            line = _add_row(grid, line, row, table, stacked=stacked)
        for note in table.notes:
            grid.addWidget(_sentence(retold(note)), line, 0, 1, -1)
            line += 1
        return grid


def _add_row(grid: QGridLayout, line: int, row: Row, table: Table, *, stacked: bool) -> int:
    tone = TONES[row.tone]
    if tone is not Tone.PLAIN:
        sign = label(SIGNS[tone], "strong", tone)
        sign.setFixedWidth(SIGN_WIDTH)
        grid.addWidget(sign, line, 0, Qt.AlignmentFlag.AlignTop)
    title = wrapped()
    title.setText(retold(row.cells[0]))
    if stacked:
        grid.addWidget(title, line, 1, 1, -1)
        line += 1
    elif table.text_columns and not row.cells[0].isdigit():
        grid.addWidget(title, line, 1)
    else:
        grid.addWidget(_cell(row.cells[0], "", 0, table), line, 1)
    for at, text in enumerate(row.cells[1:], 1):
        grid.addWidget(_cell(retold(text), "", at, table), line, _place(at, stacked=stacked))
    line += 1
    if row.note:
        grid.addWidget(_sentence(retold(row.note)), line, 1, 1, -1)
        line += 1
    return line


def _place(at: int, *, stacked: bool) -> int:
    """Return the column of a cell; stacked numbers begin where the title would have stood."""
    return at if stacked else at + 1


def _cell(text: str, role: str, at: int, table: Table) -> QLabel:
    crowded = len(table.heads) >= CROWDED_FROM
    made = label(text.replace(", ", "\n") if crowded and role else text, role)
    made.setFont(tabular(made.font(), SMALL if role == "small" or crowded else BODY))
    if crowded:
        made.setProperty("role", "fine")
    side = Qt.AlignmentFlag.AlignLeft if at < table.text_columns else Qt.AlignmentFlag.AlignRight
    made.setAlignment(side | Qt.AlignmentFlag.AlignTop)
    return made


def _sentence(text: str) -> QLabel:
    made = wrapped("small")
    made.setText(text)
    return made
