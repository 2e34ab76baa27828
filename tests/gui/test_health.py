"""How instruments do, in words: seven facts, on the ribbon and in the Rig place."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest

from acquisition.rig import Role
from acquisition.snapshot import WindowView
from acquisition.steps import WindowKind
from drivers.health import Level
from drivers.instrument import LinkState, LinkStatus
from gui.theme import Tone
from gui.viewmodels.health import KINDS, SHORT, Samples, rig_health, summary, unwell
from gui.viewmodels.moment import Place
from gui.viewmodels.ribbon import link_lamp
from gui.viewmodels.rig_place import link_row
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage
from tests.gui.fakes import LINKS, RIG, snapshot
from tests.gui.test_register import settle

NOW_NS = 600_000_000_000
STEP_NS = 100_000_000
MOVING = tuple(-50.0 + 0.1 * (at % 3) for at in range(300))


def at_ten_a_second(values: Sequence[float], role: Role = Role.FLOW_ELEMENT, skip: int = -1) -> Samples:
    """Return readings that end now, of one role; with `skip` from there on 20 of them are missing."""
    stamps = [NOW_NS - STEP_NS * (len(values) - 1 - at) for at in range(len(values))]
    kept = [at for at in range(len(values)) if not 0 <= skip <= at < skip + 20]

    def samples(asked: Role, since_ns: int) -> tuple[list[int], list[float]]:
        found = [at for at in kept if asked is role and stamps[at] >= since_ns]
        return [stamps[at] for at in found], [values[at] for at in found]

    return samples


def gauge(**changes: object) -> tuple[LinkStatus, ...]:
    return (replace(LINKS[0], readings=5000, **changes), LINKS[1])  # type: ignore[arg-type]  # fields of the status


def zeros(*ends_s: float) -> tuple[WindowView, ...]:
    kinds = (WindowKind.ZERO_BEFORE, WindowKind.ZERO_AFTER)
    ends = [round(end * 1e9) for end in ends_s]
    return tuple(WindowView(kind, end - 5 * 10**9, end, None) for kind, end in zip(kinds, ends, strict=True))


@pytest.mark.parametrize(
    ("kind", "said", "links", "samples", "charge"),
    [
        ("frozen value", "has read -50", gauge(), at_ten_a_second([-50.0] * 300), None),
        ("noise floor", "noise", gauge(), at_ten_a_second([60.0 * (at % 2) for at in range(300)]), None),
        ("drop-outs", "gap", gauge(), at_ten_a_second(MOVING, skip=100), None),
        ("drop-outs", "damaged", gauge(bad_frames=300), at_ten_a_second(MOVING), None),
        ("rate", "10 are expected", gauge(rate_hz=5.0), at_ten_a_second(MOVING), None),
        ("round trip", "answers after 600 ms", gauge(round_trip_s=0.6), at_ten_a_second(MOVING), None),
        ("battery", "battery 5%", gauge(), at_ten_a_second(MOVING), 0.05),
    ],
)
def test_each_fact_reaches_the_ribbon_and_the_rig_place(
    kind: str, said: str, links: tuple[LinkStatus, ...], samples: Samples, charge: float | None
) -> None:
    now = snapshot(links=links, now_ns=NOW_NS)
    facts = rig_health(RIG, now, samples, {} if charge is None else {"gauge": charge})["gauge"]
    assert [fact.kind for fact in unwell(facts)] == [kind]
    lamp = link_lamp(links[0], facts=facts)
    assert lamp.tone in (Tone.ATTENTION, Tone.BAD)
    assert lamp.words == f"gauge {SHORT[kind]}"
    assert said in lamp.tip
    row = link_row(links[0], RIG, facts)
    assert row.state == "linked, not well"
    assert said in row.warnings[0][1]


def test_the_zero_of_a_flow_element_that_moved_is_told() -> None:
    values = [0.0] * 150 + [4.0] * 150
    samples = at_ten_a_second([value + 0.01 * (at % 3) for at, value in enumerate(values)])
    now = snapshot(links=gauge(), now_ns=NOW_NS, windows=zeros(584.0, 599.0))
    facts = rig_health(RIG, now, samples, {})["gauge"]
    [moved] = [fact for fact in facts if fact.kind == "zero drift"]
    assert moved.value == pytest.approx(4.0, abs=0.05)
    assert moved.level is Level.BAD
    assert "zero moved" in link_lamp(LINKS[0], facts=facts).words


def test_what_is_well_stands_in_one_line() -> None:
    now = snapshot(links=gauge(), now_ns=NOW_NS, windows=zeros(584.0, 599.0))
    facts = rig_health(RIG, now, at_ten_a_second(MOVING), {"gauge": 0.8})["gauge"]
    assert unwell(facts) == ()
    words = summary(facts)
    for said in ("nothing stands still", "noise", "no drop-outs", "10.0 readings", "after 5 ms", "zero moved", "80%"):
        assert said in words
    assert set(SHORT) == set(KINDS)


def test_a_lost_link_tells_its_own_story() -> None:
    lost = replace(LINKS[0], state=LinkState.LOST, sentence="Unplugged.")
    facts = rig_health(RIG, snapshot(links=(lost, LINKS[1])), at_ten_a_second(MOVING), {})["gauge"]
    assert link_row(lost, RIG, facts).words == "Unplugged."


def test_the_rig_place_shows_it_whole(stage: Stage) -> None:
    stage.connect()
    stage.pass_time(10.0)
    stage.program.screen.go_to(Place.RIG)
    for width, height in ((1024, 700), (1440, 900)):
        stage.program.window.resize(width, height)
        settle(stage)
        assert [*cut_texts(stage.program.window), *overlaps(stage.program.window)] == []
    words = stage.program.window.rig.live._links[0]._health.text()
    assert "nothing stands still" in words
    assert "noise" in words
