"""Malformed files and arguments: each gives exit status 2 and one clear line, and nothing else."""

from __future__ import annotations

import copy
import json
import sys
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import pytest

import airseam

Document = dict[str, Any]

GOOD: Document = {
    "format": "airseam-test-1",
    "building": {"name": "Quarry Lane 3", "volume_m3": 250.0},
    "runs": [
        {
            "direction": "depressurize",
            "air": {"indoor_c": 20.0, "outdoor_c": 8.0},
            "zero_before": {"readings_pa": [-1.0, -0.8, -1.2]},
            "points": [
                {"envelope_pa": -(dp + 1.0), "flow_m3_h": 60.0 * dp**0.65}
                for dp in (60.0, 50.0, 40.0, 30.0, 20.0, 12.0)
            ],
            "zero_after": {"readings_pa": [-0.9, -1.1, -1.0]},
        }
    ],
}
RIG = """
format = "airseam-rig-1"
name = "Rig"
simulated = true
shutter = true
fitted = "wide"
fan = "fan"
[[instrument]]
name = "gauge"
profile = "scpi-gauge"
port = "loop://"
[instrument.channels]
p1 = "envelope-pressure"
p2 = "flow-element-pressure"
t1 = "indoor-temperature"
t2 = "outdoor-temperature"
[[instrument]]
name = "fan"
profile = "scpi-fan"
port = "loop://"
[[range]]
name = "wide"
coefficient_m3_h_pa_n = 183.0
exponent = 0.5
min_pa = 8.0
max_pa = 250.0
"""


def changed(change: Callable[[Document], object]) -> bytes:
    document = copy.deepcopy(GOOD)
    change(document)
    return json.dumps(document).encode()


def without_key(document: Document) -> None:
    del document["runs"][0]["points"][2]["flow_m3_h"]


def one_point(document: Document) -> None:
    del document["runs"][0]["points"][1:]


BAD_TESTS: Mapping[str, tuple[bytes, str]] = {
    "wrong type": (changed(lambda test: test["building"].update(volume_m3="large")), "building.volume_m3"),
    "missing key": (changed(without_key), "runs[0].points[2].flow_m3_h"),
    "unknown key": (changed(lambda test: test["runs"][0].update(wind=3)), "runs[0].wind"),
    "not a number": (
        changed(lambda test: test["runs"][0]["air"].update(indoor_c=float("nan"))),
        "runs[0].air.indoor_c",
    ),
    "negative volume": (changed(lambda test: test["building"].update(volume_m3=-250)), "building.volume_m3"),
    "one point": (changed(one_point), "points"),
    "zero pressure": (changed(lambda test: test["runs"][0]["points"][0].update(envelope_pa=0)), "points[0]"),
    "unknown direction": (changed(lambda test: test["runs"][0].update(direction="sideways")), "pressurize"),
    "no runs": (changed(lambda test: test.update(runs=[])), "runs"),
    "empty file": (b"", "the test"),
    "binary": (bytes(range(256)) * 8, "the test"),
    "not JSON": (b'{"format": "airseam-test-1", ', "the test"),
    "deep": (b"[" * 100_000, "the test"),
    "another format": (changed(lambda test: test.update(format="airseam-test-99")), "format"),
}
BAD_RIGS: Mapping[str, tuple[str | bytes, str]] = {
    "wrong type": (RIG.replace("exponent = 0.5", 'exponent = "half"'), "range[0].exponent"),
    "missing key": (RIG.replace('port = "loop://"', ""), "instrument[0].port"),
    "not a number": (RIG.replace("183.0", "nan"), "range[0].coefficient_m3_h_pa_n"),
    "negative coefficient": (RIG.replace("183.0", "-183.0"), "range[0].coefficient_m3_h_pa_n"),
    "unknown role": (RIG.replace("indoor-temperature", "cellar-temperature"), "cellar-temperature"),
    "unknown profile": (RIG.replace("scpi-gauge", "no-such-gauge"), "no-such-gauge"),
    "unknown channel": (RIG.replace("p2 =", "p9 ="), "p9"),
    "unknown range": (RIG.replace('fitted = "wide"', 'fitted = "wider"'), "wider"),
    "time factor of a real rig": (RIG.replace("simulated = true", "time_factor = 20"), "time_factor"),
    "no fan": (RIG.replace('fan = "fan"', ""), "fan"),
    "not TOML": ("format = ", "rig file"),
    "empty file": ("", "format"),
    "binary": (bytes(range(256)), "rig file"),
    "huge": (RIG + "#" * 2_000_000, "bytes"),
}


