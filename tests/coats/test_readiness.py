from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import sample
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.readiness import Ready, outlook, ready_at, ready_by_s, ready_times
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air

ROOM = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)
DAY_S = 86400.0


def laid(sheet: DataSheet, draws: int = 64, *, measured: bool = False) -> Film:
    return lay(sheet, anchor(sheet, sample(draws, 11, measured=measured)), wet_um=sheet.wet_um, side_m=0.4)


def forecast(film: Film, air: Air, *, horizon_s: float) -> Mapping[Stage, Ready]:
    return ready_times(film.sheet, outlook(film, air, horizon_s=horizon_s))


def test_that_the_look_ahead_is_what_then_happens(gloss: DataSheet) -> None:
    film = laid(gloss)
    told = forecast(film, ROOM, horizon_s=4 * DAY_S)
    for _ in range(12 * 60):
        film, _ = advance(film, ROOM, 60.0)
    for stage in list(Stage)[:6]:
        assert film.reached_s(stage) == pytest.approx(told[stage].nominal_s, rel=1e-3)


def test_that_stages_behind_keep_their_times(gloss: DataSheet) -> None:
    film, _ = advance(laid(gloss), ROOM, 3 * 3600.0)
    damp = forecast(film, replace(ROOM, humidity_pct=90.0), horizon_s=DAY_S)
    assert damp[Stage.DRY_TO_TOUCH].nominal_s == film.reached_s(Stage.DRY_TO_TOUCH)


def test_that_ranges_are_in_order_and_hold_the_nominal_run(gloss: DataSheet) -> None:
    for ready in forecast(laid(gloss), ROOM, horizon_s=4 * DAY_S).values():
        assert ready.p10_s is not None
        assert ready.p50_s is not None
        assert ready.p90_s is not None
        assert ready.nominal_s is not None
        assert ready.p10_s < ready.p50_s < ready.p90_s
        assert ready.p10_s < ready.nominal_s < ready.p90_s


def test_that_measuring_the_amount_narrows_the_range(gloss: DataSheet) -> None:
    def width_s(*, measured: bool) -> float:
        ready = forecast(laid(gloss, 256, measured=measured), ROOM, horizon_s=4 * DAY_S)[Stage.DRY_TO_RECOAT]
        assert ready.p10_s is not None
        assert ready.p90_s is not None
        return ready.p90_s - ready.p10_s

    assert width_s(measured=True) < 0.8 * width_s(measured=False)


def test_that_a_stage_beyond_the_horizon_is_not_told_but_cure_is_carried_on(gloss: DataSheet) -> None:
    soon = forecast(laid(gloss), ROOM, horizon_s=600.0)
    assert soon[Stage.DRY_TO_RECOAT] == Ready(p10_s=None, p50_s=None, p90_s=None, nominal_s=None)
    assert soon[Stage.CURED].nominal_s is not None
    assert soon[Stage.CURED].nominal_s > 5 * DAY_S


def test_that_a_damp_room_gives_no_ready_time(gloss: DataSheet) -> None:
    told = forecast(laid(gloss), replace(ROOM, humidity_pct=95.0), horizon_s=4 * DAY_S)
    assert told[Stage.DRY_TO_RECOAT].p90_s is None
    assert told[Stage.DRY_TO_RECOAT].nominal_s is None


def test_that_ready_by_is_p90(gloss: DataSheet) -> None:
    ready = Ready(p10_s=5.0 * 3600, p50_s=6.0 * 3600, p90_s=9.0 * 3600, nominal_s=6.0 * 3600)
    assert ready_by_s(gloss, ready) == 9.0 * 3600


def test_that_ready_by_is_never_before_the_sheets_own_time(gloss: DataSheet) -> None:
    thin = lay(gloss, anchor(gloss, sample(64, 11)), wet_um=40.0, side_m=0.4)
    ready = forecast(thin, Air(temperature_C=28.0, humidity_pct=35.0), horizon_s=4 * DAY_S)[Stage.DRY_TO_RECOAT]
    assert ready.p90_s is not None
    assert ready.p90_s < gloss.recoat_h * 3600.0
    assert ready_by_s(gloss, ready) == gloss.recoat_h * 3600.0


def test_that_ready_by_is_unknown_where_p90_is(gloss: DataSheet) -> None:
    assert ready_by_s(gloss, Ready(p10_s=1.0, p50_s=2.0, p90_s=None, nominal_s=2.0)) is None


