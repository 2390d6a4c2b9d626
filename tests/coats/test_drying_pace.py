"""The pace of drying that the watch goes by."""

from __future__ import annotations

import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.drying_pace import pace_after
from studiowatch.coats.film import Film, advance, lay
from studiowatch.physics.air import Air
from studiowatch.service.sheet_shelf import built_in_sheets

CALM = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.05)
FAN = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.5)


@pytest.fixture(scope="module")
def gloss() -> DataSheet:
    return built_in_sheets()["gloss-waterborne"]


def dried(film: Film, pace: float, air: Air, seconds: float, step_s: float = 5.0) -> tuple[Film, float]:
    for _ in range(round(seconds / step_s)):
        after, _reached = advance(film, air, step_s)
        film, pace = after, pace_after(pace, film, after)
    return film, pace


@pytest.mark.parametrize("wet_um", [80.0, 120.0])
def test_that_a_sheets_own_coat_in_its_own_room_has_pace_one_and_a_thicker_one_more(
    gloss: DataSheet, wet_um: float
) -> None:
    # the Péclet number is in proportion to the thickness: A. F. Routh, W. B. Russel (1998), AIChE J. 44, 2088
    laid = lay(gloss, anchor(gloss), wet_um=wet_um, side_m=0.15)
    _, pace = dried(laid, 0.0, Air(temperature_C=23.0, humidity_pct=50.0, air_speed_m_s=0.1), 900.0)
    # after three times of averaging 5 % of the fresh coat's 0 still counts
    assert 0.93 * wet_um / 80.0 < pace < 1.03 * wet_um / 80.0


def test_that_who_walks_by_changes_little_and_a_fan_much(gloss: DataSheet) -> None:
    film, calm = dried(lay(gloss, anchor(gloss), wet_um=80.0, side_m=0.4), 0.0, CALM, 600.0)
    _, passed = dried(film, calm, FAN, 10.0)
    _, fanned = dried(film, calm, FAN, 900.0)
    assert calm < passed < 1.1 * calm < fanned


def test_that_a_packed_film_has_no_pace(gloss: DataSheet) -> None:
    film, pace = dried(lay(gloss, anchor(gloss), wet_um=80.0, side_m=0.4), 0.0, CALM, 6 * 3600.0, step_s=60.0)
    assert pace == 0.0
    assert not film.is_wet
