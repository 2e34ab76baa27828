"""Reads a profile's tables one by one into records."""

from __future__ import annotations

import re

from drivers.framing import fields
from drivers.framing.fields import ReplyFormat, Splitter
from drivers.framing.lines import Checksum
from drivers.profiletable import Table
from drivers.siunits import UNITS
from drivers.spec import (
    DIRECTIONS,
    ChannelSpec,
    Confirmed,
    DriveSpec,
    Identity,
    Kind,
    LinkSettings,
    Poll,
    Profile,
    Protocol,
    Stream,
    Zeroing,
)

FORMAT = "airseam-profile-1"
SPEED_FIELD = re.compile(r"\{speed:\.[0-9]f\}")
SPEED_RULE = "exactly one field {speed:.4f} (or with other digits) is needed, for instance FAN:SPEED {speed:.4f}"
LONGEST_S = 60.0
DEFAULT_SILENCE_S = 1.0
SIGNS = {"plus": 1.0, "minus": -1.0}


def profile_of(top: Table) -> Profile:
    """Return the profile in a file's top table; raises `ProfileError`."""
    top.choice("format", (FORMAT,))
    kind: Kind = "gauge" if top.choice("kind", ("gauge", "drive")) == "gauge" else "drive"
    protocol: Protocol = "scpi" if top.choice("protocol", ("lines", "scpi")) == "scpi" else "lines"
    link = _link(top.table("link"))
    identity = _identity(top.table("identity"), link.terminator)
    named = (top.text("id"), top.text("title"), kind, protocol, link, identity)
    checksum = Checksum(top.choice("checksum", tuple(Checksum), default=Checksum.NONE))
    if kind == "drive":
        profile = Profile(*named, checksum, drive=_drive(top.table("drive"), link.terminator))
    else:
        profile = _gauge(top, Profile(*named, checksum))
    top.finish()
    return profile


def _gauge(top: Table, common: Profile) -> Profile:
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
    return Profile(
        common.id,
        common.title,
        common.kind,
        common.protocol,
        common.link,
        common.identity,
        common.checksum,
        channels=tuple(channels),
        reply=_reply(top.table("reply"), names, scpi=common.protocol == "scpi"),
        poll=_poll(top.table("poll"), common.link.terminator) if top.has("poll") else None,
        stream=_stream(top.table("stream")) if top.has("stream") else None,
        zeroing=_zeroing(top.table("zero"), common.link.terminator) if top.has("zero") else None,
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


def _identity(table: Table, terminator: str) -> Identity:
    identity = Identity(
        query=table.message("query", terminator),
        pattern=table.pattern("pattern", ("serial",)),
        timeout_s=table.number("timeout_s", 1.0, above=0, at_most=LONGEST_S),
    )
    table.finish()
    return identity


def _reply(table: Table, names: tuple[str, ...], *, scpi: bool) -> ReplyFormat:
    split: Splitter
    match table.choice("layout", ("named", "columns", "pattern")):
        case "named":
            split = fields.named_fields
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


def _poll(table: Table, terminator: str) -> Poll:
    poll = Poll(
        query=table.message("query", terminator),
        rate_hz=table.number("rate_hz", above=0, at_most=1000),
        timeout_s=table.number("timeout_s", above=0, at_most=LONGEST_S),
    )
    table.finish()
    return poll


def _stream(table: Table) -> Stream:
    rate_hz = table.number("rate_hz", above=0, at_most=1000)
    silence_s = table.number("silence_s", max(DEFAULT_SILENCE_S, 3.0 / rate_hz), above=0, at_most=LONGEST_S)
    if silence_s * rate_hz < 2.0:
        table.fail("silence_s", f"at least two lines ({2.0 / rate_hz:g} s) are needed")
    table.finish()
    return Stream(rate_hz, silence_s)


def _zeroing(table: Table, terminator: str) -> Zeroing:
    zeroing = Zeroing(table.message("command", terminator), table.number("wait_s", 0.0, at_least=0, at_most=LONGEST_S))
    table.finish()
    return zeroing


def _drive(table: Table, terminator: str) -> DriveSpec:
    set_format = table.text("set")
    if len(SPEED_FIELD.findall(set_format)) != 1 or set(SPEED_FIELD.sub("", set_format)) & set("{}"):
        table.fail("set", SPEED_RULE)
    table.message("set", terminator)
    directions: list[tuple[str, Confirmed]] = []
    if table.has("direction"):
        ways = table.table("direction")
        directions = [(name, _confirmed(ways.table(name), terminator)) for name in DIRECTIONS]
        ways.finish()
    spec = DriveSpec(
        set_format=set_format + terminator,
        full=table.number("full", 1.0, above=0),
        safe=table.message("safe", terminator),
        start=_confirmed(table.table("start"), terminator) if table.has("start") else None,
        timeout_s=table.number("timeout_s", above=0, at_most=LONGEST_S),
        communication_timeout_s=table.number("communication_timeout_s", above=0, at_most=LONGEST_S),
        directions=tuple(directions),
        reply=table.pattern("reply", ()) if table.has("reply") else None,
    )
    table.finish()
    return spec


def _confirmed(table: Table, terminator: str) -> Confirmed:
    confirmed = Confirmed(table.message("message", terminator), table.text("reply"))
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
