"""Teaching a gauge through the window: three formats that no profile knows, each in under ten clicks."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

import pytest
from PySide6.QtWidgets import QWidget

from drivers.clock import Clock, VirtualClock, seconds
from drivers.errors import PortMissing
from drivers.profile import load_profile
from drivers.spec import LinkSettings
from gui.viewmodels.moment import Place
from gui.views.rig_place import OWN, TEACH
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage

FORMATS = {
    "semicolons": (19_200, b"%+07.2f;%+07.2f;%05.1f\r\n", 3),
    "words": (9600, b"DP1 %.1f Pa DP2 %.1f Pa T %.1f C\n", 3),
    "equals": (115_200, b"p1=%.2f,p2=%.2f,t=%.1f\r\n", 3),
}


@dataclass
class Talker:
    """A gauge that sends lines of its own at one rate, and noise when it is listened to at another."""

    clock: Clock
    form: bytes
    baud: int
    url: str = "test:gauge"
    settings: LinkSettings = field(default_factory=LinkSettings)
    opened: bool = False
    sent_ns: int = 0
    count: int = 0

    def configure(self, settings: LinkSettings) -> None:
        """Take settings."""
        self.settings = settings

    def open(self) -> None:
        """Begin to send."""
        self.opened, self.sent_ns = True, self.clock.now_ns()

    def close(self) -> None:
        """Stop."""
        self.opened = False

    def write(self, data: bytes) -> None:
        """Hear nothing."""

    def read(self, timeout_s: float) -> bytes:
        """Return what was sent, garbled at another rate."""
        out = b""
        while self.clock.now_ns() - self.sent_ns >= seconds(0.1):
            self.sent_ns += seconds(0.1)
            self.count += 1
            out += self.form % (-50.0 - 0.1 * (self.count % 7), 103.0 + 0.1 * (self.count % 5), 21.0)
        right = (self.settings.baud, self.settings.data_bits, self.settings.parity) == (self.baud, 8, "none")
        return out if right else bytes(byte * 37 % 256 for byte in out)


def settle(stage: Stage) -> None:
    stage.program.screen.touch()
    stage.draw()


def begin(stage: Stage, form: bytes, baud: int) -> None:
    """Open the page and listen to the talker."""
    clock = stage.program.desk.connection.clock
    assert isinstance(clock, VirtualClock)
    stage.program.desk.connection.opener = lambda url: Talker(clock, form, baud, url)
    stage.program.screen.go_to(Place.RIG)
    stage.program.window.rig.choose_page(TEACH)
    settle(stage)
    page = stage.program.window.rig.teach
    page.port.setEditText("test:gauge")
    page.listen.click()
    for _ in range(200):
        stage.pass_time(0.5)
        if not stage.program.screen.teach.picture().listening:
            break
    settle(stage)


@pytest.mark.parametrize("name", list(FORMATS))
def test_a_gauge_of_unknown_form_is_taught_in_under_ten_clicks(stage: Stage, name: str) -> None:
    baud, form, count = FORMATS[name]
    begin(stage, form, baud)
    window, model = stage.program.window, stage.program.screen.teach
    page, clicks = window.rig.teach, 1
    picture = model.picture()
    assert str(baud) in picture.sentence
    wanted = [start for start, end, _ in picture.marks if "." in picture.sample[start:end]]
    assert len(wanted) == count
    for start in wanted:
        page.sample.pointed.emit(start)
        clicks += 1
    settle(stage)
    page.rows[2].quantity.setCurrentIndex(page.rows[2].quantity.findData("temperature"))
    page.rows[2].quantity.activated.emit(page.rows[2].quantity.currentIndex())
    clicks += 2
    settle(stage)
    picks = model.picture().picks
    assert [pick.name for pick in picks] == ["p1", "p2", "t1"]
    assert picks[2].value == "21.00 °C"
    assert picks[0].value.startswith("−50")
    page.title.setText(f"Gauge with {name}")
    page.titled.emit(page.title.text())
    page.save.click()
    clicks += 2
    settle(stage)
    assert clicks < 10
    instrument = stage.program.screen.rig.spec.instruments[0]
    profile = load_profile(instrument.profile)
    assert profile.title == f"Gauge with {name}"
    assert profile.link.baud == baud
    assert [channel.name for channel in profile.channels] == ["p1", "p2", "t1"]
    assert instrument.port == "test:gauge"
    assert window.rig.pages.currentIndex() == OWN


def test_what_is_pointed_at_twice_is_let_go_and_a_second_save_says_why_not(stage: Stage) -> None:
    baud, form, _ = FORMATS["equals"]
    begin(stage, form, baud)
    page, model = stage.program.window.rig.teach, stage.program.screen.teach
    start = model.picture().marks[0][0]
    page.sample.pointed.emit(start)
    page.sample.pointed.emit(start)
    settle(stage)
    assert model.picture().picks == ()
    assert not page.save.isEnabled()
    page.sample.pointed.emit(start)
    settle(stage)
    page.save.click()
    page.save.click()
    settle(stage)
    assert any("there already" in notice for notice in notices(stage.program.window))
    page.rows[0].removed.emit(0)
    settle(stage)
    assert model.picture().picks == ()


def test_silence_and_a_port_that_is_not_there_have_their_sentence(stage: Stage) -> None:
    class Gone(Talker):
        def open(self) -> None:
            """There is nothing to open."""
            raise PortMissing("test:gauge is not there.")

    stage.program.window.rig.choose_page(TEACH)
    page, model = stage.program.window.rig.teach, stage.program.screen.teach
    page.port.setEditText("")
    page.listen.click()
    settle(stage)
    clock = stage.program.desk.connection.clock
    stage.program.desk.connection.opener = lambda url: Gone(clock, b"", 9600, url)
    page.port.setEditText("test:gauge")
    page.listen.click()
    stage.pass_time(1.0)
    settle(stage)
    assert model.picture().sentence == "test:gauge is not there."


def test_nothing_is_cut_on_the_page(stage: Stage, tmp_path: Path) -> None:
    baud, form, _ = FORMATS["words"]
    begin(stage, form, baud)
    for start, _, _ in stage.program.screen.teach.picture().marks:
        stage.program.window.rig.teach.sample.pointed.emit(start)
    for width, height in ((1024, 700), (1440, 900)):
        stage.program.window.resize(width, height)
        settle(stage)
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == []
        assert stage.program.window.grab().save(str(tmp_path / f"teach-{width}.png"))


def notices(window: QWidget) -> list[str]:
    """Return what the notices say."""
    from PySide6.QtWidgets import QLabel

    return [item.text() for item in window.findChildren(QLabel) if item.isVisible()]
