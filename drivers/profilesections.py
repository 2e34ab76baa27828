"""Reads a profile's tables one by one into records."""

from __future__ import annotations

import re
from dataclasses import replace

from drivers.framing import fields
from drivers.framing.fields import ReplyFormat, Splitter
from drivers.framing.lines import Checksum
from drivers.framing.modbus import LARGEST_UNIT, Bus, Register, Wire, Words, count_of, registers_split
from drivers.profiletable import Encode, Table
from drivers.siunits import UNITS
from drivers.spec import (
    DIRECTIONS,
    ChannelSpec,
    Confirmed,
    DriveSpec,
    Identity,
    Kind,
    LinkSettings,
    Place,
    Poll,
    Profile,
    Protocol,
    Stream,
    Upkeep,
    Zeroing,
)

FORMAT = "airseam-profile-1"
SPEED_FIELD = re.compile(r"\{speed:\.[0-9]f\}")
SPEED_RULE = "exactly one field named speed, with its digits behind a colon such as .4f, is needed"
LONGEST_S = 60.0
LONGEST_AVERAGING_S = 1.0
"""A gauge that averages longer hides what the watchdog of the fan has to see within a second."""
DEFAULT_SILENCE_S = 1.0
PROTOCOLS: dict[str, Protocol] = {"lines": "lines", "scpi": "scpi", "modbus": "modbus"}
PLACES: dict[str, Place] = {"port": "port", "file": "file", "hand": "hand"}
SIGNS = {"plus": 1.0, "minus": -1.0}


def profile_of(top: Table) -> Profile:
    """Return the profile in a file's top table; raises `ProfileError`."""
    top.choice("format", (FORMAT,))
    kind: Kind = "gauge" if top.choice("kind", ("gauge", "drive")) == "gauge" else "drive"
    protocol = PROTOCOLS[top.choice("protocol", tuple(PROTOCOLS))]
    link = _link(top.table("link"))
    bus = _bus(top.table("modbus")) if protocol == "modbus" else None
    encode = bus.frame if bus is not None else text_encoder(link.terminator)
    identity = _identity(top.table("identity"), encode, asked=not top.has("stream"))
    named = (top.text("id"), top.text("title"), kind, protocol, link, identity)
    checksum = Checksum(top.choice("checksum", tuple(Checksum), default=Checksum.NONE))
    if kind == "drive":
        profile = Profile(*named, checksum, bus=bus, drive=_drive(top.table("drive"), encode))
    else:
        place = PLACES[top.choice("place", tuple(PLACES), default="port")]
        profile = _gauge(top, Profile(*named, checksum, bus=bus, place=place), encode)
    top.finish()
    return profile


def text_encoder(terminator: str) -> Encode:
    """Return what makes bytes of a message of text."""

    def encode(text: str) -> bytes:
        if not text.isascii() or not text.isprintable():
            raise ValueError("only printable ASCII characters go over the wire; [link] terminator ends each message")
        return (text + terminator).encode("ascii")

    return encode


def _bus(table: Table) -> Bus:
    wire = Wire(table.choice("wire", tuple(Wire), default=Wire.RTU))
    bus = Bus(wire, table.whole("unit", 1, at_least=0 if wire is Wire.TCP else 1, at_most=LARGEST_UNIT))
    table.finish()
    return bus


def _gauge(top: Table, common: Profile, encode: Encode) -> Profile:
    """Return the gauge that has these common properties."""
    tables = top.tables("channel")
    if not tables:
        top.fail("channel", "a gauge needs at least one [[channel]]")
    channels: list[ChannelSpec] = []
    for table in tables:
        channels.append(_channel(table, [channel.name for channel in channels]))
    names = tuple(channel.name for channel in channels)
    if top.has("poll") == top.has("stream"):
        top.fail("poll", "a gauge has either a table [poll] or a table [stream]")
    if common.bus is not None and not top.has("poll"):
        top.fail("poll", "a Modbus gauge is polled: a table [poll] is needed")
    poll = top.table("poll") if top.has("poll") else None
    if common.bus is not None and poll is not None:
        reply = _registers(top.table("reply"), names, poll)
    else:
        reply = _reply(top.table("reply"), names, scpi=common.protocol == "scpi")
    return replace(
        common,
        channels=tuple(channels),
        reply=reply,
        poll=None if poll is None else _poll(poll, encode),
        stream=_stream(top.table("stream")) if top.has("stream") else None,
        zeroing=_zeroing(top.table("zero"), encode) if top.has("zero") else None,
        upkeep=_upkeep(top, encode),
    )


