"""Where a leak is, in the language of the window: what people typed as it is, the part of the building translated."""

from __future__ import annotations

from acquisition.sealing.leaks import Leak
from analysis.sealing.parts import part_of
from gui.viewmodels.retold import retold_part


def part_words(leak: Leak) -> str:
    """Return the part of the building."""
    return retold_part(part_of(leak.part).title)


def place_words(leak: Leak) -> str:
    """Return where a leak is, in a few words."""
    return f"{leak.where}: {part_words(leak)}" if leak.where else part_words(leak)
