"""Gauges that have to be started and kept alive."""

from __future__ import annotations

from datetime import UTC, datetime
from importlib import resources
from itertools import pairwise

import pytest

from drivers.clock import VirtualClock
from drivers.device import Gauge, connect
from drivers.errors import ProfileError
from drivers.instrument import LinkState
from drivers.profile import read_profile
from tests.drivers.wires import Wire, run, with_checksum

LINE = (resources.files("drivers.profiles") / "line-gauge.toml").read_text("utf-8")
UPKEEP = '[start]\nmessages = ["UNITS PA", "GO"]\n\n[keep_alive]\nmessage = "ON"\nevery_s = 2.0\n\n[stream]'


def test_a_gauge_is_started_after_each_opening_and_kept_alive() -> None:
    clock = VirtualClock(datetime(2026, 5, 4, 9, 0, tzinfo=UTC))
    identity = with_checksum("id=LINE-GAUGE,LG-0007")
    wire = Wire(clock, answer=lambda sent: identity if sent == b"?\r\n" else None)
    gauge = connect("g", read_profile(LINE.replace("[stream]", UPKEEP), "mine"), wire, clock)
    assert isinstance(gauge, Gauge)
    gauge.start()

    def talk(duration_s: float) -> None:
        for _ in range(round(duration_s * 10)):
            if wire.is_open:
                wire.say(with_checksum("p1=-50.12 p2=103.40 t1=21.04 t2=11.23"))
            run(clock, 0.1)

    talk(9.0)
    assert gauge.status().state is LinkState.LINKED
    assert wire.messages()[:3] == [b"?\r\n", b"UNITS PA\r\n", b"GO\r\n"]
    kept = wire.sent(b"ON\r\n")
    assert len(kept) == 4
    assert [later - earlier for earlier, later in pairwise(kept)] == pytest.approx([2e9] * 3, abs=0.15e9)
    wire.unplug()
    run(clock, 1.0)
    wire.replug()
    talk(6.0)
    assert len(wire.sent(b"GO\r\n")) == 2
    assert gauge.status().bad_frames == 0
    gauge.close()


@pytest.mark.parametrize(
    ("added", "said"),
    [
        ("[start]\nmessages = []\n", "start.messages: a list of texts is needed"),
        ('[start]\nmessages = ["é"]\n', "start.messages: only printable ASCII"),
        ('[keep_alive]\nmessage = "ON"\n', "keep_alive.every_s: a number greater than 0"),
        ('[keep_alive]\nmessage = "ON"\nevery_s = 2\nhow = 1\n', "keep_alive.how: unknown"),
    ],
)
def test_mistakes_are_named_with_their_line(added: str, said: str) -> None:
    text = LINE.replace("[stream]", added + "\n[stream]")
    with pytest.raises(ProfileError) as caught:
        read_profile(text, "mine.toml")
    assert said in str(caught.value)
    assert caught.value.line is not None
    header = text.splitlines().index(added.splitlines()[0]) + 1
    assert header <= caught.value.line <= header + 3


def test_a_polled_gauge_and_a_drive_are_not_kept_alive() -> None:
    keep = '\n[keep_alive]\nmessage = "ON"\nevery_s = 2.0\n'
    for name, said in (("scpi-gauge", "only a gauge with a table"), ("scpi-fan", "unknown")):
        text = (resources.files("drivers.profiles") / f"{name}.toml").read_text("utf-8")
        with pytest.raises(ProfileError, match=said):
            read_profile(text + keep, name)
