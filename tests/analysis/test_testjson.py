"""A test as JSON: read, written, and every mistake named by its path."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import InvalidInput
from analysis.fields import LARGEST_BYTES
from analysis.methods import analyse
from analysis.records import Direction
from analysis.testjson import read_test, write_test
from tests.analysis.samples import ZERO, run_of, whole_test

EXAMPLE = """
{"format": "airseam-test-1",
 "building": {"name": "Mill Row 8", "volume_m3": 300.0, "envelope_area_m2": 360.0, "floor_area_m2": 120.0,
              "height_m": 5.0, "altitude_m": 0.0},
 "stage": "membrane up",
 "runs": [{
   "direction": "depressurize", "started": "2026-05-04T09:12:00Z",
   "air": {"indoor_c": 21.0, "outdoor_c": 3.0, "indoor_rh": null, "outdoor_rh": null, "barometric_pa": 101325.0,
           "wind_m_s": 1.5},
   "zero_before": {"readings_pa": [-1.1, -0.9, -1.3]},
   "points": [{"target_pa": -60, "envelope_pa": -59.6, "flow_m3_h": 1481.0, "seconds": 20.0, "count": 200,
               "envelope_sd_pa": 0.8, "flow_sd_m3_h": 12.0},
              {"target_pa": -30, "envelope_pa": -30.2, "flow_m3_h": 950.0}],
   "zero_after": {"mean_pa": -1.0, "positive_mean_pa": null, "negative_mean_pa": -1.0, "count": 3, "seconds": 30}}]}
