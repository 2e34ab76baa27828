"""Whether a calibration is still good, in words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from acquisition.register.records import Calibration, Equipment

SOON_DAYS = 60


class DueState(StrEnum):
    """How urgent it is."""

    GOOD = "good"
    SOON = "due soon"
    OVERDUE = "overdue"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class DueStatus:
    """A state, a sentence, and days left (negative when overdue, None when unknown)."""

    state: DueState
    sentence: str
    days_left: int | None = None


def due_status(what: str, calibration: Calibration | None, today: date) -> DueStatus:
    """Return how the calibration of `what` stands today."""
    if calibration is None:
        return DueStatus(DueState.UNKNOWN, f"{what}: no calibration is registered.")
    if calibration.calibrated > today:
        sentence = f"{what}: the calibration is dated {calibration.calibrated.isoformat()}, which is still to come."
        return DueStatus(DueState.UNKNOWN, sentence)
    left = (calibration.due_date - today).days
    due = calibration.due_date.isoformat()
    if left < 0:
        return DueStatus(DueState.OVERDUE, f"{what}: calibration overdue since {due}, {_days(-left)}.", left)
    if left <= SOON_DAYS:
        return DueStatus(DueState.SOON, f"{what}: calibration due on {due}, in {_days(left)}.", left)
    return DueStatus(DueState.GOOD, f"{what}: calibration good until {due}.", left)


def all_due(item: Equipment, today: date) -> tuple[DueStatus, ...]:
    """Return how the item and those of its ranges that have a calibration of their own stand, most urgent first."""
    found = [
        due_status(f"{item.title}, range {entry.name}", entry.calibration, today)
        for entry in item.ranges
        if entry.calibration is not None
    ]
    if item.calibration is not None or not found:
        found.append(due_status(item.title, item.calibration, today))
    order = (DueState.OVERDUE, DueState.SOON, DueState.UNKNOWN, DueState.GOOD)
    return tuple(sorted(found, key=lambda status: order.index(status.state)))


def _days(count: int) -> str:
    return "1 day" if count == 1 else f"{count} days"
