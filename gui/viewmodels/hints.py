"""What looks odd on a job sheet, and what the volume is worth. Nothing here stops anybody.

The bands are common practice, no source; that no body of a volume has less surface than a ball is geometry.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from acquisition.told.headline import front_of
from analysis.air import pressure_at_altitude
from analysis.numbertext import format_number
from analysis.records import Air, Building, TestResult
from analysis.units import Display, Quantity, format_with_unit
from gui.viewmodels.sheet import Sheet
from gui.words import say

ROOM_HEIGHT_M = (2.1, 6.0)
MOST_SURFACE = 16.0
"""Envelope area over the two-thirds power of the volume; a cube has 6, a ball 4.8."""
INDOOR_C = (8.0, 35.0)
BAROMETER_PA = 4000.0
WINDY_M_S = 6.0
VOLUME_SHARE = 0.05


@dataclass(frozen=True, slots=True)
class Hint:
    """Something to look at again, beside its field."""

    field: str
    sentence: str


def hints(sheet: Sheet, display: Display) -> tuple[Hint, ...]:
    """Return what looks odd."""
    return (*_building(sheet.plan.building, display), *_air(sheet.plan.air, sheet.plan.building, display))


def volume_worth(sheet: Sheet, result: TestResult | None, display: Display) -> str:
    """Say what an error of the volume does to the result."""
    if sheet.plan.building.volume_m3 is None:
        return say("Without a volume the result is a flow and no air change rate.")
    n50 = result.mean.n50_per_h if result is not None else None
    if n50 is None or front_of(sheet.plan.method, sheet.plan.building, None) != "n50_per_h":
        return say("5 % of volume moves the air change rate by 5 %.")
    less, more = n50.value / (1 + VOLUME_SHARE), n50.value / (1 - VOLUME_SHARE)
    low, middle, high = (format_number(value, 2, display.decimal_mark) for value in (less, n50.value, more))
    step = format_number((more - less) / 2, 2, display.decimal_mark)
    return say(
        "5 % of volume moves the result by {step}: {middle} would be {low} or {high}.",
        step=step,
        middle=middle,
        low=low,
        high=high,
    )


def _building(building: Building, display: Display) -> list[Hint]:
    found: list[Hint] = []
    volume, floor, envelope = building.volume_m3, building.floor_area_m2, building.envelope_area_m2
    if volume is not None and floor is not None:
        height = volume / floor
        if not ROOM_HEIGHT_M[0] <= height <= ROOM_HEIGHT_M[1]:
            shown = format_with_unit(height, Quantity.LENGTH, display)
            found.append(
                Hint(
                    "floor",
                    say("Volume over floor area gives rooms {shown} high. Is one of the two mistyped?", shown=shown),
                )
            )
    if volume is not None and envelope is not None:
        ball = math.cbrt(36 * math.pi) * volume ** (2 / 3)
        shown = format_with_unit(ball, Quantity.AREA, display, 0)
        if envelope < ball:
            found.append(Hint("envelope", say("No body of this volume has less than {shown} of surface.", shown=shown)))
        elif envelope > MOST_SURFACE * volume ** (2 / 3):
            found.append(Hint("envelope", say("Very much surface for this volume. Is one of the two mistyped?")))
    if building.height_m is not None and volume is not None and floor is not None:
        storey = volume / floor
        if building.height_m < 0.8 * storey:
            shown = format_with_unit(storey, Quantity.LENGTH, display)
            found.append(
                Hint("height", say("Less than the rooms are high ({shown} by volume and floor area).", shown=shown))
            )
    return found


def _air(air: Air, building: Building, display: Display) -> list[Hint]:
    found: list[Hint] = []
    if not INDOOR_C[0] <= air.indoor_c <= INDOOR_C[1]:
        found.append(
            Hint("indoor", say("Unusual for the inside of a building. A number with °F or °C is read as such."))
        )
    elif air.indoor_c < air.outdoor_c - 8:
        found.append(Hint("outdoor", say("Much warmer outside than inside. Are the two swapped?")))
    if air.barometric_pa is not None:
        usual = pressure_at_altitude(building.altitude_m)
        if abs(air.barometric_pa - usual) > BAROMETER_PA:
            shown = format_with_unit(usual, Quantity.BAROMETRIC_PRESSURE, display)
            found.append(
                Hint(
                    "barometer",
                    say("About {shown} is usual at this altitude; not the value brought to sea level?", shown=shown),
                )
            )
    if air.wind_m_s is not None and air.wind_m_s > WINDY_M_S:
        found.append(Hint("wind", say("So much wind makes the interval wide. A calmer hour may be worth waiting for.")))
    return found
