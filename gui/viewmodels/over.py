"""Pages that lie over the places: they come by a command and go with their Back button."""

from __future__ import annotations

from enum import StrEnum


class Over(StrEnum):
    """Which page."""

    SETTINGS = "settings"
    JOBS = "jobs"
    TYPED = "typed"
    WORST_CASE = "worst-case"
