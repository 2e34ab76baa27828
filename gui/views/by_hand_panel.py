"""The panel for a gauge that a person reads: a field for each channel; Enter takes what stands there."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QLineEdit, QSizePolicy, QWidget

from acquisition.rig import Role
from gui.theme import GAP_8, GAP_12, SIGNS, Tone
from gui.viewmodels.by_hand import ByHandPicture, TypedField
from gui.views.parts import Panel, column, label, row, set_text, set_tone, wrapped
from gui.words import say

IN_A_ROW = 2


class TypedEntry(QWidget):
    """One field, with the last value and its age below."""

    entered = Signal(object, str)

    def __init__(self, role: Role) -> None:
        """Make it empty."""
        super().__init__()
        self.role = role
        self.wanted = False
        self.line = QLineEdit()
        self.line.returnPressed.connect(lambda: self.entered.emit(self.role, self.line.text()))
        self._name, self._unit, self._said = label(role="small"), label(role="quiet"), wrapped("small")
        self._name.setBuddy(self.line)
        entry = row(self.line, self._unit)
        entry.setStretch(0, 1)
        box = column(3)
        box.addWidget(self._name)
        box.addLayout(entry)
        box.addWidget(self._said)
        box.addStretch(1)
        self.setLayout(box)

    def show_field(self, field: TypedField) -> None:
        """Show a moment; what is being typed is left alone."""
        self.wanted = field.wanted
        set_text(self._name, say("{name}, wanted now", name=field.name) if field.wanted else field.name)
        set_tone(self._name, Tone.ATTENTION if field.wanted else Tone.QUIET)
        set_text(self._unit, field.unit)
        sign = f"{SIGNS[field.tone]} " if field.tone in (Tone.BAD, Tone.ATTENTION) else ""
        set_text(self._said, f"{sign}{field.said}")
        set_tone(self._said, field.tone)
        self.line.setAccessibleName(say("{name} in {unit}", name=field.name, unit=field.unit))
        self.line.setAccessibleDescription(field.said)
        self.line.setPlaceholderText(say("type it, then Enter"))


class ByHandPanel(Panel):
    """All fields. `entered` carries the role and what was typed."""

    entered = Signal(object, str)

    def __init__(self) -> None:
        """Make it empty and hidden."""
        super().__init__(say("Readings by hand"))
        self.entries: dict[Role, TypedEntry] = {}
        self._shown: ByHandPicture | None = None
        self._task = wrapped()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(GAP_12)
        self._grid.setVerticalSpacing(GAP_8)
        self.body.addWidget(self._task)
        self.body.addLayout(self._grid)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.hide()

    def show_picture(self, picture: ByHandPicture | None) -> None:
        """Show a moment, or nothing."""
        if picture == self._shown:
            return
        self._shown = picture
        self.setVisible(picture is not None)
        if picture is None:
            return
        if [field.role for field in picture.fields] != list(self.entries):
            self._make([field.role for field in picture.fields])
        set_text(self._task, picture.task)
        for field in picture.fields:
            self.entries[field.role].show_field(field)

    def taken(self, role: Role) -> None:
        """Empty a field whose value was taken, and go to the one that comes next."""
        self.entries[role].line.clear()
        others = [entry for entry in self.entries.values() if entry.wanted and entry.role is not role]
        (others[0] if others else self._first()).line.setFocus()

    def _first(self) -> TypedEntry:
        return next(iter(self.entries.values()))

    def _make(self, roles: list[Role]) -> None:
        for entry in self.entries.values():
            self._grid.removeWidget(entry)
            entry.deleteLater()
        self.entries = {role: TypedEntry(role) for role in roles}
        for at, entry in enumerate(self.entries.values()):
            entry.entered.connect(self.entered)
            self._grid.addWidget(entry, *divmod(at, IN_A_ROW))
        for at in range(IN_A_ROW):
            self._grid.setColumnStretch(at, 1)
