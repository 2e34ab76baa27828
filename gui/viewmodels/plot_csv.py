"""The numbers of a plot as text, for who wants to draw it elsewhere. Always with decimal points and commas between."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence

from gui.viewmodels.flow_plot import Dot, FlowPicture
from gui.viewmodels.residuals import ResidualPicture
from gui.viewmodels.trace import TracePicture


def flow_csv(picture: FlowPicture) -> str:
    """Return points and line of the flow plot; the flow in the unit that the plot shows."""
    unit = picture.y_label.rsplit(",", maxsplit=1)[-1].strip()
    rows: list[Sequence[object]] = []
    for curve in picture.curves:
        name = curve.direction.value
        groups: tuple[tuple[str, tuple[Dot, ...]], ...] = (("taken", curve.taken), ("struck", curve.struck))
        for state, dots in groups:
            rows += [(name, state, _number(10**dot.x), _number(10**dot.y), "", "") for dot in dots]
        for at, (x, y) in enumerate(zip(curve.x, curve.line, strict=True)):
            band = [_number(10 ** bound[at]) if bound else "" for bound in (curve.low, curve.high)]
            rows.append((name, "line", _number(10**x), _number(10**y), *band))
    head = ("direction", "kind", "pressure Pa", f"flow {unit}", f"band low {unit}", f"band high {unit}")
    return _text(head, rows)


def residual_csv(picture: ResidualPicture) -> str:
    """Return how far each point lies off the line."""
    rows = [
        (curve.direction.value, state, _number(10**dot.x), _number(dot.percent), _number(dot.error_pct))
        for curve in picture.curves
        for state, dots in (("taken", curve.taken), ("struck", curve.struck))
        for dot in dots
    ]
    return _text(("direction", "kind", "pressure Pa", "off the line %", "two standard errors %"), rows)


def trace_csv(picture: TracePicture) -> str:
    """Return the readings of the trace."""
    pairs = zip(picture.x_s.tolist(), picture.y_pa.tolist(), strict=True)
    rows = [(f"{x:.3f}", _number(y)) for x, y in pairs if y == y]
    return _text(("time s", "envelope pressure Pa"), rows)


def _text(head: Sequence[str], rows: Iterable[Sequence[object]]) -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(head)
    writer.writerows(rows)
    return out.getvalue()


def _number(value: float) -> str:
    return f"{value:.6g}"
