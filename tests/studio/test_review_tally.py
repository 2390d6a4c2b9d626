"""The tally of one coat, step by step: hours of damp, minutes of dew, and the figures that people are told."""

from __future__ import annotations

from dataclasses import replace
from math import e

import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.moist_air import dew_point
from studiowatch.studio.review_tally import Tally, nothing_met, tallied

from .review_scenes import GOOD, SHEETS

STEP_S = 600.0
DAMPISH = replace(GOOD, humidity_pct=60.0)
AGED = replace(DAMPISH, age_s=7 * 3600.0)


def laid(allowed_pct: float = 75.0) -> Film:
    """Return a gloss coat laid this moment, whose sheet allows so much humidity."""
    sheet = replace(SHEETS["gloss-waterborne"], max_humidity_pct=allowed_pct)
    return lay(sheet, anchor(sheet), wet_um=80.0, side_m=0.4)


def after(film: Film, air: Air, *, tally: Tally | None = None, seconds: float = STEP_S, **given: object) -> Tally:
    """Return the tally after one step of a film in an air."""
    then, _ = advance(film, air, seconds)
    return tallied(tally or nothing_met(1), film, then, air, **given)


@pytest.mark.parametrize(("over_pct", "times"), [(0.0, 1.0), (5.0, e), (-5.0, 1.0 / e), (20.0, 3.0)])
def test_that_an_hour_at_the_limit_counts_as_one_and_counts_by_how_far_the_air_is_over_it(
    over_pct: float, times: float
) -> None:
    # an hour counts as one at 8 % over what the sheet allows; e times as much 5 % above that, three times at most
    told = after(laid(allowed_pct=60.0 - 8.0 - over_pct), DAMPISH)
    assert told.damp_h.tolist() == pytest.approx([times * STEP_S / 3600.0], rel=1e-3)
    assert told.dew_min.tolist() == pytest.approx([0.0], abs=1e-3)  # the film is 3 °C above the dew point


@pytest.mark.parametrize(("over_dew_K", "minutes"), [(-2.0, 10.0), (0.3, 5.0), (2.0, 0.0)])
def test_that_dew_counts_by_the_minute_and_half_where_it_is_even_odds(over_dew_K: float, minutes: float) -> None:
    surface_C = float(dew_point(20.0, 60.0)) + over_dew_K
    told = after(laid(), DAMPISH, surface_C=surface_C)
    assert told.dew_min.tolist() == pytest.approx([minutes], abs=0.01)


def test_that_air_that_settles_as_dew_is_not_counted_as_damp_too() -> None:
    told = after(laid(allowed_pct=52.0), DAMPISH, surface_C=5.0)
    assert told.damp_h.tolist() == [0.0]


def test_that_dew_on_a_clear_coat_counts_half_until_it_is_ready_and_then_not_at_all() -> None:
    film = laid()
    while film.reached_s(Stage.CLEAR) is None:
        film, _ = advance(film, GOOD, STEP_S)
    assert film.reached_s(Stage.DRY_TO_RECOAT) is None
    assert after(film, DAMPISH, surface_C=5.0).dew_min.tolist() == pytest.approx([5.0], rel=1e-6)
    while film.reached_s(Stage.DRY_TO_RECOAT) is None:
        film, _ = advance(film, GOOD, STEP_S)
    assert after(film, DAMPISH, surface_C=5.0).dew_min.tolist() == [0.0]


def test_that_a_room_that_nobody_read_for_six_hours_accuses_nothing_and_is_counted_as_blind() -> None:
    blind = after(laid(allowed_pct=52.0), AGED, is_read=False, surface_C=5.0)
    assert (blind.damp_h.tolist(), blind.dew_min.tolist(), blind.pace.tolist()) == ([0.0], [0.0], [0.0])
    assert blind.blind_s == pytest.approx(STEP_S)
    assert after(laid(allowed_pct=52.0), DAMPISH).blind_s == 0.0


def test_that_what_people_are_told_of_the_wet_time_is_added_up() -> None:
    film = laid(allowed_pct=52.0)
    first, second = DAMPISH, Air(temperature_C=24.0, humidity_pct=40.0, air_speed_m_s=0.3)
    tally = after(film, first)
    film, _ = advance(film, first, STEP_S)
    tally = after(film, second, tally=tally, seconds=300.0)
    assert tally.wet_s == tally.forming_s == pytest.approx(900.0)
    assert tally.damp_s == pytest.approx(600.0)  # 60 % is more than the 52 % of its sheet, 40 % is not
    assert tally.warmth_C_s == pytest.approx(20.0 * 600.0 + 24.0 * 300.0)
    assert tally.humidity_pct_s == pytest.approx(60.0 * 600.0 + 40.0 * 300.0)
    assert tally.speed_m == pytest.approx(0.05 * 600.0 + 0.3 * 300.0)
    assert (tally.dampest_pct, tally.driest_pct) == (60.0, 40.0)
    assert (tally.fastest_m_s, tally.warmest_C) == (0.3, 24.0)
