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

import logging
from dataclasses import dataclass, replace

from drivers.clock import NS_PER_S, Clock, seconds
from drivers.errors import InstrumentError, NoReply
from drivers.framing.framer import Framer
from drivers.identification import Answer, Identification
from drivers.instrument import LinkState, LinkStatus
from drivers.linkfacts import LinkFacts
from drivers.spec import Identity
from drivers.talk import Heard, Manners, Request, Talk
from drivers.transport import Transport

READ_SLICE_S = 0.02
LOOK_NS = seconds(0.005)
"""How soon to look again while a reply is awaited."""
MIDLINE_LOOK_NS = seconds(0.001)
"""How soon to look again while a line is coming in."""
IDLE_LOOK_NS = seconds(0.05)
IDLE_READ_NS = seconds(0.25)
"""How often a port is read on which nothing is said: only so is it noticed that it went away."""
FIRST_WAIT_S, LONGEST_WAIT_S = 0.5, 5.0
WRONG_AGAIN_NS = seconds(2.0)
QUIET_MARGIN_S = 0.25
PATIENCE_NS = seconds(0.05)
"""How long a reply may be awaited while something urgent is to be said."""
TALKING = (LinkState.IDENTIFYING, LinkState.LINKED)
DRAIN_BYTES = 65_536
"""A port that has given so many bytes at one time does not stop to."""
STUCK_NS = seconds(3.0)
"""An operating system call that takes so long on an open port does not come back."""

