from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.anchoring import REFERENCE_AIR, anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.stages import Stage, Surface
from studiowatch.physics.air import Air

DAY_S = 86400.0


def painted(sheet: DataSheet, wet_um: float = 500.0) -> Film:
    return lay(sheet, anchor(sheet), wet_um=wet_um, side_m=0.4)


def after(film: Film, air: Air, days: float, *, step_s: float = DAY_S) -> Film:
    for _ in range(round(days * DAY_S / step_s)):
        film, _ = advance(film, air, step_s)
    return film


def test_that_the_sheets_times_come_back_at_the_sheets_conditions(paint_sheet: DataSheet) -> None:
    film = after(painted(paint_sheet), REFERENCE_AIR, 30.0)
    assert film.reached_s(Stage.DRY_TO_TOUCH) == pytest.approx(90.0 * 60.0)
    assert film.reached_s(Stage.CURED) == pytest.approx(20.0 * DAY_S)


def test_that_paint_dries_through_by_the_square_of_its_thickness(paint_sheet: DataSheet) -> None:
    # 1.13 H²/D with D = 9.5e-13 m²/s at 23 °C: 200 µm take 13.2 h; Crank's series for 95 %
    thin = after(painted(paint_sheet), REFERENCE_AIR, 30.0).reached_s(Stage.DRY_THROUGH)
    thick = after(painted(paint_sheet, 1000.0), REFERENCE_AIR, 30.0).reached_s(Stage.DRY_THROUGH)
    assert thin == pytest.approx(1.13 * 200e-6**2 / 9.5e-13, rel=1e-3)
    assert thick == pytest.approx(4.0 * 1.13 * 200e-6**2 / 9.5e-13, rel=1e-3)


def test_that_paint_of_many_solids_is_as_thick_as_they_are(paint_sheet: DataSheet) -> None:
    # 500 µm wet with 90 % of solids are 450 µm dry, which dry through in 1.13 H²/D: Crank (1975), eq. 4.18
    film = after(painted(replace(paint_sheet, volume_solids=0.9, dry_um=450.0)), REFERENCE_AIR, 30.0)
    assert film.layer.dry_m[0] == pytest.approx(450e-6)
    assert film.dry_um == pytest.approx(450.0)
    assert film.reached_s(Stage.DRY_THROUGH) == pytest.approx(1.13 * 450e-6**2 / 9.5e-13, rel=1e-3)
    solid = painted(replace(paint_sheet, volume_solids=1.0, dry_um=500.0))
    assert solid.water_g_m2 == 0.0


def test_that_dry_on_top_is_not_dry_below(paint_sheet: DataSheet) -> None:
    film = after(painted(paint_sheet, 2000.0), REFERENCE_AIR, 2.0)
    assert film.surface is Surface.DRY
    assert film.reached_s(Stage.DRY_THROUGH) is None
    assert film.reached_s(Stage.DRY_TO_RECOAT) is None


def test_that_paint_waits_for_both_its_sheet_and_its_depth(paint_sheet: DataSheet) -> None:
    thin = after(painted(paint_sheet, 250.0), REFERENCE_AIR, 30.0)
    assert thin.reached_s(Stage.DRY_TO_RECOAT) == pytest.approx(20.0 * 3600.0 / 4.0, rel=1e-6)
    thick = after(painted(paint_sheet, 2000.0), REFERENCE_AIR, 90.0)
    recoat_s, through_s = thick.reached_s(Stage.DRY_TO_RECOAT), thick.reached_s(Stage.DRY_THROUGH)
    assert recoat_s is not None
    assert through_s is not None
    assert recoat_s >= through_s


def test_that_paint_is_never_milky_and_never_marked(paint_sheet: DataSheet) -> None:
    film = after(painted(paint_sheet), Air(temperature_C=5.0, humidity_pct=95.0), 3.0)
    assert not film.milky
    assert film.below_mfft is None
    assert film.skinning == 0.0


def test_that_water_leaves_paint_from_full_to_nothing(paint_sheet: DataSheet) -> None:
    film = painted(paint_sheet)
    # 500 µm wet with 60 % of water of 998 kg/m³
    assert film.water_g_m2 == pytest.approx(500.0 * 0.6 * 0.998)
    later, last = after(film, REFERENCE_AIR, 0.1, step_s=8640.0), after(film, REFERENCE_AIR, 60.0)
    assert film.water_g_m2 > later.water_g_m2 > last.water_g_m2
    assert last.water_g_m2 == pytest.approx(0.0, abs=1e-6)


def test_that_cold_slows_paint_on_top_and_below(paint_sheet: DataSheet) -> None:
    def reached_s(air: Air, stage: Stage) -> float:
        reached = after(painted(paint_sheet), air, 60.0).reached_s(stage)
        assert reached is not None
        return reached

    cold = replace(REFERENCE_AIR, temperature_C=12.0)

    assert reached_s(cold, Stage.DRY_THROUGH) > reached_s(REFERENCE_AIR, Stage.DRY_THROUGH)
    assert reached_s(cold, Stage.DRY_TO_TOUCH) > reached_s(REFERENCE_AIR, Stage.DRY_TO_TOUCH)


def test_that_damp_air_holds_up_the_top_of_paint_and_not_its_depth(paint_sheet: DataSheet) -> None:
    def times_s(humidity_pct: float) -> tuple[float | None, float | None]:
        film = after(painted(paint_sheet), replace(REFERENCE_AIR, humidity_pct=humidity_pct), 60.0)
        return film.reached_s(Stage.DRY_TO_TOUCH), film.reached_s(Stage.DRY_THROUGH)

    (touch_s, through_s), (damp_touch_s, damp_through_s) = times_s(50.0), times_s(80.0)
    assert touch_s is not None
    assert damp_touch_s is not None
    assert damp_touch_s > touch_s
    # t95 = 1.13 H²/D, D = 9.5e-13 m²/s: Crank (1975), eq. 4.18 knows no humidity
    assert damp_through_s == pytest.approx(1.13 * 200e-6**2 / 9.5e-13, rel=1e-3)
    assert damp_through_s == through_s


def test_that_paint_is_not_called_dry_below_before_its_top_is_dry(paint_sheet: DataSheet) -> None:
    # 20 µm dry: by diffusion alone 1.13 H²/D is 8 min, and the top takes longer even by its square
    slow = replace(paint_sheet, touch_dry_min=5000.0)
    film = after(painted(slow, 50.0), REFERENCE_AIR, 5.0)
    touch_s = film.reached_s(Stage.DRY_TO_TOUCH)
    assert touch_s == pytest.approx(5000.0 * 60.0 / 100.0)
    assert film.reached_s(Stage.DRY_HARD) == film.reached_s(Stage.DRY_THROUGH) == touch_s
    wet = after(painted(slow, 50.0), replace(REFERENCE_AIR, humidity_pct=100.0), 5.0)
    assert wet.reached_s(Stage.DRY_THROUGH) is None


def test_that_the_length_of_the_steps_does_not_matter(paint_sheet: DataSheet) -> None:
    cool = Air(temperature_C=15.0, humidity_pct=60.0)
    fine, coarse = after(painted(paint_sheet), cool, 5.0, step_s=60.0), after(painted(paint_sheet), cool, 5.0)
    for stage in (Stage.SET_TO_TOUCH, Stage.DRY_TO_TOUCH, Stage.DRY_THROUGH):
        assert coarse.reached_s(stage) == pytest.approx(fine.reached_s(stage), rel=1e-4)
