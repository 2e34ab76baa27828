"""Eight channels at 100 Hz over one TCP link for a moment; `run.py bench wires` does it for minutes and measures."""

from __future__ import annotations

import pytest

from tests.bench.wires import ROLES, read


@pytest.mark.parametrize("talk", ["polled", "free-running"])
def test_no_sample_of_a_fast_gauge_is_lost_on_its_way_to_the_screen(talk: str) -> None:
    found = read(talk, 100.0, 1.5)
    assert found.lost == 0
    assert found.bad_frames == 0
    # A busy machine may ask less often than it should; what was sent has to arrive.
    assert found.samples >= len(ROLES) * 30
