"""How well an instrument does, from its recent readings: pure functions, each with a sentence for the person.

    frozen value    the very same number again and again from an instrument that measures moving air
    noise floor     how much successive readings differ when nothing changes
    drop-outs       readings that were lost, and gaps
    rate            readings a second against what the profile promises
    round trip      how long a polled instrument takes to answer
    zero drift      how the zero has wandered between zeroings or covered readings
    battery         where the instrument reports it
    averaging       over what time a gauge averages by itself, as its profile says

Limits are common practice, no source, unless said otherwise.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum
from itertools import pairwise
from statistics import median

from drivers.clock import NS_PER_S
from drivers.instrument import LinkState, LinkStatus
from drivers.reading import Quality, Reading
from drivers.spec import ChannelSpec, Profile

FROZEN_READINGS = 20
FROZEN_S = 5.0
MOVING = ("pressure", "flow")
"""Quantities that never stand still in moving air; a temperature may."""
BAROMETRIC_PA = 20_000.0
"""A pressure channel whose range begins here is a barometer, and may stand still."""
MAD_TO_SIGMA = 1.4826
"""For normally distributed numbers (a handbook value, from memory): 1 / 0.6745."""
NOISY_STEPS = 50.0
GAP_PERIODS = 3.0
SLOW_SHARE, VERY_SLOW_SHARE = 0.8, 0.4
LATE_S = 0.25
DRIFT_ACCURACIES = 0.5
LOW_BATTERY, EMPTY_BATTERY = 0.2, 0.08


class Level(IntEnum):
    """How bad it is."""

    WELL = 0
    WATCH = 1
    BAD = 2


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing that is known: `kind` is one of those above; `value` is its number where it has one."""

    kind: str
    level: Level
    sentence: str
    value: float | None = None


def channel_health(readings: Sequence[Reading], spec: ChannelSpec, rate_hz: float | None = None) -> tuple[Fact, ...]:
    """Return what the recent readings of one channel tell, oldest first; with `rate_hz` as the profile promises it."""
    if not readings:
        return ()
    facts = [frozen(readings, spec), noise_floor(readings, spec), drop_outs(readings)]
    if rate_hz is not None:
        facts.append(rate(readings, rate_hz))
    facts.append(round_trip(readings))
    return tuple(fact for fact in facts if fact is not None)


def link_health(status: LinkStatus, profile: Profile) -> tuple[Fact, ...]:
    """Return what the counters of a link tell."""
    facts = []
    if status.state is not LinkState.LINKED:
        facts.append(Fact("link", Level.BAD, status.sentence or f"{status.name} is {status.state}."))
    promised = profile.poll.rate_hz if profile.poll is not None else None
    promised = profile.stream.rate_hz if profile.stream is not None else promised
    if promised is not None and status.state is LinkState.LINKED and status.rate_hz > 0:
        facts.append(_rate_fact(status.name, status.rate_hz, promised))
    if profile.averaging_s:
        words = f"{status.name}: each value is the mean of {profile.averaging_s:g} s."
        facts.append(Fact("averaging", Level.WELL, words, profile.averaging_s))
    damaged = status.bad_frames / max(status.bad_frames + status.readings, 1)
    if status.bad_frames:
        level = Level.WATCH if damaged > 0.001 else Level.WELL
        sentence = f"{status.name}: {status.bad_frames} damaged messages of {status.bad_frames + status.readings}."
        facts.append(Fact("drop-outs", level, sentence, damaged))
    if status.reconnects:
        often = _count(status.reconnects, "time")
        facts.append(Fact("drop-outs", Level.WATCH, f"{status.name} was lost and found again {often}."))
    return tuple(facts)


def frozen(readings: Sequence[Reading], spec: ChannelSpec) -> Fact | None:
    """Return that the value stands still, None where that is no fault or cannot be said yet."""
    if spec.quantity not in MOVING or spec.low >= BAROMETRIC_PA:
        return None
    newest = readings[-1]
    same = 0
    for reading in reversed(readings):
        if reading.value != newest.value:
            break
        same += 1
    lasted_s = (newest.monotonic_ns - readings[-same].monotonic_ns) / NS_PER_S
    if same < FROZEN_READINGS or lasted_s < FROZEN_S or newest.quality is Quality.OVER_RANGE:
        return None
    sentence = f"{newest.channel} has read {newest.value:g} for {lasted_s:.0f} s: it may hang, or its hose is covered."
    return Fact("frozen value", Level.WATCH, sentence, lasted_s)


