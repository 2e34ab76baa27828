"""What a test without a window is prepared from: the job, the site, and what a person asked for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from acquisition.job import Job
from acquisition.plan import TestPlan
from acquisition.preparation import Wishes, prepare
from acquisition.rig import InstrumentSpec, RigSpec, Role
from analysis.errors import InvalidInput
from analysis.records import Air, Building, Direction, FlowRange
from drivers.clock import VirtualClock

PRESSURES = (("p1", Role.ENVELOPE), ("p2", Role.FLOW_ELEMENT))
RIG = RigSpec(
    "rig",
    (InstrumentSpec("gauge", "scpi-gauge", "loop://", PRESSURES),),
    "",
    (FlowRange("wide", 9, 0.5, 1, 9),),
    "wide",
)
HOUSE = Building("Quarry Lane 3", 250.0)
WEATHER = Air(21.0, 3.0, wind_m_s=1.0)


@pytest.fixture
def job(tmp_path: Path, clock: VirtualClock) -> Iterator[Job]:
    job = Job.create(tmp_path / "j.airseam", clock, "Quarry Lane 3")
    yield job
    job.close()


def test_a_new_job_takes_what_the_site_knows(job: Job) -> None:
    plan = prepare(job, Wishes(), RIG, HOUSE, WEATHER)
    assert (plan.building, plan.air, plan.method) == (HOUSE, WEATHER, "iso9972")
    assert job.building == HOUSE
    assert job.draft() == plan


def test_what_was_prepared_stays_unless_a_person_asks_otherwise(job: Job) -> None:
    prepared = TestPlan(replace(HOUSE, volume_m3=260.0), Air(19.0, 9.0), stage="shell closed", zero_s=120.0)
    job.add_building(prepared.building, "measured")
    job.set_draft(prepared)
    assert prepare(job, Wishes(), RIG, HOUSE, WEATHER) == prepared
    assert len(job.building_versions) == 1
    wishes = Wishes({"volume_m3": 270.0}, {"wind_m_s": 4.0}, stage="sealed", directions=tuple(Direction))
    plan = prepare(job, wishes, RIG, HOUSE, WEATHER)
    assert plan == replace(
        prepared,
        building=replace(HOUSE, volume_m3=270.0),
        air=Air(19.0, 9.0, wind_m_s=4.0),
        stage="sealed",
        directions=tuple(Direction),
    )
    assert job.building_versions[-1].building.volume_m3 == 270.0


def test_a_temperature_that_nobody_gives_and_nothing_measures_is_asked_for(job: Job) -> None:
    with pytest.raises(InvalidInput, match="outdoor_c is missing"):
        prepare(job, Wishes(air={"indoor_c": 20.0}), RIG)
    measured = (*PRESSURES, ("t2", Role.OUTDOOR))
    measuring = replace(RIG, instruments=(InstrumentSpec("gauge", "scpi-gauge", "loop://", measured),))
    assert prepare(job, Wishes(air={"indoor_c": 20.0}), measuring).air.indoor_c == 20.0


def test_an_unknown_method_is_refused_before_anything_is_changed(job: Job) -> None:
    with pytest.raises(InvalidInput, match="iso9972"):
        prepare(job, Wishes(method="en-0815"), RIG, HOUSE, WEATHER)
    assert job.building is None


def test_the_check_of_the_hoses_is_left_out_only_where_somebody_says_so(job: Job) -> None:
    assert prepare(job, Wishes(), RIG, HOUSE, WEATHER).hose_check is True
    assert prepare(job, Wishes(hose_check=False), RIG, HOUSE, WEATHER).hose_check is False
    assert prepare(job, Wishes(), RIG, HOUSE, WEATHER).hose_check is False


def test_the_language_of_the_reports_is_kept_in_the_job(job: Job) -> None:
    prepare(job, Wishes(language="de", place="DE"), RIG, HOUSE, WEATHER)
    assert (job.details.language, job.details.place) == ("de", "DE")
    prepare(job, Wishes(), RIG, HOUSE, WEATHER)
    assert job.details.language == "de"
    with pytest.raises(InvalidInput, match="one of en, de, fr is needed"):
        prepare(job, Wishes(language="xx", place="US"), RIG, HOUSE, WEATHER)
    assert job.details.place == "DE"
    prepare(job, Wishes(language="en"), RIG, HOUSE, WEATHER)
    assert job.details.language == ""
