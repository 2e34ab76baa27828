"""Pages of the Hunt place: how to look with fog and infra-red, zones step by step, the page on phones."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QSizePolicy, QWidget

from gui.theme import GAP_8, GAP_12, SIGNS, Tone
from gui.viewmodels.retold import retold
from gui.viewmodels.sheet import Kind
from gui.viewmodels.zone_walk import FIELDS, HOLES, ZonePicture
from gui.views.choices import Choice
from gui.views.fields import FieldView
from gui.views.parts import Panel, button, column, in_order, label, row, set_text, set_tone, wrapped
from gui.views.scrolled import scrolled
from gui.views.tables_view import TablesView
from gui.words import mark, say

QUIET_ZONE = 3
PHONE_WORDS = mark(
    "Read only: numbers, no names, no photos, and nothing can be done from a phone. It is not encrypted: anybody in "
    "the same network could read it. It ends with the window or after four hours. Guest networks often keep phones "
    "apart: use the hotspot of laptop or phone. The system may ask once whether this program may listen."
)


@dataclass(frozen=True, slots=True)
class LookPicture:
    """Advice and ticks. `isolated` is None where no alarm was ever isolated."""

    infra_red: str
    usable: bool
    fog: str
    cautions: str
    isolated: bool | None
    timer: str
    running: bool


class LookPage(Panel):
    """Fog, hand, infra-red."""

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__(say("How to look"))
        self.infra_red, self.fog = wrapped(), wrapped()
        self.cautions = wrapped("quiet")
        self.isolate = button(say("The alarm is isolated"), "slim")
        self.reinstate = button(say("The alarm is reinstated"), "slim")
        self.alarm = label(role="strong")
        self.minutes = Choice()
        self.minutes.setProperty("role", "slim")
        self.minutes.setAccessibleName(say("Minutes of the timer"))
        for value in (2, 5, 10, 20, 30):
            self.minutes.addItem(say("{value} min", value=value), value)
        self.minutes.setCurrentIndex(2)
        self.timer = button(say("Start the timer"), "slim")
        self.left = label(role="head")
        times = row(self.minutes, self.timer, self.left)
        times.addStretch(1)
        ticks = row(self.isolate, self.reinstate, self.alarm)
        ticks.addStretch(1)
        inside = column(GAP_8)
        inside.addWidget(self.infra_red)
        inside.addWidget(self.fog)
        inside.addLayout(times)
        inside.addLayout(ticks)
        inside.addWidget(self.cautions)
        inside.addStretch(1)
        self.body.addWidget(scrolled(inside, say("How to look")), 1)

    def show_picture(self, picture: LookPicture) -> None:
        """Show a moment."""
        tone = Tone.GOOD if picture.usable else Tone.ATTENTION
        set_text(self.infra_red, f"{SIGNS[tone]} {retold(picture.infra_red)}")
        set_tone(self.infra_red, tone)
        set_text(self.fog, retold(picture.fog))
        set_text(self.cautions, retold(picture.cautions))
        words = {
            None: "",
            True: " ".join((SIGNS[Tone.ATTENTION], say("isolated, still to be reinstated"))),
            False: " ".join((SIGNS[Tone.GOOD], say("reinstated"))),
        }
        set_text(self.alarm, words[picture.isolated])
        set_tone(self.alarm, Tone.ATTENTION if picture.isolated else Tone.GOOD)
        self.reinstate.setEnabled(bool(picture.isolated))
        set_text(self.left, picture.timer)
        self.timer.setText(say("Stop the timer") if picture.running else say("Start the timer"))


class ZonePage(Panel):
    """Tap, read, add a hole, read, keep. `committed` carries a field and its text, `named` what the zone is called."""

    committed = Signal(str, str)
    hole_chosen = Signal(str)
    named = Signal(str)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self.title.hide()
        self.note.hide()
        self.step = wrapped("strong")
        self.fields = {name: FieldView(name, Kind.NUMBER, words) for name, words, _ in FIELDS}
        self.before = button(say("Read now"), "slim")
        self.after = button(say("Read with the hole"), "slim")
        self.again = button(say("Another zone"), "slim")
        self.name = FieldView("zone", Kind.TEXT, mark("Name of the zone"))
        self.name.committed.connect(lambda _, words: self.named.emit(words))
        self.keep = button(say("Keep in the job"), "slim")
        self.kept = wrapped("small")
        self.hole = Choice()
        self.hole.setAccessibleName(say("The hole that is added"))
        for value, words in HOLES:
            self.hole.addItem(say(words), value)
        self.hole.activated.connect(lambda at: self.hole_chosen.emit(str(self.hole.itemData(at))))
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_8)
        places = ((0, 0), (0, 1), (0, 2), (1, 1), (1, 2))
        for (line, at), view in zip(places, self.fields.values(), strict=True):
            grid.addWidget(view, line, at)
            grid.setColumnStretch(at, 1)
            view.committed.connect(self.committed)
        grid.addWidget(self.before, 0, 3, Qt.AlignmentFlag.AlignBottom)
        grid.addWidget(self.after, 1, 3, Qt.AlignmentFlag.AlignBottom)
        grid.addWidget(self.hole, 1, 0, Qt.AlignmentFlag.AlignBottom)
        self.tables = TablesView(say("What the zone tells"), stacked=False, whole=True)
        inside = column(GAP_8)
        inside.addWidget(self.step)
        inside.addLayout(grid)
        self.name.setMinimumWidth(260)
        foot = row(self.name)
        for part in (self.keep, self.again):
            foot.addWidget(part, 0, Qt.AlignmentFlag.AlignBottom)
        foot.addStretch(1)
        inside.addLayout(foot)
        inside.addWidget(self.kept)
        inside.addWidget(self.tables)
        inside.addStretch(1)
        self.body.addWidget(scrolled(inside, say("Zones")), 1)
        inputs = [view.input for view in self.fields.values()]
        in_order(*inputs[:3], self.before, self.hole, *inputs[3:], self.after, self.name.input, self.keep, self.again)

    def show_picture(self, picture: ZonePicture) -> None:
        """Show a moment."""
        set_text(self.step, picture.step)
        for name, view in self.fields.items():
            text, unit, error = picture.values[name]
            view.show_value(text, unit, error, Tone.BAD if error else Tone.QUIET)
        self.hole.setCurrentIndex(max(self.hole.findData(picture.hole), 0))
        self.name.show_value(picture.name, "", "", Tone.QUIET)
        self.keep.setEnabled(bool(picture.tables))
        set_text(self.kept, picture.kept)
        self.kept.setVisible(bool(picture.kept))
        self.tables.setVisible(bool(picture.tables))
        self.tables.show_tables(picture.tables)


class CodeView(QWidget):
    """A QR code: dark squares on white, whatever the theme."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self._rows: tuple[bytes, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("QR code of the link for the phone"))

    @property
    def rows(self) -> tuple[bytes, ...]:
        """The squares on show."""
        return self._rows

    def sizeHint(self) -> QSize:
        """Return a square that a phone can read from arm's length."""
        return QSize(176, 176)

    def show_rows(self, rows: Sequence[bytes]) -> None:
        """Show a code, or none."""
        if tuple(rows) != self._rows:
            self._rows = tuple(rows)
            self.setVisible(bool(rows))
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        if not self._rows:
            return
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor("white"))
        count = len(self._rows) + 2 * QUIET_ZONE
        size = min(self.width(), self.height()) / count
        for down, line in enumerate(self._rows):
            for across, dark in enumerate(line):
                if dark:
                    spot = QRectF((across + QUIET_ZONE) * size, (down + QUIET_ZONE) * size, size + 0.5, size + 0.5)
                    painter.fillRect(spot, QColor("black"))
        painter.end()


