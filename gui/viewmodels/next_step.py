"""What to do next: one sentence of the trade and one button, at every moment."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from acquisition.job import RecordState
from acquisition.snapshot import EngineState, Snapshot
from analysis.records import Direction
from drivers.instrument import LinkState
from gui.viewmodels.moment import JobMoment, Moment, Place, RigState, directions_words
from gui.viewmodels.retold import retold
from gui.words import mark, say


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
    GO_TO_SETUP = "go to set-up"
    SHOW_NO_TEST = "show no test"
    OPEN_REPORT = "open report"
    SAVE_REPORT = "save report"


@dataclass(frozen=True, slots=True)
class NextStep:
    """The sentence, the word on the button and what the button does. `id` changes when a new decision is asked for.

    `choice` is the answer as the test knows it, in whatever language the button says it.
    """

    sentence: str
    label: str
    verb: Verb
    ask_id: str = ""
    choice: str = ""

    @property
    def id(self) -> str:
        """Tells one decision from another."""
        return f"{self.verb}:{self.ask_id}"


def next_step(moment: Moment) -> NextStep:
    """Return what is happening, or what to do now."""
    snapshot = moment.snapshot
    if moment.closing or moment.rig.state is RigState.CLOSING:
        return NextStep(say("Stopping: the fan is brought to its safe state."), say("Please wait"), Verb.NOTHING)
    if snapshot is not None and snapshot.state is not EngineState.IDLE:
        return _during(snapshot, moment)
    if moment.job is None:
        return NextStep(
            say("Open a job (Ctrl+O) or make a new one: it keeps every reading."), say("New job"), Verb.NEW_JOB
        )
    if moment.place is Place.REPORT and moment.shown is not None and moment.shown.result is not None:
        if not moment.report_saved:
            return NextStep(
                say("This is the report as it will be saved. Look at what is missing, then save it."),
                say("Save the report"),
                Verb.SAVE_REPORT,
            )
    elif moment.job.fresh and moment.shown is not None and moment.place is not Place.HUNT:
        sentence = retold(snapshot.sentence) if snapshot is not None else say("The test has ended.")
        return NextStep(sentence, say("Open the report"), Verb.OPEN_REPORT)
    return _before(moment, moment.job)


def _during(snapshot: Snapshot, moment: Moment) -> NextStep:
    ask, place = snapshot.ask, moment.place
    if snapshot.state is EngineState.ASKING and ask is not None:
        if place not in (Place.TEST, Place.HUNT):  # nobody answers a question that is not on the screen
            return NextStep(
                say("The test asks something and waits for you."), say("Go to the test"), Verb.GO_TO_TEST, ask.id
            )
        first = ask.choices[0]
        return NextStep(retold(_IN_SHORT.get(ask.id, ask.text)), retold(first), Verb.ANSWER, ask.id, first)
    if snapshot.state is EngineState.PAUSED:
        return NextStep(retold(snapshot.paused_reason), say("Go on"), Verb.GO_ON)
    if snapshot.held is not None:
        target = f"{snapshot.target_pa or 0.0:.3g}".replace(".", moment.display.decimal_mark)
        held = say("Holding {target} Pa", target=target).replace("-", "−")
        if place is not Place.HUNT:
            return NextStep(
                say("{held}: marks, leaks and figures are in Hunt.", held=held), say("End the hold"), Verb.END_HOLD
            )
        if moment.sealing:
            return NextStep(
                say("{held}. {sealing} is being sealed: press D when it is done.", held=held, sealing=moment.sealing),
                say("Seal is done (D)"),
                Verb.SEAL_DONE,
            )
        return NextStep(
            say("{held}. Press S when sealing starts, D when it is done.", held=held),
            say("Mark sealing (S)"),
            Verb.SEAL_STARTS,
        )
    return NextStep(retold(snapshot.sentence), say("Pause test"), Verb.PAUSE)


_IN_SHORT = {
    "safety": mark("Read the list in the panel. Go on only when all of it is so."),
    "outlook": mark("The wind speaks against a test today. Read why in the panel."),
    "zeros-between": mark("Will somebody cover the fan between the points? The panel says why it pays."),
}
"""For questions too long for one line; the panel in the place has them in full."""


def _before(moment: Moment, job: JobMoment) -> NextStep:
    """Return what is to be done before a test can start."""
    snapshot = moment.snapshot
    if snapshot is None:
        lead = f"{job.interrupted} " if job.interrupted else ""
        if moment.rig.first_source:
            text = say("{lead}No rig is connected. Connect the simulated one, or choose instruments in Rig.", lead=lead)
            return NextStep(text, say("Connect the simulated rig"), Verb.CONNECT)
        return NextStep(
            say("{lead}No rig is connected. Choose its instruments in Rig.", lead=lead), say("Open Rig"), Verb.GO_TO_RIG
        )
    waiting = [link for link in snapshot.links if link.state is not LinkState.LINKED]
    if waiting:
        trouble = next((retold(link.sentence) for link in waiting if link.sentence), "")
        text = trouble or say("Waiting for {name} on {port} to answer.", name=waiting[0].name, port=waiting[0].port)
        return NextStep(text, say("Look at the rig"), Verb.GO_TO_RIG)
    if job.forbidden:
        if moment.place is Place.SETUP:
            return NextStep(retold(job.forbidden), say("Write why there is no test"), Verb.SHOW_NO_TEST)
        return NextStep(retold(job.forbidden), say("Look at the answers"), Verb.GO_TO_SETUP)
    if job.interrupted and moment.place is not Place.HUNT:
        return NextStep(job.interrupted, say("Go on with the test"), Verb.RESUME)
    if job.plan.building.volume_m3 is None and moment.place is not Place.JOB:
        text = say("The building's volume is missing: without it there is no air change rate.")
        return NextStep(text, say("Enter the volume"), Verb.GO_TO_VOLUME)
    if moment.place is Place.HUNT:
        text = say("Close windows and outside doors, open inside doors, then hold a pressure and look for leaks.")
        return NextStep(text, say("Hold the pressure"), Verb.HOLD)
    return NextStep(_ready(moment, job), say("Start the test"), Verb.START)


def _ready(moment: Moment, job: JobMoment) -> str:
    if moment.snapshot is not None and moment.snapshot.last_error:
        return retold(moment.snapshot.last_error)
    ways = directions_words((Direction.PRESSURIZE,) if job.pressurize_only else job.plan.directions)
    if job.plan.building.volume_m3 is None:
        return say("Ready to {ways}. Without a volume the result is a flow and no air change rate.", ways=ways)
    stopped = moment.shown is not None and moment.shown.live and moment.shown.state is not RecordState.COMPLETE
    if stopped and moment.snapshot is not None:
        return retold(moment.snapshot.sentence)
    if job.cap_pa is not None:
        return say(
            "Ready to {ways}, at most {cap} Pa: close windows and outside doors, open inside doors, then start.",
            ways=ways,
            cap=f"{job.cap_pa:g}",
        )
    return say("Ready to {ways}: close windows and outside doors, open inside doors, then start.", ways=ways)
