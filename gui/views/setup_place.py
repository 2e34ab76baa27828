"""The Set-up place: what is asked before the fan starts, what is closed and sealed, what is put back."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from gui.theme import GAP_4, GAP_8, GAP_12, GAP_16, SIGNS, Tone
from gui.viewmodels.setup_place import CAUTION, SetupPicture, StateRow
from gui.views.parts import Panel, button, column, in_order, label, row, set_text, set_tone, set_typed, wrapped
from gui.views.scrolled import scrolled
from gui.words import say

MOST_CHOICES = 4


class StateLine(QWidget):
    """One thing with its states. `chosen` carries the subject and the state."""

    chosen = Signal(str, str)
    photo_asked = Signal(str)

    def __init__(self, *, below: bool) -> None:
        """Make it empty; `below` puts the states under the words."""
        super().__init__()
        self._shown: StateRow | None = None
        self._sign = label("", "strong")
        self._sign.setFixedWidth(16)
        self._text = wrapped()
        self._note = wrapped("small")
        self._group = QButtonGroup(self)
        self._group.setExclusive(False)
        self.buttons: list[QPushButton] = []
        choices = row(gap=GAP_4)
        for at in range(MOST_CHOICES):
            view = button("", "tab")
            view.setCheckable(True)
            self._group.addButton(view, at)
            self.buttons.append(view)
            choices.addWidget(view)
        self.photo = button(say("Photo"), "tab")
        self.photo.clicked.connect(self._photo)
        choices.addWidget(self.photo)
        words = column(2)
        words.addWidget(self._text)
        words.addWidget(self._note)
        line = QHBoxLayout()
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(GAP_8)
        line.addWidget(self._sign, 0, Qt.AlignmentFlag.AlignTop)
        line.addLayout(words, 1)
        choices.addStretch(1 if below else 0)
        (words if below else line).addLayout(choices)
        self.setLayout(line)
        self._group.idClicked.connect(self._clicked)

    def show_row(self, shown: StateRow) -> None:
        """Show a state."""
        if shown != self._shown:
            self._shown = shown
            set_typed(self._text, shown.text)
            set_typed(self._note, shown.note)
            self._note.setVisible(bool(shown.note))
            set_text(self._sign, SIGNS.get(shown.tone, "○") if shown.tone is not Tone.PLAIN else "○")
            set_tone(self._sign, shown.tone)
            for at, view in enumerate(self.buttons):
                view.setVisible(at < len(shown.choices))
                if at < len(shown.choices):
                    view.setText(say(shown.choices[at][1]))
                    view.setAccessibleName(f"{say(shown.choices[at][1])}: {shown.text}")
            self.photo.setVisible(shown.photos is not None)
            self.photo.setText(say("Photo ({photos})", photos=shown.photos) if shown.photos else say("Photo"))
            self.photo.setAccessibleName(say("Add a photo: {text}", text=shown.text))
        for at, view in enumerate(self.buttons):
            view.setChecked(at < len(shown.choices) and shown.choices[at][0] == shown.state)

    def _clicked(self, at: int) -> None:
        shown = self._shown
        if shown is None or at >= len(shown.choices):
            return
        self.show_row(shown)
        self.chosen.emit(shown.subject, shown.choices[at][0])

    def _photo(self) -> None:
        if self._shown is not None:
            self.photo_asked.emit(self._shown.subject)


class StateList(Panel):
    """A panel of such things. `noted` carries the kind, the subject and the state."""

    noted = Signal(str, str, str)
    photo_asked = Signal(str)

    def __init__(self, kind: str, title: str) -> None:
        """Make it empty."""
        super().__init__(title)
        self.kind = kind
        self.lead = wrapped("quiet")
        self.lines: list[StateLine] = []
        self._box = column(GAP_8)
        self.body.addWidget(self.lead)
        self.body.addLayout(self._box)

    def show_rows(self, rows: tuple[StateRow, ...], lead: str) -> None:
        """Show a moment."""
        set_typed(self.lead, lead)
        while len(self.lines) < len(rows):
            made = StateLine(below=self.kind == "opening")
            made.chosen.connect(self._chosen)
            made.photo_asked.connect(self.photo_asked)
            self.lines.append(made)
            self._box.addWidget(made)
        for at, line in enumerate(self.lines):
            line.setVisible(at < len(rows))
            if at < len(rows):
                line.show_row(rows[at])

    def stops(self) -> tuple[QPushButton, ...]:
        """Return the buttons of all lines, as one reads."""
        return tuple(view for line in self.lines for view in (*line.buttons, line.photo))

    def _chosen(self, subject: str, state: str) -> None:
        self.noted.emit(self.kind, subject, state)


class SetupPlace(QWidget):
    """The place."""

    noted = Signal(str, str, str)
    photo_asked = Signal(str)
    checked_by = Signal(str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: SetupPicture | None = None
        self._lines = 0
        self.safety = StateList("safety", say("Before the fan starts"))
        self.openings = StateList("opening", say("Openings"))
        self.seals = StateList("seal", say("Seal board"))
        self.restore = StateList("restore", say("Put back"))
        self.lists = (self.safety, self.openings, self.seals, self.restore)
        for view in self.lists:
            view.noted.connect(self.noted)
        self.openings.photo_asked.connect(self.photo_asked)
        caution = wrapped("small")
        caution.setText(say(CAUTION))
        self.safety.body.addWidget(caution)
        self.refusal = button(say("Write why there is no test"))
        self.safety.body.addWidget(self.refusal)
        self.new_seal = _entry(say("Where a temporary seal is, such as: dryer outlet"))
        self.add_seal = button(say("Enter"), "slim")
        self.seals.body.addLayout(_with(self.new_seal, self.add_seal))
        self.reason = _entry(say("Reason, where something is left as it is"))
        self.restore.body.addWidget(self.reason)
        self.second, self.check = _entry(say("Name of the second person")), button(say("Looked over"), "slim")
        self.add_seal.clicked.connect(self._seal)
        self.new_seal.returnPressed.connect(self._seal)
        self.check.clicked.connect(self._check)
        self.second.returnPressed.connect(self._check)
        sides = QHBoxLayout()
        sides.setSpacing(GAP_12)
        sides.addLayout(_side(self.safety, self.seals, self.restore), 1)
        sides.addLayout(_side(self.openings, self._second_panel()), 1)
        self.area = scrolled(sides, say("Set-up of the building"))
        box = column(0)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addWidget(self.area)
        self.setLayout(box)

    def show_picture(self, picture: SetupPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        self.safety.show_rows(picture.safety, picture.verdict)
        set_tone(self.safety.lead, picture.tone)
        self.refusal.setVisible(picture.forbidden)
        self.openings.show_rows(picture.openings, picture.rule)
        empty = say("Every temporary seal is entered once, and ticked off when it is taken off again.")
        self.seals.show_rows(picture.seals, "" if picture.seals else empty)
        self.seals.lead.setVisible(not picture.seals)
        self.restore.show_rows(picture.restore, picture.owed)
        if sum(len(view.lines) for view in self.lists) != self._lines:
            self._lines = sum(len(view.lines) for view in self.lists)
            self._read_down()
        nobody = say("Nobody else looked it over yet. A second pair of eyes finds most.")
        set_typed(self._checked, picture.checked or nobody)

    def _read_down(self) -> None:
        """Have the Tab key go down the left side, then down the right one."""
        left = (*self.safety.stops(), self.refusal, *self.seals.stops(), self.new_seal, self.add_seal)
        right = (*self.openings.stops(), self.second, self.check, self.sheet)
        in_order(*left, *self.restore.stops(), self.reason, *right)

    def entered(self) -> None:
        """Empty what was typed."""
        for view in (self.new_seal, self.reason, self.second):
            view.clear()

    def _second_panel(self) -> Panel:
        panel = Panel(say("Second person, client"))
        self._checked: QLabel = wrapped("quiet")
        self.sheet = button(say("Preparation sheet for the client"))
        panel.body.addWidget(self._checked)
        panel.body.addLayout(_with(self.second, self.check))
        panel.body.addWidget(self.sheet)
        return panel

    def _seal(self) -> None:
        name = " ".join(self.new_seal.text().split())
        if name:
            self.noted.emit("seal", name, "on")
            self.new_seal.clear()

    def _check(self) -> None:
        self.checked_by.emit(self.second.text())


def _entry(words: str) -> QLineEdit:
    made = QLineEdit()
    made.setPlaceholderText(words)
    made.setAccessibleName(words)
    return made


def _with(entry: QLineEdit, press: QPushButton) -> QHBoxLayout:
    made = row(entry, press)
    made.setStretch(0, 1)
    return made


def _side(*panels: Panel) -> QVBoxLayout:
    made = column(GAP_12)
    for panel in panels:
        made.addWidget(panel)
    made.addStretch(1)
    return made
