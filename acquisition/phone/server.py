"""The server of the page: a link with a token, GET only, two paths, eight phones, numbers only, no file system.

Plain HTTP: anybody in the same network could read the numbers. It never takes a command.
"""

from __future__ import annotations

import hmac
import ipaddress
import json
import secrets
import threading
from dataclasses import asdict, dataclass
from functools import partial
from http.cookies import CookieError, SimpleCookie
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from urllib.parse import parse_qs, urlsplit

from acquisition.phone.page import POLICY
from analysis.errors import InvalidInput
from drivers.clock import NS_PER_S, Clock

MOST_PHONES = 8
MOST_CONNECTIONS = 24
LONGEST_S = 4 * 3600.0
PERIOD_S = 0.2
REFUSAL_S = 0.5
"""How long a wrong token waits for its answer."""
REQUEST_S = 3.0
COOKIE = "airseam"


@dataclass(frozen=True, slots=True)
class HelperNumbers:
    """What the page shows, as texts in the units of the laptop: no name, no address, no photo."""

    flow: str = "–"
    unit: str = "m³/h"
    change: str = "–"
    pressure: str = "–"
    state: str = ""


class HelperView:
    """The newest numbers and when they came. One writes, any number of threads read."""

    def __init__(self, clock: Clock) -> None:
        """Start with nothing to show."""
        self._clock = clock
        self._newest: tuple[HelperNumbers, int] | None = None

    def show(self, numbers: HelperNumbers) -> None:
        """Show these numbers from now on."""
        self._newest = (numbers, self._clock.now_ns())

    def document(self) -> str | None:
        """Return numbers and their age as JSON, None before the first."""
        newest = self._newest
        if newest is None:
            return None
        numbers, at_ns = newest
        return json.dumps({**asdict(numbers), "age_s": round((self._clock.now_ns() - at_ns) / NS_PER_S, 2)})


class PhoneServer:
    """Serves the page at one private address until `stop`, or for four hours."""

    def __init__(self, view: HelperView, clock: Clock, host: str, page: bytes, port: int = 0) -> None:
        """Serve the page at `host`, an address of this machine; raises `InvalidInput` unless it is private and free."""
        if not _is_private(host):
            raise InvalidInput("phone page", host, "a private address of this machine is needed", shown=host)
        self.token = secrets.token_urlsafe(16)
        self.view = view
        self.page = page
        self.over = threading.Event()
        self.streams = threading.BoundedSemaphore(MOST_PHONES)
        self._phones = 0
        self._count = threading.Lock()
        self._clock = clock
        self._end_ns = clock.now_ns() + round(LONGEST_S * NS_PER_S)
        try:
            self._server = _Server((host, port), partial(_Answer, self))
        except OSError as error:
            allowed = f"this address cannot be listened at ({error.strerror or error})"
            raise InvalidInput("phone page", f"{host}:{port}", allowed, shown=f"{host}:{port}") from error
        self.host = f"{host}:{self._server.server_address[1]}"
        self._thread = threading.Thread(target=self._server.serve_forever, args=(PERIOD_S,), name="phone page")
        self._thread.start()

    @property
    def link(self) -> str:
        """The link for the phone, token and all."""
        return f"http://{self.host}/?t={self.token}"

    @property
    def phones(self) -> int:
        """How many phones are looking."""
        return self._phones

    @property
    def ended(self) -> bool:
        """Whether it was stopped, or its time is over."""
        return self.over.is_set() or self._clock.now_ns() >= self._end_ns

    def looking(self, change: int) -> None:
        """Count a phone that came or went."""
        with self._count:
            self._phones += change

    def stop(self) -> None:
        """End every stream and stop listening."""
        self.over.set()
        self._server.shutdown()
        self._thread.join()
        self._server.server_close()


class _Server(ThreadingHTTPServer):
    daemon_threads = False
    allow_reuse_address = False

    def __init__(self, address: tuple[str, int], handler: partial[_Answer]) -> None:
        self._free = threading.BoundedSemaphore(MOST_CONNECTIONS)
        super().__init__(address, handler)

    def verify_request(self, request: object, client_address: object) -> bool:
        """Take private peers only."""
        return isinstance(client_address, tuple) and _is_private(str(client_address[0]))

    def process_request(self, request: object, client_address: object) -> None:
        """Take so many connections at once and no more."""
        if not self._free.acquire(blocking=False):
            self.shutdown_request(request)  # type: ignore[arg-type]
            return
        super().process_request(request, client_address)  # type: ignore[arg-type]

    def process_request_thread(self, request: object, client_address: object) -> None:
        """Serve one connection."""
        try:
            super().process_request_thread(request, client_address)  # type: ignore[arg-type]
        finally:
            self._free.release()

    def handle_error(self, request: object, client_address: object) -> None:
        """A phone that went away is no news."""


