"""A field for a quantity: typed in the units of the person, handed on as it is stored."""

from __future__ import annotations

from PySide6.QtWidgets import QDoubleSpinBox

from analysis.units import Display, Quantity, from_display, to_display, unit_symbol


class QuantityBox(QDoubleSpinBox):
    """`words` stand behind the unit, as in `21.0 °C in`."""

    def __init__(self, quantity: Quantity, low: float, high: float, value: float, words: str, name: str) -> None:
        """Know its limits and first value as they are stored."""
        super().__init__()
        self._quantity = quantity
        self._range = (low, high)
        self._words = words
        self._display = Display()
        self.setDecimals(1)
        self.setAccessibleName(name)
        self.setMinimumHeight(36)
        self._lay(value)

    @property
    def stored(self) -> float:
        """What stands in it, as it is stored."""
        return from_display(self.value(), self._quantity, self._display)

    def set_stored(self, value: float) -> None:
        """Show a stored value."""
        self.setValue(to_display(value, self._quantity, self._display))

    def set_display(self, display: Display) -> None:
        """Change the units; what stands in it stays the same."""
        if display != self._display:
            stored, self._display = self.stored, display
            self._lay(stored)

    def _lay(self, stored: float) -> None:
        low, high = (to_display(end, self._quantity, self._display) for end in self._range)
        self.setSuffix(f" {unit_symbol(self._quantity, self._display)}{self._words}")
        self.setRange(low, high)
        self.set_stored(stored)