def _link(table: Table) -> LinkSettings:
    usual = LinkSettings()
    settings = LinkSettings(
        baud=table.whole("baud", usual.baud, at_least=50, at_most=4_000_000),
        data_bits=table.whole("data_bits", usual.data_bits, at_least=7, at_most=8),
        parity=table.choice("parity", ("none", "even", "odd"), default=usual.parity),
        stop_bits=table.whole("stop_bits", usual.stop_bits, at_least=1, at_most=2),
        dtr=table.boolean("dtr", usual.dtr),
        rts=table.boolean("rts", usual.rts),
        settle_s=table.number("settle_s", usual.settle_s, at_least=0, at_most=LONGEST_S),
        terminator=table.choice("terminator", ("\n", "\r\n", "\r"), default=usual.terminator),
    )
    table.finish()
    return settings


def _identity(table: Table, encode: Encode, *, asked: bool) -> Identity:
    """Return who is expected; an instrument that sends by itself may be known by the form of its lines alone."""
    identity = Identity(
        query=table.message("query", encode) if asked or table.has("query") else b"",
        pattern=table.pattern("pattern", ("serial",)),
        timeout_s=table.number("timeout_s", 1.0, above=0, at_most=LONGEST_S),
    )
    table.finish()
    return identity


def _reply(table: Table, names: tuple[str, ...], *, scpi: bool) -> ReplyFormat:
    split: Splitter
    match table.choice("layout", ("named", "columns", "pattern")):
        case "named":
            split = fields.only(frozenset((*names, *table.texts("others", default=()))))
        case "columns":
            places = table.texts("columns")
            for name in names:
                if places.count(name) != 1:
                    table.fail("columns", f"the channel {name} has to be there exactly once")
            split = fields.columns(places, table.text("separator", default=","))
        case _:
            split = fields.pattern(table.pattern("pattern", names))
    reply = ReplyFormat(
        split=split,
        names=names,
        over_range=table.texts("over_range", default=()),
        not_a_number=table.texts("not_a_number", default=()),
        scpi_specials=scpi,
        even=table.boolean("even", default=False),
    )
    table.finish()
    return reply


def _registers(table: Table, names: tuple[str, ...], poll: Table) -> ReplyFormat:
    """Return the reply of a Modbus gauge: where each channel stands among the registers that the poll reads."""
    table.choice("layout", ("registers",))
    count = count_of(poll.text("query"))
    if count == 0:
        poll.fail("query", "a poll reads registers: read holding FIRST COUNT or read input FIRST COUNT")
    low_first = table.choice("order", ("high-first", "low-first"), default="high-first") == "low-first"
    where = table.table("registers")
    places = {name: _register(where, name, count, low_first=low_first) for name in names}
    where.finish()
    reply = ReplyFormat(
        split=registers_split(places, count),
        names=names,
        over_range=table.texts("over_range", default=()),
        not_a_number=(*table.texts("not_a_number", default=()), "nan"),
    )
    table.finish()
    return reply


def _register(table: Table, name: str, count: int, *, low_first: bool) -> Register:
    place, _, words = table.text(name).partition(" ")
    known = [item for item in Words if item.value == words]
    if not place.isdecimal() or not known or int(place) + known[0].registers > count:
        table.fail(
            name,
            f"PLACE TYPE is needed: a place among the {count} registers that are read, counted from 0, and one of "
            f"{', '.join(Words)}",
        )
    return Register(int(place), known[0], low_first)


def _poll(table: Table, encode: Encode) -> Poll:
    poll = Poll(
        query=table.message("query", encode),
        rate_hz=table.number("rate_hz", above=0, at_most=1000),
        timeout_s=table.number("timeout_s", above=0, at_most=LONGEST_S),
        averaging_s=_averaging(table),
    )
    table.finish()
    return poll


