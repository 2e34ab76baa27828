"""What the trainer does, without Qt: the exercise, the class that is served, the chosen house, the timeline."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from acquisition.commands.marking import marked, rig_ports, write_sheets
from acquisition.job import SUFFIX, Job
from acquisition.marking import Marking, Truth, class_csv, read_truth
from acquisition.replay import exercise_text
from acquisition.testfile import chosen
from analysis.errors import InvalidInput
from analysis.units import Display, Quantity, format_with_unit
from drivers.clock import Clock
from gui.classroom.faults import Fault, faults_of
from gui.classroom.house_picture import HousePicture, house_picture
from gui.viewmodels.errors import error_words
from gui.viewmodels.retold import retold
from gui.words import mark, say, spoken
from simulators import faults as actions
from simulators.classroom import ClassServer, Station, private_addresses
from simulators.classroom.server import Seat
from simulators.classroom.serving import keep_truths, write_rig_files
from simulators.classroom.station import Moment
from simulators.exercise import Exercise
from simulators.exercises import FIRST, exercise_names, load_exercise, read_exercise
from simulators.filetable import InvalidFile

PACES = (0.0, 1.0, 5.0, 20.0, 60.0)
MOST_DRAFTS = 1000
CHANGE_S = 10.0
"""Weather changes over so many seconds: a jump would look like a fault."""


@dataclass(frozen=True, slots=True)
class SeatLine:
    """A house in the list of the class."""

    number: int
    student: str
    state: str
    connected: bool


class Trainer:
    """Belongs to the thread of the window."""

    def __init__(self, clock: Clock) -> None:
        """Begin with the first exercise, nothing served."""
        self._clock = clock
        self.text = self._kept = load_exercise(FIRST).text
        self.name = FIRST
        self.server: ClassServer | None = None
        self.chosen = 0
        self.covered = False
        self.frozen = False
        self.everybody = False
        """Whether what is done is done to every house."""
        self.pace = 1.0
        self._said, self._secret = say("Choose an exercise and open the class."), False
        self.display = Display()
        self.markings: list[Marking] = []
        self._handed_in: tuple[Path, ...] = ()
        self._own: Path | None = None
        self._still: HousePicture | None = None
        self._thrown: dict[Station, set[str]] = {}

    # --- the exercise ---------------------------------------------------------------------------------------------

    @staticmethod
    def exercises() -> tuple[tuple[str, str], ...]:
        """Return id and title of the exercises that come along."""
        return tuple((name, load_exercise(name).scenario.title) for name in exercise_names())

    def choose(self, name: str) -> None:
        """Take one of the exercises that come along into the editor."""
        self.name, self._own, self.text = name, None, load_exercise(name).text
        self._kept = self.text

    def load(self, path: Path) -> None:
        """Take an exercise of one's own into the editor, sound or not; of a job, what it says of the house."""
        if path.suffix == SUFFIX:
            self._load_job(path)
            return
        try:
            self.text = self._kept = path.read_text(encoding="utf-8")
            self.name, self._own = path.stem, path
            self.said = say("{file} is in the editor.", file=path.name)
        except (OSError, UnicodeDecodeError) as error:
            self.said = say("{file} cannot be read: {error}.", file=path.name, error=error_words(error))

    def _load_job(self, path: Path) -> None:
        try:
            job = Job.open(path, self._clock, read_only=True)
            try:
                self.text = self._kept = exercise_text(job.load(chosen(job, None)))
            finally:
                job.close()
        except InvalidInput as error:
            self.said = say("{file} gives no exercise: {error}.", file=path.name, error=error_words(error))
            return
        self.name, self._own = f"{path.stem} exercise", None
        self.said = say("A house as tight as that of {file}, without names, is in the editor.", file=path.name)

    def save(self, path: Path) -> None:
        """Write what stands in the editor, sound or not; never over a file that is not the one that was loaded."""
        if path.exists() and path != self._own:
            self.said = say("{file} is there already: choose another name.", file=path.name)
            return
        try:
            path.write_text(self.text, encoding="utf-8")
            self._kept = self.text
            self.name, self._own, self.said = path.stem, path, say("The exercise is saved as {file}.", file=path.name)
        except OSError as error:
            self.said = say("{file} cannot be written: {reason}.", file=path.name, reason=error_words(error))

    def keep_draft(self, folder: Path) -> None:
        """Keep what was typed and never saved, before another text takes its place."""
        if self.text == self._kept:
            return
        numbers = ("", *(f" {count}" for count in range(2, MOST_DRAFTS)))
        paths = (folder / f"{self.name} draft{number}.toml" for number in numbers)
        path = next((path for path in paths if not path.exists()), None)
        try:
            if path is None:
                raise OSError(0, mark("there are too many drafts"))
            folder.mkdir(parents=True, exist_ok=True)
            path.write_text(self.text, encoding="utf-8")
            self._kept, self.said = self.text, say("What you had typed is kept as {file}.", file=path.name)
        except OSError as error:
            self.said = say("What you had typed cannot be kept: {reason}.", reason=error_words(error))

    def exercise(self) -> Exercise:
        """Return what stands in the editor; raises `InvalidFile` with the line of what is wrong."""
        return read_exercise(self.name, self.text)

    def problem(self) -> tuple[int | None, str]:
        """Return line and sentence of what is wrong in the editor; no sentence where it is sound."""
        try:
            self.exercise()
        except InvalidFile as error:
            return error.line, retold(str(error).removeprefix(f"{error.file}: ").removeprefix(f"{error.file}, "))
        return None, ""

    # --- the class ------------------------------------------------------------------------------------------------

    @staticmethod
    def addresses() -> tuple[str, ...]:
        """Return where a class can listen; the first is this machine alone."""
        return private_addresses()

    def open_class(self, host: str, port: int, students: int, *, shared: bool) -> bool:
        """Serve the exercise; false, with what is wrong in `said`, where that is not possible."""
        self.close_class()
        try:
            server = ClassServer(self.exercise(), self._clock, students=students, host=host, port=port, shared=shared)
        except (ValueError, OSError) as error:
            self.said = say("The class cannot open: {error}.", error=error_words(error))
            return False
        self.server, self.chosen, self.pace, self._thrown = server, 0, 1.0, {}
        self.frozen, self._still = False, None
        self.said = say("Students join at {address} in the place Rig.", address="{}:{}".format(*server.address))
        return True

    def close_class(self) -> None:
        """Send everybody away."""
        if self.server is not None:
            self.server.close()
            self.server = None
            self.said = say("The class is closed.")

    @property
    def station(self) -> Station | None:
        """The house that is looked at."""
        return None if self.server is None else self.server.stations[self.chosen]

    def look_at(self, number: int) -> None:
        """Look at another house."""
        if self.server is not None and 0 <= number < len(self.server.stations):
            self.chosen, self._still = number, None

    def seats(self) -> tuple[SeatLine, ...]:
        """Return the houses of the class."""
        seats = () if self.server is None else self.server.seats()
        return tuple(SeatLine(seat.station.number, seat.student, _state(seat), seat.connected) for seat in seats)

    def plug(self, *, plugged: bool) -> None:
        """Pull the cable of the gauge of the chosen house, or put it back."""
        if self.server is not None:
            for station in self._meant():
                self.server.plug(station, plugged)
            self.said = say("The cable of the gauge is back.") if plugged else say("The cable of the gauge is pulled.")

    # --- the house ------------------------------------------------------------------------------------------------

    def picture(self) -> HousePicture | None:
        """Return the chosen house, or as it was when the picture was frozen."""
        if self.station is None:
            return None
        if self.frozen and self._still is not None:
            return self._still
        self._still = house_picture(self.station)
        return self._still

    def freeze(self, *, on: bool) -> None:
        """Let the picture stand still while the house goes on, or follow it again."""
        self.frozen = on

    def go_at(self, pace: float) -> None:
        """Let time in all houses pass faster, or stand still: students talk about one moment."""
        self.pace = pace
        for station in self.server.stations if self.server is not None else ():
            station.go_at(pace)
        self.said = (
            say("Time stands still in the houses.")
            if pace <= 0.0
            else say("Time in the houses: {pace} times.", pace=f"{pace:g}")
        )

    def resize(self, leak: str, times: float) -> None:
        """Let a leak pass so many times what it did as built: 0 seals it."""
        word = say("{times} times as large", times=f"{times:g}")
        if times in (0.0, 1.0):
            word = say("as built") if times else say("sealed")
        for station in self._meant():
            says = f"The leak {leak} became {times:g} times as large." if times > 1.0 else ""
            station.do(actions.came_off(times, (leak,)), "seal-off", says, title=f"{leak}: {word}")
        self._tell(f"{leak}: {word}.")

    def blow(self, speed_m_s: float, from_deg: float) -> None:
        """Let the wind change."""
        words = format_with_unit(speed_m_s, Quantity.SPEED, self.display, 1)
        self._weather(
            lambda station: station.do(
                actions.wind_changes(speed_m_s, from_deg),
                "wind",
                "",
                title=say("Wind: {speed}", speed=words),
                over_s=CHANGE_S,
            )
        )
        self.said = say("The wind turns to {speed}.", speed=words)

    def heat(self, indoor_c: float, outdoor_c: float) -> None:
        """Let the temperatures change."""
        indoor, outdoor = (
            format_with_unit(value, Quantity.TEMPERATURE, self.display, 1) for value in (indoor_c, outdoor_c)
        )

        def act(station: Station) -> None:
            title = say("Indoors {indoor}, outdoors {outdoor}", indoor=indoor, outdoor=outdoor)
            station.do(actions.outdoors_becomes(outdoor_c), "outdoors", "", title=title, over_s=CHANGE_S)
            station.do(actions.heated(indoor_c), "heating", "", over_s=CHANGE_S)

        self._weather(act)
        self.said = say("Indoors goes to {indoor}, outdoors to {outdoor}.", indoor=indoor, outdoor=outdoor)

    def faults(self) -> tuple[Fault, ...]:
        """Return what can be thrown at the chosen house."""
        return () if self.station is None else faults_of(self.station.rig.house)

    def throw(self, fault: Fault, after_s: float) -> None:
        """Throw a fault, now or on the timeline."""
        for station in self._meant():
            station.throw(fault.event, fault.says, title=fault.words, after_s=after_s, over_s=fault.over_s)
            if fault.lasts:
                self._thrown.setdefault(station, set()).add(fault.words)
        when = say("now") if after_s <= 0.0 else say("in {minutes} min", minutes=f"{after_s / 60.0:g}")
        self._tell(f"{fault.words}: {when}.")

    def is_thrown(self, fault: Fault) -> bool:
        """Tell whether a fault is still there in the chosen house, or on its way."""
        return self.station is not None and fault.words in self._thrown.get(self.station, ())

    def state_of(self, fault: Fault) -> str:
        """Return whether a fault is there in the chosen house, or is to come; nothing where it is neither."""
        if not self.is_thrown(fault):
            return ""
        coming = any(moment.title == fault.words and not moment.past for moment in self.timeline())
        return say("to come") if coming else say("thrown")

    def mend(self, fault: Fault) -> None:
        """Put a fault right, or let it not happen where it is still to come."""
        for station in self._meant():
            if fault.words in self._thrown.get(station, ()):
                station.mend(fault.event, fault.words)
                self._thrown[station].discard(fault.words)
        self._tell(say("{fault}: put right.", fault=fault.words))

    def timeline(self) -> tuple[Moment, ...]:
        """Return what happened in the chosen house and what is to come."""
        return () if self.station is None else self.station.timeline()

    def take_back(self, moment: Moment) -> None:
        """Let something not happen that is still to come in the chosen house."""
        if self.station is None or moment.number is None or not self.station.take_back(moment.number):
            self.said = say("It has happened already.")
            return
        self._thrown.get(self.station, set()).discard(moment.title)
        self._tell(say("{moment}: taken back.", moment=retold(moment.title)))

    def _tell(self, sentence: str) -> None:
        """Say something that is hidden where the truth is covered."""
        self._said, self._secret = sentence, True

    @property
    def said(self) -> str:
        """The last thing that is to be told."""
        return self._said

    @said.setter
    def said(self, sentence: str) -> None:
        self._said, self._secret = sentence, False

    @property
    def shown(self) -> str:
        """What is said, as far as the cover lets it be seen."""
        return say("Done.") if self.covered and self._secret else self._said

    def _meant(self) -> Sequence[Station]:
        if self.server is None or self.station is None:
            return ()
        return self.server.stations if self.everybody else (self.station,)

    def _weather(self, act: object) -> None:
        assert callable(act)
        for station in self._meant():
            act(station)

    # --- marks ----------------------------------------------------------------------------------------------------

    def mark(self, jobs: Sequence[Path]) -> list[Marking]:
        """Mark jobs, each against the house that its tester had; raises `InvalidInput` for what is no job."""
        whole = read_truth(self.exercise().truth())
        markings = []
        for path in jobs:
            first = marked(path, whole, self.display)
            truth = self._truth_of(first.student, path)
            markings.append(first if truth is None else marked(path, truth, self.display))
        self.markings, self._handed_in = markings, tuple(jobs)
        return markings

    def write_marks(self, folder: Path) -> list[Path]:
        """Write the sheets, in the units of the window, and the table of the last marks; raises `InvalidInput`."""
        if any(item.display != self.display for item in self.markings):
            self.mark(self._handed_in)
        written = write_sheets(self.markings, folder, retold, spoken().value)
        table = folder / "class.csv"
        try:
            table.write_text(class_csv(self.markings), encoding="utf-8")
        except OSError as error:
            raise InvalidInput(
                "the table of the class", str(table), f"it cannot be written ({error.strerror})"
            ) from error
        self.said = say("{count} sheets and the table are in {folder}.", count=len(written), folder=folder)
        return [*written, table]

    def write_rig_files(self, folder: Path) -> list[Path]:
        """Write a rig file for each house."""
        if self.server is None:
            return []
        try:
            written = write_rig_files(self.server, folder)
        except OSError as error:
            self.said = say("The rig files cannot be written: {reason}.", reason=error_words(error))
            return []
        self.said = say("{count} rig files are in {folder}.", count=len(written), folder=folder)
        return written

    def keep_truths(self, folder: Path) -> list[Path]:
        """Write down what was true in each house that has a student; raises `OSError`."""
        return [] if self.server is None else keep_truths(self.server, folder)

    def _truth_of(self, student: str, job: Path) -> Truth | None:
        server = self.server
        if server is None:
            return None
        of_name = [item for item in server.stations if item.student.casefold() == student.casefold()]
        # Who came with a rig file has said no name: the job knows where its instruments were.
        station = server.stations[0] if server.shared else next(iter(of_name), server.house_at(rig_ports(job)))
        return None if station is None else read_truth(json.dumps(station.truth()))


def _state(seat: Seat) -> str:
    if not seat.plugged:
        return say("cable pulled")
    if seat.connected:
        return say("connected")
    return say("away") if seat.student else say("free")
