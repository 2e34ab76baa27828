"""Two gauges on one hose: choose them, take points, see whether they agree, keep the check."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal

from gui.theme import GAP_8, GAP_12, SIGNS, Tone
from gui.viewmodels.field_check import CheckPicture, SidePicture
from gui.viewmodels.sheet import Kind
from gui.views.fields import FieldView
from gui.views.parts import Panel, button, column, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.views.tables_view import TablesView
from gui.words import mark, say

CHANNELS = (mark("First channel"), mark("Second channel"))
GAUGES = (mark("First gauge"), mark("Second gauge"))


class FieldCheckPanel(Panel):
    """The panel. `channel_chosen` and `item_chosen` carry the side (0 or 1) and what was chosen."""

    channel_chosen = Signal(int, str)
    item_chosen = Signal(int, str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__(say("Two gauges on one hose"))
        self._how = wrapped("quiet")
        self.channels = [FieldView(f"channel {at}", Kind.NAMES, words) for at, words in enumerate(CHANNELS)]
        self.items = [FieldView(f"gauge {at}", Kind.NAMES, words) for at, words in enumerate(GAUGES)]
        self._values = [label(role="strong") for _ in CHANNELS]
        self.take = button(say("Take a point"))
        self.keep = button(say("Keep this check"))
        self.anew = button(say("Begin anew"))
        self.points = TablesView(say("Points of the check"), titled=False, stacked=False)
        self._verdict = wrapped()
        inside = column(GAP_12)
        inside.addWidget(self._how)
        for at in range(len(CHANNELS)):
            self._values[at].setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            self._values[at].setMinimumWidth(88)
            self.channels[at].committed.connect(lambda _, text, at=at: self.channel_chosen.emit(at, text))
            self.items[at].committed.connect(lambda _, text, at=at: self.item_chosen.emit(at, text))
            line = row(self.channels[at], self.items[at], self._values[at], gap=GAP_8)
            line.setStretch(0, 1)
            line.setStretch(1, 1)
            inside.addLayout(line)
        inside.addWidget(self.take)
        inside.addWidget(self.points, 1)
        self.body.addWidget(scrolled(inside, say("Field check")), 1)
        self.body.addWidget(self._verdict)
        foot = row(self.keep, self.anew)
        foot.setStretch(0, 1)
        self.body.addLayout(foot)

    def show_picture(self, picture: CheckPicture) -> None:
        """Show a moment."""
        set_text(self._how, picture.how)
        for at, side in enumerate(picture.sides):
            self._show_side(at, side)
        if self.take.text() != picture.button:
            self.take.setText(picture.button)
        self.take.setEnabled(picture.ready)
        self.points.show_tables((picture.points,))
        sign = SIGNS.get(picture.tone, "") if picture.tone is not Tone.QUIET else ""
        set_text(self._verdict, f"{sign} {picture.verdict}".strip())
        set_tone(self._verdict, picture.tone)
        self.keep.setEnabled(picture.keepable)

    def _show_side(self, at: int, side: SidePicture) -> None:
        self.channels[at].show_choices(side.channels)
        self.channels[at].show_value(side.channel, "", "", Tone.QUIET)
        self.items[at].show_choices(side.items)
        self.items[at].show_value(side.item, "", "", Tone.QUIET)
        set_text(self._values[at], side.value)
