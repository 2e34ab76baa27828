"""Set Airseam up and start it. Needs nothing but Python 3.11 or later; works on Linux, macOS and Windows.

    python3 run.py               the window on a simulated rig; without a display the demonstration into ./out/
    python3 run.py demo          the demonstration, also where there is a display
    python3 run.py check         every check, and every test but the long walks
    python3 run.py walks         the long walks: whole jobs and classes through the real windows
    python3 run.py words         what the window says: collect its messages, compile their translations
    python3 run.py bench NAME    a benchmark of tests/bench

The first start makes `.venv` and installs the exact versions of constraints.txt there; later ones start at once.
"""

from __future__ import annotations

import contextlib
import ctypes
import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent
ENV = ROOT / ".venv"
SCRIPTS = ENV / ("Scripts" if os.name == "nt" else "bin")
PYTHON = SCRIPTS / ("python.exe" if os.name == "nt" else "python")
STAMP = ENV / "airseam-is-set-up"
AIRSEAM = (str(PYTHON), str(ROOT / "airseam.py"))
OUT = ROOT / "out"
OLDEST = (3, 11)
ROOM_BYTES = 1_500_000_000
TIME_FACTOR = "20"

# Library -> Debian package: what Qt and its X11 plug-in load and no wheel brings.
DRAWING = {
    "libglib-2.0.so.0": "libglib2.0-0", "libEGL.so.1": "libegl1", "libGL.so.1": "libgl1", "libX11.so.6": "libx11-6",
    "libdbus-1.so.3": "libdbus-1-3", "libfontconfig.so.1": "libfontconfig1", "libfreetype.so.6": "libfreetype6",
    "libxkbcommon.so.0": "libxkbcommon0", "libbrotlidec.so.1": "libbrotli1",
}  # fmt: skip
SCREEN = {
    "libxcb-cursor.so.0": "libxcb-cursor0", "libxcb-icccm.so.4": "libxcb-icccm4", "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1", "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0", "libxcb-render.so.0": "libxcb-render0",
    "libxcb-shape.so.0": "libxcb-shape0", "libxcb-shm.so.0": "libxcb-shm0", "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1", "libxcb-xfixes.so.0": "libxcb-xfixes0", "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0", "libX11-xcb.so.1": "libx11-xcb1", "libxcb-glx.so.0": "libxcb-glx0",
}  # fmt: skip
FONT, FONT_PACKAGE = Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"), "fonts-dejavu-core"
NO_NETWORK = (
    "name resolution", "newconnectionerror", "connection broken", "timed out", "network is unreachable", "proxyerror",
    "getaddrinfo failed", "connection refused", "could not resolve", "failed to establish", "from versions: none",
)  # fmt: skip


class CannotGoOn(Exception):
    """What stands in the way, as one sentence for the person at the terminal."""


