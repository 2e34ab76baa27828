"""The Settings page."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from gui.theme import GAP_8, GAP_12, GAP_16, Tone
from gui.viewmodels.settings_page import FOLDERS, GROUPS, ITEMS, NUMBERS, OFFICE, UNITS, VIEW, SettingPicture
from gui.viewmodels.sheet import Kind
from gui.views.fields import FieldView
from gui.views.parts import Panel, button, column, label, row
from gui.views.scrolled import beside, scrolled
from gui.words import mark, say

COLUMNS = ((OFFICE, FOLDERS), (NUMBERS, VIEW, UNITS))
PAIRED = {UNITS}
"""Groups with two fields in a row."""
PICKED = {"logo": mark("Choose a picture"), "jobs": mark("Choose a folder"), "backup": mark("Choose a folder")}


class SettingsPage(QWidget):
    """The page. `committed` carries a field and its text; `pick_asked` a field that is chosen in a dialog."""

    committed = Signal(str, str)
    pick_asked = Signal(str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self._shown: tuple[SettingPicture, ...] = ()
        self.fields: dict[str, FieldView] = {}
        self.back = button(say("Back"))
        head = row(label(say("Settings"), "head"))
        head.addStretch(1)
        head.addWidget(self.back)
        panels = {group: self._panel(group) for group in GROUPS}
        area = scrolled(beside([panels[group] for group in groups] for groups in COLUMNS), say("Settings"))
        box = column(GAP_12)
        box.setContentsMargins(GAP_16, GAP_12, GAP_16, GAP_12)
        box.addLayout(head)
        box.addWidget(area, 1)
        self.setLayout(box)

    def show_pictures(self, pictures: tuple[SettingPicture, ...]) -> None:
        """Show a moment."""
        if pictures == self._shown:
            return
        self._shown = pictures
        for item in pictures:
            tone = Tone.BAD if item.error else Tone.QUIET
            self.fields[item.id].show_value(item.text, "", item.error or item.note, tone)

    def _panel(self, group: str) -> Panel:
        panel = Panel(group)
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_16)
        grid.setVerticalSpacing(GAP_8)
        for at, item in enumerate(item for item in ITEMS if item.group == group):
            view = FieldView(item.id, item.kind, item.label, item.choices)
            view.committed.connect(self.committed)
            self.fields[item.id] = view
            place = divmod(at, 2) if group in PAIRED else (at, 0)
            if item.id in PICKED and item.kind is Kind.TEXT:
                pick = button(say(PICKED[item.id]))
                pick.setAccessibleName(f"{say(PICKED[item.id])}: {say(item.label)}")
                pick.clicked.connect(lambda _=False, field=item.id: self.pick_asked.emit(field))
                holder = column(GAP_8)
                holder.addWidget(view)
                line = row(pick)
                line.addStretch(1)
                holder.addLayout(line)
                grid.addLayout(holder, *place)
            else:
                grid.addWidget(view, *place)
        panel.body.addLayout(grid)
        return panel
