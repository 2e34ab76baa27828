"""The simulated rig: a house with a gauge and a fan in it, ready to be opened like any other rig."""

from __future__ import annotations

import json
from collections.abc import Mapping

from drivers.clock import Clock, ScaledClock
from drivers.transport import Transport
from simulators.element import HIGHEST_PA, LOWEST_PA, RANGES
from simulators.gauge import MOST_ZONES
from simulators.hand import Hand
from simulators.house import House
from simulators.instruments.device import Device
from simulators.instruments.line_gauge import LineGauge
from simulators.instruments.modbus import ModbusFan, ModbusGauge
from simulators.instruments.scpi_fan import ScpiFan
from simulators.instruments.scpi_gauge import ScpiGauge, eight_channel_gauge, second_gauge
from simulators.memory import MemoryPort, MemoryTransport
from simulators.plant import Action, Event, Plant
from simulators.rigging import Rigging, TapPlace
from simulators.world import World

SCHEME = "sim:"
PROTOCOLS = ("scpi", "lines", "modbus")
GAUGE_ROLES = {
    "p1": "envelope-pressure",
    "p2": "flow-element-pressure",
    "t1": "indoor-temperature",
    "t2": "outdoor-temperature",
    "b1": "barometric-pressure",
}
TAP_ROLES = {"p3": "envelope-pressure-2", "p4": "envelope-pressure-3", "p5": "envelope-pressure-4"}
FIRST_ZONE_INPUT = 6
ZONE_ROLE = "zone-pressure-{}"
LINE_GAUGE_CHANNELS = ("p1", "p2", "t1", "t2")
MANY_CHANNELS = "scpi-gauge-8"
PROFILES = {"scpi": "scpi-gauge", "lines": "line-gauge", "modbus": "modbus-gauge"}
FAN_PROFILES = {"modbus": "modbus-ec-fan"}
ONE_TAP_PROTOCOLS = ("lines", "modbus")
DIRECTIONS = {"depressurize": -1, "pressurize": 1}


