"""What the window of the trainer may ask of the normal one beside it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from analysis.units import Display


@dataclass(frozen=True, slots=True)
class Beside:
    """The normal window: it joins the class at a place under a name, takes a rig, and knows the units."""

    join: Callable[[str, str], None]
    take_rig: Callable[[str], None]
    display: Callable[[], Display]
