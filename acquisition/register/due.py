"""Whether a calibration is still good, in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from acquisition.register.records import Calibration, Equipment
from acquisition.rig import CalibrationNote

SOON_DAYS = 60
Due = Sequence[tuple[str, date]]


class DueState(StrEnum):
    """How urgent it is."""

    GOOD = "good"
    SOON = "due soon"
    OVERDUE = "overdue"
    UNKNOWN = "unknown"


_ORDER = (DueState.OVERDUE, DueState.SOON, DueState.UNKNOWN, DueState.GOOD)


@dataclass(frozen=True, slots=True)
class DueStatus:
    """A state, a sentence, and days left (negative when overdue, None when unknown)."""

    state: DueState
    sentence: str
    days_left: int | None = None


def due_status(what: str, calibration: Calibration | None, today: date) -> DueStatus:
    """Return how the calibration of `what` stands today, by the scheme that is due first."""
    return _status(what, *_dates(calibration), today)[0]


def all_due(item: Equipment, today: date) -> tuple[DueStatus, ...]:
    """Return how the item and those of its ranges that have a calibration of their own stand, most urgent first.

    There is one for each scheme.
    """
    parts = [(f"{item.title}, range {entry.name}", entry.calibration) for entry in item.ranges]
    parts = [part for part in parts if part[1] is not None]
    if item.calibration is not None or not parts:
        parts.append((item.title, item.calibration))
    found: list[DueStatus] = []
    for what, calibration in parts:
        found += _status(what, *_dates(calibration), today)
    return tuple(sorted(found, key=lambda status: _ORDER.index(status.state)))


def due_of_rig(notes: Sequence[CalibrationNote], today: date) -> tuple[DueStatus, ...]:
    """Return what is not in order about the calibrations of a rig, one for each thing and scheme, most urgent first."""
    found = [status for note in notes for status in _status(note.of, note.calibrated, note.due, today)]
    odd = [status for status in found if status.state is not DueState.GOOD]
    return tuple(sorted(odd, key=lambda status: _ORDER.index(status.state)))


def _dates(calibration: Calibration | None) -> tuple[date | None, Due]:
    return (None, ()) if calibration is None else (calibration.calibrated, calibration.due_dates)


def _status(what: str, calibrated: date | None, due: Due, today: date) -> list[DueStatus]:
    """Return one status for each scheme, the one that is due first in front."""
    what = f"{what[:1].upper()}{what[1:]}"
    if calibrated is None:
        return [DueStatus(DueState.UNKNOWN, f"{what}: no calibration is registered.")]
    if calibrated > today:
        sentence = f"{what}: the calibration is dated {calibrated.isoformat()}, which is still to come."
        return [DueStatus(DueState.UNKNOWN, sentence)]
    return [_of_scheme(what, scheme, day, today) for scheme, day in sorted(due, key=lambda pair: pair[1])]


def _of_scheme(what: str, scheme: str, day: date, today: date) -> DueStatus:
    left, due = (day - today).days, day.isoformat()
    by = f" by {scheme}" if scheme else ""
    if left < 0:
        return DueStatus(DueState.OVERDUE, f"{what}: calibration overdue{by} since {due}, {_days(-left)}.", left)
    if left <= SOON_DAYS:
        return DueStatus(DueState.SOON, f"{what}: calibration due{by} on {due}, in {_days(left)}.", left)
    return DueStatus(DueState.GOOD, f"{what}: calibration good{by} until {due}.", left)


def _days(count: int) -> str:
    return "1 day" if count == 1 else f"{count} days"
