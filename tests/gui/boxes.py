"""Looking at a window as its reader does: is every text whole, does anything lie on something else?"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QLabel,
    QLayout,
    QPushButton,
    QStyle,
    QStyleOptionButton,
    QWidget,
)

from gui.views.choices import Choice, Names
from gui.views.parts import ElidedLabel
from gui.views.rail import RailButton

SLACK = 1
NEAR = 14
"""Pixels within which two widgets stand in one row or one column."""


def cut_texts(window: QWidget) -> list[str]:
    """Return a sentence for every visible text that does not fit into its widget."""
    return [*_cut_labels(window), *_cut_buttons(window), *_cut_choices(window)]


def overlaps(window: QWidget) -> list[str]:
    """Return a sentence for every pair of visible siblings in one layout that cover each other."""
    found = []
    for parent in (window, *window.findChildren(QWidget)):
        if not parent.isVisible() or parent.layout() is None:
            continue
        placed = _placed(parent)
        for at, one in enumerate(placed):
            for other in placed[at + 1 :]:
                shared = one.geometry().intersected(other.geometry())
                if shared.width() > SLACK and shared.height() > SLACK:
                    found.append(f"{_name(one)} and {_name(other)} share {shared.width()} x {shared.height()}")
    return found


def stops(page: QWidget) -> list[QWidget]:
    """Return what the Tab key stops at within a page, in its order."""
    found: list[QWidget] = []
    widget = page.nextInFocusChain()
    while widget is not None and widget is not page:
        takes = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and widget.isEnabled() and widget.isVisible()
        scrolls = isinstance(widget, QAbstractScrollArea) and widget.property("role") is None
        if takes and page.isAncestorOf(widget) and widget.focusProxy() is None and not scrolls:
            found.append(widget)
        widget = widget.nextInFocusChain()
    return found


def backwards(order: list[QWidget], page: QWidget) -> list[str]:
    """Return every step that goes against the way one reads: up without going right, or left within a row."""
    wrong = []
    for one, other in pairwise(order):
        here, there = one.mapTo(page, QPoint(0, 0)), other.mapTo(page, QPoint(0, 0))
        across, down = there.x() - here.x(), there.y() - here.y()
        if (down < -NEAR and across <= NEAR) or (abs(down) <= NEAR and across < 0):
            wrong.append(f"from {_name(one)} at {here.toTuple()} to {_name(other)} at {there.toTuple()}")
    return wrong


def _cut_labels(window: QWidget) -> Iterator[str]:
    for item in window.findChildren(QLabel):
        if not item.isVisible() or not item.text() or isinstance(item, ElidedLabel):
            continue
        room = item.contentsRect()
        if item.wordWrap():
            flags = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft
            needed = item.fontMetrics().boundingRect(QRect(0, 0, room.width(), 10_000), flags, item.text())
        else:
            metrics, lines = item.fontMetrics(), item.text().split("\n")
            width = max(metrics.horizontalAdvance(line) for line in lines)
            needed = QRect(0, 0, width, metrics.height() * len(lines))
        if needed.width() > room.width() + SLACK or needed.height() > room.height() + SLACK:
            size = f"{needed.width()} x {needed.height()} in {room.width()} x {room.height()}"
            yield f"label {item.text()!r} needs {size}"


def _cut_buttons(window: QWidget) -> Iterator[str]:
    for item in window.findChildren(QAbstractButton):
        if not item.isVisible() or not item.text() or not isinstance(item, QPushButton | RailButton):
            continue
        needed, room = item.fontMetrics().horizontalAdvance(item.text()), _room(item)
        if needed > room:
            yield f"button {item.text()!r} needs {needed} in {room}"


def _cut_choices(window: QWidget) -> Iterator[str]:
    """Look at every text of every drop-down, chosen or not; names may be of any length, they end in an ellipsis."""
    for item in window.findChildren(Choice):
        if not item.isVisible() or item.isEditable() or isinstance(item, Names):
            continue
        for text in (item.itemText(at) for at in range(item.count())):
            needed, room = item.fontMetrics().horizontalAdvance(text), item.room() + SLACK
            if needed > room:
                yield f"drop-down {item.accessibleName()!r} needs {needed} in {room} for {text!r}"


def _room(item: QPushButton | RailButton) -> int:
    """Return how wide the text of a button may be: its padding stays free."""
    if isinstance(item, RailButton):
        return item.width() - 2 * SLACK
    option = QStyleOptionButton()
    option.initFrom(item)
    return item.style().subElementRect(QStyle.SubElement.SE_PushButtonContents, option, item).width() + 2 * SLACK


def _placed(parent: QWidget) -> list[QWidget]:
    return [
        child
        for child in parent.children()
        if isinstance(child, QWidget) and child.isVisible() and not child.isWindow() and _in_layout(parent, child)
    ]


def _in_layout(parent: QWidget, child: QWidget) -> bool:
    return _within(parent.layout(), child)


def _within(layout: QLayout | None, child: QWidget) -> bool:
    if layout is None:
        return False
    items = [layout.itemAt(index) for index in range(layout.count())]
    return layout.indexOf(child) >= 0 or any(_within(item.layout(), child) for item in items if item is not None)


def _name(widget: QWidget) -> str:
    text = widget.text() if isinstance(widget, QLabel | QAbstractButton) else widget.accessibleName()
    return f"{type(widget).__name__} {text!r}"
