"""Replay: a recorded test played back through the whole program, as an instrument, at its own times."""

from acquisition.replay.anonymous import exercise_text
from acquisition.replay.playing import PlayedRig, play_clock, same_result

__all__ = ["PlayedRig", "exercise_text", "play_clock", "same_result"]
