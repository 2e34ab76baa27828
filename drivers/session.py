"""One link from the first opening to the last: open, identify, talk, lose, find again. One owner per port.

                   port opens           settled              right answer
    CLOSED, LOST ------------> OPENING ---------> IDENTIFYING ------------> LINKED
        ^                         |                 |  ^   ^                  |
        |   port fails            |    other answer |  |   | no sensible reply|
        +-------------------------+                 v  |   +------------------+
        +----------------------------- WRONG_INSTRUMENT

The port is closed only when it fails, and opened again after a while that doubles each time. A reply that does not come
or makes no sense leaves the port open: the session asks who is there and throws away what comes before the answer, so
that a late reply is never taken for that of the next request.

`pump` is the body of a hosted loop: it never waits longer than one slice of reading.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from drivers.clock import NS_PER_S, Clock, seconds
from drivers.errors import InstrumentError, LinkLost, NoReply
from drivers.framing.lines import LineFramer
from drivers.instrument import LinkState, LinkStatus
from drivers.linkfacts import LinkFacts
from drivers.spec import Identity
from drivers.talk import Heard, Request, Talk
from drivers.transport import Transport

READ_SLICE_S = 0.02
LOOK_NS = seconds(0.005)
"""How soon to look again while a reply is awaited."""
MIDLINE_LOOK_NS = seconds(0.001)
"""How soon to look again while a line is coming in."""
IDLE_LOOK_NS = seconds(0.05)
TALKING = (LinkState.IDENTIFYING, LinkState.LINKED)
FIRST_WAIT_S, LONGEST_WAIT_S = 0.5, 5.0
WRONG_AGAIN_NS = seconds(2.0)
DRAIN_BYTES = 65_536
"""A port that has given so many bytes at one time does not stop to."""
STUCK_NS = seconds(3.0)
"""An operating system call that takes so long on an open port does not come back."""


@dataclass(frozen=True, slots=True)
class Manners:
    """How to treat the instrument at the other end.

    `settle_s` is what it needs after opening. After `ask_again_s` without an answer it is asked again who it is: a
    drive must not be kept running by being asked. `serial` is the number that must answer, empty for any.
    """

    settle_s: float = 0.0
    ask_again_s: float = 0.5
    serial: str = ""


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
        framer: LineFramer,
        talk: Talk,
        manners: Manners,
    ) -> None:
        """Prepare; nothing is opened."""
        self.name = name
        self._transport = transport
        self._clock = clock
        self._identity = identity
        self._framer = framer
        self._talk = talk
        self._manners = manners
        self._facts = LinkFacts(name, transport.url)
        self._expected = manners.serial
        self._answering = ""
        self._stranger = ""
        self._accepted = ""
        self._abandoned = False
        self._fresh = True
        self._wait_s = FIRST_WAIT_S
        self._at_ns = 0
        self._linked_ns = 0
        self._bad_seen = 0
        self._outstanding: _Outstanding | None = None
        self._busy_since_ns: int | None = None

    # --- from any thread ------------------------------------------------------------------------------------------

    def status(self) -> LinkStatus:
        """Return a snapshot."""
        now_ns = self._clock.now_ns()
        status = self._facts.status(now_ns)
        since_ns = self._busy_since_ns
        if (
            status.state not in TALKING
            or since_ns is None
            or now_ns - since_ns < STUCK_NS + seconds(self._clock.slack_s)
        ):
            return status
        sentence = f"{self.name}: the operating system does not come back from {self._transport.url}. Unplug it."
        return replace(status, state=LinkState.LOST, sentence=sentence)

    def accept_identity(self) -> None:
        """Go on with the instrument that answers now, if it is a wrong one: a person decided so."""
        if self.status().state is LinkState.WRONG_INSTRUMENT:
            self._accepted = self._answering

    def abandon(self) -> None:
        """Let the owner close the port when it comes back from a call that does not return."""
        self._abandoned = True

    # --- from the owner of the port -------------------------------------------------------------------------------

    def pump(self, now_ns: int) -> int:
        """Do what is due and return when to be called again."""
        self._busy_since_ns = now_ns
        try:
            due_ns = self._step(now_ns)
        except NoReply as silence:
            self._facts.no_replies += 1
            due_ns = self._doubt(str(silence))
        except InstrumentError as loss:
            due_ns = self._lose(str(loss))
        self._count_bad()
        self._facts.skipped = self._talk.skipped
        self._facts.publish(now_ns, self._talk.complaint)
        self._busy_since_ns = None
        if self._abandoned:
            self.shut()
        return max(due_ns, now_ns + 1)

    def shut(self) -> None:
        """Close the port; called by the owner or when it is gone."""
        self._transport.close()
        self._outstanding = None
        self._at_ns = 0
        self._facts.state = LinkState.CLOSED
        self._facts.sentence = ""
        self._facts.publish(self._clock.now_ns(), "")

    def _step(self, now_ns: int) -> int:
        match self._facts.state:
            case LinkState.CLOSED | LinkState.LOST:
                return self._open(now_ns) if now_ns >= self._at_ns else self._at_ns
            case LinkState.OPENING:
                return self._ask_identity() if now_ns >= self._at_ns else self._at_ns
            case LinkState.IDENTIFYING:
                return self._identify(now_ns)
            case LinkState.WRONG_INSTRUMENT:
                return self._stand_off(now_ns)
            case LinkState.LINKED if self._talk.silence_s is not None:
                return self._listen(self._talk.silence_s)
            case LinkState.LINKED:
                return self._converse(now_ns)

    # --- the port -------------------------------------------------------------------------------------------------

    def _open(self, now_ns: int) -> int:
        self._transport.close()
        self._transport.open()
        self._facts.state = LinkState.OPENING
        self._fresh = True
        self._outstanding = None
        self._at_ns = self._clock.now_ns() + seconds(self._manners.settle_s)
        return self._at_ns

    def _lose(self, sentence: str) -> int:
        """Close the port, to open it again later."""
        self._transport.close()
        self._facts.state = LinkState.LOST
        self._facts.sentence = sentence
        self._outstanding = None
        self._accepted = ""
        self._talk.lost()
        self._at_ns = self._clock.now_ns() + seconds(self._wait_s)
        self._wait_s = min(2 * self._wait_s, LONGEST_WAIT_S)
        return self._at_ns

    def _drain(self) -> bool:
        """Throw away what has come; tell whether there was anything."""
        count = 0
        while data := self._transport.read(0.0):
            count += len(data)
            if count > DRAIN_BYTES:
                raise LinkLost(f"{self.name} on {self._transport.url} does not stop to send.")
        return count > 0

    def _send(self, request: Request) -> None:
        sent_ns = self._clock.now_ns()
        self._transport.write(request.data)
        if request.timeout_s is not None:
            deadline_ns = sent_ns + seconds(request.timeout_s + self._clock.slack_s)
            self._outstanding = _Outstanding(request, sent_ns, deadline_ns)

    def _count_bad(self) -> None:
        fresh = self._framer.bad - self._bad_seen
        if fresh:
            self._bad_seen = self._framer.bad
            self._facts.bad(fresh, self._clock.now_ns())

    # --- who is there ---------------------------------------------------------------------------------------------

    def _doubt(self, sentence: str) -> int:
        """Ask who is there: at once when all was well so far, else after a while."""
        was_linked = self._facts.state is LinkState.LINKED
        self._facts.state = LinkState.IDENTIFYING
        self._facts.sentence = sentence
        self._outstanding = None
        self._at_ns = self._clock.now_ns() + (0 if was_linked else seconds(self._manners.ask_again_s))
        return self._clock.now_ns()

    def _ask_identity(self) -> int:
        """Throw away what has come so far and ask who is there."""
        self._stranger = ""
        if self._facts.state is not LinkState.WRONG_INSTRUMENT:
            self._facts.state = LinkState.IDENTIFYING
        self._drain()
        if self._talk.silence_s is not None:
            self._framer.resync()
        else:
            self._framer.expect_reply()
        self._send(Request(self._identity.query, self._identity.timeout_s))
        return self._clock.now_ns() + LOOK_NS

    def _identify(self, now_ns: int) -> int:
        self._send_urgent(now_ns)
        waiting = self._outstanding
        if waiting is None:
            if now_ns >= self._at_ns:
                return self._ask_identity()
            return min(self._at_ns, now_ns + IDLE_LOOK_NS)
        for line in self._framer.feed(self._transport.read(READ_SLICE_S)):
            found = self._identity.pattern.fullmatch(line.strip())
            if found is not None:
                return self._met(found.group("serial").strip(), line.strip())
            if not self._talk.understands(line.strip()):
                self._stranger = line.strip()
        if self._clock.now_ns() <= waiting.deadline_ns:
            return self._clock.now_ns() + LOOK_NS
        if self._stranger:
            self._answering = ""
            return self._refuse(f'another kind of instrument answers: "{self._stranger[:60]}"')
        raise NoReply(f"{self.name} on {self._transport.url} does not say who it is.")

    def _send_urgent(self, now_ns: int) -> None:
        """Send what cannot wait for an answer, to an instrument that was known before the disturbance."""
        message = None if self._fresh else self._talk.urgent(now_ns)
        if message is not None:
            self._transport.write(message)

    def _met(self, serial: str, line: str) -> int:
        """Take up the talk with the right instrument, refuse another one."""
        self._outstanding = None
        self._answering = serial
        if self._expected not in ("", serial):
            return self._refuse(f"number {serial} answers, expected was {self._expected}")
        self._expected = serial
        self._wait_s = FIRST_WAIT_S
        now_ns = self._clock.now_ns()
        self._linked_ns = now_ns
        if self._fresh:
            self._facts.linked()
        self._facts.identity = line
        self._facts.state = LinkState.LINKED
        self._talk.begin(now_ns, anew=self._fresh)
        self._fresh = False
        return now_ns

    def _refuse(self, reason: str) -> int:
        self._facts.state = LinkState.WRONG_INSTRUMENT
        self._facts.sentence = f"{self.name} on {self._transport.url}: {reason}."
        self._outstanding = None
        self._fresh = True
        wait_ns = max(WRONG_AGAIN_NS, seconds(self._manners.ask_again_s))
        self._at_ns = self._clock.now_ns() + wait_ns
        return self._clock.now_ns() + IDLE_LOOK_NS

    def _stand_off(self, now_ns: int) -> int:
        """Command nothing to a wrong instrument, but ask now and then whether it is still there."""
        if self._outstanding is not None:
            return self._identify(now_ns)
        self._drain()
        if self._accepted:
            self._expected, self._accepted = self._accepted, ""
            return self._ask_identity()
        if now_ns >= self._at_ns:
            return self._ask_identity()
        return now_ns + IDLE_LOOK_NS

    # --- the talk -------------------------------------------------------------------------------------------------

    def _converse(self, now_ns: int) -> int:
        """Send a request, or look for the reply to the last one."""
        waiting = self._outstanding
        if waiting is None:
            request = self._talk.next_request(now_ns)
            if request is None:
                return self._talk.due_ns(now_ns)
            self._facts.bad(int(self._drain()), now_ns)
            self._framer.expect_reply()
            self._send(request)
            return self._clock.now_ns() + (LOOK_NS if request.timeout_s is not None else 0)
        lines = self._framer.feed(self._transport.read(READ_SLICE_S))
        heard_ns = self._clock.now_ns()
        if len(lines) == 1 and self._framer.bad == self._bad_seen:
            self._outstanding = None
            if self._talk.heard(Heard(lines[0].strip(), waiting.request, waiting.sent_ns, heard_ns)):
                self._facts.good(heard_ns, (heard_ns - waiting.sent_ns) / NS_PER_S)
                return self._talk.due_ns(heard_ns)
        if lines or self._framer.bad != self._bad_seen:
            self._facts.bad(len(lines), heard_ns)
            return self._doubt(f"{self.name} on {self._transport.url} sends replies that make no sense.")
        if heard_ns > waiting.deadline_ns:
            raise NoReply(f"{self.name} on {self._transport.url} does not answer.")
        return heard_ns + (MIDLINE_LOOK_NS if self._framer.pending else LOOK_NS)

    def _listen(self, silence_s: float) -> int:
        """Take the lines of an instrument that talks by itself."""
        lines = self._framer.feed(self._transport.read(READ_SLICE_S))
        heard_ns = self._clock.now_ns()
        for index, line in enumerate(lines):
            heard = Heard(line.strip(), None, heard_ns, heard_ns, len(lines) - 1 - index)
            if self._talk.heard(heard):
                self._facts.good(heard_ns, 0.0)
            elif self._identity.pattern.fullmatch(heard.line) is None:
                self._facts.bad(1, heard_ns)
        since_ns = max(self._linked_ns, self._facts.newest_ns or 0)
        if heard_ns - since_ns > seconds(silence_s + self._clock.slack_s):
            raise NoReply(f"{self.name} on {self._transport.url} has gone silent.")
        soon_ns = heard_ns + (MIDLINE_LOOK_NS if self._framer.pending else LOOK_NS)
        return max(self._talk.due_ns(heard_ns), soon_ns)
