"""How much to pour: one mL over one m² is one µm (a litre over a square metre is a millimetre)."""

from __future__ import annotations

from math import pi

import pytest

from studiowatch.studio.pieces import Piece, Shape
from studiowatch.studio.pouring import laid_of, pours, thickness, thinning
from studiowatch.studio.words import Level


def test_that_a_litre_makes_a_millimetre_on_a_square_metre() -> None:
    (pour,) = pours([1.0], wet_um=1000.0, density_kg_m3=1000.0)
    assert (pour.laid_mL, pour.poured_mL, pour.poured_g) == pytest.approx((1000.0, 1000.0, 1000.0))


def test_that_a_set_is_poured_panel_by_panel_and_a_round_face_by_its_circle() -> None:
    a_set = Piece(key="s", title="Set", width_cm=20, height_cm=50, shape=Shape.PANELS, panels=3)
    made = pours([a_set.panel_m2] * a_set.panels, wet_um=80.0, density_kg_m3=1025.0)
    assert [pour.poured_mL for pour in made] == pytest.approx([8.0] * 3)
    assert sum(pour.poured_g for pour in made) == pytest.approx(24.0 * 1.025)
    disc = Piece(key="r", title="Round", width_cm=40, height_cm=40, shape=Shape.ROUND)
    (pour,) = pours([disc.area_m2], wet_um=100.0, density_kg_m3=1000.0)
    assert pour.poured_mL == pytest.approx(100.0 * pi * 0.2**2)


def test_that_nothing_is_poured_for_the_brush_unless_it_is_said() -> None:
    (plain,) = pours([0.5], wet_um=100.0, density_kg_m3=1000.0)
    assert plain.poured_mL == plain.laid_mL
    (more,) = pours([0.5], wet_um=100.0, density_kg_m3=1000.0, allowance_pct=10.0)
    assert more.laid_mL == plain.laid_mL
    assert more.poured_mL == pytest.approx(55.0)
    assert laid_of(55.0, 10.0) == pytest.approx(50.0)


@pytest.mark.parametrize(
    ("laid_mL", "level"), [(75, Level.CALM), (75.5, Level.CAUTION), (100, Level.CAUTION), (100.5, Level.ACT)]
)
def test_that_thickness_is_a_caution_past_one_and_a_half_and_serious_past_twice_the_sheet(
    laid_mL: float, level: Level
) -> None:
    assert thickness(laid_mL=laid_mL, area_m2=0.5, sheet_wet_um=100.0).level is level


def test_that_much_thinning_is_told_and_a_little_is_not() -> None:
    assert thinning(10.0, thinner="water").words == ""
    assert thinning(12.0, thinner="water").level is Level.CAUTION
    far = thinning(30.0, thinner="thinner")
    assert far.level is Level.ACT
    assert far.words.startswith("30 % thinner")
