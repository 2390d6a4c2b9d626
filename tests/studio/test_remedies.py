"""Remedies: least invasive first, and nothing that can hurt without its caution."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.data_sheet import Kind
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.remedies import CONSERVATOR, remedies, remedy
from studiowatch.studio.review_causes import Cause

SHEETS = built_in_sheets()
GLOSS, SOLVENT = SHEETS["gloss-waterborne"], SHEETS["gloss-solventborne"]
CLOUDY = Outcome.MILKY_ALL_OVER


@pytest.mark.parametrize("cause", Cause)
@pytest.mark.parametrize("sheet", [GLOSS, SOLVENT], ids=lambda sheet: sheet.name)
def test_that_removal_comes_late_with_all_its_cautions_and_never_where_time_is_enough(cause: Cause, sheet) -> None:  # noqa: ANN001
    found = remedy(cause, sheet, CLOUDY)
    removal = [place for place, step in enumerate(found.steps) if "taking the varnish off" in step]
    if cause is Cause.STILL_CLEARING:
        assert not removal
        return
    assert removal == [len(found.steps) - 2]
    assert found.steps[-1] == CONSERVATOR
    assert sheet.removable_with in found.steps[removal[0]]
    assert "sheet first" in found.steps[removal[0]]
    cautions = " ".join(found.cautions)
    for hazard in ("open windows", "gloves", "no flame", "catch fire by themselves", "product's own sheet"):
        assert hazard in cautions


@pytest.mark.parametrize("cause", Cause)
def test_that_nobody_is_told_to_shut_a_room_with_solvent_vapour_in_it(cause: Cause) -> None:
    found = remedy(cause, SOLVENT, CLOUDY)
    assert "in still air" not in " ".join(found.steps)
    assert any("fresh air coming" in caution for caution in found.cautions)


@pytest.mark.parametrize("cause", Cause)
def test_that_sanding_is_never_named_without_its_caution(cause: Cause) -> None:
    found = remedy(cause, GLOSS, CLOUDY)
    sands = any("sanding" in step for step in found.steps)
    assert sands == any("Sanding dust" in caution for caution in found.cautions)


@pytest.mark.parametrize("outcome", [None, Outcome.CLEAR])
def test_that_a_coat_that_did_not_cloud_is_left_in_peace(outcome: Outcome | None) -> None:
    found = remedy(Cause.DAMP_AIR, GLOSS, outcome)
    assert found.steps[0].startswith("Nothing needs doing")
    assert found.cautions == ()
    assert remedies([Cause.DAMP_AIR], GLOSS, outcome) == ()


def test_that_a_sheet_that_names_no_remover_is_not_made_to() -> None:
    silent = replace(GLOSS, removable_with="")
    assert silent.kind is Kind.WATERBORNE
    assert not any("Its sheet names" in step for step in remedy(Cause.UNKNOWN, silent, CLOUDY).steps)
