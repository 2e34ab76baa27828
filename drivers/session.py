"""One link from the first opening to the last: open, identify, talk, lose, find again. One owner per port.

                 open              settled            right identity
    CLOSED/LOST -----> OPENING ---------> IDENTIFYING -------------> LINKED
         ^                |                |  ^   |                    |
         |    port fails  |                |  |   | another identity   | no reply: ask who is there
         +----------------+----------------+  |   v                    |
         +--------------- port fails ----------  WRONG_INSTRUMENT      |
                                              +------------------------+

`pump` is the body of a hosted loop. A reply that does not come leaves the port open: the session asks who is there and
throws away what comes before the answer, so that a late reply is never taken for that of the next request. Only a port
that fails is closed; it is opened again after a while that doubles each time.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass
from typing import Protocol

from drivers.clock import NS_PER_S, Clock, seconds
from drivers.errors import InstrumentError, LinkLost, NoReply
from drivers.framing.lines import LineFramer
from drivers.instrument import LinkState, LinkStatus
from drivers.profile import Identity, LinkSettings
from drivers.transport import Transport

LOOK_S = 0.005
"""How soon to look again while bytes may come."""
READ_SLICE_S = 0.02
FIRST_WAIT_S, LONGEST_WAIT_S = 0.5, 5.0
RATE_SAMPLES = 32
IDENTIFY_AGAIN_S = 0.5


@dataclass(frozen=True, slots=True)
class Request:
    """A message to send; with a time-out when a reply has to come."""

    data: bytes
    timeout_s: float | None = None
    tag: str = ""


class Talk(Protocol):
    """What is said over a link once it is known who is there. Called by the owner of the port alone."""

    def begin(self, now_ns: int) -> None:
        """The link has just been made."""
        ...

    def next_request(self, now_ns: int) -> Request | None:
        """Return what to send now, None for nothing."""
        ...

    def heard(self, line: str, request: Request | None, sent_ns: int, now_ns: int) -> bool:
        """Take a line, the reply to `request` if there is one; false when it makes no sense."""
        ...

    def due_ns(self, now_ns: int) -> int:
        """Return when there will be something to send."""
        ...


@dataclass(frozen=True, slots=True)
class _Outstanding:
    request: Request
    sent_ns: int
    deadline_ns: int


class Session:
    """The life of one link; `pump` moves it, `status` looks at it from any thread."""

    def __init__(
        self,
        name: str,
        transport: Transport,
        clock: Clock,
        identity: Identity,
        link: LinkSettings,
        framer: LineFramer,
        talk: Talk,
        *,
        serial: str = "",
        free_running: bool = False,
    ) -> None:
        """Prepare; nothing is opened. `serial` is the serial number that must answer, empty for any."""
        self.name = name
        self.state = LinkState.CLOSED
        self.sentence = ""
        self.identity = ""
        self._transport = transport
        self._clock = clock
        self._identity = identity
        self._settle_s = link.settle_s
        self._framer = framer
        self._talk = talk
        self._expected = serial
        self._free_running = free_running
        self._accept = False
        self._wait_s = FIRST_WAIT_S
        self._at_ns = 0
        self._outstanding: _Outstanding | None = None
        self._stamps: deque[int] = deque(maxlen=RATE_SAMPLES)
        self._round_trip_s: float | None = None
        self._heard = 0
        self._nonsense = 0
        self._no_replies = 0
        self._links = 0

    # --- from any thread ------------------------------------------------------------------------------------------

    def status(self) -> LinkStatus:
        """Return a snapshot."""
        now_ns = self._clock.now_ns()
        stamps = tuple(self._stamps)
        rate_hz = 0.0
        if len(stamps) > 1 and now_ns - stamps[-1] < 2 * NS_PER_S and stamps[-1] > stamps[0]:
            rate_hz = (len(stamps) - 1) * NS_PER_S / (stamps[-1] - stamps[0])
        return LinkStatus(
            name=self.name,
            port=self._transport.url,
            state=self.state,
            identity=self.identity,
            sentence=self.sentence,
            rate_hz=rate_hz,
            age_s=(now_ns - stamps[-1]) / NS_PER_S if stamps else None,
            round_trip_s=self._round_trip_s,
            readings=self._heard,
            bad_frames=self._framer.bad + self._nonsense,
            no_replies=self._no_replies,
            reconnects=max(self._links - 1, 0),
        )

    def accept_identity(self) -> None:
        """Go on with the instrument that answers now: a person decided so."""
        self._accept = True

    # --- the owner's loop -----------------------------------------------------------------------------------------

    def pump(self, now_ns: int) -> int:
        """Do what is due and return when to be called again."""
        try:
            match self.state:
                case LinkState.CLOSED | LinkState.LOST:
                    if now_ns < self._at_ns:
                        return self._at_ns
                    self._open(now_ns)
                case LinkState.OPENING:
                    if now_ns < self._at_ns:
                        return self._at_ns
                    self._ask_identity(now_ns)
                case LinkState.IDENTIFYING | LinkState.WRONG_INSTRUMENT:
                    self._identify(now_ns)
                case LinkState.LINKED:
                    return self._converse(now_ns)
        except NoReply as silence:
            self._no_replies += 1
            self.sentence = str(silence)
            self._ask_again(now_ns)
        except LinkLost as loss:
            self._lose(str(loss), now_ns)
        except InstrumentError as fault:
            self._lose(str(fault), now_ns)
        return self._clock.now_ns() + seconds(LOOK_S)

    def shut(self) -> None:
        """Close the port for good; called when the loop has ended, or from it."""
        self._transport.close()
        self.state = LinkState.CLOSED
        self._outstanding = None

    def _open(self, now_ns: int) -> None:
        self._transport.close()
        self._transport.open()
        self.state = LinkState.OPENING
        self._framer.resync()
        self._outstanding = None
        self._at_ns = now_ns + seconds(self._settle_s)

    def _lose(self, sentence: str, now_ns: int) -> None:
        """Close the port and open it again later."""
        self._transport.close()
        self.state = LinkState.LOST
        self.sentence = sentence
        self._outstanding = None
        self._at_ns = now_ns + seconds(self._wait_s)
        self._wait_s = min(2 * self._wait_s, LONGEST_WAIT_S)

    def _ask_again(self, now_ns: int) -> None:
        self._outstanding = None
        self.state = LinkState.OPENING
        self._at_ns = now_ns + seconds(IDENTIFY_AGAIN_S)

    def _ask_identity(self, now_ns: int) -> None:
        """Throw away what has come so far and ask who is there."""
        while self._transport.read(0.0):
            pass
        if self._free_running:
            self._framer.resync()
        else:
            self._framer.expect_reply()
        self._send(Request(self._identity.query, self._identity.timeout_s), now_ns)
        self.state = LinkState.IDENTIFYING

    def _identify(self, now_ns: int) -> None:
        waiting = self._outstanding
        if self.state is LinkState.WRONG_INSTRUMENT:
            self._transport.read(READ_SLICE_S)
            if self._accept:
                self._expected = ""
                self._ask_again(now_ns)
            return
        for line in self._framer.feed(self._transport.read(READ_SLICE_S)):
            found = self._identity.pattern.fullmatch(line)
            if found is not None:
                self._known(found.group("serial").strip(), line)
                return
        if waiting is not None and self._clock.now_ns() > waiting.deadline_ns:
            raise NoReply(f"{self.name} on {self._transport.url} does not say who it is.")

    def _known(self, serial: str, line: str) -> None:
        """Somebody answered: the right one, or another."""
        self._outstanding = None
        if self._expected and serial != self._expected and not self._accept:
            self.state = LinkState.WRONG_INSTRUMENT
            self.sentence = (
                f"{self.name}: number {serial} answers on {self._transport.url}, expected was {self._expected}."
            )
            return
        self._accept = False
        self._expected = serial
        self.identity = line
        self.sentence = ""
        self.state = LinkState.LINKED
        self._wait_s = FIRST_WAIT_S
        self._links += 1
        self._talk.begin(self._clock.now_ns())

    def _converse(self, now_ns: int) -> int:
        waiting = self._outstanding
        if waiting is None and not self._free_running:
            request = self._talk.next_request(now_ns)
            if request is None:
                return max(self._talk.due_ns(now_ns), now_ns + seconds(LOOK_S))
            while self._transport.read(0.0):
                self._nonsense += 1
            self._framer.expect_reply()
            self._send(request, now_ns)
            return now_ns + seconds(LOOK_S)
        for line in self._framer.feed(self._transport.read(READ_SLICE_S)):
            self._hear(line)
        waiting = self._outstanding
        if waiting is not None and self._clock.now_ns() > waiting.deadline_ns:
            raise NoReply(f"{self.name} on {self._transport.url} does not answer.")
        if self._free_running and self._silent_too_long():
            raise NoReply(f"{self.name} on {self._transport.url} has gone silent.")
        return self._clock.now_ns() + seconds(LOOK_S)

    def _hear(self, line: str) -> None:
        now_ns = self._clock.now_ns()
        waiting, self._outstanding = self._outstanding, None
        sent_ns = waiting.sent_ns if waiting is not None else now_ns
        request = waiting.request if waiting is not None else None
        if self._talk.heard(line, request, sent_ns, now_ns):
            self._heard += 1
            self._stamps.append(now_ns)
            self._round_trip_s = (now_ns - sent_ns) / NS_PER_S
        else:
            self._nonsense += 1

    def _silent_too_long(self) -> bool:
        """Tell whether a free-running gauge has stopped to send; asking it may wake it."""
        newest = self._stamps[-1] if self._stamps else None
        limit_ns = seconds(3.0 + self._clock.slack_s)
        return newest is not None and self._clock.now_ns() - newest > limit_ns

    def _send(self, request: Request, now_ns: int) -> None:
        self._transport.write(request.data)
        if request.timeout_s is not None:
            deadline_ns = now_ns + seconds(request.timeout_s + self._clock.slack_s)
            self._outstanding = _Outstanding(request, now_ns, deadline_ns)
