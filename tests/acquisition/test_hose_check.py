"""The check of the hoses: every simulated fault is named, sound houses are left in peace."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
import pytest

from acquisition.bench import Bench
from acquisition.control import Plant as KnownPlant
from acquisition.control import PressureController
from acquisition.hosecheck import Doubt, FanStep, HoseFault, Response, judge_growth, judge_hoses, judge_taps
from acquisition.hosestep import HoseCheck
from acquisition.job.results import analyse_record
from acquisition.live import LiveBuffer
from acquisition.multipoint import ALL_THE_SAME, CHECK_AGAIN, GO_ON
from acquisition.rig import TAPS, Role
from acquisition.rigfile import read_rig
from acquisition.steps import CheckHoses
from analysis.asymmetry import asymmetry
from analysis.records import Direction
from drivers.clock import VirtualClock, seconds
from simulators.faults import ELEMENT, ENVELOPE, hose, hose_in_jet, hoses_swapped
from simulators.hoses import Hose
from simulators.house import House
from simulators.houses import load_house
from simulators.plant import Action, Plant, PlantInputs
from simulators.random_house import random_houses
from simulators.rig import SimulatedRig
from simulators.rigging import Rigging, TapPlace
from tests.acquisition.scenes import a_scene
from tests.acquisition.test_multipoint import a_plan, walk
from tests.simulators.rigs import virtual_clock

TAP_CHANNELS = ("p1", "p3", "p4", "p5")
"""Of the gauge: the second one is the flow element."""
FOUR_TAPS = Rigging(taps=4, tap=TapPlace.FACADE)


class Rig:
    """Just enough of a rig for the step."""

    def __init__(self, text: str) -> None:
        """Read its file."""
        self.spec = read_rig(text)
        self.has_fan = True

    def set_direction(self, direction: Direction) -> None:
        """Blow as it does."""


@dataclass
class NoPlan:
    """No air is known."""

    air: None = None


class Progress:
    """A test of which nothing is known."""

    plan = NoPlan()


def checked(
    house: House,
    action: Action | None = None,
    wind_m_s: float = 0.0,
    seed: int = 1,
    direction: Direction = Direction.DEPRESSURIZE,
    rigging: Rigging | None = None,
    watched: list[float] | None = None,
) -> tuple[str, float]:
    """Return what the step says of a house, and how long it took; `watched` gets the true pressures (magnitudes)."""
    text = SimulatedRig(house, seed, virtual_clock(), rigging=rigging)
    plant = Plant([house], seed, wind_m_s, rigging or Rigging())
    rig = Rig(text.rig_toml(text.own_ports))
    controller = PressureController(KnownPlant(house.volume_m3))
    bench = Bench(rig, LiveBuffer(), Progress(), controller, direction=direction)  # type: ignore[arg-type]
    if action is not None:
        action(plant, 1.0)
    step, zeros = HoseCheck(), []
    for tick in range(900):
        plant.step(0.1, PlantInputs(np.array([controller.command]), np.array([float(direction.sign)])))
        if watched is not None:
            watched.append(abs(float(plant.pressure_pa[0])))
        shown = plant.gauge.shown[0]
        taps = [float(shown[plant.channel(name)]) for name in TAP_CHANNELS[: plant.rigging.taps]]
        bench.live.append(Role.ENVELOPE, seconds(tick * 0.1), float(np.mean(taps)))
        for role, value in zip(TAPS[1:], taps[1:], strict=False):
            bench.live.append(role, seconds(tick * 0.1), value)
        bench.live.append(Role.FLOW_ELEMENT, seconds(tick * 0.1), float(shown[1]))
        if tick < 300:
            zeros.append(float(np.mean(taps)))
            continue
        if tick == 300:
            bench.zero_pa = float(np.mean(zeros))
            means = np.mean(np.reshape(zeros, (-1, 30)), axis=1)
            controller.know(KnownPlant(house.volume_m3, float(np.std(means, ddof=1))))
        done = step.tick(bench, seconds(tick * 0.1))
        if done is not None:
            return str(done.result), (tick - 300) * 0.1
    raise AssertionError("the step does not end")


@pytest.mark.parametrize("name", ["mill-row", "gable-barn"])
@pytest.mark.parametrize(
    ("action", "words"),
    [
        (hose(ENVELOPE, Hose.OFF), "the envelope pressure does not move: its hose is off"),
        (hose(ENVELOPE, Hose.FROZEN), "the envelope pressure does not move: its hose is off, blocked or frozen"),
        (hose(ENVELOPE, Hose.REVERSED), "The envelope pressure goes the wrong way"),
        (hose(ENVELOPE, Hose.KINKED), "The envelope pressure answers too slowly"),
        (hose(ELEMENT, Hose.OFF), "the flow element does not: its hose is off"),
        (hose(ELEMENT, Hose.REVERSED), "The flow element reads backwards"),
        (hose(ELEMENT, Hose.KINKED), "The flow element answers too slowly"),
        (hoses_swapped(True), "The hoses of envelope pressure and flow element are swapped."),
    ],
)
def test_each_fault_is_named(name: str, action: Action, words: str) -> None:
    said, took_s = checked(load_house(name), action)
    assert words in said
    assert took_s < 12.0


@pytest.mark.parametrize("wind_m_s", [pytest.param(0.0, marks=pytest.mark.walk), 3.0])
def test_sound_houses_are_left_in_peace(wind_m_s: float) -> None:
    for seed, house in enumerate(random_houses(30, 11, wind_m_s)):
        said, took_s = checked(house, None, wind_m_s, seed)
        assert said == "", (seed, house.n50_per_h, house.volume_m3, house.fitted)
        assert took_s < 12.0


@pytest.mark.walk
@pytest.mark.parametrize("wind_m_s", [0.0, 3.0])
def test_swapped_hoses_are_told_while_pressurizing_too(wind_m_s: float) -> None:
    told = 0
    # `run.py bench hoses` takes all thirty.
    for seed, house in enumerate(random_houses(8, 11, wind_m_s)):
        said, took_s = checked(house, None, wind_m_s, seed, Direction.PRESSURIZE)
        assert said == "", (seed, house.n50_per_h, house.volume_m3, house.fitted)
        assert took_s < 30.0
        said, _ = checked(house, hoses_swapped(True), wind_m_s, seed, Direction.PRESSURIZE)
        told += "seem to be swapped" in said
    # Nobody can tell where the exponent of the house is near 0.5: both then grow alike.
    assert told >= 6


def test_a_tap_in_the_jet_is_told_by_the_others() -> None:
    told = 0
    for seed, house in enumerate(random_houses(8, 11, 3.0)):
        said, took_s = checked(house, None, 3.0, seed, rigging=FOUR_TAPS)
        assert said == "", (seed, house.n50_per_h, house.volume_m3, house.fitted)
        assert took_s < 30.0
        said, _ = checked(house, hose_in_jet("p4", 15.0), 3.0, seed, rigging=FOUR_TAPS)
        told += "at outdoor tap 3 moves by" in said
    # `run.py bench hoses --fault "sound, 4 taps" --fault "jet, 4 taps"` takes thirty and two winds.
    assert told >= 5


@pytest.mark.walk
def test_a_single_tap_in_the_jet_parts_the_directions(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.5) as scene:
        scene.house.happen(hose_in_jet("p1", 15.0))
        scene.begin(replace(scene.plan(), directions=tuple(Direction)))
        scene.to_the_end()
        loaded = scene.job.load(1)
        found = asymmetry(analyse_record(loaded.record, loaded.test()).runs)
    assert found is not None
    assert "the outdoor hose in the jet while the fan blew out" in found.cause.words


def test_taps_by_themselves() -> None:
    def step(first: float, *further: float, apart_pa: float = 0.0) -> FanStep:
        mean = Response(0.0, (first + sum(further)) / (1 + len(further)), 0.0)
        taps = tuple((number, Response(0.0, rise, 0.0)) for number, rise in enumerate(further, 2))
        return FanStep(mean, None, taps, apart_pa=apart_pa)

    assert judge_taps(step(20.0)) is None
    assert judge_taps(step(20.0, 20.5, 19.5, 20.0)) is None
    first = judge_taps(step(14.0, 20.0, 20.2, 19.9))
    assert first is not None
    assert (first.fault, "tap 1 moves by 14 Pa, at the others by 20:" in first.sentence) == (HoseFault.JET, True)
    assert judge_taps(step(14.0, 20.0, 20.2, 19.9, apart_pa=1.5)) is None
    third = judge_taps(step(20.0, 20.0, 25.0))
    assert third is not None
    assert "tap 3 moves by 25 Pa" in third.sentence


def test_growth_by_itself() -> None:
    def step(envelope_pa: float, element_pa: float) -> FanStep:
        return FanStep(Response(0.0, envelope_pa, 0.0), Response(0.0, element_pa, 0.0))

    # A house of exponent 0.65: with 1.5 times the flow 1.5**(1/0.65) times the pressure, and 2.25 times at the element.
    house, square = 1.5 ** (1 / 0.65), 1.5**2
    assert judge_growth(step(5.0, 20.0), step(5.0 * house, 20.0 * square)) is None
    swapped = judge_growth(step(20.0, 5.0), step(20.0 * square, 5.0 * house))
    assert swapped is not None
    assert swapped.fault is HoseFault.SWAPPED
    assert judge_growth(step(1.0, 5.0), step(3.0, 5.5)) is None
    assert judge_growth(FanStep(Response(0.0, 5.0, 0.0), None), step(9.0, 9.0)) is None


def fault(step: FanStep) -> HoseFault | None:
    doubt: Doubt | None = judge_hoses(step)
    return None if doubt is None else doubt.fault


def test_the_rules_by_themselves() -> None:
    sound, element = Response(0.0, 6.0, 0.1), Response(0.0, 20.0, 0.1)
    assert fault(FanStep(sound, element)) is None
    assert fault(FanStep(sound, None)) is None
    assert fault(FanStep(sound, Response(4.0, 24.0, 0.0))) is HoseFault.WET
    assert fault(FanStep(Response(0.0, 0.1, 0.0), Response(0.0, 0.1, 0.0))) is HoseFault.NOTHING
    assert fault(FanStep(sound, element, ((2, Response(0.0, 0.1, 0.0)),))) is HoseFault.OFF
    creeping = Response(0.0, 6.0, 1.5)
    assert fault(FanStep(creeping, element)) is HoseFault.PINCHED
    assert fault(FanStep(creeping, element, lag_s=8.0)) is None
    assert fault(FanStep(creeping, element, unrest_pa=3.0)) is None


def test_a_doubt_is_asked_and_going_on_all_the_same_is_written_down(clock: VirtualClock, tmp_path: Path) -> None:
    with a_scene(clock, tmp_path, wind_m_s=0.0, auto_answer=False) as scene:
        scene.begin()
        scene.until(lambda shown: shown.ask is not None)
        scene.engine.answer("safety", GO_ON)
        scene.house.happen(hose(ELEMENT, Hose.REVERSED))
        shown = scene.until(lambda shown: shown.ask is not None and shown.ask.id == "hoses")
        assert shown.ask is not None
        assert shown.ask.text.startswith("The flow element reads backwards")
        assert scene.house.world.speed == 0.0
        scene.engine.answer("hoses", CHECK_AGAIN)
        scene.until(lambda shown: shown.ask is None, 5.0)
        scene.until(lambda shown: shown.ask is not None)
        scene.engine.answer("hoses", ALL_THE_SAME)
        shown = scene.until(lambda shown: any(flag.id == "hoses" for flag in shown.flags), 5.0)
        assert [answer.choice for answer in scene.job.load(1).answers][-2:] == [CHECK_AGAIN, ALL_THE_SAME]


def test_a_plan_without_the_check_has_none() -> None:
    assert [step for step in walk(a_plan()) if isinstance(step, CheckHoses)]
    assert not [step for step in walk(replace(a_plan(), hose_check=False)) if isinstance(step, CheckHoses)]


def test_the_second_step_of_a_slow_tight_house_stays_below_the_usual_pressures() -> None:
    # A fan far too large for it: at 0.30 it holds 24 Pa, and the pressure follows the speed seconds later.
    house = random_houses(30, 501, 3.0)[11]
    seen: list[float] = []
    said, _ = checked(house, None, 3.0, 512, Direction.PRESSURIZE, watched=seen)
    assert said == ""
    assert 30.0 < max(seen) < 60.0
