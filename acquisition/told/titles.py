"""Names of methods and estimators, as people know them."""

from __future__ import annotations

from analysis.estimators import estimator, fit_ids
from analysis.methods import method_of

EDITIONS = {"iso9972": "2015", "cgsb-149.10": "M86"}
"""Editions as far as this program knows them."""


def method_title(method: str) -> str:
    """Return the name of a method with its edition as far as it is known."""
    edition = EDITIONS.get(method)
    return f"{method_of(method).title}:{edition}" if edition else method_of(method).title


def fit_title(fit: str) -> str:
    """Return the name of an estimator."""
    return estimator(fit).TITLE if fit in fit_ids() else fit
