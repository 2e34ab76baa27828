"""What every model gives: a flow with a wide band, the model's name, and how far both can be trusted."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

from analysis.bounds import above_zero
from analysis.datafile import read_entries, shipped_text, take_provenance
from analysis.errors import InvalidInput
from analysis.fields import Fields
from analysis.provenance import Provenance
from analysis.records import Estimate

ESTIMATE_ONLY = "Estimate only, by a model and not measured; it does not belong on a certificate."


@dataclass(frozen=True, slots=True)
class Model:
    """A model: `says` for what time or weather it speaks, `factor` is its band at 95 %, times and divided by."""

    id: str
    title: str
    says: str
    factor: float
    provenance: Provenance


@dataclass(frozen=True, slots=True)
class Infiltration:
    """Natural air flow by a model; the intervals hold its band and that of the leakage.

    `air_change_per_h` is None where the volume is not known.
    """

    model: Model
    flow_m3_h: Estimate
    air_change_per_h: Estimate | None
    note: str = ESTIMATE_ONLY


def infiltration(model_id: str, flow_m3_h: Estimate, volume_m3: float | None) -> Infiltration:
    """Return what a model says, from its flow with the interval of the leakage alone."""
    model = model_of(model_id)
    flow = widened(flow_m3_h, model.factor)
    if volume_m3 is None:
        return Infiltration(model, flow, None)
    return Infiltration(model, flow, flow.times(1.0 / above_zero(volume_m3, "volume_m3")))


def widened(estimate: Estimate, factor: float) -> Estimate:
    """Return an estimate above 0 with a band, times and divided by the factor, added to its interval in quadrature.

    In the logarithm, both at 95 % and independent of each other (JCGM 100).
    """
    if not (estimate.low > 0.0 and math.isfinite(estimate.high)):
        return Estimate(estimate.value, 0.0, math.inf, estimate.extrapolated)
    band = math.log(factor)
    below = math.hypot(math.log(estimate.value / estimate.low), band)
    above = math.hypot(math.log(estimate.high / estimate.value), band)
    return Estimate(
        estimate.value, estimate.value * math.exp(-below), estimate.value * math.exp(above), estimate.extrapolated
    )


def model_of(model_id: str) -> Model:
    """Return the model of an id; raises `InvalidInput` that lists those there are."""
    found = _models().get(model_id)
    if found is None:
        raise InvalidInput("model", model_id, f"one of {', '.join(_models())} is needed")
    return found


@cache
def _models() -> dict[str, Model]:
    entries = read_entries(shipped_text(__package__, "models.toml"), "models.toml", "model")["model"]
    return {model.id: model for model in map(_model, entries)}


def _model(fields: Fields) -> Model:
    read = Model(
        id=fields.text("id"),
        title=fields.text("title"),
        says=fields.text("says"),
        factor=above_zero(fields.number("factor"), fields.path("factor")),
        provenance=take_provenance(fields),
    )
    fields.finish()
    return read
