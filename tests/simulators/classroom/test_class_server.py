"""A class over TCP: everybody gets a house, finds it again, and cannot spoil that of another."""

from __future__ import annotations

import selectors
import socket
from collections.abc import Callable, Iterator
from contextlib import ExitStack, suppress

import pytest

from acquisition.joining import class_place, class_task, join_class
from acquisition.marking import read_truth
from acquisition.rig import RigSpec
from acquisition.rigfile import read_rig
from analysis.errors import InvalidInput
from drivers.clock import WallClock, seconds
from drivers.openers import Openers
from simulators.classroom import ClassServer, checked_address, door, private_addresses, sockets
from simulators.classroom.door import MOST_WAITING
from simulators.classroom.sockets import KEPT_BYTES, InstrumentPort, listen
from simulators.exercises import load_exercise
from simulators.filetable import InvalidFile

CLOCK = WallClock()
IDENTITY = b"AIRSEAM DEMO,SCPI-GAUGE,SG-0012,1.0\n"


@pytest.fixture(autouse=True)
def short_of_patience(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let nobody wait for long in these tests."""
    monkeypatch.setattr(sockets, "AWAY_S", 0.5)
    monkeypatch.setattr(sockets, "SILENT_S", 1.0)
    monkeypatch.setattr(door, "PATIENCE_S", 1.0)


@pytest.fixture
def school() -> Iterator[Callable[..., ClassServer]]:
    with ExitStack() as stack:

        def opened(name: str = "first-test", students: int = 3, *, shared: bool = False) -> ClassServer:
            server = ClassServer(load_exercise(name), CLOCK, students=students, shared=shared)
            stack.callback(server.close)
            return server

        yield opened


def join(server: ClassServer, name: str) -> RigSpec:
    return join_class("{}:{}".format(*server.address), name, Openers(CLOCK).open, CLOCK)


def connect(spec: RigSpec, name: str = "gauge") -> socket.socket:
    url = next(item.port for item in spec.instruments if item.name == name)
    host, _, port = url.removeprefix("socket://").partition(":")
    return socket.create_connection((host, int(port)), timeout=3.0)


def ask(connection: socket.socket, message: bytes = b"*IDN?\n") -> bytes:
    connection.sendall(message)
    received = b""
    while not received.endswith(b"\n"):
        data = connection.recv(1000)
        if not data:
            break
        received += data
    return received


def flood_for(connection: socket.socket, limit_s: float) -> None:
    """Send as fast as is taken, until the other side has enough or the time is over."""
    end_ns = CLOCK.now_ns() + seconds(limit_s)
    while CLOCK.now_ns() < end_ns:
        with suppress(TimeoutError):
            connection.send(b"READ?\n" * 200 + bytes(range(256)))


def refused(connection: socket.socket) -> bool:
    """Tell whether the other side hung up without a word."""
    with suppress(ConnectionError):
        return connection.recv(10) == b""
    return True


def free_port(count: int) -> int:
    """Return the first of so many ports, one after the other, that nobody has."""
    for first in range(23_000, 60_000, 100):
        with ExitStack() as stack:
            try:
                for port in range(first, first + count):
                    stack.enter_context(listen("127.0.0.1", port))
            except OSError:
                continue
            return first
    raise AssertionError("no free ports")


def wait_for(condition: Callable[[], bool], limit_s: float = 10.0) -> None:
    end_ns = CLOCK.now_ns() + seconds(limit_s)
    while not condition():
        assert CLOCK.now_ns() < end_ns
        CLOCK.wait_until(CLOCK.now_ns() + seconds(0.02))


def test_everybody_gets_a_house_and_finds_it_again(school: Callable[..., ClassServer]) -> None:
    server = school()
    first, second = join(server, "Ada  Example"), join(server, "Ben Example")
    assert first.instruments != second.instruments
    with connect(first, "fan") as fan:
        assert ask(fan, b"FAN:SPEED 0.5;SPEED?\n") == b"0.5000\n"
        assert server.stations[0].rig.world.speed == 0.5
        assert server.stations[1].rig.world.speed == 0.0
    assert join(server, "ada example") == first
    assert [seat.student for seat in server.seats()] == ["Ada Example", "Ben Example", ""]
    join(server, "Cleo Example")
    with pytest.raises(InvalidInput, match="all 3 houses are taken"):
        join(server, "Dan Example")


def test_who_comes_with_a_rig_file_has_the_house_of_that_file(school: Callable[..., ClassServer]) -> None:
    server = school()
    files = {name: read_rig(text) for name, text in server.rig_files().items()}
    assert list(files) == ["House 1", "House 2", "House 3"]
    with connect(files["House 1"]) as gauge:
        assert ask(gauge) == IDENTITY
        wait_for(lambda: server.seats()[0].student == "House 1")
        # Nobody who says a name is sent into it.
        assert join(server, "Ada Example") == files["House 2"]
    assert server.house_at({item.port for item in files["House 3"].instruments}) is server.stations[2]
    assert server.house_at({"socket://127.0.0.1:1"}) is None


def test_names_that_never_come_do_not_keep_the_houses(
    school: Callable[..., ClassServer], monkeypatch: pytest.MonkeyPatch
) -> None:
    server = school(students=2)
    with connect(join(server, "Ada Example")) as gauge:
        assert ask(gauge) == IDENTITY
        join(server, "Nobody")
        with pytest.raises(InvalidInput, match="all 2 houses are taken"):
            join(server, "Ben Example")
        monkeypatch.setattr("simulators.classroom.server.KEPT_S", 0.0)
        join(server, "Ben Example")
        assert [seat.student for seat in server.seats()] == ["Ada Example", "Ben Example"]


def test_the_door_tells_the_task(school: Callable[..., ClassServer]) -> None:
    server = school()
    task = class_task("{}:{}".format(*server.address), Openers(CLOCK).open, CLOCK)
    assert task.title == "The first test"
    assert task.minutes == 30
    assert len(task.task) > 40


def test_a_program_that_was_lost_makes_room_for_the_same_student(school: Callable[..., ClassServer]) -> None:
    server = school()
    spec = join(server, "Ada Example")
    lost = connect(spec)
    assert ask(lost) == IDENTITY
    with connect(spec) as too_early:
        assert too_early.recv(10) == b""
    # Its computer has gone without a word: after a while of silence the place is free.
    CLOCK.wait_until(CLOCK.now_ns() + seconds(1.2))
    with connect(spec) as back:
        assert ask(back) == IDENTITY
        assert lost.recv(10) == b""
    lost.close()


def test_one_house_for_all_is_read_by_all_and_driven_by_none(school: Callable[..., ClassServer]) -> None:
    server = school(shared=True)
    spec = join(server, "Ada Example")
    assert spec.fan == ""
    assert spec == join(server, "Ben Example")
    with connect(spec) as one, connect(spec) as other:
        assert ask(one) == ask(other) == IDENTITY
        one.sendall(b"READ")
        assert ask(other, b"READ?\n").count(b",") == 7
        assert ask(one, b"?\n").count(b",") == 7
        assert server.seats()[0].student == "2 watching"
    files = server.rig_files()
    assert 'fan = "fan"' in files["Drive the fan"]
    assert read_rig(files["Watch"]) == spec


def test_hostile_clients_harm_neither_their_house_nor_the_others(school: Callable[..., ClassServer]) -> None:
    server = school()
    victim, other = join(server, "Ada Example"), join(server, "Ben Example")
    place = server.address
    with ExitStack() as stack:
        # Half-open at the door, garbage at the door, garbage and a flood at the instruments, and one who never reads.
        idle = [stack.enter_context(socket.create_connection(place, timeout=3.0)) for _ in range(2 * MOST_WAITING)]
        assert join(server, "Ada Example") == victim
        for junk in (bytes(range(256)) * 4, b"\x00" * 500, b"JOIN \xff\xfe\n", b"GET / HTTP/1.1\r\n\r\n"):
            with socket.create_connection(place, timeout=3.0) as bad:
                bad.sendall(junk)
        flood = stack.enter_context(connect(other))
        flood.settimeout(0.2)
        with pytest.raises(OSError, match=r"reset|Broken|aborted|closed"):
            flood_for(flood, 20.0)
        # Who comes back at once to go on with it finds the port shut for a moment.
        with connect(other) as again:
            assert refused(again)
        gauge, fan = stack.enter_context(connect(victim)), stack.enter_context(connect(victim, "fan"))
        late_ms = []
        for _ in range(40):
            before_ns = CLOCK.now_ns()
            assert ask(gauge, b"READ?\n").count(b",") == 7
            late_ms.append((CLOCK.now_ns() - before_ns) / 1e6)
        # Garbage at one's own fan neither turns it nor ends it.
        fan.sendall(bytes(range(256)) + b"\nFAN:SPEED 7\nFAN:SPEED nan\n*CLS\n")
        assert ask(fan, b"FAN:SPEED?\n") == b"0.0000\n"
        assert sorted(late_ms)[len(late_ms) // 2] < 500.0
        assert len(idle) == 2 * MOST_WAITING
    CLOCK.wait_until(CLOCK.now_ns() + seconds(0.5))
    with connect(other) as again:
        assert ask(again).endswith(IDENTITY)
    assert join(server, "Ada Example") == victim
    assert server.error is None


class Chatterbox:
    """An instrument that has more to say than anybody takes."""

    serial = ""

    def receive(self, data: bytes, now_ns: int) -> None:
        """Hear nothing."""

    def send(self, now_ns: int) -> bytes:
        """Say much."""
        return b"x" * 65_535 + b"\n"

    def next_ns(self) -> int | None:
        """Go on."""
        return 0


@pytest.fixture
def chatter() -> Iterator[tuple[InstrumentPort, selectors.BaseSelector]]:
    with selectors.DefaultSelector() as selector:
        port = InstrumentPort("gauge", Chatterbox(), listen("127.0.0.1", 0), selector, Chatterbox, most=2)
        yield port, selector
        port.close()


def test_who_reads_slowly_is_not_waited_for_and_fills_no_memory(
    chatter: tuple[InstrumentPort, selectors.BaseSelector],
) -> None:
    port, selector = chatter
    with socket.create_connection(port.place), socket.create_connection(port.place, timeout=3.0) as quick:
        while len(port.clients) < 2:
            for key, _ in selector.select(1.0):
                key.data(CLOCK.now_ns())
        read = 0
        for _ in range(4000):
            port.tend(CLOCK.now_ns())
            read += len(quick.recv(1_000_000))
        slow, other = port.clients
        assert len(slow.unsent) == KEPT_BYTES
        assert len(other.unsent) < KEPT_BYTES
        assert read > 4_000_000


def test_nobody_from_elsewhere_keeps_a_student_away_from_the_house(
    chatter: tuple[InstrumentPort, selectors.BaseSelector],
) -> None:
    port, selector = chatter
    port._most = 1
    with socket.create_connection(port.place):
        selector.select(1.0)[0][0].data(CLOCK.now_ns())
        (usurper,) = port.clients
        usurper.peer = "10.0.0.66"
        port.owner = "127.0.0.1"
        with socket.create_connection(port.place):
            selector.select(1.0)[0][0].data(CLOCK.now_ns())
            (student,) = port.clients
            assert student.peer == "127.0.0.1"


def test_single_bytes_are_no_way_round_the_budget(chatter: tuple[InstrumentPort, selectors.BaseSelector]) -> None:
    port, selector = chatter
    now_ns, drops = CLOCK.now_ns(), 0
    with socket.create_connection(port.place) as drip:
        while not any(client.resting for client in port.clients):
            drip.send(b"R")
            drops += 1
            for key, _ in selector.select(0.1):
                key.data(now_ns)
        assert drops < 300


def test_the_door_answers_who_does_not_know_it_and_sends_away_who_takes_long(
    school: Callable[..., ClassServer],
) -> None:
    server = school()
    for said in (b"HELLO\n", b"JOIN \n", b"JOIN " + b"x" * 80 + b"\n"):
        with socket.create_connection(server.address, timeout=3.0) as guest:
            assert ask(guest, said).startswith(b"NO a line JOIN NAME is needed")
    with socket.create_connection(server.address, timeout=8.0) as slow:
        slow.sendall(b"JO")
        assert slow.recv(10) == b""


def test_a_pulled_cable_is_gone_until_it_is_put_back(school: Callable[..., ClassServer]) -> None:
    server = school()
    spec = join(server, "Ada Example")
    with connect(spec) as gauge:
        assert ask(gauge) == IDENTITY
        server.plug(server.stations[0], False)
        assert gauge.recv(10) == b""
    server.plug(server.stations[0], True)
    with connect(spec) as gauge:
        assert ask(gauge) == IDENTITY


def test_what_the_trainer_throws_is_in_the_truth_of_that_house_alone(school: Callable[..., ClassServer]) -> None:
    server = school()
    one, other = server.stations[:2]
    one.throw({"what": "seal-off", "times": 3.0, "leaks": ["service entries, west"]}, "The tape came off.")
    wait_for(lambda: one.rig.true_q_m3_h(50.0, "depressurize") > 600.0)
    truth = read_truth(one.truth())
    assert [event.says for event in truth.events] == ["The tape came off."]
    # The fan has not turned yet: it was so from the beginning.
    assert len(truth.spans) == 1
    assert truth.spans[0].since_s == 0.0
    assert max(truth.spans[0].flow50_m3_h.values()) == pytest.approx(516.0 * (1 + 0.12 * 2), rel=1e-6)
    assert read_truth(other.truth()).events == ()
    one.mend({"what": "seal-off", "times": 3.0, "leaks": ["service entries, west"]})
    wait_for(lambda: one.rig.true_q_m3_h(50.0, "depressurize") < 517.0)
    with pytest.raises(InvalidFile, match="leaks of this house are needed"):
        one.throw({"what": "seal-off", "times": 3.0, "leaks": ["attic"]}, "")
    with pytest.raises(InvalidFile, match="switch"):
        one.throw({"what": "unplugged", "instrument": "fan"}, "")


def test_a_house_stands_still_and_goes_faster(school: Callable[..., ClassServer]) -> None:
    (station, *_) = school().stations
    station.go_at(0.0)
    stood_s = station.rig.plant.time_s
    CLOCK.wait_until(CLOCK.now_ns() + seconds(0.5))
    assert station.rig.plant.time_s == stood_s
    station.go_at(60.0)
    wait_for(lambda: station.rig.plant.time_s > stood_s + 30.0, 5.0)


def test_only_private_addresses_are_listened_at() -> None:
    assert private_addresses()[0] == "127.0.0.1"
    assert checked_address("192.168.1.20") == "192.168.1.20"
    for host in ("0.0.0.0", "8.8.8.8", "255.255.255.255", "localhost", "::1", ""):
        with pytest.raises(ValueError, match="private address"):
            checked_address(host)


@pytest.mark.parametrize("text", ["", "4000", "host:", "host:0", "host:70000", "a b:4000", "http://x:4000", "host:x"])
def test_host_and_port_are_checked_as_they_are_typed(text: str) -> None:
    with pytest.raises(InvalidInput):
        class_place(text)


def test_who_types_the_wrong_place_is_told_so() -> None:
    with pytest.raises(InvalidInput, match="nobody answers there"):
        join_class("127.0.0.1:1", "Ada Example", Openers(CLOCK).open, CLOCK)
    with pytest.raises(InvalidInput, match="your name"):
        join_class("127.0.0.1:1", " ", Openers(CLOCK).open, CLOCK)