def main(arguments: list[str]) -> int:
    """Do what was asked; return the exit status."""
    command, options = (arguments[0], arguments[1:]) if arguments else ("", [])
    try:
        if sys.version_info[:2] < OLDEST:
            raise CannotGoOn(f"Python {sys.version.split()[0]} is too old: Airseam needs Python 3.11 or later.")
        if command == "bench":
            return bench(options)
        commands = {"": start, "demo": demonstrate, "check": check, "walks": walks, "words": words}
        if command not in commands or options:
            raise CannotGoOn(
                f"'{' '.join(arguments)}' is unknown: give nothing, or demo, check, walks, words or bench NAME."
            )
        return commands[command]()
    except CannotGoOn as reason:
        print(f"run.py: {reason}", file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        return 130


def start() -> int:
    """Open the window, or run the demonstration where there is no display."""
    if not has_display():
        return demonstrate()
    set_up(tests=False, screen=True)
    return subprocess.call(AIRSEAM)


def demonstrate() -> int:
    """Test a simulated house in both directions over real ports, and write job, report and pictures to ./out/."""
    set_up(tests=False, screen=False)
    OUT.mkdir(exist_ok=True)
    job, rig, report = OUT / "mill-row.airseam", OUT / "rig.toml", OUT / "report.pdf"
    for old in OUT.glob("mill-row.airseam*"):
        old.unlink()
    print(f"A simulated house answers on ports of its own, {TIME_FACTOR} times faster than life.", flush=True)
    ports = ["--listen", "127.0.0.1:0"] if os.name == "nt" else ["--pty"]
    simulate = [*AIRSEAM, "simulate", "--house", "mill-row", *ports, "--time-factor", TIME_FACTOR]
    simulate += ["--rig-file", str(rig), "--job-file", str(job)]
    with subprocess.Popen(simulate, stdout=subprocess.PIPE, text=True) as house:
        try:
            assert house.stdout is not None
            for line in house.stdout:
                print(f"  {line}", end="", flush=True)
                if line.startswith("ready"):
                    break
            else:
                raise CannotGoOn("the simulated house did not start; what it said is above.")
            print(
                "A test in both directions, by the same program and over these ports (under a minute) ...", flush=True
            )
            test = [*AIRSEAM, "test", "--rig", str(rig), "--direction", "both", "--job", str(job)]
            status = subprocess.call([*test, "--report", str(report)])
        finally:
            house.terminate()
    if status > 1:
        return status
    print("Pictures of each place of the window ...", flush=True)
    pictures = subprocess.call([*AIRSEAM, "pictures", str(job), "--to", str(OUT)], env=headless())
    made = sorted(path.name for path in OUT.iterdir() if path.suffix in (".airseam", ".pdf", ".png", ".toml"))
    print(f"Written to {OUT}: {', '.join(made)}")
    return status or pictures


SIDE_BY_SIDE = ("-n", str(min(max(os.cpu_count() or 2, 2), 4)), "--dist", "loadfile")
"""How many tests run at once: those that look at real time want a core of their own."""


def check() -> int:
    """Run every check, and every test but the long walks; what pytest says comes last."""
    set_up(tests=True, screen=False)
    steps = {
        "Lint (ruff check)": [str(PYTHON), "-m", "ruff", "check", "."],
        "Format (ruff format)": [str(PYTHON), "-m", "ruff", "format", "--check", "."],
        "Types (mypy)": [str(PYTHON), "-m", "mypy"],
        "Import rules (lint-imports)": [str(SCRIPTS / "lint-imports")],
        "Tests (pytest)": [str(PYTHON), "-m", "pytest", "-q", *SIDE_BY_SIDE, "-m", "not walk"],
    }
    failed = []
    for title, command in steps.items():
        print(f"\n=== {title} ===", flush=True)
        if subprocess.call(command, cwd=ROOT, env=headless()) != 0:
            failed.append(title)
    if failed:
        print(f"\nNot in order: {'; '.join(failed)}.")
    return 1 if failed else 0


def walks() -> int:
    """Run the tests that walk through a whole job or class; they take minutes."""
    set_up(tests=True, screen=False)
    command = [str(PYTHON), "-m", "pytest", "-q", *SIDE_BY_SIDE, "-m", "walk"]
    return subprocess.call(command, cwd=ROOT, env=headless())


def words() -> int:
    """Take new messages of the window into its translation files, drop old ones, and compile what is translated."""
    set_up(tests=False, screen=False)
    folder = ROOT / "gui" / "translations"
    sources = [str(path) for path in sorted((ROOT / "gui").rglob("*.py"))]
    written = [str(path) for path in sorted(folder.glob("*.ts"))]
    collect = [str(SCRIPTS / "pyside6-lupdate"), *sources, "-tr-function-alias", "tr+=say,tr+=mark"]
    done = subprocess.call([*collect, "-locations", "none", "-no-obsolete", "-ts", *written])
    return done or subprocess.call([str(SCRIPTS / "pyside6-lrelease"), *written])


def bench(options: list[str]) -> int:
    """Run a benchmark with its own options."""
    folder = ROOT / "tests" / "bench"
    names = sorted(path.stem.replace("_", "-") for path in folder.glob("*.py") if not path.stem.startswith("_"))
    if not options or options[0] not in names:
        given = f"'{options[0]}'" if options else "nothing"
        raise CannotGoOn(f"bench got {given}: the name of a benchmark is needed, one of {', '.join(names)}.")
    set_up(tests=True, screen=False)
    module = f"tests.bench.{options[0].replace('-', '_')}"
    return subprocess.call([str(PYTHON), "-m", module, *options[1:]], cwd=ROOT, env=headless())


def has_display() -> bool:
    """Tell whether a window can be shown."""
    if os.environ.get("QT_QPA_PLATFORM") in ("offscreen", "minimal"):
        return False
    return not sys.platform.startswith("linux") or any(os.environ.get(key) for key in ("DISPLAY", "WAYLAND_DISPLAY"))


def headless() -> dict[str, str]:
    """Return the environment of a process that draws without a screen."""
    return {**os.environ, "QT_QPA_PLATFORM": "offscreen"}


def set_up(*, tests: bool, screen: bool) -> None:
    """Make sure that everything is installed; does nothing where it is."""
    system_libraries(screen=screen)
    inputs = [(ROOT / name).read_bytes() for name in ("pyproject.toml", "constraints.txt")]
    wanted = hashlib.sha256(b"\0".join([*inputs, sys.version.encode()])).hexdigest()
    have = STAMP.read_text().split() if STAMP.exists() else []
    if have[:1] == [wanted] and PYTHON.exists() and (not tests or have[1:] == ["tests"]):
        return
    if shutil.disk_usage(ROOT).free < ROOM_BYTES:
        raise CannotGoOn(f"the disk of {ROOT} is nearly full: {ROOM_BYTES / 1e9:.1f} GB are needed. Make room.")
    make_environment()
    install(requirements(tests=tests))
    STAMP.write_text(f"{wanted} {'tests' if tests else ''}\n")


def make_environment() -> None:
    """Make `.venv`, unless there is one of this Python."""
    version = f"{sys.version_info[0]}.{sys.version_info[1]}"
    if PYTHON.exists():
        ask = [str(PYTHON), "-c", "import sys, pip; print('%d.%d' % sys.version_info[:2])"]
        if subprocess.run(ask, capture_output=True, text=True, check=False).stdout.strip() == version:
            return
    if any(importlib.util.find_spec(name) is None for name in ("venv", "ensurepip")):
        package = f"python{version}-venv"
        if not may_install():
            raise CannotGoOn(f"this Python has no venv module. On Debian or Ubuntu: sudo apt-get install {package}")
        apt_install([package])
    print(f"Making {ENV} ...", flush=True)
    shutil.rmtree(ENV, ignore_errors=True)
    status, said = follow([sys.executable, "-m", "venv", str(ENV)], "")
    if status:
        raise CannotGoOn(f"{ENV} cannot be made: {explain(said)}")


def requirements(*, tests: bool) -> list[str]:
    """Return what pyproject.toml asks for."""
    import tomllib

    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    extra = project["optional-dependencies"]["test"] if tests else []
    return [*project["dependencies"], *extra]


def install(packages: list[str]) -> None:
    """Install Python packages in the versions of constraints.txt."""
    print("Installing the packages that Airseam stands on (once, a few minutes) ...", flush=True)
    # Most of what is installed is never imported: what is gets compiled when it is, which saves half a minute here.
    pip = [str(PYTHON), "-m", "pip", "install", "--no-compile", "--disable-pip-version-check", "--progress-bar", "off"]
    status, said = follow([*pip, "-c", str(ROOT / "constraints.txt"), *packages], "Collecting ", "Installing ")
    if status:
        raise CannotGoOn(f"the packages cannot be installed: {explain(said)}")


def system_libraries(*, screen: bool) -> None:
    """Make sure that Qt finds its libraries: install them as root on Debian, else say the one command."""
    if not sys.platform.startswith("linux"):
        return
    missing = [name for name in (*DRAWING, *SCREEN) if not loads(name)]
    packages = [{**DRAWING, **SCREEN}[name] for name in missing]
    if shutil.which("apt-get"):
        packages += [] if FONT.exists() else [FONT_PACKAGE]
        advice = f"sudo apt-get install {' '.join(packages)}"
    elif tool := shutil.which("dnf") or shutil.which("zypper"):
        quoted = " ".join(f"'{name}()(64bit)'" for name in missing)
        advice = f"sudo {Path(tool).name} install {quoted}"
    else:
        advice = f"install the packages that hold {' '.join(missing)}"
    if packages and may_install():
        apt_install(packages)
    elif missing:
        sentence = f"Qt lacks system libraries. The one command: {advice}"
        if screen or any(name in DRAWING for name in missing):
            raise CannotGoOn(sentence)
        print(f"For a window {sentence}", flush=True)


def loads(library: str) -> bool:
    """Tell whether the system finds a library."""
    with contextlib.suppress(OSError):
        ctypes.CDLL(library)
        return True
    return False


def may_install() -> bool:
    """Tell whether this process may install system packages."""
    return hasattr(os, "geteuid") and os.geteuid() == 0 and shutil.which("apt-get") is not None


def apt_install(packages: list[str]) -> None:
    """Install Debian packages."""
    print(f"Installing system packages: {' '.join(packages)} ...", flush=True)
    follow(["apt-get", "update", "-q"], "")
    install_command = ["apt-get", "install", "-y", "-q", "--no-install-recommends", *packages]
    status, said = follow(install_command, "Unpacking ")
    if status:
        raise CannotGoOn(f"the system packages cannot be installed: {explain(said)}")


def follow(command: list[str], *news: str) -> tuple[int, list[str]]:
    """Run a command quietly but for its lines that begin with `news`; return its exit status and its last lines."""
    said: list[str] = []
    shown = tuple(begin for begin in news if begin)
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive", "PYTHONUNBUFFERED": "1"}
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, errors="replace", env=environment
    ) as process:
        assert process.stdout is not None
        for line in process.stdout:
            said = [*said[-60:], line.strip()]
            if shown and line.startswith(shown):
                text = f"  {line.strip():.70}"
                print(f"\r{text:<72}" if sys.stdout.isatty() else text, end="" if sys.stdout.isatty() else "\n")
                sys.stdout.flush()
    if shown and sys.stdout.isatty():
        print(f"\r{'':<72}\r", end="", flush=True)
    return process.returncode, said


def explain(said: list[str]) -> str:
    """Return the cause of a failure in words, from what the failed command said."""
    text = "\n".join(said).lower()
    if "no space left" in text or "not enough free space" in text:
        return "the disk is full. Make room and start again."
    if any(sign in text for sign in NO_NETWORK):
        return "no network, which the first start needs. Connect and start again."
    return "\n  ".join(["the last lines of the installer are", *said[-15:]])


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
