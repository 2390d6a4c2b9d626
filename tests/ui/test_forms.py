"""What is typed: taken, or told in one sentence what is allowed."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.coats.stages import Orientation
from studiowatch.service.bench import AMOUNT, THINNED_pct
from studiowatch.studio.hazards import STANDING_CAUTION
from studiowatch.ui.models.coat_form import (
    SheetOption,
    Unit,
    amount_doubt,
    cautions_of,
    read_coat,
    sheet_options,
    short_title,
    suggested_amount,
    suggestion_words,
    thickness_of,
)
from studiowatch.ui.models.forms import FormError, number
from studiowatch.ui.models.piece_form import PieceTyped, read_registration
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.trade_order import in_trade_order

from .scenes import HERONS, NOW_MS, ORCHARD, SHEETS

ISOLATION, GLOSS, SATIN, SOLVENT = SHEETS


def typed(text: str) -> float:
    return number(text, field="w", name="The width", unit="cm", low=1, high=500, example="60")


@pytest.mark.parametrize(
    ("text", "value"), [("60", 60.0), (" 60,5 ", 60.5), ("1", 1.0), ("5e2", 500.0), ("60 cm", 60.0)]
)
def test_that_a_point_a_comma_and_its_own_unit_are_taken(text: str, value: float) -> None:
    assert typed(text) == value


@pytest.mark.parametrize("text", ["", "  ", "sixty", "0", "501", "-3", "nan", "inf", "60 in", "60 cm cm", "1.000,5"])
def test_that_anything_else_is_one_sentence_with_what_is_allowed(text: str) -> None:
    with pytest.raises(FormError) as told:
        typed(text)
    said = str(told.value)
    assert said.startswith("The width")
    assert "from 1 to 500" in said
    assert text.strip() in said
    assert said.endswith(".")
    assert said.count(". ") == 0


@given(st.text(max_size=30))
def test_that_any_text_gives_a_number_in_range_or_a_sentence(text: str) -> None:
    try:
        value = typed(text)
    except FormError:
        return
    assert 1 <= value <= 500


def piece(**changed: object) -> object:
    fields = {
        "title": "Gate",
        "width": "60",
        "height": "90",
        "due": None,
        "support": "canvas",
        "orientation": Orientation.FACE_UP,
        "sheets": (),
    }
    return read_registration(PieceTyped(**{**fields, **changed}), NOW_MS)


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"title": "  "}, "title"),
        ({"title": "x" * 121}, "title"),
        ({"width": "0"}, "width"),
        ({"height": "tall"}, "height"),
    ],
)
def test_that_the_field_in_fault_is_named(changed: dict[str, str], field: str) -> None:
    with pytest.raises(FormError) as told:
        piece(**changed)
    assert told.value.field == field


def test_that_the_planned_coat_comes_first_and_any_sheet_may_be_laid() -> None:
    options = sheet_options(ORCHARD, SHEETS)
    assert (options[0].coat_key, options[0].sheet) == ("o3", GLOSS)
    assert [one.sheet for one in options[1:]] == list(SHEETS)
    assert all(one.coat_key is None for one in options[1:])


def test_that_the_suggested_amount_is_area_times_wet_thickness() -> None:
    # 0.60 m x 0.90 m x 100e-6 m = 5.4e-5 m3 = 54 mL; at 1040 kg/m3 that is 56.16 g.
    assert suggested_amount(ORCHARD, GLOSS, Unit.ML) == pytest.approx(54.0)
    assert suggested_amount(ORCHARD, GLOSS, Unit.GRAMS) == pytest.approx(56.16)
    assert suggestion_words(ORCHARD, GLOSS) == "54 mL or 56 g makes the sheet's 100 µm on 0.54 m²"
    assert suggestion_words(HERONS, ISOLATION).startswith("8.1 mL")


@pytest.mark.parametrize(
    ("amount", "part", "tone"),
    [
        ("", "as thick as the sheet says", Tone.MUTED),
        ("54", "100 µm wet, 1.0 × the sheet", Tone.INK),
        ("27", "50 µm wet", Tone.INK),
        ("90", "thick, it will dry slowly", Tone.CAUTION),
        ("120", "far too thick", Tone.ACT),
        ("a lot", "", Tone.MUTED),
    ],
)
def test_that_the_amount_says_what_film_it_makes(amount: str, part: str, tone: Tone) -> None:
    made = thickness_of(ORCHARD, GLOSS, Unit.ML, amount)
    assert part in made.words
    assert made.tone is tone


def laid(option: SheetOption, **changed: object) -> object:
    fields = {"unit": Unit.ML, "amount": "", "thinned": "", "laid_ms": NOW_MS, "now_ms": NOW_MS}
    return read_coat(piece=ORCHARD, option=option, **{**fields, **changed})


def test_that_an_amount_far_beyond_the_sheet_is_doubted() -> None:
    option = sheet_options(ORCHARD, SHEETS)[0]
    # 0.54 m2 at 100 um is 54 mL: 5000 mL is 92.6 times that, 108 mL is twice that.
    said = amount_doubt(ORCHARD, GLOSS, laid(option, amount="5000"))
    assert said == "5000 mL is 93 times the sheet's film; did you mean 54? Press again if it is so much."
    assert amount_doubt(ORCHARD, GLOSS, laid(option, amount="108")) == ""
    assert amount_doubt(ORCHARD, GLOSS, laid(option)) == ""
    # 54 mL at 1.04 g/mL is 56.16 g.
    assert "did you mean 56" in amount_doubt(ORCHARD, GLOSS, laid(option, amount="1000", unit=Unit.GRAMS))


def test_that_the_form_takes_what_the_watch_takes_and_names_its_limits() -> None:
    option = sheet_options(ORCHARD, SHEETS)[0]
    most_mL, most_pct = AMOUNT["mL"][1], THINNED_pct[1]
    assert laid(option, amount=f"{most_mL:g}", thinned=f"{most_pct:g}").volume_mL == most_mL
    with pytest.raises(FormError, match=f"from 0 to {most_pct:g},"):
        laid(option, thinned=f"{most_pct + 1:g}")
    with pytest.raises(FormError, match=f"to {most_mL:g},"):
        laid(option, amount=f"{most_mL + 1:g}")


def test_that_sheets_are_offered_in_the_order_they_are_laid() -> None:
    paint = replace(GLOSS, name="paint-poured", title="Acrylic paint", sheen="", clear_film=False)
    matt = replace(SATIN, name="matt", title="Matt varnish", sheen="matt")
    shuffled = (matt, SATIN, GLOSS, paint, ISOLATION)
    assert in_trade_order(shuffled) == (paint, ISOLATION, GLOSS, SATIN, matt)


def test_that_a_long_title_is_cut_for_a_button() -> None:
    assert short_title("Kiln Light") == "Kiln Light"
    assert short_title("Copper Beech, First Frost and the Gate Left Open") == "Copper Beech, First Frost a…"


def test_that_an_empty_amount_is_left_to_the_sheet() -> None:
    command = laid(sheet_options(ORCHARD, SHEETS)[0])
    assert (command.volume_mL, command.grams, command.wet_um) == (None, None, None)


def test_that_one_measure_at_most_is_sent() -> None:
    option = sheet_options(ORCHARD, SHEETS)[0]
    assert (laid(option, amount="50").volume_mL, laid(option, amount="50").grams) == (50.0, None)
    grams = laid(option, amount="50", unit=Unit.GRAMS)
    assert (grams.volume_mL, grams.grams) == (None, 50.0)


@pytest.mark.parametrize(
    ("changed", "field"),
    [({"amount": "-4"}, "amount"), ({"thinned": "101"}, "thinned"), ({"laid_ms": NOW_MS + 1}, "laid")],
)
def test_that_what_cannot_be_laid_names_its_field(changed: dict[str, object], field: str) -> None:
    with pytest.raises(FormError) as told:
        laid(sheet_options(ORCHARD, SHEETS)[0], **changed)
    assert told.value.field == field


def test_that_a_solvent_sheet_is_never_without_cautions() -> None:
    said = " ".join(cautions_of(SOLVENT))
    for part in ("torch", "gloves", "Rags", STANDING_CAUTION):
        assert part in said
    assert cautions_of(SATIN)[0] == SATIN.cautions[0]


def test_that_the_standing_caution_is_said_once() -> None:
    own = ("This sheet is generic: the product's own sheet, local codes and licensed advice come first.",)
    assert cautions_of(replace(GLOSS, cautions=own)) == own
    assert cautions_of(GLOSS) == (STANDING_CAUTION,)
