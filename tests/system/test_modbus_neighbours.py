"""Modbus with the library on the other side: its client reads our instruments, our driver reads its server."""

from __future__ import annotations

import asyncio
import struct
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from pymodbus import FramerType
from pymodbus.client import ModbusSerialClient, ModbusTcpClient
from pymodbus.datastore import ModbusDeviceContext, ModbusSequentialDataBlock, ModbusServerContext
from pymodbus.exceptions import ModbusIOException
from pymodbus.server import ModbusTcpServer

from acquisition.testfile import load_stored_test
from drivers.clock import WallClock, seconds
from drivers.device import Drive, Gauge, connect
from drivers.instrument import LinkState
from drivers.profile import read_profile
from drivers.serialport import open_url
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from simulators.server import serve_pty, serve_tcp
from tests.drivers.test_modbus import text_of
from tests.system.houses import program, served_house


def test_the_librarys_client_reads_and_steers_our_simulated_instruments() -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, WallClock(), protocol="modbus")
    server = serve_tcp(rig)
    try:
        for name, url in server.items():
            host, port = url.removeprefix("socket://").rsplit(":", 1)
            client: Any = ModbusTcpClient(host, port=int(port), framer=FramerType.RTU, timeout=2)
            assert client.connect()
            if name == "gauge":
                registers = client.read_input_registers(0, count=10, device_id=1).registers
                values = struct.unpack(">5f", b"".join(word.to_bytes(2, "big") for word in registers))
                # Indoor temperature and air pressure of the house file.
                assert values[2] == pytest.approx(21.0, abs=0.5)
                assert values[4] == pytest.approx(101_325.0, abs=100.0)
                assert client.read_input_registers(99, count=1, device_id=1).isError()
            else:
                assert client.write_register(0, 400, device_id=1).registers == [400]
                assert client.read_holding_registers(0, count=1, device_id=1).registers == [400]
                assert client.write_register(0, 1001, device_id=1).isError()
            client.close()
    finally:
        server.close()


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no pseudo-terminals")
def test_the_librarys_client_reads_and_steers_them_over_a_serial_line_too(tmp_path: Path) -> None:
    rig = SimulatedRig(load_house("mill-row"), 1, WallClock(), protocol="modbus")
    server = serve_pty(rig, tmp_path)
    try:
        client: Any = ModbusSerialClient(server["gauge"], baudrate=19200, timeout=0.5, retries=0)
        assert client.connect()
        registers = client.read_input_registers(0, count=10, device_id=1).registers
        values = struct.unpack(">5f", b"".join(word.to_bytes(2, "big") for word in registers))
        assert values[2] == pytest.approx(21.0, abs=0.5)
        # Nobody of another number answers, and the one that is there still does.
        with pytest.raises(ModbusIOException):
            client.read_input_registers(0, count=1, device_id=7)
        assert not client.read_input_registers(0, count=1, device_id=1).isError()
        client.close()
        client = ModbusSerialClient(server["fan"], baudrate=19200, timeout=2)
        assert client.connect()
        assert client.write_register(0, 250, device_id=1).registers == [250]
        assert client.read_holding_registers(0, count=1, device_id=1).registers == [250]
        client.close()
    finally:
        server.close()


@contextmanager
def library_server(registers: list[int]) -> Iterator[int]:
    """Serve input and holding registers by the library on a free port of the loopback."""
    ready = threading.Event()
    found: list[tuple[int, asyncio.AbstractEventLoop, asyncio.Event]] = []

    async def serve() -> None:
        block: Any = ModbusSequentialDataBlock
        holding = block(1, [0] * 200 + [0x0001, 0x0002] + [0] * 50)
        device = ModbusDeviceContext(ir=block(1, registers), hr=holding)
        server = ModbusTcpServer(ModbusServerContext(devices=device, single=True), address=("127.0.0.1", 0))
        await server.serve_forever(background=True)
        stop = asyncio.Event()
        listening: Any = server.transport
        found.append((listening.sockets[0].getsockname()[1], asyncio.get_running_loop(), stop))
        ready.set()
        await stop.wait()
        await server.shutdown()  # type: ignore[no-untyped-call]  # the library's

    thread = threading.Thread(target=lambda: asyncio.run(serve()))
    thread.start()
    try:
        assert ready.wait(10.0)
        yield found[0][0]
    finally:
        _, loop, stop = found[0]
        loop.call_soon_threadsafe(stop.set)
        thread.join()


def test_our_driver_reads_the_librarys_server() -> None:
    text = text_of("modbus-pressure").replace('wire = "rtu"', 'wire = "tcp"')
    clock = WallClock()
    # -50.1 Pa as a signed register in tenths.
    with library_server([0x10000 - 501] * 4) as port:
        gauge = connect("gauge", read_profile(text, "own.toml"), open_url(f"socket://127.0.0.1:{port}"), clock)
        assert isinstance(gauge, Gauge)
        gauge.start()
        try:
            values: list[float] = []
            end_ns = clock.now_ns() + seconds(8.0)
            while len(values) < 5 and clock.now_ns() < end_ns:
                clock.wait_until(clock.now_ns() + seconds(0.1))
                values += [reading.value for reading in gauge.take()]
            assert gauge.status().state is LinkState.LINKED, gauge.status()
            assert gauge.status().identity == "0001 0002"
            assert values[:5] == pytest.approx([-50.1] * 5)
        finally:
            gauge.close()


def test_our_driver_steers_the_librarys_server_and_leaves_it_at_rest() -> None:
    text = text_of("modbus-voltage-fan").replace('wire = "rtu"', 'wire = "tcp"')
    clock = WallClock()
    with library_server([0] * 4) as port:
        drive = connect("fan", read_profile(text, "own.toml"), open_url(f"socket://127.0.0.1:{port}"), clock)
        assert isinstance(drive, Drive)
        drive.start()
        end_ns = clock.now_ns() + seconds(8.0)
        while drive.speed_readback() != 0.42 and clock.now_ns() < end_ns:
            drive.set(0.42)
            clock.wait_until(clock.now_ns() + seconds(0.2))
        assert drive.speed_readback() == pytest.approx(0.42)
        drive.close()
        assert drive.closed_safely
        client: Any = ModbusTcpClient("127.0.0.1", port=port, timeout=2)
        assert client.connect()
        assert client.read_holding_registers(0, count=1).registers == [0]
        client.close()


def test_a_whole_test_runs_over_modbus_on_terminals(tmp_path_factory: pytest.TempPathFactory) -> None:
    folder = tmp_path_factory.mktemp("modbus")
    with served_house(folder, protocol="modbus") as house:
        with program("test", "--rig", house.rig_file, "--job", house.job) as tester:
            said, complaints = tester.communicate(timeout=90)
        assert tester.returncode == 0, complaints
        assert "Checks, depressurize" in said
    stored = load_stored_test(house.job, WallClock())
    best = stored.result().best
    assert best is not None
    # The house's own truth: n50 1.72 1/h at 300 m3.
    assert best.q50_m3_h.value == pytest.approx(516.0, rel=0.015)