class _Answer(BaseHTTPRequestHandler):
    timeout = REQUEST_S
    server_version = "Airseam"
    sys_version = ""

    def __init__(self, owner: PhoneServer, *rest: object) -> None:
        self._owner = owner
        super().__init__(*rest)  # type: ignore[arg-type]

    def handle_one_request(self) -> None:
        """Refuse every method but GET before anything of it is looked up."""
        self.raw_requestline = self.rfile.readline(4097)
        self.close_connection = True
        if not self.raw_requestline or len(self.raw_requestline) > 4096:
            self.requestline, self.request_version, self.command = "", "", ""
            if self.raw_requestline:
                self._refuse(414)
            return
        if not self.parse_request():
            return
        if self.command != "GET":
            self._refuse(405)
        else:
            self._get()
        self.wfile.flush()

    def _get(self) -> None:
        target = urlsplit(self.path)
        if self._owner.ended:
            self._refuse(410)
        elif self.headers.get_all("Host") != [self._owner.host]:
            self._refuse(403)
        elif target.path == "/" and "t" in (query := parse_qs(target.query)):
            self._let_in(query["t"][0])
        elif target.path not in ("/", "/stream"):
            self._refuse(404)
        elif not self._known(self._cookie()):
            self._refuse(403)
        elif target.path == "/":
            self._send(200, self._owner.page, "text/html; charset=utf-8")
        else:
            self._stream()

    def _let_in(self, token: str) -> None:
        """Put the token into a cookie and lead to an address without it."""
        if not self._known(token):
            self._refuse(403)
            return
        cookie = f"{COOKIE}={self._owner.token}; HttpOnly; SameSite=Strict; Path=/"
        self._send(303, b"", "text/plain", ("Location", "/"), ("Set-Cookie", cookie))

    def _stream(self) -> None:
        if not self._owner.streams.acquire(blocking=False):
            self._refuse(503)
            return
        self._owner.looking(1)
        try:
            self._head(200, "text/event-stream")
            self.wfile.write(b"retry: 1000\n\n")
            while not self._owner.ended:
                document = self._owner.view.document()
                self.wfile.write(b": \n\n" if document is None else f"data: {document}\n\n".encode())
                self.wfile.flush()
                self._owner.over.wait(PERIOD_S)
        except OSError:
            pass
        finally:
            self._owner.looking(-1)
            self._owner.streams.release()

    def _cookie(self) -> str:
        try:
            found = SimpleCookie(self.headers.get("Cookie", "")).get(COOKIE)
        except CookieError:
            return ""
        return "" if found is None else found.value

    def _known(self, token: str) -> bool:
        if hmac.compare_digest(token.encode("utf-8", "replace"), self._owner.token.encode()):
            return True
        self._owner.over.wait(REFUSAL_S)
        return False

    def _refuse(self, status: int) -> None:
        extra = (("Allow", "GET"),) if status == 405 else ()
        self._send(status, f"{status}\n".encode(), "text/plain", *extra)

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        """Say no more than the number."""
        self._refuse(int(code))

    def _send(self, status: int, content: bytes, kind: str, *extra: tuple[str, str]) -> None:
        self._head(status, kind, ("Content-Length", str(len(content))), *extra)
        self.wfile.write(content)

    def _head(self, status: int, kind: str, *extra: tuple[str, str]) -> None:
        self.request_version = "HTTP/1.0"
        self.send_response(status)
        for name, value in (
            ("Content-Type", kind),
            ("Content-Security-Policy", POLICY),
            ("Cache-Control", "no-store"),
            ("X-Content-Type-Options", "nosniff"),
            ("Referrer-Policy", "no-referrer"),
            *extra,
        ):
            self.send_header(name, value)
        self.end_headers()

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  named so by the library
        """Keep the terminal clear."""


def _is_private(host: str) -> bool:
    try:
        address = ipaddress.ip_address(host)
    except ValueError:
        return False
    return (address.is_private or address.is_link_local) and not address.is_unspecified
