"""Plan, rig, air and time as the text that the job file holds."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import asdict
from datetime import UTC, date, datetime
from typing import Any

from acquisition.correction import Correction
from acquisition.jsontext import table_of, unreadable
from acquisition.kinds import TestKind
from acquisition.plan import TestPlan
from acquisition.rig import CalibrationNote, FurtherFan, InstrumentSpec, RigSpec, Role
from acquisition.stages import StageGoals
from analysis.errors import InvalidInput
from analysis.meaning import Surroundings
from analysis.records import Air, Building, Direction, FlowRange, Kit, Limit


def utc_text(moment: datetime) -> str:
    """Return ISO 8601 in UTC, to the microsecond."""
    return moment.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%S.%fZ")


def utc_from(text: str) -> datetime:
    """Read what `utc_text` wrote."""
    return datetime.fromisoformat(text).astimezone(UTC)


def document_text(record: TestPlan | RigSpec | Air | FlowRange | StageGoals) -> str:
    """Return JSON with sorted keys and no blanks; raises `InvalidInput` for a number that JSON cannot hold."""
    try:
        return json.dumps(
            asdict(record),
            sort_keys=True,
            ensure_ascii=False,
            separators=(",", ":"),
            allow_nan=False,
            default=_day_text,
        )
    except ValueError as error:
        name = type(record).__name__
        raise InvalidInput(name, "not finite", "every number must be finite") from error


def plan_from(text: str) -> TestPlan:
    """Read a plan; raises `InvalidInput`."""
    table = table_of("plan", text)
    try:
        limit = table.pop("limit", None)
        return TestPlan(
            building=Building(**table.pop("building")),
            air=Air(**table.pop("air")),
            kind=TestKind(table.pop("kind", TestKind.CODE)),
            limit=None if limit is None else Limit(**limit),
            directions=tuple(Direction(item) for item in table.pop("directions")),
            targets_pa=tuple(float(item) for item in table.pop("targets_pa")),
            published=tuple(str(item) for item in table.pop("published", ())),
            kit=Kit(**table.pop("kit", {})),
            surroundings=Surroundings(**table.pop("surroundings", {})),
            **table,
        )
    except (KeyError, TypeError, ValueError) as error:
        raise unreadable("plan", error) from error


def rig_from(text: str) -> RigSpec:
    """Read a rig; raises `InvalidInput`."""
    table = table_of("rig", text)
    try:
        return RigSpec(
            instruments=tuple(_instrument(item) for item in table.pop("instruments")),
            ranges=tuple(FlowRange(**item) for item in table.pop("ranges")),
            further=tuple(FurtherFan(**item) for item in table.pop("further", ())),
            zone_names=tuple((Role(role), str(name)) for role, name in table.pop("zone_names", ())),
            calibrations=tuple(_calibration(item) for item in table.pop("calibrations", ())),
            corrections=tuple(_correction(item) for item in table.pop("corrections", ())),
            **table,
        )
    except (KeyError, TypeError, ValueError) as error:
        raise unreadable("rig", error) from error


def air_from(text: str) -> Air:
    """Read the air of a run; raises `InvalidInput`."""
    try:
        return Air(**table_of("air", text))
    except TypeError as error:
        raise unreadable("air", error) from error


def range_from(text: str) -> FlowRange:
    """Read a flow range; raises `InvalidInput`."""
    try:
        return FlowRange(**table_of("flow range", text))
    except TypeError as error:
        raise unreadable("flow range", error) from error


def _instrument(table: Mapping[str, object]) -> InstrumentSpec:
    fields = dict(table)
    channels = fields.pop("channels")
    if not isinstance(channels, list):
        raise TypeError("channels")
    texts = {key: str(value) for key, value in fields.items()}
    return InstrumentSpec(channels=tuple((str(name), Role(role)) for name, role in channels), **texts)


def _day_text(value: object) -> str:
    if isinstance(value, date):
        return value.isoformat()
    raise ValueError(type(value).__name__)


def _calibration(table: Mapping[str, Any]) -> CalibrationNote:
    day = table["calibrated"]
    due = tuple((str(scheme), date.fromisoformat(text)) for scheme, text in table["due"])
    return CalibrationNote(table["of"], None if day is None else date.fromisoformat(day), due)


def _correction(table: Mapping[str, Any]) -> Correction:
    return Correction(
        table["channel"],
        date.fromisoformat(table["calibrated"]),
        tuple((float(shown), float(true)) for shown, true in table["table"]),
        tuple(float(factor) for factor in table["polynomial"]),
    )
