"""Wind: gusts with the spectrum of von Karman, a slow wander of speed and direction, and what the facades feel of it.

Every process is a sum of real poles driven by white noise, scaled to unit variance and stepped exactly, whatever the
step. Arrays have the houses in the leading axis B and the facades (order of `FACADES`) in the last axis F.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from simulators.air import FloatArray
from simulators.house import FACADES, WALLS, House
from simulators.noise import Noise
from simulators.rigging import Rigging

GUST_LENGTH_M = 35.0
"""Length scale at about 6 m above ground, form of EN 1991-1-4 annex B (from memory)."""
GUSTINESS = 0.28
"""Turbulence intensity 1 / ln(z / z0), z = 6 m, z0 = 0.17 m (form of EN 1991-1-4)."""
TURNING = 0.75 * GUSTINESS
SPEED_WANDER, SPEED_WANDER_S = 0.12, 150.0
DIRECTION_WANDER, DIRECTION_WANDER_S = 0.14, 200.0
FACADE_UNREST, FACADE_UNREST_LENGTH = 0.10, 0.6
TAP_UNREST, TAP_UNREST_LENGTH = 0.07, 0.25
GROUND_TAP_ERROR, WALL_TAP_ERROR = 0.05, 0.10
"""Standard deviation of what the place of a tap adds to its pressure coefficient (our own figures)."""
ROOF_CP = -0.5
WALL_CP_DEG = np.arange(0.0, 181.0, 30.0)
WALL_CP = np.array([0.603, 0.469, 0.119, -0.443, -0.681, -0.39, -0.364])
"""Pressure coefficient of a low wall by the angle of the wind to it (Swami and Chandra, 1987)."""
WALL_FACES_RAD = np.radians(90.0 * np.arange(len(WALLS)))
GUST_POLES = (0.8403, 5.989)
GUST_RESIDUES = (0.7721, 0.4861)
"""Partial fractions of (1 + 0.25 Ts) / (1 + 1.357 Ts + 0.1987 T2s2), a rational form of von Karman's spectrum.

From the aerospace turbulence standards (MIL-F-8785C family, from memory).
"""
ONE_TAP = Rigging()
STILL_M_S = 0.1
"""Time scales do not grow beyond those at this speed."""


class GustProcess:
    """Unit-variance noise with von Karman's spectrum for the time scale `T` of each house."""

    def __init__(self, scale_s: FloatArray, rng: np.random.Generator) -> None:
        """Start in the stationary state."""
        self.rescale(scale_s)
        residue = np.array(GUST_RESIDUES)
        poles = np.array(GUST_POLES)
        covariance = np.outer(residue, residue) / np.add.outer(poles, poles)
        # Unit variance: the filter itself has 0.969.
        self._weight = covariance / covariance.sum()
        self._state: FloatArray = rng.standard_normal((len(scale_s), 2)) @ np.linalg.cholesky(self._weight).T
        self._kept = self._mix = np.empty(0)

    def rescale(self, scale_s: FloatArray) -> None:
        """Go on with other time scales."""
        self._pole = np.array(GUST_POLES) / scale_s[:, None]
        self._dt_s = 0.0

    def step(self, dt_s: float, white: FloatArray) -> FloatArray:
        """Advance by white noise (B, 2); return the noise (B,)."""
        if dt_s != self._dt_s:
            self._prepare(dt_s)
        fresh = np.matmul(self._mix, white[:, :, None])[:, :, 0]
        self._state = self._kept * self._state + fresh
        return self._state[:, 0] + self._state[:, 1]

    def _prepare(self, dt_s: float) -> None:
        """Exact step of both poles, which share one driving noise."""
        self._dt_s = dt_s
        self._kept = np.exp(-self._pole * dt_s)
        sums = self._pole[:, :, None] + self._pole[:, None, :]
        self._mix = np.linalg.cholesky(self._weight * -np.expm1(-sums * dt_s))


class WanderProcess:
    """Unit-variance noise with one time scale: Ornstein-Uhlenbeck, any number in the last axis."""

    def __init__(self, scale_s: FloatArray, rng: np.random.Generator) -> None:
        """Start in the stationary state; `scale_s` gives the shape."""
        self.rescale(scale_s)
        self._state: FloatArray = rng.standard_normal(scale_s.shape)
        self._kept = self._fresh = np.empty(0)

    def rescale(self, scale_s: FloatArray) -> None:
        """Go on with other time scales, as many as before."""
        self._scale_s = scale_s
        self._dt_s = 0.0

    def step(self, dt_s: float, white: FloatArray) -> FloatArray:
        """Advance by white noise of the shape of the scales; return the noise."""
        if dt_s != self._dt_s:
            self._dt_s = dt_s
            self._kept = np.exp(-dt_s / self._scale_s)
            self._fresh = np.sqrt(-np.expm1(-2.0 * dt_s / self._scale_s))
        self._state = self._kept * self._state + self._fresh * white
        return self._state


