"""The rig sheet: the instruments of a rig as somebody puts them together, and what is still wrong with it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, fields, replace

from acquisition.register import Equipment, ranges_of
from acquisition.rig import FLOWS, ZONES, FurtherFan, InstrumentSpec, RigSpec, Role
from acquisition.rigfile import check_rig
from analysis.errors import InvalidInput
from analysis.numbertext import parse_number
from analysis.records import FlowRange
from drivers.byhand import HAND
from drivers.errors import ProfileError
from drivers.finding import Found
from drivers.profile import ChannelSpec, Profile, load_profile, shipped_profiles
from gui.viewmodels.errors import sentence
from gui.viewmodels.history import History
from gui.words import mark, say

BAROMETRIC_PA = 40_000.0
"""A pressure channel that reaches this far is a barometer."""
ROLE_WORDS = {
    Role.ENVELOPE: mark("Envelope pressure"),
    Role.ENVELOPE_2: mark("Envelope pressure, tap 2"),
    Role.ENVELOPE_3: mark("Envelope pressure, tap 3"),
    Role.ENVELOPE_4: mark("Envelope pressure, tap 4"),
    Role.FLOW_ELEMENT: mark("Flow element pressure"),
    Role.FLOW_ELEMENT_2: mark("Flow element pressure, fan 2"),
    Role.FLOW_ELEMENT_3: mark("Flow element pressure, fan 3"),
    Role.FLOW_ELEMENT_4: mark("Flow element pressure, fan 4"),
    Role.FLOW: mark("Flow"),
    Role.FLOW_2: mark("Flow, fan 2"),
    Role.FLOW_3: mark("Flow, fan 3"),
    Role.FLOW_4: mark("Flow, fan 4"),
    Role.ZONE_1: mark("Indoors against zone 1"),
    Role.ZONE_2: mark("Indoors against zone 2"),
    Role.ZONE_3: mark("Indoors against zone 3"),
    Role.ZONE_4: mark("Indoors against zone 4"),
    Role.INDOOR: mark("Indoor temperature"),
    Role.INDOOR_2: mark("Indoor temperature, place 2"),
    Role.INDOOR_3: mark("Indoor temperature, place 3"),
    Role.OUTDOOR: mark("Outdoor temperature"),
    Role.OUTDOOR_2: mark("Outdoor temperature, place 2"),
    Role.BAROMETER: mark("Barometric pressure"),
}
RANGE_FIELDS = {
    "coefficient_m3_h_pa_n": (mark("Coefficient"), "m³/(h·Paⁿ)"),
    "exponent": (mark("Exponent"), ""),
    "min_pa": (mark("Calibrated from"), "Pa"),
    "max_pa": (mark("Calibrated to"), "Pa"),
    "reference_density_kg_m3": (mark("At air density"), "kg/m³"),
}
NOT_KNOWN = math.nan
EMPTY = RigSpec(name="My rig", instruments=(), fan="", ranges=(), fitted="")


@dataclass(frozen=True, slots=True)
class ProfileChoice:
    """A profile that can be chosen, with its channels."""

    id: str
    title: str
    kind: str
    channels: tuple[ChannelSpec, ...]
    by_hand: bool = False
    """Whether a person reads the gauge and types what it shows: its port needs no choice."""


def profile_choices() -> tuple[ProfileChoice, ...]:
    """Return the shipped profiles."""
    return tuple(choice for choice in (choice_of(item) for item in shipped_profiles()) if choice is not None)


def choice_of(profile_id: str) -> ProfileChoice | None:
    """Return a profile, None where there is none that can be used."""
    try:
        profile: Profile = load_profile(profile_id)
    except ProfileError:
        return None
    by_hand = f"{profile.place}:" == HAND
    return ProfileChoice(profile_id, profile.title, profile.kind, profile.channels, by_hand)


class RigSheetModel:
    """A rig under edit. Every accepted edit can be undone."""

    def __init__(self, spec: RigSpec = EMPTY) -> None:
        """Begin with a rig, or with nothing."""
        self.spec = spec
        self._history: History[RigSpec] = History()
        self._wrong: dict[str, tuple[str, str]] = {}

    @property
    def undo_label(self) -> str:
        """What would be undone."""
        return self._history.undo_label

    @property
    def redo_label(self) -> str:
        """What would be done again."""
        return self._history.redo_label

    def undo(self) -> None:
        """Go back one edit."""
        self._restore(self._history.undo())

    def redo(self) -> None:
        """Do the edit again that was undone last."""
        self._restore(self._history.redo())

    def load(self, spec: RigSpec) -> None:
        """Take a rig out of a file."""
        self._set(say("rig file"), spec)

    def problem(self) -> str:
        """Return what keeps the rig from being connected, empty when nothing does."""
        if self._wrong:
            return next(iter(self._wrong.values()))[1]
        if not self.spec.instruments:
            return say("Add the instruments of the rig, or load a rig file.")
        try:
            for instrument in self.spec.instruments:
                if not instrument.port.strip():
                    raise InvalidInput(f"Port of {instrument.name}", None, "the port of the instrument is needed")
            if not self.spec.ranges:
                raise InvalidInput("Flow range", None, "the calibration of the fitted range is needed")
            for item in self.spec.ranges:
                _check_range(item)
            check_rig(self.spec)
        except InvalidInput as error:
            return sentence(error)
        return ""

    def text(self, key: str, value: str) -> str:
        """Return what stands in a field: what was typed wrong, else its value."""
        return self._wrong.get(key, (value, ""))[0]

    def error(self, key: str) -> str:
        """Return what is wrong with a field."""
        return self._wrong.get(key, ("", ""))[1]

    def set_name(self, name: str) -> None:
        """Name the rig."""
        self._set(say("rig name"), replace(self.spec, name=" ".join(name.split()) or self.spec.name))

    def take_found(self, found: Sequence[Found]) -> int:
        """Add the instruments that were found at ports; one that is there already gets its port. Return how many."""
        instruments = list(self.spec.instruments)
        count = 0
        for item in found:
            choice = choice_of(item.profile) if item.profile else None
            if choice is None:
                continue
            count += 1
            known = next((i for i in instruments if i.profile == item.profile and i.serial == item.serial), None)
            if known is not None:
                instruments[instruments.index(known)] = replace(known, port=item.port.name)
                continue
            name = self._free_name("fan" if choice.kind == "drive" else "gauge", [i.name for i in instruments])
            roles = self._suggested(choice, tuple(instruments))
            instruments.append(InstrumentSpec(name, item.profile, item.port.name, roles, item.serial))
        if tuple(instruments) != self.spec.instruments:
            self._set_instruments(say("instruments found"), tuple(instruments))
        return count

    def take_equipment(self, item: Equipment) -> str:
        """Add a registered instrument and its flow ranges, or bring those that are there up to date; say what came."""
        instruments, came = list(self.spec.instruments), []
        choice = choice_of(item.profile) if item.profile else None
        known = [i for i in instruments if item.serial and i.serial == item.serial]
        if choice is not None and not known:
            name = self._free_name("fan" if choice.kind == "drive" else "gauge", [i.name for i in instruments])
            roles = self._suggested(choice, tuple(instruments))
            instruments.append(InstrumentSpec(name, item.profile, "", roles, item.serial))
            came.append(say("{name}, whose port is still to be chosen", name=name))
        ranges = ranges_of(item)
        if ranges:
            names = {entry.name for entry in ranges}
            kept = tuple(entry for entry in self.spec.ranges if entry.name not in names)
            came.append(say("1 flow range") if len(ranges) == 1 else say("{count} flow ranges", count=len(ranges)))
            ranges = (*kept, *ranges)
        drives = [i.name for i in instruments if is_drive(i)]
        spec = self._with_ranges(ranges) if ranges else self.spec
        self._set(
            say("equipment taken"), replace(spec, instruments=tuple(instruments), fan=drives[0] if drives else "")
        )
        if came:
            return say("Taken into your own rig from {title}: {came}.", title=item.title, came=say(" and ").join(came))
        if known:
            return say("{title} is in your own rig already.", title=item.title)
        return say("{title} has neither a profile nor flow ranges: choose its profile first.", title=item.title)

    def add_instrument(self, profile_id: str) -> None:
        """Add an instrument with a profile; channels get the roles that are still free."""
        choice = choice_of(profile_id)
        if choice is None:
            return
        name = self._free_name("fan" if choice.kind == "drive" else "gauge", [i.name for i in self.spec.instruments])
        port = f"{HAND}{name}" if choice.by_hand else ""
        made = InstrumentSpec(name, profile_id, port, self._suggested(choice, self.spec.instruments))
        self._set_instruments(say("instrument added"), (*self.spec.instruments, made))

    def remove_instrument(self, at: int) -> None:
        """Take an instrument away."""
        kept = tuple(item for index, item in enumerate(self.spec.instruments) if index != at)
        self._set_instruments(say("instrument removed"), kept)

    def set_instrument(self, at: int, field: str, text: str) -> None:
        """Set `name`, `port`, `serial` or `profile` of an instrument."""
        old = self.spec.instruments[at]
        clean = text.strip()
        if field == "name" and not clean:
            return
        new = replace(old, **{field: clean})  # type: ignore[arg-type]  # all four are texts
        if field == "profile":
            choice = choice_of(clean)
            others = tuple(item for index, item in enumerate(self.spec.instruments) if index != at)
            new = replace(new, channels=self._suggested(choice, others) if choice is not None else ())
            if choice is not None and choice.by_hand:
                new = replace(new, port=f"{HAND}{new.name}")
            elif new.port.startswith(HAND):
                new = replace(new, port="")
        items = list(self.spec.instruments)
        items[at] = new
        self._set_instruments(say("an instrument"), tuple(items))

    def set_role(self, at: int, channel: str, role: Role | None) -> None:
        """Give a channel a role; the same role is taken from any other channel."""
        items = []
        for index, item in enumerate(self.spec.instruments):
            kept = [pair for pair in item.channels if pair[1] is not role and not (index == at and pair[0] == channel)]
            if index == at and role is not None:
                kept.append((channel, role))
            items.append(replace(item, channels=tuple(sorted(kept))))
        self._set_instruments(say("channel role"), tuple(items))

    def add_range(self) -> None:
        """Add a flow range whose calibration is still to be typed."""
        taken = [item.name for item in self.spec.ranges]
        name = next(name for name in (f"range {at}" for at in range(1, 99)) if name not in taken)
        made = FlowRange(name, NOT_KNOWN, NOT_KNOWN, NOT_KNOWN, NOT_KNOWN)
        self._set(say("range added"), self._with_ranges((*self.spec.ranges, made)))

    def remove_range(self, at: int) -> None:
        """Take a flow range away."""
        self._wrong = {key: value for key, value in self._wrong.items() if not key.startswith("range.")}
        kept = tuple(item for index, item in enumerate(self.spec.ranges) if index != at)
        self._set(say("range removed"), self._with_ranges(kept))

    def set_range(self, at: int, field: str, text: str) -> None:
        """Set the name or a number of a flow range; what cannot be used stays, with its error."""
        key = f"range.{at}.{field}"
        self._wrong.pop(key, None)
        old = self.spec.ranges[at]
        if field == "name":
            new = replace(old, name=text.strip() or old.name)
        else:
            label = say("{field} of “{name}”", field=say(RANGE_FIELDS[field][0]), name=old.name)
            try:
                number = parse_number(text, label)
                if number <= 0 or (field == "exponent" and number > 1):
                    top = " and at most 1" if field == "exponent" else ""
                    raise InvalidInput(label, text, f"a number greater than 0{top} is needed", shown=text.strip())
            except InvalidInput as error:
                self._wrong[key] = (text, sentence(error))
                return
            new = replace(old, **{field: number})  # type: ignore[arg-type]  # all the others are numbers
        items = list(self.spec.ranges)
        items[at] = new
        fitted = new.name if self.spec.fitted == old.name else self.spec.fitted
        self._set(say("flow range"), replace(self._with_ranges(tuple(items)), fitted=fitted))

    def set_fitted(self, name: str) -> None:
        """Choose the flow range in use."""
        self._set(say("fitted range"), replace(self.spec, fitted=name))

    def set_fitted_on(self, drive: str, name: str) -> None:
        """Choose the flow range in use on a further fan."""
        further = tuple(replace(fan, fitted=name) if fan.drive == drive else fan for fan in self.spec.further)
        self._set(say("range fitted on {drive}", drive=drive), replace(self.spec, further=further))

    def set_zone(self, role: Role, name: str) -> None:
        """Name a zone; no name is none."""
        names = dict(self.spec.zone_names) | {role: " ".join(name.split())}
        kept = tuple((zone, names[zone]) for zone in ZONES if names.get(zone))
        self._set(say("zone name"), replace(self.spec, zone_names=kept))

    def set_shutter(self, shutter: bool) -> None:
        """Say whether the fan closes by itself at rest."""
        self._set("shutter", replace(self.spec, shutter=shutter))

    def _set(self, label: str, spec: RigSpec) -> None:
        if not same(spec, self.spec):
            self._history.note(label, self.spec, spec)
            self.spec = spec

    def _restore(self, spec: RigSpec | None) -> None:
        if spec is not None:
            self.spec = spec
            self._wrong.clear()

    def _set_instruments(self, label: str, instruments: tuple[InstrumentSpec, ...]) -> None:
        drives = [item.name for item in instruments if is_drive(item)]
        fitted = {fan.drive: fan.fitted for fan in self.spec.further}
        further = tuple(FurtherFan(name, fitted.get(name, self.spec.fitted)) for name in drives[1:])
        fan = drives[0] if drives else ""
        self._set(label, replace(self.spec, instruments=instruments, fan=fan, further=further))

    def _with_ranges(self, ranges: tuple[FlowRange, ...]) -> RigSpec:
        names = [item.name for item in ranges]
        fitted = self.spec.fitted if self.spec.fitted in names else (names[0] if names else "")
        further = tuple(fan if fan.fitted in names else replace(fan, fitted=fitted) for fan in self.spec.further)
        return replace(self.spec, ranges=ranges, fitted=fitted, further=further)

    def _suggested(self, choice: ProfileChoice, others: tuple[InstrumentSpec, ...]) -> tuple[tuple[str, Role], ...]:
        """Return the roles that the channels probably have, as far as no other instrument has them."""
        taken = {role for item in others for _, role in item.channels}
        if Role.FLOW in taken:
            taken.add(Role.FLOW_ELEMENT)
        roles: list[tuple[str, Role]] = []
        for channel in choice.channels:
            wanted = _roles_for(channel)
            role = next((item for item in wanted if item not in taken), None)
            if role is not None:
                roles.append((channel.name, role))
                taken.add(role)
            if choice.by_hand and role is Role.FLOW_ELEMENT:
                # Nobody wants to type the flow as well.
                taken |= {*FLOWS}
        return tuple(roles)

    def _free_name(self, stem: str, taken: list[str]) -> str:
        return next(name for name in (stem, *(f"{stem} {at}" for at in range(2, 99))) if name not in taken)


def is_drive(instrument: InstrumentSpec) -> bool:
    """Whether an instrument drives the fan."""
    choice = choice_of(instrument.profile)
    return choice is not None and choice.kind == "drive"


def same(one: RigSpec, other: RigSpec) -> bool:
    """Whether two rigs are the same, whatever the register knows of them; unknown numbers count as equal."""
    bare, other = (replace(item, calibrations=(), corrections=()) for item in (one, other))
    return repr(bare) == repr(other)


def role_words(spec: RigSpec, role: Role) -> str:
    """Return what a role is called in a rig: a zone by its name."""
    name = spec.zone_name(role)
    return say("Indoors against {name}", name=name) if name else say(ROLE_WORDS[role])


def number_text(value: float) -> str:
    """Return a calibration number as it was typed."""
    return "" if math.isnan(value) else f"{value:.10g}"


def _roles_for(channel: ChannelSpec) -> tuple[Role, ...]:
    if channel.quantity == "temperature":
        return Role.INDOOR, Role.OUTDOOR
    if channel.quantity == "flow":
        return FLOWS
    if channel.quantity == "pressure":
        return (Role.BAROMETER,) if channel.high > BAROMETRIC_PA else (Role.ENVELOPE, Role.FLOW_ELEMENT)
    return ()


def _check_range(item: FlowRange) -> None:
    for field in fields(item):
        value = getattr(item, field.name)
        if isinstance(value, float) and not math.isfinite(value):
            label = RANGE_FIELDS[field.name][0]
            raise InvalidInput(f"{label} of “{item.name}”", None, "a number from the calibration sheet is needed")
    if item.max_pa <= item.min_pa:
        allowed = f"more than {item.min_pa:g} Pa is needed"
        raise InvalidInput(f"Upper end of “{item.name}”", item.max_pa, allowed, shown=f"{item.max_pa:g} Pa")
