"""How well every instrument of the connected rig does: facts from its link, its readings and its zero-flow records."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cache

from acquisition.rig import InstrumentSpec, RigSpec, Role
from acquisition.snapshot import Snapshot
from acquisition.steps import WindowKind
from drivers.byhand import HAND
from drivers.errors import ProfileError
from drivers.health import (
    LATE_S,
    Fact,
    Level,
    battery,
    drop_outs,
    frozen,
    link_health,
    noise_floor,
    zero_drift,
)
from drivers.instrument import LinkState, LinkStatus
from drivers.profile import ChannelSpec, Profile, load_profile
from drivers.reading import Quality, Reading
from gui.viewmodels.retold import retold
from gui.words import mark, say

LOOKED_BACK_S = 30.0
ZEROS = (WindowKind.ZERO_BEFORE, WindowKind.ZERO_AFTER)
KINDS = ("frozen value", "noise floor", "drop-outs", "rate", "round trip", "zero drift", "battery")
SHORT = {
    "frozen value": mark("stands still"),
    "noise floor": "noisy",
    "drop-outs": "drop-outs",
    "rate": "slow",
    "round trip": mark("answers late"),
    "zero drift": mark("zero moved"),
    "battery": mark("battery low"),
}
"""What the ribbon says of a fact that is not well."""
Health = Mapping[str, tuple[Fact, ...]]
"""Facts by the name of the instrument."""
Zeros = dict[tuple[Role, int, int], float | None]
"""What a flow element read in each zero-flow record, by its role, begin and end; None where it read nothing."""
Samples = Callable[[Role, int], tuple[Sequence[int], Sequence[float]]]
"""Returns stamps (ns) and values (SI) of a role since a stamp."""


def rig_health(
    spec: RigSpec, snapshot: Snapshot, samples: Samples, batteries: Mapping[str, float], zeros: Zeros | None = None
) -> Health:
    """Return what is known; `batteries` are shares (0..1) by the name of the instrument.

    `zeros` keeps what the zero-flow records said from one call to the next.
    """
    kept = {} if zeros is None else zeros
    links = {link.name: link for link in snapshot.links}
    return {
        item.name: _facts(item, links[item.name], snapshot, samples, batteries.get(item.name), kept)
        for item in spec.instruments
        if item.name in links
    }


def _facts(
    item: InstrumentSpec, link: LinkStatus, snapshot: Snapshot, samples: Samples, charge: float | None, zeros: Zeros
) -> tuple[Fact, ...]:
    profile = profile_of(item.profile)
    if profile is None or item.port.startswith(HAND):
        return ()
    facts: list[Fact | None] = [fact for fact in link_health(link, profile) if fact.kind != "link"]
    if link.state is LinkState.LINKED:
        channels = {channel.name: channel for channel in profile.channels}
        for name, role in item.channels:
            if name in channels:
                facts += _channel_facts(f"{item.name}.{name}", role, channels[name], snapshot, samples, zeros)
        facts.append(_round_trip(link))
        facts.append(battery(item.name, charge) if charge is not None else None)
    return tuple(fact for fact in facts if fact is not None)


def _channel_facts(
    name: str, role: Role, spec: ChannelSpec, snapshot: Snapshot, samples: Samples, zeros: Zeros
) -> list[Fact | None]:
    stamps, values = samples(role, snapshot.now_ns - round(LOOKED_BACK_S * 1e9))
    readings = [
        Reading(name, value, stamp, 0, 0.0, Quality.GOOD, at)
        for at, (stamp, value) in enumerate(zip(stamps, values, strict=True))
    ]
    if not readings:
        return []
    facts = [frozen(readings, spec), drop_outs(readings)]
    if spec.quantity == "pressure" and role is not Role.BAROMETER:
        facts.append(noise_floor(readings, spec))
    if role is Role.FLOW_ELEMENT:
        facts.append(zero_drift(name, _zeros(role, snapshot, samples, zeros), spec))
    return facts


def _zeros(role: Role, snapshot: Snapshot, samples: Samples, zeros: Zeros) -> list[tuple[int, float]]:
    """Return what the flow element read while no air went through it, once for each zero-flow record."""
    found: list[tuple[int, float]] = []
    for window in snapshot.windows:
        if window.kind not in ZEROS or window.end_ns is None:
            continue
        key = (role, window.start_ns, window.end_ns)
        if key not in zeros:
            # The readings since then grow for as long as a pressure is held: they are asked for once.
            stamps, values = samples(role, window.start_ns)
            inside = [value for stamp, value in zip(stamps, values, strict=True) if stamp <= window.end_ns]
            zeros[key] = sum(inside) / len(inside) if inside else None
        mean = zeros[key]
        if mean is not None:
            found.append((window.end_ns, mean))
    return found


def _round_trip(link: LinkStatus) -> Fact | None:
    if not link.round_trip_s:
        return None
    level = Level.WATCH if link.round_trip_s > LATE_S else Level.WELL
    sentence = say("{name} answers after {time} ms.", name=link.name, time=f"{1000 * link.round_trip_s:.0f}")
    return Fact("round trip", level, sentence, link.round_trip_s)


def unwell(facts: Sequence[Fact]) -> tuple[Fact, ...]:
    """Return what is not well, the worst first."""
    return tuple(sorted((fact for fact in facts if fact.level is not Level.WELL), key=lambda fact: -fact.level))


def summary(facts: Sequence[Fact]) -> str:
    """Return one line on all that is well, in the order of the kinds; what is not well has sentences of its own."""
    parts = []
    for kind in KINDS:
        found = [fact for fact in facts if fact.kind == kind]
        if not found and kind in ("frozen value", "drop-outs"):
            parts.append(say("nothing stands still") if kind == "frozen value" else say("no drop-outs"))
        elif found and all(fact.level is Level.WELL for fact in found):
            parts += [retold(fact.sentence).rstrip(".") for fact in found]
    return " · ".join(parts)


@cache
def profile_of(name: str) -> Profile | None:
    """Return a profile, None where there is none that can be used."""
    try:
        return load_profile(name) if name else None
    except ProfileError:
        return None
