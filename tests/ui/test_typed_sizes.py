"""Sizes, films and volumes as they are typed and shown: in the unit that she chose, or in one that she writes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.service.piece_orders import SIDE_cm
from studiowatch.speech.units import METRIC, US, Numbers, Units, choose
from studiowatch.studio.pieces import Coat, Shape
from studiowatch.ui.models.coat_form import Unit, read_coat, sheet_options, thickness_of
from studiowatch.ui.models.correction_form import Measure, offered_measures, read_correction
from studiowatch.ui.models.correction_form import shown_of as coat_shown
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.measures import FILMS_UM, LENGTHS_CM, film_unit, length_unit, measured
from studiowatch.ui.models.piece_form import (
    PieceTyped,
    read_amendment,
    read_registration,
    shown_of,
    size_names,
)

from .scenes import NOW_MS, ORCHARD, SHEETS

ALL_UNITS = (METRIC, US, replace(METRIC, numbers=Numbers.COMMA), replace(US, numbers=Numbers.COMMA))
CM_PER_INCH, UM_PER_MIL, ML_PER_FL_OZ = 2.54, 25.4, 29.5735295625  # NIST SP 811 (2008) B.6; Handbook 44, appendix C


def side_cm(text: str) -> float:
    return measured(
        text, field="w", name="The width", known=LENGTHS_CM, ours=length_unit(), low=1.0, high=1000.0, example=60.0
    )


@pytest.mark.parametrize(
    ("text", "cm"),
    [
        ("40", 40.0),
        ("40,5", 40.5),
        ("40 cm", 40.0),
        ("400mm", 40.0),
        ("0,4 m", 40.0),
        ("16 in", 16 * CM_PER_INCH),
        ('16"', 16 * CM_PER_INCH),
        ("16.5 Zoll", 16.5 * CM_PER_INCH),
    ],
)
def test_that_a_side_is_read_in_the_unit_that_stands_behind_it(text: str, cm: float) -> None:
    assert side_cm(text) == pytest.approx(cm, rel=1e-12)


@pytest.mark.parametrize(("text", "cm"), [("16", 16 * CM_PER_INCH), ("16,5", 16.5 * CM_PER_INCH), ("40 cm", 40.0)])
def test_that_a_bare_side_is_read_in_the_chosen_unit(text: str, cm: float) -> None:
    choose(US)
    assert side_cm(text) == pytest.approx(cm, rel=1e-12)


@pytest.mark.parametrize("text", ["", "wide", "40 ft", "in", "16 in in", "4 0 cm", "nan cm"])
def test_that_what_is_no_size_is_refused_by_name(text: str) -> None:
    with pytest.raises(FormError, match="The width"):
        side_cm(text)


def test_that_a_film_is_read_in_both() -> None:
    def film_um(text: str) -> float:
        unit = film_unit()
        return measured(text, field="f", name="It", known=FILMS_UM, ours=unit, low=5.0, high=5000.0, example=1500.0)

    assert [film_um(text) for text in ("90", "90 µm", "90 um", "4 mil", "0,1 mm")] == pytest.approx(
        [90.0, 90.0, 90.0, 4 * UM_PER_MIL, 100.0]
    )
    choose(US)
    assert film_um("4") == pytest.approx(4 * UM_PER_MIL)


def typed_piece(width: str, height: str = "40 cm") -> PieceTyped:
    return PieceTyped(title="Kiln Light", width=width, height=height)


@pytest.mark.parametrize(
    ("units", "width", "sentence"),
    [
        (METRIC, "1001", "The width is 1001 cm: type a number from 1 to 1000, such as 60."),
        (US, "394", "The width is 394 in: type a number from 0.3937 to 393.7, such as 24."),
        (US, "1001 cm", "The width is 1001 cm: type a number from 1 to 1000, such as 60."),
    ],
)
def test_that_one_limit_holds_and_is_told_in_the_unit_of_what_was_typed(
    units: Units, width: str, sentence: str
) -> None:
    choose(units)
    with pytest.raises(FormError) as told:
        read_registration(typed_piece(width), NOW_MS)
    assert str(told.value) == sentence


@pytest.mark.parametrize("units", ALL_UNITS)
@pytest.mark.parametrize("side", [0, 1])
def test_that_a_side_at_the_limit_is_taken_by_the_form_as_by_the_command(units: Units, side: int) -> None:
    choose(units)
    limit = SIDE_cm[side] / units.length.cm
    command = read_registration(typed_piece(f"{limit:.4g}"), NOW_MS)
    assert SIDE_cm[0] <= command.width_cm <= SIDE_cm[1]


@given(
    width_cm=st.floats(min_value=SIDE_cm[0], max_value=SIDE_cm[1]),
    height_cm=st.floats(min_value=SIDE_cm[0], max_value=SIDE_cm[1]),
    units=st.sampled_from(ALL_UNITS),
)
def test_that_a_size_that_is_shown_and_kept_unchanged_stays_what_it_was(
    width_cm: float, height_cm: float, units: Units
) -> None:
    choose(units)
    shown = shown_of(replace(ORCHARD, width_cm=width_cm, height_cm=height_cm), NOW_MS)
    command = read_amendment(replace(shown, title="Other", kept_cm=None), shown, ORCHARD.key, NOW_MS)
    assert (command.width_cm, command.height_cm) == (width_cm, height_cm)


@given(width=st.decimals(min_value=1, max_value=390, places=2), units=st.sampled_from(ALL_UNITS))
def test_that_a_size_stands_again_as_she_typed_it(width: object, units: Units) -> None:
    choose(units)
    text = f"{float(str(width)):g}".replace(".", units.numbers.value)
    command = read_registration(typed_piece(text), NOW_MS)
    assert shown_of(replace(ORCHARD, width_cm=command.width_cm), NOW_MS).width == text


def test_that_the_sides_are_named_with_their_unit() -> None:
    assert size_names(Shape.RECTANGLE) == ("Width, cm", "Height, cm")
    choose(US)
    assert size_names(Shape.PANELS) == ("Width of each, in", "Height of each, in")


@given(
    volume_mL=st.floats(min_value=0.1, max_value=20_000.0),
    wet_um=st.floats(min_value=5.0, max_value=5_000.0),
    units=st.sampled_from(ALL_UNITS),
)
def test_that_a_correction_of_something_else_leaves_the_amount_as_it_is(
    volume_mL: float, wet_um: float, units: Units
) -> None:
    choose(units)
    poured = coat_shown(Coat(key="c", sheet="gloss", laid_ms=0, volume_mL=volume_mL))
    assert read_correction(replace(poured, thinned="5", kept=None), "c", NOW_MS, poured).volume_mL == volume_mL
    film = coat_shown(Coat(key="c", sheet="gloss", laid_ms=0, wet_um=wet_um))
    assert read_correction(replace(film, thinned="5", kept=None), "c", NOW_MS, film).wet_um == wet_um


def test_that_a_corrected_amount_is_read_in_her_unit() -> None:
    choose(US)
    assert offered_measures() == (Measure.SHEET, Measure.FLUID_OUNCES, Measure.GRAMS, Measure.MILS)
    shown = coat_shown(Coat(key="c", sheet="gloss", laid_ms=0, volume_mL=60.0))
    read = read_correction(replace(shown, amount="2"), "c", NOW_MS, shown)
    assert read.volume_mL == pytest.approx(2 * ML_PER_FL_OZ)
    mils = read_correction(replace(shown, measure=Measure.MILS, amount="4"), "c", NOW_MS, shown)
    assert mils.wet_um == pytest.approx(4 * UM_PER_MIL)


@pytest.mark.parametrize(
    ("unit", "amount", "volume_mL"),
    [(Unit.ML, "54", 54.0), (Unit.FLUID_OUNCES, "2", 2 * ML_PER_FL_OZ), (Unit.FLUID_OUNCES, "54 mL", 54.0)],
)
def test_that_what_is_poured_is_read_in_its_unit(unit: Unit, amount: str, volume_mL: float) -> None:
    option = sheet_options(ORCHARD, SHEETS)[0]
    command = read_coat(
        piece=ORCHARD, option=option, unit=unit, amount=amount, thinned="", laid_ms=NOW_MS, now_ms=NOW_MS
    )
    assert command.volume_mL == pytest.approx(volume_mL)
    assert command.grams is None


def test_that_the_same_amount_makes_the_same_film_in_either_unit() -> None:
    sheet = SHEETS[1]
    in_mL = thickness_of(ORCHARD, sheet, Unit.ML, f"{2 * ML_PER_FL_OZ}")
    assert thickness_of(ORCHARD, sheet, Unit.FLUID_OUNCES, "2") == in_mL
