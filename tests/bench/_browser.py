"""A headless Chromium, asked over a pipe by its debugging protocol: what a page shows, without any library."""

from __future__ import annotations

import json
import os
import select
import shutil
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

NAMES = ("chromium", "chromium-browser", "google-chrome", "chrome")
LONGEST_S = 30.0
_SWITCHES = (
    "--headless=new",
    "--remote-debugging-pipe",
    "--no-first-run",
    "--no-default-browser-check",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--window-size=412,915",
)


def found_browser() -> str | None:
    """Return the path of a Chromium of this machine, None without one."""
    return next((path for name in NAMES if (path := shutil.which(name)) is not None), None)


class Page:
    """One page in a browser. Raises `TimeoutError` where the browser does not answer."""

    def __init__(self, to_browser: int, from_browser: int) -> None:
        """Open an empty page."""
        self._to, self._from = to_browser, from_browser
        self._rest = b""
        self._number = 0
        self._session: str | None = None
        target = self._ask("Target.createTarget", url="about:blank")["targetId"]
        self._session = self._ask("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]

    def go_to(self, address: str) -> None:
        """Load a page."""
        self._ask("Page.navigate", url=address)

    def value(self, script: str) -> Any:  # noqa: ANN401  what a script returns may be anything
        """Return what an expression of the page gives."""
        return self._ask("Runtime.evaluate", expression=script, returnByValue=True)["result"].get("value")

    def _ask(self, method: str, **parameters: object) -> dict[str, Any]:
        self._number += 1
        message: dict[str, object] = {"id": self._number, "method": method, "params": parameters}
        if self._session is not None:
            message["sessionId"] = self._session
        os.write(self._to, json.dumps(message).encode() + b"\0")
        end = time.monotonic() + LONGEST_S
        while True:
            answer = self._message(end)
            if answer.get("id") == self._number:
                if "error" in answer:
                    raise RuntimeError(f"{method}: {answer['error']}")
                return dict(answer["result"])

    def _message(self, end: float) -> dict[str, Any]:
        while b"\0" not in self._rest:
            ready, _, _ = select.select([self._from], [], [], max(end - time.monotonic(), 0.0))
            if not ready:
                raise TimeoutError("the browser does not answer")
            self._rest += os.read(self._from, 1 << 16)
        first, _, self._rest = self._rest.partition(b"\0")
        return dict(json.loads(first))


@contextmanager
def a_page(browser: str, profile: Path) -> Iterator[Page]:
    """Start a browser with a folder of its own and end it afterwards."""
    from_us, to_browser = os.pipe()
    from_browser, to_us = os.pipe()
    # The protocol is spoken on the descriptors 3 and 4; a sandbox cannot be had by the super-user.
    command = ["/bin/sh", "-c", f'exec "$0" "$@" 3<&{from_us} 4>&{to_us}', browser, *_SWITCHES]
    command += [f"--user-data-dir={profile}"]
    if hasattr(os, "geteuid") and os.geteuid() == 0:
        command.append("--no-sandbox")
    with subprocess.Popen(command, pass_fds=(from_us, to_us), stderr=subprocess.DEVNULL) as running:
        os.close(from_us)
        os.close(to_us)
        try:
            yield Page(to_browser, from_browser)
        finally:
            running.terminate()
            os.close(to_browser)
            os.close(from_browser)
