"""The hunt for leaks behind the window: the session while a pressure is held, and edits of the leaks. Knows no Qt."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import TypeVar

from acquisition.engine import Engine
from acquisition.job import Job, SealingMark
from acquisition.sealing.hold import HoldLook
from acquisition.sealing.leaks import Leak, LeakStatus
from acquisition.sealing.session import HoldSession, last_exponent, withdraw
from acquisition.snapshot import Activity, EngineState, Severity, Snapshot
from analysis.errors import InvalidInput
from analysis.records import Direction
from analysis.sealing.levelled import USUAL_EXPONENT
from drivers.clock import Clock, seconds
from gui.errands import Errands
from gui.tone import Tone
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.leak_words import place_words
from gui.words import say

LOWEST_HELD_PA, HIGHEST_HELD_PA = 4.0, 75.0
"""Between which pressures a held one can be moved: the fan is stopped at 80 Pa."""
LOOK_EVERY_NS = seconds(1.0)
STEERED = (Activity.APPROACH, Activity.SETTLE, Activity.HOLD)
"""In these a wish for another pressure, or for the end, is followed at once."""

T = TypeVar("T")
Tell = Callable[[Severity, str], None]


class Hunting:
    """Looks once a second while a pressure is held, and does what the keys ask for. `changed` is called with news."""

    def __init__(self, errands: Errands, tell: Tell, changed: Callable[[], None]) -> None:
        """Begin without a held pressure."""
        self.session: HoldSession | None = None
        self.look: HoldLook | None = None
        """What was seen last; it stays when the hold has ended, until the next begins."""
        self.tone = Tone()
        self._errands = errands
        self._tell = tell
        self._changed = changed
        self._job: Job | None = None
        self._engine: Engine | None = None
        self._clock: Clock | None = None
        self._noted: SealingMark | None = None
        self._looking = False
        self._looked_ns = 0
        self._exponent: tuple[int, float] | None = None
        self._undo: list[Callable[[], object]] = []

    @property
    def can_undo(self) -> bool:
        """Whether a mark or an edit of a leak can be taken back."""
        return bool(self._undo)

    @property
    def exponent(self) -> float:
        """The flow exponent of the last test of the job, a usual one without."""
        known = self._exponent
        if self._job is None or known is None or known[0] != len(self._job.tests()):
            value = USUAL_EXPONENT if self._job is None else last_exponent(self._job)
            self._exponent = known = (0 if self._job is None else len(self._job.tests()), value)
        return known[1]

    @property
    def sealing(self) -> str:
        """Name of the leak that is being sealed, empty while none is."""
        mark = self.session.sealing if self.session is not None else None
        leak = None if mark is None or mark.leak is None or self._job is None else self._job.leaks.leaks.get(mark.leak)
        return (
            ""
            if mark is None
            else say("Leak {leak}", leak=mark.leak)
            if leak is None
            else f"{mark.leak} {place_words(leak)}"
        )

    # --- what goes on by itself

    def tend(self, job: Job | None, engine: Engine | None, clock: Clock, shown: Snapshot | None) -> None:
        """Follow the held pressure, begin and end the session with it."""
        self._clock, self._engine = clock, engine
        if job is not self._job:
            self._job, self.session, self.look = job, None, None
            self._exponent = None
            self._undo.clear()
        if job is None or engine is None or shown is None or not engine.busy:
            self._end()
            return
        if shown.held is None:
            return
        if self.session is None:
            self.session, self.look = HoldSession(job, engine, clock), None
            self._looked_ns = shown.now_ns - LOOK_EVERY_NS
        if not self._looking and shown.now_ns - self._looked_ns >= LOOK_EVERY_NS:
            self._look(self.session, shown)

    def _look(self, session: HoldSession, shown: Snapshot) -> None:
        self._looking, self._looked_ns = True, shown.now_ns

        def seen(look: HoldLook | None) -> None:
            self._looking = False
            if look is not None and session is self.session:
                self.look = look
                if look.now_m3_h is not None and look.since is not None:
                    self.tone.play(look.now_m3_h.value, look.since.before_m3_h)
                self._changed()

        def failed(error: Exception) -> None:
            self._looking = False
            self._tell(Severity.ALARM, say("What was held cannot be judged: {error}.", error=error_words(error)))

        self._errands.run(lambda: session.look(shown), seen, failed)

    def _end(self) -> None:
        if self.session is not None:
            self.session.close(self.look)
            self.session = None
            self._changed()

    # --- the pressure

    def direction(self, wished: Direction | None) -> Direction:
        """Return the direction in which a pressure would be held: the wished one, or the first of the plan."""
        if wished is not None:
            return wished
        return self._job.draft().directions[0] if self._job is not None else Direction.DEPRESSURIZE

    def hold_at(self, size_pa: float, direction: Direction | None = None) -> bool:
        """Bring the held pressure to another size, in its own direction or another; false where none is held."""
        held_pa = self._held_pa()
        if held_pa is None or self._engine is None:
            return False
        sign = math.copysign(1.0, held_pa) if direction is None else direction.sign
        self._engine.hold_at(sign * min(max(abs(size_pa), LOWEST_HELD_PA), HIGHEST_HELD_PA))
        return True

    def hold_by(self, step_pa: float) -> None:
        """Raise or lower the pressure that is held."""
        self.hold_at(abs(self._held_pa() or 0.0) + step_pa)

    def hold_other_way(self) -> None:
        """Hold the same pressure in the other direction."""
        held_pa = self._held_pa()
        if held_pa is not None and self._engine is not None:
            self._engine.hold_at(-held_pa)

    def end_hold(self) -> None:
        """End holding a pressure, or the way to it: at a question or a zero-flow record nothing is held yet."""
        if self._engine is None:
            return
        shown = self._engine.snapshot()
        if shown.state is EngineState.RUNNING and shown.activity in STEERED:
            self._engine.end_hold()
        elif shown.hold_pa is not None:
            self._engine.abandon()

    def zero_again(self) -> None:
        """Read the zero-flow pressure again, then hold the pressure on."""
        if self._engine is None or self._engine.snapshot().held is None:
            self._tell(Severity.ATTENTION, say("No pressure is held: begin to hold one first (H)."))
        else:
            self._engine.zero_again()

    def _held_pa(self) -> float | None:
        """Return the target of the hold that is under way: a wish is followed before it is reached, too."""
        shown = self._engine.snapshot() if self._engine is not None else None
        return shown.hold_pa if shown is not None else None

    # --- what the keys ask for

    def still_open(self, number: int | None) -> int | None:
        """Return the number where that leak is still to be sealed, else None."""
        leak = self._job.leaks.leaks.get(number) if self._job is not None and number is not None else None
        return number if leak is not None and leak.status is LeakStatus.FOUND else None

    def starts(self, number: int | None) -> int | None:
        """Mark that a leak is being sealed; return its number, None where that cannot be."""
        return self._marked(lambda session: session.starts(number))

    def done(self) -> int | None:
        """Mark that the seal is done; return the leak."""
        return self._marked(lambda session: session.done())

    def begin_note(self) -> None:
        """Remember the moment at which somebody begins to type a note."""
        self._noted = self.session.moment() if self.session is not None else None

    def note(self, text: str) -> bool:
        """Keep a note with the moment at which it was begun; return whether it was kept."""
        return bool(self._marked(lambda session: session.note(text, self._noted)))

    def add_photo(self, number: int | None, subject: str, name: str, content: bytes) -> None:
        """Put a copy of a picture into the job, and to a leak where it is of one."""
        job, clock = self._job, self._clock
        if job is None or clock is None:
            return
        try:
            photo = job.edit_house().add_photo(subject, name, content, clock.utc())
        except InvalidInput as error:
            self._say(error)
            return
        if number is not None:
            self.edit(number, lambda leak: replace(leak, photos=(*leak.photos, photo.id)))
        self._changed()

    def count_from_here(self) -> None:
        """Count the change from this moment on."""
        self._marked(lambda session: session.count_from_here())

    def new_leak(self) -> int | None:
        """Add a leak that was found now; return its number. Without a held pressure it is added without a mark."""
        if self.session is not None:
            return self._marked(lambda session: session.new_leak())
        job, clock = self._job, self._clock
        if job is None or clock is None:
            return None
        number = job.edit_leaks().add(Leak("other"), clock.utc())
        self._undo.append(lambda: withdraw(job.edit_leaks(), number, clock))
        self._changed()
        return number

    def edit(self, number: int, change: Callable[[Leak], Leak]) -> bool:
        """Put what `change` makes of a leak in its place; return whether that could be."""
        job, clock = self._job, self._clock
        if job is None or clock is None:
            return False
        former = job.leaks.leaks.get(number)
        if former is None:
            return False
        try:
            changed = change(former)
        except InvalidInput as error:
            self._say(error)
            return False
        if changed != former:
            job.edit_leaks().change(number, changed, clock.utc())
            self._undo.append(lambda: job.edit_leaks().change(number, former, clock.utc()))
            self._changed()
        return True

    def undo(self) -> bool:
        """Take the last mark or edit back; return whether there was one."""
        if not self._undo:
            return False
        self._undo.pop()()
        self._changed()
        return True

    def _marked(self, act: Callable[[HoldSession], T]) -> T | None:
        session = self.session
        if session is None:
            self._tell(Severity.ATTENTION, say("No pressure is held: begin to hold one first (H)."))
            return None
        try:
            answer = act(session)
        except InvalidInput as error:
            self._say(error)
            return None
        self._undo.append(session.undo)
        self._changed()
        return answer

    def _say(self, error: InvalidInput) -> None:
        self._tell(Severity.ATTENTION, sentence(error))
