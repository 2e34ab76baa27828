"""The audit of the rules of serial ports: each is in the table of README.md, and has a test that names it."""

from __future__ import annotations

import ast
import re
from pathlib import Path

TESTS = Path(__file__).parents[1]
ROOT = TESTS.parent
RULES = {f"A{number}" for number in range(1, 26)}
NOT_ON_LINUX = {"A24"}
"""Sleep cannot be had in a test; what it leaves behind is a dead port, which is A1."""


def named_rules() -> dict[str, list[str]]:
    """Return the tests that name each rule in their docstring."""
    found: dict[str, list[str]] = {}
    for path in sorted([*(TESTS / "drivers").rglob("test_*.py"), *(TESTS / "system").glob("test_*.py")]):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.FunctionDef) and node.name.startswith("test_"):
                for rule in _rules_in(ast.get_docstring(node) or ""):
                    found.setdefault(rule, []).append(f"{path.stem}.{node.name}")
    return found


def _rules_in(text: str) -> set[str]:
    """Return the rules in `Rule A5`, `Rules A1 and A21`, `Rules A1 to A5, A17`."""
    rules: set[str] = set()
    for sentence in re.findall(r"Rules? ((?:A\d+(?:, | and | to |))+)", text):
        for first, last in re.findall(r"A(\d+) to A(\d+)", sentence):
            rules |= {f"A{number}" for number in range(int(first), int(last) + 1)}
        rules |= set(re.findall(r"A\d+", sentence))
    return rules


def test_every_rule_that_linux_can_break_has_a_test() -> None:
    named = named_rules()
    assert RULES - NOT_ON_LINUX - set(named) == set()
    assert set(named) <= RULES


def test_the_table_lists_every_rule_and_tests_that_there_are() -> None:
    rows = re.findall(r"^\| (A\d+) \| [^|]+ \| ([^|]+) \|$", (TESTS / "drivers" / "README.md").read_text("utf-8"), re.M)
    assert {rule for rule, _ in rows} == RULES
    named = named_rules()
    for rule, tests in rows:
        for test in re.findall(r"`(test_\w+)`", tests):
            assert any(found.startswith(f"{test}.") for found in named.get(rule, [])), (
                f"{rule}: {test} does not name it"
            )


def test_no_event_loop_of_asyncio_is_in_the_way_of_a_sample() -> None:
    """Rule A25: on Windows such a loop polls its ports; a thread waits in the system."""
    for folder in ("drivers", "acquisition", "simulators"):
        for path in (ROOT / folder).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text("utf-8"))):
                names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else []
                names += [node.module or ""] if isinstance(node, ast.ImportFrom) else []
                assert not any(name.partition(".")[0] == "asyncio" for name in names), path
