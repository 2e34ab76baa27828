"""The register: what is kept reads back, what is wrong is named, due dates and curves say what they should."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.register import (
    Calibration,
    DueState,
    Equipment,
    RangeEntry,
    Register,
    due_status,
    load_register,
    ranges_of,
    register_path,
    save_register,
)
from acquisition.register.curves import Polynomial, PowerLaw, Table, as_flow_range
from acquisition.register.due import all_due
from acquisition.register.records import CheckPoint, FieldCheck, months_later
from acquisition.register.store import keep_certificate, write_register
from analysis.errors import InvalidInput

# All equipment here is our own invention.
CALIBRATED = Calibration(date(2026, 3, 31), certificate="c.pdf", laboratory="Demo laboratory (invented)")
TABLE = Table(((10.0, 100.0), (40.0, 200.0), (250.0, 500.0)))
FAN = Equipment(
    "fan-1",
    "fan",
    'Fan "one" \\ of our own invention',
    "SF-0003",
    "scpi-fan",
    CALIBRATED,
    (
        RangeEntry("open", PowerLaw(183.0, 0.498), 8.0, 250.0, 1.2041, replace(CALIBRATED, due=date(2026, 6, 1))),
        RangeEntry("small", Polynomial((0.0, 15.0, 0.02), of_root=True), 5.0, 300.0),
        RangeEntry("tiny", Polynomial((3.0, 1.0)), 5.0, 300.0),
        RangeEntry("listed", TABLE, 10.0, 250.0),
    ),
    "Line one\nline two\x7f",
)
GAUGE = Equipment("gauge-1", "gauge", "Gauge", "SG-0012", "scpi-gauge", CALIBRATED)
CHECK = FieldCheck(date(2026, 5, 4), "gauge-1", "gauge-2", (CheckPoint(0.1, 0.0, 0.3), CheckPoint(50.1, 50.0, 0.9)))
FULL = Register((FAN, GAUGE), (CHECK,))


def test_what_is_saved_reads_back(tmp_path: Path) -> None:
    path = tmp_path / "folder" / "register.toml"
    assert load_register(path) == Register()
    save_register(FULL, path)
    assert load_register(path) == FULL
    save_register(FULL.without("fan-1"), path)
    assert load_register(path).equipment == (GAUGE,)
    assert [item.name for item in path.parent.iterdir()] == ["register.toml"]


def test_the_register_is_in_the_users_data_folder() -> None:
    assert register_path().name == "register.toml"
    assert register_path().parent.name == "airseam"


texts = st.text(st.characters(exclude_categories=["Cs"]), max_size=20)


@given(texts, texts, st.dates(min_value=date(1990, 1, 1), max_value=date(2100, 1, 1)), st.integers(1, 120))
def test_any_text_and_day_reads_back(
    tmp_path_factory: pytest.TempPathFactory, a: str, b: str, day: date, n: int
) -> None:
    path = tmp_path_factory.mktemp("register") / "register.toml"
    item = Equipment("x", "other", "t" + a, b, note=b, calibration=Calibration(day, months=n, laboratory=a))
    save_register(Register((item,)), path)
    assert load_register(path).equipment == (item,)


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('kind = "gauge"', 'kind = "boat"', "equipment[1].kind is 'boat': one of these is needed: gauge, fan"),
        ('id = "gauge-1"', 'id = "fan-1"', "equipment.id is 'fan-1': each may occur only once"),
        ("[183.0, 0.498]", "[183.0, 1.5]", "equipment[0].range[0].power_law"),
        ("power_law =", "power_lag =", "equipment[0].range[0].power_lag is 'unknown'"),
        ("max_pa = 250.0", "max_pa = 2.0", "equipment[0].range[0].max_pa is 2.0: a number greater than 8 is needed"),
        ("calibrated = 2026-03-31", 'calibrated = "soon"', "equipment[0].calibration.calibrated is 'soon': a date"),
        ("due = 2026-06-01", "due = 2025-06-01", "a day after the calibration"),
        ("months = 12", "months = 0.5", "equipment[0].calibration.months is 0.5: a whole number"),
        ("[40.0, 200.0]", "[40.0, 90.0]", "equipment[0].range[3].table"),
        ("[3.0, 1.0]", "[3.0, -1.0]", "the flow has to rise from 5 to 300 Pa"),
        ("day = 2026-05-04", "", "check[0].day is missing"),
        ("airseam-register-1", "other", '"airseam-register-1" is needed'),
    ],
)
def test_what_is_wrong_is_named(tmp_path: Path, old: str, new: str, said: str) -> None:
    path = tmp_path / "register.toml"
    text = write_register(FULL)
    assert old in text
    path.write_text(text.replace(old, new, 1), "utf-8")
    with pytest.raises(InvalidInput) as caught:
        load_register(path)
    assert said in str(caught.value)


def test_half_characters_are_refused_and_the_old_register_stays(tmp_path: Path) -> None:
    path = tmp_path / "register.toml"
    save_register(FULL, path)
    with pytest.raises(InvalidInput, match="whole characters"):
        save_register(FULL.with_item(replace(GAUGE, note="\ud800")), path)
    assert load_register(path) == FULL


def test_equipment_is_found_replaced_and_taken_out() -> None:
    assert FULL.by_serial("SG-0012") is GAUGE
    assert FULL.by_serial("") is None
    changed = FULL.with_item(replace(FAN, title="Other"))
    assert [item.title for item in changed.equipment] == ["Other", "Gauge"]
    assert FULL.checks_of("gauge-2") == (CHECK,)
    with pytest.raises(InvalidInput, match="there are: fan-1, gauge-1"):
        FULL.without("boat")


def test_a_certificate_is_kept_beside_the_register_under_a_name_of_its_own(tmp_path: Path) -> None:
    one, other = tmp_path / "a" / "c.pdf", tmp_path / "b" / "c.pdf"
    for path, content in ((one, b"one"), (other, b"other")):
        path.parent.mkdir()
        path.write_bytes(content)
    register = tmp_path / "register.toml"
    assert keep_certificate(one, register) == "c.pdf"
    assert keep_certificate(other, register) == "c-2.pdf"
    assert keep_certificate(one, register) == "c.pdf"
    assert (tmp_path / "certificates" / "c-2.pdf").read_bytes() == b"other"
    with pytest.raises(InvalidInput, match="cannot be copied"):
        keep_certificate(tmp_path / "none.pdf", register)


@pytest.mark.parametrize(
    ("today", "state", "said"),
    [
        (date(2026, 4, 1), DueState.GOOD, "good until 2027-03-31"),
        (date(2027, 1, 29), DueState.GOOD, "good until"),
        (date(2027, 1, 30), DueState.SOON, "due on 2027-03-31, in 60 days"),
        (date(2027, 3, 30), DueState.SOON, "in 1 day."),
        (date(2027, 3, 31), DueState.SOON, "in 0 days"),
        (date(2027, 4, 1), DueState.OVERDUE, "overdue since 2027-03-31, 1 day"),
        (date(2026, 3, 30), DueState.UNKNOWN, "still to come"),
    ],
)
def test_due_dates_are_said_in_words(today: date, state: DueState, said: str) -> None:
    status = due_status("Gauge", CALIBRATED, today)
    assert status.state is state
    assert said in status.sentence
    assert due_status("Gauge", None, today).state is DueState.UNKNOWN


def test_a_range_with_a_calibration_of_its_own_counts_and_the_most_urgent_comes_first() -> None:
    states = all_due(FAN, date(2026, 7, 1))
    assert [status.state for status in states] == [DueState.OVERDUE, DueState.GOOD]
    assert "range open" in states[0].sentence


def test_months_end_on_the_last_day_where_there_is_no_such_day() -> None:
    assert months_later(date(2026, 1, 31), 1) == date(2026, 2, 28)
    assert months_later(date(2024, 1, 31), 1) == date(2024, 2, 29)
    assert months_later(date(2024, 2, 29), 12) == date(2025, 2, 28)
    assert months_later(date(2026, 11, 30), 14) == date(2028, 1, 30)


def test_curves_give_the_flows_that_they_say() -> None:
    assert PowerLaw(100.0, 0.5).flow_m3_h(25.0) == pytest.approx(500.0)
    assert Polynomial((1.0, 2.0, 3.0)).flow_m3_h(2.0) == pytest.approx(17.0)
    assert Polynomial((1.0, 2.0), of_root=True).flow_m3_h(9.0) == pytest.approx(7.0)
    assert [TABLE.flow_m3_h(pa) for pa, _ in TABLE.points] == pytest.approx([flow for _, flow in TABLE.points])
    # Between 10 and 40 Pa the table is q = 100 (dp/10)^0.5, by hand.
    assert TABLE.flow_m3_h(22.5) == pytest.approx(150.0)
    assert TABLE.flow_m3_h(2.5) == pytest.approx(50.0)


@given(st.floats(1.0, 1000.0), st.floats(0.3, 1.0))
def test_the_nearest_power_law_of_a_table_of_a_power_law_is_that_power_law(coefficient: float, exponent: float) -> None:
    law = PowerLaw(coefficient, exponent)
    table = Table(tuple((pa, law.flow_m3_h(pa)) for pa in (5.0, 20.0, 300.0)))
    found, worst = as_flow_range("r", table, 5.0, 300.0, 1.2)
    assert found.coefficient_m3_h_pa_n == pytest.approx(coefficient)
    assert found.exponent == pytest.approx(exponent)
    assert worst < 1e-9


def test_a_fans_ranges_go_into_a_rig() -> None:
    open_, *others = ranges_of(FAN)
    assert (open_.coefficient_m3_h_pa_n, open_.exponent, open_.min_pa, open_.max_pa) == (183.0, 0.498, 8.0, 250.0)
    assert [item.name for item in others] == ["small", "tiny", "listed"]


def test_how_far_a_polynomial_is_from_a_power_law_is_said() -> None:
    found, worst = RangeEntry("small", Polynomial((20.0, 15.0), of_root=True), 10.0, 300.0).flow_range()
    assert 0.001 < worst < 0.05
    for pa in (10.0, 60.0, 300.0):
        law = found.coefficient_m3_h_pa_n * pa**found.exponent
        assert abs(law / (20.0 + 15.0 * math.sqrt(pa)) - 1.0) <= worst + 1e-12
