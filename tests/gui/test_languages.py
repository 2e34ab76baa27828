"""The window in German and French: nothing cut, nothing left in English, and Tab goes through it as one reads."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QLineEdit, QWidget

from acquisition.snapshot import EngineState
from acquisition.stages import USUAL_STAGES, usual_stage
from gui.viewmodels.hunt import HuntTab
from gui.viewmodels.moment import Place
from gui.viewmodels.next_step import next_step
from gui.viewmodels.over import Over
from gui.window import LEAST_HEIGHT, LEAST_WIDTH
from gui.words import Language, say
from tests.gui.boxes import backwards, cut_texts, overlaps, stops
from tests.gui.conftest import Stage
from tests.gui.test_looks import settle
from tests.gui.test_words import translations


def pages(stage: Stage) -> Iterator[str]:
    """Show every place, every page of the rig and every page over the places, one after the other."""
    program = stage.program
    program.window.resize(LEAST_WIDTH, LEAST_HEIGHT)
    for place in Place:
        program.screen.go_to(place)
        settle(stage)
        yield place
    program.screen.go_to(Place.JOB)
    stage.program.window.job.page_asked.emit(True)
    settle(stage)
    yield "rooms"
    program.screen.go_to(Place.HUNT)
    for tab in HuntTab:
        program.screen.hunt.tab = tab
        settle(stage)
        yield f"hunt {tab}"
    program.screen.go_to(Place.RIG)
    for page in range(1, program.window.rig.pages.count()):
        program.window.rig.choose_page(page)
        settle(stage)
        settle(stage)  # the page learns its width first
        yield f"rig {page}"
    for over in Over:
        program.screen.show_over(over)
        settle(stage)
        yield over
    program.screen.over, program.screen.keys_shown = None, True
    settle(stage)
    yield "keys"


def texts(window: QWidget) -> Iterator[str]:
    """Yield everything that is read or read out in what is visible."""
    for item in window.findChildren(QWidget):
        if not item.isVisible():
            continue
        yield item.accessibleName()
        yield item.toolTip()
        if isinstance(item, QLabel | QAbstractButton):
            yield item.text()
        elif isinstance(item, QLineEdit):
            yield item.placeholderText()
        elif isinstance(item, QComboBox):
            yield from (item.itemText(at) for at in range(item.count()))


@pytest.mark.parametrize("language", [Language.GERMAN, pytest.param(Language.FRENCH, marks=pytest.mark.walk)])
def test_the_smallest_window_holds_every_text_and_is_gone_through_as_one_reads(
    stage: Stage, tested: Path, language: Language
) -> None:
    assert [usual_stage(say(name)) for name in USUAL_STAGES] == list(USUAL_STAGES)  # as the window proposes them
    stage.open_copy(tested)
    stage.program.intents.leaks.new_leak()
    stage.connect()
    known = {text: words for text, words in translations(language).items() if words != text and text not in ALSO_NAMES}
    others = set(known.values())
    read, stopped = 0, 0
    for page in pages(stage):
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == [], page
        shown = set(texts(stage.program.window))
        assert [text for text in shown if text in known and text not in others] == [], page
        read += len(shown & others)
        order = stops(stage.program.window.stack.currentWidget())
        assert backwards(order, stage.program.window.stack.currentWidget()) == [], page
        stopped += len(order)
    assert read > 350
    assert stopped > 150
    assert [action.text() for action in stage.program.actions.commands if action.text() in known] == []
    if language is Language.GERMAN:
        says_when_another_language_comes(stage)
        begins_jobs_in_its_own(stage)


def begins_jobs_in_its_own(stage: Stage) -> None:
    """Make a job in a German window: its reports are German until somebody chooses another language."""
    desk = stage.program.desk
    assert desk.new_job(stage.program.intents.files.home / "neu.airseam", "Mühlgasse 8")
    assert desk.job is not None
    assert (desk.job.details.language, desk.job.edits) == ("de", ())


def says_when_another_language_comes(stage: Stage) -> None:
    """Choose another language in a German window: it is kept, the window says when it comes, and stays as it is."""
    assert stage.program.screen.display.decimal_mark == ","
    stage.program.intents.office.keep("language", Language.FRENCH.value)
    fields = {item.id: item for item in stage.program.intents.office.pictures()}
    assert fields["language"].text == "fr"
    assert fields["language"].note == say("Counts from the next start. Reports have a language of their own.")
    assert stage.program.settings.value.language is Language.FRENCH
    assert say("Report") == "Bericht"


ALSO_NAMES = {"gauge", "fan"}
"""Names of the simulated instruments, which nobody translates."""


@pytest.mark.parametrize("language", [Language.GERMAN])
def test_the_big_button_answers_what_the_test_asks_in_any_language(stage: Stage) -> None:
    stage.connect()
    stage.shorten()
    stage.program.screen.go_to(Place.TEST)
    stage.draw()
    stage.press()
    asked = stage.until(lambda now: now.state is EngineState.ASKING, 60.0).ask
    assert asked is not None
    assert next_step(stage.program.bridge.moment(stage.snapshot())).label != asked.choices[0]
    stage.press()
    again = stage.snapshot().ask
    assert again is None or again.id != asked.id
    stage.program.intents.stop_fan()
