"""The connected rig and the engine that runs on it: connecting, and parting in safety. Knows no Qt."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence

from acquisition.engine import Engine
from acquisition.openrig import OpenRig, RigSource, open_rig
from acquisition.register import DueState, Register, due_of_rig, in_use
from acquisition.rig import RigSpec
from acquisition.snapshot import Severity
from analysis.errors import InvalidInput
from drivers.battery import read_battery
from drivers.clock import Clock
from drivers.errors import InstrumentError, ProfileError
from drivers.transport import TransportOpener
from gui.errands import Errands
from gui.viewmodels.errors import error_words
from gui.viewmodels.moment import RigMoment, RigState
from gui.words import say

log = logging.getLogger(__name__)
Tell = Callable[[Severity, str], None]


class Connection:
    """At most one rig at a time.

    `connected` is called with the clock of a rig that was connected and the simulated house it belongs to, if any,
    before its engine ticks; `parted` when a rig is gone.
    """

    def __init__(
        self,
        sources: Sequence[RigSource],
        clock: Clock,
        opener: TransportOpener,
        errands: Errands,
        tell: Tell,
        connected: Callable[[Clock, RigSource | None], None],
        parted: Callable[[], None],
    ) -> None:
        """Begin without a rig; real instruments run on `clock`."""
        self.sources = tuple(sources)
        self.engine: Engine | None = None
        self.rig: OpenRig | None = None
        self.clock = clock
        """The clock of real instruments."""
        self.opener = opener
        """Opens ports by their addresses."""
        self.register: Callable[[], Register] = Register
        """The equipment register of the user, asked when a rig is opened."""
        self._errands = errands
        self._tell = tell
        self._connected = connected
        self._parted = parted
        self._state = RigState.NONE
        self._source = ""

    @property
    def busy(self) -> bool:
        """Whether a test is under way."""
        return self.engine is not None and self.engine.busy

    def moment(self) -> RigMoment:
        """Return the rig as it is."""
        spec = self.rig.spec if self.rig is not None else None
        return RigMoment(self._state, spec, self._source, self.sources[0].id if self.sources else "")

    def connect_source(self, source_id: str, factor: float) -> None:
        """Connect a simulated rig that runs `factor` times faster than real time."""
        source = next((item for item in self.sources if item.id == source_id), None)
        if source is None:
            self._tell(Severity.ATTENTION, say("There is no simulated house {name}.", name=source_id))
            return
        self._connect(lambda: source.open(factor), source)

    def connect_spec(self, spec: RigSpec) -> None:
        """Connect the instruments of a rig file."""
        self._connect(lambda: (open_rig(spec, self.clock, self.opener), self.clock), None)

    def connect_opened(self, open_it: Callable[[], tuple[OpenRig, Clock]], then: Callable[[], None]) -> None:
        """Connect the rig that `open_it` opens, and call `then` once it runs."""
        self._connect(open_it, None, then)

    def disconnect(self, then: Callable[[], None] | None = None) -> None:
        """Bring the fan to its safe state and close the links, then call `then`; a running test ends where it is."""
        engine, rig = self.engine, self.rig
        if engine is None or rig is None:
            if then is not None and self._state is RigState.NONE:
                then()
            return
        self._state, self.engine = RigState.CLOSING, None

        def gone(_: None) -> None:
            self.rig, self._state, self._source = None, RigState.NONE, ""
            if rig.stopped_safely is False:
                text = say("The fan did not confirm that it is at rest. Look at it, and pull its plug if it turns.")
                self._tell(Severity.ALARM, text)
            self._parted()
            if then is not None:
                then()

        def failed(error: Exception) -> None:
            text = say(
                "The rig could not be closed cleanly ({error}). Look whether the fan stands still.",
                error=error_words(error),
            )
            self._tell(Severity.ALARM, text)
            gone(None)

        self._errands.run(engine.close, gone, failed)

    def _tell_due(self, spec: RigSpec, clock: Clock) -> None:
        """Say which calibrations have run out; those that soon will are shown in the place alone."""
        found = due_of_rig(in_use(spec), clock.utc().astimezone().date())
        late = [status.sentence for status in found if status.state is DueState.OVERDUE]
        if late:
            self._tell(Severity.ATTENTION, " ".join(late))

    def accept_identity(self, link: str) -> None:
        """Go on with the instrument that now answers on a link."""
        if self.engine is not None:
            self.engine.accept_identity(link)

    def _connect(
        self,
        open_it: Callable[[], tuple[OpenRig, Clock]],
        source: RigSource | None,
        then: Callable[[], None] | None = None,
    ) -> None:
        if self.busy:
            self._tell(Severity.ATTENTION, say("A test is running: end it before another rig is connected."))
            return

        def opened(pair: tuple[OpenRig, Clock]) -> None:
            self.rig, clock = pair
            self.rig.equip(self.register())
            self._tell_due(self.rig.spec, clock)
            self._state, self._source = RigState.CONNECTED, source.id if source is not None else ""
            self.engine = Engine(self.rig, clock, battery=read_battery)
            self._connected(clock, source)
            self.engine.start()
            if then is not None:
                then()

        def failed(error: Exception) -> None:
            if not isinstance(error, InvalidInput | InstrumentError | ProfileError | ValueError | OSError):
                log.error("a rig could not be opened", exc_info=error)
            self._tell(Severity.ATTENTION, say("The rig could not be connected: {error}.", error=error_words(error)))

        self.disconnect(then=lambda: self._errands.run(open_it, opened, failed))
