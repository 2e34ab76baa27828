"""Drop-downs: what is too long for one ends in an ellipsis, and is whole in its tip and its list."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QHelpEvent, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QComboBox, QStyle, QStyleOptionComboBox, QStylePainter, QToolTip

FEW_LETTERS = 8


class Choice(QComboBox):
    """A list to choose from, with an arrow in the colour of the text."""

    def room(self) -> int:
        """Return how wide a text may be, in pixels."""
        option, field = self._option(), QStyle.SubControl.SC_ComboBoxEditField
        return self.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, field, self).width()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the text as far as there is room for it, and the arrow over what the style draws."""
        painter, option = QStylePainter(self), self._option()
        option.currentText = self.fontMetrics().elidedText(option.currentText, Qt.TextElideMode.ElideRight, self.room())
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        if not self.isEditable():
            painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(self.palette().color(QPalette.ColorRole.PlaceholderText), 2)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        x, y = self.width() - 18.0, self.height() / 2 - 2
        painter.drawPolyline([QPointF(x - 5, y), QPointF(x, y + 5), QPointF(x + 5, y)])
        painter.end()

    def showPopup(self) -> None:
        """Open the list as wide as its longest text, within the screen."""
        view, widest = self.view(), self.screen().availableGeometry()
        bar = self.style().pixelMetric(QStyle.PixelMetric.PM_ScrollBarExtent)
        view.setMinimumWidth(min(view.sizeHintForColumn(self.modelColumn()) + bar, widest.width()))
        super().showPopup()
        popup = view.window()
        popup.move(min(popup.x(), max(widest.right() - popup.width(), widest.left())), popup.y())

    def event(self, event: QEvent) -> bool:
        """Say the whole text where it is cut and nothing else is to be said."""
        if isinstance(event, QHelpEvent) and event.type() is QEvent.Type.ToolTip and not self.toolTip():
            QToolTip.showText(event.globalPos(), self.cut_text(), self)
            return True
        return super().event(event)

    def cut_text(self) -> str:
        """Return the text on show, whole, where there is no room for all of it, else nothing."""
        text = self.currentText()
        return text if self.fontMetrics().horizontalAdvance(text) > self.room() else ""

    def _option(self) -> QStyleOptionComboBox:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        return option


class Fitted(Choice):
    """A list that takes the room it is given, however long its texts are."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.setMinimumContentsLength(FEW_LETTERS)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)


class Names(Fitted):
    """A list of names that people or files gave: they may be of any length."""


class Proposals(Fitted):
    """A line to type in, with texts to take instead."""

    def __init__(self) -> None:
        """Make it empty."""
        super().__init__()
        self.setEditable(True)
        self.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
