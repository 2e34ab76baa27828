"""Simulated instruments on a Modbus line, RTU or TCP: registers instead of words. Frames are those of pymodbus."""

from __future__ import annotations

import struct
from collections.abc import Callable

from pymodbus.exceptions import ModbusException
from pymodbus.framer import FramerBase, FramerRTU, FramerSocket
from pymodbus.pdu import DecodePDU, ExceptionResponse, ModbusPDU
from pymodbus.pdu.mei_message import ReadDeviceInformationRequest, ReadDeviceInformationResponse
from pymodbus.pdu.register_message import (
    ReadHoldingRegistersRequest,
    ReadHoldingRegistersResponse,
    ReadInputRegistersRequest,
    ReadInputRegistersResponse,
    WriteSingleRegisterRequest,
    WriteSingleRegisterResponse,
)

from drivers.clock import seconds
from simulators.instruments.replies import Replies
from simulators.world import World

LONGEST_FRAME = 260
FRAME_GAP_NS = seconds(0.05)
"""Silence after which what was received so far is no frame."""
ILLEGAL_FUNCTION, ILLEGAL_ADDRESS, ILLEGAL_VALUE = 1, 2, 3
UNIT = 1


class Refused(Exception):
    """A request that is answered with an exception code."""

    def __init__(self, code: int) -> None:
        """Take the code."""
        super().__init__(f"Modbus exception {code}")
        self.code = code


class ModbusInstrument:
    """A message loop around registers. Requests to other units are not answered."""

    def __init__(self, world: World, product: str, serial: str, wire: str = "rtu") -> None:
        """Take the name that it gives as its product and serial number."""
        self._world = world
        self.serial = serial
        self._identity = {0: b"AIRSEAM DEMO", 1: f"{product} {serial}".encode("ascii"), 2: b"1.0"}
        frames = FramerRTU if wire == "rtu" else FramerSocket
        self._frames: FramerBase = frames(DecodePDU(True))
        self._pdus = DecodePDU(True)
        self._received = bytearray()
        self._received_ns = 0
        self._replies = Replies(world)

    def receive(self, data: bytes, now_ns: int) -> None:
        """Take bytes; answer the requests that they complete."""
        with self._world.lock:
            self._world.advance(now_ns)
            if now_ns - self._received_ns > FRAME_GAP_NS:
                self._received.clear()
            self._received_ns = now_ns
            self._received += data
            while self._received:
                used, unit, transaction, payload = self._frames.decode(bytes(self._received))
                if used == 0:
                    break
                del self._received[:used]
                if payload and unit == UNIT:
                    self._answer(payload, transaction, now_ns)
            if len(self._received) > LONGEST_FRAME:
                self._received.clear()

    def send(self, now_ns: int) -> bytes:
        """Return the replies whose time has come."""
        return self._replies.due(now_ns)

    def next_ns(self) -> int | None:
        """Return when the next reply goes out."""
        return self._replies.next_ns()

    def heard(self, now_ns: int) -> None:
        """Take notice of a request that was understood."""

    def input_registers(self) -> list[int]:
        """Return all input registers."""
        return []

    def holding_registers(self) -> dict[int, int]:
        """Return the holding registers by their numbers."""
        return {}

    def write(self, register: int, value: int) -> int:
        """Take a value into a register; return what was taken over. Raises `Refused`."""
        raise Refused(ILLEGAL_ADDRESS)

    def _answer(self, payload: bytes, transaction: int, now_ns: int) -> None:
        try:
            request = self._pdus.decode(payload)
        except (ModbusException, struct.error, IndexError, ValueError):
            return
        if request is None:
            return
        self.heard(now_ns)
        try:
            reply = self._reply(request)
        except Refused as refused:
            reply = ExceptionResponse(request.function_code, refused.code)
        body = reply.function_code.to_bytes(1, "big") + reply.encode()
        self._replies.put(self._frames.encode(body, UNIT, transaction), now_ns)

    def _reply(self, request: ModbusPDU) -> ModbusPDU:
        match request:
            case ReadDeviceInformationRequest():
                return ReadDeviceInformationResponse(read_code=1, information=dict(self._identity))
            case ReadInputRegistersRequest():
                found = _taken(dict(enumerate(self.input_registers())), request.address, request.count)
                return ReadInputRegistersResponse(registers=found)
            case ReadHoldingRegistersRequest():
                found = _taken(self.holding_registers(), request.address, request.count)
                return ReadHoldingRegistersResponse(registers=found)
            case WriteSingleRegisterRequest():
                taken = self.write(request.address, request.registers[0])
                return WriteSingleRegisterResponse(address=request.address, registers=[taken])
            case _:
                raise Refused(ILLEGAL_FUNCTION)


