"""The bar and the questions of a terminal."""

from __future__ import annotations

import io
import signal
import sys
from pathlib import Path

import pytest

from acquisition.multipoint import SAFETY
from acquisition.steps import Ask
from acquisition.terminal import Bar, Interrupts, ask_on, attend, share_done
from drivers.clock import VirtualClock
from tests.acquisition.scenes import a_scene

QUESTION = Ask("cover-fan", "Cover the fan.", ("The fan is covered", "It cannot be covered"))


class Terminal(io.StringIO):
    """A text stream that says that it is a terminal."""

    def isatty(self) -> bool:
        """Pretend."""
        return True


def test_the_bar_is_drawn_on_a_terminal_and_taken_away_again() -> None:
    terminal = Terminal()
    bar = Bar(terminal)
    bar.show(0.5, "half way")
    bar.show(0.5, "half way")
    assert terminal.getvalue().count("half way") == 1
    assert "[############............]  50 %" in terminal.getvalue()
    bar.show(7.0, "more than all")
    assert "100 %" in terminal.getvalue()
    bar.clear()
    assert terminal.getvalue().endswith("\r\x1b[K")


def test_no_bar_is_drawn_into_a_file() -> None:
    file = io.StringIO()
    bar = Bar(file)
    bar.show(0.5, "half way")
    bar.clear()
    assert file.getvalue() == ""


@pytest.mark.parametrize(
    ("typed", "choice"),
    [
        ("\n", "The fan is covered"),
        ("1\n", "The fan is covered"),
        (" 2 \n", "It cannot be covered"),
        ("yes\n0\n3\n2\n", "It cannot be covered"),
        ("", None),
        ("what\n", None),
    ],
)
def test_a_question_is_answered_by_its_number(typed: str, choice: str | None) -> None:
    out = io.StringIO()
    assert ask_on(QUESTION, out, io.StringIO(typed)) == choice
    assert all(text in out.getvalue() for text in (QUESTION.text, *QUESTION.choices))


def test_a_question_of_safety_is_not_answered_by_an_empty_line() -> None:
    out = io.StringIO()
    assert ask_on(SAFETY, out, io.StringIO("\n\n")) is None
    assert SAFETY.caution in out.getvalue()
    assert "Enter" not in out.getvalue()
    assert ask_on(SAFETY, out, io.StringIO("\n2\n")) == SAFETY.choices[1]


def test_a_signal_sets_cancel_and_is_given_back() -> None:
    before = signal.getsignal(signal.SIGINT)
    with Interrupts() as interrupts:
        assert not interrupts.cancel.is_set()
        signal.raise_signal(signal.SIGINT)
        assert interrupts.cancel.is_set()
    assert signal.getsignal(signal.SIGINT) is before


def test_a_signal_in_the_middle_of_a_question_is_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    class Interrupted:
        def isatty(self) -> bool:
            return False

        def readline(self) -> str:
            signal.raise_signal(signal.SIGINT)
            return "1\n"

    monkeypatch.setattr(sys, "stdin", Interrupted())
    with Interrupts() as interrupts:
        assert interrupts.ask(QUESTION) is None
        assert interrupts.cancel.is_set()


def test_a_whole_test_is_attended_with_answers_from_the_keyboard(
    clock: VirtualClock, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    terminal = Terminal()
    monkeypatch.setattr(sys, "stderr", terminal)
    monkeypatch.setattr(sys, "stdin", io.StringIO("1\n" * 3))
    with a_scene(clock, tmp_path, auto_answer=False) as scene:
        plan = scene.plan()
        outcome = attend(scene.engine, clock, plan, lambda: scene.job.record(plan, scene.rig.spec), auto=False)
        assert outcome.conclusion == "complete"
        assert share_done(outcome.snapshot, plan) == pytest.approx(1.0, abs=0.02)
    drawn = terminal.getvalue()
    assert SAFETY.text in drawn
    assert "Holding −40 Pa, averaging" in drawn
    shares = [int(part.split("%")[0]) for part in drawn.split("] ")[1:] if "%" in part]
    assert shares == sorted(shares)
    assert shares[-1] >= 97


def test_without_instruments_no_record_is_begun(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path) as scene:
        scene.house.ports["sim:gauge"].unplug()
        scene.pass_time(3.0)
        plan = scene.plan()
        outcome = attend(scene.engine, clock, plan, lambda: scene.job.record(plan, scene.rig.spec), auto=True)
        assert outcome.conclusion == "faulted"
        assert outcome.sentence.startswith("Instrument gauge")
        assert scene.job.tests() == ()
