"""Still air over a large piece: the film has one temperature, however long the steps are."""

from __future__ import annotations

import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import advance, lay
from studiowatch.coats.stages import Orientation, Stage
from studiowatch.physics.air import Air

HOUR_S = 3600.0


def touch_dry_h(
    sheet: DataSheet,
    *,
    side_m: float,
    air_speed_m_s: float,
    step_s: float,
    humidity_pct: float = 50.0,
    orientation: Orientation = Orientation.VERTICAL,
) -> float:
    air = Air(temperature_C=20.0, humidity_pct=humidity_pct, air_speed_m_s=air_speed_m_s)
    film = lay(sheet, anchor(sheet), wet_um=80.0, side_m=side_m, orientation=orientation)
    while film.reached_s(Stage.DRY_TO_TOUCH) is None:
        film, _ = advance(film, air, step_s)
    return (film.reached_s(Stage.DRY_TO_TOUCH) or 0.0) / HOUR_S


@pytest.mark.parametrize("side_m", [0.6, 1.0, 1.5])
@pytest.mark.parametrize("air_speed_m_s", [0.0, 0.05])
def test_that_an_upright_piece_in_still_air_dries_alike_in_any_steps(
    gloss: DataSheet, side_m: float, air_speed_m_s: float
) -> None:
    fine = touch_dry_h(gloss, side_m=side_m, air_speed_m_s=air_speed_m_s, step_s=10.0)
    for step_s in (60.0, 6 * HOUR_S):
        coarse = touch_dry_h(gloss, side_m=side_m, air_speed_m_s=air_speed_m_s, step_s=step_s)
        assert coarse == pytest.approx(fine, rel=0.01)


@pytest.mark.parametrize("side_m", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("humidity_pct", [30.0, 50.0, 85.0])
def test_that_a_piece_lying_in_still_air_dries_nearly_alike_in_any_steps(
    gloss: DataSheet, side_m: float, humidity_pct: float
) -> None:
    # the film settles where its air is about to turn from rising to lingering; laws that jump there are 13 % apart
    def lying_h(step_s: float) -> float:
        return touch_dry_h(
            gloss,
            side_m=side_m,
            air_speed_m_s=0.0,
            step_s=step_s,
            humidity_pct=humidity_pct,
            orientation=Orientation.FACE_UP,
        )

    fine_h = lying_h(10.0)
    for step_s in (60.0, 6 * HOUR_S):
        assert lying_h(step_s) == pytest.approx(fine_h, rel=0.05)
