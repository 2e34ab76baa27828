"""Estimators: interchangeable ways to draw the leakage line through the points of a run.

Each is a module with `ID`, `TITLE`, `WEIGHTED` (does it ask how sure the points are?) and
`fit(observations) -> PowerLaw`; a new one is a module and its line below.
"""

from __future__ import annotations

from typing import Protocol

from analysis.errors import InvalidInput
from analysis.estimators import assumed, gls, ols, stations, wloc, wls
from analysis.estimators.observations import Observations
from analysis.records import PowerLaw


class Estimator(Protocol):
    """What an estimator module offers."""

    ID: str
    TITLE: str
    WEIGHTED: bool

    def fit(self, observations: Observations) -> PowerLaw:
        """Return the fitted line with its full covariance."""
        ...


_ESTIMATORS: tuple[Estimator, ...] = (ols, wls, wloc, gls, assumed, stations)
_BY_ID = {item.ID: item for item in _ESTIMATORS}


def fit_ids() -> tuple[str, ...]:
    """Return the ids of the estimators there are."""
    return tuple(_BY_ID)


def estimator(fit_id: str, field: str = "fit") -> Estimator:
    """Return the estimator of an id; raises `InvalidInput` that lists those there are."""
    found = _BY_ID.get(fit_id)
    if found is None:
        raise InvalidInput(field, fit_id, f"one of {', '.join(_BY_ID)} is needed")
    return found
