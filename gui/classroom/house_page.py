"""What a trainer does to the house: leaks, weather, time."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QWidget

from analysis.units import Display, Quantity
from gui.classroom.house_picture import COMPASS, FROM, HousePicture
from gui.classroom.quantity_box import QuantityBox
from gui.classroom.trainer import PACES
from gui.theme import GAP_4, GAP_8, GAP_12
from gui.views.choices import Choice
from gui.views.parts import ElidedLabel, button, column, label, row
from gui.views.scrolled import scrolled
from gui.words import mark, say

STEPS = ((mark("Seal"), 0.0), (mark("Half"), 0.5), (mark("As built"), 1.0), (mark("×2"), 2.0), (mark("×4"), 4.0))


class LeakRow(QWidget):
    """One leak with what can be done to it."""

    asked = Signal(str, float)

    def __init__(self, name: str) -> None:
        """Name it."""
        super().__init__()
        self._name = name
        self.title = ElidedLabel("fine")
        self.title.show_text(name)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        buttons = row(gap=GAP_4)
        for at, (words, _) in enumerate(STEPS):
            made = button(say(words), "tab")
            made.setCheckable(True)
            made.setAccessibleName(f"{name}: {say(words)}")
            self._group.addButton(made, at)
            buttons.addWidget(made, 1)
        self._group.idClicked.connect(lambda at: self.asked.emit(self._name, STEPS[at][1]))
        box = column(0)
        box.addWidget(self.title)
        box.addLayout(buttons)
        self.setLayout(box)

    def show_times(self, times: float) -> None:
        """Press the button that is true."""
        at = next((at for at, (_, value) in enumerate(STEPS) if abs(value - times) < 1e-6), -1)
        self.title.show_text(self._name if at >= 0 or times < 0.0 else f"{self._name}  ×{times:.2g}")
        self._group.setExclusive(False)
        for number in range(len(STEPS)):
            self._group.button(number).setChecked(number == at)
        self._group.setExclusive(True)


class HousePage(QWidget):
    """Leaks, weather, time."""

    leak_asked = Signal(str, float)
    wind_asked = Signal(float, float)
    heat_asked = Signal(float, float)
    pace_asked = Signal(float)

    def __init__(self) -> None:
        """Lay it out."""
        super().__init__()
        self.rows: dict[str, LeakRow] = {}
        self._names: Sequence[str] = ()
        self._box = column(GAP_8)
        self._box.addStretch(1)
        self.wind = QuantityBox(Quantity.SPEED, 0.0, 30.0, 1.0, "", say("Wind"))
        self.way = Choice()
        self.way.setAccessibleName(say("Where the wind comes from"))
        for at, words in enumerate(FROM):
            self.way.addItem(say(words), 45.0 * at)
        self.blow = button(say("Blow"), "slim")
        self.blow.clicked.connect(lambda: self.wind_asked.emit(self.wind.stored, float(self.way.currentData())))
        self.indoor = QuantityBox(Quantity.TEMPERATURE, -20.0, 60.0, 21.0, say(" in"), say("Indoors"))
        self.outdoor = QuantityBox(Quantity.TEMPERATURE, -50.0, 60.0, 5.0, say(" out"), say("Outdoors"))
        self.heat = button(say("Set"), "slim")
        self.heat.clicked.connect(lambda: self.heat_asked.emit(self.indoor.stored, self.outdoor.stored))
        weather = QGridLayout()
        weather.setSpacing(GAP_8)
        for line, widgets in enumerate(((self.wind, self.way, self.blow), (self.indoor, self.outdoor, self.heat))):
            for at, widget in enumerate(widgets):
                weather.addWidget(widget, line, at)
        weather.setColumnStretch(0, 1)
        weather.setColumnStretch(1, 1)
        self._paces = QButtonGroup(self)
        paces = row(gap=GAP_4)
        for at, pace in enumerate(PACES):
            made = button(say("Pause") if pace == 0.0 else f"{pace:g}×", "speed")
            made.setCheckable(True)
            made.setChecked(pace == 1.0)
            fast = say("Time passes {pace} times as fast", pace=f"{pace:g}")
            made.setAccessibleName(say("Time stands still") if pace == 0.0 else fast)
            self._paces.addButton(made, at)
            paces.addWidget(made, 1)
        self._paces.idClicked.connect(lambda at: self.pace_asked.emit(PACES[at]))
        box = column(GAP_8)
        box.addWidget(label(say("Leaks"), "title"))
        box.addWidget(scrolled(self._box, say("Leaks of the house")), 1)
        box.addWidget(label(say("Weather"), "title"))
        box.addLayout(weather)
        box.addWidget(label(say("Time in the houses"), "title"))
        box.addLayout(paces)
        box.setContentsMargins(0, GAP_12, 0, 0)
        self.setLayout(box)

    def show_house(self, picture: HousePicture | None, pace: float, *, covered: bool) -> None:
        """Show a moment; of covered leaks only the names are seen."""
        marks = {} if picture is None else {leak.name: leak for leak in picture.leaks if not leak.name.startswith("op")}
        if tuple(marks) != tuple(self._names):
            self._have(tuple(marks))
            if picture is not None:
                self.indoor.set_stored(picture.indoor_c)
                self.outdoor.set_stored(picture.outdoor_c)
                self.wind.set_stored(picture.wind_m_s)
                self.way.setCurrentIndex(round(picture.wind_from_deg / 45.0) % len(COMPASS))
        for name, leak in marks.items():
            self.rows[name].show_times(-1.0 if covered else leak.times)
        if pace in PACES:
            self._paces.button(PACES.index(pace)).setChecked(True)
        self.setEnabled(picture is not None)

    def set_display(self, display: Display) -> None:
        """Change the units."""
        for view in (self.wind, self.indoor, self.outdoor):
            view.set_display(display)

    def _have(self, names: Sequence[str]) -> None:
        self._names = names
        for view in self.rows.values():
            self._box.removeWidget(view)
            view.deleteLater()
        self.rows = {}
        for at, name in enumerate(names):
            view = LeakRow(name)
            view.asked.connect(self.leak_asked)
            self.rows[name] = view
            self._box.insertWidget(at, view)
