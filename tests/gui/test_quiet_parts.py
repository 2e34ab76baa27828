"""Settings, errands and report texts: what works without a window."""

from __future__ import annotations

import threading
from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.job import JobDetails, RecordState
from drivers.health import link_health
from drivers.instrument import LinkState, LinkStatus
from drivers.profile import load_profile
from gui.errands import InlineErrands, ThreadErrands
from gui.report_pages import write_new
from gui.settings import RECENT, Settings, SettingsFile
from gui.theme import Mode, Tone
from gui.viewmodels.errors import error_words
from gui.viewmodels.report_place import file_stem, missing, report_picture
from gui.viewmodels.ribbon import link_lamp
from tests.gui.fakes import BUILDING, PLAN, moment, running_moment, shown


def test_settings_come_back_as_they_were_kept(tmp_path: Path) -> None:
    path = tmp_path / "deep" / "settings.json"
    value = Settings(Mode.SUNLIGHT, "us", ",", ("FLOW",), 150, ("/jobs/a.airseam",), "sim:mill-row", 5.0, 1300, 850)
    SettingsFile(path).set(value)
    assert SettingsFile(path).value == value
    assert [item.name for item in path.parent.iterdir()] == ["settings.json"]


@pytest.mark.parametrize("text", ["", "{", "[]", '{"mode": "sepia"}', "\x00\x01"])
def test_an_unreadable_file_gives_the_defaults_and_says_so(tmp_path: Path, text: str) -> None:
    path = tmp_path / "settings.json"
    path.write_text(text)
    kept = SettingsFile(path)
    assert kept.value == Settings()
    assert "defaults" in kept.notice


def test_settings_of_another_version_are_taken_as_far_as_they_are_known(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    path.write_text('{"mode": "dark", "units": "us", "colour of the curtains": "blue", "time_factor": -3}')
    assert SettingsFile(path).value == Settings(Mode.DARK, "us")


def test_a_folder_that_refuses_is_said_and_does_not_stop_anybody(tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    kept = SettingsFile(blocked / "settings.json")
    kept.set(Settings(Mode.DARK))
    assert kept.value.mode is Mode.DARK
    assert "could not be kept" in kept.notice


def test_recent_jobs_are_few_and_the_last_comes_first() -> None:
    value = Settings()
    for at in range(20):
        value = value.with_recent(Path(f"/jobs/{at}.airseam"))
    value = value.with_recent(Path("/jobs/15.airseam"))
    assert len(value.recent) == RECENT
    assert value.recent[:2] == (str(Path("/jobs/15.airseam")), str(Path("/jobs/19.airseam")))


def test_errands_are_done_elsewhere_and_their_outcome_is_collected_here() -> None:
    errands = ThreadErrands()
    seen: list[object] = []
    done = threading.Event()

    def work() -> str:
        return threading.current_thread().name

    def last() -> None:
        done.set()

    errands.run(work, seen.append, seen.append)
    errands.run(last, lambda _: None, seen.append)
    assert done.wait(5)
    assert errands.close(5)
    assert seen == []
    errands.collect()
    assert seen == ["errands"]


@pytest.mark.parametrize("threaded", [False, True])
def test_a_failing_errand_hands_over_its_error(threaded: bool) -> None:
    errands = ThreadErrands() if threaded else InlineErrands()
    failures: list[Exception] = []

    def work() -> None:
        raise OSError(28, "No space left on device", "/jobs/a.pdf")

    errands.run(work, lambda _: None, failures.append)
    assert errands.close(5)
    errands.collect()
    assert [error_words(error) for error in failures] == ["No space left on device (/jobs/a.pdf)"]


def test_no_file_is_ever_overwritten(tmp_path: Path) -> None:
    path = tmp_path / "report.pdf"
    written = [write_new(path, bytes([at])) for at in range(3)]
    assert [item.name for item in written] == ["report.pdf", "report-2.pdf", "report-3.pdf"]
    assert [item.read_bytes() for item in written] == [b"\0", b"\1", b"\2"]


@pytest.mark.parametrize(
    ("name", "stem"), [("Mill Row 8", "Mill-Row-8-test-3"), ('a/b\\c:d*"', "a-b-c-d-test-3"), ("…", "job-test-3")]
)
def test_file_names_suit_every_system(name: str, stem: str) -> None:
    assert file_stem(name, 3) == stem


def test_what_a_report_lacks_leads_to_its_field() -> None:
    details = JobDetails("Mill Row 8", tester="A. Tester")
    bare = replace(shown(), plan=replace(PLAN, building=replace(BUILDING, height_m=None), limit=None))
    items = missing(bare, details)
    assert [item.field for item in items] == ["client", "site", "height", "limit", ""]
    assert items[-1].sentence == "Depressurize: no zero-flow pressure after the points."


def test_a_test_cut_short_is_among_what_is_missing() -> None:
    words = [item.sentence for item in missing(shown(state=RecordState.INTERRUPTED), JobDetails("x"))]
    assert "The test was interrupted before its end." in words


def test_the_place_says_why_there_is_no_report() -> None:
    def why(now: object, trouble: str = "") -> str:
        return report_picture(now, (), (b"page",), trouble).why  # type: ignore[arg-type]  # a moment each time

    assert why(moment(job=None)).startswith("Open a job")
    assert why(moment()).startswith("There is no test yet")
    assert why(running_moment()).startswith("The test is still running")
    assert why(moment(shown=shown(1))) == "This test has no result: At least 2 points are needed."
    assert why(moment(shown=shown()), "The font is missing.") == "The font is missing."
    assert why(moment(shown=shown())) == ""


def test_pages_are_only_shown_with_a_report() -> None:
    assert report_picture(moment(shown=shown()), (), (b"page",), "").pages == (b"page",)
    assert report_picture(running_moment(), (), (b"page",), "").pages == ()
    assert not report_picture(running_moment(), (), (), "").can_export


def test_a_link_that_is_up_but_not_well_says_so() -> None:
    well = LinkStatus("gauge", "COM3", LinkState.LINKED, rate_hz=10.0, readings=1000)
    profile = load_profile("scpi-gauge")
    assert link_lamp(well, facts=link_health(well, profile)).tone is Tone.GOOD
    slow = replace(well, rate_hz=4.0)
    slow_lamp = link_lamp(slow, facts=link_health(slow, profile))
    assert (slow_lamp.tone, slow_lamp.words) == (Tone.ATTENTION, "gauge slow")
    assert "10" in slow_lamp.tip
    damaged = replace(well, bad_frames=20)
    damaged_lamp = link_lamp(damaged, facts=link_health(damaged, profile))
    assert (damaged_lamp.tone, damaged_lamp.words) == (Tone.ATTENTION, "gauge drop-outs")
    assert "damaged" in damaged_lamp.tip
    assert link_lamp(slow).tone is Tone.GOOD
