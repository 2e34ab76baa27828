"""The tables of a register file to records; every mistake names field, value and what is allowed."""

from __future__ import annotations

import math
from collections.abc import Mapping
from datetime import date, datetime

from acquisition.correction import Correction, check_correction
from acquisition.register.curves import Curve, Polynomial, PowerLaw, Table, check_curve
from acquisition.register.records import (
    KINDS,
    USUAL_MONTHS,
    Calibration,
    CheckPoint,
    Equipment,
    FieldCheck,
    RangeEntry,
    Register,
)
from analysis.errors import InvalidInput

Content = Mapping[str, object]
CURVES = ("power_law", "polynomial", "polynomial_of_root", "table")
LONGEST_MONTHS = 120


def read_register(table: Content) -> Register:
    """Return the register in a file's tables; raises `InvalidInput`."""
    _known(table, ("equipment", "check"), "")
    equipment = tuple(_equipment(item, f"equipment[{n}]") for n, item in enumerate(_tables(table, "equipment", "")))
    ids = [item.id for item in equipment]
    for id_ in ids:
        if ids.count(id_) > 1:
            raise InvalidInput("equipment.id", id_, "each may occur only once")
    return Register(equipment, tuple(_check(item, f"check[{n}]") for n, item in enumerate(_tables(table, "check", ""))))


def _equipment(table: Content, where: str) -> Equipment:
    _known(table, ("id", "kind", "title", "serial", "profile", "note", "calibration", "range", "correction"), where)
    kind = _text(table, "kind", where)
    if kind not in KINDS:
        raise InvalidInput(f"{where}.kind", kind, f"one of these is needed: {', '.join(KINDS)}")
    ranges = tuple(_range(item, f"{where}.range[{n}]") for n, item in enumerate(_tables(table, "range", where)))
    names = [entry.name for entry in ranges]
    for name in names:
        if names.count(name) > 1:
            raise InvalidInput(f"{where}.range.name", name, "each may occur only once")
    return Equipment(
        id=_text(table, "id", where),
        kind=kind,
        title=_text(table, "title", where),
        serial=_text(table, "serial", where, ""),
        profile=_text(table, "profile", where, ""),
        calibration=_calibration(table, where),
        ranges=ranges,
        note=_text(table, "note", where, ""),
        corrections=_corrections(table, where),
    )


def _corrections(holder: Content, where: str) -> tuple[Correction, ...]:
    found = []
    for n, table in enumerate(_tables(holder, "correction", where)):
        place = f"{where}.correction[{n}]"
        _known(table, ("channel", "calibrated", "table", "polynomial"), place)
        rows, numbers = _list(table, "table", place), _list(table, "polynomial", place)
        points = tuple(_pair(row, f"{place}.table[{at}]", "[shown Pa, true Pa]") for at, row in enumerate(rows))
        factors = tuple(_number(item, f"{place}.polynomial[{at}]") for at, item in enumerate(numbers))
        item = Correction(_text(table, "channel", place, ""), _day(table, "calibrated", place), points, factors)
        check_correction(item, place)
        found.append(item)
    channels = [item.channel for item in found]
    for channel in channels:
        if channels.count(channel) > 1 or (channel and "" in channels):
            allowed = "one for all channels, or one for each, is needed"
            raise InvalidInput(f"{where}.correction.channel", channel, allowed)
    return tuple(found)


def _list(table: Content, key: str, where: str) -> list[object]:
    rows = table.get(key, [])
    if not isinstance(rows, list):
        raise InvalidInput(f"{where}.{key}", rows, "a list of numbers is needed")
    return rows


def _range(table: Content, where: str) -> RangeEntry:
    _known(table, ("name", "min_pa", "max_pa", "reference_density_kg_m3", "calibration", *CURVES), where)
    low = _number(table.get("min_pa"), f"{where}.min_pa", above=0.0)
    high = _number(table.get("max_pa"), f"{where}.max_pa", above=low)
    density = _number(table.get("reference_density_kg_m3", 1.2041), f"{where}.reference_density_kg_m3", above=0.0)
    curve = _curve(table, where)
    check_curve(curve, low, high, where)
    return RangeEntry(_text(table, "name", where), curve, low, high, density, _calibration(table, where))


