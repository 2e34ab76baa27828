"""A test as JSON: `airseam-test-1`, read with every mistake named by its path, and written without loss.

Unknown fields are an error, missing optional ones are null. Times are written in UTC.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

from analysis.errors import InvalidInput
from analysis.fields import Fields, parse_document
from analysis.records import Air, Building, Direction, Point, Run, Test, ZeroFlow
from analysis.validation import validate
from analysis.zeroflow import zero_flow

FORMAT = "airseam-test-1"


def read_test(content: str | bytes) -> Test:
    """Return the test that a JSON text holds; raises `InvalidInput`."""
    fields = parse_document(content, "the test")
    fields.choice("format", (FORMAT,))
    test = Test(
        building=_building(fields.record("building")),
        runs=tuple(_run(item) for item in fields.records("runs")),
        stage=fields.text("stage", ""),
        preparation=fields.text("preparation", ""),
    )
    fields.finish()
    validate(test)
    return test


def write_test(test: Test) -> dict[str, object]:
    """Return the document of a test, ready for `json.dumps`."""
    building = test.building
    return {
        "format": FORMAT,
        "building": {
            "name": building.name,
            "volume_m3": building.volume_m3,
            "envelope_area_m2": building.envelope_area_m2,
            "floor_area_m2": building.floor_area_m2,
            "height_m": building.height_m,
            "altitude_m": building.altitude_m,
        },
        "stage": test.stage,
        **({"preparation": test.preparation} if test.preparation else {}),
        "runs": [_run_document(run) for run in test.runs],
    }


def _building(fields: Fields) -> Building:
    building = Building(
        name=fields.text("name", ""),
        volume_m3=fields.number_or_none("volume_m3"),
        envelope_area_m2=fields.number_or_none("envelope_area_m2"),
        floor_area_m2=fields.number_or_none("floor_area_m2"),
        height_m=fields.number_or_none("height_m"),
        altitude_m=fields.number_or_none("altitude_m") or 0.0,
    )
    fields.finish()
    return building


def _run(fields: Fields) -> Run:
    run = _plain_run(fields)
    corrected = fields.record_or_none("gust_corrected")
    if corrected is not None:
        run = replace(run, gust_corrected=_plain_run(corrected))
        corrected.finish()
    fields.finish()
    return run


def _plain_run(fields: Fields) -> Run:
    return Run(
        direction=Direction(fields.choice("direction", tuple(Direction))),
        started=fields.time_or_none("started"),
        air=_air(fields.record("air")),
        zero_before=_zero(fields.record_or_none("zero_before")),
        points=tuple(_point(item) for item in fields.records("points")),
        zero_after=_zero(fields.record_or_none("zero_after")),
        zeros_between=tuple(_a_zero(item) for item in fields.records("zeros_between"))
        if fields.has("zeros_between")
        else (),
        zero_at_points_pa=fields.numbers("zero_at_points_pa") if fields.has("zero_at_points_pa") else (),
    )


def _air(fields: Fields) -> Air:
    air = Air(
        indoor_c=fields.number("indoor_c"),
        outdoor_c=fields.number("outdoor_c"),
        indoor_rh=fields.number_or_none("indoor_rh"),
        outdoor_rh=fields.number_or_none("outdoor_rh"),
        barometric_pa=fields.number_or_none("barometric_pa"),
        wind_m_s=fields.number_or_none("wind_m_s"),
    )
    fields.finish()
    return air


def _zero(fields: Fields | None) -> ZeroFlow | None:
    return None if fields is None else _a_zero(fields)


def _a_zero(fields: Fields) -> ZeroFlow:
    """Return a zero-flow record from its readings or, without them, from their means."""
    if fields.has("readings_pa"):
        readings = fields.numbers("readings_pa")
        zero = zero_flow(readings, fields.number_or_none("seconds"), fields.path("readings_pa"))
        fields.finish()
        return zero
    zero = ZeroFlow(
        mean_pa=fields.number("mean_pa"),
        positive_mean_pa=fields.number_or_none("positive_mean_pa"),
        negative_mean_pa=fields.number_or_none("negative_mean_pa"),
        count=fields.count("count"),
        seconds=fields.number_or_none("seconds"),
    )
    fields.finish()
    return zero


def _point(fields: Fields) -> Point:
    point = Point(
        target_pa=fields.number_or_none("target_pa"),
        envelope_pa=fields.number("envelope_pa"),
        flow_m3_h=fields.number("flow_m3_h"),
        seconds=fields.number_or_none("seconds"),
        count=fields.count_or_none("count"),
        envelope_sd_pa=fields.number_or_none("envelope_sd_pa"),
        flow_sd_m3_h=fields.number_or_none("flow_sd_m3_h"),
    )
    fields.finish()
    return point


def _run_document(run: Run) -> dict[str, object]:
    air = run.air
    return {
        "direction": run.direction.value,
        "started": None if run.started is None else _utc(run.started),
        "air": {
            "indoor_c": air.indoor_c,
            "outdoor_c": air.outdoor_c,
            "indoor_rh": air.indoor_rh,
            "outdoor_rh": air.outdoor_rh,
            "barometric_pa": air.barometric_pa,
            "wind_m_s": air.wind_m_s,
        },
        "zero_before": _zero_document(run.zero_before),
        "points": [_point_document(point) for point in run.points],
        "zero_after": _zero_document(run.zero_after),
        **({} if not run.zeros_between else {"zeros_between": [_zero_document(zero) for zero in run.zeros_between]}),
        **({} if not run.zero_at_points_pa else {"zero_at_points_pa": list(run.zero_at_points_pa)}),
        **({} if run.gust_corrected is None else {"gust_corrected": _run_document(run.gust_corrected)}),
    }


def _zero_document(zero: ZeroFlow | None) -> dict[str, object] | None:
    if zero is None:
        return None
    if zero.readings_pa:
        return {"readings_pa": list(zero.readings_pa), "seconds": zero.seconds}
    return {
        "mean_pa": zero.mean_pa,
        "positive_mean_pa": zero.positive_mean_pa,
        "negative_mean_pa": zero.negative_mean_pa,
        "count": zero.count,
        "seconds": zero.seconds,
    }


def _point_document(point: Point) -> dict[str, object]:
    return {
        "target_pa": point.target_pa,
        "envelope_pa": point.envelope_pa,
        "flow_m3_h": point.flow_m3_h,
        "seconds": point.seconds,
        "count": point.count,
        "envelope_sd_pa": point.envelope_sd_pa,
        "flow_sd_m3_h": point.flow_sd_m3_h,
    }


def _utc(time: datetime) -> str:
    """Return a time in UTC with a Z; raises `InvalidInput` for one without a zone."""
    if time.tzinfo is None:
        raise InvalidInput("started", time.isoformat(), "a time with its zone is needed")
    return time.astimezone(UTC).isoformat().replace("+00:00", "Z")
