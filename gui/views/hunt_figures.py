"""The two panels of figures in the Hunt place, and the same figures for somebody who stands far away."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.look import Look
from gui.theme import GAP_4, GAP_8, GAP_16, SIGNS, Tone
from gui.viewmodels.hunt import MOST_SEALS, Big, HuntPicture
from gui.views.big_figure import BigFigure
from gui.views.parts import ElidedLabel, Panel, label, row, set_text, set_tone

FLOW_PX, SINCE_PX, AFAR_PX = 132, 76, 2000
LEAST_FLOW_PX, LEAST_SINCE_PX = 44, 34


class WayBar(QWidget):
    """How much of the way to the target is gone."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self._look = look
        self._share: float | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        look.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        """Return a low strip."""
        return QSize(120, 12)

    def show_share(self, share: float | None) -> None:
        """Show a share 0..1, or an empty bar."""
        if share != self._share:
            self._share = share
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        height = float(self.height())
        painter.setBrush(self._look.theme.raised)
        painter.drawRoundedRect(QRectF(0, 0, self.width(), height), height / 2, height / 2)
        if self._share:
            painter.setBrush(self._look.colour(Tone.GOOD))
            painter.drawRoundedRect(
                QRectF(0, 0, max(self._share * self.width(), height), height), height / 2, height / 2
            )
        painter.end()


class FlowPanel(Panel):
    """The flow now."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self.title.setProperty("role", "quiet")
        self.figure = BigFigure(look, LEAST_FLOW_PX, FLOW_PX)
        self.rate = ElidedLabel("head")
        self.band = ElidedLabel("quiet")
        self.bar = WayBar(look)
        self.way = ElidedLabel("small")
        self.zero = label(role="small")
        self.pressure = label(role="strong")
        self.age = label(role="small")
        self.head.addWidget(self.pressure)
        self.head.addWidget(self.age)
        self.body.setSpacing(GAP_4)
        self.body.addWidget(self.figure, 1)
        for part in (self.rate, self.band, self.bar):
            self.body.addWidget(part)
        last = row(self.way, self.zero, gap=GAP_8)
        last.setStretch(0, 1)
        self.body.addLayout(last)

    def show_picture(self, picture: HuntPicture) -> None:
        """Show a moment."""
        flow = picture.flow
        self.title.show_text(flow.caption)
        show_big(self.figure, flow, faded=picture.stale)
        self.rate.show_text(picture.rate)
        self.band.show_text(picture.band or picture.idle)
        self.rate.setVisible(bool(picture.rate))
        self.bar.show_share(picture.way)
        self.bar.setVisible(picture.way is not None)
        self.way.show_text(picture.way_text)
        self.way.setVisible(bool(picture.way_text))
        set_text(
            self.zero, _signed(picture.zero, picture.zero_tone) if picture.zero_tone is not Tone.QUIET else picture.zero
        )
        set_tone(self.zero, picture.zero_tone)
        set_text(self.pressure, _signed(picture.pressure, picture.pressure_tone))
        set_tone(self.pressure, picture.pressure_tone)
        set_text(self.age, picture.age if picture.holding else "")
        set_tone(self.age, Tone.BAD if picture.stale else Tone.QUIET)


class SincePanel(Panel):
    """The change, and what each seal brought."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self.title.setProperty("role", "quiet")
        self.figure = BigFigure(look, LEAST_SINCE_PX, SINCE_PX)
        self.verdict = label(role="strong")
        self.head.addWidget(self.verdict)
        self.detail = ElidedLabel()
        self.least = ElidedLabel("small")
        self._seals = [(ElidedLabel(), label(role="strong")) for _ in range(MOST_SEALS)]
        self._lines: list[QWidget] = []
        self.body.setSpacing(GAP_4)
        self.body.addWidget(self.figure, 1)
        self.body.addWidget(self.detail)
        self.body.addWidget(self.least)
        for name, brought in self._seals:
            line = QWidget()
            inside = row(name, brought)
            inside.setStretch(0, 1)
            line.setLayout(inside)
            self._lines.append(line)
            self.body.addWidget(line)

    def show_picture(self, picture: HuntPicture) -> None:
        """Show a moment; of the seals as many as there is room for."""
        since = picture.since
        self.title.show_text(since.caption)
        show_big(self.figure, since, faded=picture.stale)
        set_text(self.verdict, _signed(picture.verdict, picture.verdict_tone))
        set_tone(self.verdict, picture.verdict_tone)
        for view, words in ((self.detail, picture.detail), (self.least, picture.least)):
            view.show_text(words)
            view.setVisible(bool(words))
        room = self._room()
        for at, (line, (name, brought)) in enumerate(zip(self._lines, self._seals, strict=True)):
            there = at < min(len(picture.seals), room)
            line.setVisible(there)
            if there:
                seal = picture.seals[at]
                name.show_text(seal.name)
                set_text(brought, _signed(seal.brought, seal.tone) if seal.tone is not Tone.QUIET else seal.brought)
                set_tone(brought, seal.tone)

    def _room(self) -> int:
        """Return how many seals have room below the figure."""
        line = self.fontMetrics().height() + GAP_4
        free = self.height() - 100 - LEAST_SINCE_PX
        return max(min(free // line, MOST_SEALS), 1)


class AfarPanel(Panel):
    """Few huge figures: each fills a sixth of the screen or more."""

    def __init__(self, look: Look) -> None:
        """Make it empty."""
        super().__init__()
        self.flow = BigFigure(look, LEAST_FLOW_PX, AFAR_PX)
        self.since = BigFigure(look, LEAST_FLOW_PX, AFAR_PX)
        self.pressure, self.verdict, self.age = (ElidedLabel("result-words") for _ in range(3))
        self.captions = (ElidedLabel("head"), ElidedLabel("head"))
        self.title.hide()
        self.note.hide()
        self.body.setSpacing(GAP_8)
        for caption, figure in zip(self.captions, (self.flow, self.since), strict=True):
            self.body.addWidget(caption)
            self.body.addWidget(figure, 1)
        words = row(self.pressure, self.verdict, self.age, gap=GAP_16)
        for at in range(3):
            words.setStretch(at, 1)
        self.body.addLayout(words)

    def show_picture(self, picture: HuntPicture) -> None:
        """Show a moment."""
        for caption, view, big in zip(
            self.captions, (self.flow, self.since), (picture.flow, picture.since), strict=True
        ):
            caption.show_text(big.caption)
            show_big(view, big, faded=picture.stale)
        self.pressure.show_text(_signed(picture.pressure, picture.pressure_tone) or picture.idle)
        set_tone(self.pressure, picture.pressure_tone)
        self.verdict.show_text(_signed(picture.verdict, picture.verdict_tone))
        set_tone(self.verdict, picture.verdict_tone)
        self.age.show_text(picture.age if picture.holding else "")
        set_tone(self.age, Tone.BAD if picture.stale else Tone.QUIET)


def show_big(view: BigFigure, big: Big, *, faded: bool) -> None:
    """Show a figure, or quietly that there is none yet."""
    view.show_figure(big.value, big.unit, big.tone, big.spoken, faded=faded, small=not big.known)


def _signed(words: str, tone: Tone) -> str:
    return f"{SIGNS.get(tone, '')} {words}".strip() if words else ""
