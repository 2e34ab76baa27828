"""The transport over pyserial: real terminals and sockets, and every way in which the system says no."""

from __future__ import annotations

import errno
import os
import socket
import stat
import termios
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest
import serial

from drivers.errors import LinkLost, PortBusy, PortDenied, PortMissing, WriteBlocked
from drivers.portfaults import FAILURES, refusal
from drivers.serialport import SLICE_S, WRITE_TIMEOUT_S, SerialTransport, open_url
from drivers.spec import LinkSettings
from tests.drivers.terminals import WALL, Terminal, eventually


@pytest.fixture
def terminal(tmp_path: Path) -> Iterator[Terminal]:
    """Return a plugged-in terminal that answers nothing."""
    with Terminal(tmp_path / "port") as found:
        yield found


def read_all(port: SerialTransport, count: int) -> bytes:
    """Read until so many bytes are there."""
    data = bytearray()

    def enough() -> bool:
        data.extend(port.read(SLICE_S))
        return len(data) >= count

    assert eventually(enough)
    return bytes(data)


def elapsed_s(since_ns: int) -> float:
    return (WALL.now_ns() - since_ns) / 1e9


def test_constructing_opens_nothing_and_a_closed_port_is_a_lost_link() -> None:
    port = open_url("/dev/no-such-port")
    assert port.url == "/dev/no-such-port"
    with pytest.raises(LinkLost, match="is not open"):
        port.read(0.0)
    with pytest.raises(LinkLost, match="is not open"):
        port.write(b"x")
    port.close()
    port.close()


def test_the_settings_of_the_profile_reach_the_terminal(terminal: Terminal) -> None:
    port = open_url(terminal.url)
    port.configure(LinkSettings(baud=19200, data_bits=7, parity="even", stop_bits=2))
    port.open()
    try:
        assert terminal._ends is not None
        _, _, control, _, speed, _, _ = termios.tcgetattr(terminal._ends[1])
        assert speed == termios.B19200
        assert control & termios.CSTOPB
        # A pseudo-terminal takes neither parity nor seven bits: asked of the port, not of the terminal.
        assert port._port is not None
        assert (port._port.bytesize, port._port.parity) == (7, "E")
    finally:
        port.close()


def test_a_read_does_not_wait_longer_than_a_slice(terminal: Terminal) -> None:
    """Rules A6 and A8: a read is short, whatever it waits for."""
    port = open_url(terminal.url)
    port.open()
    start_ns = WALL.now_ns()
    assert port.read(0.0) == b""
    assert port.read(5.0) == b""
    assert elapsed_s(start_ns) < 1.0
    port.close()


def test_a_read_gives_all_that_has_come(terminal: Terminal) -> None:
    port = open_url(terminal.url)
    port.open()
    terminal.say(b"first\nsecond\n")
    assert read_all(port, 13) == b"first\nsecond\n"
    port.close()


def test_what_was_queued_before_the_opening_is_thrown_away(terminal: Terminal) -> None:
    """Rule A10: on every system alike."""
    terminal.say(b"old")
    port = open_url(terminal.url)
    port.open()
    assert port.read(SLICE_S) == b""
    terminal.say(b"new")
    assert read_all(port, 3) == b"new"
    port.close()


def test_a_pulled_plug_is_a_lost_link_for_reading_and_writing(terminal: Terminal) -> None:
    """Rules A1 and A2: whatever the system raises."""
    calls: tuple[Callable[[SerialTransport], object], ...] = (
        lambda port: port.read(SLICE_S),
        lambda port: port.read(0.0),
        lambda port: port.write(b"x" * 64),
    )
    for call in calls:
        port = open_url(terminal.url)
        port.open()
        terminal.unplug()
        with pytest.raises(LinkLost, match="went away"):
            call(port)
        port.close()
        terminal.plug_in()


def test_a_port_is_held_for_one_only(terminal: Terminal) -> None:
    """Rule A14."""
    first, second = open_url(terminal.url), open_url(terminal.url)
    first.open()
    with pytest.raises(PortBusy, match="in use by another program, or was only just released"):
        second.open()
    first.close()
    second.open()
    second.close()


def test_a_port_that_takes_nothing_ends_the_write_in_time(terminal: Terminal) -> None:
    """Rule A12."""
    port = open_url(terminal.url)
    port.open()
    start_ns = WALL.now_ns()
    with pytest.raises(WriteBlocked, match="does not take the bytes"):
        port.write(b"x" * 100_000)
    assert elapsed_s(start_ns) < 10 * WRITE_TIMEOUT_S
    port.close()


def test_a_network_port_is_read_written_and_lost() -> None:
    with closing(socket.create_server(("127.0.0.1", 0))) as server:
        port = open_url(f"socket://127.0.0.1:{server.getsockname()[1]}")
        port.open()
        client, _ = server.accept()
        with closing(client):
            port.write(b"READ?\n")
            assert client.recv(100) == b"READ?\n"
            client.sendall(b"a" * 5000)
            assert read_all(port, 5000) == b"a" * 5000
            assert port.read(SLICE_S) == b""
        with pytest.raises(LinkLost, match="went away"):
            port.read(SLICE_S)
        port.close()


