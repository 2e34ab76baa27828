"""The exercises that come with the program: TOML files beside this module. All their data are invented.

`README.md` beside this module describes the format.
"""

from __future__ import annotations

from pathlib import Path

from simulators.exercise import Begin, Exercise, Hidden, Mark, Task
from simulators.filetable import FileTable, named_file, read_file
from simulators.plant import Event
from simulators.scenario import Scenario
from simulators.scenarios import read_events, read_place, site_of

FORMAT = "airseam-exercise-1"
FIRST = "first-test"
MOST_MINUTES = 600.0
ANSWERS = ("yes", "no", "not present")
_FOLDER = Path(__file__).parent
NEEDS_WORDS = (Task.NOTICED, Task.DECISION, Task.NUMBER)
SAYS = {
    Task.RESULT: "The result agrees with the truth.",
    Task.INTERVAL: "The interval of the result holds the truth.",
    Task.ZERO: "Zero-flow pressure was read before and after the points.",
    Task.RANGE: "The flow range entered is the one fitted, and every point lies within it.",
    Task.DIRECTIONS: "The house was tested in both directions.",
    Task.WEATHER: "No test in too much wind was given as good.",
    Task.SAFETY: "The safety questions were answered, and rightly.",
    Task.TIME: "The work was done in time.",
}


def exercise_names() -> tuple[str, ...]:
    """Return the ids of all exercises, sorted, the one to begin with first."""
    names = sorted(path.stem for path in _FOLDER.glob("*.toml"))
    return tuple(sorted(names, key=lambda name: name != FIRST))


def load_exercise(id_or_path: str) -> Exercise:
    """Return an exercise by its id, or from a file of one's own that ends in .toml.

    Raises `InvalidFile`, a `ValueError`, with file, line and key; an unknown id is answered with those there are.
    """
    return read_exercise(*named_file("exercise", id_or_path, _FOLDER, exercise_names()))


def read_exercise(name: str, text: str, file: str = "") -> Exercise:
    """Read the text of an exercise file; raises `InvalidFile` with file, line and key."""
    top = read_file(text, file or f"{name}.toml", FORMAT)
    house, rigging, protocol = read_place(top)
    site = site_of(house, rigging)
    events: list[Event] = []
    hidden: list[Hidden] = []
    for table in top.tables("event"):
        says = table.text("says")
        until_s = table.number("until_s") if table.has("until_s") else None
        hidden.append(Hidden(table.text("what"), says, table.number("at_s", at_least=0.0), until_s))
        for event in read_events(table, site):
            if not isinstance(event, Event):
                table.fail("what", "an exercise has no cables: the trainer pulls them out by hand")
            events.append(event)
    title, note, task = top.text("title"), top.text("note"), top.text("task")
    scenario = Scenario(name, title, note, task, house, rigging, protocol, tuple(events), ())
    exercise = Exercise(
        scenario=scenario,
        minutes=top.number("minutes", above=0.0, at_most=MOST_MINUTES),
        begins=Begin(top.choice("begins", tuple(Begin), Begin.FAN)),
        hidden=tuple(hidden),
        marks=tuple(_mark(table, len(hidden)) for table in top.tables("mark")),
        text=text,
    )
    if not exercise.marks:
        top.fail("mark", "at least one table [[mark]] is needed")
    top.finish()
    return exercise


def _mark(table: FileTable, events: int) -> Mark:
    what = Task(table.choice("what", tuple(Task)))
    wordy = what in NEEDS_WORDS
    mark = Mark(
        what=what,
        says=table.text("says") if wordy else table.text("says", SAYS[what]),
        points=table.number("points", above=0.0, at_most=100.0),
        words=table.texts("words") if wordy else (),
        event=_event(table, events) if what is Task.NOTICED else 0,
        value=_value(table, what),
        within=_within(table, what),
        answers=table.texts("answers", ()) if what is Task.SAFETY else (),
    )
    for answer in mark.answers:
        question, _, said = answer.partition("=")
        if not question or said not in ANSWERS:
            table.fail("answers", f'such as "sheeting=no" is needed, with {", ".join(ANSWERS)}; not {answer!r}')
    table.finish()
    return mark


def _event(table: FileTable, events: int) -> int:
    if not events:
        table.fail("event", "nothing happens in this exercise that could be noticed")
    return table.whole("event", 1, at_least=1, at_most=events)


def _value(table: FileTable, what: Task) -> float:
    match what:
        case Task.NUMBER:
            return table.number("value")
        case Task.WEATHER:
            return table.number("wind_m_s", 6.0, above=0.0, at_most=30.0)
        case _:
            return 0.0


def _within(table: FileTable, what: Task) -> float:
    match what:
        case Task.NUMBER:
            return table.number("within", at_least=0.0)
        case Task.RESULT:
            return table.number("within_pct", 10.0, above=0.0, at_most=100.0)
        case _:
            return 0.0
