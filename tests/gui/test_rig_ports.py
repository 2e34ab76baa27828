"""The Rig place where something is odd: a refused port, another instrument, names and ranges still to give."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QLabel, QPushButton

from acquisition.multipoint import Outfit, multipoint
from acquisition.openrig import RigSource, open_rig
from acquisition.plan import TestPlan
from acquisition.rig import FurtherFan, Role
from acquisition.rigfile import read_rig, write_rig
from acquisition.setup import said_of_setup
from acquisition.snapshot import EngineState
from acquisition.steps import Approach, Ask, Mark, MeasureZero, StepResult
from analysis.errors import InvalidInput
from analysis.zeroflow import zero_flow
from drivers.clock import VirtualClock
from drivers.errors import PortDenied
from drivers.instrument import LinkState
from drivers.ports import PortInfo
from drivers.transport import Transport
from gui.viewmodels.moment import Place
from gui.viewmodels.rig_place import remedies
from gui.viewmodels.rig_sheet import role_words
from gui.views.rig_place import OWN
from simulators.houses import load_house
from simulators.instruments.scpi_gauge import second_gauge
from simulators.rig import SimulatedRig
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage
from tests.gui.fakes import LINKS, RIG

COMMAND = "sudo usermod -aG dialout $USER"
REFUSED = f"/dev/ttyUSB0 may not be used: it belongs to the group dialout. Run `{COMMAND}`, then log out and in."


class RefusedPort:
    """A port that the operating system does not give to this user."""

    def __init__(self, url: str) -> None:
        """Nothing happens before `open`."""
        self.url = url

    def open(self) -> None:
        """Be refused."""
        raise PortDenied(REFUSED)

    def close(self) -> None:
        """Nothing is open."""

    def read(self, timeout_s: float) -> bytes:
        """Nothing comes."""
        return b""

    def write(self, data: bytes) -> None:
        """Nothing goes."""


def refused(url: str) -> Transport:
    return RefusedPort(url)


def at_the_rig(stage: Stage) -> Stage:
    stage.program.screen.go_to(Place.RIG)
    stage.draw()
    return stage


def test_a_refused_port_says_the_command_and_copies_it(stage: Stage) -> None:
    connection = at_the_rig(stage).program.desk.connection
    connection.opener = refused
    connection.connect_spec(RIG)
    stage.pass_time(3.0)
    live = stage.program.window.rig.live
    assert any(REFUSED in label.text() for label in live.findChildren(QLabel))
    copies = [press for press in live.findChildren(QPushButton) if press.text() == "Copy" and not press.isHidden()]
    assert copies
    copies[0].click()
    assert QGuiApplication.clipboard().text() == COMMAND
    for size in ((1024, 700), (1440, 900)):
        stage.program.window.resize(*size)
        for _ in range(3):
            stage.program.screen.touch()
            stage.draw()
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == []


def test_the_rule_for_the_adapter_is_offered_where_its_numbers_are_known() -> None:
    link = replace(LINKS[0], port="/dev/ttyUSB0", state=LinkState.LOST, sentence=REFUSED)
    known = (PortInfo("/dev/ttyUSB0", "Adapter", "12AB:34CD"),)
    command, rule = remedies(link, known)
    assert command.text == COMMAND
    assert rule.text == 'SUBSYSTEM=="tty", ATTRS{idVendor}=="12ab", ATTRS{idProduct}=="34cd", TAG+="uaccess"'
    assert rule.words.startswith("Or for this adapter alone, as a line of /etc/udev/rules.d/70-airseam.rules")
    assert [item.text for item in remedies(link, ())] == [COMMAND]
    assert remedies(LINKS[0], known) == ()


def test_another_instrument_after_a_reconnect_asks_first(stage: Stage) -> None:
    at_the_rig(stage).connect()
    house = stage.houses[-1]
    port = house.ports["sim:gauge"]
    port.unplug()
    stage.pass_time(3.0)
    port._device = second_gauge(house.world)
    port.replug()
    stage.pass_time(15.0)
    gauge = next(link for link in stage.snapshot().links if link.name == "gauge")
    assert gauge.state is LinkState.WRONG_INSTRUMENT
    assert "SG-0019" in gauge.sentence
    [accept] = [
        press
        for press in stage.program.window.rig.live.findChildren(QPushButton)
        if press.text() == "Go on with this instrument" and not press.isHidden()
    ]
    before = stage.engine().live.newest_ns(Role.ENVELOPE)
    stage.pass_time(10.0)
    assert stage.engine().live.newest_ns(Role.ENVELOPE) == before
    accept.click()
    stage.pass_time(5.0)
    gauge = next(link for link in stage.snapshot().links if link.name == "gauge")
    assert gauge.state is LinkState.LINKED
    assert "SG-0019" in gauge.identity


@pytest.mark.walk
def test_a_person_turns_the_fan_of_a_rig_in_the_window(stage: Stage, clock: VirtualClock) -> None:
    house = SimulatedRig(load_house("mill-row"), 1, clock, wind_m_s=0.0, by_hand=True)
    assert house.hand is not None
    spec = read_rig(house.rig_toml(house.own_ports))
    known = stage.program.desk.connection.sources[0]
    source = RigSource(
        "sim:by-hand",
        "Fan by hand",
        "Invented data.",
        lambda _: (open_rig(spec, clock, house.open), clock),
        known.building,
        known.air,
    )
    stage.program.desk.connection.sources = (source,)
    stage.program.intents.rig.connect_source("sim:by-hand", 1.0)
    stage.pass_time(3.0)
    stage.program.screen.go_to(Place.TEST)
    stage.shorten()
    stage.press()
    said = set()
    while stage.engine().busy:
        shown = stage.until(lambda now: bool(now.hand) or now.state is not EngineState.RUNNING)
        if shown.state is EngineState.ASKING:
            stage.press()
        if shown.hand:
            said.add(shown.hand)
            house.hand.hear(shown.hand, clock.now_ns())
            stage.pass_time(0.3)
    assert {"raise", "hold", "off"} <= said
    result = stage.snapshot().result
    assert result is not None
    true = house.true_q_m3_h(50.0, "depressurize")
    assert result.runs[0].q50_m3_h.value == pytest.approx(true, rel=0.03)


@pytest.fixture
def two_fans(stage: Stage, clock: VirtualClock) -> Stage:
    """Return the sheet of a rig with two fans and a garage."""
    house = SimulatedRig(load_house("gable-barn"), 1, clock, fans=2)
    model = stage.program.screen.rig
    model.load(read_rig(house.rig_toml(house.own_ports)))
    at_the_rig(stage).program.window.rig.choose_page(OWN)
    spare = next(at for at, item in enumerate(model.spec.instruments) if item.name == "gauge-2")
    free = next(f"p{at}" for at in range(2, 9) if f"p{at}" not in dict(model.spec.instruments[spare].channels))
    model.set_role(spare, free, Role.ZONE_1)
    stage.program.screen.touch()
    stage.draw()
    return stage


def test_the_range_of_the_second_fan_is_chosen_on_the_sheet(two_fans: Stage) -> None:
    editor, model = two_fans.program.window.rig.own.editor, two_fans.program.screen.rig
    choice = editor.fitted_on["fan-2"].choice
    assert choice is not None
    names = [item.name for item in model.spec.ranges]
    assert [choice.itemText(at) for at in range(choice.count())] == names
    other = next(name for name in names if name != model.spec.further[0].fitted)
    choice.setCurrentText(other)
    choice.activated.emit(choice.currentIndex())
    two_fans.draw()
    assert model.spec.further == (FurtherFan("fan-2", other),)
    assert model.spec.fitted_ranges.now[1].name == other
    model.undo()
    assert model.spec.further[0].fitted != other


def test_a_zone_gets_a_name_that_is_kept_in_the_rig_file(two_fans: Stage) -> None:
    editor, model = two_fans.program.window.rig.own.editor, two_fans.program.screen.rig
    line = editor.zones[Role.ZONE_1].line
    assert line is not None
    line.setText("  the   garage ")
    line.editingFinished.emit()
    two_fans.draw()
    assert model.spec.zone_names == ((Role.ZONE_1, "the garage"),)
    assert role_words(model.spec, Role.ZONE_1) == "Indoors against the garage"
    assert read_rig(write_rig(model.spec)) == model.spec
    with pytest.raises(InvalidInput, match="the zones are: zone-pressure-1"):
        read_rig(write_rig(model.spec).replace('zone-pressure-1" = "the', 'zone-pressure-9" = "the'))
    line.setText("")
    line.editingFinished.emit()
    assert not model.spec.zone_names


def test_the_sheet_of_two_fans_and_a_zone_is_whole(two_fans: Stage) -> None:
    for size in ((1024, 700), (1440, 900)):
        two_fans.program.window.resize(*size)
        for _ in range(3):
            two_fans.program.screen.touch()
            two_fans.draw()
        assert [*cut_texts(two_fans.program.window), *overlaps(two_fans.program.window)] == []


def test_the_check_of_the_hoses_is_left_out_with_its_reason(stage: Stage) -> None:
    edit, desk = stage.program.intents.edit, stage.program.desk

    def plan() -> TestPlan:
        assert desk.job is not None
        return desk.job.draft()

    assert plan().hose_check
    edit("hose_check", "left out:  looked over by hand. ")
    assert (plan().hose_check, plan().hose_check_reason) == (False, "looked over by hand")
    edit("hose_check", "left out: ")
    assert plan().hose_check_reason == "looked over by hand"
    marks = [step.text for step in multipoint_marks(plan()) if step.kind == "hoses"]
    assert marks == ["The hoses were not checked before the points: looked over by hand."]
    assert marks[0] in said_of_setup(plan(), (), datetime(2026, 5, 4, tzinfo=UTC))
    edit("hose_check", "before the points")
    assert (plan().hose_check, plan().hose_check_reason) == (True, "")


def multipoint_marks(plan: TestPlan) -> list[Mark]:
    """Return the remarks of a test as it is planned, with the readings of a quiet house."""
    steps, found = multipoint(plan, Outfit(shutter=True)), []
    answer: StepResult = None
    for _ in range(30):
        step = steps.send(answer)
        found += [step] if isinstance(step, Mark) else []
        answer = zero_flow((0.1, 0.2, 0.3) * 10) if isinstance(step, MeasureZero) else None
        answer = step.choices[0] if isinstance(step, Ask) else answer
        if isinstance(step, Approach):
            break
    steps.close()
    return found
