"""A whole test whose readings a person types into the window; a simulated house stands behind the typing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from acquisition.rig import Role
from acquisition.snapshot import EngineState
from acquisition.typedgauge import ASKED_FOR
from analysis.units import Display, System
from drivers.openers import Openers
from gui.viewmodels.by_hand import ByHandModel, age_words
from gui.viewmodels.moment import Place
from gui.viewmodels.rig_sheet import RigSheetModel
from gui.views.by_hand_panel import ByHandPanel
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage
from tests.person import Person


@pytest.fixture
def person() -> Person:
    return Person()


@pytest.fixture
def by_hand(stage: Stage, person: Person) -> Stage:
    """Return the window with a gauge that is typed and a fan that nobody drives."""
    connection = stage.program.desk.connection
    connection.opener = Openers(stage.clock).open
    connection.connect_spec(person.rig())
    stage.pass_time(3.0)
    stage.program.screen.go_to(Place.TEST)
    stage.shorten()
    stage.program.intents.edit("volume", "300")
    stage.draw()
    return stage


def panel(stage: Stage) -> ByHandPanel:
    return stage.program.window.test.by_hand


def type_value(stage: Stage, role: Role, text: str) -> None:
    line = panel(stage).entries[role].line
    line.setFocus()
    line.clear()
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)
    stage.pass_time(0.3)


def said(stage: Stage, role: Role) -> str:
    stage.draw()
    return panel(stage).entries[role].line.accessibleDescription()


def test_a_whole_test_is_typed_into_the_window(by_hand: Stage, person: Person) -> None:
    stage = by_hand
    assert not panel(stage).isHidden()
    stage.press()
    for _ in range(400):
        shown = stage.snapshot()
        if shown.state is EngineState.ASKING:
            stage.press()
        elif shown.typing:
            role = shown.typing[0]
            assert panel(stage).entries[role].wanted
            type_value(stage, role, f"{person.shown(role, shown.target_pa):.2f}")
            stage.pass_time(4.0)
        elif not stage.engine().busy:
            break
        else:
            stage.pass_time(0.5)
    final = stage.snapshot()
    assert final.last_error == ""
    assert final.result is not None
    assert final.result.runs[0].q50_m3_h.value == pytest.approx(person.true_q50(), rel=0.015)
    assert len(final.runs[0].points) == 5
    job = stage.program.desk.job
    assert job is not None
    assert job.load(1).test() == final.test


def test_what_cannot_be_used_stays_with_a_sentence(by_hand: Stage) -> None:
    type_value(by_hand, Role.ENVELOPE, "minus one")
    line = panel(by_hand).entries[Role.ENVELOPE].line
    assert line.text() == "minus one"
    assert said(by_hand, Role.ENVELOPE) == (
        "Envelope pressure is 'minus one': a number is needed, alone or with a unit (allowed: Pa)."
    )
    type_value(by_hand, Role.ENVELOPE, "-1.5 Pa")
    assert line.text() == ""
    assert said(by_hand, Role.ENVELOPE).endswith("Pa, typed just now")


def test_the_age_of_a_value_is_shown(by_hand: Stage) -> None:
    assert said(by_hand, Role.FLOW_ELEMENT) == "nothing typed yet"
    type_value(by_hand, Role.FLOW_ELEMENT, "40")
    by_hand.pass_time(30.0)
    assert "typed 30 s ago" in said(by_hand, Role.FLOW_ELEMENT)
    assert age_words(600.0) == "typed 10 min ago"


def test_enter_leads_from_one_reading_to_the_next(by_hand: Stage) -> None:
    by_hand.press()
    while by_hand.snapshot().target_pa is None:
        if by_hand.snapshot().state is EngineState.ASKING:
            by_hand.press()
        elif by_hand.snapshot().typing:
            type_value(by_hand, Role.ENVELOPE, "-0.1")
            by_hand.pass_time(6.0)
    type_value(by_hand, Role.ENVELOPE, "-58")
    assert panel(by_hand).entries[Role.FLOW_ELEMENT].line.hasFocus() or not by_hand.program.window.isActiveWindow()
    assert [role for role, entry in panel(by_hand).entries.items() if entry.wanted] == [Role.FLOW_ELEMENT]
    assert "type the flow-element pressure" in by_hand.snapshot().sentence


def test_the_ribbon_says_that_the_gauge_is_read_by_hand(by_hand: Stage) -> None:
    [lamp] = [link for link in by_hand.snapshot().links if link.name == "gauge"]
    assert lamp.port == "hand:blue"
    picture = by_hand.program.bridge.moment(by_hand.snapshot())
    assert picture.health["gauge"] == ()


def test_a_gauge_that_is_typed_is_put_together_on_the_sheet() -> None:
    sheet = RigSheetModel()
    sheet.add_instrument("by-hand")
    assert sheet.spec.instruments[0].port == "hand:gauge"
    sheet.add_range()
    for field, text in (("coefficient_m3_h_pa_n", "183"), ("exponent", "0.5"), ("min_pa", "8"), ("max_pa", "250")):
        sheet.set_range(0, field, text)
    assert sheet.problem() == ""
    assert sheet.spec.by_hand & ASKED_FOR == {Role.ENVELOPE, Role.FLOW_ELEMENT}
    sheet.set_instrument(0, "profile", "scpi-gauge")
    assert sheet.spec.instruments[0].port == ""
    sheet.set_instrument(0, "profile", "by-hand")
    assert sheet.spec.instruments[0].port == "hand:gauge"


def test_a_rig_that_is_read_has_no_such_panel(stage: Stage) -> None:
    stage.connect()
    stage.program.screen.go_to(Place.TEST)
    stage.draw()
    assert panel(stage).isHidden()


def test_values_come_in_the_units_of_the_user() -> None:
    taken: list[tuple[Role, float]] = []
    model = ByHandModel()
    assert model.enter(Role.FLOW, "100", Display(System.US), lambda role, value: taken.append((role, value)))
    # 1 ft3 = 0.3048^3 m3 exactly (international foot, 1959).
    [(role, flow_m3_h)] = taken
    assert role is Role.FLOW
    assert flow_m3_h == pytest.approx(100 * 0.3048**3 * 60)


@pytest.mark.parametrize("size", [(1024, 700), (1440, 900)])
def test_the_place_is_whole_with_the_panel(by_hand: Stage, size: tuple[int, int]) -> None:
    by_hand.program.window.resize(*size)
    type_value(by_hand, Role.ENVELOPE, "x")
    for _ in range(3):
        by_hand.program.screen.touch()
        by_hand.draw()
    assert [*cut_texts(by_hand.program.window), *overlaps(by_hand.program.window)] == []