def _taken(registers: dict[int, int], first: int, count: int) -> list[int]:
    try:
        return [registers[number] for number in range(first, first + count)]
    except KeyError as error:
        raise Refused(ILLEGAL_ADDRESS) from error


class ModbusGauge(ModbusInstrument):
    """Input registers 0 to 9: p1, p2, t1, t2, b1 as floats, high word first. Writing 1 to register 100 zeroes."""

    CHANNELS = ("p1", "p2", "t1", "t2", "b1")
    ZERO = 100

    def __init__(self, world: World, wire: str = "rtu") -> None:
        """Read the gauge of the world's plant."""
        super().__init__(world, "MODBUS-GAUGE", "MG-0021", wire)

    def input_registers(self) -> list[int]:
        """Return what the gauge shows."""
        raw = b"".join(struct.pack(">f", self._world.reading(name)) for name in self.CHANNELS)
        return [int.from_bytes(raw[at : at + 2], "big") for at in range(0, len(raw), 2)]

    def write(self, register: int, value: int) -> int:
        """Zero the pressures."""
        if register != self.ZERO:
            raise Refused(ILLEGAL_ADDRESS)
        if value != 1:
            raise Refused(ILLEGAL_VALUE)
        self._world.plant.gauge.zero()
        return value


FULL = 1000
DIRECTIONS = {0: -1, 1: 1}
"""0 blows air out of the house (depressurizes), 1 into it."""


class ModbusFan(ModbusInstrument):
    """Holding registers: 0 speed in thousandths, 1 direction (0 out, 1 in), 2 time-out in tenths of a second."""

    def __init__(self, world: World, wire: str = "rtu") -> None:
        """Stand still, blowing out."""
        super().__init__(world, "MODBUS-FAN", "MF-0004", wire)
        self._timeout = 20
        self._heard_ns: int | None = None
        self._writes: dict[int, Callable[[int], None]] = {0: self._speed, 1: self._direction, 2: self._watch}
        world.attach(self)

    def heard(self, now_ns: int) -> None:
        """Restart the time that may pass without a request."""
        self._heard_ns = now_ns

    def follow(self, now_ns: int) -> None:
        """Stop when nothing was heard for too long."""
        if self._heard_ns is None or now_ns - self._heard_ns >= seconds(self._timeout / 10.0):
            self._world.speed = 0.0

    def holding_registers(self) -> dict[int, int]:
        """Return speed, direction and time-out."""
        way = next(number for number, sign in DIRECTIONS.items() if sign == self._world.direction)
        return {0: round(self._world.speed * FULL), 1: way, 2: self._timeout}

    def write(self, register: int, value: int) -> int:
        """Take a value over."""
        taking = self._writes.get(register)
        if taking is None:
            raise Refused(ILLEGAL_ADDRESS)
        taking(value)
        return self.holding_registers()[register]

    def _speed(self, value: int) -> None:
        if value > FULL:
            raise Refused(ILLEGAL_VALUE)
        self._world.speed = value / FULL

    def _direction(self, value: int) -> None:
        if value not in DIRECTIONS:
            raise Refused(ILLEGAL_VALUE)
        if DIRECTIONS[value] == self._world.direction:
            return
        if self._world.speed > 0.0 or not self._world.plant.motor.at_rest:
            raise Refused(ILLEGAL_VALUE)
        self._world.direction = DIRECTIONS[value]

    def _watch(self, value: int) -> None:
        if not 1 <= value <= 600:
            raise Refused(ILLEGAL_VALUE)
        self._timeout = value
