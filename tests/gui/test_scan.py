"""Teaching a Modbus instrument through the window, on a simulated one that speaks by the public library."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from drivers.clock import VirtualClock
from drivers.errors import ProfileError
from drivers.profile import load_profile
from gui.viewmodels.moment import Place
from gui.viewmodels.scan import ScanModel
from gui.views.lessons import REGISTERS
from gui.views.rig_place import OWN, TEACH
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage
from tests.gui.test_register import settle


def begin(stage: Stage) -> SimulatedRig:
    """Open the page with a Modbus instrument at its port."""
    clock = stage.program.desk.connection.clock
    assert isinstance(clock, VirtualClock)
    house = SimulatedRig(load_house("mill-row"), 1, clock, protocol="modbus")
    stage.program.desk.connection.opener = house.open
    stage.program.screen.go_to(Place.RIG)
    rig = stage.program.window.rig
    rig.choose_page(TEACH)
    rig.lessons.choose(REGISTERS)
    settle(stage)
    rig.scan.port.setEditText("sim:gauge")
    return house


def read_all(stage: Stage) -> None:
    """Press the button and wait until the registers are read."""
    stage.program.window.rig.scan.scan.click()
    for _ in range(100):
        stage.pass_time(0.5)
        if not stage.program.screen.scan.picture().scanning:
            return
    raise AssertionError(stage.program.screen.scan.picture().sentence)


def choose(stage: Stage, shown: str) -> None:
    """Type what the display shows and click the first reading."""
    page = stage.program.window.rig.scan
    page.display.setText(shown)
    page.display.textEdited.emit(shown)
    settle(stage)
    page.list.itemClicked.emit(page.list.item(0))
    settle(stage)


def test_a_modbus_instrument_is_taught_in_under_ten_clicks(stage: Stage) -> None:
    house = begin(stage)
    page, model = stage.program.window.rig.scan, stage.program.screen.scan
    read_all(stage)
    clicks = 1
    assert "10 input registers" in model.picture().sentence
    choose(stage, f"{house.world.reading('t1'):.1f}")
    clicks += 2
    page.rows[0].quantity.setCurrentIndex(page.rows[0].quantity.findData("temperature"))
    page.rows[0].quantity.activated.emit(page.rows[0].quantity.currentIndex())
    clicks += 2
    settle(stage)
    [pick] = model.picture().picks
    assert (pick.name, pick.unit, pick.text) == ("t1", "degC", "input 4")
    assert float(pick.value.removesuffix(" °C")) == pytest.approx(house.world.reading("t1"), abs=0.2)
    assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == []
    page.title.setText("Barn gauge")
    page.titled.emit("Barn gauge")
    page.save.click()
    clicks += 2
    settle(stage)
    assert clicks < 10
    [instrument] = stage.program.screen.rig.spec.instruments
    profile = load_profile(instrument.profile)
    assert (profile.title, profile.protocol, profile.channels[0].quantity) == ("Barn gauge", "modbus", "temperature")
    assert instrument.port == "sim:gauge"
    assert stage.program.window.rig.pages.currentIndex() == OWN


def test_the_keyboard_chooses_and_a_chosen_reading_is_let_go(stage: Stage) -> None:
    house = begin(stage)
    page, model = stage.program.window.rig.scan, stage.program.screen.scan
    read_all(stage)
    choose(stage, f"{house.world.reading('t1'):.1f}")
    page.list.itemActivated.emit(page.list.item(0))
    settle(stage)
    assert len(model.picture().picks) == 1
    assert page.list.item(0).text().startswith("✓")
    page.rows[0].removed.emit(0)
    settle(stage)
    assert model.picture().picks == ()
    assert not page.save.isEnabled()
    assert page.list.focusPolicy() is not Qt.FocusPolicy.NoFocus


def test_what_no_register_reads_is_said(stage: Stage) -> None:
    begin(stage)
    read_all(stage)
    page = stage.program.window.rig.scan
    page.display.textEdited.emit("7777.7")
    settle(stage)
    assert "No register reads 7777.7" in page.empty.text()
    assert not page.list.isVisible()


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [
        ("unit", "300", "1 to 247"),
        ("unit", "one", "1 to 247"),
        ("first", "-1", "0 to 65535"),
        ("count", "0", "1 to 1024"),
        ("count", "2.5", "1 to 1024"),
        ("port", "", "port of the instrument"),
    ],
)
def test_wrong_settings_have_a_sentence_at_their_field(field: str, text: str, said: str) -> None:
    model = ScanModel()
    model.type("port", "/dev/ttyUSB0")
    assert model.settings() is not None
    model.type(field, text)
    assert model.settings() is None
    assert said in model.picture().errors[field]


def test_nothing_can_be_saved_before_a_scan() -> None:
    with pytest.raises(ProfileError):
        ScanModel().taught()
