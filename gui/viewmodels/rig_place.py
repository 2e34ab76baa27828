"""The Rig place: what is connected, how each link does, what every channel reads now."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from acquisition.openrig import RigSource
from acquisition.register import due_of_rig, in_use
from acquisition.rig import FLOW_ELEMENTS, FLOWS, INDOORS, OUTDOORS, TAPS, ZONES, RigSpec, Role
from acquisition.snapshot import Snapshot
from analysis.units import Display, Quantity, format_value, format_with_unit, unit_symbol
from drivers.byhand import HAND
from drivers.health import Fact, Level
from drivers.instrument import LinkState, LinkStatus
from drivers.portadvice import access_rule
from drivers.ports import PortInfo
from gui.theme import Tone
from gui.viewmodels.health import summary, unwell
from gui.viewmodels.moment import Moment, RigState
from gui.viewmodels.register import DUE_TONES
from gui.viewmodels.retold import retold
from gui.viewmodels.ribbon import link_lamp
from gui.viewmodels.rig_sheet import role_words, same
from gui.words import say

SPEEDS = (1.0, 2.0, 5.0, 10.0, 20.0)
QUANTITIES = {
    **dict.fromkeys((*TAPS, *ZONES), (Quantity.PRESSURE, 2)),
    **dict.fromkeys(FLOW_ELEMENTS, (Quantity.PRESSURE, 2)),
    **dict.fromkeys(FLOWS, (Quantity.FLOW, 0)),
    **dict.fromkeys((*INDOORS, *OUTDOORS), (Quantity.TEMPERATURE, 1)),
    Role.BAROMETER: (Quantity.BAROMETRIC_PRESSURE, 1),
}
STALE_S = 2.0
RULE_FILE = "/etc/udev/rules.d/70-airseam.rules"
Newest = Callable[[Role], tuple[float, float] | None]
"""Returns value and age in seconds of the newest reading of a role."""


@dataclass(frozen=True, slots=True)
class Remedy:
    """What somebody may copy to mend a refused port."""

    words: str
    text: str


@dataclass(frozen=True, slots=True)
class LinkRow:
    """One link in words; `acceptable` when a person may say that the instrument that answers is the right one.

    `health` is what is well, in one line; `warnings` what is not, a sentence each.
    """

    name: str
    tone: Tone
    state: str
    words: str
    acceptable: bool = False
    health: str = ""
    warnings: tuple[tuple[Tone, str], ...] = ()
    remedies: tuple[Remedy, ...] = ()


@dataclass(frozen=True, slots=True)
class ChannelRow:
    """One channel as it reads now."""

    channel: str
    role: str
    value: str
    unit: str
    stale: bool


@dataclass(frozen=True, slots=True)
class SourceCard:
    """A simulated house that can be chosen."""

    id: str
    title: str
    description: str
    connected: bool


@dataclass(frozen=True, slots=True)
class RigPicture:
    """The live part of the place. `connected_spec` is true when the sheet is the rig that is connected."""

    title: str
    links: tuple[LinkRow, ...]
    channels: tuple[ChannelRow, ...]
    sources: tuple[SourceCard, ...]
    fitted: str
    empty: str
    simulated_button: str
    disconnects: bool
    own_button: str
    enabled: bool
    problem: str
    due: tuple[tuple[Tone, str], ...] = ()
    """What is not in order about the calibrations, a sentence for each."""


def rig_picture(
    moment: Moment,
    sources: Sequence[RigSource],
    chosen: tuple[str, float],
    draft: RigSpec,
    problem: str,
    newest: Newest,
    today: date,
    ports: Sequence[PortInfo] = (),
) -> RigPicture:
    """Return the place. `chosen` are house and speed that are selected, `problem` what is wrong with the draft."""
    rig, snapshot, spec = moment.rig, moment.snapshot, moment.rig.spec
    closing = rig.state is RigState.CLOSING
    same_source = spec is not None and (rig.source, spec.time_factor) == chosen
    own = spec is not None and not rig.source and same(spec, draft)
    links = snapshot.links if snapshot is not None else ()
    return RigPicture(
        title=spec.name if spec is not None else say("No rig is connected"),
        links=tuple(
            replace(link_row(link, spec, moment.health.get(link.name, ())), remedies=remedies(link, ports))
            for link in links
        ),
        channels=_channels(spec, newest, moment.display) if snapshot is not None and spec is not None else (),
        sources=tuple(
            SourceCard(item.id, item.title, _source_words(item, moment.display), item.id == rig.source)
            for item in sources
        ),
        fitted=_fitted_words(spec, moment.display) if spec is not None else "",
        empty="" if spec is not None else say("Choose a simulated house, or put your own instruments together."),
        simulated_button=say("Disconnect") if same_source else say("Connect"),
        disconnects=same_source,
        own_button=say("Disconnect") if own else say("Connect"),
        enabled=not moment.busy and not closing,
        problem="" if own else problem,
        due=calibration_words(spec, today) if spec is not None else (),
    )


def calibration_words(spec: RigSpec, today: date) -> tuple[tuple[Tone, str], ...]:
    """Return what is not in order about the calibrations of what is in use, and which pressures are corrected."""
    found = [(DUE_TONES[status.state], retold(status.sentence)) for status in due_of_rig(in_use(spec), today)]
    found += [
        (
            Tone.QUIET,
            say(
                "{channel}: corrected by the certificate of {calibrated}, {words}.",
                channel=item.channel,
                calibrated=item.calibrated.isoformat(),
                words=item.words,
            ),
        )
        for item in spec.corrections
    ]
    return tuple(found)


def _source_words(source: RigSource, display: Display) -> str:
    building = source.building
    parts = [". ".join(retold(part) for part in source.description.strip().rstrip(".").split(". "))]
    if building is not None and building.volume_m3 is not None:
        parts.insert(0, format_with_unit(building.volume_m3, Quantity.VOLUME, display, 0))
    return ". ".join(part for part in parts if part) + "."


def link_row(link: LinkStatus, spec: RigSpec | None, facts: Sequence[Fact] = ()) -> LinkRow:
    """Return a link in words."""
    lamp = link_lamp(link, facts=facts)
    warnings = tuple(
        (Tone.BAD if fact.level is Level.BAD else Tone.ATTENTION, retold(fact.sentence)) for fact in unwell(facts)
    )
    match link.state:
        case LinkState.LINKED:
            state, words = say("linked"), _linked_words(link, drive=spec is not None and link.name in spec.fans)
            state = say("linked, not well") if warnings else state
        case LinkState.OPENING:
            state, words = say("opening the port"), retold(link.sentence) or say("Port {port}", port=link.port)
        case LinkState.IDENTIFYING:
            state, words = say("asking who answers"), retold(link.sentence) or say("Port {port}", port=link.port)
        case LinkState.LOST:
            state, words = say("lost, trying again"), retold(link.sentence) or say("Port {port}", port=link.port)
        case LinkState.WRONG_INSTRUMENT:
            state, words = say("another instrument answers"), retold(link.sentence)
        case _:
            state, words = say("closed"), retold(link.sentence)
    acceptable = link.state is LinkState.WRONG_INSTRUMENT
    return LinkRow(link.name, lamp.tone, state, words, acceptable, summary(facts) if facts else "", warnings)


def remedies(link: LinkStatus, ports: Sequence[PortInfo]) -> tuple[Remedy, ...]:
    """Return what can be copied where a sentence names a command, and the rule for the adapter that was refused."""
    found = [
        Remedy(say("The command: {command}", command=command), command)
        for command in re.findall("`([^`]+)`", link.sentence)
    ]
    usb_id = next((port.usb_id for port in ports if port.name == link.port), "")
    if found and usb_id and "usermod" in link.sentence:
        rule = access_rule(usb_id)
        found.append(
            Remedy(say("Or for this adapter alone, as a line of {file}: {rule}", file=RULE_FILE, rule=rule), rule)
        )
    return tuple(found)


def _linked_words(link: LinkStatus, *, drive: bool) -> str:
    if link.port.startswith(HAND):
        return say("A person reads this gauge and types what it shows, in the Test place.")
    parts = [link.identity] if link.identity else []
    if link.rate_hz >= 0.5:
        parts.append(
            say("{count} commands a second", count=f"{link.rate_hz:.0f}")
            if drive
            else say("{count} readings a second", count=f"{link.rate_hz:.0f}")
        )
    if link.round_trip_s is not None:
        parts.append(say("answers in {time} ms", time=f"{1000 * link.round_trip_s:.0f}"))
    if link.bad_frames:
        parts.append(say("{count} garbled", count=link.bad_frames))
    if link.no_replies:
        parts.append(say("{count} without answer", count=link.no_replies))
    if link.reconnects:
        parts.append(say("linked again {count}×", count=link.reconnects))
    return " · ".join([say("Port {port}", port=link.port), *parts])


def _channels(spec: RigSpec, newest: Newest, display: Display) -> tuple[ChannelRow, ...]:
    rows = []
    for role, channel in spec.role_channels().items():
        quantity, decimals = QUANTITIES[role]
        reading = newest(role)
        value = "–" if reading is None else format_value(reading[0], quantity, display, decimals)
        stale = reading is None or reading[1] > STALE_S
        rows.append(ChannelRow(channel, role_words(spec, role), value, unit_symbol(quantity, display), stale))
    return tuple(rows)


def _fitted_words(spec: RigSpec, display: Display) -> str:
    item = spec.fitted_range
    coefficient = format_value(item.coefficient_m3_h_pa_n, Quantity.FLOW_COEFFICIENT, display)
    unit = unit_symbol(Quantity.FLOW_COEFFICIENT, display)
    exponent = f"{item.exponent:g}".replace(".", display.decimal_mark)
    return say(
        "Fitted range {name}: {coefficient} {unit}, exponent {exponent}, calibrated from {min_pa} to {max_pa} Pa",
        name=item.name,
        coefficient=coefficient,
        unit=unit,
        exponent=exponent,
        min_pa=f"{item.min_pa:g}",
        max_pa=f"{item.max_pa:g}",
    )


def factor_words(factor: float) -> str:
    """Return a speed for its button."""
    return f"{factor:g}×"


def newest_reading(snapshot: Snapshot | None, times: Callable[[Role], tuple[int, float] | None]) -> Newest:
    """Return a `Newest` from stamps in nanoseconds."""

    def newest(role: Role) -> tuple[float, float] | None:
        found = times(role)
        if found is None or snapshot is None:
            return None
        return found[1], (snapshot.now_ns - found[0]) / 1e9

    return newest
