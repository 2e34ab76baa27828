"""What the method asks for, line by line."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from gui.theme import GAP_8
from gui.viewmodels.checks import CheckPicture
from gui.views.parts import ElidedLabel, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.words import say

SIGN_WIDTH = 18


class CheckList(QWidget):
    """The title with the count, and a line for each requirement."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.title = ElidedLabel("title")
        self.note = label(role="quiet")
        self._shown: CheckPicture | None = None
        self._rows: list[tuple[QLabel, QLabel, QLabel]] = []
        self._empty = wrapped("quiet")
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(GAP_8)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(1, 1)
        self.area = scrolled(self._grid, say("Requirements of the method"))
        self.area.setMinimumHeight(72)
        head = row(self.title, self.note)
        head.setStretch(0, 1)
        self.body = column(GAP_8)
        self.body.addLayout(head)
        self.body.addWidget(self._empty)
        self.body.addWidget(self.area, 1)
        self.setLayout(self.body)

    def show_picture(self, picture: CheckPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        self.title.show_text(picture.title)
        set_text(self.note, picture.count)
        set_tone(self.note, picture.tone)
        set_text(self._empty, picture.empty)
        self._empty.setVisible(bool(picture.empty))
        self._have(len(picture.rows))
        for (sign, text, value), item in zip(self._rows, picture.rows, strict=False):
            set_text(sign, item.sign)
            set_tone(sign, item.tone)
            set_text(text, item.text)
            text.setToolTip(item.tip)
            set_text(value, item.value)
        for at, widgets in enumerate(self._rows):
            for widget in widgets:
                widget.setVisible(at < len(picture.rows))

    def _have(self, count: int) -> None:
        """Make rows until there are enough; they are kept."""
        while len(self._rows) < count:
            at = len(self._rows)
            sign, text, value = label(role="strong"), wrapped(), label(role="quiet")
            sign.setMinimumWidth(SIGN_WIDTH)
            sign.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
            value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
            for place, widget in enumerate((sign, text, value)):
                self._grid.addWidget(widget, at, place)
            self._grid.setRowStretch(at, 0)
            self._grid.setRowStretch(at + 1, 1)
            self._rows.append((sign, text, value))
