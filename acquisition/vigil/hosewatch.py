"""Whether the hose of the envelope pressure still feels the house: it answers the fan, and has its unrest.

Three looks: a step of the target that is not answered; a pressure that has lost the unrest of this wind; and one that
stands still although the held fan swings. The last two are slow or doubtful in calm air, so what stands still is first
suspected, the fan is nudged by who steers it, and what then does not move is named.
"""

from __future__ import annotations

from acquisition.snapshot import Activity
from acquisition.vigil import findings
from acquisition.vigil.answer import unanswered
from acquisition.vigil.findings import Finding
from acquisition.vigil.quiet import Typical
from acquisition.vigil.sight import Sight
from acquisition.vigil.swing import Swing, reading_noise, swing_of
from acquisition.vigil.unrest import liveliness
from drivers.clock import NS_PER_S

LIVELY_S = 6.0
DULL, DULL_LOOKS, DULL_LOOKS_AT_REST = 1.35, 7, 20
"""A lull looks like a dull hose for some seconds; at rest there is time to wait for its end."""
DEAF_LOOKS = 3
WINDY_ENOUGH = 2.5
"""A sound hose is usually so lively; in calmer air a dull one cannot be told by that."""
LEAST_NOISE_PA = 0.02
STILL = ((4.0, 1.2), (5.0, 1.4))
"""Over so many seconds no more unrest than so many times the gauge's own: suspicious."""
JUDGED_S = (3.5, 5.0)
FELT = 4.0
"""A swing that should move the pressure by so many times the noise is one that a sound hose shows."""
HIDDEN_SHARE, HIDDEN_UNREST = 0.35, 0.45
NUDGED, NOISE_ALONE = 10.0, 1.6
"""Wind cancels a swing smaller than a nudge at times: where it is hidden, no more than the gauge's noise is left."""
ANSWERED_SHARE = 0.6
"""Over the other span the swing was followed so far: then it is not hidden."""
HIDDEN_LOOKS = 2
AGAIN_S = 8.0
"""A nudge that was answered speaks for the hose so long."""


class HoseWatch:
    """Looks twice a second, in settling and averaging."""

    def __init__(self) -> None:
        """Have seen nothing."""
        self.suspected = False
        """Whether the fan should be nudged, to see whether the pressure is felt."""
        # A leaky house at rest is calmer than under the fan: each is held against its own.
        self._lively = {activity: Typical(120) for activity in (Activity.AVERAGE, Activity.ZERO)}
        self._dull = self._deaf = self._hidden = 0
        self._nudged_ns: int | None = None

    def new_target(self) -> None:
        """Another target is aimed at."""
        self._deaf = 0

    def look(self, sight: Sight, exponent: float | None) -> Finding | None:
        """Return what is noticed; `exponent` of the leakage line, None before there is one."""
        self.suspected = False
        return self._deaf_to_step(sight, exponent) or self._still(sight) or self._lifeless(sight)

    def _deaf_to_step(self, sight: Sight, exponent: float | None) -> Finding | None:
        if sight.activity is not Activity.SETTLE or exponent is None:
            self._deaf = 0
            return None
        pressure, flow = (sight.pressure_s, sight.pressure_pa), (sight.flow_s, sight.flow_m3_h)
        deaf = unanswered(sight.activity_s, pressure, flow, sight.stored_m3_h, exponent)
        self._deaf = self._deaf + 1 if deaf else 0
        return findings.HOSE_DEAF if self._deaf >= DEAF_LOOKS else None

    def _still(self, sight: Sight) -> Finding | None:
        """Suspect a pressure that stands still while the fan is held, and name one that a swing does not move."""
        if sight.activity is not Activity.AVERAGE:
            self._hidden = 0
            return None
        seen = [item for span_s in JUDGED_S if (item := _swing(sight, span_s)) is not None]
        self._hidden = self._hidden + 1 if any(map(_hides, seen)) and not any(map(_answers, seen)) else 0
        if self._hidden >= HIDDEN_LOOKS:
            return findings.HOSE_DEAF
        lately = self._nudged_ns is not None and sight.now_ns - self._nudged_ns < AGAIN_S * NS_PER_S
        if not lately and any((item := _swing(sight, span_s)) and item.seen < most for span_s, most in STILL):
            self.suspected, self._nudged_ns = True, sight.now_ns
        return None

    def _lifeless(self, sight: Sight) -> Finding | None:
        still_s = sight.held_s if sight.activity is Activity.AVERAGE else sight.activity_s
        # A fan that swings tells more by its answer, and nothing of how restless the wind is.
        usual = self._lively.get(sight.activity)
        if usual is None or len(sight.swing_pa) or still_s <= LIVELY_S + 0.5:
            self._dull = 0
            return None
        recent = sight.pressure_s >= -LIVELY_S
        now = liveliness(sight.pressure_s[recent], sight.raw_pa[recent])
        if now is None:
            return None
        windy = usual.known() and usual.median > WINDY_ENOUGH
        self._dull = self._dull + 1 if windy and now < DULL else 0
        if self._dull >= (DULL_LOOKS_AT_REST if sight.activity is Activity.ZERO else DULL_LOOKS):
            return findings.HOSE_DULL
        usual.learn(now)
        return None


def _swing(sight: Sight, span_s: float) -> Swing | None:
    noise_pa = max(reading_noise(sight.raw_pa[sight.pressure_s >= -span_s]), LEAST_NOISE_PA)
    return swing_of((sight.pressure_s, sight.pressure_pa), (sight.swing_s, sight.swing_pa), span_s, noise_pa)


def _hides(seen: Swing) -> bool:
    most = HIDDEN_UNREST * seen.expected if seen.expected > NUDGED else NOISE_ALONE
    return seen.expected > FELT and seen.share < HIDDEN_SHARE and seen.seen < most


def _answers(seen: Swing) -> bool:
    return seen.expected > FELT and seen.share > ANSWERED_SHARE
