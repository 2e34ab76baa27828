"""A result as JSON."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Any

from analysis.methods import analyse
from analysis.records import Building, Direction, Limit, Test
from analysis.resultjson import result_document
from tests.analysis.samples import run_of, whole_test, without_point


def document_of(test: Test | None = None, limits: Sequence[Limit] = ()) -> dict[str, Any]:
    """Return the document of a result, through JSON and back."""
    result = analyse(test or whole_test(), limits=limits)
    document: dict[str, Any] = json.loads(json.dumps(result_document(result), allow_nan=False))
    return document


def test_the_document_has_the_documented_fields() -> None:
    document = document_of(limits=[Limit("target", "n50_per_h", 1.5)])
    assert list(document) == ["format", "method", "fit", "runs", "mean", "verdicts"]
    assert (document["format"], document["method"], document["fit"]) == ("airseam-result-1", "iso9972", "ols")
    assert list(document["runs"][0]) == [
        "direction",
        "zero_pa",
        "n",
        "c_env_m3_h_pa_n",
        "c_l_m3_h_pa_n",
        "r2",
        "q50_m3_h",
        "n50_per_h",
        "qe50_m3_h_m2",
        "qf50_m3_h_m2",
        "ela4_cm2",
        "eqla10_cm2",
        "induced_pa",
        "envelope_flow_m3_h",
        "valid",
        "checks",
    ]
    assert list(document["mean"]) == ["q50_m3_h", "n50_per_h", "qe50_m3_h_m2", "qf50_m3_h_m2"]
    assert list(document["verdicts"][0]) == ["limit", "quantity", "value", "probability", "verdict"]
    assert list(document["runs"][0]["checks"][0]) == [
        "id",
        "clause",
        "text",
        "value",
        "limit",
        "unit",
        "ok",
        "source",
    ]


def test_an_estimate_has_its_interval_and_says_when_it_is_extrapolated() -> None:
    run = document_of()["runs"][0]
    assert list(run["q50_m3_h"]) == ["value", "low", "high"]
    assert run["ela4_cm2"]["extrapolated"] is True


def test_what_the_building_does_not_allow_is_null() -> None:
    document = document_of(test=whole_test(building=Building("unknown")))
    assert document["runs"][0]["n50_per_h"] is None
    assert document["mean"]["qe50_m3_h_m2"] is None


def test_an_interval_without_bounds_is_null() -> None:
    run = document_of(test=whole_test(without_point(run_of(), *range(1, 9))))["runs"][0]
    assert run["n"]["low"] is None
    assert run["q50_m3_h"]["high"] is None
    assert run["q50_m3_h"]["value"] > 0


def test_an_open_check_is_null_and_the_run_not_valid() -> None:
    run = document_of(test=whole_test(run_of(zero_after=None)))["runs"][0]
    assert [check["ok"] for check in run["checks"] if check["id"] == "zero-after"] == [None]
    assert run["valid"] is False


def test_both_directions_and_no_limit() -> None:
    document = document_of(test=whole_test(run_of(), run_of(direction=Direction.PRESSURIZE)))
    assert [run["direction"] for run in document["runs"]] == ["depressurize", "pressurize"]
    assert document["verdicts"] == []
    assert document["runs"][0]["induced_pa"][0] < 0 < document["runs"][1]["induced_pa"][0]


def test_the_same_test_gives_the_same_text() -> None:
    assert json.dumps(document_of()) == json.dumps(document_of())
