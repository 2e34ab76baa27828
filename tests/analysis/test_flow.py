"""Flow element and envelope flow."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.flow import element_flow_m3_h, envelope_factor, to_envelope
from analysis.records import Direction, FlowRange

MIDDLE = FlowRange("middle", 183.0, 0.498, 8.0, 250.0)


def test_an_element_at_its_reference_density_passes_what_its_sheet_says() -> None:
    assert element_flow_m3_h(100.0, MIDDLE, 1.2041) == pytest.approx(183.0 * 100.0**0.498, rel=1e-14)


def test_thinner_air_flows_faster_by_the_square_root_of_the_density_ratio() -> None:
    """A fifth less density, 1/sqrt(0.8) more flow (energy of the flow, general fluid mechanics)."""
    assert element_flow_m3_h(50.0, MIDDLE, 0.8 * 1.2041) / element_flow_m3_h(50.0, MIDDLE, 1.2041) == pytest.approx(
        1.118034, rel=1e-6
    )


@given(st.lists(st.floats(-300, 300), min_size=1, max_size=20))
def test_an_array_of_readings_gives_what_single_readings_give(readings_pa: list[float]) -> None:
    flows = element_flow_m3_h(np.array(readings_pa), MIDDLE, 1.19)
    assert flows == pytest.approx([element_flow_m3_h(reading, MIDDLE, 1.19) for reading in readings_pa], rel=1e-12)


@given(st.floats(0, 300))
def test_a_negative_element_pressure_gives_the_same_flow_backwards(reading_pa: float) -> None:
    assert element_flow_m3_h(-reading_pa, MIDDLE, 1.2) == -element_flow_m3_h(reading_pa, MIDDLE, 1.2)


def test_depressurizing_in_winter_less_cold_air_leaks_in_than_warm_air_leaves() -> None:
    assert to_envelope(1000.0, Direction.DEPRESSURIZE, 1.20, 1.30) == pytest.approx(1000.0 * 1.20 / 1.30)
    assert to_envelope(1000.0, Direction.PRESSURIZE, 1.20, 1.30) == pytest.approx(1000.0 * 1.30 / 1.20)


@given(st.floats(0.8, 1.5), st.floats(0.8, 1.5))
def test_the_two_directions_convert_inversely(indoor: float, outdoor: float) -> None:
    product = envelope_factor(Direction.DEPRESSURIZE, indoor, outdoor) * envelope_factor(
        Direction.PRESSURIZE, indoor, outdoor
    )
    assert product == pytest.approx(1.0, rel=1e-14)
