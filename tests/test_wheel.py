"""The wheel holds exactly the program: the front door and the five packages, with everything they read at run time."""

from __future__ import annotations

import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGES = {"acquisition", "analysis", "drivers", "gui", "simulators"}


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the wheel from a copy of the sources, without network."""
    copy, out = tmp_path_factory.mktemp("sources"), tmp_path_factory.mktemp("wheel")
    for name in sorted(PACKAGES):
        shutil.copytree(ROOT / name, copy / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("airseam.py", "pyproject.toml", "README.md", "LICENSE", "run.py"):
        shutil.copy(ROOT / name, copy)
    # What lies beside the program in the repository must not get into the wheel.
    for name in ("tests", "out", "build"):
        (copy / name).mkdir()
        (copy / name / "__init__.py").touch()
    command = [sys.executable, "-m", "pip", "wheel", "--no-build-isolation", "--no-deps", "--no-index", "-q"]
    done = subprocess.run([*command, "-w", str(out), str(copy)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    (built,) = out.glob("*.whl")
    return built


def names(wheel: Path) -> set[str]:
    with zipfile.ZipFile(wheel) as archive:
        return {name for name in archive.namelist() if ".dist-info/" not in name}


def test_the_wheel_holds_the_front_door_and_the_five_packages(wheel: Path) -> None:
    assert {name.split("/")[0] for name in names(wheel)} == {"airseam.py", *PACKAGES}


def test_the_wheel_holds_every_file_that_the_packages_have(wheel: Path) -> None:
    tracked = {
        path.relative_to(ROOT).as_posix()
        for name in PACKAGES
        for path in (ROOT / name).rglob("*")
        # What the window reads of its catalogues is the compiled form; the texts that people edit stay outside.
        if path.is_file() and "__pycache__" not in path.parts and path.suffix != ".ts"
    }
    assert tracked - names(wheel) == set()


def test_the_program_runs_from_the_wheel_alone(wheel: Path, tmp_path: Path) -> None:
    probe = (
        "import sys; sys.path[0] = sys.argv[1]\n"
        "import airseam; assert sys.argv[1] in airseam.__file__\n"
        "sys.exit(airseam.main(sys.argv[2:]))"
    )
    job = str(tmp_path / "j.airseam")
    command = ["test", "--rig", "sim:mill-row", "--job", job, "--report", str(tmp_path / "r.pdf")]
    unpacked = tmp_path / "unpacked"
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(unpacked)
    done = subprocess.run(
        [sys.executable, "-c", probe, str(unpacked), *command],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert "Traceback" not in done.stderr
    assert (tmp_path / "r.pdf").read_bytes().startswith(b"%PDF-")