def noise_floor(readings: Sequence[Reading], spec: ChannelSpec) -> Fact | None:
    """Return the noise (standard deviation, SI units), None for fewer than 8 readings.

    From the median of the differences of neighbours, so that a ramp or a single jump does not count as noise.
    """
    if len(readings) < 8:
        return None
    steps = [abs(b.value - a.value) for a, b in pairwise(readings)]
    sigma = MAD_TO_SIGMA * median(steps) / math.sqrt(2.0)
    level = Level.WATCH if sigma > NOISY_STEPS * spec.resolution and sigma > spec.accuracy > 0 else Level.WELL
    name = readings[-1].channel
    return Fact("noise floor", level, f"{name}: noise {_figure(sigma)} {_unit(spec.quantity)}.".rstrip(), sigma)


def drop_outs(readings: Sequence[Reading]) -> Fact | None:
    """Return how many readings are missing by their numbers, and the longest gap; None when none is."""
    lost = sum(max(b.sequence - a.sequence - 1, 0) for a, b in pairwise(readings))
    gaps_s = [(b.monotonic_ns - a.monotonic_ns) / NS_PER_S for a, b in pairwise(readings)]
    usual_s = median(gaps_s) if gaps_s else 0.0
    long = [gap for gap in gaps_s if usual_s > 0 and gap > GAP_PERIODS * usual_s]
    if not lost and not long:
        return None
    name = readings[-1].channel
    words = [f"{_count(lost, 'reading')} lost"] if lost else []
    words += [f"{_count(len(long), 'gap')}, the longest {max(long):.1f} s"] if long else []
    return Fact("drop-outs", Level.WATCH, f"{name}: {', '.join(words)}.", float(lost))


def rate(readings: Sequence[Reading], promised_hz: float) -> Fact | None:
    """Return the rate against the promised one, None for fewer than 3 readings."""
    span_ns = readings[-1].monotonic_ns - readings[0].monotonic_ns
    if len(readings) < 3 or span_ns <= 0:
        return None
    return _rate_fact(readings[-1].channel, (len(readings) - 1) * NS_PER_S / span_ns, promised_hz)


def round_trip(readings: Sequence[Reading]) -> Fact | None:
    """Return how long an answer takes (median), None for an instrument that sends by itself."""
    trips = [reading.round_trip_s for reading in readings if reading.round_trip_s > 0]
    if not trips:
        return None
    middle = median(trips)
    level = Level.WATCH if middle > LATE_S else Level.WELL
    return Fact("round trip", level, f"{readings[-1].channel} answers after {1000 * middle:.0f} ms.", middle)


def zero_drift(name: str, zeros: Sequence[tuple[int, float]], spec: ChannelSpec) -> Fact | None:
    """Return how the zero has wandered from the first to the last of pairs (monotonic ns, Pa); None for fewer than 2.

    Worth watching when it is more than half of the stated accuracy, bad when it is more than all of it.
    """
    if len(zeros) < 2:
        return None
    (begin_ns, first), (end_ns, last) = zeros[0], zeros[-1]
    minutes = (end_ns - begin_ns) / NS_PER_S / 60.0
    drift = last - first
    allowed = max(spec.accuracy, spec.resolution)
    level = Level.BAD if abs(drift) > allowed else Level.WELL
    if level is Level.WELL and abs(drift) > DRIFT_ACCURACIES * allowed:
        level = Level.WATCH
    advice = " Zero it again." if level is not Level.WELL else ""
    return Fact("zero drift", level, f"{name}: the zero moved by {drift:+.2f} Pa in {minutes:.0f} min.{advice}", drift)


def battery(name: str, fraction: float) -> Fact | None:
    """Return how full the battery is, as the instrument reports it (0..1); None for what is no share."""
    if not 0.0 <= fraction <= 1.0:
        return None
    level = Level.BAD if fraction < EMPTY_BATTERY else Level.WATCH if fraction < LOW_BATTERY else Level.WELL
    advice = {Level.WELL: "", Level.WATCH: " Charge it soon.", Level.BAD: " It will not last a test."}[level]
    return Fact("battery", level, f"{name}: battery {fraction:.0%}.{advice}", fraction)


def worst(facts: Sequence[Fact]) -> Fact | None:
    """Return the worst fact, the first of equals; None when all is well."""
    found = max(facts, key=lambda fact: fact.level, default=None)
    return found if found is not None and found.level is not Level.WELL else None


def _rate_fact(name: str, measured_hz: float, promised_hz: float) -> Fact:
    share = measured_hz / promised_hz
    level = Level.BAD if share < VERY_SLOW_SHARE else Level.WATCH if share < SLOW_SHARE else Level.WELL
    slow = f", {promised_hz:g} are expected" if level is not Level.WELL else ""
    return Fact("rate", level, f"{name}: {measured_hz:.1f} readings a second{slow}.", measured_hz)


def _count(number: int, what: str) -> str:
    return f"{number} {what}" if number == 1 else f"{number} {what}s"


def _figure(value: float) -> str:
    return f"{value:.2g}" if value < 100 else f"{value:.0f}"


def _unit(quantity: str) -> str:
    return {"pressure": "Pa", "temperature": "°C", "flow": "m³/h"}.get(quantity, "")
