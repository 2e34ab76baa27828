"""What people do while a pressure is held, and what the program tells them: the same for window and terminal.

Marks go into the job at once; what a seal brought is stored as soon as it is sure, and again when nothing more will be
learnt of it.
"""

from __future__ import annotations

import json
import threading
from collections.abc import Callable
from dataclasses import replace

from acquisition.engine import Engine
from acquisition.job import Job, SealingMark, SealingMarkKind
from acquisition.job.leaks import LeakRegister
from acquisition.sealing.held import SealedLook
from acquisition.sealing.hold import HoldLook, HoldWatch
from acquisition.sealing.leaks import Drop, Leak, LeakStatus
from acquisition.snapshot import Snapshot
from analysis.errors import InvalidInput
from analysis.sealing.change import AFTER_S, Sureness
from analysis.sealing.levelled import USUAL_EXPONENT, USUAL_UNSURE
from drivers.clock import Clock

COUNTED_FROM = "counted from here"
"""Text of the note from which on the change is counted."""
UNKNOWN_PART = "other"
LEAST_UNSURE = 0.02
"""No exponent of a house is known better than this (our choice): sealing changes it too."""


class HoldSession:
    """Belongs to one job and the engine that runs on it. Marks may be set while another thread looks."""

    def __init__(self, job: Job, engine: Engine, clock: Clock) -> None:
        """Begin without a held pressure; the exponent is that of the last test of the job."""
        self._job = job
        self._engine = engine
        self._clock = clock
        self._exponent = last_exponents(job)
        self._since_utc = clock.utc()
        self._watch: HoldWatch | None = None
        self._stored: dict[SealingMark, Drop] = {}
        self._undo: list[Callable[[], None]] = []
        self._lock = threading.Lock()

    # --- what is so

    @property
    def register(self) -> LeakRegister:
        """The leaks of the job."""
        return self._job.leaks

    @property
    def marks(self) -> tuple[SealingMark, ...]:
        """The marks since this hold began, oldest first."""
        return tuple(mark for mark in self._job.leaks.marks if mark.utc >= self._since_utc)

    @property
    def sealing(self) -> SealingMark | None:
        """The mark of the seal that is being made, None when none is."""
        of_seals = [item for item in self.marks if item.kind in (SealingMarkKind.STARTS, SealingMarkKind.DONE)]
        return of_seals[-1] if of_seals and of_seals[-1].kind is SealingMarkKind.STARTS else None

    @property
    def counted_from(self) -> SealingMark | None:
        """The mark from which on the change is counted, None: from the beginning."""
        found = [item for item in self.marks if item.kind is SealingMarkKind.NOTE and item.text == COUNTED_FROM]
        return found[-1] if found else None

    @property
    def can_undo(self) -> bool:
        """Whether there is something to take back."""
        return bool(self._undo)

    # --- what is done

    def starts(self, number: int | None = None) -> int:
        """Mark that a leak is being sealed, an unnamed new one without a number; return its number.

        Raises `InvalidInput` while another seal is being made.
        """
        open_mark = self.sealing
        if open_mark is not None:
            raise InvalidInput("seal", open_mark.leak, "mark it as done first", shown=f"of leak {open_mark.leak} begun")
        leak = self._edit().leaks.get(number) if number is not None else None
        if number is not None and leak is not None:
            self._mark(SealingMarkKind.STARTS, number)
            return number
        number = self.new_leak()
        self._mark(SealingMarkKind.STARTS, number)
        take_back_start, take_back_leak = self._undo.pop(), self._undo.pop()

        def take_back() -> None:
            take_back_start()
            take_back_leak()

        self._undo.append(take_back)
        return number

    def done(self) -> int | None:
        """Mark that the seal is done; return the leak. Raises `InvalidInput` where none was begun."""
        begun = self.sealing
        if begun is None:
            raise InvalidInput("seal", None, "mark first that the sealing starts", shown="not begun")
        self._mark(SealingMarkKind.DONE, begun.leak)
        leak = self.register.leaks.get(begun.leak) if begun.leak is not None else None
        if leak is not None and begun.leak is not None and leak.status is LeakStatus.FOUND:
            minutes = leak.minutes
            if minutes is None:
                minutes = round(max((self._clock.utc() - begun.utc).total_seconds() / 60.0, 0.1), 1)
            number, former = begun.leak, leak
            self._edit().change(number, replace(leak, status=LeakStatus.SEALED, minutes=minutes), self._clock.utc())
            take_back_mark = self._undo.pop()

            def take_back() -> None:
                take_back_mark()
                self._edit().change(number, former, self._clock.utc())

            self._undo.append(take_back)
        return begun.leak

    def note(self, text: str, at: SealingMark | None = None) -> SealingMark:
        """Keep a note, at the moment of `at` where it was begun then; raises `InvalidInput` for an empty one."""
        words = " ".join(text.split())
        if not words:
            raise InvalidInput("note", text, "some words are needed", shown="empty")
        return self._mark(SealingMarkKind.NOTE, None, words, at)

    def moment(self) -> SealingMark:
        """Return a mark of this moment that is not kept yet, for a note that somebody begins to type."""
        return SealingMark(self._clock.utc(), self._clock.now_ns(), SealingMarkKind.NOTE)

    def count_from_here(self) -> None:
        """Count the change from this moment on."""
        self._mark(SealingMarkKind.NOTE, None, COUNTED_FROM)

    def new_leak(self, part: str = UNKNOWN_PART) -> int:
        """Add a leak that was found now, and mark it; return its number. Raises `InvalidInput` for an unknown part."""
        number = self._edit().add(Leak(part), self._clock.utc())
        self._mark(SealingMarkKind.NEW_LEAK, number)
        take_back_mark = self._undo.pop()

        def take_back() -> None:
            take_back_mark()
            withdraw(self._edit(), number, self._clock)

        self._undo.append(take_back)
        return number

    def zero_again(self) -> None:
        """Read the zero-flow pressure again, then hold the pressure on."""
        self._engine.zero_again()

    def undo(self) -> bool:
        """Take the last mark back; measured data is never taken back. Return whether there was one."""
        if not self._undo:
            return False
        self._undo.pop()()
        return True

    # --- what is seen

    def look(self, shown: Snapshot) -> HoldLook | None:
        """Return what the held pressure says, None while none is held. Stores what seals brought."""
        with self._lock:
            run, held = self._engine.run, shown.held
            if run is None or held is None or shown.target_pa is None:
                return None
            watch = self._watch
            if watch is None or watch.run is not run or watch.held_pa != abs(shown.target_pa):
                test = self._job.tests()[-1]
                watch = HoldWatch(run, shown.target_pa, held.began_ns, test.plan, test.rig, self._exponent)
                self._watch = watch
            elif watch.began_ns != held.began_ns:
                watch.go_on(held.began_ns)
            look = watch.look(self.marks, self.counted_from)
            self._store(look)
            return look

    def _store(self, look: HoldLook) -> None:
        for item in look.sealed:
            if item.mark.leak is None or item.change is None or item.mark not in self.marks:
                continue
            final = item in look.final
            if not final and not (item.change.sureness is Sureness.SURE and item.change.after_s >= AFTER_S):
                continue
            known = self._stored.get(item.mark)
            if known is None or final:
                drop = Drop.of(item.change, look.levelling.reference_pa)
                if drop != known:
                    self._edit().measured(item.mark.leak, drop, self._clock.utc())
                    self._stored[item.mark] = drop

    def close(self, look: HoldLook | None) -> None:
        """Store what was seen of the last seals when the pressure is no longer held."""
        for item in () if look is None else look.sealed:
            self._store_last(item, look)

    def _store_last(self, item: SealedLook, look: HoldLook | None) -> None:
        if look is None or item.change is None or item.mark.leak is None or item.mark in self._stored:
            return
        drop = Drop.of(item.change, look.levelling.reference_pa)
        self._edit().measured(item.mark.leak, drop, self._clock.utc())
        self._stored[item.mark] = drop

    def _mark(
        self, kind: SealingMarkKind, leak: int | None, text: str = "", at: SealingMark | None = None
    ) -> SealingMark:
        utc, t_ns = (self._clock.utc(), self._clock.now_ns()) if at is None else (at.utc, at.t_ns)
        mark = SealingMark(utc, t_ns, kind, leak, text)
        self._edit().mark(mark)
        self._undo.append(lambda: self._edit().take_back(mark, self._clock.utc()))
        return mark

    def _edit(self) -> LeakRegister:
        return self._job.edit_leaks()


def withdraw(register: LeakRegister, number: int, clock: Clock) -> None:
    """Say of a leak that it was entered by mistake."""
    leak = register.leaks.get(number)
    if leak is not None:
        register.change(number, replace(leak, status=LeakStatus.WITHDRAWN), clock.utc())


def last_exponent(job: Job) -> float:
    """Return the flow exponent of the last test of a job that has a result, a usual one without."""
    return last_exponents(job)[0]


def last_exponents(job: Job) -> tuple[float, float]:
    """Return the exponent of the last test of a job that has a result, and how far it may be off (95 %)."""
    for record in reversed(job.tests()):
        if record.result_json:
            runs = json.loads(record.result_json).get("runs", ())
            found = [run["n"] for run in runs if run.get("n")]
            if found:
                value = sum(float(item["value"]) for item in found) / len(found)
                half = max(float(item["high"]) - float(item["low"]) for item in found) / 2.0
                return min(max(value, 0.5), 1.0), min(max(half, LEAST_UNSURE), USUAL_UNSURE)
    return USUAL_EXPONENT, USUAL_UNSURE
