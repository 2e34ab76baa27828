"""The class as a server: all houses and all students in one loop of its own.

A student comes to the door with a name, is given a house, and finds it again under the same name. Each house has a
port for each instrument, the next ones after the door's.
"""

from __future__ import annotations

import json
import selectors
import socket
import threading
from collections.abc import Callable, Collection
from dataclasses import dataclass

from drivers.clock import Clock, Hosted
from simulators.classroom.address import LOOPBACK, checked_address
from simulators.classroom.door import Door
from simulators.classroom.sockets import InstrumentPort, listen
from simulators.classroom.station import Station
from simulators.exercise import Exercise
from simulators.instruments.device import Device
from simulators.instruments.scpi_gauge import ScpiGauge, eight_channel_gauge
from simulators.pace import clock_ns, clock_rate, real_seconds

MOST_STUDENTS = 40
MOST_WATCHERS = 40
KEPT_S = 60.0
"""A house is kept so long for a name that never came to its gauge; then it goes to who asks for one."""
WATCH, DRIVE = "Watch", "Drive the fan"
"""The rig files of a shared house."""
TASK_FORMAT = "airseam-task-1"
LONGEST_WAIT_S = 0.02
"""Real seconds: how soon the loop sees that it is to end."""


@dataclass(frozen=True, slots=True)
class Seat:
    """A house as the trainer sees it: who has it, and whether a program is connected."""

    station: Station
    student: str
    connected: bool
    plugged: bool


