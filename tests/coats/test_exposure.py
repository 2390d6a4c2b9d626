from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.draws import NOMINAL, sample
from studiowatch.coats.exposure import air_at_film
from studiowatch.physics.air import Air
from studiowatch.physics.plate_transfer import Face, PlateAir

BREEZE = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.4)


def at_film(air: Air, *, covered: bool = False, draws: int = 1) -> PlateAir:
    chosen = NOMINAL if draws == 1 else sample(draws, 9)
    return air_at_film(air, chosen, covered=covered, side_m=0.4, face=Face.UP)


def test_that_a_cover_halves_the_air_speed() -> None:
    # laminar flow: the Nusselt number goes with the root of speed, its cube with the power 1.5
    bare, covered = at_film(BREEZE).forced_heat[0], at_film(BREEZE, covered=True).forced_heat[0]
    assert covered == pytest.approx(bare / 2.0**1.5)


def test_that_air_below_the_sensors_floor_is_not_taken_as_still() -> None:
    still, floor = at_film(replace(BREEZE, air_speed_m_s=0.0)), at_film(replace(BREEZE, air_speed_m_s=0.03))
    assert floor.forced_heat[0] > 0.0
    assert still.forced_heat[0] == pytest.approx(floor.forced_heat[0])


def test_that_below_the_floor_the_draws_differ() -> None:
    floors = at_film(replace(BREEZE, air_speed_m_s=0.0), draws=32).forced_heat
    # 0.02 to 0.05 m/s, speed to the power 1.5
    assert floors.max() / floors.min() > 2.0


def test_that_humidity_stays_possible_in_every_draw() -> None:
    for humidity_pct in (0.5, 99.5):
        humidity = at_film(replace(BREEZE, humidity_pct=humidity_pct), draws=64).humidity
        assert humidity.min() >= 0.0
        assert humidity.max() <= 1.0


def test_that_the_same_air_is_worked_out_once() -> None:
    assert at_film(BREEZE) is at_film(replace(BREEZE))


def test_that_thin_mountain_air_speeds_vapour() -> None:
    high, low = at_film(replace(BREEZE, pressure_Pa=80_000.0)), at_film(BREEZE)
    assert np.all(high.mass_per_sherwood > low.mass_per_sherwood)
