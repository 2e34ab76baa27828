"""The leakage figure: flow against pressure, both logarithmic, as an SVG whose text stays text."""

from __future__ import annotations

import io
import math
import threading
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib import font_manager, rc_context
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from numpy.typing import NDArray

from acquisition.languages import ENGLISH, Language
from acquisition.report.typeface import FAMILY, FONT_FILES
from analysis.numbertext import THIN_SPACE

WIDTH_MM = 86.0
INK, QUIET, HAIR = "#14202b", "#55636f", "#cfc9bc"
COLOURS = ("#0072b2", "#a65e00")
"""Colour-blind safe, and with another marker and another line each."""
MARKERS = ("o", "s")
DASHES: tuple[Any, ...] = ("solid", (0, (4.5, 1.6)))

_LEFT, _RIGHT = 0.1, 0.985
_STEPS = (1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0)
_MOST_FLOW_TICKS = 9
_PRESSURE_TICKS_PA = (5, 8, 10, 15, 20, 30, 40, 50, 60, 80, 100, 150)
# matplotlib keeps its settings in one place for all threads.
_LOCK = threading.Lock()


@dataclass(frozen=True, slots=True)
class Curve:
    """One direction in the figure: pressures in Pa, positive; flows in the unit of the axis. All of shape (n,).

    The line and the bounds of its band are given at `line_pa`, equally spaced in the logarithm.
    """

    name: str
    points_pa: NDArray[np.float64]
    points_flow: NDArray[np.float64]
    struck_pa: NDArray[np.float64]
    struck_flow: NDArray[np.float64]
    line_pa: NDArray[np.float64]
    line_flow: NDArray[np.float64]
    low_flow: NDArray[np.float64]
    high_flow: NDArray[np.float64]


def leakage_figure(curves: Sequence[Curve], flow_label: str, height_mm: float, language: Language = ENGLISH) -> bytes:
    """Return the figure as SVG, as wide as a column of the page; the same curves give the same bytes."""
    for path in FONT_FILES:
        font_manager.fontManager.addfont(path)
    settings: dict[Any, Any] = {
        "font.family": FAMILY,
        "font.size": 6.4,
        "svg.fonttype": "none",
        "svg.hashsalt": "airseam",
        "axes.linewidth": 0.5,
        "text.color": INK,
        "path.simplify": False,
    }
    with _LOCK, rc_context(settings):
        figure = Figure(figsize=(WIDTH_MM / 25.4, height_mm / 25.4))
        axes = figure.add_axes((_LEFT, 7.4 / height_mm, _RIGHT - _LEFT, 1 - 12 / height_mm))
        _axes(axes, curves, language)
        for index, curve in enumerate(curves):
            _draw(axes, curve, index, language)
        _legend(axes)
        below = language.say("pressure difference, Pa")
        figure.text(_RIGHT, 0.7 / height_mm, below, ha="right", va="bottom", color=QUIET)
        figure.text(0.0, 1 - 0.4 / height_mm, flow_label, ha="left", va="top", color=QUIET)
        buffer = io.BytesIO()
        figure.savefig(buffer, format="svg", metadata={"Date": None, "Creator": None})
    return buffer.getvalue()


def _axes(axes: Axes, curves: Sequence[Curve], language: Language) -> None:
    low, high = min(c.line_pa[0] for c in curves), max(c.line_pa[-1] for c in curves)
    flows = np.concatenate([np.r_[c.points_flow, c.struck_flow, c.line_flow] for c in curves])
    bottom, top = flows.min() * 0.93, flows.max() * 1.07
    axes.set_xscale("log")
    axes.set_yscale("log")
    axes.set_xlim(low, high)
    axes.set_ylim(bottom, top)
    axes.minorticks_off()
    _ticks(axes, "x", [float(tick) for tick in _PRESSURE_TICKS_PA if low <= tick <= high], language)
    _ticks(axes, "y", _flow_ticks(bottom, top), language)
    axes.grid(color=HAIR, linewidth=0.4)
    axes.set_axisbelow(True)
    for name in ("top", "right"):
        axes.spines[name].set_visible(False)
    for name in ("left", "bottom"):
        axes.spines[name].set_color(QUIET)
    axes.tick_params(length=2, width=0.5, color=QUIET, labelcolor=QUIET, pad=2)
    axes.axvline(50.0, color=QUIET, linewidth=0.7, linestyle=(0, (1.2, 1.2)))


def _ticks(axes: Axes, which: str, ticks: list[float], language: Language) -> None:
    labels = [language.grouped(language.number(f"{tick:,.10g}".replace(",", THIN_SPACE))) for tick in ticks]
    if which == "x":
        axes.set_xticks(ticks, labels)
    else:
        axes.set_yticks(ticks, labels)


def _flow_ticks(bottom: float, top: float) -> list[float]:
    """Return round numbers in the range, coarser ones where there would be many."""
    decades = range(math.floor(math.log10(bottom)), math.ceil(math.log10(top)) + 1)
    grids = [
        [step * 10.0**decade for decade in decades for step in steps if bottom <= step * 10.0**decade <= top]
        for steps in (_STEPS, (1.0, 2.0, 5.0), (1.0,))
    ]
    return next((ticks for ticks in grids if len(ticks) <= _MOST_FLOW_TICKS), grids[-1])


def _draw(axes: Axes, curve: Curve, index: int, language: Language) -> None:
    colour = COLOURS[index]
    axes.fill_between(curve.line_pa, curve.low_flow, curve.high_flow, color=colour, alpha=0.16, linewidth=0)
    axes.plot(curve.line_pa, curve.line_flow, color=colour, linewidth=1.1, linestyle=DASHES[index])
    # A hollow square around a full circle: where two directions agree both are seen.
    face, size = (colour, 3.6) if index == 0 else ("none", 5.4)
    axes.plot(
        curve.points_pa,
        curve.points_flow,
        linestyle="none",
        marker=MARKERS[index],
        markersize=size,
        markerfacecolor=face,
        markeredgecolor=colour,
        markeredgewidth=0.9,
        label=curve.name,
    )
    if len(curve.struck_flow):
        axes.plot(
            curve.struck_pa,
            curve.struck_flow,
            linestyle="none",
            marker="x",
            markersize=4.4,
            markeredgecolor=colour,
            markeredgewidth=0.9,
            label=language.say("{curve}, struck", curve=curve.name),
        )


def _legend(axes: Axes) -> None:
    axes.legend(
        loc="upper left",
        frameon=False,
        fontsize=6.4,
        labelcolor=INK,
        handletextpad=0.2,
        borderaxespad=0.3,
        labelspacing=0.35,
    )
