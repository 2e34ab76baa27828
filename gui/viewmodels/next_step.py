"""What to do next: one sentence of the trade and one button, at every moment."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from acquisition.job import RecordState
from acquisition.snapshot import EngineState, Snapshot
from drivers.instrument import LinkState
from gui.viewmodels.moment import JobMoment, Moment, Place, RigState, directions_words


class Verb(StrEnum):
    """What the primary button does."""

    NOTHING = "nothing"
    CONNECT = "connect"
    GO_TO_RIG = "go to rig"
    NEW_JOB = "new job"
    GO_TO_VOLUME = "go to volume"
    GO_TO_TEST = "go to test"
    START = "start"
    ANSWER = "answer"
    PAUSE = "pause"
    HOLD = "hold"
    SEAL_STARTS = "seal starts"
    SEAL_DONE = "seal done"
    END_HOLD = "end hold"
    GO_ON = "go on"
    RESUME = "resume"
    OPEN_REPORT = "open report"
    SAVE_REPORT = "save report"


@dataclass(frozen=True, slots=True)
class NextStep:
    """The sentence, the word on the button and what the button does. `id` changes when a new decision is asked for."""

    sentence: str
    label: str
    verb: Verb
    ask_id: str = ""

    @property
    def id(self) -> str:
        """Tells one decision from another."""
        return f"{self.verb}:{self.ask_id}"


def next_step(moment: Moment) -> NextStep:
    """Return what is happening, or what to do now."""
    snapshot = moment.snapshot
    if moment.closing or moment.rig.state is RigState.CLOSING:
        return NextStep("Stopping: the fan is brought to its safe state.", "Please wait", Verb.NOTHING)
    if snapshot is not None and snapshot.state is not EngineState.IDLE:
        return _during(snapshot, moment)
    if moment.job is None:
        return NextStep("Open a job (Ctrl+O) or make a new one: it keeps every reading.", "New job", Verb.NEW_JOB)
    if moment.place is Place.REPORT and moment.shown is not None and moment.shown.result is not None:
        if not moment.report_saved:
            return NextStep(
                "This is the report as it will be saved. Look at what is missing, then save it.",
                "Save the report",
                Verb.SAVE_REPORT,
            )
    elif moment.job.fresh and moment.shown is not None:
        sentence = snapshot.sentence if snapshot is not None else "The test has ended."
        return NextStep(sentence, "Open the report", Verb.OPEN_REPORT)
    return _before(moment, moment.job)


def _during(snapshot: Snapshot, moment: Moment) -> NextStep:
    ask, place = snapshot.ask, moment.place
    if snapshot.state is EngineState.ASKING and ask is not None:
        if place not in (Place.TEST, Place.HUNT):  # nobody answers a question that is not on the screen
            return NextStep("The test asks something and waits for you.", "Go to the test", Verb.GO_TO_TEST, ask.id)
        return NextStep(_IN_SHORT.get(ask.id, ask.text), ask.choices[0], Verb.ANSWER, ask.id)
    if snapshot.state is EngineState.PAUSED:
        return NextStep(snapshot.paused_reason, "Go on", Verb.GO_ON)
    if snapshot.held is not None:
        held = f"Holding {snapshot.target_pa or 0.0:.0f} Pa".replace("-", "−")
        if place is not Place.HUNT:
            return NextStep(f"{held}: marks, leaks and figures are in Hunt.", "End the hold", Verb.END_HOLD)
        if moment.sealing:
            return NextStep(
                f"{held}. {moment.sealing} is being sealed: press D when it is done.",
                "Seal is done (D)",
                Verb.SEAL_DONE,
            )
        return NextStep(
            f"{held}. Press S when sealing starts, D when it is done.", "Mark sealing (S)", Verb.SEAL_STARTS
        )
    return NextStep(snapshot.sentence, "Pause test", Verb.PAUSE)


_IN_SHORT = {
    "safety": "Read the list in the panel. Go on only when all of it is so.",
    "outlook": "The wind speaks against a test today. Read why in the panel.",
    "zeros-between": "Will somebody cover the fan between the points? The panel says why it pays.",
}
"""For questions too long for one line; the panel in the place has them in full."""


def _before(moment: Moment, job: JobMoment) -> NextStep:
    """Return what is to be done before a test can start."""
    snapshot = moment.snapshot
    if snapshot is None:
        lead = f"{job.interrupted} " if job.interrupted else ""
        if moment.rig.first_source:
            text = f"{lead}No rig is connected. Connect the simulated one, or choose instruments in Rig."
            return NextStep(text, "Connect the simulated rig", Verb.CONNECT)
        return NextStep(f"{lead}No rig is connected. Choose its instruments in Rig.", "Open Rig", Verb.GO_TO_RIG)
    waiting = [link for link in snapshot.links if link.state is not LinkState.LINKED]
    if waiting:
        trouble = next((link.sentence for link in waiting if link.sentence), "")
        text = trouble or f"Waiting for {waiting[0].name} on {waiting[0].port} to answer."
        return NextStep(text, "Look at the rig", Verb.GO_TO_RIG)
    if job.interrupted and moment.place is not Place.HUNT:
        return NextStep(job.interrupted, "Go on with the test", Verb.RESUME)
    if job.plan.building.volume_m3 is None and moment.place is not Place.JOB:
        text = "The building's volume is missing: without it there is no air change rate."
        return NextStep(text, "Enter the volume", Verb.GO_TO_VOLUME)
    if moment.place is Place.HUNT:
        text = "Close windows and outside doors, open inside doors, then hold a pressure and look for leaks."
        return NextStep(text, "Hold the pressure", Verb.HOLD)
    return NextStep(_ready(moment, job), "Start the test", Verb.START)


def _ready(moment: Moment, job: JobMoment) -> str:
    if moment.snapshot is not None and moment.snapshot.last_error:
        return moment.snapshot.last_error
    ways = directions_words(job.plan.directions)
    if job.plan.building.volume_m3 is None:
        return f"Ready to {ways}. Without a volume the result is a flow and no air change rate."
    stopped = moment.shown is not None and moment.shown.live and moment.shown.state is not RecordState.COMPLETE
    if stopped and moment.snapshot is not None:
        return moment.snapshot.sentence
    return f"Ready to {ways}: close windows and outside doors, open inside doors, then start."
