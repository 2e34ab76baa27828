"""The page on which a hand-written test is typed in or pasted."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPlainTextEdit, QWidget

from analysis.records import Direction
from gui.theme import GAP_8, GAP_12, GAP_16, SIGNS, Tone
from gui.viewmodels.typed_page import DIRECTIONS, TypedPicture
from gui.views.parts import Panel, button, column, label, row, set_text, set_tone, wrapped
from gui.words import mark, say, within

WORDS = {Direction.DEPRESSURIZE: mark("Depressurize"), Direction.PRESSURIZE: mark("Pressurize")}


class TypedPage(QWidget):
    """The page. `changed` tells that something was typed."""

    changed = Signal()

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: TypedPicture | None = None
        self.back = button(say("Back"))
        head = row(label(say("Type in a hand-written test"), "head"))
        head.addStretch(1)
        head.addWidget(self.back)
        self.date = self._line(say("Day and time on the sheet"), "2026-05-04 09:12")
        self.seconds = self._line(say("Seconds that each was averaged"), "30")
        self.lines: dict[Direction, QPlainTextEdit] = {}
        self.zeros: dict[tuple[Direction, bool], QLineEdit] = {}
        self.notes: dict[Direction, QLabel] = {}
        panels = QHBoxLayout()
        panels.setSpacing(GAP_12)
        for way in DIRECTIONS:
            panels.addWidget(self._direction(way), 1)
        self.unit = wrapped("quiet")
        self.common = wrapped("small")
        self.keep = button(say("Keep as a test"))
        foot = row(self.common, self.keep)
        foot.setStretch(0, 1)
        common = row(*self._named(self.date), *self._named(self.seconds), gap=GAP_12)
        common.addStretch(1)
        box = column(GAP_8)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addWidget(self.unit)
        box.addLayout(common)
        box.addLayout(panels, 1)
        box.addLayout(foot)
        self.setLayout(box)

    def show_picture(self, picture: TypedPicture) -> None:
        """Show a moment; what is being typed is left alone."""
        if picture == self._shown:
            return
        self._shown = picture
        set_text(
            self.unit,
            say(
                "One line for each point: pressure in Pa and flow in {unit}, with tab, semicolon or blanks between. "
                "Building, air, method and stage are those of the Job place. The test is marked as typed.",
                unit=picture.unit,
            ),
        )
        for way, (words, wrong) in picture.notes.items():
            set_text(self.notes[way], f"{SIGNS[Tone.BAD]} {words}" if wrong else words)
            set_tone(self.notes[way], Tone.BAD if wrong else Tone.QUIET)
        set_text(self.common, picture.common)
        self.keep.setEnabled(picture.can_keep)

    def clear(self) -> None:
        """Empty the page."""
        for view in (self.date, self.seconds, *self.zeros.values()):
            view.clear()
        for text in self.lines.values():
            text.clear()

    def _direction(self, way: Direction) -> Panel:
        panel = Panel(say(WORDS[way]))
        text = QPlainTextEdit()
        text.setAccessibleName(say("Points, {way}", way=within(say(WORDS[way]))))
        text.setTabChangesFocus(True)
        text.textChanged.connect(self.changed)
        self.lines[way] = text
        for late in (False, True):
            self.zeros[way, late] = self._line(
                say("Zero-flow pressure after, Pa") if late else say("Zero-flow pressure before, Pa"), say("none")
            )
        note = wrapped("small")
        self.notes[way] = note
        for late in (False, True):
            line = row(*self._named(self.zeros[way, late]))
            line.addStretch(1)
            panel.body.addLayout(line)
        panel.body.addWidget(text, 1)
        panel.body.addWidget(note)
        return panel

    def _line(self, name: str, example: str) -> QLineEdit:
        made = QLineEdit()
        made.setAccessibleName(name)
        made.setPlaceholderText(example)
        made.setMaximumWidth(190)
        made.textChanged.connect(self.changed)
        return made

    def _named(self, view: QLineEdit) -> tuple[QLabel, QLineEdit]:
        name = label(view.accessibleName(), "small")
        name.setBuddy(view)
        return name, view
