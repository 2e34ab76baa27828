"""The page on the phone in a headless Chromium: how far it is behind the ribbon, when it turns grey, who is refused.

A process of its own holds a pressure in the real window, in real time, and says what its ribbon shows. The browser
opens the link. Then a client sends noise for a while; then eight phones look and a ninth asks; at last the program is
killed. Needs a Chromium on this machine.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
from contextlib import ExitStack, suppress
from http.client import HTTPConnection, HTTPResponse
from pathlib import Path

from acquisition.phone.server import COOKIE, MOST_PHONES
from tests.bench._browser import Page, a_page, found_browser

LATEST_S, GREY_S = 1.0, 3.0
SHOWN = "['pressure','flow','age'].map(id => document.getElementById(id)?.textContent)"
GREY = "document.getElementById('all')?.className"
HERE = "127.0.0.1"
PAUSE_S, SAMPLE_S = 0.01, 0.1
START_S = 300.0


def child(folder: Path) -> None:
    """Hold a pressure in the window and print its link, then what its ribbon shows whenever that changes."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    import airseam
    from acquisition.snapshot import EngineState
    from analysis.units import Quantity, format_value
    from drivers.clock import WallClock, seconds
    from drivers.openers import Openers
    from gui.app import application, build
    from gui.errands import ThreadErrands
    from gui.settings import SettingsFile
    from gui.viewmodels.moment import Place
    from gui.views.ribbon import FigureView

    clock = WallClock()
    app = application()
    program = build(
        app, airseam.sources(1), folder, clock, errands=ThreadErrands(), opener=Openers(clock).open,
        settings=SettingsFile(None),
    )  # fmt: skip
    desk = program.desk
    desk.new_job(folder / "phone.airseam", "Mill Row 8")
    program.intents.edit("zero_s", "15")
    program.window.show()
    program.intents.rig.connect_last()
    program.screen.go_to(Place.HUNT)
    ribbon = program.window.ribbon.findChildren(FigureView)[0]
    told, begun = ("", ""), False
    program.bridge.start()
    while True:
        app.processEvents()
        shown = desk.snapshot()
        if shown is None:
            continue
        if not begun and shown.state is EngineState.IDLE and shown.envelope_pa is not None:
            program.intents.hunt.begin()
            begun = desk.busy
        if shown.state is EngineState.ASKING and shown.ask is not None:
            desk.answer(shown.ask.id, shown.ask.choices[0])
        if shown.state is EngineState.PAUSED and desk.engine is not None:
            # On a machine that is too busy the watchdog stops the fan.
            desk.engine.resume()
        if shown.held is not None and not desk.phone.link:
            desk.phone.start(HERE, ".")
            print(json.dumps({"link": desk.phone.link}), flush=True)
        if shown.envelope_pa is not None:
            induced_pa = shown.envelope_pa - (shown.zero_pa or 0.0)
            induced = format_value(induced_pa, Quantity.PRESSURE, program.screen.display)
            if told != (now_told := (ribbon.accessibleName(), induced)):
                told = now_told
                print(json.dumps({"t": time.monotonic(), "pressure": induced, "ribbon": told[0]}), flush=True)
        clock.wait_until(clock.now_ns() + seconds(PAUSE_S))


class Told:
    """What the program prints, read beside."""

    def __init__(self, running: subprocess.Popen[str]) -> None:
        """Begin to read."""
        self.link = ""
        self.shown: list[tuple[float, str]] = []
        self._running = running
        threading.Thread(target=self._read, daemon=True).start()

    def _read(self) -> None:
        assert self._running.stdout is not None
        for line in self._running.stdout:
            found = json.loads(line)
            self.link = found.get("link", self.link)
            if "pressure" in found:
                self.shown.append((found["t"], found["pressure"]))

    def behind_s(self, at: float, text: str) -> float:
        """Return how long ago the program showed a text the last time, 0 where it still does; infinite if never."""
        known = list(self.shown)
        until = [*(t for t, _ in known[1:]), float("inf")]
        ended = [end for (_, words), end in zip(known, until, strict=True) if words == text and end > 0.0]
        return min((max(at - end, 0.0) for end in ended), default=float("inf"))

    def wait_for_link(self) -> str:
        """Return the link; raises `TimeoutError` where the program does not come so far."""
        end = time.monotonic() + START_S
        while not self.link:
            if time.monotonic() > end or self._running.poll() is not None:
                raise TimeoutError("the program did not come to hold a pressure")
            self.run_for(SAMPLE_S)
        return self.link

    def run_for(self, time_s: float) -> None:
        """Let the program run for a while."""
        with suppress(subprocess.TimeoutExpired):
            self._running.wait(time_s)


def behind(page: Page, told: Told, time_s: float) -> list[float]:
    """Return for each look at the page how long ago the ribbon showed the same."""
    found = []
    end = time.monotonic() + time_s
    while (now := time.monotonic()) < end:
        pressure, _, _ = page.value(SHOWN)
        found.append(told.behind_s(now, str(pressure).partition("\u00a0")[0].partition(" ")[0]))
        told.run_for(SAMPLE_S)
    return found


def asked(host: str, path: str, method: str = "GET", **headers: str) -> int:
    """Return the status that a request gets, 0 where it gets none."""
    connection = HTTPConnection(host, timeout=5.0)
    try:
        connection.request(method, path, headers=headers)
        return connection.getresponse().status
    except OSError:
        return 0
    finally:
        connection.close()


