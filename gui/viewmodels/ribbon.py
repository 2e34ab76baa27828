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
        title=moment.job.details.name if moment.job is not None else "No job",
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
        parts.append("simulated house, invented data")
    return " · ".join(part for part in parts if part)


def _figures(snapshot: Snapshot | None, display: Display) -> tuple[Figure, Figure, Figure]:
    envelope = snapshot.envelope_pa if snapshot is not None else None
    flow = snapshot.flow_m3_h if snapshot is not None else None
    speed = snapshot.fan_fraction if snapshot is not None else None
    return (
        _figure("Envelope", envelope, Quantity.PRESSURE, display),
        _figure("Fan flow", flow, Quantity.FLOW, display),
        _spoken("Fan speed", NO_FIGURE if speed is None else f"{100 * speed:.0f}", "%"),
    )


def _figure(caption: str, value: float | None, quantity: Quantity, display: Display) -> Figure:
    text = NO_FIGURE if value is None else format_value(value, quantity, display)
    return _spoken(caption, text, unit_symbol(quantity, display))


def _spoken(caption: str, value: str, unit: str) -> Figure:
    said = "no reading" if value == NO_FIGURE else f"{value} {unit}"
    return Figure(caption, value, unit, f"{caption}: {said}")


def _links(moment: Moment, snapshot: Snapshot | None) -> tuple[Lamp, ...]:
    if snapshot is None:
        words = "closing" if moment.rig.state is RigState.CLOSING else "no rig"
        return (Lamp(Tone.QUIET, words, "Connect a rig in Rig (2)."),)
    fans = moment.rig.spec.fans if moment.rig.spec is not None else ()
    lamps = tuple(
        link_lamp(link, drive=link.name in fans, facts=moment.health.get(link.name, ())) for link in snapshot.links
    )
    if len(lamps) <= MOST_LINKS:
        return lamps
    rest = lamps[MOST_LINKS - 1 :]
    worst = next((lamp.tone for lamp in rest if lamp.tone is not Tone.GOOD), Tone.GOOD)
    return (*lamps[: MOST_LINKS - 1], Lamp(worst, f"{len(rest)} more", "\n".join(lamp.words for lamp in rest)))


def link_lamp(link: LinkStatus, *, drive: bool = False, facts: Sequence[Fact] = ()) -> Lamp:
    """Return the lamp of one link; with facts about its health also what is not well, in words."""
    tip = link.sentence or f"{link.name} on {link.port}: {link.identity or 'no identity'}"
    match link.state:
        case LinkState.LINKED:
            if link.port.startswith(HAND):
                return Lamp(Tone.GOOD, f"{link.name} typed", f"{link.name}: a person types what it shows.")
            rate = f" {link.rate_hz:.0f} Hz" if link.rate_hz >= 0.5 and not drive else ""
            trouble = unwell(facts)
            if trouble:
                tone = Tone.BAD if trouble[0].level is Level.BAD else Tone.ATTENTION
                words = SHORT.get(trouble[0].kind, trouble[0].kind)
                return Lamp(tone, f"{link.name} {words}", " ".join(fact.sentence for fact in trouble))
            return Lamp(Tone.GOOD, f"{link.name}{rate or ' linked'}", tip)
        case LinkState.OPENING | LinkState.IDENTIFYING:
            return Lamp(Tone.ATTENTION, f"{link.name} {link.state}", tip)
        case LinkState.CLOSED:
            return Lamp(Tone.QUIET, f"{link.name} closed", tip)
        case _:
            return Lamp(Tone.BAD, f"{link.name} {link.state}", tip)


def _record(snapshot: Snapshot | None, moment: Moment) -> Lamp | None:
    recording = snapshot.recording if snapshot is not None else None
    if moment.job is not None and moment.job.alarm:
        return Lamp(Tone.BAD, "not saved", moment.job.alarm)
    if recording is None:
        if snapshot is not None and snapshot.state is not EngineState.IDLE:
            return Lamp(Tone.QUIET, "between runs", "Readings between the runs are not kept.")
        return None
    if recording.alarm:
        return Lamp(Tone.BAD, "not saved", recording.alarm)
    return Lamp(Tone.BAD, f"rec {clock_text(recording.elapsed_s)}", "Every reading goes into the job file.")


def _record_detail(snapshot: Snapshot | None) -> str:
    recording = snapshot.recording if snapshot is not None else None
    return _saved(recording) if recording is not None else ""


def _saved(recording: RecordingView) -> str:
    if recording.saved_utc is None:
        return "not saved yet"
    return f"saved {recording.saved_utc.astimezone():%H:%M:%S}"
