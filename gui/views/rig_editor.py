"""Putting a rig of one's own together: instruments with their ports and channels, flow ranges."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QFrame, QGridLayout, QLineEdit, QWidget

from acquisition.rig import ZONES, InstrumentSpec, RigSpec, Role
from analysis.records import FlowRange
from drivers.ports import PortInfo
from gui.theme import GAP_8, GAP_12, Tone
from gui.viewmodels.rig_sheet import RANGE_FIELDS, ROLE_WORDS, ProfileChoice, RigSheetModel, choice_of, number_text
from gui.viewmodels.sheet import Kind
from gui.views.choices import Choice, Fitted, Names
from gui.views.fields import FieldView
from gui.views.parts import button, column, label, row
from gui.views.scrolled import scrolled
from gui.words import mark, say

NO_ROLE = mark("not used")


class InstrumentEditor(QFrame):
    """One instrument. Its signals carry the number of the instrument first."""

    edited = Signal(int, str, str)
    role_chosen = Signal(int, str, object)
    removed = Signal(int)

    def __init__(self, at: int, instrument: InstrumentSpec, profiles: Sequence[ProfileChoice]) -> None:
        """Lay it out for the channels of its profile."""
        super().__init__()
        self.setProperty("role", "raised")
        self._at = at
        self._roles: list[QComboBox] = []
        choices = [(item.id, item.title) for item in profiles]
        if instrument.profile not in [item.id for item in profiles]:
            choices.append((instrument.profile, instrument.profile))
        self._name = FieldView("name", Kind.TEXT, say("Name"))
        self._profile = FieldView("profile", Kind.NAMES, say("Profile"), choices)
        self._serial = FieldView("serial", Kind.TEXT, say("Serial number that must answer"))
        self.port = Choice()
        self.port.setEditable(True)
        self.port.setAccessibleName(say("Port"))
        self._port_line = QLineEdit()
        self.port.setLineEdit(self._port_line)
        self._port_line.editingFinished.connect(self._port_typed)
        self.port.activated.connect(self._port_typed)
        for view in (self._name, self._profile, self._serial):
            view.committed.connect(self._committed)
        remove = button(say("Remove"), "slim")
        remove.clicked.connect(self._remove)
        box = column(GAP_8)
        box.setContentsMargins(GAP_12, GAP_12, GAP_12, GAP_12)
        head = row(self._name, self._profile)
        head.setStretch(0, 2)
        head.setStretch(1, 3)
        box.addLayout(head)
        ports = column(3)
        ports.addWidget(label(say("Port"), "small"))
        ports.addWidget(self.port)
        ports.addStretch(1)
        where = row()
        where.addLayout(ports, 3)
        where.addWidget(self._serial, 2)
        box.addLayout(where)
        box.addLayout(self._channels(instrument))
        foot = row(remove)
        foot.addStretch(1)
        box.addLayout(foot)
        box.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.setLayout(box)

    def show_instrument(self, instrument: InstrumentSpec) -> None:
        """Show a moment."""
        self._name.show_value(instrument.name, "", "", Tone.QUIET)
        self._profile.show_value(instrument.profile, "", "", Tone.QUIET)
        self._serial.show_value(instrument.serial, "", "", Tone.QUIET, "any")
        if self.port.currentText() != instrument.port and not self._port_line.hasFocus():
            self.port.setEditText(instrument.port)
        roles = dict(instrument.channels)
        for view in self._roles:
            channel = str(view.property("channel"))
            at = view.findData(roles.get(channel))
            view.setCurrentIndex(max(at, 0))

    def show_ports(self, ports: Sequence[PortInfo]) -> None:
        """Offer the ports of this machine."""
        typed = self.port.currentText()
        self.port.clear()
        for port in ports:
            self.port.addItem(port.name)
            tip = " · ".join(part for part in (port.description, port.usb_id, port.usb_serial) if part)
            self.port.setItemData(self.port.count() - 1, tip, Qt.ItemDataRole.ToolTipRole)
        self.port.setEditText(typed)

    def _channels(self, instrument: InstrumentSpec) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP_8)
        grid.setVerticalSpacing(GAP_8)
        choice = choice_of(instrument.profile)
        for at, channel in enumerate(choice.channels if choice is not None else ()):
            view = Fitted()
            view.setAccessibleName(say("Role of channel {name}", name=channel.name))
            view.setProperty("channel", channel.name)
            view.addItem(say(NO_ROLE), None)
            for role, words in ROLE_WORDS.items():
                view.addItem(say(words), role)
            view.activated.connect(self._role_chosen)
            self._roles.append(view)
            grid.addWidget(label(channel.name, "quiet"), at, 0)
            grid.addWidget(view, at, 1)
        grid.setColumnStretch(1, 1)
        return grid

    def _committed(self, field: str, text: str) -> None:
        self.edited.emit(self._at, field, text)

    def _port_typed(self) -> None:
        self.edited.emit(self._at, "port", self.port.currentText())

    def _role_chosen(self) -> None:
        view = self.sender()
        assert isinstance(view, QComboBox)
        self.role_chosen.emit(self._at, str(view.property("channel")), view.currentData())

    def _remove(self) -> None:
        self.removed.emit(self._at)


class RangeEditor(QFrame):
    """One flow range with its calibration."""

    edited = Signal(int, str, str)
    removed = Signal(int)

    def __init__(self, at: int) -> None:
        """Make it empty."""
        super().__init__()
        self.setProperty("role", "raised")
        self._at = at
        self._name = FieldView("name", Kind.TEXT, say("Name on its sheet"))
        self._numbers = {field: FieldView(field, Kind.NUMBER, words[0]) for field, words in RANGE_FIELDS.items()}
        grid = QGridLayout()
        grid.setContentsMargins(GAP_12, GAP_12, GAP_12, GAP_12)
        grid.setHorizontalSpacing(GAP_8)
        grid.setVerticalSpacing(GAP_8)
        for index, view in enumerate((self._name, *self._numbers.values())):
            view.committed.connect(self._committed)
            grid.addWidget(view, index // 2, index % 2)
        remove = button(say("Remove"), "slim")
        remove.clicked.connect(self._remove)
        grid.addWidget(remove, 3, 0, Qt.AlignmentFlag.AlignLeft)
        self.setLayout(grid)

    def show_range(self, item: FlowRange, model: RigSheetModel) -> None:
        """Show a moment."""
        self._name.show_value(item.name, "", "", Tone.QUIET)
        for field, view in self._numbers.items():
            key = f"range.{self._at}.{field}"
            error = model.error(key)
            text = model.text(key, number_text(getattr(item, field)))
            view.show_value(text, RANGE_FIELDS[field][1], error, Tone.BAD if error else Tone.QUIET)

    def _committed(self, field: str, text: str) -> None:
        self.edited.emit(self._at, field, text)

    def _remove(self) -> None:
        self.removed.emit(self._at)


class RigEditor(QWidget):
    """The sheet of a rig."""

    named = Signal(str)
    instrument_added = Signal(str)
    instrument_edited = Signal(int, str, str)
    instrument_removed = Signal(int)
    role_chosen = Signal(int, str, object)
    range_added = Signal()
    range_edited = Signal(int, str, str)
    range_removed = Signal(int)
    fitted_chosen = Signal(str)
    fitted_on_chosen = Signal(str, str)
    zone_named = Signal(object, str)
    shutter_chosen = Signal(bool)

    def __init__(self, profiles: Sequence[ProfileChoice]) -> None:
        """Make it empty."""
        super().__init__()
        self._profiles = tuple(profiles)
        self._structure: tuple[object, ...] | None = None
        self.fitted_on: dict[str, FieldView] = {}
        self.zones: dict[Role, FieldView] = {}
        self._instruments: list[InstrumentEditor] = []
        self._ranges: list[RangeEditor] = []
        self._ports: tuple[PortInfo, ...] = ()
        self._name = FieldView("name", Kind.TEXT, say("Name of the rig"))
        self._name.committed.connect(self._named)
        self._instrument_box, self._range_box = column(GAP_8), column(GAP_8)
        self.fitted = FieldView("fitted", Kind.NAMES, say("Flow range in use"))
        self.fitted.committed.connect(self._fitted)
        self.shutter = QCheckBox(say("The fan closes by itself at rest; nobody covers it"))
        self.shutter.clicked.connect(self.shutter_chosen)
        self.kind = Names()
        self.kind.setAccessibleName(say("Profile of the instrument to add"))
        for profile in self._profiles:
            self.kind.addItem(say(profile.title), profile.id)
        self.add = button(say("Add"))
        self.add.setAccessibleName(say("Add an instrument"))
        self.add.clicked.connect(self._add_instrument)
        adding = row(self.kind, self.add)
        adding.setStretch(0, 1)
        box = column(GAP_12)
        box.addWidget(self._name)
        box.addWidget(label(say("Instruments"), "title"))
        box.addLayout(self._instrument_box)
        box.addLayout(adding)
        box.addWidget(label(say("Flow ranges, from their calibration sheets"), "title"))
        box.addLayout(self._range_box)
        add_range = button(say("Add a flow range"))
        add_range.clicked.connect(self._add_range)
        box.addWidget(add_range)
        box.addWidget(self.fitted)
        self._further_box = column(GAP_8)
        box.addLayout(self._further_box)
        box.addWidget(self.shutter)
        box.addStretch(1)
        self.area = scrolled(box, say("Rig sheet"))
        outer = column(0)
        outer.addWidget(self.area)
        self.setLayout(outer)

    def show_sheet(self, model: RigSheetModel) -> None:
        """Show a rig; its editors are only made anew when there are others."""
        spec = model.spec
        zones = tuple(role for role in spec.role_channels() if role in ZONES)
        drives = tuple(fan.drive for fan in spec.further)
        structure = (tuple(item.profile for item in spec.instruments), len(spec.ranges), drives, zones)
        if structure != self._structure:
            self._structure = structure
            self._rebuild(spec)
        self._name.show_value(spec.name, "", "", Tone.QUIET)
        for editor, instrument in zip(self._instruments, spec.instruments, strict=True):
            editor.show_instrument(instrument)
        for range_editor, item in zip(self._ranges, spec.ranges, strict=True):
            range_editor.show_range(item, model)
        names = [item.name for item in spec.ranges]
        fitted = self.fitted.choice
        assert fitted is not None
        if names != [fitted.itemText(at) for at in range(fitted.count())]:
            fitted.clear()
            for name in names:
                fitted.addItem(name, name)
        self.fitted.show_value(spec.fitted, "", "", Tone.QUIET)
        self.fitted.setVisible(len(names) > 1)
        for fan in spec.further:
            self.fitted_on[fan.drive].show_choices([(name, name) for name in names])
            self.fitted_on[fan.drive].show_value(fan.fitted, "", "", Tone.QUIET)
        for role, view in self.zones.items():
            view.show_value(spec.zone_name(role), "", "", Tone.QUIET, say("such as garage or attic"))
        self.shutter.setChecked(spec.shutter)
        self.shutter.setVisible(bool(spec.fan))

    def show_ports(self, ports: Sequence[PortInfo]) -> None:
        """Offer the ports of this machine."""
        self._ports = tuple(ports)
        for editor in self._instruments:
            editor.show_ports(ports)

    def _rebuild(self, spec: RigSpec) -> None:
        for old in (*self._instruments, *self._ranges, *self.fitted_on.values(), *self.zones.values()):
            old.setParent(None)
            old.deleteLater()
        self._instruments, self._ranges = [], []
        for at, instrument in enumerate(spec.instruments):
            editor = InstrumentEditor(at, instrument, self._profiles)
            editor.edited.connect(self.instrument_edited)
            editor.role_chosen.connect(self.role_chosen)
            editor.removed.connect(self.instrument_removed)
            editor.show_ports(self._ports)
            self._instruments.append(editor)
            self._instrument_box.addWidget(editor)
        for at in range(len(spec.ranges)):
            range_editor = RangeEditor(at)
            range_editor.edited.connect(self.range_edited)
            range_editor.removed.connect(self.range_removed)
            self._ranges.append(range_editor)
            self._range_box.addWidget(range_editor)

        self.fitted_on = {
            fan.drive: FieldView(fan.drive, Kind.NAMES, say("Flow range in use on {drive}", drive=fan.drive))
            for fan in spec.further
        }
        for view in self.fitted_on.values():
            view.committed.connect(self.fitted_on_chosen)
            self._further_box.addWidget(view)
        self.zones = {
            role: FieldView(role.value, Kind.TEXT, say("Name of the zone of “{role}”", role=say(ROLE_WORDS[role])))
            for role in spec.role_channels()
            if role in ZONES
        }
        for view in self.zones.values():
            view.committed.connect(self._zone_named)
            self._further_box.addWidget(view)

    def _zone_named(self, role: str, text: str) -> None:
        self.zone_named.emit(Role(role), text)

    def _named(self, _: str, text: str) -> None:
        self.named.emit(text)

    def _fitted(self, _: str, text: str) -> None:
        self.fitted_chosen.emit(text)

    def _add_instrument(self) -> None:
        self.instrument_added.emit(str(self.kind.currentData()))

    def _add_range(self) -> None:
        self.range_added.emit()