def refused(host: str, token: str) -> dict[str, bool]:
    """Return what is refused that has to be."""
    cookie = f"{COOKIE}={token}"
    methods = ("POST", "PUT", "DELETE", "HEAD", "OPTIONS", "PATCH")
    return {
        "right_link_is_let_in": asked(host, f"/?t={token}") == 303,
        "wrong_token": asked(host, f"/?t={token[:-1]}x") == 403 and asked(host, "/stream") == 403,
        "other_host": asked(host, "/", Cookie=cookie, Host="example.org") == 403,
        "other_methods": all(asked(host, "/", method, Cookie=cookie) == 405 for method in methods),
        "files": all(asked(host, path, Cookie=cookie) == 404 for path in ("/etc/passwd", "/../README.md", "/%2e%2e/")),
        "ninth_phone": _ninth(host, cookie),
    }


def _ninth(host: str, cookie: str) -> bool:
    """Tell whether a ninth phone is refused while eight look, the browser one of them."""
    with ExitStack() as stack:
        statuses = []
        for _ in range(MOST_PHONES):
            connection = HTTPConnection(host, timeout=5.0)
            stack.callback(connection.close)
            connection.request("GET", "/stream", headers={"Cookie": cookie})
            answer: HTTPResponse = connection.getresponse()
            stack.callback(answer.close)
            statuses.append(answer.status)
    return statuses == [200] * (MOST_PHONES - 1) + [503]


def noise(host: str, token: str, time_s: float, seed: int) -> int:
    """Send broken, huge, slow and strange requests for a while; return how many."""
    chance = random.Random(seed)
    name, _, port = host.partition(":")
    whole = f"GET /?t={token} HTTP/1.1\r\nHost: {host}\r\nCookie: {COOKIE}={token}\r\n\r\n".encode()
    sent, end = 0, time.monotonic() + time_s
    while time.monotonic() < end:
        kind = chance.randrange(4)
        content: bytes | bytearray
        if kind == 0:
            content = chance.randbytes(chance.randrange(1, 3000))
        elif kind == 1:
            content = bytearray(whole)
            for _ in range(chance.randrange(1, 8)):
                content[chance.randrange(len(content))] = chance.randrange(256)
        elif kind == 2:
            content = whole[: chance.randrange(len(whole))]
        else:
            content = (
                b"GET /" + b"a" * chance.randrange(20_000) + b" HTTP/1.1\r\n" + b"X: y\r\n" * chance.randrange(300)
            )
        with suppress(OSError), socket.create_connection((name, int(port)), timeout=2.0) as wire:
            wire.sendall(content)
            wire.shutdown(socket.SHUT_WR)
            wire.settimeout(0.2)
            wire.recv(256)
        sent += 1
    return sent


def grey_after_s(page: Page, begun: float) -> float:
    """Return how long after the program was killed the page was grey; infinite if it never was."""
    while (now := time.monotonic()) < begun + 3.0 * GREY_S:
        if page.value(GREY) == "stale":
            return now - begun
    return float("inf")


def phone(browser: str, watch_s: float, noise_s: float, seed: int, folder: Path) -> dict[str, object]:
    """Walk through everything and return what was measured."""
    command = [sys.executable, "-m", "tests.bench.phone", "--child", str(folder)]
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    with subprocess.Popen(
        command, cwd=Path(__file__).parents[2], env=env, stdout=subprocess.PIPE, text=True
    ) as running:
        try:
            told = Told(running)
            link = told.wait_for_link()
            host, _, token = link.removeprefix("http://").partition("/?t=")
            with a_page(browser, folder / "profile") as page:
                page.go_to(link)
                told.run_for(2.0)
                late = sorted(behind(page, told, watch_s))
                gates = refused(host, token)
                sent = noise(host, token, noise_s, seed)
                after = sorted(behind(page, told, 5.0))
                alive = running.poll() is None and asked(host, f"/?t={token}") == 303
                running.send_signal(signal.SIGKILL)
                grey_s = grey_after_s(page, time.monotonic())
        finally:
            running.kill()
    return {
        "looks": len(late),
        "behind_p50_s": round(late[len(late) // 2], 2),
        "behind_worst_s": round(late[-1], 2),
        "behind_after_noise_s": round(after[-1], 2),
        "grey_after_s": round(grey_s, 2),
        "noise_sent": sent,
        "alive_after_noise": alive,
        **gates,
    }


def main() -> int:
    """Print what was found; return 1 where something is late or let in."""
    parser = argparse.ArgumentParser(prog="run.py bench phone", description=__doc__)
    parser.add_argument("--seconds", type=float, default=20.0, help="how long the page is watched (%(default)s)")
    parser.add_argument("--noise", type=float, default=60.0, help="how long noise is sent, in seconds (%(default)s)")
    parser.add_argument("--seed", type=int, default=1, help="decides the noise (%(default)s)")
    parser.add_argument("--json", action="store_true", help="one JSON object as the last line")
    parser.add_argument("--child", type=Path, help=argparse.SUPPRESS)
    options = parser.parse_args()
    if options.child is not None:
        child(options.child)
    browser = found_browser()
    if browser is None:
        print("No Chromium is on this machine: install one with the package manager of the system, then call again.")
        return 1
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        found = phone(browser, options.seconds, options.noise, options.seed, Path(folder))
    for name, value in found.items():
        print(f"{name:>22}  {value}")
    in_time = all(float(str(found[name])) <= LATEST_S for name in ("behind_worst_s", "behind_after_noise_s"))
    safe = all(value for value in found.values() if isinstance(value, bool))
    good = in_time and safe and float(str(found["grey_after_s"])) <= GREY_S
    goals = f"behind the ribbon by at most {LATEST_S:g} s, grey within {GREY_S:g} s, nobody let in"
    print(f"{goals}: {'yes' if good else 'no'}")
    if options.json:
        print(json.dumps({"bench": "phone", "seed": options.seed, **found}))
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
