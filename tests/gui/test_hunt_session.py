"""A session of sealing in the window, in a process of its own that is killed: everything is there afterwards."""

from __future__ import annotations

import signal
from pathlib import Path

import pytest

from tests.bench.session import session

pytestmark = pytest.mark.walk


@pytest.mark.skipif(not hasattr(signal, "pause"), reason="the session waits for its end by a signal")
def test_everything_is_there_after_a_kill(tmp_path: Path) -> None:
    found = session(seconds=150.0, marks=2, every_s=20.0, folder=tmp_path)
    assert found["kept_state"] == "interrupted"
    # One seal: a leak that was found, begun, and done; what it brought was told half a minute later.
    assert found["marks"] == found["kept_marks"] == 3
    assert found["leaks"] == found["kept_leaks"] == 1
    assert found["drops"] == found["kept_drops"] == 1
    # Not more than the last second is missing of what was read ten times a second.
    assert float(str(found["kept_hz"])) == pytest.approx(10.0, abs=0.2)
    assert float(str(found["kept_after_zero_s"])) > float(str(found["held_s"])) - 1.0
