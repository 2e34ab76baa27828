"""One thing of the equipment register: its calibration, its flow ranges, its field checks."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QGridLayout

from acquisition.register.records import KINDS
from gui.look import Look
from gui.plots.check_history import CheckHistory
from gui.theme import GAP_8, GAP_12, Tone
from gui.viewmodels.item_draft import CURVE_WORDS, NUMBERS_WORDS, range_key
from gui.viewmodels.register import NEEDED, ItemPicture, RangePicture
from gui.viewmodels.rig_sheet import ProfileChoice
from gui.viewmodels.sheet import Kind
from gui.views.fields import FieldView
from gui.views.parts import Panel, button, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.views.tables_view import TablesView
from gui.words import mark, say

DAY = mark("year-month-day")
NONE = mark("Add something at the left; what is known of it and its calibration is typed here.")
ITEM_FIELDS = (
    ("title", Kind.TEXT, mark("Name")),
    ("kind", Kind.CHOICE, mark("Kind")),
    ("serial", Kind.TEXT, mark("Serial number")),
    ("profile", Kind.NAMES, mark("Profile")),
    ("calibrated", Kind.TEXT, mark("Calibrated on")),
    ("months", Kind.NUMBER, mark("Good for")),
    ("due", Kind.TEXT, mark("Due on, where the certificate says")),
    ("laboratory", Kind.TEXT, mark("Laboratory")),
    ("schemes", Kind.TEXT, mark("Schemes with another term")),
    ("corrected_on", Kind.TEXT, mark("Correction measured on")),
    ("correction", Kind.TEXT, mark("Correction of the pressures shown")),
    ("note", Kind.TEXT, mark("Note")),
)
WIDE = ("correction", "note")
OF_GAUGES = ("corrected_on", "correction")
RANGE_ROWS = (
    ("name", Kind.TEXT, mark("Name on its sheet"), ""),
    ("curve", Kind.CHOICE, mark("Kind of curve"), ""),
    ("min_pa", Kind.NUMBER, mark("Valid from"), "Pa"),
    ("max_pa", Kind.NUMBER, mark("Valid to"), "Pa"),
    ("density", Kind.NUMBER, mark("At air density"), "kg/m³"),
    ("calibrated", Kind.TEXT, mark("Calibrated on"), ""),
)
PLACEHOLDERS = {
    "calibrated": DAY,
    "due": mark("from the months"),
    "serial": mark("none"),
    "profile": mark("none"),
    "months": "12",
    "schemes": mark("name months; …"),
    "corrected_on": mark("the day of the calibration"),
    "correction": mark("shown true; … in Pa, such as 0 0; 50 50.4"),
}


def show_field(view: FieldView, text: str, error: str, unit: str = "") -> None:
    """Show a field; what is only still to be typed is no mistake."""
    tone = Tone.QUIET if not error else Tone.ATTENTION if error == NEEDED else Tone.BAD
    view.show_value(text, unit, error, tone, PLACEHOLDERS.get(view.field_id.rpartition(".")[2], ""))


class RangeRow(QFrame):
    """One flow range. `committed` carries key and text."""

    committed = Signal(str, str)
    removed = Signal(int)

    def __init__(self, at: int) -> None:
        """Lay it out."""
        super().__init__()
        self.setProperty("role", "raised")
        choices = list(CURVE_WORDS.items())
        self.fields = {
            key: FieldView(range_key(at, key), kind, name, choices if kind is Kind.CHOICE else ())
            for key, kind, name, _ in RANGE_ROWS
        }
        self.numbers = FieldView(range_key(at, "numbers"), Kind.TEXT, say("Calibration"))
        self._hint, self._note = wrapped("small"), wrapped("small")
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_8)
        grid.setVerticalSpacing(GAP_8)
        for index, view in enumerate(self.fields.values()):
            grid.addWidget(view, index // 2, index % 2)
            grid.setColumnStretch(index % 2, 1)
        for view in (*self.fields.values(), self.numbers):
            view.committed.connect(self.committed)
        remove = button(say("Remove the range"), "slim")
        remove.clicked.connect(lambda: self.removed.emit(at))
        foot = row(remove)
        foot.addStretch(1)
        box = column(GAP_8)
        box.setContentsMargins(GAP_12, GAP_12, GAP_12, GAP_12)
        box.addLayout(grid)
        box.addWidget(self.numbers)
        box.addWidget(self._hint)
        box.addWidget(self._note)
        box.addLayout(foot)
        self.setLayout(box)

    def show_range(self, picture: RangePicture) -> None:
        """Show a moment."""
        for key, _, _, unit in RANGE_ROWS:
            show_field(self.fields[key], picture.texts[key], picture.errors[key], unit)
        show_field(self.numbers, picture.texts["numbers"], picture.errors["numbers"])
        set_text(self._hint, say(NUMBERS_WORDS[picture.texts["curve"]]))
        set_text(self._note, picture.note)
        self._note.setVisible(bool(picture.note))


class RegisterDetail(Panel):
    """The panel. `committed` carries key and text."""

    committed = Signal(str, str)
    range_removed = Signal(int)

    def __init__(self, look: Look, profiles: Sequence[ProfileChoice]) -> None:
        """Lay it out."""
        super().__init__(say("Equipment"))
        choices = {
            "kind": [(kind, kind.capitalize()) for kind in KINDS],
            "profile": [("", "none"), *((item.id, item.title) for item in profiles)],
        }
        self.fields = {key: FieldView(key, kind, name, choices.get(key, ())) for key, kind, name in ITEM_FIELDS}
        self.ranges: list[RangeRow] = []
        self._due, self._unkept, self._none = wrapped(), wrapped(), wrapped("quiet")
        set_text(self._none, say(NONE))
        set_tone(self._unkept, Tone.ATTENTION)
        self._file = wrapped("quiet")
        self.certificate = button(say("Keep a certificate file"), "slim")
        self.add_range = button(say("Add a flow range"))
        self.take = button(say("Take into the rig"))
        self.remove = button(say("Remove"))
        self.undo = button(say("Undo"))
        self.history = CheckHistory(look)
        self.checks = TablesView(say("Field checks"), stacked=False)
        self._range_title = label(say("Flow ranges, from their calibration sheets"), "title")
        for view in self.fields.values():
            view.committed.connect(self.committed)
        self._lay_out()

    def show_item(self, item: ItemPicture | None, undo: str) -> None:
        """Show a moment."""
        self.area.setVisible(item is not None)
        self.undo.setEnabled(bool(undo) or bool(item is not None and item.unkept))
        self.undo.setToolTip(say("Take back: {undo}", undo=undo) if undo else say("There is nothing to take back"))
        for press in (self.take, self.remove):
            press.setEnabled(item is not None)
        self._none.setVisible(item is None)
        if item is None:
            self.title.show_text(say("Equipment"))
            return
        self.title.show_text(item.title)
        set_text(self._due, item.due)
        set_tone(self._due, item.tone)
        set_text(self._unkept, item.unkept)
        self._unkept.setVisible(bool(item.unkept))
        self.take.setEnabled(not item.unkept)
        for key, view in self.fields.items():
            show_field(view, item.texts[key], item.errors.get(key, ""), "months" if key == "months" else "")
        for key in OF_GAUGES:
            self.fields[key].setVisible(item.gauge)
        certificate = item.texts["certificate"]
        set_text(
            self._file,
            say("Certificate: {certificate}", certificate=certificate)
            if certificate
            else say("No certificate file is kept."),
        )
        self._show_ranges(item)
        self.checks.show_tables((item.checks,))
        self.history.show_marks(item.marks)

    def _show_ranges(self, item: ItemPicture) -> None:
        while len(self.ranges) < len(item.ranges):
            made = RangeRow(len(self.ranges))
            made.committed.connect(self.committed)
            made.removed.connect(self.range_removed)
            self.ranges.append(made)
            self._range_box.addWidget(made)
        for at, view in enumerate(self.ranges):
            view.setVisible(at < len(item.ranges))
            if at < len(item.ranges):
                view.show_range(item.ranges[at])
        self._range_title.setVisible(item.fan)
        self.add_range.setVisible(item.fan)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_8)
        grid.setVerticalSpacing(GAP_8)
        at = 0
        for key, view in self.fields.items():
            width = 2 if key in WIDE else 1
            at += at % 2 if width == 2 else 0
            grid.addWidget(view, at // 2, at % 2, 1, width)
            at += width
        for side in (0, 1):
            grid.setColumnStretch(side, 1)
        self._range_box = column(GAP_8)
        file = row(self._file, self.certificate)
        file.setStretch(0, 1)
        inside = column(GAP_12)
        inside.addWidget(self._due)
        inside.addLayout(grid)
        inside.addLayout(file)
        inside.addWidget(self._range_title)
        inside.addLayout(self._range_box)
        inside.addWidget(self.add_range)
        inside.addWidget(self.checks)
        inside.addWidget(self.history)
        inside.addStretch(1)
        self.area = scrolled(inside, say("Item of the register"))
        self.body.addWidget(self._none)
        self.body.addWidget(self.area, 1)
        self.body.addStretch(0)
        self.body.addWidget(self._unkept)
        foot = row(self.take, self.undo, self.remove)
        foot.setStretch(0, 1)
        self.body.addLayout(foot)
