"""The vapour of a solvent-borne coat, before its tin is opened."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from studiowatch.coats.vapour import VENTILATE, solvent_laid_g
from studiowatch.service.piece_view import SolventView
from studiowatch.service.sheet_shelf import SheetShelf, choice_of
from studiowatch.studio.hazards import STANDING_CAUTION
from studiowatch.ui.models.coat_form import Amounts, Unit, amounts_of, cautions_of
from studiowatch.ui.models.vapour_caution import vapour_cautions

from .scenes import EARLY, ORCHARD, SHEETS

GLOSS, SOLVENT = SHEETS[1], SHEETS[3]
USUAL = Amounts(usual_mL=37.8)


def told_g(sentence: str) -> float:
    found = re.match(r"([\d.]+) g of solvent", sentence)
    assert found is not None
    return float(found[1])


def test_that_to_ventilate_stands_first_and_the_room_is_said_to_be_assumed() -> None:
    first, estimate = vapour_cautions(EARLY, SOLVENT, USUAL)
    assert first == VENTILATE
    assert first.startswith("Ventilate first")
    assert estimate.startswith("17.7 g of solvent, assuming a room of 30 m³ with its windows shut.")


def test_that_to_ventilate_is_said_once_and_even_where_nothing_can_be_estimated() -> None:
    own = ("This sheet is generic: local codes come first.", "Ventilate: fresh air through the room.", "Gloves.")
    assert cautions_of(replace(SOLVENT, cautions=own)) == (own[0], own[2])
    assert vapour_cautions(replace(EARLY, solvents=()), SOLVENT, USUAL) == (VENTILATE,)


def test_that_the_estimate_is_the_mass_balance_of_a_mixed_room() -> None:
    # 17.7 g leave evenly within 1 h into 30 m³ whose air is changed 0.3 times an hour: c = G/(nV) (1 - exp(-n t)) =
    # 17 700 mg/h / (0.3/h * 30 m³) * (1 - exp(-0.3)) = 509.7 mg/m³, 1.5 times 350 mg/m³
    _, estimate = vapour_cautions(EARLY, SOLVENT, USUAL)
    assert "about 510 mg/m³, 1.5 times the limit of 350 mg/m³" in estimate
    assert "Too much to breathe" in estimate


def test_that_twice_the_amount_gives_twice_the_solvent() -> None:
    _, estimate = vapour_cautions(EARLY, SOLVENT, replace(USUAL, times=2.0))
    assert told_g(estimate) == pytest.approx(2 * 17.7)


@pytest.mark.parametrize("thinned_pct", [0.0, 10.0, 60.0])
def test_that_thinner_is_part_of_the_vapour(thinned_pct: float) -> None:
    sheet = SheetShelf.open().get("gloss-solventborne")
    whole = solvent_laid_g(sheet, wet_um=sheet.wet_um, area_m2=0.54)
    truth = solvent_laid_g(sheet, wet_um=2 * sheet.wet_um, area_m2=0.54, thinned_pct=thinned_pct)
    piece = replace(ORCHARD, solvents=(SolventView(sheet=sheet.name, solvent_g=whole, over_h=1.0),))
    typed = amounts_of(piece, choice_of(sheet), Unit.ML, f"{0.54 * 2 * sheet.wet_um}", f"{thinned_pct}")
    _, estimate = vapour_cautions(piece, choice_of(sheet), typed)
    assert told_g(estimate) == pytest.approx(truth, abs=0.06)


@pytest.mark.parametrize("room_C", [-60.0, -10.0, 21.0, 49.0, 90.0])
def test_that_no_room_keeps_the_caution_away(room_C: float) -> None:
    assert told_g(vapour_cautions(EARLY, SOLVENT, USUAL, room_C)[1]) == 17.7


def test_that_a_water_borne_coat_has_no_vapour_to_caution_of() -> None:
    assert vapour_cautions(EARLY, GLOSS, USUAL) == ()
    assert cautions_of(GLOSS) == (STANDING_CAUTION,)


@pytest.mark.parametrize(("amount", "thinned"), [("a lot", "0"), ("54", "much"), ("", "")])
def test_that_what_cannot_be_read_counts_as_the_sheets_own(amount: str, thinned: str) -> None:
    assert amounts_of(EARLY, SOLVENT, Unit.ML, amount, thinned) == Amounts(usual_mL=pytest.approx(37.8))
