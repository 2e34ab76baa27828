"""A recorded job as an exercise: what its result says of the house, and nothing of whose house it is."""

from __future__ import annotations

import json

from acquisition.job import LoadedTest
from acquisition.job.results import analyse_record
from analysis.errors import InvalidInput

HOUSE = "mill-row"
LEAST_N50, MOST_N50 = 0.05, 90.0


def exercise_text(loaded: LoadedTest, title: str = "A recorded house") -> str:
    """Return an exercise file with the tightness and the weather of a recorded test, without any name or address.

    The shape of the house is that of one of the invented ones. Raises `InvalidInput` where the test has no n50.
    """
    result = analyse_record(loaded.record, loaded.test())
    n50 = result.mean.n50_per_h
    if n50 is None:
        raise InvalidInput("test", loaded.record.id, "a test with an n50 is needed: give the volume")
    air = loaded.test().runs[0].air
    weather = {
        "indoor_c": round(min(max(air.indoor_c, -50.0), 60.0), 1),
        "outdoor_c": round(min(max(air.outdoor_c, -50.0), 60.0), 1),
        "wind_m_s": round(min(air.wind_m_s if air.wind_m_s is not None else 1.0, 30.0), 1),
    }
    volume_m3, value = 300.0, min(max(n50.value, LEAST_N50), MOST_N50)
    fitted = _fitting(value * volume_m3)
    lines = [
        "# A house as tight as one that was tested, in its weather. Without names: nothing here says whose it was.",
        'format = "airseam-exercise-1"',
        f"title = {json.dumps(title, ensure_ascii=False)}",
        'note = "Made from a recorded test, without names; the shape of the house is invented."',
        'task = "Test the house by the method, and give the leakage at 50 Pa with its interval."',
        f'house = "{HOUSE}"',
        f"n50_per_h = {value:.4g}",
        f'fitted = "{fitted}"',
        "minutes = 40",
        "",
        "[weather]",
        *(f"{name} = {number}" for name, number in weather.items()),
    ]
    for what, points in (("safety", 2), ("zero", 2), ("result", 4), ("interval", 2)):
        lines += ["", "[[mark]]", f'what = "{what}"', f"points = {points}"]
    return "\n".join(lines) + "\n"


def _fitting(flow50_m3_h: float) -> str:
    """Return the flow range of the demonstration sheet that reaches 60 Pa in such a house (top flows in m3/h)."""
    tops = (("trickle", 126.0), ("slim", 360.0), ("narrow", 1080.0), ("middle", 2880.0))
    return next((name for name, top in tops if top > 1.2 * flow50_m3_h), "wide")