@dataclass(frozen=True, slots=True)
class PhonePicture:
    """The switch. `link` is empty while the page is off; `code` are the rows of the QR code."""

    addresses: tuple[str, ...]
    link: str
    phones: int
    code: tuple[bytes, ...]


class PhonePanel(Panel):
    """The page on phones."""

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__(say("On the phone of the person at the leak"))
        self.lamp = label(role="strong")
        self.head.addWidget(self.lamp)
        self.addresses = Choice()
        self.addresses.setAccessibleName(say("Address of this machine"))
        self.switch = button(say("Show it on phones"), "slim")
        self.link = label(role="quiet")
        self.link.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.code = CodeView()
        words = wrapped("quiet")
        words.setText(say(PHONE_WORDS))
        line = row(self.addresses, self.switch)
        line.addStretch(1)
        left = column(GAP_8)
        left.addLayout(line)
        left.addWidget(self.link)
        left.addWidget(words)
        left.addStretch(1)
        both = QHBoxLayout()
        both.setSpacing(GAP_12)
        both.addLayout(left, 1)
        both.addWidget(self.code, 0, Qt.AlignmentFlag.AlignTop)
        self.body.addWidget(scrolled(both, say("On the phone")), 1)

    def show_picture(self, picture: PhonePicture) -> None:
        """Show a moment."""
        known = tuple(self.addresses.itemText(at) for at in range(self.addresses.count()))
        if known != picture.addresses:
            self.addresses.clear()
            self.addresses.addItems(list(picture.addresses))
        on = bool(picture.link)
        self.addresses.setEnabled(not on)
        self.switch.setText(say("Stop") if on else say("Show it on phones"))
        set_text(self.link, picture.link)
        counted = say("1 phone") if picture.phones == 1 else say("{count} phones", count=picture.phones)
        set_text(self.lamp, " ".join((SIGNS[Tone.GOOD], say("on: {phones}", phones=counted))) if on else say("off"))
        set_tone(self.lamp, Tone.GOOD if on else Tone.QUIET)
        self.code.show_rows(picture.code)
        self.code.setVisible(on)