def test_pyserials_own_loop_works_as_a_port() -> None:
    port = open_url("loop://")
    port.open()
    port.write(b"hello")
    assert port.read(SLICE_S) == b"hello"
    assert port.read(0.0) == b""
    port.close()


def test_what_is_not_there_is_named(tmp_path: Path) -> None:
    with closing(socket.create_server(("127.0.0.1", 0))) as server:
        free = server.getsockname()[1]
    plain = tmp_path / "notes.txt"
    plain.write_text("no port", "utf-8")
    expected = {
        "/dev/no-such-port": "is not there: adapter unplugged",
        f"socket://127.0.0.1:{free}": "nothing listens there",
        "socket://127.0.0.1:99999": "is no port address",
        "socket://127.0.0.1": "is no port address",
        "rfc2217://:4001": "is no port address",
        "smoke://signals": "is no port address",
        str(plain): "is no serial port",
        str(tmp_path): "is no serial port",
    }
    for url, words in expected.items():
        port = open_url(url)
        with pytest.raises(PortMissing, match=words) as caught:
            port.open()
        assert str(caught.value).startswith(url), "the sentence names the port"
        port.close()


@pytest.mark.parametrize(
    "trouble",
    [
        serial.SerialException("device reports readiness to read but returned no data"),
        OSError(errno.EIO, "Input/output error"),
        termios.error(errno.EIO, "Input/output error"),
        TypeError("'NoneType' object cannot be interpreted as an integer"),
        AttributeError("'NoneType' object has no attribute 'recv'"),
        ValueError("file descriptor cannot be a negative integer (-1)"),
    ],
    ids=lambda error: type(error).__name__,
)
def test_every_kind_of_trouble_is_one_error(trouble: BaseException) -> None:
    """Rules A2 and A3: one translation for all of them, and closing never raises."""

    class Broken:
        """A port whose calls all fail, as after a pulled plug."""

        timeout = SLICE_S

        @property
        def in_waiting(self) -> int:
            raise trouble

        def read(self, count: int) -> bytes:
            raise trouble

        def write(self, data: bytes) -> int:
            raise trouble

        def close(self) -> None:
            raise trouble

    port = open_url("/dev/broken")
    port._port = Broken()
    calls: tuple[Callable[[], object], ...] = (
        lambda: port.read(0.0),
        lambda: port.read(SLICE_S),
        lambda: port.write(b"x"),
    )
    for call in calls:
        with pytest.raises(LinkLost, match="/dev/broken went away") as caught:
            call()
        assert caught.value.__cause__ is trouble
    port.close()
    assert isinstance(trouble, FAILURES)


def test_a_refused_right_names_the_group_of_the_device_node(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Rule A19: the group is read from the node that refused."""
    import grp

    group = next(item for item in grp.getgrall() if item.gr_gid != 0)
    node = tmp_path / "ttyUSB0"
    node.touch()
    status = os.stat_result((stat.S_IFCHR | 0o660, 1, 1, 1, 0, group.gr_gid, 0, 0, 0, 0))
    monkeypatch.setattr(Path, "stat", lambda self: status)
    monkeypatch.setenv("USER", "tester")
    refused = refusal(str(node), serial.SerialException(errno.EACCES, "could not open port: Permission denied"))
    assert isinstance(refused, PortDenied)
    assert f"it belongs to the group {group.gr_name}" in str(refused)
    assert f"sudo usermod -aG {group.gr_name} tester" in str(refused)
    assert "log out and in" in str(refused)


def test_nobody_is_told_to_join_the_group_of_the_administrator(tmp_path: Path) -> None:
    node = tmp_path / "ttyUSB0"
    node.touch(mode=0o600)
    refused = refusal(str(node), PermissionError(errno.EACCES, "Permission denied"))
    assert isinstance(refused, PortDenied)
    assert "usermod" not in str(refused)
    assert "only its owner may" in str(refused)


def test_what_windows_says_of_a_taken_port_is_a_busy_port() -> None:
    """Rule A4: in words, not as error 13."""
    # The text is that of pyserial 3.5 on Windows (pitfall A4), from memory.
    error = serial.SerialException("could not open port 'COM3': PermissionError(13, 'Access is denied.', None, 5)")
    assert isinstance(refusal("COM3", error), PortBusy)
    error = serial.SerialException("could not open port 'COM9': FileNotFoundError(2, 'The system cannot ...', None, 2)")
    assert isinstance(refusal("COM9", error), PortMissing)


def test_opening_and_closing_leaves_no_descriptor(terminal: Terminal) -> None:
    def descriptors() -> int:
        return len(list(Path("/proc/self/fd").iterdir()))

    port = open_url(terminal.url)
    port.open()
    port.close()
    before = descriptors()
    for _ in range(50):
        port.open()
        port.close()
    second = open_url(terminal.url)
    port.open()
    for _ in range(50):
        with pytest.raises(PortBusy):
            second.open()
    port.close()
    assert descriptors() == before


def test_a_terminal_is_opened_again_though_it_has_no_parity(terminal: Terminal) -> None:
    """Its system refuses settings of which it can change none: so the second opening failed."""
    for _ in range(3):
        port = SerialTransport(terminal.url, LinkSettings(parity="even"))
        port.open()
        port.close()
