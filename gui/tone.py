"""A tone that falls as the flow falls, for somebody who cannot look: made here, played by what the system has."""

from __future__ import annotations

import io
import math
import shutil
import subprocess
import sys
import tempfile
import wave
from pathlib import Path

import numpy as np

RATE_HZ = 22_050
SECONDS = 0.22
HIGH_HZ, SEMITONE_SHARE = 660.0, 0.02
"""The tone at the beginning, and the share of the flow for a semitone: a seal of 2 % is heard (our choice)."""
LOWEST_HZ, HIGHEST_HZ = 110.0, 1760.0
PLAYERS = (("afplay",), ("paplay",), ("pw-play",), ("aplay", "-q"))


def pitch_hz(flow_m3_h: float, first_m3_h: float) -> float:
    """Return the tone of a flow: a semitone lower for each `SEMITONE_SHARE` that is gone since the beginning."""
    semitones = (flow_m3_h / first_m3_h - 1.0) / SEMITONE_SHARE
    return float(min(max(HIGH_HZ * 2.0 ** (semitones / 12.0), LOWEST_HZ), HIGHEST_HZ))


def tone_wav(hz: float) -> bytes:
    """Return a short tone as a WAV file, soft at both ends."""
    times = np.arange(round(RATE_HZ * SECONDS)) / RATE_HZ
    soft = np.minimum(np.minimum(times, SECONDS - times) / 0.02, 1.0)
    samples = (0.3 * 32_767 * soft * np.sin(2.0 * math.pi * hz * times)).astype("<i2")
    held = io.BytesIO()
    with wave.open(held, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(RATE_HZ)
        file.writeframes(samples.tobytes())
    return held.getvalue()


def player() -> tuple[str, ...] | None:
    """Return the command that plays a file here, None where there is none; Windows plays by itself."""
    return next((command for command in PLAYERS if shutil.which(command[0])), None)


class Tone:
    """Plays a tone now and then; a new one never waits for the one before."""

    def __init__(self) -> None:
        """Be silent."""
        self.on = False
        self._running: subprocess.Popen[bytes] | None = None
        self._file = Path(tempfile.gettempdir()) / "airseam-tone.wav"

    @property
    def possible(self) -> bool:
        """Whether this machine can play a sound."""
        return sys.platform == "win32" or player() is not None

    def play(self, flow_m3_h: float, first_m3_h: float) -> None:
        """Play the tone of a flow, unless one is still heard."""
        if not self.on or (self._running is not None and self._running.poll() is None):
            return
        sound = tone_wav(pitch_hz(flow_m3_h, first_m3_h))
        if sys.platform == "win32":
            import winsound

            winsound.PlaySound(sound, winsound.SND_MEMORY | winsound.SND_NOSTOP)
            return
        command = player()
        if command is None:
            return
        try:
            self._file.write_bytes(sound)
            self._running = subprocess.Popen(  # noqa: S603  a program of the list above, a file of our own
                [*command, str(self._file)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
            )
        except OSError:
            self.on = False

    def close(self) -> None:
        """Be silent for good."""
        self.on = False
        if self._running is not None and self._running.poll() is None:
            self._running.terminate()
            self._running.wait()
