"""The engine: one loop that reads the rig, runs a procedure, steers the fan and keeps everybody safe.

The loop is a pump of the clock. At every tick it does what was asked of it since the last one, takes the readings,
hears the guard, runs the step that is due, asks for the fan's speed and publishes a snapshot. Whatever happens, a run
that ends in any way leaves the fan in its safe state.
"""

from __future__ import annotations

import logging
import threading
from collections import deque
from collections.abc import Callable, Sequence

from acquisition.atonce import fit
from acquisition.bench import Bench, new_bench
from acquisition.computer import Computer
from acquisition.executing import executor_of
from acquisition.execution import Done, Executor, Retake
from acquisition.fanbyhand import StillBlowing, warning
from acquisition.fancommand import FanCommand
from acquisition.guard import Guard
from acquisition.hosestep import HoseCheck
from acquisition.intake import Intake
from acquisition.job.recorder import Recorder
from acquisition.job.records import Ending
from acquisition.linkreturn import LinkReturn
from acquisition.live import LiveBuffer
from acquisition.noticing import notice
from acquisition.openrig import OpenRig
from acquisition.plan import TestPlan
from acquisition.procedures import again_from, steps_on
from acquisition.progress import RunInProgress, TestProgress
from acquisition.publish import LoopView, Publisher
from acquisition.rangedoubt import LASTING, ask_to_fit, correct_range
from acquisition.repair import ANEW, heed, looking_again, settle_lasting, take_again
from acquisition.rig import Role
from acquisition.snapshot import EngineState, Severity, Snapshot
from acquisition.standing import Standing
from acquisition.stepqueue import StepQueue
from acquisition.steps import Ask, Step, StopFan, Wish
from acquisition.typedgauge import ASKED_FOR
from acquisition.watchdog import LINE_ALARMS, LINK_ALARMS, Alarm, AlarmKind
from analysis.errors import InvalidInput
from analysis.records import Air
from drivers.battery import Battery
from drivers.clock import Clock, Hosted, seconds

PERIOD_S = 0.1
MOST_LOOKS = 4
"""How often at most readings are taken in a period, from a gauge that is faster than the loop."""
STEPS_PER_TICK = 20

log = logging.getLogger(__name__)


