"""Limits and targets of codes, standards and programmes, as data: a file for each part of the world."""

from __future__ import annotations

from analysis.limits.catalogue import Catalogue
from analysis.limits.entry import Place, PublishedLimit
from analysis.limits.reading import read_limits, shipped_limits

__all__ = ["Catalogue", "Place", "PublishedLimit", "read_limits", "shipped_limits"]