class ClassServer:
    """Serves one exercise to a class, from `start` or at once, until `close`."""

    def __init__(
        self,
        exercise: Exercise,
        clock: Clock,
        *,
        students: int = 1,
        host: str = LOOPBACK,
        port: int = 0,
        seed: int = 1,
        shared: bool = False,
    ) -> None:
        """Build the houses and open the ports; raises `ValueError` for the address, `OSError` for a port that is taken.

        `shared`: there is one house, and everybody reads its gauge while the trainer has the fan.
        """
        rate = clock_rate(clock)
        if rate is None:
            raise ValueError("a class needs a clock that runs by itself")
        if not 1 <= students <= MOST_STUDENTS:
            raise ValueError(f"students is {students}: 1 to {MOST_STUDENTS} are possible")
        self.exercise, self.shared, self.host = exercise, shared, checked_address(host)
        self._clock, self._rate = clock, rate
        self._due_ns = 0
        self._lock = threading.Lock()
        self._names: dict[str, Station] = {}
        self._asked_ns: dict[Station, int] = {}
        """When a house was given to a name that has not come to its gauge yet."""
        self.stations = tuple(
            Station(number, exercise, seed + number, clock) for number in range(1, (1 if shared else students) + 1)
        )
        self._selector = selectors.DefaultSelector()
        self._ports: dict[Station, dict[str, InstrumentPort]] = {}
        self._open: list[Door | InstrumentPort] = []
        try:
            self.door = Door(listen(self.host, port), self._selector, self._admit, self._task())
            self._open.append(self.door)
            number = port
            for station in self.stations:
                self._ports[station] = {}
                for name, device in station.rig.devices.items():
                    number += 1
                    listener = listen(self.host, number if port else 0)
                    self._ports[station][name] = made = self._instrument(station, name, device, listener)
                    self._open.append(made)
        except OSError:
            self._close_all()
            raise
        self._hosted: Hosted = clock.host(self._pump, "class")

    @property
    def address(self) -> tuple[str, int]:
        """Where students come to: host and port of the door."""
        return self.host, self.door.port

    def seats(self) -> tuple[Seat, ...]:
        """Return the houses as they are."""
        with self._lock:
            seats = []
            for station in self.stations:
                gauge = self._ports[station]["gauge"]
                name = station.student
                if self.shared:
                    name = f"{len(gauge.clients)} watching" if gauge.clients else ""
                seats.append(Seat(station, name, bool(gauge.clients), gauge.plugged))
            return tuple(seats)

    def plug(self, station: Station, plugged: bool) -> None:
        """Pull the cable of the gauge of a house, or put it back."""
        with self._lock:
            self._ports[station]["gauge"].plugged = plugged

    def rig_files(self) -> dict[str, str]:
        """Return a rig file for each house, or one to watch the shared house with and one that drives its fan."""
        if self.shared:
            return {name: self._rig_file(self.stations[0], fan=name != WATCH) for name in (WATCH, DRIVE)}
        return {_house_name(station): self._rig_file(station, fan=True) for station in self.stations}

    def house_at(self, urls: Collection[str]) -> Station | None:
        """Return the house that has an instrument at one of these addresses."""
        for station, ports in self._ports.items():
            if any(self._url(port) in urls for port in ports.values()):
                return station
        return None

    @property
    def error(self) -> BaseException | None:
        """What ended the loop, if it died."""
        return self._hosted.error

    def close(self) -> None:
        """End the class: everybody is sent away, and no port stays open."""
        self._hosted.stop()
        self._close_all()

    def _close_all(self) -> None:
        for item in self._open:
            item.close()
        self._selector.close()

    def _instrument(self, station: Station, name: str, device: Device, listener: socket.socket) -> InstrumentPort:
        fresh: Callable[[], Device] | None = None
        if self.shared and name == "gauge" and isinstance(device, ScpiGauge):
            world, many = station.rig.world, station.rig.many
            fresh = lambda: eight_channel_gauge(world) if many else ScpiGauge(world)  # noqa: E731
        most = MOST_WATCHERS if fresh is not None else 1
        return InstrumentPort(name, device, listener, self._selector, fresh, most)

    def _admit(self, name: str, peer: str) -> str:
        if self.shared:
            return self._rig_file(self.stations[0], fan=False)
        with self._lock:
            station = self._names.get(name.casefold())
            if station is None:
                station = self._free_house()
                self._give(station, name)
                self._asked_ns[station] = self._clock.now_ns()
            for port in self._ports[station].values():
                port.owner = peer
        return self._rig_file(station, fan=True)

    def _free_house(self) -> Station:
        patience_ns = clock_ns(KEPT_S, self._rate)
        for station in self.stations:
            asked_ns = self._asked_ns.get(station)
            if asked_ns is not None and self._clock.now_ns() - asked_ns > patience_ns:
                del self._names[station.student.casefold()]
                station.student = ""
            if not station.student:
                return station
        raise ValueError(f"all {len(self.stations)} houses are taken: ask the trainer for one more")

    def _give(self, station: Station, name: str) -> None:
        station.student = name
        self._names[name.casefold()] = station

    def _task(self) -> str:
        scenario = self.exercise.scenario
        about = {"title": scenario.title, "task": scenario.task.strip(), "minutes": self.exercise.minutes}
        return json.dumps({"format": TASK_FORMAT, **about}, ensure_ascii=False)

    @staticmethod
    def _url(port: InstrumentPort) -> str:
        return "socket://{}:{}".format(*port.place)

    def _rig_file(self, station: Station, *, fan: bool) -> str:
        ports = {name: self._url(port) for name, port in self._ports[station].items()}
        return station.rig.rig_toml(ports, fan=fan)

    def _pump(self, now_ns: int) -> int:
        """Serve everybody once; return when to come back."""
        for key, _ in self._selector.select(self._patience_s(now_ns)):
            key.data(self._clock.now_ns())
        now_ns = self._clock.now_ns()
        self._due_ns = now_ns + clock_ns(LONGEST_WAIT_S, self._rate)
        self._tend(now_ns)
        for station in self.stations:
            station.advance(now_ns)
            self._due_ns = min(self._due_ns, station.rig.world.next_ns)
        self.door.tend(now_ns)
        return now_ns

    def _tend(self, now_ns: int) -> None:
        with self._lock:
            for station, ports in self._ports.items():
                if ports["gauge"].clients and not self.shared:
                    self._asked_ns.pop(station, None)
                    if not station.student:
                        # Who comes with a rig file has said no name.
                        self._give(station, _house_name(station))
                for port in ports.values():
                    if not port.plugged:
                        for client in list(port.clients):
                            port.hang_up(client)
                    due = port.tend(now_ns)
                    if due is not None:
                        self._due_ns = min(self._due_ns, due)

    def _patience_s(self, now_ns: int) -> float:
        return min(real_seconds(self._due_ns - now_ns, self._rate), LONGEST_WAIT_S)


def _house_name(station: Station) -> str:
    return f"House {station.number}"
