"""The house of one student: the rig with its exercise, what the trainer does to it, and the truth as it came to be."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from drivers.clock import Clock
from simulators.exercise import Exercise, Hidden, Json, Span, span_of
from simulators.filetable import FileTable, InvalidFile
from simulators.happenings import HAPPENINGS, Happening
from simulators.plant import Action, Event
from simulators.scenarios import site_of

TRUTH_EVERY_S = 1.0
"""How often it is looked whether the truth has changed, in the time of the house."""


@dataclass(frozen=True, slots=True)
class _Thrown:
    """What the trainer let happen: the event, the word for it, and what the truth says of it, if anything."""

    event: Event
    what: str
    says: str
    title: str


@dataclass(frozen=True, slots=True)
class Moment:
    """Something on the timeline of a house, in its own time; `number` is for taking it back while it is to come.

    `at_s` is None for what the exercise has in store from when the fan first turns.
    """

    at_s: float | None
    after_fan_s: float
    title: str
    number: int | None
    past: bool


class Station:
    """One house; every method may be called from any thread."""

    def __init__(self, number: int, exercise: Exercise, seed: int, clock: Clock) -> None:
        """Build the house; the student comes later."""
        self.number = number
        self.exercise = exercise
        self.student = ""
        self.rig = exercise.rig(seed, clock, self._begun)
        self._clock = clock
        self._fan_s: float | None = None
        self._looked_s = -TRUTH_EVERY_S
        self._thrown: list[_Thrown] = []
        self._taken_back: list[Event] = []
        self._spans: list[tuple[float, Span]] = []

    def _begun(self, at_s: float) -> None:
        self._fan_s = at_s

    def advance(self, now_ns: int) -> None:
        """Bring the house to the present."""
        world = self.rig.world
        with world.lock:
            if world.next_ns <= now_ns:
                world.advance(now_ns)
            if world.plant.time_s - self._looked_s >= TRUTH_EVERY_S:
                self._look()

    def go_at(self, pace: float) -> None:
        """Let time in the house pass so many times faster; 0 lets it stand still."""
        with self.rig.world.lock:
            self.rig.world.go_at(pace, self._clock.now_ns())

    def throw(
        self, what: Mapping[str, object], says: str, *, title: str = "", after_s: float = 0.0, over_s: float = 0.0
    ) -> None:
        """Let something happen, by the keys of an event of an exercise; raises `InvalidFile` for what cannot."""
        happening = self._happening(what)
        self.do(happening.action, str(what["what"]), says, title=title, after_s=after_s, over_s=over_s)

    def mend(self, what: Mapping[str, object], title: str = "") -> None:
        """Undo something that happened, and let it not happen where it is still to come.

        Raises `InvalidFile` for what ends by itself.
        """
        happening = self._happening(what)
        if happening.undo is None:
            raise InvalidFile("now", None, "what", "this ends by itself")
        with self.rig.world.lock:
            for number in [at for at, item in enumerate(self._thrown) if item.title == title and title]:
                self.take_back(number)
            self.do(happening.undo, str(what["what"]), "", title=f"{title}: put right" if title else "")

    def do(
        self, action: Action, what: str, says: str, *, title: str = "", after_s: float = 0.0, over_s: float = 0.0
    ) -> None:
        """Let an action happen and keep it among what a student may notice; without `says` it is only weather."""
        with self.rig.world.lock:
            start_s = self.rig.plant.time_s + after_s
            event = Event(start_s, start_s + over_s, action)
            self.rig.plant.schedule(event)
            self._thrown.append(_Thrown(event, what, says, title))

    def take_back(self, number: int) -> bool:
        """Let something not happen that is still to come; false where it is too late."""
        with self.rig.world.lock:
            thrown = self._thrown[number]
            if thrown.event not in self._taken_back and self.rig.plant.call_off(thrown.event):
                self._taken_back.append(thrown.event)
                return True
            return False

    def timeline(self) -> tuple[Moment, ...]:
        """Return what happened and what is to come, of the exercise and of the trainer, in its order."""
        with self.rig.world.lock:
            now_s, fan_s = self.rig.plant.time_s, self._fan_s
            moments = []
            for hidden in self.exercise.hidden:
                at_s = 0.0 if hidden.at_s == 0.0 else None if fan_s is None else fan_s + hidden.at_s
                moments.append(Moment(at_s, hidden.at_s, hidden.says, None, at_s is not None and at_s <= now_s))
            for number, thrown in enumerate(self._thrown):
                if thrown.title and thrown.event not in self._taken_back:
                    at_s = thrown.event.start_s
                    past = at_s <= now_s
                    moments.append(Moment(at_s, 0.0, thrown.title, None if past else number, past))
            return tuple(sorted(moments, key=lambda item: (item.at_s is None, item.at_s or 0.0, item.after_fan_s)))

    def _happening(self, what: Mapping[str, object]) -> Happening:
        house = self.rig.house
        table = FileTable(what, "now", "", "")
        found = HAPPENINGS[table.choice("what", tuple(HAPPENINGS))](table, site_of(house, self.rig.rigging))
        if not isinstance(found, Happening):
            table.fail("what", "pull the cable with the switch of the student")
        table.finish()
        return found

    def truth(self) -> Json:
        """Return the truth of this house so far, to mark the job of its student with."""
        with self.rig.world.lock:
            self._look()
            # What was so before the fan turned was so from the beginning: the newest of it counts.
            since = [(self._since(at_s), span) for at_s, span in self._spans]
            begun = [index for index, (at_s, _) in enumerate(since) if at_s <= 0.0]
            kept = since[begun[-1] :] if begun else since
            spans = tuple(
                Span(at_s, span.depressurize_m3_h, span.pressurize_m3_h, span.wind_m_s, span.fitted)
                for at_s, span in kept
            )
            now_s = self.rig.plant.time_s
            thrown = tuple(
                Hidden(item.what, item.says, self._since(item.event.start_s), None)
                for item in self._thrown
                if item.says and item.event.start_s <= now_s and item.event not in self._taken_back
            )
            return self.exercise.truth(spans, (*self.exercise.hidden, *thrown))

    def _since(self, at_s: float) -> float:
        return 0.0 if self._fan_s is None else max(at_s - self._fan_s, 0.0)

    def _look(self) -> None:
        plant = self.rig.plant
        self._looked_s = plant.time_s
        span = span_of(plant, 0.0)
        if not self._spans or self._spans[-1][1] != span:
            self._spans.append((plant.time_s, span))
