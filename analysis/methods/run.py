"""One run: zero-flow correction, envelope flows, line, quantities, checks. The same way for every method."""

from __future__ import annotations

from dataclasses import replace

from analysis.effective import REFERENCE_PRESSURE_PA
from analysis.errors import InvalidInput
from analysis.estimators import Estimator
from analysis.estimators import estimator as estimator_of
from analysis.estimators.observations import Observations
from analysis.flow import envelope_factor
from analysis.methods.facts import RunFacts
from analysis.methods.method import Method
from analysis.methods.quantities import ELA4, EQLA10, leakage_area_cm2, rates
from analysis.noise import point_noise
from analysis.powerlaw import coefficient, exponent, flow_at, in_other_air
from analysis.records import PowerLaw, Run, RunResult, Test
from analysis.siteair import leak_air
from analysis.zeroflow import zero_correction_pa

FEWEST_POINTS = 2
_STEEPEST = 50.0


def analyse_run(method: Method, estimator: Estimator, test: Test, run: Run, path: str) -> tuple[RunResult, PowerLaw]:
    """Return the result of a run and its line in reference air; `path` names the run in an `InvalidInput`.

    The checks of the method look at its official fit, whichever fit the result is shown by.
    """
    building = test.building
    zero_pa = zero_correction_pa(run.zero_before, run.zero_after)
    one_pressure = method.one_pressure and method.official_fit == estimator.ID
    fewest = method.fewest_points if method.official_fit == estimator.ID else FEWEST_POINTS
    induced_pa = induced_pressures_pa(run, zero_pa, path, fewest, one_pressure=one_pressure)
    air = method.conversion.site_air(run.air, building)
    factor = envelope_factor(run.direction, air.indoor_kg_m3, air.outdoor_kg_m3)
    flows_m3_h = tuple(point.flow_m3_h * factor for point in run.points)
    magnitudes_pa = tuple(abs(value) for value in induced_pa)
    observations = Observations(magnitudes_pa, flows_m3_h)
    line = official = _fit(estimator_of(method.official_fit), observations, path)
    if method.official_fit != estimator.ID:
        noise = point_noise(run, path, estimator.ID) if estimator.WEIGHTED else None
        line = _fit(estimator, replace(observations, noise=noise), path)
    reference = in_other_air(line, *method.conversion.to_reference(*leak_air(run.direction, air)))
    facts = RunFacts(building, run, zero_pa, magnitudes_pa, official, frozenset(item.direction for item in test.runs))
    per_50 = rates(flow_at(reference, REFERENCE_PRESSURE_PA), building)
    q50 = per_50["q50_m3_h"]
    assert q50 is not None
    result = RunResult(
        direction=run.direction,
        zero_pa=zero_pa,
        n=exponent(line),
        c_env_m3_h_pa_n=coefficient(line),
        c_l_m3_h_pa_n=coefficient(reference),
        r2=line.r2,
        q50_m3_h=q50,
        n50_per_h=per_50["n50_per_h"],
        qe50_m3_h_m2=per_50["qe50_m3_h_m2"],
        qf50_m3_h_m2=per_50["qf50_m3_h_m2"],
        ela4_cm2=leakage_area_cm2(reference, ELA4),
        eqla10_cm2=leakage_area_cm2(reference, EQLA10),
        induced_pa=induced_pa,
        envelope_flow_m3_h=flows_m3_h,
        checks=tuple(method.measures[rule.id](facts, rule) for rule in method.requirements()),
        line=line,
        reference_line=reference,
    )
    return result, reference


def _fit(estimator: Estimator, observations: Observations, path: str) -> PowerLaw:
    """Return the line; raises `InvalidInput` where it is so steep that the pressures cannot carry it."""
    line = estimator.fit(observations)
    if not abs(line.n) <= _STEEPEST:
        _refuse_span(observations.pressure_pa, path)
    return line


def induced_pressures_pa(
    run: Run, zero_pa: float, path: str, fewest: int = FEWEST_POINTS, *, one_pressure: bool = False
) -> tuple[float, ...]:
    """Return the envelope pressures less the zero-flow pressure.

    Raises `InvalidInput` for too few points, for pressures that are all the same unless `one_pressure`, and for one
    that is zero or has the wrong sign for the direction of the run.
    """
    count = len(run.points)
    if count < fewest:
        shown = "1 point" if count == 1 else f"{count} points"
        raise InvalidInput(
            f"{path}.points", count, f"at least {fewest} {'is' if fewest == 1 else 'are'} needed", shown=shown
        )
    induced = tuple(point.envelope_pa - zero_pa for point in run.points)
    sign = run.direction.sign
    wrong = [at for at, value in enumerate(induced) if value * sign <= 0]
    side = "below" if sign < 0 else "above"
    if len(wrong) == count:
        allowed = f"with the zero-flow pressure taken off, pressures {side} 0 Pa are needed, and no point has one"
        raise InvalidInput(f"{path}.direction", run.direction.value, allowed)
    if wrong:
        at = wrong[0]
        allowed = (
            f"less the zero-flow pressure of {zero_pa:g} Pa it must be {side} 0 to {run.direction.value}, "
            f"and that is {induced[at]:g} Pa"
        )
        raise InvalidInput(f"{path}.points[{at}].envelope_pa", run.points[at].envelope_pa, allowed)
    magnitudes = [abs(value) for value in induced]
    if not one_pressure and max(magnitudes) - min(magnitudes) <= 1e-6 * max(magnitudes):
        _refuse_span(tuple(magnitudes), path)
    return induced


def _refuse_span(pressures_pa: tuple[float, ...], path: str) -> None:
    low, high = min(pressures_pa), max(pressures_pa)
    shown = f"{len(pressures_pa)} points from {low:g} to {high:g} Pa"
    allowed = "a line needs pressures that differ more"
    raise InvalidInput(f"{path}.points", len(pressures_pa), allowed, shown=shown)
