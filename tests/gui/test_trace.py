"""The trace: gaps are gaps, averaged spans are shaded, targets stand where the gauge should show them."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.snapshot import Flag, Severity
from acquisition.vigil import findings
from acquisition.watchdog import AlarmKind
from gui.viewmodels.plot_csv import trace_csv
from gui.viewmodels.trace import TraceScale, live_trace, with_gaps
from gui.viewmodels.trace_marks import WORDS
from tests.gui.fakes import running, snapshot

WHEN = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)
NOW_NS = 600_000_000_000


def readings(seconds: float, level: float) -> tuple[np.ndarray, np.ndarray]:
    times = (NOW_NS - np.arange(seconds, 0, -0.1) * 1e9).astype(np.int64)
    return times, np.full(len(times), level)


def test_times_are_seconds_before_now() -> None:
    picture = live_trace(running(), *readings(10, -30.0), TraceScale())
    assert picture.x_s[0] == pytest.approx(-10.0)
    assert picture.x_s[-1] == pytest.approx(-0.1)


def test_a_gap_is_one_missing_value() -> None:
    x = np.array([0.0, 0.1, 0.2, 5.0, 5.1, 20.0])
    gapped, values = with_gaps(x, np.ones(6))
    assert np.count_nonzero(np.isnan(values)) == 2
    assert np.all(np.diff(gapped) > 0)


@given(st.lists(st.floats(0.01, 5.0), min_size=0, max_size=60))
def test_no_reading_is_lost_to_gaps(steps: list[float]) -> None:
    x = np.cumsum(np.array(steps))
    _, values = with_gaps(x, x)
    assert values[~np.isnan(values)].tolist() == x.tolist()
    assert np.count_nonzero(np.isnan(values)) == sum(step > 1.0 for step in np.diff(x))


def test_the_open_window_is_shaded_up_to_now() -> None:
    spans = live_trace(running(), *readings(10, -30.0), TraceScale()).spans
    assert spans[-1].start_s == pytest.approx(-14.0)
    assert spans[-1].end_s == 0.0


def test_targets_stand_off_by_the_zero_flow_pressure() -> None:
    picture = live_trace(running(), *readings(10, -30.5), TraceScale())
    levels = picture.target_y_pa[np.isfinite(picture.target_y_pa)]
    assert levels[-1] == pytest.approx(-30.5)
    assert levels[0] == pytest.approx(-60.5)


def test_larger_pressures_stand_on_top_in_both_directions() -> None:
    assert live_trace(running(), *readings(10, -60.0), TraceScale()).inverted
    assert not live_trace(snapshot(now_ns=NOW_NS), *readings(10, 60.0), TraceScale()).inverted


def test_at_rest_the_scale_does_not_blow_up_noise() -> None:
    picture = live_trace(snapshot(now_ns=NOW_NS), *readings(10, -0.4), TraceScale())
    assert picture.y_range == (-5.0, 5.0)


def test_the_scale_holds_everything_and_does_not_jump() -> None:
    scale = TraceScale()
    first = scale.fit(-58.0, 0.0)
    assert first[0] <= -58.0
    assert scale.fit(-52.0, 0.0) == first
    assert scale.fit(-64.0, 0.0)[0] <= -64.0
    assert scale.fit(-2.0, 0.5) == (-5.0, 5.0)


def test_readings_before_any_window_still_make_a_picture() -> None:
    empty = np.zeros(0, np.int64), np.zeros(0)
    picture = live_trace(snapshot(), *empty, TraceScale())
    assert len(picture.x_s) == 0
    assert picture.note == ""


def test_the_readings_can_be_taken_away_without_gaps() -> None:
    text = trace_csv(live_trace(running(), *readings(1, -30.0), TraceScale()))
    assert text.splitlines()[0] == "time s,envelope pressure Pa"
    assert len(text.splitlines()) == 11
    assert "nan" not in text


def test_what_was_noticed_stands_on_the_trace_once_at_its_time() -> None:
    def flag(name: str, before_s: float, severity: Severity = Severity.ATTENTION) -> Flag:
        return Flag(name, severity, "A sentence.", WHEN - timedelta(seconds=before_s))

    flags = (
        flag("hose-noisy", 950.0),
        flag("leakage-jumped", 40.0),
        flag("leakage-jumped", 30.0),
        flag("outlook", 20.0, Severity.NOTE),
        flag("pressure-collapsed", 10.0, Severity.ALARM),
    )
    shown = snapshot(now_ns=NOW_NS, utc=WHEN, flags=flags)
    marks = live_trace(shown, *readings(60, -30.0), TraceScale()).marks
    assert [(mark.at_s, mark.words, mark.alarm) for mark in marks] == [
        (-40.0, "leakage jumped", False), (-10.0, "pressure collapsed", True),
    ]  # fmt: skip


def test_every_finding_and_alarm_has_its_words_on_the_trace() -> None:
    found = {item.id for item in vars(findings).values() if isinstance(item, findings.Finding)}
    alarms = {kind.value.replace(" ", "-") for kind in AlarmKind}
    assert (found | alarms) - set(WORDS) == set()