"""


def put(path: str, value: object) -> str:
    """Return the example with a value put at a path such as `runs.0.air.indoor_c`."""
    document = json.loads(EXAMPLE)
    *way, last = path.split(".")
    place = document
    for step in way:
        place = place[int(step)] if step.isdigit() else place[step]
    place[int(last) if last.isdigit() else last] = value
    return json.dumps(document)


def refusal(content: str | bytes) -> str:
    """Return the one sentence with which the reader refuses."""
    with pytest.raises(InvalidInput) as caught:
        read_test(content)
    sentence = str(caught.value)
    assert "\n" not in sentence
    assert len(sentence) < 300
    return sentence


def test_the_documented_example_is_read() -> None:
    test = read_test(EXAMPLE)
    run = test.runs[0]
    assert (test.building.name, test.building.volume_m3, test.stage) == ("Mill Row 8", 300.0, "membrane up")
    assert run.direction is Direction.DEPRESSURIZE
    assert run.started == datetime(2026, 5, 4, 9, 12, tzinfo=UTC)
    assert run.zero_before is not None
    assert (run.zero_before.count, run.zero_before.readings_pa) == (3, (-1.1, -0.9, -1.3))
    assert run.zero_after is not None
    assert (run.zero_after.mean_pa, run.zero_after.seconds) == (-1.0, 30.0)
    assert (run.points[0].count, run.points[1].count, run.points[1].target_pa) == (200, None, -30.0)
    assert run.air.indoor_rh is None


def test_bytes_with_a_mark_at_the_start_are_read_too() -> None:
    assert read_test(b"\xef\xbb\xbf" + EXAMPLE.encode()) == read_test(EXAMPLE)


def test_optional_fields_may_be_missing_or_null() -> None:
    shortest = {
        "format": "airseam-test-1",
        "building": {},
        "runs": [
            {
                "direction": "pressurize",
                "air": {"indoor_c": 20, "outdoor_c": 5},
                "points": [{"envelope_pa": 50, "flow_m3_h": 900}, {"envelope_pa": 20, "flow_m3_h": 500}],
            }
        ],
    }
    test = read_test(json.dumps(shortest))
    assert (test.building.volume_m3, test.stage, test.runs[0].zero_before) == (None, "", None)


def test_writing_and_reading_loses_nothing() -> None:
    test = read_test(EXAMPLE)
    assert read_test(json.dumps(write_test(test))) == test
    timed = whole_test(run_of(zero_before=replace(test.runs[0].zero_before or ZERO, seconds=60.0)))
    assert read_test(json.dumps(write_test(timed))) == timed
    assert analyse(read_test(json.dumps(write_test(timed)))) == analyse(timed)


@given(st.lists(st.floats(1.0, 90.0), min_size=2, max_size=5), st.floats(1e-3, 1e6), st.floats(-30, 30))
def test_no_digit_is_lost(pressures: list[float], flow: float, outdoor_c: float) -> None:
    run = run_of(pressures, [flow] * len(pressures))
    test = whole_test(replace(run, air=replace(run.air, outdoor_c=outdoor_c)))
    assert read_test(json.dumps(write_test(test))) == test


def test_times_are_written_in_utc() -> None:
    started = datetime.fromisoformat("2026-05-04T11:12:00+02:00")
    document: dict[str, Any] = write_test(whole_test(replace(run_of(), started=started)))
    assert document["runs"][0]["started"] == "2026-05-04T09:12:00Z"


MALFORMED = [
    ("", "the test is empty: a JSON object is needed"),
    ("  \n", "the test is empty: a JSON object is needed"),
    (b"\x89PNG\r\n\x1a\n\x00\xff\xfe", "the test is not text: JSON in UTF-8 is needed"),
    ("format = 1", "the test is not JSON: Expecting value at line 1, column 1"),
    ('{"format": ', "the test is not JSON: Expecting value at line 1, column 12"),
    ("[1, 2]", "the test is a list: a JSON object is needed"),
    ("[" * 100_000, "the test is nested too deeply: at most a few levels are needed"),
    ('{"format": ' + "1" * 5000 + "}", "the test is not usable: a number in it has too many digits"),
    ('{"stage": "a", "stage": "b"}', "stage is there twice: a field may appear only once in an object"),
    ("{}", "format is missing: one of airseam-test-1 is needed"),
    (put("format", "airseam-test-9"), "format is 'airseam-test-9': one of airseam-test-1 is needed"),
    (put("building", None), "building is missing: a JSON object is needed"),
    (put("building", [1]), "building is [1]: a JSON object is needed"),
    (
        put("building.volume_m3", -300),
        "building.volume_m3 is -300.0: a number greater than 0 (and below 1e9) is needed",
    ),
    (put("building.volume_m3", "300"), "building.volume_m3 is '300': a number is needed"),
    (put("building.volume_m3", True), "building.volume_m3 is True: a number is needed"),
    (put("building.volume_m3", 10**400), "building.volume_m3 is inf: a finite number is needed"),
    (put("building.name", 8), "building.name is 8: a text is needed"),
    (put("runs", {}), "runs is an object: a list of JSON objects is needed"),
    (put("runs", []), "runs is empty: one run, or one in each direction, is needed"),
    (put("runs.0", 5), "runs[0] is 5: a JSON object is needed"),
    (put("runs.0.direction", "in"), "runs[0].direction is 'in': one of depressurize, pressurize is needed"),
    (put("runs.0.direction", None), "runs[0].direction is missing: one of depressurize, pressurize is needed"),
    (put("runs.0.air.indoor_c", None), "runs[0].air.indoor_c is missing: a number is needed"),
    (put("runs.0.air.outdoor_c", float("nan")), "runs[0].air.outdoor_c is nan: a finite number is needed"),
    (put("runs.0.points.0.flow_m3_h", float("inf")), "runs[0].points[0].flow_m3_h is inf: a finite number is needed"),
    (put("runs.0.points.1.envelope_pa", "-30"), "runs[0].points[1].envelope_pa is '-30': a number is needed"),
    (put("runs.0.points.0.count", 1.5), "runs[0].points[0].count is 1.5: a whole number is needed"),
    (put("runs.0.points.0.count", 0), "runs[0].points[0].count is 0: a whole number of at least 1 is needed"),
    (put("runs.0.points", None), "runs[0].points is missing: a list of JSON objects is needed"),
    (
        put("runs.0.zero_before.readings_pa", []),
        "runs[0].zero_before.readings_pa is empty: at least one reading is needed",
    ),
    (put("runs.0.zero_before.readings_pa.1", "x"), "runs[0].zero_before.readings_pa[1] is 'x': a number is needed"),
    (put("runs.0.zero_after.count", None), "runs[0].zero_after.count is missing: a whole number is needed"),
    (put("runs.0.zero_after.mean_pa", None), "runs[0].zero_after.mean_pa is missing: a number is needed"),
]


@pytest.mark.parametrize(("content", "sentence"), MALFORMED)
def test_each_mistake_is_named_in_one_sentence(content: str | bytes, sentence: str) -> None:
    assert refusal(content) == sentence


@pytest.mark.parametrize("started", ["yesterday", 5, "2026-05-04T09:12:00", "2026-13-04T09:12:00Z"])
def test_a_time_has_a_zone(started: object) -> None:
    sentence = refusal(put("runs.0.started", started))
    assert sentence.startswith("runs[0].started is ")
    assert sentence.endswith("a time with its zone is needed, such as 2026-05-04T09:12:00Z")


@pytest.mark.parametrize(
    ("path", "known"),
    [
        ("colour", "format, building, runs, stage"),
        ("building.volume", "name, volume_m3"),
        ("runs.0.point", "direction, started, air"),
        ("runs.0.air.indoor_k", "indoor_c, outdoor_c"),
        ("runs.0.points.1.flow", "target_pa, envelope_pa, flow_m3_h"),
        ("runs.0.zero_before.count", "readings_pa, seconds"),
        ("runs.0.zero_after.median_pa", "mean_pa, positive_mean_pa"),
    ],
)
def test_an_unknown_field_is_named_with_those_that_are_known(path: str, known: str) -> None:
    sentence = refusal(put(path, 1))
    shown = path.replace(".0.", "[0].").replace(".1.", "[1].")
    assert sentence.startswith(f"{shown} is unknown: known fields here are {known}")


def test_one_point_is_read_but_not_analysed() -> None:
    test = read_test(put("runs.0.points", [{"envelope_pa": -50, "flow_m3_h": 900}]))
    with pytest.raises(InvalidInput, match=r"^runs\[0\]\.points is 1 point: at least 2 are needed$"):
        analyse(test)


def test_a_point_at_zero_pressure_is_read_but_not_analysed() -> None:
    with pytest.raises(InvalidInput, match=r"^runs\[0\]\.points\[1\]\.envelope_pa is 0\.0: "):
        analyse(read_test(put("runs.0.points.1.envelope_pa", 0)))


def test_a_huge_file_is_refused_before_it_is_parsed() -> None:
    assert refusal(b" " * (LARGEST_BYTES + 1)) == "the test is 32 MiB long: at most 32 MiB can be read"


@given(st.binary(max_size=200) | st.text(max_size=200))
def test_no_content_gives_anything_but_one_sentence(content: str | bytes) -> None:
    refusal(content)


def test_a_gust_corrected_run_goes_through_json_and_has_to_fit_its_run() -> None:
    corrected = replace(run_of(), points=tuple(replace(p, envelope_pa=p.envelope_pa - 0.1) for p in run_of().points))
    test = whole_test(replace(run_of(), gust_corrected=corrected))
    assert read_test(json.dumps(write_test(test))) == test
    fewer = whole_test(replace(run_of(), gust_corrected=replace(corrected, points=corrected.points[1:])))
    with pytest.raises(InvalidInput, match=r"runs\[0\]\.gust_corrected\.points"):
        read_test(json.dumps(write_test(fewer)))


def test_the_state_of_the_building_goes_through_json() -> None:
    test = replace(whole_test(), preparation="2")
    assert read_test(json.dumps(write_test(test))) == test
