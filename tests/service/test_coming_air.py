"""The outlook as air for a film: its times, its median run, and that a room that stays dries as one that is known."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.belief import PRIOR
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import lay
from studiowatch.coats.film_state import Film
from studiowatch.coats.readiness import outlook as ready_table
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import standing_on
from studiowatch.physics.air import Air
from studiowatch.room.outlook import Outlook
from studiowatch.service.air_ahead import CALM_M_S
from studiowatch.service.coming_air import coming_air

HOUR_S = 3600.0
DRAWS = 64


def _outlook(temperature_C: float = 20.0, humidity_pct: float = 55.0, hours: int = 96) -> Outlook:
    shape = (DRAWS, hours + 1)
    return Outlook(
        temperature_C=np.full(shape, temperature_C),
        humidity_pct=np.full(shape, humidity_pct),
        air_speed_m_s=np.full(shape, 0.08),
    )


@pytest.fixture
def film(gloss: DataSheet) -> Film:
    standing = standing_on(PRIOR, DRAWS, 1, measured=True)
    return lay(gloss, anchor(gloss, standing.particles.draws), wet_um=80.0, side_m=0.4)


@pytest.mark.parametrize("passed_s", [0.0, 540.0, 7 * HOUR_S])
def test_that_the_spans_cover_the_horizon_and_follow_the_clock(passed_s: float) -> None:
    hours = np.arange(25.0)
    told = Outlook(
        temperature_C=np.tile(10.0 + hours, (3, 1)),
        humidity_pct=np.full((3, 25), 50.0),
        air_speed_m_s=np.full((3, 25), 0.05),
    )
    spans = coming_air(told, 5, passed_s=passed_s, horizon_s=12 * HOUR_S)
    assert sum(span_s for _, span_s in spans) == pytest.approx(12 * HOUR_S)
    mean_C = sum(float(air.temperature_C[1]) * span_s for air, span_s in spans) / (12 * HOUR_S)
    assert mean_C == pytest.approx(10.0 + passed_s / HOUR_S + 6.0)  # a straight line: its mean is that of its middle


def test_that_a_fan_that_is_meant_to_be_on_blows_in_its_hours_and_no_other_fan_does() -> None:
    told = _outlook(hours=12)
    speed_m_s, fanned = told.air_speed_m_s.copy(), np.zeros(13, dtype=np.bool_)
    speed_m_s[:, 2:5] = 0.6  # a habit of the room
    speed_m_s[:, 7:10], fanned[7:10] = 0.6, True
    told = replace(told, air_speed_m_s=speed_m_s, fanned=fanned)
    spans = coming_air(told, 5, passed_s=0.0, horizon_s=12 * HOUR_S)
    by_hour = [float(air.air_speed_m_s[1]) for air, _ in spans]
    assert max(by_hour[:6]) <= CALM_M_S
    assert by_hour[7:9] == pytest.approx([0.6, 0.6])


def test_that_a_horizon_beyond_the_outlook_goes_on_in_its_last_air() -> None:
    spans = coming_air(_outlook(hours=6), 5, passed_s=0.0, horizon_s=48 * HOUR_S)
    assert sum(span_s for _, span_s in spans) == pytest.approx(48 * HOUR_S)
    assert len(spans) == 6


def test_that_the_first_draw_has_the_median_room_and_no_fan_is_counted_on() -> None:
    told = _outlook()
    told.temperature_C[:, :] = np.linspace(10.0, 30.0, DRAWS)[:, np.newaxis] ** 1.01
    told.air_speed_m_s[:, :] = 0.8
    ((air, _), *_) = coming_air(told, 2 * DRAWS, passed_s=0.0, horizon_s=HOUR_S)
    assert air.temperature_C[0] == pytest.approx(np.median(told.temperature_C[:, 0]))
    assert air.temperature_C.size == 2 * DRAWS
    assert air.air_speed_m_s.max() <= 0.1


def test_that_a_room_that_stays_dries_as_one_that_is_known(film: Film) -> None:
    known = Air(temperature_C=20.0, humidity_pct=55.0, air_speed_m_s=0.08)
    horizon_s = 96 * HOUR_S
    coming = coming_air(_outlook(), DRAWS, passed_s=0.0, horizon_s=horizon_s)
    drawn = ready_table(film, known, horizon_s=horizon_s, coming=coming)
    assert drawn == pytest.approx(ready_table(film, known, horizon_s=horizon_s), rel=0.002)  # other inner steps


def test_that_a_night_that_turns_damp_puts_the_next_coat_off_in_its_draws_alone(film: Film) -> None:
    told = _outlook()
    told.humidity_pct[DRAWS // 2 :, 3:] = 92.0
    horizon_s = 96 * HOUR_S
    coming = coming_air(told, DRAWS, passed_s=0.0, horizon_s=horizon_s)
    known = Air(temperature_C=20.0, humidity_pct=55.0, air_speed_m_s=0.08)
    drawn = ready_table(film, known, horizon_s=horizon_s, coming=coming)[ROW[Stage.DRY_TO_RECOAT]]
    steady = ready_table(film, known, horizon_s=horizon_s)[ROW[Stage.DRY_TO_RECOAT]]
    assert drawn[1 : DRAWS // 2] == pytest.approx(steady[1 : DRAWS // 2], rel=0.002)
    late = steady > 4 * HOUR_S
    late[: DRAWS // 2] = False
    assert late.any()
    assert np.all(drawn[late] > steady[late])