class SimulatedRig:
    """One house, one gauge, one fan drive with a shutter.

    `gauge` speaks SCPI, lines or Modbus, `fan` SCPI or Modbus; instead of a drive a person may turn it: `by_hand`.
    With several outdoor taps, or zones that have a hose, the gauge is the one with eight pressure inputs.
    """

    def __init__(
        self,
        house: House,
        seed: int,
        clock: Clock,
        *,
        protocol: str = "scpi",
        wind_m_s: float | None = None,
        taps: int = 1,
        tap: str = TapPlace.GROUND,
        rigging: Rigging | None = None,
        fans: int = 1,
        by_hand: bool = False,
    ) -> None:
        """Put the house on a clock.

        `wind_m_s` replaces the wind of the house file. `taps` (1 to 4) and `tap` ("facade" or "ground") say where the
        outdoor hoses end, `fans` (1 to 4) how many there are; `rigging` says it all, and then stands for them. Zones
        of the house have a hose when the gauge has inputs left for them. Unknown protocol or place, or more taps than
        the gauge has: `ValueError`.
        """
        self.house = house
        self.clock = clock
        self.protocol = protocol
        self.wind_m_s = house.climate.wind_m_s if wind_m_s is None else wind_m_s
        self.rigging = _set_up(house, protocol, taps, tap, fans) if rigging is None else rigging
        if protocol not in PROTOCOLS:
            raise ValueError(f"protocol is {protocol!r}: one of these is needed: {', '.join(PROTOCOLS)}")
        if protocol in ONE_TAP_PROTOCOLS and self.many:
            allowed = 'that gauge has one envelope pressure; several taps need "scpi"'
            raise ValueError(f'protocol is "{protocol}": {allowed}')
        self.plant = Plant([house], seed, self.wind_m_s, self.rigging)
        self.world = World(self.plant, clock.now_ns())
        self.gauge: ScpiGauge | LineGauge | ModbusGauge = self._new_gauge()
        self.devices: dict[str, Device] = {"gauge": self.gauge}
        self.hand = Hand(self.world, seed) if by_hand else None
        if self.hand is None:
            self.fan: ScpiFan | ModbusFan = ModbusFan(self.world) if protocol == "modbus" else ScpiFan(self.world)
            self.devices["fan"] = self.fan
        if self.rigging.fans > 1:
            self.second_gauge = second_gauge(self.world)
            self.devices["gauge-2"] = self.second_gauge
        self.further_fans = {f"fan-{seat + 1}": ScpiFan(self.world, seat) for seat in range(1, self.rigging.fans)}
        self.devices |= self.further_fans
        self.ports = {SCHEME + name: MemoryPort(SCHEME + name, device, clock) for name, device in self.devices.items()}

    @property
    def many(self) -> bool:
        """Whether the gauge is the one with eight pressure inputs."""
        return self.rigging.taps > 1 or self.rigging.zones > 0

    def _new_gauge(self) -> ScpiGauge | LineGauge | ModbusGauge:
        if self.protocol == "lines":
            return LineGauge(self.world)
        if self.protocol == "modbus":
            return ModbusGauge(self.world)
        return eight_channel_gauge(self.world) if self.many else ScpiGauge(self.world)

    def open(self, url: str) -> Transport:
        """Return a transport to `sim:gauge` or `sim:fan`, not yet opened; any other address: `ValueError`."""
        if url not in self.ports:
            raise ValueError(f"port is {url!r}: this simulated rig has {', '.join(self.ports)}")
        return MemoryTransport(self.ports[url])

    @property
    def own_ports(self) -> dict[str, str]:
        """The addresses for `open`, by instrument."""
        return {name: SCHEME + name for name in self.devices}

    def rig_toml(self, ports: Mapping[str, str], *, fan: bool = True) -> str:
        """Return a rig file with the instruments `gauge` and `fan` at these addresses; `fan` false leaves it out.

        The rig runs as fast as its clock: on a scaled clock the file says by how much.
        """
        lines = ['format = "airseam-rig-1"', f"name = {_quoted(f'Demo rig on {self.house.name}')}", "simulated = true"]
        if isinstance(self.clock, ScaledClock):
            lines.append(f"time_factor = {self.clock.factor!r}")
        driven = self.hand is None and fan
        lines += ["shutter = true"] if driven else []
        lines += [f"fitted = {_quoted(self.house.fitted)}"]
        further = self.further_fans if fan else {}
        names = ", ".join(_quoted(name) for name in ("fan", *further))
        lines += [] if not driven else [f"fans = [{names}]" if further else 'fan = "fan"']
        lines.append("")
        profile = MANY_CHANNELS if self.many else PROFILES[self.protocol]
        lines += _instrument("gauge", profile, ports["gauge"], self.gauge.serial)
        lines.append("[instrument.channels]")
        for channel, role in GAUGE_ROLES.items():
            if self.protocol != "lines" or channel in LINE_GAUGE_CHANNELS:
                lines.append(f"{channel} = {_quoted(role)}")
        for channel, role in list(TAP_ROLES.items())[: self.rigging.taps - 1]:
            lines.append(f"{channel} = {_quoted(role)}")
        for at in range(self.rigging.zones):
            lines.append(f"p{FIRST_ZONE_INPUT + at} = {_quoted(ZONE_ROLE.format(at + 1))}")
        if driven:
            profile = FAN_PROFILES.get(self.protocol, "scpi-fan")
            lines += ["", *_instrument("fan", profile, ports["fan"], self.fan.serial)]
        if further:
            lines += ["", *_instrument("gauge-2", PROFILES["scpi"], ports["gauge-2"], self.second_gauge.serial)]
            lines.append("[instrument.channels]")
            lines += [f'p{at} = "flow-element-pressure-{at + 1}"' for at in range(1, len(further) + 1)]
        for name, device in further.items():
            lines += ["", *_instrument(name, "scpi-fan", ports[name], device.serial)]
        for item in RANGES:
            lines += ["", "[[range]]", f"name = {_quoted(item.name)}"]
            lines.append(f"coefficient_m3_h_pa_n = {3600.0 * item.coefficient:.8g}")
            lines.append(f"exponent = {item.exponent!r}")
            lines += [f"min_pa = {LOWEST_PA!r}", f"max_pa = {HIGHEST_PA!r}", "reference_density_kg_m3 = 1.2041"]
        return "\n".join(lines) + "\n"

    def true_q_m3_h(self, pa: float, direction: str) -> float:
        """Return the true leakage flow at a pressure (its size) in reference air, without wind and stack."""
        if direction not in DIRECTIONS:
            raise ValueError(f"direction is {direction!r}: one of these is needed: {', '.join(DIRECTIONS)}")
        return float(self.plant.true_flow_m3_h(DIRECTIONS[direction] * abs(pa))[0])

    def true_n50(self) -> float:
        """Return the true air change rate at 50 Pa in 1/h, mean of both directions."""
        flows = [self.true_q_m3_h(50.0, direction) for direction in DIRECTIONS]
        return sum(flows) / len(flows) / self.house.volume_m3

    def happen(self, action: Action, *, after_s: float = 0.0, over_s: float = 0.0) -> None:
        """Let one of `simulators.faults` happen some time from now, taking so long; may be called from any thread."""
        with self.world.lock:
            start_s = self.plant.time_s + after_s
            self.plant.schedule(Event(start_s, start_s + over_s, action))

    def fit(self, fan: int, name: str) -> None:
        """Fit another flow range on a fan, counted from 0, as somebody does who is told; unknown: `ValueError`."""
        with self.world.lock:
            (self.plant.element, *self.plant.further_elements)[fan].fit([name])

    def air(self) -> dict[str, float]:
        """Return what somebody would write down about air and weather, humidities 0..1."""
        climate = self.house.climate
        return {
            "indoor_c": climate.indoor_c,
            "outdoor_c": climate.outdoor_c,
            "indoor_rh": climate.indoor_rh,
            "outdoor_rh": climate.outdoor_rh,
            "barometric_pa": climate.barometric_pa,
            "wind_m_s": self.wind_m_s,
        }

    def building(self) -> dict[str, str | float]:
        """Return what somebody would write down about the building."""
        house = self.house
        return {
            "name": house.name,
            "volume_m3": house.volume_m3,
            "envelope_area_m2": house.envelope_area_m2,
            "floor_area_m2": house.floor_area_m2,
            "height_m": house.height_m,
            "altitude_m": house.altitude_m,
        }


def _set_up(house: House, protocol: str, taps: int, tap: str, fans: int) -> Rigging:
    """Return the usual set-up; raises `ValueError` for a place that there is not."""
    places = [place.value for place in TapPlace]
    if tap not in places:
        raise ValueError(f"tap is {tap!r}: one of these is needed: {', '.join(places)}")
    zones = 0 if protocol in ONE_TAP_PROTOCOLS else min(len(house.zones), MOST_ZONES)
    return Rigging(taps=taps, tap=TapPlace(tap), zones=zones, fans=fans)


def _instrument(name: str, profile: str, port: str, serial: str) -> list[str]:
    return [
        "[[instrument]]",
        f"name = {_quoted(name)}",
        f"profile = {_quoted(profile)}",
        f"port = {_quoted(port)}",
        f"serial = {_quoted(serial)}",
    ]


def _quoted(text: str) -> str:
    """Return a TOML basic string; what JSON writes is one."""
    return json.dumps(text, ensure_ascii=False)
