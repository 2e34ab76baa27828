"""Invented tests for the report: points on a power law with a little scatter, all numbers made up."""

from __future__ import annotations

import io
import math
from dataclasses import replace

import matplotlib.image
import numpy as np

from acquisition.report import ReportContent, content_of_test, pdf_pages
from analysis.methods import analyse
from analysis.records import Air, Building, Direction, Limit, Point, Run, Test, ZeroFlow
from tests.acquisition.samples import AIR, BUILDING, START

OUT, IN = Direction.DEPRESSURIZE, Direction.PRESSURIZE
BEFORE = ZeroFlow(-0.42, 0.31, -0.88, 300, 30.0)
AFTER = ZeroFlow(-1.52, None, -1.52, 300, 30.0)


def run_of(
    direction: Direction, count: int = 10, *, air: Air = AIR, zeros: bool = True, highest_pa: float = 60.0
) -> Run:
    """Return a run with so many points."""
    targets_pa = [highest_pa - (highest_pa - 12.0) * i / (count - 1) for i in range(count)]
    return Run(
        direction=direction,
        air=air,
        points=tuple(
            Point(
                envelope_pa=direction.sign * target_pa - 0.97,
                flow_m3_h=41.0 * target_pa**0.64 * (1 + 0.012 * math.sin(7 * target_pa)),
                seconds=20.0,
                target_pa=direction.sign * float(round(target_pa)),
                count=200,
                envelope_sd_pa=0.4,
                flow_sd_m3_h=5.0,
            )
            for target_pa in targets_pa
        ),
        zero_before=BEFORE if zeros else None,
        zero_after=AFTER if zeros else None,
        started=START,
    )


def bare() -> ReportContent:
    """Return the content of a test of which as little is known as may be."""
    run = replace(run_of(OUT, 5, air=Air(21.0, 3.0), zeros=False, highest_pa=45.0), started=None)
    test = Test(Building(""), (run,))
    return content_of_test(test, analyse(test))


def content(
    *directions: Direction, limit: float | None = 2.0, name: str = "Mill Row 8", count: int = 10
) -> ReportContent:
    """Return the content of a report on a test in these directions."""
    runs = tuple(run_of(direction, count) for direction in directions or (OUT,))
    test = Test(replace(BUILDING, name=name), runs, "membrane up, services not yet in")
    limits = () if limit is None else (Limit("stage", "n50_per_h", limit),)
    return content_of_test(test, analyse(test, limits=limits))


def check_margins(pdf: bytes) -> None:
    """Assert that nothing is printed at the edges of the pages."""
    for page in pdf_pages(pdf, 72):
        picture = matplotlib.image.imread(io.BytesIO(page))[:, :, :3]
        # A4 is 595.3 by 841.9 points (ISO 216: 210 by 297 mm); a part of a pixel is one of the picture.
        assert picture.shape[:2] == (842, 596)
        margin = round(14 / 25.4 * 72)
        assert np.all(picture[:, :margin] == 1.0)
        assert np.all(picture[:, -margin:] == 1.0)
        assert np.all(picture[-10:] == 1.0)
