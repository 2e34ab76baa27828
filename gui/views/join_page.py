"""Joining a class: where it is, under which name, and what is to be done there."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QLineEdit, QWidget

from acquisition.joining import ClassTask
from gui.theme import GAP_8, GAP_12
from gui.views.parts import button, column, label, set_text, wrapped
from gui.views.scrolled import scrolled
from gui.words import mark, say

WORDS = mark(
    "The trainer's machine gives you a simulated house with a gauge and a fan. Your name brings you back to the same "
    "house; it also stands on your sheet."
)


class JoinPage(QWidget):
    """`asked` carries HOST:PORT and the name."""

    asked = Signal(str, str)

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self._words = wrapped("quiet")
        self._words.setText(say(WORDS))
        self.place, self.name = QLineEdit(), QLineEdit()
        self.place.setPlaceholderText("192.168.1.20:4700")
        self.name.setPlaceholderText(say("Your name"))
        self.join_button = button(say("Join the class"))
        self.join_button.clicked.connect(self._asked)
        box = column(GAP_12)
        box.addWidget(self._words)
        beside = QGridLayout()
        beside.setSpacing(GAP_8)
        for at, (title, line) in enumerate(((say("Host and port"), self.place), (say("Your name"), self.name))):
            line.setAccessibleName(title)
            line.returnPressed.connect(self._asked)
            beside.addWidget(label(title, "small"), 0, at)
            beside.addWidget(line, 1, at)
        box.addLayout(beside)
        box.addWidget(self.join_button)
        self.title, self.task = label(role="strong"), wrapped()
        inside = column(GAP_8)
        inside.addWidget(self.title)
        inside.addWidget(self.task)
        inside.addStretch(1)
        # A task of many words scrolls: nothing of it is cut in a small window.
        self.about = scrolled(inside, say("The task of the class"))
        self.about.hide()
        box.addWidget(self.about, 1000)
        box.addStretch(1)
        self.setLayout(box)

    def show_task(self, task: ClassTask) -> None:
        """Show what is to be done."""
        set_text(self.title, say("{title}, {minutes} minutes", title=task.title, minutes=f"{task.minutes:g}"))
        set_text(self.task, task.task)
        self._words.hide()
        self.about.show()

    def _asked(self) -> None:
        if self.join_button.isEnabled():
            self.asked.emit(self.place.text(), self.name.text())
