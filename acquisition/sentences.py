"""What the engine says: one full sentence of the trade for every moment, the same in the window and on a terminal."""

from __future__ import annotations

from acquisition.snapshot import Activity, HeldView
from acquisition.steps import WindowKind


def pressure(value_pa: float) -> str:
    """Return a target pressure in words, with a true minus sign: `−40 Pa`, `12.5 Pa`."""
    return f"{round(value_pa, 1):g} Pa".replace("-", "−")


def idle_sentence(*, linked: bool, complete: bool, stopped: bool) -> str:
    """Return what to do while no test runs."""
    if complete:
        return "The test is complete. Put the building back: seals off, flames on, dampers and alarms as they were."
    if stopped:
        return "The test has ended before it was complete; what was read is kept."
    return "Ready to test." if linked else "Waiting for the instruments to answer."


def running_sentence(
    activity: Activity,
    *,
    kind: WindowKind | None,
    target_pa: float | None,
    elapsed_s: float,
    total_s: float | None,
    saturated: bool,
    held: HeldView | None = None,
) -> str:
    """Return what is happening."""
    goal = pressure(target_pa) if target_pa is not None else ""
    match activity:
        case Activity.ZERO if kind is None:
            return "Waiting for the building to come to rest."
        case Activity.ZERO:
            when = "before the points" if kind is WindowKind.ZERO_BEFORE else "again"
            return f"Reading the zero-flow pressure {when}: {_progress(elapsed_s, total_s)}. Keep the fan covered."
        case Activity.APPROACH:
            return f"Raising the fan gently towards {goal}. Watch sheeting and ceilings."
        case Activity.SETTLE if saturated:
            return f"Fan at full speed towards {goal}. Look for an open window or door."
        case Activity.SETTLE:
            return f"Going to {goal}; waiting until the pressure stands."
        case Activity.AVERAGE:
            return f"Holding {goal}, averaging: {_progress(elapsed_s, total_s)}. Keep doors and windows closed."
        case Activity.HOLD:
            return f"Holding {goal}{_leaking(held)}. Seal, look, or ask for another pressure."
        case Activity.STOPPING:
            return "Bringing the fan to rest."
        case _:
            return "Going on to the next step."


def _progress(elapsed_s: float, total_s: float | None) -> str:
    return f"{elapsed_s:.0f} s" if total_s is None else f"{min(elapsed_s, total_s):.0f} s of {total_s:.0f} s"


def _leaking(held: HeldView | None) -> str:
    if held is None or held.flow_m3_h is None:
        return ""
    since = "" if held.change is None else f", {100 * held.change:+.1f} % since the beginning".replace("-", "−")
    return f" for {held.seconds / 60:.0f} min: {held.flow_m3_h:.0f} m³/h{since}"
