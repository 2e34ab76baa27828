"""The table of points: what was aimed at, what was read, how sure it is."""

from __future__ import annotations

from dataclasses import dataclass

from acquisition.snapshot import PointState, PointView
from analysis.records import Direction
from analysis.units import Display, Quantity, format_value, unit_symbol
from gui.theme import Tone
from gui.viewmodels.moment import Moment
from gui.viewmodels.retold import retold
from gui.words import mark, say

BLANK, CORRECTED = "–", "✎"
STRIKE_REASONS = (
    mark("A door or window was opened"),
    mark("A gust of wind"),
    mark("A seal came off"),
    mark("The hose was moved"),
    mark("The wrong flow range was entered"),
)
"""Offered when a point is struck; any other text will do."""


@dataclass(frozen=True, slots=True)
class PointRow:
    """A row. `window` identifies a point that can be struck or restored."""

    sign: str
    tone: Tone
    state: PointState
    cells: tuple[str, ...]
    window: int | None
    tip: str = ""

    @property
    def struck(self) -> bool:
        """Whether the point is left out of the result."""
        return self.state is PointState.STRUCK


@dataclass(frozen=True, slots=True)
class TablePicture:
    """The table of one direction; `directions` are those that can be chosen."""

    headings: tuple[str, ...]
    rows: tuple[PointRow, ...]
    directions: tuple[Direction, ...]
    chosen: Direction
    current: int | None
    title: str
    footer: str


def table_picture(moment: Moment, wanted: Direction | None) -> TablePicture:
    """Return the table; without a wish the newest direction is shown."""
    display, shown = moment.display, moment.shown
    plan = moment.job.plan if moment.job is not None else None
    if shown is None or not shown.runs:
        directions = plan.directions if plan is not None else (Direction.DEPRESSURIZE,)
        chosen = wanted if wanted in directions else directions[0]
        targets = plan.targets_pa if plan is not None else ()
        points = tuple(PointView(chosen.sign * target, PointState.PENDING) for target in targets)
        footer = say("Planned; nothing has been read yet.") if points else ""
    else:
        directions = tuple(dict.fromkeys(run.direction for run in shown.runs))
        chosen = wanted if wanted in directions else shown.runs[-1].direction
        run = next(run for run in reversed(shown.runs) if run.direction is chosen)
        points, footer = run.points, _zero_words(run.zero_before_pa, run.zero_after_pa, display)
    rows = tuple(point_row(point, display) for point in points)
    current = next((at for at, point in enumerate(points) if point.state is PointState.AVERAGING), None)
    return TablePicture(
        headings=(
            "",
            say("Target Pa"),
            say("Mean Pa"),
            say("Flow {unit}", unit=unit_symbol(Quantity.FLOW, display)),
            say("Std. error"),
            say("Time"),
        ),
        rows=rows,
        directions=directions,
        chosen=chosen,
        current=current,
        title=say(chosen.value.capitalize()),
        footer=footer,
    )


def point_row(point: PointView, display: Display) -> PointRow:
    """Return the row of a point."""
    sign, tone = {
        PointState.PENDING: ("○", Tone.QUIET),
        PointState.AVERAGING: ("●", Tone.PRESSURE),
        PointState.TAKEN: ("✓", Tone.GOOD),
        PointState.STRUCK: ("✗", Tone.BAD),
    }[point.state]
    cells = (
        format_value(point.target_pa, Quantity.PRESSURE, display, 0 if float(point.target_pa).is_integer() else 1),
        _cell(point.envelope_pa, Quantity.PRESSURE, display),
        _cell(point.flow_m3_h, Quantity.FLOW, display),
        _error(point, display),
        "" if point.seconds is None else f"{point.seconds:.0f} s",
    )
    struck = say("Struck: {reason}", reason=point.struck_reason) if point.struck_reason else ""
    corrected = point.corrected_words
    tip = "\n".join(text for text in (struck, retold(corrected)) if text)
    if corrected and point.state is PointState.TAKEN:
        sign = CORRECTED
    return PointRow(sign, tone, point.state, cells, point.window, tip)


def _cell(value: float | None, quantity: Quantity, display: Display) -> str:
    return "" if value is None else format_value(value, quantity, display)


def _error(point: PointView, display: Display) -> str:
    if point.flow_error_pct is None:
        return "…" if point.state is PointState.AVERAGING else (BLANK if point.state is PointState.TAKEN else "")
    decimals = 1 if point.flow_error_pct >= 0.1 else 2
    return f"{point.flow_error_pct:.{decimals}f} %".replace(".", display.decimal_mark)


def _zero_words(before_pa: float | None, after_pa: float | None, display: Display) -> str:
    def value(zero_pa: float | None) -> str:
        return BLANK if zero_pa is None else f"{format_value(zero_pa, Quantity.PRESSURE, display)} Pa"

    return say("Zero-flow pressure before {before}, after {after}", before=value(before_pa), after=value(after_pa))
