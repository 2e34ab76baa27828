"""A fan drive: the newest wish, the safe state before everything, and never a fan that nobody asked for."""

from __future__ import annotations

from collections import deque
from itertools import pairwise

import pytest

from drivers.clock import NS_PER_S, VirtualClock, seconds
from drivers.device import Drive, connect
from drivers.instrument import Linked, LinkState, Settable
from drivers.profile import load_profile
from tests.drivers.wires import Pair, Wire, run

IDENTITY = b"AIRSEAM DEMO,SCPI-FAN,SF-0003,1.0\n"
ASK, START, SAFE = b"*IDN?\n", b"SYST:COMM:TIMEOUT 2.0;TIMEOUT?\n", b"FAN:SPEED 0;SPEED?\n"
OUT, IN = b"FAN:DIRECTION OUT;DIRECTION?\n", b"FAN:DIRECTION IN;DIRECTION?\n"
OPENING = (Pair(ASK, IDENTITY), Pair(START, b"2.0\n"))
COMMUNICATION_TIMEOUT_S = 2.0


def speed(value: float) -> bytes:
    return f"FAN:SPEED {value:.4f};SPEED?\n".encode()


class Fan:
    """A simple drive behind a wire: takes speeds at once, turns at rest, stops when it hears nothing for a while."""

    def __init__(self, clock: VirtualClock, identity: bytes = IDENTITY) -> None:
        """Stand still."""
        self.clock = clock
        self.wire = Wire(clock, answer=self._answer)
        self.identity = identity
        self.mute = False
        self.refuses_to_turn = False
        self.direction = "OUT"
        self.history: list[tuple[int, float]] = []
        self._speed = 0.0
        self._heard_ns = 0

    @property
    def speed(self) -> float:
        """The speed now."""
        if self.clock.now_ns() - self._heard_ns >= seconds(COMMUNICATION_TIMEOUT_S):
            self._speed = 0.0
        return self._speed

    def _answer(self, message: bytes) -> bytes | None:
        running = self.speed > 0
        self._heard_ns = self.clock.now_ns()
        reply = b""
        if message == ASK:
            reply = self.identity
        elif message == START:
            reply = b"2.0\n"
        elif message.startswith(b"FAN:SPEED "):
            self._speed = float(message.removeprefix(b"FAN:SPEED ").split(b";")[0])
            self.history.append((self.clock.now_ns(), self._speed))
            reply = f"{self._speed:.4f}\n".encode()
        elif message in (OUT, IN):
            if not running and not self.refuses_to_turn:
                self.direction = "OUT" if message == OUT else "IN"
            reply = self.direction.encode() + b"\n"
        return None if self.mute else reply


@pytest.fixture
def fan(clock: VirtualClock) -> Fan:
    return Fan(clock)


def connected(wire: Wire) -> Drive:
    drive = connect("fan", load_profile("scpi-fan"), wire, wire.clock)
    assert isinstance(drive, Drive)
    drive.start()
    return drive


def keep(drive: Drive, clock: VirtualClock, value: float, duration_s: float, period_s: float = 0.1) -> None:
    """Command a speed again and again, as the engine does."""
    for _ in range(round(duration_s / period_s)):
        drive.set(value)
        run(clock, period_s)


def state_of(drive: Drive) -> LinkState:
    return drive.status().state


# --- speeds -------------------------------------------------------------------------------------------------------


def test_a_drive_fulfils_its_roles(fan: Fan) -> None:
    drive = connect("fan", load_profile("scpi-fan"), fan.wire, fan.clock)
    linked: Linked = drive
    assert linked.name == "fan"
    assert isinstance(drive, Settable)


def test_the_talk_of_a_drive_byte_by_byte(clock: VirtualClock) -> None:
    script = [*OPENING, Pair(speed(0.452), b"0.4520\n"), Pair(SAFE, b"0.0000\n")]
    wire = Wire(clock, deque(script))
    drive = connected(wire)
    run(clock, 1.0)
    drive.set(0.452)
    run(clock, 0.3)
    assert drive.speed_readback() == 0.452
    drive.close()
    wire.finished()
    assert drive.closed_safely is True


