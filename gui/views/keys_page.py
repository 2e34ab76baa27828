"""The key sheet, F1."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QWidget

from gui.theme import GAP_8, GAP_12, GAP_16, GAP_24
from gui.viewmodels.keys import CAUTIONS, KEYS, key_words
from gui.views.parts import Panel, button, column, label, row, wrapped
from gui.views.scrolled import scrolled
from gui.words import say


class KeysPage(QWidget):
    """All keys, and the cautions of the trade."""

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self.back = button(say("Back (F1)"))
        head = row(label(say("Keys"), "head"))
        head.addStretch(1)
        head.addWidget(self.back)
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_24)
        grid.setVerticalSpacing(GAP_8)
        grid.setColumnStretch(1, 1)
        line = 0
        for group, keys in KEYS:
            grid.addWidget(label(say(group), "title"), line, 0, 1, 2)
            line += 1
            for key, words in keys:
                text = wrapped("quiet")
                text.setText(say(words))
                grid.addWidget(label(key_words(key)), line, 0)
                grid.addWidget(text, line, 1)
                line += 1
            grid.setRowMinimumHeight(line, GAP_8)
            line += 1
        panel = Panel("")
        panel.title.hide()
        panel.note.hide()
        panel.body.addLayout(grid)
        cautions = Panel(say("Take care"))
        for words in CAUTIONS:
            text = wrapped("quiet")
            text.setText(say(words))
            cautions.body.addWidget(text)
        lines = column(GAP_12)
        lines.addWidget(panel)
        lines.addWidget(cautions)
        lines.addStretch(1)
        box = column(GAP_12)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addWidget(scrolled(lines, say("Keys")), 1)
        self.setLayout(box)