log = logging.getLogger(__name__)


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
        framer: Framer,
        talk: Talk,
        manners: Manners,
    ) -> None:
        """Prepare; nothing is opened."""
        self.name = name
        self._transport = transport
        self._clock = clock
        self._framer = framer
        self._talk = talk
        self._manners = manners
        spacing_s = identity.timeout_s + manners.ask_again_s + QUIET_MARGIN_S + clock.slack_s
        self._who = Identification(identity, manners.serial, seconds(spacing_s))
        self._facts = LinkFacts(name, transport.url)
        self._accepted = ""
        self._abandoned = False
        self._fresh = True
        self._wait_s = FIRST_WAIT_S
        self._at_ns = 0
        self._linked_ns = self._alive_ns = 0
        self._looked_ns = 0
        self._bad_seen = self._bad_before = 0
        self._outstanding: _Outstanding | None = None
        self._busy_since_ns: int | None = None
        self._tell(f"{name} is not connected yet: {transport.url} has not been opened.")

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
            self._accepted = self._who.answering

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
        except Exception as fault:
            # The boundary of the loop: a link that comes back serves people better than one that died.
            log.exception("the link to %s failed", self.name)
            due_ns = self._lose(f"The link to {self.name} failed by a fault of the program ({fault!r}).")
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
        self._tell(f"The link to {self.name} on {self._transport.url} is closed.")

    def _tell(self, sentence: str) -> None:
        """Show a sentence before the next call on the port, which may take a while."""
        self._facts.sentence = sentence
        self._facts.publish(self._clock.now_ns(), "")

    def _step(self, now_ns: int) -> int:
        match self._facts.state:
            case LinkState.CLOSED | LinkState.LOST:
                return self._open(now_ns) if now_ns >= self._at_ns else self._at_ns
            case LinkState.OPENING:
                return self._ask_first() if now_ns >= self._at_ns else self._at_ns
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
        if self._facts.state is LinkState.CLOSED:
            self._facts.state = LinkState.OPENING
            self._tell(f"{self._transport.url} is being opened.")
        self._transport.open()
        self._facts.state = LinkState.OPENING
        self._facts.sentence = f"{self._transport.url} is open; {self.name} gets a moment to be ready."
        self._fresh = True
        self._outstanding = None
        self._who.reopened()
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

    def _drain(self, *, patiently: bool = False) -> bool:
        """Throw away what has come; tell whether there was anything. A flood is an error unless `patiently`."""
        count = 0
        while data := self._transport.read(0.0):
            count += len(data)
            if count > DRAIN_BYTES and patiently:
                return True
            if count > DRAIN_BYTES:
                raise NoReply(f"{self.name} on {self._transport.url} sends without being asked and does not stop.")
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
        return min(self._at_ns, self._clock.now_ns() + IDLE_LOOK_NS)

    def _ask_first(self) -> int:
        self._facts.state = LinkState.IDENTIFYING
        self._tell(f"{self.name} on {self._transport.url} is asked who it is.")
        return self._ask_identity()

    def _ask_identity(self) -> int:
        """Throw away what has come so far and ask who is there."""
        self._drain()
        self._bad_before = self._framer.bad
        if self._framer.proves:
            self._framer.resync()
        else:
            self._framer.expect_reply()
        self._send(Request(self._who.identity.query, self._who.identity.timeout_s))
        self._who.asked()
        return self._clock.now_ns() + LOOK_NS

    def _identify(self, now_ns: int) -> int:
        """Await the answer to the question who is there; ask again when it is time to."""
        self._send_urgent(now_ns)
        waiting = self._outstanding
        if waiting is None:
            if now_ns >= self._at_ns:
                return self._ask_identity()
            self._drain(patiently=True)
            return min(self._at_ns, now_ns + IDLE_LOOK_NS)
        for line in self._framer.feed(self._transport.read(READ_SLICE_S)):
            self._who.hear(line.strip(), self._clock.now_ns(), usual=self._talk.understands(line.strip()))
        now_ns = self._clock.now_ns()
        answer = self._who.answer(now_ns, in_step=self._talk.silence_s is not None)
        if answer is not None:
            return self._met(answer)
        if self._who.asks_more:
            return self._ask_identity()
        if self._who.held or now_ns <= waiting.deadline_ns:
            return now_ns + LOOK_NS
        self._who.unanswered()
        if self._who.stranger:
            return self._refuse(f'another kind of instrument answers: "{self._who.stranger[:60]}"')
        raise NoReply(self._silence())

    def _silence(self) -> str:
        """Say what is known when nobody says who it is."""
        place = f"{self.name} on {self._transport.url}"
        if self._framer.bad != self._bad_before:
            return f"{place} sends bytes that make no sense: look at the speed of the port and at the cable."
        return f"{place} does not say who it is: look whether it is switched on, and at the cable."

    def _send_urgent(self, now_ns: int) -> bool:
        """Send what cannot wait for an answer, to an instrument that was known before the disturbance."""
        message = None if self._fresh else self._talk.urgent(now_ns)
        if message is None:
            return False
        self._transport.write(message)
        return True

    def _met(self, answer: Answer) -> int:
        """Take up the talk with the right instrument, refuse another one."""
        self._outstanding = None
        objection = self._who.objection(answer)
        if objection:
            return self._refuse(objection)
        self._who.expected = answer.serial
        self._wait_s = FIRST_WAIT_S
        now_ns = self._clock.now_ns()
        self._linked_ns = self._looked_ns = now_ns
        if self._fresh:
            self._facts.linked()
            for message in self._manners.start:
                self._transport.write(message)
        self._alive_ns = now_ns
        self._facts.identity = answer.line
        self._facts.state = LinkState.LINKED
        self._talk.begin(now_ns, anew=self._fresh)
        self._fresh = False
        return now_ns

    def _refuse(self, reason: str) -> int:
        """Say nothing more to an instrument that is not the right one."""
        if self._facts.state is LinkState.LINKED:
            self._talk.lost()
        self._facts.state = LinkState.WRONG_INSTRUMENT
        self._facts.sentence = f"{self.name} on {self._transport.url}: {reason}."
        self._outstanding = None
        self._fresh = True
        self._at_ns = self._clock.now_ns() + max(WRONG_AGAIN_NS, seconds(self._manners.ask_again_s))
        return self._clock.now_ns() + IDLE_LOOK_NS

    def _stand_off(self, now_ns: int) -> int:
        """Ask a wrong instrument nothing but now and then whether it is still there, until a person accepts it."""
        if self._accepted:
            self._who.expected, self._accepted = self._accepted, ""
            self._at_ns = now_ns
        if self._outstanding is not None or now_ns >= self._at_ns:
            return self._identify(now_ns)
        self._drain(patiently=True)
        return now_ns + IDLE_LOOK_NS

    # --- the talk -------------------------------------------------------------------------------------------------

    def _converse(self, now_ns: int) -> int:
        """Send a request, or look for the reply to the last one."""
        waiting = self._outstanding
        if waiting is not None:
            return self._await_reply(waiting)
        request = self._talk.next_request(now_ns)
        if request is None:
            return self._idle(now_ns)
        self._facts.bad(int(self._drain()), now_ns)
        self._framer.expect_reply()
        self._send(request)
        self._looked_ns = now_ns
        # The reading waits for the first byte: a reply that is quick leaves the whole period to the next request.
        return self._clock.now_ns() if self._outstanding is None else self._await_reply(self._outstanding)

    def _idle(self, now_ns: int) -> int:
        """Look now and then whether the port is still there; what comes unasked is thrown away."""
        if now_ns - self._looked_ns >= IDLE_READ_NS:
            self._looked_ns = now_ns
            self._facts.bad(int(self._drain()), now_ns)
        return min(self._talk.due_ns(now_ns), self._looked_ns + IDLE_READ_NS)

    def _await_reply(self, waiting: _Outstanding) -> int:
        lines = self._framer.feed(self._transport.read(READ_SLICE_S))
        heard_ns = self._clock.now_ns()
        if len(lines) == 1 and self._framer.bad == self._bad_seen:
            self._outstanding = None
            if self._talk.heard(Heard(lines[0].strip(), waiting.request, waiting.sent_ns, heard_ns)):
                self._facts.good(heard_ns, (heard_ns - waiting.sent_ns) / NS_PER_S)
                return self._talk.due_ns(heard_ns)
        if lines or self._framer.bad != self._bad_seen:
            self._facts.bad(len(lines), heard_ns)
            if any(self._who.recognises(line.strip()) for line in lines):
                self._who.behind()
            return self._doubt(f"{self.name} on {self._transport.url} sends replies that make no sense.")
        hurried = heard_ns - waiting.sent_ns > PATIENCE_NS and self._send_urgent(heard_ns)
        if hurried or heard_ns > waiting.deadline_ns:
            raise NoReply(f"{self.name} on {self._transport.url} does not answer.")
        return heard_ns + (MIDLINE_LOOK_NS if self._framer.pending else LOOK_NS)

    def _listen(self, silence_s: float) -> int:
        """Take the lines of an instrument that talks by itself."""
        if self._manners.keep_alive and self._clock.now_ns() - self._alive_ns >= seconds(self._manners.keep_alive_s):
            self._alive_ns = self._clock.now_ns()
            self._transport.write(self._manners.keep_alive)
        lines = self._framer.feed(self._transport.read(READ_SLICE_S))
        heard_ns = self._clock.now_ns()
        for index, line in enumerate(lines):
            heard = Heard(line.strip(), None, heard_ns, heard_ns, len(lines) - 1 - index)
            if self._talk.heard(heard):
                self._facts.good(heard_ns, 0.0)
            elif (answer := self._who.recognises(heard.line)) is None:
                self._facts.bad(1, heard_ns)
            elif self._who.objection(answer):
                return self._met(answer)
        since_ns = max(self._linked_ns, self._facts.newest_ns or 0)
        if heard_ns - since_ns > seconds(silence_s + self._clock.slack_s):
            raise NoReply(f"{self.name} on {self._transport.url} has gone silent.")
        soon_ns = heard_ns + (MIDLINE_LOOK_NS if self._framer.pending else LOOK_NS)
        return max(self._talk.due_ns(heard_ns), soon_ns)
