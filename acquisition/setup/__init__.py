"""Getting a building ready for a test and back again: openings, seals, what is put back, the safety questions."""

from acquisition.setup.board import Board, Line, RestoreLine, board_of
from acquisition.setup.openings import Opening, OpeningState, openings_for, rule_for, shipped_openings
from acquisition.setup.preparation_sheet import preparation_sheet
from acquisition.setup.record import said_of_setup
from acquisition.setup.safety import Answer, Gate, Question, gate_of, obeying, shipped_questions

__all__ = [
    "Answer",
    "Board",
    "Gate",
    "Line",
    "Opening",
    "OpeningState",
    "Question",
    "RestoreLine",
    "board_of",
    "gate_of",
    "obeying",
    "openings_for",
    "preparation_sheet",
    "rule_for",
    "said_of_setup",
    "shipped_openings",
    "shipped_questions",
]