def test_that_one_draw_is_its_own_range() -> None:
    assert ready_at(np.array([7.0])) == Ready(p10_s=7.0, p50_s=7.0, p90_s=7.0, nominal_s=7.0)


def test_that_quantiles_leave_the_nominal_run_out_and_stop_where_draws_never_arrive() -> None:
    reached = np.array([99.0, *range(1, 10), np.inf, np.inf])
    ready = ready_at(reached)
    assert (ready.p10_s, ready.p50_s, ready.p90_s, ready.nominal_s) == (2.0, 6.0, None, 99.0)


def test_that_equal_weights_are_no_weights() -> None:
    reached = np.array([5.0, 3.0, 9.0, 1.0, 7.0, 4.0])
    assert ready_at(reached, np.full(6, 0.2)) == ready_at(reached)


def test_that_a_draw_counts_as_often_as_it_weighs() -> None:
    # the middle of 1, 2, 2, 2, 2, 2, 3 is 2, and of 1, 2, 3, 3, 3, 3, 3 it is 3: half the weight lies on that draw
    reached = np.array([99.0, 1.0, 2.0, 3.0])
    assert ready_at(reached, np.array([0.0, 1.0, 5.0, 1.0])).p50_s == pytest.approx(2.0)
    late = ready_at(reached, np.array([0.0, 1.0, 1.0, 50.0]))
    assert late.p50_s is not None
    assert late.p50_s > 2.4


def test_that_weighted_quantiles_are_those_of_the_distribution_that_the_weights_make() -> None:
    # exact: 4000 even draws of 0 to 1 weighed by x have the density 2x, so the quantile of q is sqrt(q)
    x = (np.arange(4000) + 0.5) / 4000
    ready = ready_at(np.concatenate([[0.5], x]), np.concatenate([[0.0], x]))
    assert ready.p10_s == pytest.approx(0.1**0.5, abs=1e-3)
    assert ready.p50_s == pytest.approx(0.5**0.5, abs=1e-3)
    assert ready.p90_s == pytest.approx(0.9**0.5, abs=1e-3)


def test_that_draws_that_never_arrive_matter_as_much_as_they_weigh() -> None:
    reached = np.array([1.0, *np.linspace(1.0, 2.0, 50), *np.full(50, np.inf)])
    unlikely = ready_at(reached, np.array([0.0, *np.full(50, 1.0), *np.full(50, 1e-4)]))
    assert unlikely.p90_s is not None
    assert ready_at(reached).p90_s is None


@pytest.mark.parametrize("kind", ["paint_sheet", "gloss"])
def test_that_a_stage_that_is_carried_on_is_told_as_though_the_horizon_lay_beyond_it(
    kind: str, request: pytest.FixtureRequest
) -> None:
    film = laid(request.getfixturevalue(kind))
    near = outlook(film, ROOM, horizon_s=3600.0, carried_on=(Stage.DRY_TO_RECOAT,))
    far = outlook(film, ROOM, horizon_s=400 * 86_400.0)
    row = ROW[Stage.DRY_TO_RECOAT]
    assert np.isinf(outlook(film, ROOM, horizon_s=3600.0)[row]).all()
    assert np.isfinite(far[row]).all()
    assert near[row] == pytest.approx(far[row], rel=1e-3)


def test_that_paint_too_is_recoated_within_the_horizon_or_not_in_sight(paint_sheet: DataSheet) -> None:
    table = outlook(laid(paint_sheet), ROOM, horizon_s=3600.0)
    assert np.isinf(table[ROW[Stage.DRY_TO_RECOAT]]).all()
    assert np.isfinite(table[[ROW[Stage.DRY_THROUGH], ROW[Stage.CURED]]]).all()


@pytest.mark.parametrize("wanted", [(Stage.CLEAR, Stage.DRY_TO_RECOAT), (Stage.DRY_TO_TOUCH, Stage.CURED)])
def test_that_a_stage_comes_when_it_does_whatever_else_is_asked(gloss: DataSheet, wanted: tuple[Stage, ...]) -> None:
    damp = replace(ROOM, humidity_pct=70.0)
    table = outlook(laid(gloss), damp, horizon_s=DAY_S)
    asked = outlook(laid(gloss), damp, horizon_s=DAY_S, wanted=wanted)
    for stage in wanted:
        assert np.isfinite(table[ROW[stage]]).any()
        assert np.array_equal(asked[ROW[stage]], table[ROW[stage]])
    assert np.isinf(asked[ROW[Stage.DRY_THROUGH]]).all()  # it was not asked for, and nobody went after it
