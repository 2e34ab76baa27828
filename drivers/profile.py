"""Instrument profiles: everything that the program knows of an instrument, as data.

A profile is a TOML file. Every mistake in it is answered with file, line, key and what is allowed. Units become SI
factors here, so that nothing behind this module knows another unit.
"""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from importlib import resources
from pathlib import Path
from typing import Literal

from drivers.errors import ProfileError
from drivers.profiletable import Table

FORMAT = "airseam-profile-1"

Kind = Literal["gauge", "drive"]
Protocol = Literal["lines", "scpi"]

UNITS: dict[str, dict[str, tuple[float, float]]] = {
    # factor and offset to SI; the factors are exact or conventional (ISO 80000-4: 1 inH2O at 4 degC 249.08891 Pa)
    "pressure": {"Pa": (1.0, 0.0), "hPa": (100.0, 0.0), "kPa": (1000.0, 0.0), "inH2O": (249.08891, 0.0)},
    "temperature": {"degC": (1.0, 0.0), "degF": (5.0 / 9.0, -160.0 / 9.0), "K": (1.0, -273.15)},
    "flow": {"m3/h": (1.0, 0.0), "L/s": (3.6, 0.0), "m3/s": (3600.0, 0.0), "cfm": (1.69901082, 0.0)},
    "humidity": {"percent": (0.01, 0.0), "fraction": (1.0, 0.0)},
    "speed": {"percent": (0.01, 0.0), "fraction": (1.0, 0.0)},
}
"""Units by quantity. SI here means Pa, degrees Celsius, m3/h and fractions, as everywhere in the program."""


@dataclass(frozen=True, slots=True)
class LinkSettings:
    """How the port is opened, and how long the instrument needs afterwards."""

    baud: int = 9600
    data_bits: int = 8
    parity: str = "none"
    stop_bits: int = 1
    dtr: bool = True
    rts: bool = True
    settle_s: float = 0.0


@dataclass(frozen=True, slots=True)
class Identity:
    """What is asked to learn who is there; `pattern` has a group `serial`."""

    query: bytes
    pattern: re.Pattern[str]
    timeout_s: float


@dataclass(frozen=True, slots=True)
class ChannelSpec:
    """One channel; limits, resolution and accuracy in SI units. `value_si = raw * factor + offset`."""

    name: str
    quantity: str
    unit: str
    factor: float
    offset: float
    low: float
    high: float
    resolution: float
    accuracy: float
    accuracy_percent: float


@dataclass(frozen=True, slots=True)
class Poll:
    """A polled gauge: what is asked, how often, and which channel is in which place of the reply."""

    query: bytes
    columns: tuple[str, ...]
    rate_hz: float
    timeout_s: float


@dataclass(frozen=True, slots=True)
class Lines:
    """A free-running gauge: lines of named fields."""

    checksum: bool
    over_range: str
    rate_hz: float


@dataclass(frozen=True, slots=True)
class DriveSpec:
    """A fan drive. `set_format` has one field `{speed}`; the reply to it is the speed that was taken over."""

    set_format: str
    terminator: str
    safe: bytes
    start: bytes | None
    timeout_s: float
    communication_timeout_s: float
    directions: tuple[tuple[str, bytes], ...]


@dataclass(frozen=True, slots=True)
class Profile:
    """An instrument as the program knows it. Of `poll`, `lines` and `drive` exactly one is there."""

    id: str
    title: str
    kind: Kind
    protocol: Protocol
    link: LinkSettings
    identity: Identity
    channels: tuple[ChannelSpec, ...] = ()
    poll: Poll | None = None
    lines: Lines | None = None
    drive: DriveSpec | None = None
    zero_command: bytes | None = None


def shipped_profiles() -> tuple[str, ...]:
    """Return the ids of the profiles that come with the program."""
    folder = resources.files("drivers.profiles")
    return tuple(sorted(item.name.removesuffix(".toml") for item in folder.iterdir() if item.name.endswith(".toml")))


def load_profile(id_or_path: str) -> Profile:
    """Return a shipped profile by its id, or the profile in a file; raises `ProfileError`."""
    if id_or_path in shipped_profiles():
        text = (resources.files("drivers.profiles") / f"{id_or_path}.toml").read_text("utf-8")
        return read_profile(text, f"{id_or_path}.toml")
    path = Path(id_or_path)
    try:
        return read_profile(path.read_text("utf-8"), path.name)
    except OSError as error:
        known = ", ".join(shipped_profiles())
        raise ProfileError(id_or_path, None, "profile", f"no such file; the shipped ones are: {known}") from error
    except UnicodeDecodeError as error:
        raise ProfileError(path.name, None, "profile", "a text file in UTF-8 is needed") from error


