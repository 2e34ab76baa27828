"""The leaks of the house: the list, the one that is being described, its pictures."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMimeData, Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QImage, QImageWriter
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from gui.look import Look
from gui.theme import GAP_4, GAP_8, GAP_12, Tone
from gui.viewmodels.leak_sheet import FIELDS, LeakPicture
from gui.views.fields import FieldView
from gui.views.parts import Panel, button, column, label, row, set_text, wrapped
from gui.views.photo_pins import PhotoPins
from gui.views.scrolled import scrolled
from gui.words import mark, say

COLUMNS = 3
SPANS = {"part": COLUMNS, "note": 2}
"""Fields that take more than one column."""
NONE = mark("No leak is listed. L adds one while you hold the pressure; it can be described later.")
PICTURES = (".png", ".jpg", ".jpeg")


class LeakPage(QWidget):
    """The page. `chosen` carries a number; `committed` a field and its text; `photo_dropped` name and content."""

    chosen = Signal(int)
    committed = Signal(str, str)
    photo_dropped = Signal(str, bytes)
    pinned = Signal(int, float, float)
    turned = Signal(int)

    def __init__(self, look: Look) -> None:
        """Lay it out."""
        super().__init__()
        self._look = look
        self._rows: tuple[object, ...] = ()
        self.setAcceptDrops(True)
        self.list = QListWidget()
        self.list.setAccessibleName(say("Leaks"))
        self.list.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.currentItemChanged.connect(self._row_chosen)
        self.add = button(say("New leak (L)"), "slim")
        self.hand_out = button(say("For each trade…"), "slim")
        self.done_today = button(say("Done today…"), "slim")
        left = self._left_side()
        self.fields = {name: FieldView(name, kind, words, choices) for name, kind, words, choices in FIELDS}
        self.brought = wrapped("strong")
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_8)
        grid.setVerticalSpacing(GAP_4)
        at = 0
        for name, view in self.fields.items():
            grid.addWidget(view, at // COLUMNS, at % COLUMNS, 1, SPANS.get(name, 1))
            grid.setColumnStretch(at % COLUMNS, 1)
            at += SPANS.get(name, 1)
            view.committed.connect(self.committed)
        inside = column(GAP_8)
        inside.addWidget(self.brought)
        inside.addLayout(grid)
        self._add_pictures(inside, look)
        right = Panel()
        right.title.hide()
        right.note.hide()
        self.area = scrolled(inside, say("The leak"))
        right.body.addWidget(self.area, 1)
        both = QHBoxLayout()
        both.setContentsMargins(0, 0, 0, 0)
        both.setSpacing(GAP_12)
        both.addWidget(left, 40)
        both.addWidget(right, 60)
        self._right = right
        self.setLayout(both)

    def _left_side(self) -> Panel:
        self._none = wrapped("quiet")
        self._none.setText(say(NONE))
        left = Panel(say("Leaks"))
        left.head.addWidget(self.add)
        left.body.addWidget(self._none)
        left.body.addWidget(self.list, 1)
        papers = row(self.hand_out, self.done_today)
        papers.addStretch(1)
        left.body.addLayout(papers)
        left.setMinimumWidth(280)
        return left

    def _add_pictures(self, inside: QVBoxLayout, look: Look) -> None:
        self.photo = button(say("Photo…"), "slim")
        self.plan = button(say("Plan…"), "slim")
        self.paste = button(say("Paste"), "slim")
        self.back, self.forth = button("‹", "slim"), button("›", "slim")
        for turn, words in ((self.back, say("Picture before")), (self.forth, say("Next picture"))):
            turn.setAccessibleName(words)
        self.pages = label(role="small")
        self.pins = PhotoPins(look)
        self.pins.setMinimumHeight(150)
        self.back.clicked.connect(lambda: self.turned.emit(-1))
        self.forth.clicked.connect(lambda: self.turned.emit(1))
        self.pins.pinned.connect(self._pinned)
        tools = row(self.photo, self.paste, self.plan, self.back, self.pages, self.forth, gap=GAP_4)
        tools.addStretch(1)
        inside.addLayout(tools)
        inside.addWidget(self.pins)

    def show_picture(self, picture: LeakPicture, content: Callable[[int], bytes | None]) -> None:
        """Show a moment; `content` gives the picture of a number where it is not on show yet."""
        self._show_rows(picture)
        there = picture.chosen is not None
        self._none.setVisible(not picture.rows)
        self.list.setVisible(bool(picture.rows))
        for paper in (self.hand_out, self.done_today):
            paper.setVisible(bool(picture.rows))
        self._right.setVisible(there)
        if not there:
            return
        set_text(self.brought, picture.brought)
        self.brought.setVisible(bool(picture.brought))
        for name, view in self.fields.items():
            shown = picture.fields[name]
            view.show_value(shown.text, shown.unit, shown.error, Tone.BAD if shown.error else Tone.QUIET)
        photo = picture.photo
        for part in (self.back, self.forth, self.pages):
            part.setVisible(photo is not None and photo.count > 1)
        if photo is None:
            self.pins.show_photo(None, None, (), picture.chosen)
            return
        set_text(self.pages, say("{at} of {count}", at=photo.at + 1, count=photo.count))
        self.pins.setToolTip(photo.name)
        needed = content(photo.id) if photo.id != self.pins.shown else None
        self.pins.show_photo(photo.id, needed, photo.pins, picture.chosen)

    def go_to(self, field: str) -> None:
        """Put the cursor into a field."""
        view = self.fields[field]
        self.area.ensureWidgetVisible(view)
        view.input.setFocus()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Welcome a picture."""
        if dropped_picture(event.mimeData()) is not None:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Hand on the picture that was dropped."""
        found = dropped_picture(event.mimeData())
        if found is not None:
            event.acceptProposedAction()
            self.photo_dropped.emit(*found)

    def _show_rows(self, picture: LeakPicture) -> None:
        if picture.rows != self._rows:
            self._rows = picture.rows
            self.list.blockSignals(True)
            self.list.clear()
            for shown in picture.rows:
                item = QListWidgetItem(shown.text)
                item.setData(Qt.ItemDataRole.UserRole, shown.number)
                item.setForeground(self._look.ink(shown.tone))
                item.setToolTip(shown.text)
                self.list.addItem(item)
            self.list.blockSignals(False)
        for at, shown in enumerate(picture.rows):
            if shown.number == picture.chosen and self.list.currentRow() != at:
                self.list.blockSignals(True)
                self.list.setCurrentRow(at)
                self.list.blockSignals(False)

    def _row_chosen(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            self.chosen.emit(item.data(Qt.ItemDataRole.UserRole))

    def _pinned(self, across: float, down: float) -> None:
        if self.pins.shown is not None:
            self.pinned.emit(self.pins.shown, across, down)


def dropped_picture(data: QMimeData) -> tuple[str, bytes] | None:
    """Return name and content of the one picture that is dragged or copied, None for anything else."""
    paths = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
    if len(paths) == 1 and paths[0].suffix.lower() in PICTURES:
        try:
            return paths[0].name, paths[0].read_bytes()
        except OSError:
            return None
    if data.hasImage():
        image = QImage(data.imageData())
        held = QBuffer()
        held.open(QIODevice.OpenModeFlag.WriteOnly)
        if QImageWriter(held, QByteArray(b"png")).write(image):
            return "pasted.png", bytes(held.data().data())
    return None