def test_of_several_wishes_the_newest_is_sent(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    for value in (0.1, 0.2, 0.3):
        drive.set(value)
    run(clock, 0.2)
    assert [value for _, value in fan.history] == [0.3]
    drive.close()


@pytest.mark.parametrize(("asked", "told"), [(1.7, 1.0), (-0.2, 0.0), (float("nan"), 0.0), (float("inf"), 0.0)])
def test_a_speed_beyond_the_range_is_its_end_and_no_number_is_rest(
    fan: Fan, clock: VirtualClock, asked: float, told: float
) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    drive.set(asked)
    run(clock, 0.2)
    assert fan.history[-1][1] == told
    drive.close()


def test_a_hung_engine_means_a_drive_that_stops_by_itself(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 3.0)
    assert fan.speed == 0.5
    count = len(fan.wire.written)
    run(clock, COMMUNICATION_TIMEOUT_S + 0.1)
    assert len(fan.wire.written) == count
    assert fan.speed == 0.0
    drive.close()


def test_a_wish_that_grew_old_while_the_link_was_away_is_not_sent(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    fan.wire.unplug()
    drive.set(0.5)
    run(clock, 5.0)
    sent = len(fan.history)
    fan.wire.replug()
    run(clock, 5.0)
    assert state_of(drive) is LinkState.LINKED
    assert len(fan.history) == sent
    drive.close()


def test_a_drive_whose_answers_get_lost_is_not_kept_running_by_questions(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 2.0)
    fan.mute = True
    keep(drive, clock, 0.5, 6.0)
    assert fan.speed == 0.0
    last_ns, last = fan.history[-1]
    assert last == 0.5
    silences = [
        (after - before) / NS_PER_S for (before, _), (after, _) in pairwise(fan.wire.written) if before > last_ns
    ]
    assert max(silences) > COMMUNICATION_TIMEOUT_S
    drive.close()


# --- the safe state -----------------------------------------------------------------------------------------------


def test_the_safe_state_goes_ahead_and_drops_wishes_made_before(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 0.5)
    drive.set(0.8)
    drive.to_safe_state()
    run(clock, 0.5)
    assert fan.history[-1][1] == 0.0
    assert all(value != 0.8 for _, value in fan.history)
    drive.close()


def test_a_wish_made_after_the_safe_state_follows_it(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    drive.to_safe_state()
    drive.set(0.4)
    run(clock, 0.3)
    assert [value for _, value in fan.history] == [0.0, 0.4]
    drive.close()


def test_the_safe_state_is_sent_though_no_answer_comes(fan: Fan, clock: VirtualClock) -> None:
    """The receiving half of the cable is broken: stopping must not wait for an answer."""
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    fan.mute = True
    drive.set(0.5)
    run(clock, 0.03)
    asked_ns = clock.now_ns()
    drive.to_safe_state()
    run(clock, 0.3)
    stopped_ns = next(time_ns for time_ns, value in fan.history if time_ns >= asked_ns and value == 0.0)
    assert stopped_ns - asked_ns < seconds(0.15)
    run(clock, 3.0)
    assert len([value for _, value in fan.history if value == 0.0]) > 5
    drive.close()
    assert drive.closed_safely is False


def test_the_safe_state_that_was_asked_for_while_unplugged_is_the_first_command_after(
    fan: Fan, clock: VirtualClock
) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    fan.wire.unplug()
    run(clock, 0.3)
    drive.to_safe_state()
    count = len(fan.wire.written)
    fan.wire.replug()
    run(clock, 3.0)
    assert fan.wire.messages()[count : count + 2] == [ASK, SAFE]
    assert fan.history[-1][1] == 0.0
    drive.close()


def test_no_command_goes_to_a_stranger(clock: VirtualClock) -> None:
    fan = Fan(clock, b"AIRSEAM DEMO,SCPI-FAN,SF-0666,1.0\n")
    drive = connect("fan", load_profile("scpi-fan"), fan.wire, clock, serial="SF-0003")
    assert isinstance(drive, Drive)
    drive.start()
    drive.set_direction("pressurize")
    keep(drive, clock, 0.5, 5.0)
    drive.to_safe_state()
    run(clock, 5.0)
    drive.close()
    assert set(fan.wire.messages()) == {ASK}
    assert drive.closed_safely is False


# --- closing ------------------------------------------------------------------------------------------------------


def test_closing_brings_the_fan_to_rest_and_says_so(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    drive.close()
    assert drive.closed_safely is True
    assert fan.speed == 0.0
    assert not fan.wire.is_open
    assert state_of(drive) is LinkState.CLOSED


def test_closing_a_drive_that_was_never_commanded_says_nothing(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    drive.close()
    assert drive.closed_safely is None
    assert fan.history == []


def test_closing_without_a_port_does_not_wait(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    fan.wire.unplug()
    run(clock, 0.3)
    began_ns = clock.now_ns()
    drive.close()
    assert drive.closed_safely is False
    assert clock.now_ns() - began_ns < seconds(0.1)


def test_closing_waits_a_bounded_time_for_a_drive_that_does_not_answer(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    fan.mute = True
    began_ns = clock.now_ns()
    drive.close()
    assert drive.closed_safely is False
    assert fan.history[-1][1] == 0.0
    assert clock.now_ns() - began_ns < seconds(2.5)


def test_closing_right_after_a_disturbance_still_stops_and_confirms(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    fan.mute = True
    drive.set(0.5)
    run(clock, 0.6)
    fan.mute = False
    drive.close()
    assert fan.history[-1][1] == 0.0


@pytest.mark.parametrize(
    "reply", [b"0\n", b"0.0\n", b"0.000\n", b".0000\n", b"-0.0000\n", b"0.0001\n", b"OK\n", b"0.0000"]
)
def test_only_the_whole_zero_confirms_rest(clock: VirtualClock, reply: bytes) -> None:
    known = {ASK: IDENTITY, START: b"2.0\n", SAFE: reply}
    wire = Wire(clock, answer=lambda message: known.get(message, b"0.5000\n"))
    drive = connected(wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 0.5)
    drive.close()
    assert drive.closed_safely is False


@pytest.mark.parametrize("reply", [b"0.45\n", b"0.452\n", b"4520\n", b".4520\n", b"1.4520\n", b"0.4520,0\n", b"nan\n"])
def test_a_damaged_speed_is_not_read_back(clock: VirtualClock, reply: bytes) -> None:
    known = {ASK: IDENTITY, START: b"2.0\n", SAFE: b"0.0000\n"}
    wire = Wire(clock, answer=lambda message: known.get(message, reply))
    drive = connected(wire)
    run(clock, 1.0)
    drive.set(0.452)
    run(clock, 0.5)
    assert drive.speed_readback() is None
    assert drive.status().bad_frames == 1
    drive.close()
    assert drive.closed_safely is True


# --- the direction ------------------------------------------------------------------------------------------------


def test_a_fan_that_turns_by_itself_runs_only_after_it_confirmed_its_direction(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    assert drive.turns
    run(clock, 1.0)
    drive.set_direction("pressurize")
    drive.set(0.4)
    run(clock, 0.5)
    assert fan.direction == "IN"
    assert drive.direction_readback() == "pressurize"
    messages = fan.wire.messages()
    assert messages.index(IN) < messages.index(speed(0.4))
    drive.close()


def test_a_fan_that_does_not_turn_is_complained_of_and_never_run(fan: Fan, clock: VirtualClock) -> None:
    fan.refuses_to_turn = True
    drive = connected(fan.wire)
    run(clock, 1.0)
    drive.set_direction("pressurize")
    keep(drive, clock, 0.4, 40.0)
    assert drive.status().sentence == "The fan drive does not turn to pressurize."
    assert all(value == 0.0 for _, value in fan.history)
    drive.close()


def test_a_direction_asked_for_in_full_run_is_taken_when_the_fan_has_stopped(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 1.0)
    drive.set_direction("pressurize")
    keep(drive, clock, 0.5, 5.0)
    assert fan.direction == "IN"
    stopped = next(index for index, message in enumerate(fan.wire.messages()) if message == IN)
    assert stopped > 0
    drive.close()


def test_the_direction_is_said_again_to_a_drive_that_was_switched_off(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    drive.set_direction("pressurize")
    run(clock, 0.5)
    fan.wire.unplug()
    run(clock, 0.5)
    assert drive.direction_readback() is None
    fan.direction = "OUT"
    fan.wire.replug()
    run(clock, 2.0)
    assert fan.direction == "IN"
    assert drive.direction_readback() == "pressurize"
    drive.close()


def test_an_unknown_direction_is_answered_with_those_there_are(fan: Fan) -> None:
    drive = connect("fan", load_profile("scpi-fan"), fan.wire, fan.clock)
    assert isinstance(drive, Drive)
    with pytest.raises(ValueError, match="'sideways': one of these is needed: depressurize, pressurize"):
        drive.set_direction("sideways")


# --- the link of a drive ------------------------------------------------------------------------------------------


def test_an_idle_drive_that_is_unplugged_is_noticed(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 5.0)
    fan.wire.unplug()
    run(clock, 0.4)
    assert state_of(drive) is LinkState.LOST
    drive.close()


def test_a_drive_that_does_not_confirm_its_time_out_is_named(clock: VirtualClock) -> None:
    known = {ASK: IDENTITY, START: b"9.9\n", SAFE: b"0.0000\n"}
    wire = Wire(clock, answer=lambda message: known.get(message, b"0.5000\n"))
    drive = connected(wire)
    run(clock, 3.0)
    assert "has not confirmed its communication time-out" in drive.status().sentence
    assert len(wire.sent(START)) == 2
    drive.close()


def test_the_age_of_a_drive_is_that_of_its_last_accepted_command(fan: Fan, clock: VirtualClock) -> None:
    drive = connected(fan.wire)
    run(clock, 1.0)
    keep(drive, clock, 0.5, 2.0)
    run(clock, 1.0)
    status = drive.status()
    assert status.age_s == pytest.approx(1.1, abs=0.05)
    assert status.readings > 15
    drive.close()