def read_profile(text: str, file: str) -> Profile:
    """Return the profile in a text; raises `ProfileError`."""
    try:
        content = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        found = re.search(r"line (\d+)", str(error))
        raise ProfileError(file, int(found.group(1)) if found else None, "TOML", str(error)) from error
    top = Table(content, file, text, "")
    top.choice("format", (FORMAT,))
    kind: Kind = "gauge" if top.choice("kind", ("gauge", "drive")) == "gauge" else "drive"
    protocol: Protocol = "scpi" if top.choice("protocol", ("lines", "scpi")) == "scpi" else "lines"
    channels = tuple(_channel(table) for table in top.tables("channel"))
    names = [channel.name for channel in channels]
    zero = top.table("zero") if top.has("zero") else None
    profile = Profile(
        id=top.text("id"),
        title=top.text("title"),
        kind=kind,
        protocol=protocol,
        link=_link(top.table("link")),
        identity=_identity(top.table("identity")),
        channels=channels,
        poll=_poll(top.table("poll"), names) if kind == "gauge" and protocol == "scpi" else None,
        lines=_lines(top.table("lines")) if kind == "gauge" and protocol == "lines" else None,
        drive=_drive(top.table("drive")) if kind == "drive" else None,
        zero_command=zero.command("command") if zero is not None else None,
    )
    if kind == "drive" and protocol != "scpi":
        top.fail("protocol", 'a drive speaks "scpi"')
    if kind == "gauge" and not channels:
        top.fail("channel", "a gauge needs at least one [[channel]]")
    for name in names:
        if names.count(name) > 1:
            top.fail("channel", f"the name {name} may occur only once")
    if zero is not None:
        zero.finish()
    top.finish()
    return profile


def _link(table: Table) -> LinkSettings:
    settings = LinkSettings(
        baud=int(table.number("baud", default=9600, above=0)),
        data_bits=int(table.number("data_bits", default=8, above=6, at_most=8)),
        parity=table.choice("parity", ("none", "even", "odd"), default="none"),
        stop_bits=int(table.number("stop_bits", default=1, above=0, at_most=2)),
        dtr=table.boolean("dtr", default=True),
        rts=table.boolean("rts", default=True),
        settle_s=table.number("settle_s", default=0.0, above=-1e-9, at_most=30.0),
    )
    table.finish()
    return settings


def _identity(table: Table) -> Identity:
    pattern = table.pattern("pattern", group="serial")
    identity = Identity(table.command("query"), pattern, table.number("timeout_s", default=1.0, above=0))
    table.finish()
    return identity


def _poll(table: Table, names: list[str]) -> Poll:
    columns = table.texts("columns")
    for name in names:
        if name not in columns:
            table.fail("columns", f"the channel {name} is missing")
    poll = Poll(
        query=table.command("query"),
        columns=columns,
        rate_hz=table.number("rate_hz", above=0, at_most=1000),
        timeout_s=table.number("timeout_s", default=0.5, above=0),
    )
    table.finish()
    return poll


def _lines(table: Table) -> Lines:
    lines = Lines(
        checksum=table.boolean("checksum", default=False),
        over_range=table.text("over_range", default=""),
        rate_hz=table.number("rate_hz", above=0, at_most=1000),
    )
    table.finish()
    return lines


def _drive(table: Table) -> DriveSpec:
    set_format = table.text("set")
    try:
        set_format.format(speed=0.5)
    except (KeyError, IndexError, ValueError):
        table.fail("set", "one field {speed} is needed, for instance FAN:SPEED {speed:.4f}")
    if "{speed" not in set_format:
        table.fail("set", "one field {speed} is needed, for instance FAN:SPEED {speed:.4f}")
    directions: tuple[tuple[str, bytes], ...] = ()
    if table.has("direction"):
        ways = table.table("direction")
        terminator = table.text("terminator", default="\n")
        directions = tuple(
            (name, (ways.text(name) + terminator).encode("ascii")) for name in ("depressurize", "pressurize")
        )
        ways.finish()
    spec = DriveSpec(
        set_format=set_format,
        terminator=table.text("terminator", default="\n"),
        safe=table.command("safe"),
        start=table.command("start") if table.has("start") else None,
        timeout_s=table.number("timeout_s", default=0.5, above=0),
        communication_timeout_s=table.number("communication_timeout_s", above=0),
        directions=directions,
    )
    table.finish()
    return spec


def _channel(table: Table) -> ChannelSpec:
    quantity = table.choice("quantity", tuple(UNITS))
    unit = table.choice("unit", tuple(UNITS[quantity]))
    factor, offset = UNITS[quantity][unit]
    scale = table.number("scale", default=1.0)
    if scale == 0:
        table.fail("scale", "a number other than 0 is needed")
    low, high = table.number("low"), table.number("high")
    if high <= low:
        table.fail("high", f"a number greater than low ({low:g}) is needed")
    channel = ChannelSpec(
        name=table.text("name"),
        quantity=quantity,
        unit=unit,
        factor=factor * scale,
        offset=offset,
        low=low * factor + offset,
        high=high * factor + offset,
        resolution=table.number("resolution", above=0) * factor,
        accuracy=table.number("accuracy", default=0.0, above=-1e-12) * factor,
        accuracy_percent=table.number("accuracy_percent", default=0.0, above=-1e-12),
    )
    table.finish()
    return channel
