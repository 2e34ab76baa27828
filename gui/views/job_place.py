"""The Job place: the building, the test, the air, the people."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QGridLayout,
    QHBoxLayout,
    QStackedWidget,
    QWidget,
)

from gui.theme import GAP_8, GAP_12, GAP_16, Tone
from gui.viewmodels.job_place import FieldPicture, JobPicture
from gui.viewmodels.sheet import AIR, BUILDING, FIELDS, GROUPS, KIT, PEOPLE, PUBLISHED, SEASON, TEST
from gui.views.fields import FieldView
from gui.views.limits_panel import LimitsPanel
from gui.views.parts import ElidedLabel, Panel, button, column
from gui.views.rooms_page import RoomsPage
from gui.views.scrolled import beside, scrolled
from gui.words import say

WIDE = {
    "name",
    "kind",
    "stage",
    "method",
    "directions",
    "preparation",
    "limit_quantity",
    "targets",
    "hose_check",
    "schedule",
    "shelter",
    "site",
    "note",
    "reason",
}
"""Fields that take a whole row of their panel."""
COLUMNS = ((BUILDING, PEOPLE, KIT, SEASON), (TEST, PUBLISHED, AIR))


class JobPlace(QWidget):
    """The place. `committed` carries a field and what was typed, `page_asked` whether the rooms are wanted."""

    committed = Signal(str, str)
    page_asked = Signal(bool)

    def __init__(self) -> None:
        """Lay out all fields."""
        super().__init__()
        self._shown: JobPicture | None = None
        self.fields: dict[str, FieldView] = {}
        self._path = ElidedLabel("quiet")
        self._saved = ElidedLabel("small")
        self.new = button(say("New job"))
        self.open = button(say("Open a job"))
        self.undo = button(say("Undo"))
        self.redo = button(say("Redo"))
        names = column(2)
        names.addWidget(self._path)
        names.addWidget(self._saved)
        head = QHBoxLayout()
        head.setSpacing(GAP_8)
        head.addLayout(names, 1)
        for view in self._pages():
            head.addWidget(view)
        for view in (self.undo, self.redo, self.open, self.new):
            head.addWidget(view)
        self.limits = LimitsPanel()
        panels: dict[str, Panel] = {group: self._panel(group) for group in GROUPS}
        panels[PUBLISHED] = self.limits
        sides = beside([panels[group] for group in groups] for groups in COLUMNS)
        self.area = scrolled(sides, say("Job sheet"))
        box = column(GAP_12)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        self.rooms = RoomsPage()
        self._stack = QStackedWidget()
        self._stack.addWidget(self.area)
        self._stack.addWidget(self.rooms)
        box.addWidget(self._stack, 1)
        self.setLayout(box)

    def show_picture(self, picture: JobPicture) -> None:
        """Show a moment."""
        if picture == self._shown:
            return
        self._shown = picture
        self._path.show_text(picture.path)
        self._saved.show_text(picture.saved)
        self.show_undo(picture.undo, picture.redo)
        self.limits.show_picture(picture.published)
        there = {field.id: field for field in picture.fields}
        for field_id, view in self.fields.items():
            view.setVisible(field_id in there)
            if field_id in there:
                show_field(view, there[field_id])

    def show_undo(self, undo: str, redo: str) -> None:
        """Say what would be undone and done again."""
        self.undo.setEnabled(bool(undo))
        self.undo.setToolTip(say("Undo: {undo} (Ctrl+Z)", undo=undo) if undo else say("There is no edit to undo."))
        self.redo.setEnabled(bool(redo))
        self.redo.setToolTip(
            say("Redo: {redo} (Ctrl+Shift+Z)", redo=redo) if redo else say("There is no edit to redo.")
        )

    def show_page(self, *, rooms: bool) -> None:
        """Show the rooms, or the sheet."""
        self._group.button(int(rooms)).setChecked(True)
        wanted = self.rooms if rooms else self.area
        if self._stack.currentWidget() is not wanted:
            self._stack.setCurrentWidget(wanted)
            self._shown = None

    def _pages(self) -> list[QWidget]:
        """Return the buttons that choose between the sheet and the rooms."""
        self._group = QButtonGroup(self)
        made: list[QWidget] = []
        for at, words in enumerate((say("Sheet"), say("Rooms"))):
            view = button(words, "tab")
            view.setCheckable(True)
            self._group.addButton(view, at)
            made.append(view)
        self._group.idClicked.connect(self._page_clicked)
        return made

    def _page_clicked(self, at: int) -> None:
        self.page_asked.emit(bool(at))

    def go_to(self, field_id: str) -> None:
        """Put the cursor into a field."""
        view = self.fields.get(field_id)
        if view is not None:
            self.area.ensureWidgetVisible(view)
            view.input.setFocus()
            if view.line is not None:
                view.line.selectAll()

    def _panel(self, group: str) -> Panel:
        panel = Panel(group)
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_16)
        grid.setVerticalSpacing(GAP_8)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        line, side = 0, 0
        for field in (item for item in FIELDS if item.group == group):
            view = FieldView(field.id, field.kind, field.label, field.choices)
            view.committed.connect(self.committed)
            self.fields[field.id] = view
            if field.id in WIDE:
                line, side = line + (1 if side else 0), 0
                grid.addWidget(view, line, 0, 1, 2)
                line += 1
                continue
            grid.addWidget(view, line, side)
            line, side = (line + 1, 0) if side else (line, 1)
        panel.body.addLayout(grid)
        return panel


def show_field(view: FieldView, field: FieldPicture) -> None:
    """Show a field with the most important thing to say about it."""
    if field.error:
        message, tone = field.error, Tone.BAD
    elif field.warning:
        message, tone = field.warning, Tone.ATTENTION
    else:
        message, tone = field.note, Tone.QUIET
    view.show_choices(field.choices)
    view.show_value(field.text, field.unit, message, tone, field.placeholder)
