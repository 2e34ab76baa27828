"""The SCPI side of a simulated instrument: messages in, replies out, an error queue.

What the standard asks for (SCPI-99 and IEEE 488.2, from memory) as far as these instruments need it: compound
messages with `;` whose headers continue at the level of the one before, `:` to go back to the root, upper and lower
case alike, long and short mnemonics, errors queued until they are asked for.
"""

from __future__ import annotations

import itertools
from collections import deque
from collections.abc import Callable, Mapping

from simulators.instruments.replies import Replies
from simulators.world import World

LONGEST_MESSAGE = 512
PRINTABLE = bytes([0x09, 0x0D, *range(0x20, 0x7F)])
ERROR_QUEUE_LENGTH = 10
MOST_KNOWN = 1000
"""So many messages at most are remembered as they were understood."""
NO_ERROR = '0,"No error"'

ERROR_TEXTS = {
    -101: "Invalid character",
    -104: "Data type error",
    -108: "Parameter not allowed",
    -109: "Missing parameter",
    -113: "Undefined header",
    -221: "Settings conflict",
    -222: "Data out of range",
    -224: "Illegal parameter value",
    -350: "Queue overflow",
    -363: "Input buffer overrun",
}

Handler = Callable[[str], str | None]
"""Carries out one command: takes its parameter text, returns the reply of a query; raises `ScpiError`."""


class ScpiError(Exception):
    """A command that is not carried out; -100 to -199 ends its whole message, others only the command."""

    def __init__(self, code: int) -> None:
        """Take one of the codes in `ERROR_TEXTS`."""
        super().__init__(f'{code},"{ERROR_TEXTS[code]}"')
        self.code = code


class ScpiInstrument:
    """A message loop around a table of commands."""

    def __init__(self, world: World, identity: str, commands: Mapping[str, Handler]) -> None:
        """Take the commands, written as in a manual: `SYSTem:ERRor?`, upper case for what may not be left out."""
        self._world = world
        self.identity = identity
        self._handlers: dict[str, Handler] = {}
        common: dict[str, Handler] = {
            "*IDN?": no_parameter(lambda: self.identity),
            "*CLS": no_parameter(self._clear),
            "SYSTem:ERRor?": no_parameter(self._next_error),
        }
        for pattern, handler in (common | dict(commands)).items():
            self._handlers.update(dict.fromkeys(spellings(pattern), handler))
        self._known: dict[bytes, tuple[tuple[Handler, str], ...]] = {}
        """Messages that were carried out to their end, as handlers and parameters."""
        self._errors: deque[str] = deque()
        self._received = bytearray()
        self._overrun = False
        self._replies = Replies(world)

    @property
    def serial(self) -> str:
        """The third field of the identity."""
        return self.identity.split(",")[2]

    def receive(self, data: bytes, now_ns: int) -> None:
        """Take bytes; carry out the messages that they complete."""
        with self._world.lock:
            self._world.advance(now_ns)
            *ended, rest = data.split(b"\n")
            for piece in ended:
                self._keep(piece)
                message = bytes(self._received)
                self._received.clear()
                if self._overrun:
                    self._overrun = False
                elif message.strip():
                    self._carry_out(message, now_ns)
            self._keep(rest)

    def send(self, now_ns: int) -> bytes:
        """Return the replies whose time has come."""
        return self._replies.due(now_ns)

    def next_ns(self) -> int | None:
        """Return when the next reply goes out."""
        return self._replies.next_ns()

    def heard(self, now_ns: int) -> None:
        """Take notice of a complete message, valid or not."""

    def _keep(self, piece: bytes) -> None:
        room = LONGEST_MESSAGE - len(self._received)
        self._received += piece[:room]
        if len(piece) > room and not self._overrun:
            self._overrun = True
            self._note(ScpiError(-363))

    def _carry_out(self, message: bytes, now_ns: int) -> None:
        self.heard(now_ns)
        replies: list[str] = []
        try:
            self._run_units(message, replies)
        except ScpiError as error:
            self._note(error)
        if replies:
            self._replies.put(";".join(replies).encode("ascii") + b"\n", now_ns)

    def _run_units(self, message: bytes, replies: list[str]) -> None:
        """Carry out the units of a message one after the other; one already met is not read anew."""
        known = self._known.get(message)
        if known is not None:
            for unit in known:
                self._answer(*unit, replies)
            return
        met: list[tuple[Handler, str]] = []
        if message.translate(None, PRINTABLE):
            raise ScpiError(-101)
        path = ""
        for text in message.decode("ascii").split(";"):
            header, _, parameter = text.strip().partition(" ")
            if not header:
                continue
            header = header.upper()
            rooted = header.startswith((":", "*"))
            header = header.removeprefix(":") if rooted else path + header
            handler = self._handlers.get(header)
            if handler is None:
                raise ScpiError(-113)
            if not header.startswith("*"):
                path = header.rpartition(":")[0] + ":" if ":" in header else ""
            met.append((handler, parameter.strip()))
            self._answer(*met[-1], replies)
        if len(self._known) < MOST_KNOWN:
            self._known[message] = tuple(met)

    def _answer(self, handler: Handler, parameter: str, replies: list[str]) -> None:
        try:
            reply = handler(parameter)
        except ScpiError as error:
            if -200 < error.code <= -100:
                raise
            self._note(error)
            return
        if reply is not None:
            replies.append(reply)

    def _note(self, error: ScpiError) -> None:
        if len(self._errors) < ERROR_QUEUE_LENGTH:
            self._errors.append(str(error))
        else:
            self._errors[-1] = str(ScpiError(-350))

    def _next_error(self) -> str:
        return self._errors.popleft() if self._errors else NO_ERROR

    def _clear(self) -> None:
        self._errors.clear()


def no_parameter(action: Callable[[], str | None]) -> Handler:
    """Return a handler that refuses a parameter."""

    def handler(parameter: str) -> str | None:
        if parameter:
            raise ScpiError(-108)
        return action()

    return handler


def number_in(parameter: str, low: float, high: float) -> float:
    """Return a numeric parameter; raises `ScpiError` when there is none or it is out of range."""
    if not parameter:
        raise ScpiError(-109)
    if set(parameter.upper()) - set("0123456789+-.E"):
        raise ScpiError(-104)
    try:
        value = float(parameter)
    except ValueError as error:
        raise ScpiError(-104) from error
    if not low <= value <= high:
        raise ScpiError(-222)
    return value


def spellings(pattern: str) -> set[str]:
    """Return every spelling of a header in upper case: each mnemonic long or short."""
    query = "?" if pattern.endswith("?") else ""
    parts: list[set[str]] = []
    for mnemonic in pattern.removesuffix("?").split(":"):
        short = "".join(letter for letter in mnemonic if not letter.islower())
        parts.append({mnemonic.upper(), short})
    return {":".join(choice) + query for choice in itertools.product(*parts)}
