"""A hand-written record as a test: what is pasted, what is worked out, how it is marked."""

from __future__ import annotations

import io
import re
from datetime import UTC, datetime
from pathlib import Path

import pytest
from pypdf import PdfReader

import airseam
from acquisition.job import Job
from acquisition.report import content_of, report_pdf
from acquisition.typed import TypedPoint, TypedRun, keep_typed, points_from
from analysis.errors import InvalidInput
from analysis.records import Direction
from analysis.units import Display, System
from drivers.clock import VirtualClock
from tests.acquisition.samples import START, plan

OUT, IN = Direction.DEPRESSURIZE, Direction.PRESSURIZE
SI, US = Display(System.SI), Display(System.US)
WHEN = datetime(2026, 4, 1, 9, 30, tzinfo=UTC)
TEXT = "Pressure, Pa\tFlow, m³/h\n-60\t563\n-50\t501\n-40\t434\n-30\t361\n-20\t279\n-12\t201\n"


def test_lines_are_points_with_the_sign_of_the_direction() -> None:
    assert points_from(TEXT, OUT, SI)[0] == TypedPoint(-60.0, 563.0)
    assert points_from("60 563\n\n50 501", OUT, SI)[1] == TypedPoint(-50.0, 501.0)
    assert points_from("60;563,5", IN, Display(System.SI, ","))[0] == TypedPoint(60.0, 563.5)
    # 1 cfm is 1.69901 m3/h (definition of the foot: 0.3048 m).
    assert points_from("50 100", IN, US)[0].flow_m3_h == pytest.approx(169.901, abs=0.001)


def test_a_copied_table_of_points_is_read_and_what_was_struck_stays_out() -> None:
    copied = (
        "\tSoll Pa\tMittel Pa\tStrom cfm\tStd.-Fehler\tZeit\n"
        "✓\t\u221260\t\u221259,6\t1\u202f000\t0,04 %\t20 s\n"
        "✗\t\u221250\t\u221249,6\t501\t0,04 %\t20 s\n"
        "✓\t\u221240\t\u221239,8\t434\t–\t20 s\n"
        "○\t\u221230\t\t\t\t\n"
    )
    first, second = points_from(copied, OUT, Display(System.SI, ","))
    # 1 cfm is 1.69901 m3/h (definition of the foot: 0.3048 m).
    assert first.envelope_pa == -59.6
    assert first.flow_m3_h == pytest.approx(1699.01, abs=0.01)
    assert second.envelope_pa == -39.8
    with pytest.raises(InvalidInput, match="points is empty"):
        points_from("\n".join(copied.splitlines()[-1:]), OUT, SI)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "points is empty"),
        ("only words", "points is empty"),
        ("50", "line 1 is '50'"),
        ("50 400 3", "two numbers are needed"),
        ("50 400\nfifty 300", "line 2, pressure"),
        ("0 400", "line 1, pressure is 0"),
        ("900 400", "at most 200 Pa"),
        ("50 -3", "a flow above 0"),
        ("-50 400", "no negative pressures"),
        ("1 2\n" * 61, "at most 60 lines"),
    ],
)
def test_what_cannot_be_read_is_one_sentence_with_its_line(text: str, words: str) -> None:
    with pytest.raises(InvalidInput, match=re.escape(words)) as caught:
        points_from(text, IN, SI)
    assert "\n" not in str(caught.value)


def test_a_typed_test_is_worked_out_verified_and_marked(tmp_path: Path) -> None:
    job = Job.create(tmp_path / "j.airseam", VirtualClock(START), "Mill Row 8")
    runs = (
        TypedRun(OUT, points_from(TEXT, OUT, SI), -1.0, -1.4, 30.0),
        TypedRun(IN, points_from(TEXT.replace("-", ""), IN, SI), None, None, 30.0),
    )
    number = keep_typed(job, plan(), runs, WHEN)
    assert all(item.ok for item in job.verify())
    content = content_of(job, number)
    out, inward = content.runs
    assert content.started == WHEN
    assert out.result.zero_pa == pytest.approx(-1.2)
    assert out.result.induced_pa[0] == pytest.approx(-60 + 1.2)
    assert out.run.points[0].flow_m3_h == 563.0
    assert inward.run.zero_before is None
    text = re.sub(r"\s+", " ", " ".join(p.extract_text() for p in PdfReader(io.BytesIO(report_pdf(content))).pages))
    for words in ("Typed from a hand-written record", "there are no readings behind them", "Hand-written record"):
        assert words in text, words
    assert "Flow range" not in text
    assert not content.simulated
    job.close()


def test_the_command_keeps_a_typed_test(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path, points = tmp_path / "j.airseam", tmp_path / "p.txt"
    job = Job.create(path, VirtualClock(START), "Mill Row 8")
    job.set_draft(plan())
    job.close()
    points.write_text(TEXT)
    base = ["typed", str(path), str(points), "--on", "2026-04-01 09:30"]
    assert airseam.main([*base, "--zero-before", "-1", "--zero-after", "-1.4", "--seconds", "30"]) in (0, 1)
    assert "kept as test 1, typed from a hand-written record" in capsys.readouterr().out
    assert airseam.main([*base[:-1], "someday"]) == 2
    assert "--on is 'someday'" in capsys.readouterr().err
    again = Job.open(path, VirtualClock(START), read_only=True)
    assert [record.rig.typed for record in again.tests()] == [True]
    again.close()
