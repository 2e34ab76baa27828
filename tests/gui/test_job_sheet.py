"""The job sheet: what is typed becomes stored values, or one sentence beside its field."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from acquisition.job import JobDetails
from acquisition.plan import STANDARD_TARGETS_PA
from analysis.records import Air, Building, Direction
from analysis.units import Display
from gui.viewmodels.hints import hints, volume_worth
from gui.viewmodels.history import History
from gui.viewmodels.job_place import FieldPicture, JobSheetModel
from gui.viewmodels.sheet import FIELDS, Sheet, field_of, sheet_of
from tests.gui.fakes import AIR, BUILDING, COMMA, LIMIT, PLAN, RIG, SI, US, shown


def model(sheet: Sheet | None = None, tested: Building | None = None) -> JobSheetModel:
    return JobSheetModel(sheet or sheet_of(JobDetails("Mill Row 8"), PLAN), tested)


def field(of: JobSheetModel, field_id: str, display: Display = SI) -> FieldPicture:
    picture = of.picture(display, None, None, "", "")
    return next(item for item in picture.fields if item.id == field_id)


def test_every_field_shows_what_the_sheet_holds() -> None:
    sheet = model()
    assert field(sheet, "volume").text == "300"
    assert field(sheet, "volume", US).text == "10\u2009594.4"
    assert field(sheet, "indoor", US).text == "69.8"
    assert field(sheet, "limit", COMMA).text == "2"
    assert field(sheet, "targets").text == "60  50  40  30  20"
    assert field(sheet, "directions").text == "depressurize"


def test_what_is_typed_is_stored_in_si() -> None:
    sheet = model()
    assert sheet.commit("volume", "10000", US)
    assert sheet.sheet.plan.building.volume_m3 == pytest.approx(283.16847, rel=1e-6)  # 0.3048^3 m3, by definition
    assert sheet.commit("indoor", "68", US)
    assert sheet.sheet.plan.air.indoor_c == pytest.approx(20.0)
    assert sheet.commit("volume", "282,5", COMMA)
    assert sheet.sheet.plan.building.volume_m3 == 282.5
    assert sheet.commit("height", "16 ft", SI)
    assert sheet.sheet.plan.building.height_m == pytest.approx(4.8768)


@pytest.mark.parametrize("display", [SI, US, COMMA])
def test_leaving_a_field_as_it_is_changes_nothing(display: Display) -> None:
    sheet = model()
    before = sheet.sheet
    for item in FIELDS:
        assert not sheet.commit(item.id, item.text(before, display), display)
    assert sheet.sheet is before
    assert sheet.undo_label == ""


@pytest.mark.parametrize(
    ("name", "text", "sentence"),
    [
        ("volume", "-4", "Internal volume is -4: more than 0 m³ and at most 10\u2009000\u2009000 m³ is allowed."),
        ("indoor", "68", "Indoor temperature is 68: −60 °C to 60 °C is allowed."),
        ("name", "  ", "Name of the building is empty: a text is needed."),
        (
            "targets",
            "60,54,48",
            "Targets is 60,54,48: pressures with spaces between are needed, such as 60 50 40 30 20.",
        ),
        ("targets", "60 90", "Targets is 90 Pa: each from 5 to 75 Pa; the fan is stopped at 80 Pa."),
        ("targets", "50", "Targets is 50: 2 to 20 pressures with spaces between are needed."),
        ("limit", "0", "Limit is 0: a number greater than 0 is needed."),
    ],
)
def test_what_cannot_be_used_stays_with_one_sentence(name: str, text: str, sentence: str) -> None:
    sheet = model()
    before = sheet.sheet
    assert not sheet.commit(name, text, SI)
    assert sheet.sheet is before
    assert field(sheet, name).text == text
    assert field(sheet, name).error == sentence


def test_a_good_value_takes_the_error_away() -> None:
    sheet = model()
    sheet.commit("volume", "many", SI)
    assert field(sheet, "volume").error
    sheet.commit("volume", "310", SI)
    assert field(sheet, "volume").error == ""
    sheet.commit("volume", "many", SI)
    sheet.commit("volume", "310", SI)
    assert field(sheet, "volume").error == ""


@pytest.mark.parametrize("text", ["nan", "inf", "1e999", "--3", "3 3 3 m", "٣", "0x10", "1,2,3", "", "\0"])
@pytest.mark.parametrize("name", [item.id for item in FIELDS if item.kind == "number"])
def test_no_text_breaks_a_number_field(name: str, text: str) -> None:
    sheet = model()
    sheet.commit(name, text, SI)
    picture = field(sheet, name)
    assert picture.error == "" or picture.error.endswith(".")


def test_targets_are_taken_highest_first() -> None:
    sheet = model()
    assert sheet.commit("targets", "20; 60 40", SI)
    assert sheet.sheet.plan.targets_pa == (60.0, 40.0, 20.0)


def test_the_directions_are_one_or_both() -> None:
    sheet = model()
    sheet.commit("directions", "both", SI)
    assert sheet.sheet.plan.directions == (Direction.DEPRESSURIZE, Direction.PRESSURIZE)
    assert field(sheet, "directions").text == "both"


def test_another_quantity_is_another_limit() -> None:
    sheet = model()
    sheet.commit("limit_quantity", "qe50_m3_h_m2", SI)
    assert field(sheet, "limit").text == ""
    assert field(sheet, "limit").unit == "m³/(h·m²)"
    sheet.commit("limit", "3", SI)
    assert sheet.sheet.plan.limit == replace(LIMIT, quantity="qe50_m3_h_m2", value=3.0)
    sheet.commit("limit", "", SI)
    assert sheet.sheet.plan.limit is None


def test_an_optional_field_may_be_emptied() -> None:
    sheet = model()
    assert sheet.commit("wind", "", SI)
    assert sheet.sheet.plan.air.wind_m_s is None
    assert not sheet.commit("indoor", "", SI)
    assert field(sheet, "indoor").error


def test_the_building_is_called_as_the_job() -> None:
    sheet = model()
    sheet.commit("name", "  Mill   Row 9 ", SI)
    assert sheet.sheet.details.name == sheet.sheet.plan.building.name == "Mill Row 9"


def test_a_reason_is_asked_for_once_a_tested_building_changes() -> None:
    sheet = model(tested=BUILDING)
    assert "reason" not in [item.id for item in sheet.picture(SI, None, None, "", "").fields]
    sheet.commit("volume", "310", SI)
    assert "reason" in [item.id for item in sheet.picture(SI, None, None, "", "").fields]


def test_what_the_rig_measures_is_said_beside_the_field() -> None:
    notes = {item.id: item.note for item in model().picture(SI, RIG, None, "", "").fields}
    assert "measures" in notes["indoor"]
    assert notes["outdoor"] == ""


EDITS = st.lists(
    st.one_of(
        st.tuples(st.just("volume"), st.integers(1, 9999).map(str)),
        st.tuples(st.just("stage"), st.text(max_size=12)),
        st.tuples(st.just("limit"), st.one_of(st.just(""), st.integers(1, 9).map(str))),
        st.tuples(st.just("directions"), st.sampled_from(["both", "pressurize", "depressurize"])),
        st.tuples(st.just("outdoor"), st.integers(-90, 90).map(str)),
    ),
    max_size=12,
)


@given(EDITS)
def test_undoing_everything_gives_the_first_sheet_and_redoing_the_last(edits: list[tuple[str, str]]) -> None:
    sheet = model()
    first = sheet.sheet
    done = sum(sheet.commit(name, text, SI) for name, text in edits)
    last = sheet.sheet
    assert sum(iter(sheet.undo, False)) == done
    assert sheet.sheet == first
    assert sum(iter(sheet.redo, False)) == done
    assert sheet.sheet == last


def test_an_edit_after_undo_forgets_what_was_undone() -> None:
    history: History[int] = History()
    history.note("one", 0, 1)
    history.note("two", 1, 2)
    assert history.undo() == 1
    history.note("three", 1, 3)
    assert history.redo() is None
    assert (history.undo_label, history.undo(), history.undo(), history.undo()) == ("three", 1, 0, None)


def test_the_history_names_what_would_be_undone() -> None:
    sheet = model()
    sheet.commit("volume", "310", SI)
    assert sheet.undo_label == "internal volume"
    sheet.undo()
    assert (sheet.undo_label, sheet.redo_label) == ("", "internal volume")


@pytest.mark.parametrize(
    ("building", "air", "where"),
    [
        (replace(BUILDING, floor_area_m2=20.0), AIR, "floor"),
        (replace(BUILDING, envelope_area_m2=100.0), AIR, "envelope"),
        (replace(BUILDING, envelope_area_m2=2000.0), AIR, "envelope"),
        (replace(BUILDING, height_m=1.0), AIR, "height"),
        (BUILDING, Air(55.0, 11.0), "indoor"),
        (BUILDING, Air(20.0, 33.0), "outdoor"),
        (replace(BUILDING, altitude_m=1500.0), Air(20.0, 5.0, barometric_pa=101_325.0), "barometer"),
        (BUILDING, replace(AIR, wind_m_s=9.0), "wind"),
    ],
)
def test_what_looks_odd_is_said_beside_its_field(building: Building, air: Air, where: str) -> None:
    found = hints(sheet_of(JobDetails("x"), replace(PLAN, building=building, air=air)), SI)
    assert where in [hint.field for hint in found]
    assert all(hint.sentence.endswith((".", "?")) for hint in found)


def test_a_usual_sheet_is_left_in_peace() -> None:
    assert hints(sheet_of(JobDetails("x"), PLAN), SI) == ()


def test_a_ball_is_the_least_surface_of_a_volume() -> None:
    """A ball of 300 m3 has 216.7 m2 of surface (4 pi r2, geometry)."""
    just_less, just_more = replace(BUILDING, envelope_area_m2=216.0), replace(BUILDING, envelope_area_m2=217.5)
    assert [h.field for h in hints(sheet_of(JobDetails("x"), replace(PLAN, building=just_less)), SI)] == ["envelope"]
    assert hints(sheet_of(JobDetails("x"), replace(PLAN, building=just_more)), SI) == ()


def test_five_percent_of_volume_is_told_as_what_it_moves() -> None:
    sheet = sheet_of(JobDetails("x"), PLAN)
    assert volume_worth(sheet, None, SI) == "5 % of volume moves the air change rate by 5 %."
    words = volume_worth(sheet, shown().result, SI)
    assert words.startswith("5 % of volume moves the result by 0.09: 1.7")
    large = sheet_of(JobDetails("x"), replace(PLAN, method="astm-e3158"))
    assert volume_worth(large, shown().result, SI) == "5 % of volume moves the air change rate by 5 %."
    bare = replace(PLAN, building=replace(BUILDING, volume_m3=None))
    assert volume_worth(sheet_of(JobDetails("x"), bare), None, SI).startswith("Without a volume")


def test_fields_have_distinct_ids_and_the_standard_targets_pass() -> None:
    assert len({item.id for item in FIELDS}) == len(FIELDS)
    sheet = sheet_of(JobDetails("x"), replace(PLAN, targets_pa=STANDARD_TARGETS_PA))
    targets = field_of("targets")
    assert targets.typed(sheet, targets.text(sheet, SI), SI) == sheet


def test_another_method_brings_its_own_sequence_and_can_be_undone() -> None:
    model = JobSheetModel(sheet_of(JobDetails("Mill Row 8"), PLAN), None)
    assert model.commit("method", "resnet-380-single", SI)
    plan = model.sheet.plan
    assert (plan.targets_pa, plan.directions, plan.average_s) == ((50.0,), (Direction.DEPRESSURIZE,), 30.0)
    shown = {field.id for field in model.picture(SI, None, None, "", "").fields}
    assert "preparation" not in shown
    assert model.undo()
    assert model.sheet.plan == PLAN
    assert model.commit("preparation", "2", SI)
    assert model.commit("method", "astm-e3158", SI)
    assert model.sheet.plan.preparation == ""
    states = next(field for field in model.picture(SI, None, None, "", "").fields if field.id == "preparation").choices
    assert [name for name, _ in states] == ["", "envelope", "operational"]


def test_a_method_of_one_point_takes_one_target_and_several_readings_at_one() -> None:
    model = JobSheetModel(sheet_of(JobDetails("Mill Row 8"), PLAN.by_method("astm-e1827-single")), None)
    assert model.commit("targets", "50", SI)
    assert model.commit("targets", "50 50 50", SI)
    assert model.sheet.plan.targets_pa == (50.0, 50.0, 50.0)
