"""The signs of the places: plain lines on a grid of 24, drawn in the colour of the theme."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from gui.viewmodels.moment import Place

GRID = 24.0
STROKE = 1.8


def icon_path(place: Place) -> QPainterPath:
    """Return the sign of a place on its grid."""
    match place:
        case Place.JOB:
            return _house()
        case Place.SETUP:
            return _ticked_list()
        case Place.RIG:
            return _fan()
        case Place.TEST:
            return _line_with_points()
        case Place.HUNT:
            return _glass()
        case Place.STAGES:
            return _steps()
        case Place.REPORT:
            return _sheet()


def draw_icon(painter: QPainter, place: Place, box: QRectF, colour: QColor) -> None:
    """Draw the sign of a place into a square box."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(box.topLeft())
    painter.scale(box.width() / GRID, box.height() / GRID)
    pen = QPen(colour, STROKE, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
    painter.strokePath(icon_path(place), pen)
    painter.restore()


def program_icon_path() -> QPainterPath:
    """Return the sign of the program: a wall with a seam that the air goes through."""
    path = QPainterPath()
    _strokes(path, ((12, 3), (12, 9)), ((12, 15), (12, 21)))
    path.moveTo(3, 12)
    path.cubicTo(8, 8, 16, 16, 21, 12)
    return path


def _house() -> QPainterPath:
    path = QPainterPath()
    _strokes(path, ((3, 11.5), (12, 4), (21, 11.5)), ((5.5, 9.8), (5.5, 20), (18.5, 20), (18.5, 9.8)))
    _strokes(path, ((10, 20), (10, 14.5), (14, 14.5), (14, 20)))
    return path


def _fan() -> QPainterPath:
    path = QPainterPath()
    path.addEllipse(QRectF(3, 3, 18, 18))
    path.addEllipse(QRectF(10.4, 10.4, 3.2, 3.2))
    for corner in ((12, 5.5), (17.6, 15.2), (6.4, 15.2)):
        path.moveTo(12, 12)
        middle_x, middle_y = (12 + corner[0]) / 2, (12 + corner[1]) / 2
        path.quadTo(middle_x + (corner[1] - 12) * 0.35, middle_y - (corner[0] - 12) * 0.35, *corner)
    return path


def _ticked_list() -> QPainterPath:
    path = QPainterPath()
    for y in (6.0, 12.0, 18.0):
        _strokes(path, ((4, y), (5.8, y + 1.8), (9, y - 1.8)), ((12.5, y), (20.5, y)))
    return path


def _line_with_points() -> QPainterPath:
    path = QPainterPath()
    _strokes(path, ((4, 3.5), (4, 20), (20.5, 20)), ((7, 16.5), (19.5, 5.5)))
    for x, y in ((8.6, 15.1), (13.2, 11), (17.8, 7)):
        path.addEllipse(QPointF(x, y), 1.5, 1.5)
    return path


def _steps() -> QPainterPath:
    path = QPainterPath()
    _strokes(path, ((3.5, 6.5), (9, 6.5), (9, 12), (15, 12), (15, 17.5), (20.5, 17.5)))
    _strokes(path, ((3.5, 20.5), (20.5, 20.5)))
    return path


def _glass() -> QPainterPath:
    path = QPainterPath()
    path.addEllipse(QRectF(3.5, 3.5, 12, 12))
    _strokes(path, ((14, 14), (20.5, 20.5)))
    path.moveTo(6.5, 10)
    path.cubicTo(8, 8, 11, 11.5, 12.5, 9.2)
    return path


def _sheet() -> QPainterPath:
    path = QPainterPath()
    _strokes(path, ((14, 3.5), (6, 3.5), (6, 20.5), (18, 20.5), (18, 7.5), (14, 3.5), (14, 7.5), (18, 7.5)))
    _strokes(path, ((9, 11.5), (15, 11.5)), ((9, 14.5), (15, 14.5)), ((9, 17.3), (12.5, 17.3)))
    return path


def _strokes(path: QPainterPath, *lines: tuple[tuple[float, float], ...]) -> None:
    for line in lines:
        path.addPolygon(QPolygonF([QPointF(x, y) for x, y in line]))
