"""What the register keeps: equipment, its flow ranges and calibrations, and field checks."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from acquisition.correction import Correction
from acquisition.register.curves import Curve, as_flow_range
from analysis.errors import InvalidInput
from analysis.records import FlowRange

KINDS = ("gauge", "fan", "thermometer", "barometer", "other")
USUAL_MONTHS = 12
"""How long a calibration is good where nobody says otherwise (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Calibration:
    """When it was calibrated and until when that is good.

    `due` stands for itself; without it the calibration is good for `months`. `schemes` holds the months of those that
    set their own, by name. `certificate` is the file beside the register, empty for none.
    """

    calibrated: date
    due: date | None = None
    months: int = USUAL_MONTHS
    certificate: str = ""
    laboratory: str = ""
    schemes: tuple[tuple[str, int], ...] = ()

    @property
    def due_date(self) -> date:
        """The first day on which it is overdue."""
        return self.due if self.due is not None else months_later(self.calibrated, self.months)

    @property
    def due_dates(self) -> tuple[tuple[str, date], ...]:
        """The first overdue day of the usual term, whose name is empty, and of each scheme."""
        named = ((name, months_later(self.calibrated, months)) for name, months in self.schemes)
        return (("", self.due_date), *named)


@dataclass(frozen=True, slots=True)
class RangeEntry:
    """A flow range of a fan: its curve at the reference density, valid from `min_pa` to `max_pa`."""

    name: str
    curve: Curve
    min_pa: float
    max_pa: float
    reference_density_kg_m3: float = 1.2041
    calibration: Calibration | None = None

    def flow_range(self) -> tuple[FlowRange, float]:
        """Return it as the power law that the analysis takes, and how far that is off at worst (fraction)."""
        return as_flow_range(self.name, self.curve, self.min_pa, self.max_pa, self.reference_density_kg_m3)


@dataclass(frozen=True, slots=True)
class Equipment:
    """One thing that is owned. `id` is unique in the register; `serial` is what it answers, or its plate says.

    `corrections` are a gauge's own calibration, by the channel of its profile, empty for all its pressures.
    """

    id: str
    kind: str
    title: str
    serial: str = ""
    profile: str = ""
    calibration: Calibration | None = None
    ranges: tuple[RangeEntry, ...] = ()
    note: str = ""
    corrections: tuple[Correction, ...] = ()


@dataclass(frozen=True, slots=True)
class CheckPoint:
    """What both gauges showed at one pressure, and how far they may be apart there."""

    first_pa: float
    second_pa: float
    allowed_pa: float


@dataclass(frozen=True, slots=True)
class FieldCheck:
    """Two gauges on one hose, on one day: `first` and `second` are ids of equipment."""

    day: date
    first: str
    second: str
    points: tuple[CheckPoint, ...]
    note: str = ""

    @property
    def agree(self) -> bool:
        """Whether they are apart by no more than allowed at every pressure."""
        return all(abs(point.first_pa - point.second_pa) <= point.allowed_pa for point in self.points)


@dataclass(frozen=True, slots=True)
class Register:
    """All equipment and all field checks, oldest check first."""

    equipment: tuple[Equipment, ...] = ()
    checks: tuple[FieldCheck, ...] = ()

    def item(self, id_: str) -> Equipment:
        """Return the equipment of an id; raises `InvalidInput`."""
        for item in self.equipment:
            if item.id == id_:
                return item
        known = ", ".join(item.id for item in self.equipment) or "none yet"
        raise InvalidInput("equipment", id_, f"an id of the register is needed; there are: {known}")

    def by_serial(self, serial: str) -> Equipment | None:
        """Return the equipment that answers with a serial number, None when it is not registered."""
        return next((item for item in self.equipment if serial and item.serial == serial), None)

    def with_item(self, item: Equipment) -> Register:
        """Return the register with this equipment added, or in the place of the one of the same id."""
        others = [known for known in self.equipment if known.id != item.id]
        at = next((n for n, known in enumerate(self.equipment) if known.id == item.id), len(others))
        return replace(self, equipment=(*others[:at], item, *others[at:]))

    def without(self, id_: str) -> Register:
        """Return the register without an item; its field checks stay: they happened."""
        self.item(id_)
        return replace(self, equipment=tuple(item for item in self.equipment if item.id != id_))

    def with_check(self, check: FieldCheck) -> Register:
        """Return the register with another field check."""
        return replace(self, checks=tuple(sorted((*self.checks, check), key=lambda item: item.day)))

    def checks_of(self, id_: str) -> tuple[FieldCheck, ...]:
        """Return the field checks of an item, oldest first."""
        return tuple(check for check in self.checks if id_ in (check.first, check.second))


def ranges_of(item: Equipment) -> tuple[FlowRange, ...]:
    """Return the flow ranges of a fan for a rig, each as the power law nearest to its curve."""
    return tuple(entry.flow_range()[0] for entry in item.ranges)


def months_later(day: date, months: int) -> date:
    """Return the day so many months later, the month's last one where there is no such day."""
    count = day.month - 1 + months
    year, month = day.year + count // 12, count % 12 + 1
    for last in (day.day, 30, 29, 28):
        try:
            return date(year, month, min(day.day, last))
        except ValueError:
            continue
    raise InvalidInput("months", months, "a date in this calendar is needed")
