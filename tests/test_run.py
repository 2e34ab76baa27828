"""Setting up: what is checked before anything is installed, and what is said when something stands in the way."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tomllib
from collections import namedtuple
from pathlib import Path

import pytest

import run

ROOT = Path(__file__).parents[1]
Usage = namedtuple("Usage", ("total", "used", "free"))


def said(capsys: pytest.CaptureFixture[str]) -> str:
    """Return the one line on standard error."""
    text = capsys.readouterr().err
    assert text.count("\n") == 1
    assert text.startswith("run.py: ")
    return text


def test_an_old_python_is_refused_in_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 10, 4, "final", 0))
    monkeypatch.setattr(sys, "version", "3.10.4 (main)")
    assert run.main([]) == 2
    assert "3.10.4 is too old: Airseam needs Python 3.11" in said(capsys)


@pytest.mark.parametrize("arguments", [["tset"], ["check", "fast"], ["bench", "none-such"], ["bench"]])
def test_an_unknown_command_is_refused_with_those_there_are(
    arguments: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert run.main(arguments) == 2
    assert "check" in (line := said(capsys)) or "first-light" in line


def test_a_full_disk_is_noticed_before_anything_is_installed(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    monkeypatch.setattr(run, "STAMP", tmp_path / "none")
    monkeypatch.setattr(run, "system_libraries", lambda *, screen: None)
    monkeypatch.setattr(shutil, "disk_usage", lambda path: Usage(10**12, 10**12, 10**8))
    assert run.main(["check"]) == 2
    assert "nearly full" in said(capsys)


def test_a_python_without_the_venv_module_names_the_package(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    monkeypatch.setattr(run, "STAMP", tmp_path / "none")
    monkeypatch.setattr(run, "PYTHON", tmp_path / "none")
    monkeypatch.setattr(run, "ENV", tmp_path / "env")
    monkeypatch.setattr(run, "system_libraries", lambda *, screen: None)
    monkeypatch.setattr(run, "may_install", lambda: False)
    monkeypatch.setattr("importlib.util.find_spec", lambda name: None)
    assert run.main(["check"]) == 2
    assert f"python3.{sys.version_info[1]}-venv" in said(capsys)


def test_missing_libraries_name_the_one_command(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    if not sys.platform.startswith("linux"):
        pytest.skip("only Linux lacks libraries")
    missing = {"libxcb-cursor.so.0", "libGL.so.1"}
    monkeypatch.setattr(run, "loads", lambda library: library not in missing)
    monkeypatch.setattr(run, "may_install", lambda: False)
    monkeypatch.setattr(shutil, "which", lambda name: "/usr/bin/apt-get" if name == "apt-get" else None)
    with pytest.raises(run.CannotGoOn, match=r"sudo apt-get install libgl1 libxcb-cursor0"):
        run.system_libraries(screen=True)
    missing.remove("libGL.so.1")
    run.system_libraries(screen=False)
    assert "For a window" in capsys.readouterr().out
    monkeypatch.setattr(shutil, "which", lambda name: "/usr/bin/dnf" if name == "dnf" else None)
    with pytest.raises(run.CannotGoOn, match=r"sudo dnf install 'libxcb-cursor.so.0\(\)\(64bit\)'"):
        run.system_libraries(screen=True)
    monkeypatch.setattr(shutil, "which", lambda name: None)
    with pytest.raises(run.CannotGoOn, match="hold libxcb-cursor"):
        run.system_libraries(screen=True)


def test_a_failed_installation_without_network_says_that(tmp_path: Path) -> None:
    """A real attempt of the installer at an address where nobody listens."""
    nowhere = ("--index-url", "http://127.0.0.1:9/simple", "--retries", "0", "--isolated", "no-such-package-here")
    status, lines = run.follow([sys.executable, "-m", "pip", "install", "--target", str(tmp_path), *nowhere], "")
    assert status != 0
    assert "no network" in run.explain(lines)


def test_a_full_disk_during_the_installation_says_that() -> None:
    assert "disk is full" in run.explain(["ERROR: Could not install packages: [Errno 28] No space left on device"])


def test_any_other_failure_shows_the_last_lines() -> None:
    assert run.explain([f"line {number}" for number in range(40)]).endswith("line 39")


def test_the_pins_hold_exact_versions_and_what_pyproject_asks_for() -> None:
    pins = {}
    for line in (ROOT / "constraints.txt").read_text(encoding="utf-8").splitlines():
        if not line.startswith("#"):
            name, version = line.split("==")
            pins[name.lower().replace("_", "-")] = version
    assert pins["pyside6-essentials"] == "6.11.1"
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    asked = [*project["dependencies"], *project["optional-dependencies"]["test"]]
    assert run.requirements(tests=True) == asked
    assert run.requirements(tests=False) == project["dependencies"]
    for requirement in asked:
        name = requirement.split(">")[0].split("=")[0].strip()
        assert name.lower().replace("_", "-") in pins, name


def test_the_stamp_of_the_same_inputs_starts_at_once(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    installed: list[bool] = []
    monkeypatch.setattr(run, "STAMP", tmp_path / "stamp")
    monkeypatch.setattr(run, "PYTHON", Path(sys.executable))
    monkeypatch.setattr(run, "system_libraries", lambda *, screen: None)
    monkeypatch.setattr(run, "make_environment", lambda: None)
    monkeypatch.setattr(
        run, "install", lambda packages: installed.append(any(item.startswith("pytest>") for item in packages))
    )
    for tests in (False, False, True, True, False):
        run.set_up(tests=tests, screen=False)
    assert installed == [False, True]
    monkeypatch.setattr(sys, "version", "3.99.0")
    run.set_up(tests=False, screen=False)
    assert installed == [False, True, False]


def test_a_display_decides_between_window_and_demonstration(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", "linux")
    for key in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(key, raising=False)
    assert not run.has_display()
    monkeypatch.setenv("DISPLAY", ":0")
    assert run.has_display()
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    assert not run.has_display()
    monkeypatch.delenv("QT_QPA_PLATFORM")
    monkeypatch.delenv("DISPLAY")
    monkeypatch.setattr(sys, "platform", "darwin")
    assert run.has_display()


def test_run_py_is_readable_by_an_old_python() -> None:
    """The sentence about an old Python must come from that Python: no syntax that it does not know."""
    import ast

    ast.parse((ROOT / "run.py").read_text(encoding="utf-8"), feature_version=(3, 8))


def test_ci_calls_the_command_that_the_readme_names() -> None:
    command = "python3 run.py check"
    assert f"    {command}" in (ROOT / "README.md").read_text(encoding="utf-8")
    assert (ROOT / ".ci" / "run").read_text(encoding="utf-8").rstrip().endswith(f"exec {command}")


def test_run_py_uses_the_standard_library_alone() -> None:
    probe = (
        "import sys; sys.path.insert(0, sys.argv[1]); before = set(sys.modules); import run\n"
        "others = {name.partition('.')[0] for name in set(sys.modules) - before} - {'run'}\n"
        "others -= set(sys.stdlib_module_names)\n"
        "sys.exit(str(others) if others else 0)"
    )
    done = subprocess.run([sys.executable, "-I", "-c", probe, str(ROOT)], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")