def refused(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> str:
    """Run the program, hold it to its promise, and return the line that it says."""
    with pytest.raises(SystemExit) as end:
        sys.exit(airseam.main(arguments))
    said = capsys.readouterr()
    assert end.value.code == 2, said
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert len(said.err) < 500
    assert said.err.startswith("airseam")
    return said.err


@pytest.mark.parametrize("name", BAD_TESTS)
def test_a_malformed_test_file_is_refused_in_one_line(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content, named = BAD_TESTS[name]
    file = tmp_path / "test.json"
    file.write_bytes(content)
    for arguments in (["analyse", str(file), "--json"], ["report", str(file), "-o", str(tmp_path / "report.pdf")]):
        assert named in refused(arguments, capsys)


@pytest.mark.parametrize("name", BAD_RIGS)
def test_a_malformed_rig_file_is_refused_in_one_line_and_makes_no_job(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content, named = BAD_RIGS[name]
    file, job = tmp_path / "rig.toml", tmp_path / "new.airseam"
    file.write_bytes(content if isinstance(content, bytes) else content.encode())
    assert named in refused(["test", "--rig", str(file), "--job", str(job)], capsys)
    assert not job.exists()


def test_the_good_files_are_good(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Otherwise the tests above would refuse for another reason than they think."""
    from acquisition.rigfile import read_rig

    file = tmp_path / "test.json"
    file.write_text(json.dumps(GOOD))
    assert airseam.main(["analyse", str(file), "--json"]) in (0, 1)
    assert json.loads(capsys.readouterr().out)["runs"][0]["n"]["value"] == pytest.approx(0.65, abs=1e-3)
    assert read_rig(RIG).fan == "fan"


def test_a_huge_test_file_is_refused_without_reading_it(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "test.json"
    with file.open("wb") as out:
        out.truncate(3_000_000_000)
    assert "bytes" in refused(["analyse", str(file)], capsys)


@pytest.mark.parametrize(
    ("arguments", "named"),
    [
        (["analyse", "{file}", "--method", "en-0815"], "iso9972"),
        (["analyse", "{file}", "--fit", "by-eye"], "ols"),
        (["analyse", "{file}", "--test", "3"], "test"),
        (["analyse", "{folder}/nothing.json"], "nothing.json"),
        (["analyse", "{folder}"], "file"),
        (["test", "--rig", "sim:castle", "--job", "{folder}/j.airseam"], "mill-row"),
        (["test", "--rig", "sim:mill-row", "--job", "{folder}/j.airseam", "--method", "en-0815"], "iso9972"),
        (["test", "--rig", "sim:mill-row", "--job", "{folder}/j.airseam", "--direction", "up"], "pressurize"),
        (["test", "--rig", "sim:mill-row", "--job", "{folder}/j.airseam", "--volume", "-3"], "--volume"),
        (["test", "--rig", "sim:mill-row", "--job", "{folder}/j.airseam", "--seed", "x"], "--seed"),
        (["test", "--rig", "sim:mill-row", "--job", "{folder}/none/j.airseam"], "j.airseam"),
        (["test", "--rig", "sim:mill-row"], "--job"),
        (["test", "--rig", "{folder}/none.toml", "--job", "{folder}/j.airseam"], "none.toml"),
        (["test", "--rig", "{folder}/none.toml", "--seed", "2", "--job", "{folder}/j.airseam"], "sim:mill-row"),
        (["test", "--rig", "sim:mill-row", "--job", "{file}"], "test.json"),
        (["simulate", "--house", "castle", "--pty"], "mill-row"),
        (["simulate", "--house", "mill-row"], "--pty"),
        (["simulate", "--house", "mill-row", "--listen", "4001"], "HOST:PORT"),
        (["simulate", "--house", "mill-row", "--pty", "--time-factor", "0"], "--time-factor"),
        (["simulate", "--house", "mill-row", "--pty", "--wind", "nan"], "--wind"),
        (["report", "{file}", "-o", "{folder}/none/r.pdf"], "r.pdf"),
        (["report", "{file}"], "-o"),
        (["export", "{file}"], "--csv"),
        (["export", "{file}", "--csv", "{folder}/csv"], "job"),
        (["export", "{file}", "--json", "{folder}/none/t.json"], "t.json"),
        (["verify", "{file}"], "job"),
        (["verify", "{folder}/none.airseam"], "none.airseam"),
        (["tset"], "commands"),
        (["ports", "all"], "all"),
        (["--colour"], "COMMAND"),
    ],
)
def test_bad_arguments_are_refused_in_one_line(
    arguments: list[str], named: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "test.json"
    file.write_text(json.dumps(GOOD))
    places = {"file": str(file), "folder": str(tmp_path)}
    assert named in refused([argument.format(**places) for argument in arguments], capsys)
    assert not list(tmp_path.glob("*.airseam*"))
