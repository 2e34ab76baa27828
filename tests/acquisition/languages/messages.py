"""What the catalogues have to hold: every message that the report says, gathered from the program itself."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from acquisition.job import JobDetails, RecordState
from acquisition.kinds import TestKind
from acquisition.languages.language import MONTHS
from acquisition.register.due import DueState
from acquisition.report import wording
from acquisition.report.certificate import WAYS
from acquisition.report.handout import NOBODY
from acquisition.report.notest import TITLE, WORD
from acquisition.sealing.leaks import HowFound, LeakStatus
from acquisition.setup.openings import OpeningState, shipped_openings
from acquisition.setup.preparation_sheet import BEFORE, CLOSING
from acquisition.setup.safety import Answer, shipped_questions
from acquisition.stages import USUAL_STAGES
from acquisition.told import budget, worstcase
from acquisition.worstcase import ALL_OFF, USUAL
from analysis.best.estimate import REASONS
from analysis.effective import QUANTITIES
from analysis.estimators import estimator, fit_ids
from analysis.exhaust import appliances
from analysis.limits import shipped_limits
from analysis.methods import method_ids, method_of
from analysis.records import Direction
from analysis.sealing.change import Sureness
from analysis.sealing.parts import PARTS
from analysis.verdict import CANNOT_TELL, DOES_NOT_MEET, MEETS, REMEDIES

ROOT = Path(__file__).parents[3]
SAYING = ("acquisition", "analysis")
PLACE = re.compile(r"\{(\w+)\}")


@cache
def said_in_code() -> frozenset[str]:
    """Return the messages that stand in calls of `say`."""
    found = set()
    for folder in SAYING:
        for path in (ROOT / folder).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text())):
                if isinstance(node, ast.Call) and node.args and _name(node.func) == "say":
                    found |= set(_messages(node.args[0]))
    return frozenset(found)


def _name(function: ast.expr) -> str:
    if isinstance(function, ast.Name):
        return function.id
    return function.attr if isinstance(function, ast.Attribute) else ""


def _messages(argument: ast.expr) -> Iterator[str]:
    """Yield the texts that an argument can be: a text, or one of two."""
    if isinstance(argument, ast.Constant) and isinstance(argument.value, str):
        yield argument.value
    elif isinstance(argument, ast.IfExp):
        yield from _messages(argument.body)
        yield from _messages(argument.orelse)


@cache
def said_from_data() -> frozenset[str]:
    """Return the messages that come from tables and data files."""
    found = {text for name, value in vars(wording).items() if name.isupper() for text in _texts(value)}
    found -= {wording.PROGRAM, wording.REASONS, "good", "bad", "open", *wording.VERDICTS, *wording.STATES}
    found |= {*MONTHS, *WAYS.values(), NOBODY, TITLE, WORD, *REMEDIES.values(), *budget.TITLES.values(), budget.NOTE}
    found |= {kind.words.lower() for kind in TestKind}
    found |= {item.title for item in QUANTITIES.values()} | {estimator(fit).TITLE for fit in fit_ids()}
    limits = shipped_limits()
    found |= {item.title for item in limits.places} | {item.zone_title for item in limits.places if item.zone_title}
    for method in map(method_of, method_ids()):
        found |= {words.partition(":")[0] for words in method.preparations.values()} | set(method.not_in_record)
        found |= {rule.clause for rule in method.requirements() if not re.search(r"\d", rule.clause)}
        found |= {rule.text for rule in method.requirements()} | {rule.source for rule in method.requirements()}
    found |= {item.name for item in shipped_openings()[0]} | {item.title for item in PARTS} | set(REASONS.values())
    found |= {text for question in shipped_questions() for text in (question.id, question.text)}
    for words in (LeakStatus, HowFound, Sureness, OpeningState, Answer, Direction):
        found |= {str(item.value) for item in words}
    found |= {str(state) for state in DueState if state is not DueState.UNKNOWN}
    found |= {MEETS, DOES_NOT_MEET, CANNOT_TELL, str(RecordState.RECORDING), str(RecordState.INTERRUPTED), "state"}
    found |= {*JobDetails.__dataclass_fields__, "details", "simulated", "no calibration is registered"}
    found |= {text for item in appliances() for text in (item.title, item.place, item.provenance.words)}
    found |= {worstcase.CAUTION, ALL_OFF, *USUAL, *BEFORE, CLOSING, *USUAL_STAGES}
    return frozenset(found - {""})


def _texts(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for item in value.values():
            yield from _texts(item)
    elif isinstance(value, tuple):
        for item in value:
            yield from _texts(item)


@cache
def source_texts() -> str:
    """Return every text in the program, one to a line: what a pattern looks for has to be among them."""
    found = []
    for folder in ("acquisition", "analysis", "drivers"):
        for path in (ROOT / folder).rglob("*.py"):
            tree = ast.parse(path.read_text())
            found += [
                node.value for node in ast.walk(tree) if isinstance(node, ast.Constant) and isinstance(node.value, str)
            ]
        found += [path.read_text() for path in (ROOT / folder / "methods").glob("*.toml")]
    return "\n".join(found)
