"""What a number that a function is handed may be: one clear sentence for anything else."""

from __future__ import annotations

from analysis.errors import InvalidInput

_LARGEST = 1e9


def above_zero(value: float, field: str) -> float:
    """Return the value; raises `InvalidInput` unless it is above 0 and finite."""
    if not 0.0 < value < _LARGEST:
        raise InvalidInput(field, value, "a number greater than 0 (and below 1e9) is needed")
    return value


def not_negative(value: float, field: str) -> float:
    """Return the value; raises `InvalidInput` unless it is at least 0 and finite."""
    if not 0.0 <= value < _LARGEST:
        raise InvalidInput(field, value, "a number of at least 0 (and below 1e9) is needed")
    return value


def within(value: float, low: float, high: float, field: str, unit: str = "") -> float:
    """Return the value; raises `InvalidInput` unless it lies from `low` to `high`."""
    if not low <= value <= high:
        allowed = f"a number from {low:g} to {high:g} {unit}".rstrip()
        raise InvalidInput(field, value, f"{allowed} is needed")
    return value
