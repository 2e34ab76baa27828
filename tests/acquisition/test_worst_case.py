"""The worst case of exhaust fans: what was read, how far the pressure fell, what appliances bear."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import numpy as np
import pytest

from acquisition.job import Entry, Job
from acquisition.told.worstcase import CAUTION, NO_FAN, NOTHING_READ, worst_case_tables
from acquisition.worstcase import ALL_OFF, mean_of, situation_entry, worst_case
from analysis.errors import InvalidInput
from analysis.units import Display
from drivers.clock import VirtualClock
from tests.acquisition.samples import START


def entries(*read: tuple[str, float]) -> list[Entry]:
    return [
        situation_entry(words, pressure_pa, 0.1, START + timedelta(minutes=at))
        for at, (words, pressure_pa) in enumerate(read)
    ]


def test_the_lowest_pressure_against_everything_off_is_the_worst() -> None:
    found = worst_case(entries((ALL_OFF, -1.0), ("kitchen hood", -3.5), ("hood and dryer", -5.25), ("door shut", -4.0)))
    assert found.worst is not None
    assert found.worst.situation.words == "hood and dryer"
    # -1.0 less -5.25, and 1.96 times the root of 0.1 squared twice (worked by hand).
    assert found.worst.lowered_pa.value == pytest.approx(4.25)
    assert found.worst.lowered_pa.half_width == pytest.approx(0.2772, abs=1e-4)
    verdicts = {held.appliance.id: held.verdict for held in found.borne}
    # 4.25 Pa is beyond 2 and 3 Pa and within 5 and 15 Pa.
    assert verdicts["orphan-water-heater"] == verdicts["common-flue"] == "does not meet"
    assert verdicts["natural-draught"] == verdicts["induced-draught"] == "meets"


def test_everything_off_again_begins_anew() -> None:
    found = worst_case(entries((ALL_OFF, -1.0), ("hood", -9.0), (ALL_OFF, -2.0), ("hood", -3.0)))
    assert [item.lowered_pa.value for item in found.lowerings] == [pytest.approx(1.0)]


def test_what_is_read_before_everything_was_off_does_not_count() -> None:
    found = worst_case(entries(("hood", -9.0)))
    assert (found.off, found.lowerings, found.worst, found.borne) == (None, (), None, ())
    assert worst_case_tables(found, Display())[0].empty == NOTHING_READ
    assert worst_case_tables(worst_case(entries((ALL_OFF, -1.0))), Display())[0].empty == NO_FAN


def test_the_tables_carry_the_caution_and_no_verdict_without_it() -> None:
    found = worst_case(entries((ALL_OFF, -1.0), ("hood", -3.5)))
    situations, limits = worst_case_tables(found, Display(decimal_mark=","))
    assert situations.rows[0].cells[:2] == ("hood", "2,50")
    assert limits.notes == (CAUTION,)
    assert len(limits.rows) == len(found.borne)


@pytest.mark.parametrize(("words", "said"), [("  ", "situation is empty"), ("x" * 121, "situation is 121 long")])
def test_a_situation_needs_words(words: str, said: str) -> None:
    with pytest.raises(InvalidInput, match=said):
        situation_entry(words, 0.0, 0.1, START)


def test_it_stays_in_the_job(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "x.airseam", VirtualClock(START), "Mill Row 8")
    for entry in entries((ALL_OFF, -1.0), ('hood, "full" \N{EN DASH} door shut', -3.5)):
        job.edit_house().note(entry)
    job.close()
    again = Job.open(tmp_path / "x.airseam", VirtualClock(START), read_only=True)
    found = worst_case(again.house.entries)
    again.close()
    assert found.worst is not None
    assert found.worst.situation.words == 'hood, "full" \N{EN DASH} door shut'
    assert found.worst.lowered_pa.value == pytest.approx(2.5)


def test_a_reading_is_a_mean_with_its_uncertainty() -> None:
    # 200 independent numbers of spread 0.5: the mean is known to 0.5 / sqrt(200) = 0.035.
    dice = np.random.default_rng(5)
    read = mean_of(dice.normal(-3.0, 0.5, 200))
    assert read is not None
    assert read[0] == pytest.approx(-3.0, abs=0.12)
    assert read[1] == pytest.approx(0.035, rel=0.5)
    assert mean_of(np.full(19, -3.0)) is None
