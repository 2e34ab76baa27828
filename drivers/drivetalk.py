"""How a fan drive is told what to do: safe state first, then its direction, then the newest speed."""

from __future__ import annotations

import math
import threading
from dataclasses import dataclass

from drivers.clock import seconds
from drivers.framing.scpi import decimal
from drivers.spec import DriveSpec
from drivers.talk import Heard, Request

IDLE_LOOK_NS = seconds(0.02)
"""How soon a wish from another thread is noticed."""
SAFE_AGAIN_NS = seconds(0.2)
TURN_AGAIN_NS = seconds(0.5)
TURN_PATIENCE_NS = seconds(30.0)
START_TRIES = 2
SPEED_TOLERANCE = 0.005
NOT_STARTED = "The fan drive has not confirmed its communication time-out: stay at its switch."


@dataclass(slots=True)
class _Turn:
    """A direction that is wanted, and how far its asking has come."""

    direction: str
    next_ns: int
    until_ns: int
    confirmed: bool = False


class Driving:
    """Tells a drive its speed. The wishes come from any thread, the rest from the owner of the port.

    A speed is sent once and never repeated: a drive that is told nothing stops by itself. A speed above zero waits
    until the drive has confirmed the direction that was asked for, and is dropped when it gets older than the drive's
    patience.
    """

    silence_s = None
    skipped = 0

    def __init__(self, spec: DriveSpec) -> None:
        """Nothing is commanded yet."""
        self.commanded = False
        self.safe_confirmed = False
        self.readback: float | None = None
        self.direction: str | None = None
        self._spec = spec
        self._directions = dict(spec.directions)
        self._patience_ns = seconds(spec.communication_timeout_s)
        self._lock = threading.Lock()
        self._wish: tuple[float, int] | None = None
        self._safe_pending = False
        self._safe_sent = False
        self._safe_next_ns = 0
        self._turn: _Turn | None = None
        self._start_tries = 0
        self._told_ns = 0
        self._complaint = ""

    # --- from any thread ------------------------------------------------------------------------------------------

    def want(self, speed: float, now_ns: int) -> None:
        """Ask for a speed; below 0 and what is no number means 0, above 1 means 1."""
        speed = min(max(speed, 0.0), 1.0) if math.isfinite(speed) else 0.0
        with self._lock:
            self._wish = (speed, now_ns)
            self.commanded = True
            if speed > 0.0 and self._safe_sent:
                self._safe_pending = False

    def want_safe(self, now_ns: int) -> None:
        """Ask for the safe state until the drive confirms it; wishes made before are dropped."""
        with self._lock:
            self._wish = None
            self._safe_pending, self._safe_sent, self.safe_confirmed = True, False, False
            self._safe_next_ns = now_ns

    def want_direction(self, direction: str, now_ns: int) -> None:
        """Ask for a direction; raises `ValueError` when the drive does not have it."""
        if direction not in self._directions:
            known = ", ".join(self._directions) or "none: this fan is turned by hand"
            raise ValueError(f"direction is {direction!r}: one of these is needed: {known}")
        with self._lock:
            self._turn = _Turn(direction, now_ns, now_ns + TURN_PATIENCE_NS)

    @property
    def complaint(self) -> str:
        """What the drive does not do although it answers."""
        return self._complaint

    # --- from the owner of the port -------------------------------------------------------------------------------

    def begin(self, now_ns: int, *, anew: bool) -> None:
        """Say again what a drive that was switched off meanwhile has forgotten."""
        if not anew:
            return
        self._complaint = ""
        self._start_tries = START_TRIES if self._spec.start is not None else 0
        with self._lock:
            if self._turn is not None:
                self._turn = _Turn(self._turn.direction, now_ns, now_ns + TURN_PATIENCE_NS)

    def lost(self) -> None:
        """Nothing is known of the drive any more."""
        self.readback = self.direction = None

    def next_request(self, now_ns: int) -> Request | None:
        """Return what matters most."""
        with self._lock:
            if self._safe_is_due(now_ns):
                # Not urgent again before this request has had its time to be answered.
                self._safe_next_ns = now_ns + max(SAFE_AGAIN_NS, seconds(self._spec.timeout_s))
                return Request(self._spec.safe, self._spec.timeout_s, "safe")
            if self._start_tries and self._spec.start is not None:
                self._start_tries -= 1
                self._complaint = NOT_STARTED
                return Request(self._spec.start.message, self._spec.timeout_s, "start")
            if self._turn_is_due(now_ns) and self._turn is not None:
                self._turn.next_ns = now_ns + TURN_AGAIN_NS
                message = self._directions[self._turn.direction].message
                return Request(message, self._spec.timeout_s, f"turn {self._turn.direction}")
            return self._speed_request(now_ns)

    def urgent(self, now_ns: int) -> bytes | None:
        """Return the safe state: it goes out even while no answer comes."""
        with self._lock:
            return self._spec.safe if self._safe_is_due(now_ns) else None

    def understands(self, line: str) -> bool:
        """Tell whether a line is the reply to one of the drive's messages."""
        return decimal(line) is not None or line in self._replies()

    def heard(self, heard: Heard) -> bool:
        """Take a reply; one that belongs to another message is nonsense."""
        tag = heard.request.tag if heard.request is not None else ""
        if tag == "start":
            return self._heard_start(heard.line)
        if tag.startswith("turn "):
            return self._heard_direction(heard.line, tag.removeprefix("turn "), heard.now_ns)
        return self._heard_speed(heard.line, tag)

    def due_ns(self, now_ns: int) -> int:
        """Return when to look for wishes."""
        with self._lock:
            pressing = self._start_tries or self._turn_is_due(now_ns) or self._wish_is_free()
            if pressing or (self._safe_pending and now_ns >= self._safe_next_ns):
                return now_ns
        return now_ns + IDLE_LOOK_NS

    def _safe_is_due(self, now_ns: int) -> bool:
        """Tell whether the safe state goes out now, and note that it does."""
        if not self._safe_pending or now_ns < self._safe_next_ns:
            return False
        self._safe_sent = True
        self._safe_next_ns = now_ns + SAFE_AGAIN_NS
        return True

    def _turn_is_due(self, now_ns: int) -> bool:
        turn = self._turn
        if turn is None or turn.confirmed or now_ns < turn.next_ns or now_ns > turn.until_ns:
            return False
        # Not while the fan is told to run: the drive would refuse, and asking would keep it from stopping by itself.
        return not self.readback or now_ns - self._told_ns > self._patience_ns

    def _wish_is_free(self) -> bool:
        if self._wish is None:
            return False
        return self._wish[0] == 0.0 or self._turn is None or self._turn.confirmed

    def _speed_request(self, now_ns: int) -> Request | None:
        if self._wish is not None and now_ns - self._wish[1] > self._patience_ns:
            self._wish = None
        if self._wish is None or not self._wish_is_free():
            return None
        speed, self._wish = self._wish[0], None
        self._told_ns = now_ns
        return Request(self._spec.set_message(speed), self._spec.timeout_s, "set")

    def _heard_speed(self, line: str, tag: str) -> bool:
        value = decimal(line)
        well_formed = self._spec.reply is None or self._spec.reply.fullmatch(line) is not None
        if value is None or not tag or not well_formed:
            return False
        speed = value / self._spec.full
        if not -SPEED_TOLERANCE <= speed <= 1.0 + SPEED_TOLERANCE:
            return False
        self.readback = min(max(speed, 0.0), 1.0)
        if tag == "safe":
            with self._lock:
                self.safe_confirmed = self.readback == 0.0 and self._safe_sent
                self._safe_pending = self._safe_pending and not self.safe_confirmed
        return True

    def _heard_start(self, line: str) -> bool:
        if self._spec.start is None or line != self._spec.start.reply:
            return False
        self._start_tries = 0
        self._complaint = ""
        return True

    def _heard_direction(self, line: str, asked: str, now_ns: int) -> bool:
        found = next((name for name, item in self._directions.items() if item.reply == line), None)
        if found is None:
            return False
        self.direction = found
        with self._lock:
            turn = self._turn
            if turn is not None and turn.direction == asked:
                turn.confirmed = found == asked
                refused = not turn.confirmed and now_ns + TURN_AGAIN_NS > turn.until_ns
                self._complaint = f"The fan drive does not turn to {asked}." if refused else ""
        return True

    def _replies(self) -> set[str]:
        replies = {item.reply for item in self._directions.values()}
        return replies | {self._spec.start.reply} if self._spec.start is not None else replies
