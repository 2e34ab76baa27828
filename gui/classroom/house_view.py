"""The house as a section: walls, roof, leaks with what passes them, zones, fan, wind, pressures."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QHelpEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from analysis.units import Display, Quantity, format_with_unit
from gui.classroom.house_picture import EAST, FLOOR, NORTH, ROOF, WEST, HousePicture, LeakMark
from gui.look import Look
from gui.theme import BODY, FIGURE, NEXT, SMALL, Tone
from gui.words import mark, say

LONGEST_ARROW, DEEPEST_ARROW, SHORTEST_ARROW = 74.0, 26.0, 10.0
LABEL_HEIGHT = 18.0
NEAR_PX = 26.0
LEAST_ZONE = 104.0
"""So wide is what stands beside a leak."""
COVERED = mark("The truth is covered. T uncovers it.")
EMPTY = mark("No class is open. Choose an exercise at the right and open the class.")


@dataclass(frozen=True, slots=True)
class Section:
    """Where the house stands on the widget."""

    box: QRectF
    ridge: QPointF

    def place(self, mark: LeakMark) -> tuple[QPointF, QPointF]:
        """Return where a leak lies and the direction out of the house there; leaks of front and back lie inside."""
        box = self.box
        y = box.bottom() - 10.0 - mark.height * (box.height() - 24.0)
        match mark.facade:
            case f if f is WEST:
                return QPointF(box.left(), y), QPointF(-1.0, 0.0)
            case f if f is EAST:
                return QPointF(box.right(), y), QPointF(1.0, 0.0)
            case f if f is ROOF:
                half = QPointF((box.left() + 2 * self.ridge.x()) / 3, (box.top() + 2 * self.ridge.y()) / 3)
                return half, QPointF(-0.4, -0.92)
            case f if f is FLOOR:
                return QPointF(box.left() + 0.3 * box.width(), box.bottom()), QPointF(0.0, 1.0)
            case f if f is NORTH:
                return QPointF(box.left() + 0.28 * box.width(), y), QPointF(-0.55, -0.83)
            case _:
                return QPointF(box.left() + 0.72 * box.width(), y), QPointF(0.55, 0.83)


class HouseView(QWidget):
    """Draws a picture; with `covered` only what an instrument shows too."""

    def __init__(self, look: Look) -> None:
        """Show nothing yet."""
        super().__init__()
        self._look = look
        self._picture: HousePicture | None = None
        self._covered = False
        self._display = Display()
        self.setMinimumSize(420, 320)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(say("The house as a section"))
        look.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        """Have room."""
        return QSize(640, 460)

    def show_picture(self, picture: HousePicture | None, display: Display, *, covered: bool) -> None:
        """Show a moment."""
        if picture is self._picture and (covered, display) == (self._covered, self._display):
            return
        self._picture, self._covered, self._display = picture, covered, display
        if picture is not None:
            self.setAccessibleDescription(f"{self._pressure(picture.pressure_pa)}, {picture.wind_words(display)}")
        self.update()

    def event(self, event: QEvent) -> bool:
        """Say which leak lies under the pointer."""
        if event.type() is not QEvent.Type.ToolTip:
            return super().event(event)
        assert isinstance(event, QHelpEvent)
        QToolTip.showText(event.globalPos(), self.leak_at(QPointF(event.pos())), self)
        return True

    def leak_at(self, point: QPointF) -> str:
        """Return the name of the leak at a point, nothing where there is none or it is covered."""
        if self._picture is None or self._covered:
            return ""
        section = self._section()
        gaps = [(_length(section.place(mark)[0] - point), mark.name) for mark in self._picture.leaks]
        gap, name = min(gaps, default=(NEAR_PX, ""))
        return name if gap < NEAR_PX else ""

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        picture = self._picture
        if picture is None:
            self._text(painter, QRectF(self.rect()), say(EMPTY), Tone.QUIET, BODY, Qt.AlignmentFlag.AlignCenter)
        else:
            section = self._section()
            self._draw_house(painter, section, picture)
            self._draw_zones(painter, section, picture)
            self._draw_fan(painter, section, picture)
            self._draw_wind(painter, section, picture)
            self._draw_inside(painter, section, picture)
            if not self._covered:
                self._draw_leaks(painter, section, picture)
        painter.end()

    def _section(self) -> Section:
        width, height = float(self.width()), float(self.height())
        wide = min(0.52 * width, 1.2 * height)
        tall = min(0.52 * height, 0.74 * wide)
        left = (width - wide) / 2.0
        bottom = height - 62.0
        box = QRectF(left, bottom - tall, wide, tall)
        rise = min(0.42 * tall, box.top() - 92.0)
        return Section(box, QPointF(box.center().x(), box.top() - rise))

    def _draw_house(self, painter: QPainter, section: Section, picture: HousePicture) -> None:
        theme, box = self._look.theme, section.box
        painter.setPen(QPen(QColor(theme.line), 2))
        painter.drawLine(QPointF(8, box.bottom()), QPointF(self.width() - 8.0, box.bottom()))
        painter.setBrush(QColor(theme.raised))
        painter.setPen(QPen(QColor(theme.quiet), 3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
        painter.drawRect(box)
        roof = [box.topLeft() - QPointF(14, 0), section.ridge, box.topRight() + QPointF(14, 0)]
        painter.setBrush(QColor(theme.panel))
        painter.drawPolygon(QPolygonF(roof))

    def _draw_zones(self, painter: QPainter, section: Section, picture: HousePicture) -> None:
        box, theme = section.box, self._look.theme
        for zone in picture.zones:
            text = zone.name if self._covered else f"{zone.name}\n{self._pressure(zone.pressure_pa)}"
            if zone.facade is ROOF:
                rise = box.top() - section.ridge.y()
                place = QRectF(box.left(), section.ridge.y() + 0.4 * rise, box.width(), 0.6 * rise)
            else:
                beside = min(box.left(), self.width() - box.right()) - 8.0
                wide, tall = min(max(0.26 * box.width(), LEAST_ZONE), 130.0, beside), 0.42 * box.height()
                left = box.left() - wide if zone.facade is WEST else box.right()
                place = QRectF(left, box.bottom() - tall, wide, tall)
                painter.setPen(QPen(QColor(theme.quiet), 2))
                painter.setBrush(QColor(theme.panel))
                painter.drawRect(place)
                place = place.adjusted(0.0, 0.5 * tall, 0.0, 0.0)
            self._text(painter, place, text, Tone.PRESSURE, SMALL, Qt.AlignmentFlag.AlignCenter)

    def _draw_fan(self, painter: QPainter, section: Section, picture: HousePicture) -> None:
        box, theme = section.box, self._look.theme
        door = QRectF(
            box.left() + 0.46 * box.width(), box.bottom() - 0.44 * box.height(), 0.13 * box.width(), 0.44 * box.height()
        )
        painter.setPen(QPen(QColor(theme.quiet), 2))
        painter.setBrush(QColor(theme.panel))
        painter.drawRect(door)
        centre, radius = QPointF(door.center().x(), door.bottom() - 0.32 * door.height()), 0.36 * door.width()
        running = picture.fan_speed > 0.01
        painter.setPen(QPen(self._look.colour(Tone.FLOW if running else Tone.QUIET), 2))
        painter.drawEllipse(centre, radius, radius)
        turned = picture.time_s * 2.0 if running else 0.0
        for blade in range(3):
            angle = turned + blade * 2.0 * math.pi / 3.0
            painter.drawLine(centre, centre + QPointF(math.cos(angle), math.sin(angle)) * radius)
        flow = self._flow(abs(picture.fan_m3_h))
        words = say("fan {flow} into the house", flow=flow)
        if not picture.blows_in:
            words = say("fan {flow} out of the house", flow=flow)
        if not self._covered and running:
            words = say("{fan}, range {name}", fan=words, name=picture.fitted)
        if not running:
            words = say("fan at rest")
        under = QRectF(0.0, box.bottom() + 34.0, float(self.width()), 22.0)
        self._text(painter, under, words, Tone.FLOW if running else Tone.QUIET, BODY, Qt.AlignmentFlag.AlignCenter)

    def _draw_wind(self, painter: QPainter, section: Section, picture: HousePicture) -> None:
        west_east = -math.sin(math.radians(picture.wind_from_deg))
        length = min(18.0 + 9.0 * picture.wind_m_s, 110.0)
        right = west_east >= 0.0
        y, x = 48.0, (26.0 if right else self.width() - 26.0)
        if picture.wind_m_s >= 0.05:
            _arrow(
                painter, QPointF(x, y), QPointF(1.0 if right else -1.0, 0.0), length, self._look.colour(Tone.PRESSURE)
            )
        side = Qt.AlignmentFlag.AlignLeft if right else Qt.AlignmentFlag.AlignRight
        at = QRectF(20.0, y + 10.0, self.width() - 40.0, 20.0)
        self._text(painter, at, picture.wind_words(self._display), Tone.PRESSURE, BODY, side)
        out = QRectF(20.0, 6.0, self.width() - 40.0, 20.0)
        outdoors = say("{temperature} outdoors", temperature=self._celsius(picture.outdoor_c))
        self._text(painter, out, outdoors, Tone.PLAIN, BODY, Qt.AlignmentFlag.AlignRight)
        minutes, rest = divmod(int(picture.time_s), 60)
        words = f"{picture.name}, {minutes}:{rest:02d}"
        if picture.paused:
            words = say("{house}, time stands still", house=words)
        self._text(painter, out, words, Tone.PLAIN, BODY, Qt.AlignmentFlag.AlignLeft)

    def _draw_inside(self, painter: QPainter, section: Section, picture: HousePicture) -> None:
        box = section.box
        at = QRectF(box.left(), box.top() + 10.0, box.width(), 34.0)
        centre = Qt.AlignmentFlag.AlignCenter
        self._text(painter, at, self._pressure(picture.pressure_pa), Tone.PRESSURE, FIGURE, centre)
        below = QRectF(at.left(), at.bottom(), at.width(), 20.0)
        self._text(painter, below, self._celsius(picture.indoor_c), Tone.PLAIN, BODY, centre)
        if self._covered:
            hint = QRectF(box.left(), below.bottom() + 2.0, box.width(), 20.0)
            self._text(painter, hint, say(COVERED), Tone.QUIET, SMALL, centre)
            return
        sucked, blown = picture.truth_m3_h
        words = say("in truth {low} at −50 Pa, {high} at +50 Pa", low=self._flow(sucked), high=self._flow(blown))
        corner = QRectF(20.0, 28.0, self.width() - 40.0, 20.0)
        self._text(painter, corner, words, Tone.QUIET, BODY, Qt.AlignmentFlag.AlignRight)

    def _draw_leaks(self, painter: QPainter, section: Section, picture: HousePicture) -> None:
        most = max([abs(leak.flow_m3_h) for leak in picture.leaks] + [30.0])
        for leak in picture.leaks:
            at, outwards = section.place(leak)
            colour = self._look.colour(Tone.FLOW)
            longest = DEEPEST_ARROW if leak.facade is FLOOR else LONGEST_ARROW
            length = SHORTEST_ARROW + (longest - SHORTEST_ARROW) * math.sqrt(abs(leak.flow_m3_h) / most)
            if leak.times <= 0.0:
                painter.setPen(QPen(self._look.colour(Tone.GOOD), 3))
                painter.drawLine(at - QPointF(6, 6), at + QPointF(6, 6))
                painter.drawLine(at - QPointF(6, -6), at + QPointF(6, -6))
                self._name(painter, at, outwards, length, leak)
                continue
            if leak.flow_m3_h >= 0.0:
                _arrow(painter, at, outwards, length, colour)
            else:
                _arrow(painter, at + outwards * length, outwards * -1.0, length, colour)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawEllipse(at, 4.0, 4.0)
            self._name(painter, at, outwards, length, leak)

    def _name(self, painter: QPainter, at: QPointF, outwards: QPointF, length: float, leak: LeakMark) -> None:
        flow = self._flow(leak.flow_m3_h)
        if leak.times <= 0.0:
            flow = say("{flow}, sealed", flow=flow)
        elif leak.times != 1.0:
            flow += f", ×{leak.times:.2g}".replace(".", self._display.decimal_mark)
        end = at + outwards * length
        wide = 150.0
        if abs(outwards.x()) == 1.0:
            left = at.x() - wide - 8.0 if outwards.x() < 0 else at.x() + 8.0
            side = Qt.AlignmentFlag.AlignRight if outwards.x() < 0 else Qt.AlignmentFlag.AlignLeft
            box = QRectF(left, at.y() - 6.0 - LABEL_HEIGHT, wide, LABEL_HEIGHT)
        elif outwards.y() == 1.0:
            side, box = Qt.AlignmentFlag.AlignLeft, QRectF(end.x() + 12.0, at.y() + 6.0, wide, LABEL_HEIGHT)
        else:
            # The arrow of the front runs down from its leak, that of the back up: the words take the other side.
            front = outwards.x() > 0
            side = Qt.AlignmentFlag.AlignHCenter
            if leak.facade is ROOF:
                side, box = Qt.AlignmentFlag.AlignRight, QRectF(at.x() - wide - 10.0, at.y() - 9.0, wide, LABEL_HEIGHT)
            else:
                box = QRectF(
                    at.x() - wide / 2, at.y() - 8.0 - LABEL_HEIGHT if front else at.y() + 6.0, wide, LABEL_HEIGHT
                )
        self._text(painter, box, flow, Tone.FLOW, SMALL, side)

    def _pressure(self, value_pa: float) -> str:
        return format_with_unit(value_pa, Quantity.PRESSURE, self._display, 1)

    def _flow(self, value_m3_h: float) -> str:
        return format_with_unit(value_m3_h, Quantity.FLOW, self._display, 0)

    def _celsius(self, value_c: float) -> str:
        return format_with_unit(value_c, Quantity.TEMPERATURE, self._display, 1)

    def _text(self, painter: QPainter, box: QRectF, text: str, tone: Tone, size: int, side: Qt.AlignmentFlag) -> None:
        font = QFont(self.font())
        font.setPixelSize(size)
        font.setWeight(QFont.Weight.DemiBold if size >= NEXT else QFont.Weight.Normal)
        painter.setFont(font)
        painter.setPen(self._look.ink(tone))
        painter.drawText(box, side | Qt.AlignmentFlag.AlignVCenter, text)


def _length(vector: QPointF) -> float:
    return math.hypot(vector.x(), vector.y())


def _arrow(painter: QPainter, start: QPointF, towards: QPointF, length: float, colour: QColor) -> None:
    end = start + towards * length
    painter.setPen(QPen(colour, 2.4, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
    painter.drawLine(start, end)
    across = QPointF(-towards.y(), towards.x())
    for side in (1.0, -1.0):
        painter.drawLine(end, end - towards * 7.0 + across * (side * 4.5))
