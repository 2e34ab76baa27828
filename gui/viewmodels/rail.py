"""The rail: the places in the order of the work, and what is missing in each."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.snapshot import EngineState
from drivers.instrument import LinkState
from gui.theme import Tone
from gui.viewmodels.moment import Moment, Place, RigState
from gui.viewmodels.retold import retold
from gui.words import say


@dataclass(frozen=True, slots=True)
class RailItem:
    """A place; `mark` is an empty text where nothing is missing."""

    place: Place
    chosen: bool
    mark: str
    tone: Tone
    tip: str


def rail(moment: Moment) -> tuple[RailItem, ...]:
    """Return the rail of a moment."""
    return tuple(_item(place, moment) for place in Place)


def _item(place: Place, moment: Moment) -> RailItem:
    mark, tone, tip = _missing(place, moment)
    key = list(Place).index(place) + 1
    return RailItem(place, place is moment.place, mark, tone, tip or f"{place.word} ({key})")


def _missing(place: Place, moment: Moment) -> tuple[str, Tone, str]:
    match place:
        case Place.JOB:
            return _to_enter(moment)
        case Place.SETUP:
            return _to_put_back(moment)
        case Place.RIG:
            if moment.rig.state is not RigState.CONNECTED or moment.snapshot is None:
                return "!", Tone.ATTENTION, say("No rig is connected.")
            if any(link.state is not LinkState.LINKED for link in moment.snapshot.links):
                return "✗", Tone.BAD, say("An instrument does not answer.")
        case Place.TEST:
            if moment.state in (EngineState.ASKING, EngineState.PAUSED):
                return "!", Tone.ATTENTION, say("The test waits for you.")
            if moment.state is EngineState.RUNNING:
                return "●", Tone.BAD, say("A test is running.")
        case Place.REPORT:
            if moment.job is not None and moment.job.fresh:
                return "●", Tone.GOOD, say("There is a new result.")
    return "", Tone.QUIET, ""


def _to_put_back(moment: Moment) -> tuple[str, Tone, str]:
    job = moment.job
    if job is not None and job.forbidden:
        return "✗", Tone.BAD, retold(job.forbidden)
    if job is not None and job.owed:
        return "!", Tone.ATTENTION, say("{count} to be put back.", count=len(job.owed))
    return "", Tone.QUIET, ""


def _to_enter(moment: Moment) -> tuple[str, Tone, str]:
    if moment.job is None:
        return "!", Tone.ATTENTION, say("No job is open.")
    if moment.job.plan.building.volume_m3 is None:
        return "!", Tone.ATTENTION, say("The volume of the building is missing.")
    return "", Tone.QUIET, ""
