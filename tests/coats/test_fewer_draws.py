"""Fewer draws of a film: the same film in those draws, spread as all of them are."""

from __future__ import annotations

import numpy as np
import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import sample
from studiowatch.coats.fewer_draws import spread_draws, with_draws
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.readiness import outlook
from studiowatch.physics.air import Air

ROOM = Air(temperature_C=20.0, humidity_pct=55.0)
HOUR_S = 3600.0


def stacked(sheet: DataSheet, hours: float) -> Film:
    """Return a coat over another that was laid some hours before it, itself as old."""
    tied = anchor(sheet, sample(64, 1))
    below, _ = advance(lay(sheet, tied, wet_um=sheet.wet_um, side_m=0.4), ROOM, hours * HOUR_S)
    film, _ = advance(lay(sheet, tied, wet_um=sheet.wet_um, side_m=0.4, over=below), ROOM, hours * HOUR_S)
    return film


@pytest.mark.parametrize("hours", [0.2, 5.0])
def test_that_each_draw_goes_on_as_it_would_among_all(gloss: DataSheet, hours: float) -> None:
    """Steps are as fine as the fastest draw among them needs: what differs is the film's step, well under 1 %."""
    film = stacked(gloss, hours)
    rows = np.array([0, 5, 40, 63, 5])
    whole = outlook(film, ROOM, horizon_s=96 * HOUR_S)
    few = outlook(with_draws(film, rows), ROOM, horizon_s=96 * HOUR_S)
    assert few.shape == (whole.shape[0], rows.size)
    assert few == pytest.approx(whole[:, rows], rel=0.01)
    assert few[:, 1] == pytest.approx(few[:, 4])


def test_that_what_a_film_holds_twice_stays_one(gloss: DataSheet) -> None:
    film = with_draws(stacked(gloss, 5.0), np.array([0, 1, 2]))
    assert len(film.anchor.draws) == 3
    assert film.anchor.product.draws is film.below[0].anchor.product.draws
    assert film.sheet is gloss


def test_that_the_draws_stand_for_equal_shares_of_the_weight() -> None:
    """By hand: eight draws of which the slowest four weigh three times as much; four stand for a quarter each."""
    times_s = np.array([0.0, 80, 10, 20, 70, 30, 60, 40, 50])
    weights = np.array([9.0, 3, 1, 1, 3, 1, 3, 1, 3])
    rows = spread_draws(times_s, weights, 5)
    assert rows[0] == 0
    # cumulative weights in order of time 10..80: 1 2 3 4 7 10 13 16; the middles of the quarters: 2 6 10 14
    assert times_s[rows[1:]].tolist() == [20.0, 50.0, 60.0, 80.0]


def test_that_draws_that_never_get_there_count_as_the_slowest() -> None:
    times_s = np.array([5.0, np.inf, 1.0, 2.0, np.inf])
    rows = spread_draws(times_s, np.ones(5), 5)
    assert sorted(times_s[rows[1:]]) == [1.0, 2.0, np.inf, np.inf]
