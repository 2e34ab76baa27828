"""A page that scrolls up and down, with room beside its scroll bar."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLayout, QScrollArea, QWidget

from gui.theme import GAP_8, GAP_12
from gui.views.parts import column


def scrolled(inside: QLayout, name: str) -> QScrollArea:
    """Return a page with this content; `name` is what a screen reader calls it."""
    inside.setContentsMargins(0, 0, GAP_8, 0)
    page = QWidget()
    page.setProperty("role", "scrolled")
    page.setLayout(inside)
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(page)
    area.setAccessibleName(name)
    return area


def beside(columns: Iterable[Iterable[QWidget]]) -> QHBoxLayout:
    """Return columns of panels, equally wide, each from the top."""
    sides = QHBoxLayout()
    sides.setSpacing(GAP_12)
    for panels in columns:
        side = column(GAP_12)
        for panel in panels:
            side.addWidget(panel)
        side.addStretch(1)
        sides.addLayout(side, 1)
    return sides
