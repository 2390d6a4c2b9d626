"""What can hurt at the step of laying: said where it bites, ventilation first, and never to shut a room."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product

import pytest

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.vapour import VENTILATE
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.hazards import STANDING_CAUTION, first_hazards, own_cautions

SHEETS = built_in_sheets()


def hazards(*, solvent: bool, sheet_cautions: Sequence[str], **first: object) -> tuple[str, ...]:
    """Return all that is said when a coat is laid, in the order in which it is shown."""
    return (*first_hazards(solvent=solvent, **first), *own_cautions(solvent=solvent, sheet_cautions=sheet_cautions))


def test_that_to_ventilate_comes_before_all_else_for_a_solvent_borne_coat() -> None:
    for vapour in ((), (VENTILATE, "35 g of solvent.")):
        assert hazards(solvent=True, sheet_cautions=(), vapour=vapour)[0] == VENTILATE


def test_that_a_torch_is_refused_by_name_where_solvent_is_near_and_cautioned_where_not() -> None:
    near = hazards(solvent=False, sheet_cautions=(), torch=True, vapour_near="gloss on Blue Ladder")
    assert near[0].startswith("No torch: gloss on Blue Ladder gives off solvent vapour")
    assert "extinguisher" in hazards(solvent=False, sheet_cautions=(), torch=True)[0]
    assert any(one.startswith("No torch for this coat") for one in hazards(solvent=True, sheet_cautions=(), torch=True))
    assert not any("orch" in one for one in hazards(solvent=False, sheet_cautions=()))


@pytest.mark.parametrize(("flash_C", "flammable"), [(23.0, True), (60.0, True), (60.5, False), (93.0, False)])
def test_that_a_flash_point_of_sixty_or_less_counts_as_flammable(flash_C: float, *, flammable: bool) -> None:
    # UN GHS, chapter 2.6: category 3 reaches to 60 °C
    told = next(one for one in hazards(solvent=True, sheet_cautions=(), flash_point_C=flash_C) if "Flash point" in one)
    assert ("counts as flammable" in told) == flammable


@pytest.mark.parametrize("sheet", SHEETS.values(), ids=SHEETS)
def test_that_every_product_defers_to_its_sheet_and_nobody_is_told_to_shut_the_room(sheet: object) -> None:
    for torch, near in product((False, True), ("", "gloss on Blue Ladder")):
        said = hazards(
            solvent=sheet.kind is Kind.SOLVENTBORNE,
            sheet_cautions=sheet.cautions,
            flash_point_C=sheet.flash_point_C,
            torch=torch,
            vapour_near=near,
        )
        assert any("sheet" in one and "local codes" in one for one in said)
        assert not any(word in one.lower() for one in said for word in ("shut the", "close the", "closed window"))
        assert len(said) == len(set(said))


def test_that_a_sheet_that_defers_itself_is_not_followed_by_a_second_such_line() -> None:
    own = "Follow the sheet, local codes and licensed advice."
    assert hazards(solvent=False, sheet_cautions=(own,)) == (own,)
    assert hazards(solvent=False, sheet_cautions=())[-1] == STANDING_CAUTION
