"""The rig sheet: instruments, channels and ranges until the rig can be connected."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from acquisition.openrig import RigSource
from acquisition.rig import Role
from acquisition.rigfile import read_rig, write_rig
from drivers.instrument import LinkState
from gui.theme import Tone
from gui.viewmodels.moment import RigMoment, RigState
from gui.viewmodels.rig_place import link_row, rig_picture
from gui.viewmodels.rig_sheet import EMPTY, RigSheetModel, profile_choices, same
from tests.gui.fakes import BUILDING, LINKS, RIG, moment, running_moment, snapshot

DAY = date(2026, 5, 4)


def full() -> RigSheetModel:
    """Return a rig that somebody put together field by field."""
    sheet = RigSheetModel()
    sheet.add_instrument("scpi-gauge")
    sheet.add_instrument("scpi-fan")
    sheet.set_instrument(0, "port", "/dev/ttyUSB0")
    sheet.set_instrument(1, "port", "/dev/ttyUSB1")
    sheet.add_range()
    for field, text in (("coefficient_m3_h_pa_n", "183"), ("exponent", "0,498"), ("min_pa", "8"), ("max_pa", "250")):
        sheet.set_range(0, field, text)
    sheet.set_range(0, "reference_density_kg_m3", "1.2041")
    return sheet


def test_a_rig_put_together_can_be_connected_and_read_back() -> None:
    sheet = full()
    assert sheet.problem() == ""
    assert sheet.spec.fan == "fan"
    assert sheet.spec.fitted == "range 1"
    assert read_rig(write_rig(sheet.spec)) == sheet.spec


def test_channels_get_the_roles_that_they_probably_have() -> None:
    sheet = RigSheetModel()
    sheet.add_instrument("scpi-gauge")
    assert dict(sheet.spec.instruments[0].channels) == {
        "p1": Role.ENVELOPE,
        "p2": Role.FLOW_ELEMENT,
        "t1": Role.INDOOR,
        "t2": Role.OUTDOOR,
        "b1": Role.BAROMETER,
    }
    sheet.add_instrument("line-gauge")
    assert sheet.spec.instruments[1].channels == ()
    assert sheet.spec.instruments[1].name == "gauge 2"


def test_a_role_belongs_to_one_channel() -> None:
    sheet = full()
    sheet.set_role(0, "p3", Role.ENVELOPE)
    assert dict(sheet.spec.instruments[0].channels)["p3"] is Role.ENVELOPE
    assert "p1" not in dict(sheet.spec.instruments[0].channels)
    sheet.set_role(0, "p3", None)
    assert "envelope pressure" in sheet.problem()


@pytest.mark.parametrize(
    ("spoil", "words"),
    [
        (lambda sheet: sheet.set_instrument(0, "port", ""), "Port of gauge is missing"),
        (lambda sheet: sheet.remove_range(0), "Flow range is missing"),
        (lambda sheet: sheet.set_range(0, "max_pa", "5"), "more than 8 Pa is needed"),
        (lambda sheet: sheet.set_range(0, "exponent", "1.5"), "greater than 0 and at most 1"),
        (lambda sheet: sheet.set_range(0, "coefficient_m3_h_pa_n", "lots"), "a number is needed"),
        (lambda sheet: sheet.add_range(), "Coefficient of “range 2” is missing"),
        (lambda sheet: sheet.remove_instrument(0), "one channel needs"),
    ],
)
def test_what_is_wrong_is_one_sentence(spoil: object, words: str) -> None:
    sheet = full()
    spoil(sheet)  # type: ignore[operator]
    assert words in sheet.problem()
    assert sheet.problem().endswith(".")


def test_a_wrong_number_stays_in_its_field() -> None:
    sheet = full()
    sheet.set_range(0, "exponent", "1.5")
    assert sheet.text("range.0.exponent", "0.498") == "1.5"
    assert sheet.error("range.0.exponent").startswith("Exponent of “range 1” is 1.5")
    assert sheet.spec.ranges[0].exponent == 0.498
    sheet.set_range(0, "exponent", "0.5")
    assert sheet.problem() == ""


def test_edits_of_the_rig_can_be_undone() -> None:
    sheet = full()
    whole = sheet.spec
    for _ in range(40):
        sheet.undo()
    assert same(sheet.spec, EMPTY)
    for _ in range(40):
        sheet.redo()
    assert same(sheet.spec, whole)


def test_another_profile_brings_its_own_channels() -> None:
    sheet = full()
    sheet.set_instrument(0, "profile", "line-gauge")
    assert [channel for channel, _ in sheet.spec.instruments[0].channels] == ["p1", "p2", "t1", "t2"]
    assert sheet.problem() == ""


def test_renaming_the_range_in_use_keeps_it_in_use() -> None:
    sheet = full()
    sheet.set_range(0, "name", "wide")
    assert sheet.spec.fitted == "wide"
    assert sheet.problem() == ""


def test_the_shipped_profiles_are_offered() -> None:
    assert {choice.id for choice in profile_choices()} >= {"line-gauge", "scpi-gauge", "scpi-fan"}


def test_channels_show_what_they_read_now_in_the_units_of_the_user() -> None:
    values = {Role.ENVELOPE: (-50.12, 0.1), Role.FLOW_ELEMENT: (103.4, 0.1), Role.INDOOR: (21.04, 9.0)}
    picture = rig_picture(moment(), (), ("", 1.0), RIG, "", values.get, DAY)
    rows = {row.channel: (row.role, row.value, row.unit, row.stale) for row in picture.channels}
    assert rows == {
        "gauge.p1": ("Envelope pressure", "−50.12", "Pa", False),
        "gauge.p2": ("Flow element pressure", "103.40", "Pa", False),
        "gauge.t1": ("Indoor temperature", "21.0", "°C", True),
    }


def test_links_are_told_in_words() -> None:
    row = link_row(LINKS[0], RIG)
    assert (row.tone, row.state) == (Tone.GOOD, "linked")
    assert row.words == "Port /dev/ttyUSB0 · SG-0012 · 10 readings a second · answers in 5 ms"
    lost = link_row(replace(LINKS[0], state=LinkState.LOST, sentence="The port is gone."), RIG)
    assert (lost.tone, lost.state, lost.words) == (Tone.BAD, "lost, trying again", "The port is gone.")
    wrong = link_row(replace(LINKS[0], state=LinkState.WRONG_INSTRUMENT, sentence="SG-0099 answers."), RIG)
    assert wrong.acceptable


def test_a_rig_is_not_changed_during_a_test() -> None:
    assert not rig_picture(running_moment(), (), ("", 1.0), RIG, "", lambda _: None, DAY).enabled
    assert rig_picture(moment(), (), ("", 1.0), RIG, "", lambda _: None, DAY).own_button == "Disconnect"


def test_another_house_or_speed_is_connected_anew() -> None:
    house = RigSource("sim:mill-row", "Mill Row 8", "Invented data.", lambda _: None, BUILDING)  # type: ignore[arg-type,return-value]
    simulated = replace(RIG, simulated=True, time_factor=5.0)
    now = moment(rig=RigMoment(RigState.CONNECTED, simulated, "sim:mill-row", "sim:mill-row"), snapshot=snapshot())

    def word(source: str, factor: float) -> str:
        return rig_picture(now, (house,), (source, factor), EMPTY, "", lambda _: None, DAY).simulated_button

    assert word("sim:mill-row", 5.0) == "Disconnect"
    assert word("sim:mill-row", 1.0) == "Connect"
    assert word("sim:gable-barn", 5.0) == "Connect"
    cards = rig_picture(now, (house,), ("sim:mill-row", 5.0), EMPTY, "", lambda _: None, DAY).sources
    assert (cards[0].connected, cards[0].description) == (True, "300 m³. Invented data.")
