"""Two gauges on one hose: read through the engine, judged, and kept with the day."""

from __future__ import annotations

import pytest

from acquisition.openrig import OpenRig, RigSource, open_rig
from acquisition.rig import TAPS
from acquisition.rigfile import read_rig
from drivers.clock import Clock, VirtualClock
from gui.views.rig_place import CHECK, DETAIL, LIVE, OWN
from simulators.houses import load_house
from simulators.rig import SimulatedRig
from tests.gui.boxes import cut_texts, overlaps
from tests.gui.conftest import Stage
from tests.gui.test_register import DAY, add, kept, settle
from tests.gui.test_register import page as page


@pytest.fixture
def source(clock: VirtualClock, source: RigSource) -> RigSource:
    """Return a house whose gauge has two outdoor taps."""

    def open_house(_: float) -> tuple[OpenRig, Clock]:
        rig = SimulatedRig(load_house("mill-row"), 1, clock, taps=2)
        return open_rig(read_rig(rig.rig_toml(rig.own_ports)), clock, rig.open), clock

    return RigSource(source.id, source.title, source.description, open_house, source.building, source.air)


def test_a_check_is_made_from_live_readings_and_kept_with_its_day(page: Stage) -> None:
    page.connect()
    for title, serial in (("Blue gauge", "G-1"), ("Grey gauge", "G-2")):
        add(page, "gauge", title, serial=serial)
    rig, model = page.program.window.rig, page.program.screen.check
    rig.register.check.click()
    settle(page)
    assert rig.side.currentIndex() == CHECK
    assert not rig.check.keep.isEnabled()
    for count in (1, 2):
        rig.check.take.click()
        page.pass_time(0.1)
        assert not rig.check.take.isEnabled()
        page.pass_time(5.2)
        assert len(model.points) == count
    settle(page)
    assert rig.check._verdict.text().startswith("✓ Blue gauge and Grey gauge agree")
    assert [*cut_texts(page.program.window), *overlaps(page.program.window)] == []
    live = page.engine().live
    joined, first, second = (
        values[1] for values in (live.since(TAPS[0], 0), live.first_tap(0), live.since(TAPS[1], 0))
    )
    assert joined == pytest.approx((first + second) / 2.0)
    assert model.points[-1].first_pa == pytest.approx(first[-60:].mean(), abs=0.1)
    rig.check.keep.click()
    settle(page)
    [check] = kept(page).checks
    assert check.day == DAY
    assert {check.first, check.second} == {"gauge-1", "gauge-2"}
    assert rig.side.currentIndex() == DETAIL
    table = page.program.screen.register.picture(DAY, ".").item
    assert table is not None
    assert table.checks.rows[0].cells[:2] == ("2026-05-04", "Grey gauge")
    page.program.screen.register.undo()
    assert len(kept(page).checks) == 1


def test_what_is_missing_is_said(page: Stage) -> None:
    rig = page.program.window.rig
    rig.register.check.click()
    settle(page)
    assert "Connect the rig" in rig.check._verdict.text()
    page.connect()
    settle(page)
    assert "Register both gauges" in rig.check._verdict.text()
    rig.choose_page(OWN)
    assert rig.side.currentIndex() == LIVE
