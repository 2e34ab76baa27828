"""The job sheet: everything about a job that a person types, and the fields it is typed in."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum

from acquisition.job import JobDetails
from acquisition.kinds import TestKind
from acquisition.plan import OWN_SCHEDULE, SCHEDULES, TestPlan
from acquisition.report.names import KINDS
from acquisition.stages import Stages, at_stage, kept
from acquisition.told.titles import method_title
from analysis.errors import InvalidInput
from analysis.methods import method_ids, method_of
from analysis.numbertext import format_number, parse_number
from analysis.records import Direction, Limit
from analysis.units import Display, Quantity, parse_value, to_display, unit_symbol, usual_decimals
from gui.words import mark, say

PREPARATIONS = tuple(dict.fromkeys(item for method in method_ids() for item in method_of(method).preparations.items()))
HOSES_CHECKED, HOSES_LEFT_OUT = mark("before the points"), mark("left out: {reason}")
HOSE_REASONS = (mark("looked over by hand"), mark("checked in the test before"))
DEFAULT_LIMIT = "n50_per_h"
LOWEST_TARGET_PA, HIGHEST_TARGET_PA = 5.0, 75.0
"""The watchdog stops the fan at 80 Pa."""
MOST_TARGETS = 20
DIRECTIONS = {
    "depressurize": (Direction.DEPRESSURIZE,),
    "pressurize": (Direction.PRESSURIZE,),
    "both": (Direction.DEPRESSURIZE, Direction.PRESSURIZE),
}


@dataclass(frozen=True, slots=True)
class Sheet:
    """What is typed, and what is remembered of each stage.

    `limit_quantity` stays chosen while no limit is set; `reason` says why the building changed.
    """

    details: JobDetails
    plan: TestPlan
    stages: Stages = ()
    limit_quantity: str = DEFAULT_LIMIT
    reason: str = ""


def sheet_of(details: JobDetails, plan: TestPlan, stages: Stages = (), reason: str = "") -> Sheet:
    """Return the sheet of a job."""
    return Sheet(details, plan, stages, limit_quantity_of(plan, DEFAULT_LIMIT), reason)


def limit_quantity_of(plan: TestPlan, otherwise: str) -> str:
    """Return what the limit of a plan is on."""
    return plan.limit.quantity if plan.limit is not None else otherwise


def remembering(before: Sheet, after: Sheet) -> Sheet:
    """Return an edited sheet that remembers of its stage what the edit changed."""
    if after.plan.stage != before.plan.stage:
        after = replace(after, stages=kept(after.stages, before.plan))
    return replace(after, stages=kept(after.stages, after.plan))


class Kind(StrEnum):
    """How a field is typed."""

    TEXT = "text"
    LONG = "long text"
    PROPOSED = "text with proposals"
    NUMBER = "number"
    CHOICE = "choice"
    NAMES = "choice among names"


@dataclass(frozen=True, slots=True)
class Field:
    """A field of the sheet. `path` leads to the value; `low` and `high` bound it in stored units.

    `read` and `write` take the place of the path where a field is not simply one value.
    """

    id: str
    group: str
    label: str
    kind: Kind = Kind.TEXT
    path: str = ""
    quantity: Quantity | None = None
    low: float = 0.0
    high: float = 0.0
    above_low: bool = False
    optional: bool = True
    hint: str = ""
    choices: tuple[tuple[str, str], ...] = ()
    read: Callable[[Sheet, Display], str] | None = None
    write: Callable[[Sheet, str, Display], Sheet] | None = None

    def unit(self, sheet: Sheet, display: Display) -> str:
        """Return the unit that stands beside the field."""
        if self.id == "limit":
            return unit_symbol(KINDS[sheet.limit_quantity], display)
        if self.id == "targets":
            return "Pa"
        return unit_symbol(self.quantity, display) if self.quantity is not None else ""

    def text(self, sheet: Sheet, display: Display) -> str:
        """Return what stands in the field."""
        if self.read is not None:
            return self.read(sheet, display)
        value = value_at(sheet, self.path)
        if value is None:
            return ""
        if self.quantity is not None and isinstance(value, int | float):
            return plain_number(float(value), self.quantity, display)
        return str(value)

    def typed(self, sheet: Sheet, text: str, display: Display) -> Sheet:
        """Return the sheet with `text` typed here; raises `InvalidInput`."""
        if self.write is not None:
            return self.write(sheet, text, display)
        if self.quantity is None:
            clean = text if self.kind is Kind.LONG else " ".join(text.split())
            if not clean and not self.optional:
                raise InvalidInput(self.label, text, "a text is needed", shown="empty")
            return with_value(sheet, self.path, clean)
        if not text.strip() and self.optional:
            return with_value(sheet, self.path, None)
        value = parse_value(text, self.quantity, display, self.label)
        too_low = value <= self.low if self.above_low else value < self.low
        if too_low or value > self.high:
            raise InvalidInput(self.label, text, self._allowed(display), shown=text.strip())
        return with_value(sheet, self.path, value)

    def _allowed(self, display: Display) -> str:
        assert self.quantity is not None
        unit = unit_symbol(self.quantity, display)
        low, high = (f"{plain_number(bound, self.quantity, display)} {unit}" for bound in (self.low, self.high))
        if self.above_low:
            return f"more than {low} and at most {high} is allowed"
        return f"{low} to {high} is allowed"


def value_at(sheet: Sheet, path: str) -> object:
    """Return the value that a dotted path leads to."""
    value: object = sheet
    for name in path.split("."):
        value = getattr(value, name)
    return value


def with_value(sheet: Sheet, path: str, value: object) -> Sheet:
    """Return the sheet with another value at a dotted path."""
    names = path.split(".")

    def changed(record: object, at: int) -> object:
        inner = value if at == len(names) - 1 else changed(getattr(record, names[at]), at + 1)
        return replace(record, **{names[at]: inner})  # type: ignore[type-var]  # records all the way down

    made = changed(sheet, 0)
    assert isinstance(made, Sheet)
    return made


def plain_number(value: float, quantity: Quantity, display: Display) -> str:
    """Return a stored value for a field: the usual decimals and one more, without the zeros at the end."""
    shown = to_display(value, quantity, display)
    text = format_number(shown, usual_decimals(quantity, display) + 1, display.decimal_mark)
    whole, mark, rest = text.partition(display.decimal_mark)
    rest = rest.rstrip("0")
    return whole + (mark + rest if rest else "")


def _read_limit(sheet: Sheet, display: Display) -> str:
    limit = sheet.plan.limit
    return "" if limit is None else plain_number(limit.value, KINDS[limit.quantity], display)


def _write_limit(sheet: Sheet, text: str, display: Display) -> Sheet:
    if not text.strip():
        return replace(sheet, plan=replace(sheet.plan, limit=None))
    value = parse_value(text, KINDS[sheet.limit_quantity], display, "Limit")
    if value <= 0:
        raise InvalidInput("Limit", text, "a number greater than 0 is needed", shown=text.strip())
    return replace(sheet, plan=replace(sheet.plan, limit=Limit("stage", sheet.limit_quantity, value)))


def _write_limit_quantity(sheet: Sheet, text: str, display: Display) -> Sheet:
    # Another quantity is another limit: the number does not go over.
    limit = sheet.plan.limit if sheet.plan.limit is not None and sheet.plan.limit.quantity == text else None
    return replace(sheet, limit_quantity=text, plan=replace(sheet.plan, limit=limit))


def _read_targets(sheet: Sheet, display: Display) -> str:
    return "  ".join(f"{target:g}".replace(".", display.decimal_mark) for target in sheet.plan.targets_pa)


def _write_targets(sheet: Sheet, text: str, display: Display) -> Sheet:
    parts = [part for part in re.split(r"[;\s]+|,\s+", text.strip()) if part]
    try:
        targets = tuple(parse_number(part, "Targets", display.decimal_mark) for part in parts)
    except InvalidInput as error:
        allowed = "pressures with spaces between are needed, such as 60 50 40 30 20"
        raise InvalidInput("Targets", text, allowed, shown=text.strip()) from error
    fewest = method_of(sheet.plan.method).fewest_points
    if not fewest <= len(targets) <= MOST_TARGETS:
        allowed = f"{fewest} to {MOST_TARGETS} pressures with spaces between are needed"
        raise InvalidInput("Targets", text, allowed, shown=text.strip() or "empty")
    for target in targets:
        if not LOWEST_TARGET_PA <= target <= HIGHEST_TARGET_PA:
            allowed = f"each from {LOWEST_TARGET_PA:g} to {HIGHEST_TARGET_PA:g} Pa; the fan is stopped at 80 Pa"
            raise InvalidInput("Targets", target, allowed, shown=f"{target:g} Pa")
    ordered = tuple(sorted(targets, reverse=True))
    return replace(sheet, plan=replace(sheet.plan, targets_pa=ordered))


def _write_method(sheet: Sheet, text: str, _: Display) -> Sheet:
    return replace(sheet, plan=sheet.plan.by_method(text))


def _read_hoses(sheet: Sheet, _: Display) -> str:
    plan = sheet.plan
    if plan.hose_check:
        return say(HOSES_CHECKED)
    return say(HOSES_LEFT_OUT, reason=plan.hose_check_reason or say("no reason given"))


def hose_words() -> tuple[str, ...]:
    """Return what can be chosen about the check of the hoses."""
    return (say(HOSES_CHECKED), *(say(HOSES_LEFT_OUT, reason=say(reason)) for reason in HOSE_REASONS))


def _write_hoses(sheet: Sheet, text: str, _: Display) -> Sheet:
    words = " ".join(text.split())
    if words in ("", say(HOSES_CHECKED)):
        return replace(sheet, plan=replace(sheet.plan, hose_check=True, hose_check_reason=""))
    reason = words.removeprefix(say(HOSES_LEFT_OUT, reason="").strip()).strip(" :.")
    if not reason:
        raise InvalidInput("check of the hoses", text, f"“{say(HOSES_CHECKED)}”, or why it is left out, is needed")
    return replace(sheet, plan=replace(sheet.plan, hose_check=False, hose_check_reason=reason))


def _read_schedule(sheet: Sheet, _: Display) -> str:
    return sheet.plan.schedule


def _write_schedule(sheet: Sheet, text: str, _: Display) -> Sheet:
    if text == OWN_SCHEDULE:
        return sheet
    return replace(sheet, plan=sheet.plan.on_schedule(text))


def _write_preparation(sheet: Sheet, text: str, _: Display) -> Sheet:
    return with_value(sheet, "plan.preparation", text)


def _read_directions(sheet: Sheet, _: Display) -> str:
    return next((name for name, ways in DIRECTIONS.items() if set(ways) == set(sheet.plan.directions)), "both")


def _write_directions(sheet: Sheet, text: str, _: Display) -> Sheet:
    return replace(sheet, plan=replace(sheet.plan, directions=DIRECTIONS[text]))


def _write_name(sheet: Sheet, text: str, _: Display) -> Sheet:
    name = " ".join(text.split())
    if not name:
        raise InvalidInput("Name of the building", text, "a text is needed", shown="empty")
    building = replace(sheet.plan.building, name=name)
    return replace(sheet, details=replace(sheet.details, name=name), plan=replace(sheet.plan, building=building))


def _number(field_id: str, group: str, label: str, path: str, quantity: Quantity, low: float, high: float,
            *, above_low: bool = False, optional: bool = True, hint: str = "") -> Field:  # fmt: skip
    return Field(field_id, group, label, Kind.NUMBER, path, quantity, low, high, above_low, optional, hint)


def _write_kind(sheet: Sheet, text: str, _: Display) -> Sheet:
    return with_value(sheet, "plan.kind", TestKind(text))


def _write_stage(sheet: Sheet, text: str, _: Display) -> Sheet:
    plan = at_stage(sheet.stages, sheet.plan, " ".join(text.split()))
    return replace(sheet, plan=plan, limit_quantity=limit_quantity_of(plan, sheet.limit_quantity))


def _write_place(sheet: Sheet, text: str, _: Display) -> Sheet:
    # The zones of one place say nothing in another.
    zone = sheet.details.zone if text == sheet.details.place else ""
    return replace(sheet, details=replace(sheet.details, place=text, zone=zone))


def _read_published(sheet: Sheet, _: Display) -> str:
    return " ".join(sheet.plan.published)


def _write_published(sheet: Sheet, text: str, _: Display) -> Sheet:
    return with_value(sheet, "plan.published", tuple(text.split()))


def _read_storeys(sheet: Sheet, _: Display) -> str:
    storeys = sheet.plan.surroundings.storeys
    return BY_HEIGHT if storeys is None else str(storeys)


def _write_storeys(sheet: Sheet, text: str, _: Display) -> Sheet:
    return with_value(sheet, "plan.surroundings.storeys", None if text == BY_HEIGHT else int(text))


def _write_shelter(sheet: Sheet, text: str, _: Display) -> Sheet:
    return with_value(sheet, "plan.surroundings.shelter", int(text))


BY_HEIGHT = "by height"
SHELTERS = (
    mark("Open, no obstructions"), mark("Isolated house"), mark("Buildings across the street"),
    mark("Urban, larger lots"), mark("Adjacent buildings"),
)  # fmt: skip
BUILDING, AIR, TEST, PEOPLE = mark("Building"), mark("Air by hand"), mark("Test"), mark("Who and where")
PUBLISHED = mark("Limits of codes and programmes")
SEASON = mark("House and season, for what the result means")
KIT = mark("How sure the instruments and measures are (standard uncertainty)")
REPORT = mark("Report")
"""What is chosen in the Report place."""
GROUPS = (BUILDING, TEST, AIR, PEOPLE, SEASON, KIT)

FIELDS: tuple[Field, ...] = (
    Field("name", BUILDING, mark("Name of the building"), path="details.name", optional=False, write=_write_name),
    _number("volume", BUILDING, mark("Internal volume"), "plan.building.volume_m3", Quantity.VOLUME, 0, 1e7,
            above_low=True),
    _number("envelope", BUILDING, mark("Envelope area"), "plan.building.envelope_area_m2", Quantity.AREA, 0, 1e6,
            above_low=True),
    _number("floor", BUILDING, mark("Floor area"), "plan.building.floor_area_m2", Quantity.AREA, 0, 1e6,
            above_low=True),
    _number("height", BUILDING, mark("Height"), "plan.building.height_m", Quantity.LENGTH, 0, 500, above_low=True),
    _number("altitude", BUILDING, mark("Altitude above the sea"), "plan.building.altitude_m", Quantity.LENGTH, -500,
            6000, optional=False),
    Field("kind", TEST, mark("Kind of test"), Kind.CHOICE, "plan.kind", write=_write_kind,
          choices=tuple((kind.value, kind.words) for kind in TestKind)),
    Field("stage", TEST, mark("Stage"), Kind.PROPOSED, "plan.stage", write=_write_stage,
          hint=mark("How far the building is, in a few words")),
    Field("method", TEST, mark("Method"), Kind.CHOICE, "plan.method", write=_write_method,
          choices=tuple((method, method_title(method)) for method in method_ids())),
    Field("directions", TEST, mark("Directions"), Kind.CHOICE, read=_read_directions, write=_write_directions,
          choices=(("depressurize", mark("Depressurize")), ("pressurize", mark("Pressurize")),
                   ("both", mark("Both, in this order")))),
    Field("preparation", TEST, mark("State of the building"), Kind.CHOICE, "plan.preparation", write=_write_preparation,
          choices=(("", mark("Not said")), *PREPARATIONS)),
    Field("limit_quantity", TEST, mark("Limit on"), Kind.CHOICE, "limit_quantity", write=_write_limit_quantity,
          choices=(
              ("n50_per_h", mark("Air changes at 50 Pa")),
              ("qe50_m3_h_m2", mark("Flow at 50 Pa per envelope area")),
              ("qe75_m3_h_m2", mark("Flow at 75 Pa per envelope area")),
              ("qf50_m3_h_m2", mark("Flow at 50 Pa per floor area")),
              ("q50_m3_h", mark("Flow at 50 Pa")),
          )),
    Field("limit", TEST, mark("Limit"), Kind.NUMBER, read=_read_limit, write=_write_limit,
          hint=mark("empty: no limit")),
    Field("targets", TEST, mark("Targets"), Kind.NUMBER, read=_read_targets, write=_write_targets, optional=False),
    Field("hose_check", TEST, mark("Check of the hoses"), Kind.PROPOSED, read=_read_hoses, write=_write_hoses,
          choices=tuple((words, words) for words in hose_words())),
    Field("schedule", TEST, mark("Schedule"), Kind.CHOICE, read=_read_schedule, write=_write_schedule,
          choices=(*((name, name.capitalize()) for name in SCHEDULES), (OWN_SCHEDULE, mark("Own durations")))),
    _number("zero_s", TEST, mark("Zero-flow record"), "plan.zero_s", Quantity.DURATION, 10, 600, optional=False),
    _number("average_s", TEST, mark("Average per point"), "plan.average_s", Quantity.DURATION, 5, 300, optional=False),
    _number("indoor", AIR, mark("Indoor temperature"), "plan.air.indoor_c", Quantity.TEMPERATURE, -60, 60,
            optional=False),
    _number("outdoor", AIR, mark("Outdoor temperature"), "plan.air.outdoor_c", Quantity.TEMPERATURE, -60, 60,
            optional=False),
    _number("indoor_rh", AIR, mark("Indoor humidity"), "plan.air.indoor_rh", Quantity.RELATIVE_HUMIDITY, 0, 1),
    _number("outdoor_rh", AIR, mark("Outdoor humidity"), "plan.air.outdoor_rh", Quantity.RELATIVE_HUMIDITY, 0, 1),
    _number("barometer", AIR, mark("Barometric pressure at the site"), "plan.air.barometric_pa",
            Quantity.BAROMETRIC_PRESSURE, 40_000, 115_000, hint=mark("empty: by the altitude")),
    _number("wind", AIR, mark("Wind near the ground"), "plan.air.wind_m_s", Quantity.SPEED, 0, 40),
    Field("site", PEOPLE, mark("Site"), path="details.site"),
    Field("client", PEOPLE, mark("Client"), path="details.client"),
    Field("tester", PEOPLE, mark("Tester"), path="details.tester"),
    Field("number", PEOPLE, mark("Job number"), path="details.number"),
    Field("note", PEOPLE, mark("Note"), Kind.LONG, "details.note"),
    Field("place", PUBLISHED, mark("Place of the codes"), path="details.place", write=_write_place),
    Field("zone", PUBLISHED, mark("Climate zone"), path="details.zone"),
    Field("published", PUBLISHED, mark("Limits of codes and programmes"), read=_read_published, write=_write_published),
    Field("language", REPORT, mark("Language of the report"), path="details.language"),
    _number("kit_gauge", KIT, mark("Pressure gauge"), "plan.kit.gauge", Quantity.SHARE, 0, 0.2, optional=False),
    _number("kit_element", KIT, mark("Flow element"), "plan.kit.flow_element", Quantity.SHARE, 0, 0.3, optional=False),
    _number("kit_temperature", KIT, mark("Temperatures"), "plan.kit.temperature_k", Quantity.TEMPERATURE_DIFFERENCE,
            0, 10, optional=False),
    _number("kit_volume", KIT, mark("Volume"), "plan.kit.volume", Quantity.SHARE, 0, 0.5, optional=False),
    _number("kit_envelope", KIT, mark("Envelope area"), "plan.kit.envelope_area", Quantity.SHARE, 0, 0.5,
            optional=False),
    _number("kit_floor", KIT, mark("Floor area"), "plan.kit.floor_area", Quantity.SHARE, 0, 0.5, optional=False),
    Field("storeys", SEASON, mark("Storeys"), Kind.CHOICE, read=_read_storeys, write=_write_storeys,
          choices=((BY_HEIGHT, mark("By the height")), ("1", "1"), ("2", "2"), ("3", "3"))),
    Field("shelter", SEASON, mark("Shelter from the wind"), Kind.CHOICE, "plan.surroundings.shelter",
          write=_write_shelter,
          choices=tuple((str(at), words) for at, words in enumerate(SHELTERS, 1))),
    _number("season_difference", SEASON, mark("Indoor minus outdoor, mean"),
            "plan.surroundings.temperature_difference_k",
            Quantity.TEMPERATURE_DIFFERENCE, 0, 80, optional=False),
    _number("season_wind", SEASON, mark("Wind at the station, mean"), "plan.surroundings.wind_m_s", Quantity.SPEED,
            0, 40, optional=False),
    _number("assumed", SEASON, mark("Air change that a design assumed"), "plan.surroundings.assumed_per_h",
            Quantity.AIR_CHANGE, 0, 50, above_low=True),
    _number("design_difference", SEASON, mark("Indoor minus outdoor of the design"),
            "plan.surroundings.design_difference_k",
            Quantity.TEMPERATURE_DIFFERENCE, 0, 80, optional=False),
    _number("weather_factor", SEASON, mark("Weather factor of ASHRAE 62.2"), "plan.surroundings.weather_factor",
            Quantity.EXPONENT, 0.05, 3, hint=mark("empty: no credit")),
    _number("exhaust", SEASON, mark("Exhaust fans together"), "plan.surroundings.exhaust_m3_h", Quantity.FLOW, 0, 1e5,
            above_low=True, hint=mark("empty: no estimate")),
    Field("reason", BUILDING, mark("Why the building data changed"), path="reason"),
)  # fmt: skip


def field_of(field_id: str) -> Field:
    """Return a field by its id."""
    return next(field for field in FIELDS if field.id == field_id)
