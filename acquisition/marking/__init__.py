"""Marking: the job of a student held against the hidden truth of an exercise.

The truth comes as a document, so that nothing here knows the simulator.
"""

from acquisition.marking.classtable import class_csv, class_table
from acquisition.marking.judging import Line, Marking, mark_job
from acquisition.marking.sheet import Tell, marking_lines, sheet_pdf
from acquisition.marking.truth import Hidden, Mark, Span, Task, Truth, read_truth

__all__ = [
    "Hidden",
    "Line",
    "Mark",
    "Marking",
    "Span",
    "Task",
    "Tell",
    "Truth",
    "class_csv",
    "class_table",
    "mark_job",
    "marking_lines",
    "read_truth",
    "sheet_pdf",
]
