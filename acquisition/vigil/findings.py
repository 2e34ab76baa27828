"""What was noticed, in words: one sentence of the trade that says what the data show and what to look at."""

from __future__ import annotations

import math
from dataclasses import dataclass

from acquisition.snapshot import Severity
from acquisition.vigil.shift import Move, Shift


@dataclass(frozen=True, slots=True)
class Finding:
    """Something noticed. `spoils` says that the point being averaged is not to be used.

    `flow_range` names the range that seems to be fitted, where that is what was noticed.
    """

    id: str
    sentence: str
    severity: Severity = Severity.ATTENTION
    spoils: bool = False
    flow_range: str = ""


def shifted(shift: Shift, move: Move) -> Finding:
    """Say what a shift under a held fan can have been."""
    pascal = f"{shift.pressure_pa - shift.pressure_before_pa:+.1f}".replace("-", "−")
    share = f"{100.0 * shift.flow_share:+.0f}".replace("-", "−")
    seen = f"With the fan held the pressure changed by {pascal} Pa and the flow by {share} %"
    match move:
        case Move.OPENED:
            return Finding("leakage-jumped", f"{seen}: a door, a window or a seal let go. Look.", spoils=True)
        case Move.CLOSED:
            return Finding("leakage-jumped", f"{seen}: a door or window fell shut, or a leak closed.", spoils=True)
        case Move.FAN_LESS:
            return Finding("fan-weaker", f"{seen}: something lies before the fan, or it turns slower.", spoils=True)
        case Move.FAN_MORE:
            return Finding("fan-stronger", f"{seen}: the fan turns faster or was cleared.", spoils=True)
        case Move.PRESSURE_ALONE:
            text = f"{seen}: a gust, or the outdoor hose: moved, wet, in the wind or in the fan's jet."
            return Finding("pressure-alone", text, spoils=True)
        case Move.FLOW_ALONE:
            text = f"{seen}: look at the hose of the flow element, and whether the flow range is the one entered."
            return Finding("flow-alone", text, spoils=True)


def off_the_line(change_m3_h: float, at_pa: float, fitting_range: str) -> Finding:
    """Say that the readings lie off the line of the points before; `fitting_range` would bring them onto it."""
    if fitting_range:
        text = (
            f"The flow has left the line of the points before; with flow range {fitting_range} it would lie on it. "
            "Look which range is fitted."
        )
        return Finding("range-doubtful", text, flow_range=fitting_range)
    what = "a door, a window or a seal" if change_m3_h > 0 else "something was closed, or a hose is at fault"
    text = f"The leakage left the line of the points before, by {change_m3_h:+.0f} m³/h at {at_pa:.0f} Pa: {what}."
    return Finding("leakage-jumped", text)


def lasting(change_m3_h: float, at_pa: float) -> Finding:
    """Say that the readings stay off the line of the points before."""
    what = "Look at the seals, doors and windows." if change_m3_h > 0 else "Look what was closed, and at the hoses."
    text = f"Lasting step: {change_m3_h:+.0f} m³/h at {at_pa:.0f} Pa against the points before. {what}"
    return Finding("lasting-step", text)


def outside(sentence: str, fitting_range: str) -> Finding:
    """Say that the flow element has left the calibration of its range, and which range measures such a flow."""
    return Finding("out-of-range", sentence, flow_range=fitting_range)


def fan_differs(off: float) -> Finding:
    """Say that the fan moves more or less than before at such a speed; `off` is ln of the ratio."""
    share = 100.0 * abs(math.exp(off) - 1.0)
    if off < 0:
        text = f"The fan moves {share:.0f} % less than before at such a speed: does something lie before it?"
        return Finding("fan-weaker", text)
    text = f"The fan moves {share:.0f} % more than before at such a speed: was it cleared, or opened wider?"
    return Finding("fan-stronger", text)


FLOW_HOSE_OFF = Finding(
    "flow-hose-off",
    "The fan runs and the flow element reads next to nothing: its hose is off, or pinched.",
    spoils=True,
)
FLOW_HOSE_REVERSED = Finding(
    "flow-hose-reversed", "The flow element reads a negative pressure: its hose is on the wrong nipple.", spoils=True
)
HOSES_SWAPPED = Finding(
    "hoses-swapped", "Envelope pressure and flow element changed places: their hoses are swapped.", spoils=True
)
FAN_STOPPED = Finding(
    "fan-stopped", "Flow and pressure fall although the fan is told to run: its drive has switched off.", spoils=True
)
HOSE_DULL = Finding(
    "hose-dull", "The envelope pressure has lost its unrest: the outdoor hose is pinched, frozen or blocked."
)
HOSE_DEAF = Finding(
    "hose-deaf", "The flow followed the fan and the envelope pressure did not: the outdoor hose is pinched or blocked."
)
HOSE_NOISY = Finding(
    "hose-noisy", "The outdoor tap is restless and the fan is not: the hose is wet, or moves in the wind. Shelter it."
)
READINGS_MISSING = Finding("readings-missing", "Readings of the gauge are missing: look at its cable or radio.")
READINGS_REPEATED = Finding("readings-repeated", "The gauge repeats readings: its own ones get lost on the way.")
LINE_NOISE = Finding("line-noise", "Replies arrive damaged: look at cables and plugs.")
TIME_GAP = Finding("time-gap", "Time is missing in the record: the computer slept or was held up.", spoils=True)
