"""The ribbon: what is tested, the three figures, the links and the record."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from acquisition.snapshot import EngineState, RecordingView, Snapshot
from analysis.units import Display, Quantity, format_value, unit_symbol
from drivers.byhand import HAND
from drivers.health import Fact, Level
from drivers.instrument import LinkState, LinkStatus
from gui.theme import Tone
from gui.viewmodels.health import SHORT, unwell
from gui.viewmodels.moment import Moment, RigState
from gui.viewmodels.retold import retold
from gui.words import say

NO_FIGURE = "–"
MOST_LINKS = 4


@dataclass(frozen=True, slots=True)
class Figure:
    """A live figure: `spoken` is its accessible name."""

    caption: str
    value: str
    unit: str
    spoken: str


@dataclass(frozen=True, slots=True)
class Lamp:
    """A coloured dot with its words."""

    tone: Tone
    words: str
    tip: str = ""


@dataclass(frozen=True, slots=True)
class RibbonPicture:
    """The whole ribbon."""

    title: str
    subtitle: str
    figures: tuple[Figure, Figure, Figure]
    links: tuple[Lamp, ...]
    record: Lamp | None
    record_detail: str


def ribbon(moment: Moment) -> RibbonPicture:
    """Return the ribbon of a moment."""
    snapshot = moment.snapshot
    return RibbonPicture(
        title=moment.job.details.name if moment.job is not None else say("No job"),
        subtitle=_subtitle(moment),
        figures=_figures(snapshot, moment.display),
        links=_links(moment, snapshot),
        record=_record(snapshot, moment),
        record_detail=_record_detail(snapshot),
    )


def clock_text(seconds: float) -> str:
    """Return a duration as hours, minutes and seconds."""
    whole = int(seconds)
    return f"{whole // 3600:02d}:{whole // 60 % 60:02d}:{whole % 60:02d}"


def _subtitle(moment: Moment) -> str:
    parts = []
    if moment.job is not None:
        parts.append(moment.job.plan.stage or moment.job.details.site)
    if moment.rig.simulated:
        parts.append(say("simulated house, invented data"))
    return " · ".join(part for part in parts if part)


def _figures(snapshot: Snapshot | None, display: Display) -> tuple[Figure, Figure, Figure]:
    envelope = snapshot.envelope_pa if snapshot is not None else None
    flow = snapshot.flow_m3_h if snapshot is not None else None
    speed = snapshot.fan_fraction if snapshot is not None else None
    return (
        _figure(say("Envelope"), envelope, Quantity.PRESSURE, display),
        _figure(say("Fan flow"), flow, Quantity.FLOW, display),
        _spoken(say("Fan speed"), NO_FIGURE if speed is None else f"{100 * speed:.0f}", "%"),
    )


def _figure(caption: str, value: float | None, quantity: Quantity, display: Display) -> Figure:
    text = NO_FIGURE if value is None else format_value(value, quantity, display)
    return _spoken(caption, text, unit_symbol(quantity, display))


def _spoken(caption: str, value: str, unit: str) -> Figure:
    said = say("no reading") if value == NO_FIGURE else f"{value} {unit}"
    return Figure(caption, value, unit, f"{caption}: {said}")


def _links(moment: Moment, snapshot: Snapshot | None) -> tuple[Lamp, ...]:
    if snapshot is None:
        words = say("closing") if moment.rig.state is RigState.CLOSING else say("no rig")
        return (Lamp(Tone.QUIET, words, say("Connect a rig in Rig (3).")),)
    fans = moment.rig.spec.fans if moment.rig.spec is not None else ()
    lamps = tuple(
        link_lamp(link, drive=link.name in fans, facts=moment.health.get(link.name, ())) for link in snapshot.links
    )
    if len(lamps) <= MOST_LINKS:
        return lamps
    rest = lamps[MOST_LINKS - 1 :]
    worst = next((lamp.tone for lamp in rest if lamp.tone is not Tone.GOOD), Tone.GOOD)
    return (
        *lamps[: MOST_LINKS - 1],
        Lamp(worst, say("{count} more", count=len(rest)), "\n".join(lamp.words for lamp in rest)),
    )


def link_lamp(link: LinkStatus, *, drive: bool = False, facts: Sequence[Fact] = ()) -> Lamp:
    """Return the lamp of one link; with facts about its health also what is not well, in words."""
    tip = retold(link.sentence) or say(
        "{name} on {port}: {identity}", name=link.name, port=link.port, identity=link.identity or say("no identity")
    )
    match link.state:
        case LinkState.LINKED:
            if link.port.startswith(HAND):
                return Lamp(
                    Tone.GOOD,
                    say("{name} typed", name=link.name),
                    say("{name}: a person types what it shows.", name=link.name),
                )
            rate = f" {link.rate_hz:.0f} Hz" if link.rate_hz >= 0.5 and not drive else ""
            trouble = unwell(facts)
            if trouble:
                tone = Tone.BAD if trouble[0].level is Level.BAD else Tone.ATTENTION
                words = say(SHORT.get(trouble[0].kind, trouble[0].kind))
                return Lamp(tone, f"{link.name} {words}", " ".join(retold(fact.sentence) for fact in trouble))
            return Lamp(Tone.GOOD, f"{link.name}{rate}" if rate else say("{name} linked", name=link.name), tip)
        case LinkState.OPENING | LinkState.IDENTIFYING:
            return Lamp(Tone.ATTENTION, f"{link.name} {say(link.state)}", tip)
        case LinkState.CLOSED:
            return Lamp(Tone.QUIET, say("{name} closed", name=link.name), tip)
        case _:
            return Lamp(Tone.BAD, f"{link.name} {say(link.state)}", tip)


def _record(snapshot: Snapshot | None, moment: Moment) -> Lamp | None:
    recording = snapshot.recording if snapshot is not None else None
    if moment.job is not None and moment.job.alarm:
        return Lamp(Tone.BAD, say("not saved"), retold(moment.job.alarm))
    if recording is None:
        if snapshot is not None and snapshot.state is not EngineState.IDLE:
            return Lamp(Tone.QUIET, say("between runs"), say("Readings between the runs are not kept."))
        return None
    if recording.alarm:
        return Lamp(Tone.BAD, say("not saved"), retold(recording.alarm))
    return Lamp(
        Tone.BAD,
        say("rec {time}", time=clock_text(recording.elapsed_s)),
        say("Every reading goes into the job file."),
    )


def _record_detail(snapshot: Snapshot | None) -> str:
    recording = snapshot.recording if snapshot is not None else None
    return _saved(recording) if recording is not None else ""


def _saved(recording: RecordingView) -> str:
    if recording.saved_utc is None:
        return say("not saved yet")
    return say("saved {time}", time=f"{recording.saved_utc.astimezone():%H:%M:%S}")