class Engine:
    """Runs tests on one rig. Every public call is thread-safe and returns at once; the loop does the work."""

    def __init__(
        self,
        rig: OpenRig,
        clock: Clock,
        *,
        auto_answer: bool = False,
        battery: Callable[[], Battery | None] = lambda: None,
    ) -> None:
        """Take over a rig; `battery` tells how much this computer has left.

        With `auto_answer` questions get their first choice, and a test goes on by itself when a lost link is back.
        """
        self.live = LiveBuffer()
        self.fault: BaseException | None = None
        self._rig = rig
        self._clock = clock
        self._auto_answer = auto_answer
        self._mail: deque[Callable[[int], None]] = deque()
        self._guard = Guard(rig, clock, battery)
        self._computer = Computer(self._guard, clock)
        self._intake = Intake(rig, self.live)
        self._publisher = Publisher(rig, clock, self.live)
        self._state = EngineState.IDLE
        self._bench: Bench | None = None
        self._step: Step | None = None
        self._executor: Executor | None = None
        self._ask: Ask | None = None
        self._queue = StepQueue()
        self._fitting: tuple[int, str] | None = None
        """Fan and range that somebody was asked to fit."""
        self._paused_reason = ""
        self._paused_kind: AlarmKind | None = None
        self._return = LinkReturn(rig, self.live, clock)
        self._last_tick_ns: int | None = None
        self._due_ns = 0
        looks = min(max(round(rig.rate_hz * PERIOD_S), 1), MOST_LOOKS)
        self._look_ns = seconds(PERIOD_S / looks)
        self._fan = FanCommand(rig, self._guard)
        self._blowing = StillBlowing()
        self._last_error = ""
        self._busy = threading.Event()
        self._hosted: Hosted | None = None
        self._snapshot = self._publish(clock.now_ns())

    # --- what others ask ------------------------------------------------------------------------------------------

    def start(self) -> None:
        """Begin to tick."""
        self._due_ns = self._clock.now_ns()
        self._hosted = self._clock.host(self.tick, "engine")
        self._guard.start()

    def begin(self, plan: TestPlan, recorder: Recorder, standing: Standing | None = None) -> None:
        """Start a test, or go on with one that was cut short and has come to `standing`.

        Raises `InvalidInput` when another one is running.
        """
        if self._busy.is_set():
            raise InvalidInput("test", "running", "one test at a time")
        if plan.hold and self._rig.spec.by_hand & ASKED_FOR:
            raise InvalidInput("hold", "typed gauge", "a pressure is held where the program reads the gauges")
        self._busy.set()
        self._mail.append(lambda now_ns: self._do_begin(plan, recorder, standing))

    @property
    def busy(self) -> bool:
        """Whether a test is running, asking or paused."""
        return self._busy.is_set()

    def answer(self, ask_id: str, choice: str) -> None:
        """Answer the question that is open; an answer to another one is ignored."""
        self._mail.append(lambda now_ns: self._do_answer(ask_id, choice, now_ns))

    def pause(self) -> None:
        """Stop the fan and pause the running test."""
        self._mail.append(lambda now_ns: self._do_pause(f"Paused. {self._rest_words}", None, now_ns))

    def resume(self) -> None:
        """Go on with a paused test from its last checkpoint."""
        self._mail.append(self._do_resume)

    def stop_fan(self) -> None:
        """Bring the fan to rest at once, from any thread, and pause a running test."""
        self._guard.stop()
        self._mail.append(lambda now_ns: self._do_pause(f"Stopped by hand. {self._rest_words}", None, now_ns))

    def abandon(self) -> None:
        """End the test where it is; what was recorded stays."""
        self._mail.append(lambda now_ns: self._finish("stopped", now_ns))

    def hold_at(self, target_pa: float) -> None:
        """Bring a held pressure to another target; its sign is that of the direction."""
        self._mail.append(lambda now_ns: self._do_wish(Wish(target_pa)))

    def end_hold(self) -> None:
        """End holding a pressure: the fan stops, the record is closed."""
        self._mail.append(lambda now_ns: self._do_wish(Wish(None)))

    def zero_again(self) -> None:
        """Read the zero-flow pressure again, then hold the pressure on."""
        self._mail.append(lambda now_ns: self._do_wish(Wish(None, zero=True)))

    def enter(self, role: Role, value: float) -> None:
        """Take a reading (SI) that a person typed; raises `ValueError` where nothing is typed."""
        self._rig.enter(role, value)

    def take_again(self, window: int | None = None) -> None:
        """Take a point of the running direction once more and leave the old one out; without one, begin it anew."""
        self._mail.append(lambda now_ns: self._do_again(window, now_ns))

    def fit_range(self, name: str, fan: int = 0) -> None:
        """Fit another flow range on a fan, which is stopped for it; raises `InvalidInput` for one that there is not."""
        self._rig.spec.with_fitted(fan, name)
        self._mail.append(lambda now_ns: self._do_fit(fan, name, now_ns))

    def strike(self, window: int, reason: str) -> None:
        """Leave a point out of the result, with a reason."""
        self._mail.append(lambda now_ns: self._with_progress(lambda progress: progress.strike(window, reason)))

    def restore(self, window: int) -> None:
        """Take a struck point back."""
        self._mail.append(lambda now_ns: self._with_progress(lambda progress: progress.restore(window)))

    def correct_range(self, windows: Sequence[int], name: str, fan: int = 0) -> None:
        """Work points out anew with the range that they were read with; as entered without a name.

        Raises `InvalidInput` for a range that there is not. Where it is that of the newest point it stays fitted.
        """
        if name:
            self._rig.spec.with_fitted(fan, name)
        self._mail.append(lambda now_ns: self._do_correct(tuple(windows), name, fan, now_ns))

    def accept_identity(self, link: str) -> None:
        """Go on with the instrument that now answers on a link."""
        self._mail.append(lambda now_ns: self._rig.accept_identity(link))

    def set_air(self, air: Air) -> None:
        """Tell the air data by which the live flow is shown while no test runs."""
        self._publisher.air = air

    def snapshot(self) -> Snapshot:
        """Return the newest snapshot."""
        return self._snapshot

    @property
    def run(self) -> RunInProgress | None:
        """The run that is being recorded, to look at: its readings grow while somebody does. None between runs."""
        bench = self._bench
        return None if bench is None else bench.progress.current

    def close(self) -> None:
        """End a running test, bring the fan to its safe state, confirm it, close the rig."""
        if self._hosted is not None:
            self._hosted.stop()
            self._hosted = None
        self._guard.end()
        if self._busy.is_set():
            self._guard.stop()
            self._finish("stopped", self._clock.now_ns())
        self._rig.close()
        self._snapshot = self._publish(self._clock.now_ns())

    # --- the loop -------------------------------------------------------------------------------------------------

    def tick(self, now_ns: int) -> int:
        """Do one round and return the next deadline; deadlines are absolute, missed ones are skipped.

        Between two rounds the readings of a fast gauge are taken, so that what is shown is not older than need be.
        """
        whole = now_ns >= self._due_ns
        try:
            if whole:
                self._round(now_ns)
            else:
                self._take()
        except Exception as error:
            log.exception("the engine failed")
            self.fault = error
            self._guard.stop()
            self._last_error = f"The test ended by a fault of the program ({type(error).__name__}: {error})."
            self._finish("faulted", now_ns)
        self._snapshot = self._publish(now_ns)
        if whole:
            self._due_ns += seconds(PERIOD_S)
            if self._due_ns <= now_ns:
                self._due_ns = now_ns + seconds(PERIOD_S)
        return min(self._due_ns, now_ns + self._look_ns)

    def _round(self, now_ns: int) -> None:
        elapsed_s = PERIOD_S if self._last_tick_ns is None else (now_ns - self._last_tick_ns) / 1e9
        self._last_tick_ns = now_ns
        while self._mail:
            self._mail.popleft()(now_ns)
        self._take()
        self._look_at_computer(now_ns)
        alarm = self._guard.alarm
        if alarm is not None and self._state is EngineState.RUNNING:
            self._alarm(alarm, now_ns)
        if self._state is EngineState.RUNNING and self._bench is not None:
            self._bench.dt_s = min(elapsed_s, 0.5)
            self._notice(self._bench, now_ns)
            self._advance(self._bench, now_ns)
        elif self._state is EngineState.PAUSED:
            self._look_for_links(now_ns)
        self._blowing.look(self._bench, now_ns, paused=self._state is EngineState.PAUSED)
        if self._bench is not None and self._state is not EngineState.RUNNING:
            self._bench.unwatched = True
        self._fan.command(self._bench, now_ns, running=self._state is EngineState.RUNNING)

    def _look_at_computer(self, now_ns: int) -> None:
        """Notice that the computer slept, which interrupts a test, and that its battery runs low."""
        bench, found = self._bench, self._computer.look(now_ns)
        if bench is None or bench.progress.current is None:
            return
        if found.slept and self._state in (EngineState.RUNNING, EngineState.PAUSED):
            bench.progress.mark("time-gap", found.slept, now_ns, notable=True)
            self._do_pause(f"{found.slept} {self._rest_words}", AlarmKind.SLEPT, now_ns)
        if found.battery:
            bench.progress.flag("battery-low", Severity.ATTENTION, found.battery)

    def _take(self) -> None:
        self._intake.take(None if self._bench is None else self._bench.progress)

    def _notice(self, bench: Bench, now_ns: int) -> None:
        # A hose check asks by itself what it found.
        asks = not self._auto_answer and not isinstance(self._executor, HoseCheck)
        asked = notice(bench, self._rig, self._executor, now_ns, asks=asks)
        if asked is not None:
            self._fitting = (0, bench.range_asked.fitted) if bench.range_asked is not None else None
            self._stop_and_ask(asked, now_ns)

    def _advance(self, bench: Bench, now_ns: int) -> None:
        """Run the step that is due; steps that end at once are followed by the next in the same round."""
        for _ in range(STEPS_PER_TICK):
            if self._state is not EngineState.RUNNING or self._executor is None:
                return
            done = self._executor.tick(bench, now_ns)
            if done is None:
                return
            if isinstance(done, Retake):
                bench.progress.mark("again", "The point is begun again.", now_ns)
                self._repeat(now_ns)
            else:
                self._next(done, now_ns)

    def _next(self, done: Done, now_ns: int) -> None:
        """Go to the next step: one that is done again after an interruption, or the procedure's next."""
        step = self._queue.after(done.result)
        if step is None:
            self._finish("complete", now_ns)
        else:
            self._perform(step, now_ns)

    def _perform(self, step: Step, now_ns: int) -> None:
        self._step = step
        self._executor = executor_of(step, self._rig)
        if isinstance(step, Ask):
            self._ask = step
            self._state = EngineState.ASKING
            if self._auto_answer:
                self._do_answer(step.id, step.choices[0], now_ns)
            elif self._bench is not None:
                # While a person thinks the fan rests; afterwards it comes up from rest.
                self._bench.controller.rest()

    # --- what was asked, done in the loop -------------------------------------------------------------------------

    def _do_begin(self, plan: TestPlan, recorder: Recorder, standing: Standing | None) -> None:
        progress = TestProgress(plan, recorder.rig, recorder, self._clock)
        self._bench = new_bench(self._rig, self.live, progress, self._clock.slack_s)
        somebody = not self._auto_answer
        self._queue.begin(steps_on(self._rig, plan, standing, self._clock.utc(), somebody=somebody))
        self._fitting = None
        self._guard.release()
        self._guard.keep_below(plan.cap_pa)
        self._last_error = ""
        self._state = EngineState.RUNNING
        self._next(Done(), self._clock.now_ns())

    def _do_answer(self, ask_id: str, choice: str, now_ns: int) -> None:
        ask = self._ask
        if ask is None or ask.id != ask_id or choice not in ask.choices or self._bench is None:
            return
        self._ask = None
        self._bench.progress.answer(ask, choice, now_ns)
        self._state = EngineState.RUNNING
        lost = heed(self._bench, ask, choice, now_ns)
        if ask.id == LASTING:
            self._settle_lasting(self._bench, choice, now_ns)
        elif lost or (self._fitting is not None and choice == ask.choices[0]):
            if self._fitting is not None and not lost:
                fit(self._bench, *self._fitting, now_ns)
            self._repeat(now_ns)
        else:
            self._next(Done(choice), now_ns)
        self._fitting = None

    def _stop_and_ask(self, ask: Ask, now_ns: int) -> None:
        """Bring the fan to rest, ask, and then do the steps since the last checkpoint again."""
        if self._bench is not None:
            self._bench.progress.drop_open_window()
        self._perform(self._queue.repeat(self._bench, (StopFan(), ask)), now_ns)

    def _settle_lasting(self, bench: Bench, choice: str, now_ns: int) -> None:
        settle_lasting(bench, choice, now_ns)
        if choice != ANEW or bench.direction is None:
            self._repeat(now_ns)
            return
        bench.progress.end_run("stopped", now_ns)
        spec, plan = self._rig.spec, bench.progress.plan
        self._queue.begin(again_from(plan, bench.direction, spec, turns=self._rig.turns, fits=True))
        self._next(Done(), now_ns)

    def _do_again(self, window: int | None, now_ns: int) -> None:
        bench = self._bench
        if bench is None or bench.progress.current is None:
            return
        if window is None:
            if self._state is EngineState.RUNNING and bench.target_pa is not None:
                bench.progress.drop_open_window()
                bench.progress.mark("again", "The point is begun again.", now_ns)
                self._repeat(now_ns)
            return
        take_again(bench, window, now_ns)

    def _do_fit(self, fan: int, name: str, now_ns: int) -> None:
        """Have a range fitted at once where the fan rests, else stop it first and ask."""
        bench = self._bench
        if bench is None or not self._busy.is_set():
            self._rig.fit(fan, name)
            return
        if self._fitting is not None:
            return
        if self._state is not EngineState.RUNNING:
            fit(bench, fan, name, now_ns)
            return
        self._fitting = (fan, name)
        self._stop_and_ask(ask_to_fit(self._rig.spec, fan, name), now_ns)

    def _do_correct(self, windows: Sequence[int], name: str, fan: int, now_ns: int) -> None:
        bench = self._bench
        if bench is None:
            return
        still_fitted = correct_range(bench, windows, fan, name, now_ns)
        if still_fitted and self._state is EngineState.RUNNING:
            # What was read of the point in hand was converted with the wrong range.
            bench.progress.drop_open_window()
            self._repeat(now_ns)

    def _do_wish(self, wish: Wish) -> None:
        if self._bench is not None and self._bench.progress.plan.hold:
            self._bench.wish = wish

    def _do_pause(self, reason: str, kind: AlarmKind | None, now_ns: int) -> None:
        self._guard.stop()
        if self._state is not EngineState.RUNNING or self._bench is None:
            return
        self._bench.controller.rest()
        self._bench.target_pa = None
        self._bench.progress.drop_open_window()
        self._bench.progress.mark("paused", reason, now_ns)
        self._state = EngineState.PAUSED
        self._paused_reason, self._paused_kind = reason, kind
        self._return.wait()

    def _do_resume(self, now_ns: int) -> None:
        if self._state is not EngineState.PAUSED or self._bench is None:
            return
        self._bench.progress.mark("resumed", "The test goes on from the beginning of the interrupted step.", now_ns)
        self._guard.release()
        if self._paused_kind in LINE_ALARMS:
            # Somebody has looked and lets it go on: from here on the house is what its next points show.
            self._bench.line.clear()
        self._paused_reason, self._paused_kind = "", None
        self._state = EngineState.RUNNING
        first = looking_again(self._bench, self._computer.take_gap_s(), shutter=self._rig.spec.shutter)
        self._perform(self._queue.repeat(self._bench, first), now_ns)

    def _repeat(self, now_ns: int) -> None:
        """Do the steps since the last checkpoint again."""
        self._perform(self._queue.repeat(self._bench), now_ns)

    def _with_progress(self, act: Callable[[TestProgress], None]) -> None:
        if self._bench is not None:
            act(self._bench.progress)

    def _finish(self, ending: Ending, now_ns: int) -> None:
        """End the test, if there is one, with the fan at rest; its numbers stay on show."""
        self._guard.stop()
        if not self._busy.is_set():
            return
        self._queue.close()
        self._step = self._executor = self._ask = None
        self._state = EngineState.IDLE
        self._paused_reason, self._paused_kind = "", None
        if self._bench is not None:
            self._bench.controller.rest()
            self._bench.target_pa = None
            try:
                self._bench.progress.end_test(ending, now_ns)
            finally:
                self._busy.clear()
        self._busy.clear()

    @property
    def _rest_words(self) -> str:
        return "The fan is at rest." if self._rig.has_fan else "Turn the fan off."

    # --- safety ---------------------------------------------------------------------------------------------------

    def _alarm(self, alarm: Alarm, now_ns: int) -> None:
        """Stop the fan; only a person, or a link that is back on a rig that answers itself, goes on."""
        sentence = alarm.sentence if self._rig.has_fan else warning(alarm)
        if self._bench is not None:
            self._bench.progress.flag(alarm.kind.value.replace(" ", "-"), Severity.ALARM, sentence)
        self._do_pause(sentence, alarm.kind, now_ns)
        if self._auto_answer and alarm.kind not in LINK_ALARMS:
            self._last_error = sentence
            self._finish("faulted", now_ns)

    def _look_for_links(self, now_ns: int) -> None:
        """Go on by itself after a lost link where nobody is there to say so, once every link has been back a while."""
        if not self._auto_answer or self._paused_kind not in LINK_ALARMS:
            return
        stranger = self._return.stranger()
        if stranger:
            self._last_error = stranger
            self._finish("faulted", now_ns)
        elif self._return.back(now_ns):
            self._do_resume(now_ns)

    def _publish(self, now_ns: int) -> Snapshot:
        executor = self._executor if self._state is EngineState.RUNNING else None
        words = (self._paused_reason, self._last_error, self._blowing.order)
        return self._publisher.snapshot(now_ns, LoopView(self._state, self._bench, executor, self._ask, *words))