class Weather:
    """The wind around each house and the pressures that it makes."""

    def __init__(
        self,
        houses: Sequence[House],
        wind_m_s: Sequence[float],
        rng: np.random.Generator,
        rigging: Rigging = ONE_TAP,
    ) -> None:
        """Start in the middle of the weather, not at its beginning."""
        self.mean_m_s = np.array(wind_m_s, dtype=float)
        self.from_deg = np.array([house.climate.wind_from_deg for house in houses])
        """Where the wind comes from in the mean."""
        self.gust_m_s: FloatArray = np.zeros(len(houses))
        """What a single gust adds to the speed at present."""
        self._shelter = np.array([house.climate.shelter for house in houses])
        self._height_m = np.array([house.height_m for house in houses])
        self._taps = rigging.taps
        gusts_s, wander_s = self._scales()
        self._gusts = GustProcess(np.concatenate([gusts_s, gusts_s / 2.0]), rng)
        """Those of the speed, then those of the direction."""
        self._wander = WanderProcess(wander_s, rng)
        self._first_tap = 2 + len(WALLS) + 1
        self._set_taps(houses, rng, rigging)
        self._noise = Noise(rng, 4 * len(houses) + wander_s.size)
        self.speed_m_s: FloatArray = self.mean_m_s.copy()
        self.swing_rad: FloatArray = np.zeros(len(houses))
        """How far the wind has turned from its mean direction."""
        self.gust: FloatArray = np.zeros(len(houses))
        """The von Karman part of the speed, unit variance."""
        self.facade_pa: FloatArray = np.zeros((len(houses), len(FACADES)))
        self.tap_pa: FloatArray = np.zeros((len(houses), rigging.taps))
        """What the far end of each outdoor hose feels (B, K)."""
        self._filled = False
        self._share = np.empty(0)

    def blow(self, mean_m_s: FloatArray, from_deg: FloatArray) -> None:
        """Let the wind change in the mean (B,): its gusts become shorter when it grows."""
        self.mean_m_s, self.from_deg = mean_m_s, from_deg
        gusts_s, wander_s = self._scales()
        self._gusts.rescale(np.concatenate([gusts_s, gusts_s / 2.0]))
        self._wander.rescale(wander_s)

    def _scales(self) -> tuple[FloatArray, FloatArray]:
        """Return the time scale of the gusts (B,), and those of wander, facades, roof and taps (B, ...)."""
        speed = np.maximum(self.mean_m_s, STILL_M_S)
        self._area_s = 0.35 * np.sqrt(9.0 * self._height_m) / speed
        self._dt_s = 0.0
        self._against_walls = np.radians(self.from_deg)[:, None] - WALL_FACES_RAD
        scales = [SPEED_WANDER_S * np.ones_like(speed), DIRECTION_WANDER_S * np.ones_like(speed)]
        scales += [FACADE_UNREST_LENGTH * self._height_m / speed] * (len(WALLS) + 1)
        scales += [TAP_UNREST_LENGTH * self._height_m / speed] * self._taps
        return GUST_LENGTH_M / speed, np.stack(scales, axis=1)

    def _set_taps(self, houses: Sequence[House], rng: np.random.Generator, rigging: Rigging) -> None:
        facades = [rigging.facades(house) for house in houses]
        walls = [[0 if facade is None else FACADES.index(facade) for facade in row] for row in facades]
        self._tap_index = np.arange(len(houses))[:, None], np.array(walls)
        self._tap_before_wall = np.array([[facade is not None for facade in row] for row in facades])
        spread = np.where(self._tap_before_wall, WALL_TAP_ERROR, GROUND_TAP_ERROR)
        self._tap_error = spread * rng.standard_normal(spread.shape)
        self._walls_have_taps = bool(self._tap_before_wall.any())

    def step(self, dt_s: float, outdoor_density: FloatArray) -> None:
        """Advance wind and pressures."""
        count = len(self.mean_m_s)
        white = self._noise.step()
        gusts = self._gusts.step(dt_s, white[: 4 * count].reshape(2 * count, 2))
        wander = self._wander.step(dt_s, white[4 * count :].reshape(count, -1))
        self.gust, turn = gusts[:count], gusts[count:]
        self.speed_m_s = self.mean_m_s * (1.0 + GUSTINESS * self.gust + SPEED_WANDER * wander[:, 0]) + self.gust_m_s
        self.swing_rad = TURNING * turn + DIRECTION_WANDER * wander[:, 1]
        dynamic = 0.5 * outdoor_density * self._shelter * self.speed_m_s * self.speed_m_s
        felt = self._coefficients()
        felt[:, : len(WALLS) + 1] += FACADE_UNREST * wander[:, 2 : self._first_tap]
        felt[:, -1] = np.add.reduce(felt[:, : len(WALLS)], axis=1) / len(WALLS)
        self._average(dt_s, dynamic[:, None] * felt)
        at_taps = self._tap_error + TAP_UNREST * wander[:, self._first_tap :]
        if self._walls_have_taps:
            at_taps = at_taps + np.where(self._tap_before_wall, felt[self._tap_index], 0.0)
        self.tap_pa = dynamic[:, None] * at_taps

    def _coefficients(self) -> FloatArray:
        """Return the pressure coefficients (B, F), that of the floor left open."""
        towards = self._against_walls + self.swing_rad[:, None]
        angle = np.degrees(np.arccos(np.cos(towards)))
        felt = np.empty((len(angle), len(FACADES)))
        felt[:, : len(WALLS)] = np.interp(angle, WALL_CP_DEG, WALL_CP)
        felt[:, len(WALLS)] = ROOF_CP
        return felt

    def _average(self, dt_s: float, pressures: FloatArray) -> None:
        """A facade feels gusts averaged over its area, which takes a moment."""
        if not self._filled:
            self.facade_pa, self._filled = pressures, True
            return
        if dt_s != self._dt_s:
            self._dt_s = dt_s
            self._share = -np.expm1(-dt_s / self._area_s)[:, None]
        self.facade_pa = self.facade_pa + self._share * (pressures - self.facade_pa)
