from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from studiowatch.coats.anchoring import REFERENCE_AIR, REFERENCE_SIDE_M, anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import sample
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import Product

EXACT_H = 1e-3  # h, as the specification of the anchoring has it


def at_reference(sheet: DataSheet, *, step_s: float, until_s: float) -> Film:
    film = lay(sheet, anchor(sheet), wet_um=sheet.wet_um, side_m=REFERENCE_SIDE_M)
    while film.elapsed_s < until_s:
        film, _ = advance(film, REFERENCE_AIR, step_s)
    return film


@pytest.mark.parametrize("step_s", [1.0, 7.0, 60.0, 300.0, 1800.0])
def test_that_the_sheets_times_come_back_at_the_sheets_conditions(gloss: DataSheet, step_s: float) -> None:
    film = at_reference(gloss, step_s=step_s, until_s=6 * 3600.0)
    assert film.reached_s(Stage.DRY_TO_TOUCH) == pytest.approx(40.0 * 60.0, abs=EXACT_H * 3600.0)
    assert film.reached_s(Stage.CLEAR) == pytest.approx(2.0 * 3600.0, abs=EXACT_H * 3600.0)
    assert film.reached_s(Stage.DRY_TO_RECOAT) == pytest.approx(5.0 * 3600.0, abs=EXACT_H * 3600.0)


def test_that_the_sheets_cure_comes_back_at_the_sheets_conditions(gloss: DataSheet) -> None:
    film = at_reference(gloss, step_s=600.0, until_s=11 * 86400.0)
    assert film.reached_s(Stage.CURED) == pytest.approx(10.0 * 86400.0, abs=EXACT_H * 3600.0)


def test_that_every_draw_returns_its_own_sheet_times(gloss: DataSheet) -> None:
    draws = sample(40, 3).in_reference_room()
    film = lay(gloss, anchor(gloss, draws), wet_um=gloss.wet_um, side_m=REFERENCE_SIDE_M)
    film, _ = advance(film, REFERENCE_AIR, 40 * 86400.0)
    for stage, hours in ((Stage.DRY_TO_TOUCH, 40.0 / 60.0), (Stage.CLEAR, 2.0), (Stage.DRY_TO_RECOAT, 5.0)):
        reached_h = film.state.reached[ROW[stage]] / 3600.0
        np.testing.assert_allclose(reached_h, hours * draws.sheet_time_factor, atol=EXACT_H)


def test_that_a_slow_sheet_comes_back_in_every_draw(gloss: DataSheet) -> None:
    # draws touch-dry many hours apart: the times of the first must not suffer from waiting for the last
    slow = replace(gloss, wet_um=900.0, dry_um=324.0, touch_dry_min=480.0, clear_h=9.0, recoat_h=24.0)
    draws = sample(40, 3).in_reference_room()
    film, _ = advance(
        lay(slow, anchor(slow, draws), wet_um=900.0, side_m=REFERENCE_SIDE_M), REFERENCE_AIR, 40 * 86400.0
    )
    for stage, hours in ((Stage.DRY_TO_TOUCH, 8.0), (Stage.CLEAR, 9.0), (Stage.DRY_TO_RECOAT, 24.0)):
        reached_h = film.state.reached[ROW[stage]] / 3600.0
        np.testing.assert_allclose(reached_h, hours * draws.sheet_time_factor, rtol=1e-3)


def test_that_a_poured_sheet_comes_back_in_every_draw(gloss: DataSheet) -> None:
    # two millimetres take a day: their steps are of minutes, and end a draw's time a few seconds off
    poured = replace(
        gloss, volume_solids=0.3, wet_um=2000.0, dry_um=600.0, touch_dry_min=1440.0, clear_h=25.0, recoat_h=48.0
    )
    draws = sample(64, 1).in_reference_room()
    laid = lay(poured, anchor(poured, draws), wet_um=2000.0, side_m=REFERENCE_SIDE_M)
    film, _ = advance(laid, REFERENCE_AIR, 40 * 86400.0)
    reached_h = film.state.reached[ROW[Stage.DRY_TO_TOUCH]] / 3600.0
    np.testing.assert_allclose(reached_h, 24.0 * draws.sheet_time_factor, rtol=1e-3)


def test_that_a_sheet_that_no_air_could_dry_so_fast_is_doubted_in_every_draw(gloss: DataSheet) -> None:
    # a centimetre of what is nearly water, and dry within two days
    flood = replace(
        gloss, volume_solids=0.05, wet_um=10_000.0, dry_um=500.0, touch_dry_min=2880.0, clear_h=50.0, recoat_h=96.0
    )
    tied = anchor(flood, sample(16))
    assert not tied.agrees
    assert "far shorter" in tied.sentence


def test_that_a_plausible_sheet_agrees(gloss: DataSheet) -> None:
    tied = anchor(gloss)
    assert tied.agrees
    assert tied.sentence == ""
    assert 0.5 <= tied.kappa <= 2.5


@pytest.mark.parametrize(("touch_dry_min", "word"), [(100.0, "longer"), (3.0, "shorter")])
def test_that_times_and_thickness_that_disagree_are_told(gloss: DataSheet, touch_dry_min: float, word: str) -> None:
    tied = anchor(replace(gloss, touch_dry_min=touch_dry_min))
    assert not tied.agrees
    assert f"touch-dry in {touch_dry_min:g} min is far {word}" in tied.sentence
    assert "90 µm" in tied.sentence
    assert "0.5 to 2.5" in tied.sentence


def test_that_slower_sheets_get_a_smaller_kappa(gloss: DataSheet) -> None:
    kappas = [anchor(replace(gloss, touch_dry_min=minutes)).kappa for minutes in (30.0, 40.0, 50.0, 60.0)]
    assert all(quick > slow for quick, slow in pairwise(kappas))


def test_that_an_anchor_is_found_once(gloss: DataSheet) -> None:
    assert anchor(gloss) is anchor(replace(gloss))


def test_that_more_draws_leave_the_nominal_run_as_it_is(gloss: DataSheet) -> None:
    alone, many = anchor(gloss).product, anchor(gloss, sample(16, 5)).product
    assert isinstance(alone, Product)
    assert isinstance(many, Product)
    # 0.1 %: the accuracy stated for the steps, whose length follows the fastest draw
    assert many.kappa[0] == pytest.approx(alone.kappa[0], rel=1e-3)
    assert many.recoat_age_s[0] == pytest.approx(alone.recoat_age_s[0], rel=1e-3)