def _stream(table: Table) -> Stream:
    rate_hz = table.number("rate_hz", above=0, at_most=1000)
    silence_s = table.number("silence_s", max(DEFAULT_SILENCE_S, 3.0 / rate_hz), above=0, at_most=LONGEST_S)
    if silence_s * rate_hz < 2.0:
        table.fail("silence_s", f"at least two lines ({2.0 / rate_hz:g} s) are needed")
    averaging_s = _averaging(table)
    table.finish()
    return Stream(rate_hz, silence_s, averaging_s)


def _averaging(table: Table) -> float:
    return table.number("averaging_s", 0.0, at_least=0, at_most=LONGEST_AVERAGING_S)


def _zeroing(table: Table, encode: Encode) -> Zeroing:
    zeroing = Zeroing(table.message("command", encode), table.number("wait_s", 0.0, at_least=0, at_most=LONGEST_S))
    table.finish()
    return zeroing


def _upkeep(top: Table, encode: Encode) -> Upkeep:
    start: tuple[bytes, ...] = ()
    if top.has("start"):
        table = top.table("start")
        start = table.messages("messages", encode)
        table.finish()
    if not top.has("keep_alive"):
        return Upkeep(start)
    if not top.has("stream"):
        top.fail("keep_alive", "only a gauge with a table [stream] is kept alive: polls do that by themselves")
    table = top.table("keep_alive")
    every_s = table.number("every_s", above=0, at_most=LONGEST_S)
    upkeep = Upkeep(start, table.message("message", encode), every_s)
    table.finish()
    return upkeep


def _drive(table: Table, encode: Encode) -> DriveSpec:
    set_format = table.text("set")
    full = table.number("full", 1.0, above=0)
    if len(SPEED_FIELD.findall(set_format)) != 1 or set(SPEED_FIELD.sub("", set_format)) & set("{}"):
        table.fail("set", SPEED_RULE)
    for share in (0.0, 1.0):
        _check_set(table, set_format, share * full, encode)
    directions: list[tuple[str, Confirmed]] = []
    if table.has("direction"):
        ways = table.table("direction")
        directions = [(name, _confirmed(ways.table(name), encode)) for name in DIRECTIONS]
        ways.finish()
    spec = DriveSpec(
        set_format=set_format,
        encode=encode,
        full=full,
        safe=table.message("safe", encode),
        start=_confirmed(table.table("start"), encode) if table.has("start") else None,
        timeout_s=table.number("timeout_s", above=0, at_most=LONGEST_S),
        communication_timeout_s=table.number("communication_timeout_s", above=0, at_most=LONGEST_S),
        directions=tuple(directions),
        reply=table.pattern("reply", ()) if table.has("reply") else None,
    )
    table.finish()
    return spec


def _check_set(table: Table, set_format: str, value: float, encode: Encode) -> None:
    """Refuse a message that cannot go over the wire at a speed."""
    try:
        encode(set_format.format(speed=value))
    except ValueError as error:
        table.fail("set", str(error))


def _confirmed(table: Table, encode: Encode) -> Confirmed:
    confirmed = Confirmed(table.message("message", encode), table.text("reply"))
    table.finish()
    return confirmed


def _channel(table: Table, taken: list[str]) -> ChannelSpec:
    name = table.text("name")
    if name in taken:
        table.fail("name", f"the name {name} may occur only once")
    quantity = table.choice("quantity", tuple(UNITS))
    unit = table.choice("unit", tuple(UNITS[quantity]))
    factor, offset = UNITS[quantity][unit]
    scale = table.number("scale", 1.0, above=0) * SIGNS[table.choice("sign", tuple(SIGNS), default="plus")]
    low, high = table.number("low"), table.number("high")
    if high <= low:
        table.fail("high", f"a number greater than low ({low:g}) is needed")
    channel = ChannelSpec(
        name=name,
        quantity=quantity,
        unit=unit,
        factor=factor * scale,
        offset=offset,
        low=low * factor + offset,
        high=high * factor + offset,
        resolution=table.number("resolution", above=0) * factor,
        accuracy=table.number("accuracy", 0.0, at_least=0) * factor,
        accuracy_percent=table.number("accuracy_percent", 0.0, at_least=0, at_most=100),
    )
    table.finish()
    return channel
