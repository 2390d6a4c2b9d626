"""The constant-rate period: the film's heat is in balance whatever the air does."""

from __future__ import annotations

import itertools

import numpy as np
import pytest

from studiowatch.coats.draws import NOMINAL
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.free_water import balance, steady
from studiowatch.physics.air import Air
from studiowatch.physics.plate_transfer import Face


@pytest.mark.parametrize("air_speed_m_s", [0.0, 0.03, 0.1, 0.5])
@pytest.mark.parametrize("face", list(Face))
def test_that_the_steady_film_is_in_balance_in_still_air_too(face: Face, air_speed_m_s: float) -> None:
    for temperature_C, humidity_pct in itertools.product((10.0, 20.0, 30.0), (5.0, 50.0, 95.0)):
        air = Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=air_speed_m_s)
        plate = air_at_film(air, NOMINAL, covered=False, side_m=0.4, face=face)
        _, film_K = steady(plate, np.ones(1), NOMINAL)
        left = balance(plate, film_K, np.zeros(1), kappa=np.ones(1), draws=NOMINAL).warming(plate, film_K)
        assert abs(float(left[0])) < 1e-6  # K/s: a hundredth of a degree in three hours