def _curve(table: Content, where: str) -> Curve:
    given = [key for key in CURVES if key in table]
    if len(given) != 1:
        raise InvalidInput(f"{where}.curve", given, f"exactly one of these is needed: {', '.join(CURVES)}")
    key = given[0]
    rows = table[key]
    if not isinstance(rows, list) or not rows:
        raise InvalidInput(f"{where}.{key}", rows, "a list of numbers is needed")
    if key == "table":
        return Table(tuple(_pair(row, f"{where}.table[{n}]") for n, row in enumerate(rows)))
    numbers = tuple(_number(item, f"{where}.{key}[{n}]") for n, item in enumerate(rows))
    if key != "power_law":
        return Polynomial(numbers, of_root=key == "polynomial_of_root")
    if len(numbers) != 2 or numbers[0] <= 0.0 or not 0.0 < numbers[1] <= 1.0:
        raise InvalidInput(f"{where}.power_law", list(numbers), "a coefficient above 0 and an exponent of 0 to 1")
    return PowerLaw(*numbers)


def _pair(row: object, where: str, words: str = "[Pa, m3/h]") -> tuple[float, float]:
    if not isinstance(row, list) or len(row) != 2:
        raise InvalidInput(where, row, f"a pair {words} is needed")
    return _number(row[0], where), _number(row[1], where)


def _calibration(holder: Content, where: str) -> Calibration | None:
    table = holder.get("calibration")
    if table is None:
        return None
    where = f"{where}.calibration"
    if not isinstance(table, dict):
        raise InvalidInput(where, table, "a table is needed")
    _known(table, ("calibrated", "due", "months", "certificate", "laboratory", "schemes"), where)
    months = _months(table.get("months", USUAL_MONTHS), f"{where}.months")
    schemes = table.get("schemes", {})
    if not isinstance(schemes, dict):
        raise InvalidInput(f"{where}.schemes", schemes, "a table of scheme = months is needed")
    own = tuple((name, _months(value, f"{where}.schemes.{name}")) for name, value in schemes.items())
    calibrated = _day(table, "calibrated", where)
    due = _day(table, "due", where) if "due" in table else None
    if due is not None and due < calibrated:
        raise InvalidInput(f"{where}.due", due.isoformat(), "a day after the calibration is needed")
    certificate, laboratory = (_text(table, key, where, "") for key in ("certificate", "laboratory"))
    return Calibration(calibrated, due, months, certificate, laboratory, own)


def _months(value: object, field: str) -> int:
    months = _number(value, field, above=0.0)
    if months != int(months) or months > LONGEST_MONTHS:
        raise InvalidInput(field, months, f"a whole number of 1 to {LONGEST_MONTHS} is needed")
    return int(months)


def _check(table: Content, where: str) -> FieldCheck:
    _known(table, ("day", "first", "second", "points", "note"), where)
    rows = table.get("points")
    if not isinstance(rows, list) or not rows:
        raise InvalidInput(f"{where}.points", rows, "a list of [Pa, Pa, allowed Pa] is needed")
    points = []
    for n, row in enumerate(rows):
        if not isinstance(row, list) or len(row) != 3:
            raise InvalidInput(f"{where}.points[{n}]", row, "three numbers [Pa, Pa, allowed Pa] are needed")
        points.append(CheckPoint(*(_number(item, f"{where}.points[{n}]") for item in row)))
    first, second = _text(table, "first", where), _text(table, "second", where)
    return FieldCheck(_day(table, "day", where), first, second, tuple(points), _text(table, "note", where, ""))


def _known(table: Content, keys: tuple[str, ...], where: str) -> None:
    for key in table:
        if key not in keys:
            name = f"{where}.{key}" if where else key
            raise InvalidInput(name, "unknown", f"the keys here are: {', '.join(keys)}")


def _tables(table: Content, key: str, where: str) -> list[Content]:
    value = table.get(key, [])
    if not isinstance(value, list) or not all(isinstance(item, dict) for item in value):
        raise InvalidInput(f"{where}.{key}" if where else key, value, f"tables [[{key}]] are needed")
    return value


def _text(table: Content, key: str, where: str, default: str | None = None) -> str:
    value = table.get(key, default)
    if not isinstance(value, str) or (default is None and not value.strip()):
        raise InvalidInput(f"{where}.{key}", value, "a text in quotes is needed")
    return value


def _number(value: object, field: str, above: float = -math.inf) -> float:
    good = isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value)
    if not good or not isinstance(value, int | float) or value <= above:
        bound = "" if above == -math.inf else f" greater than {above:g}"
        raise InvalidInput(field, value, f"a number{bound} is needed")
    return float(value)


def _day(table: Content, key: str, where: str) -> date:
    value = table.get(key)
    if not isinstance(value, date) or isinstance(value, datetime):
        raise InvalidInput(f"{where}.{key}", value, "a date such as 2026-05-04, without quotes, is needed")
    return value
