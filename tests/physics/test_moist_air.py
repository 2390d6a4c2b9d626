from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.physics import moist_air
from studiowatch.physics.ranges import OutOfRange

temperatures = st.floats(-30.0, 55.0)
humidities = st.floats(1.0, 100.0)


@given(temperature_C=temperatures, humidity_pct=humidities)
def test_that_the_dew_point_is_where_this_vapour_saturates(temperature_C: float, humidity_pct: float) -> None:
    dew_point_C = moist_air.dew_point(temperature_C, humidity_pct)
    vapour_Pa = float(moist_air.vapour_pressure(temperature_C, humidity_pct))
    if dew_point_C >= -40.0:
        assert moist_air.saturation_pressure(dew_point_C) == pytest.approx(vapour_Pa, rel=1e-9)


@given(temperature_C=temperatures, humidity_pct=humidities)
def test_that_dew_point_wet_bulb_and_dry_bulb_come_in_this_order(temperature_C: float, humidity_pct: float) -> None:
    dew_point_C = moist_air.dew_point(temperature_C, humidity_pct)
    wet_bulb_C = moist_air.wet_bulb(temperature_C, humidity_pct)
    assert dew_point_C - 1e-6 <= wet_bulb_C <= temperature_C + 1e-6


def test_that_saturated_air_has_all_three_temperatures_alike() -> None:
    assert moist_air.dew_point(18.0, 100.0) == pytest.approx(18.0, abs=1e-9)
    assert moist_air.wet_bulb(18.0, 100.0) == pytest.approx(18.0, abs=1e-9)
    assert moist_air.vapour_pressure_deficit(18.0, 100.0) == 0.0


def test_that_damp_air_is_lighter_than_dry_air() -> None:
    assert moist_air.density(25.0, 90.0) < moist_air.density(25.0, 10.0)


@pytest.mark.parametrize(
    ("call", "told"),
    [
        (
            lambda: moist_air.saturation_pressure(float("nan")),
            "temperature is nan °C; it must be a number from -40 to 60 °C",
        ),
        (lambda: moist_air.saturation_pressure([20.0, 61.0]), "temperature is 61 °C"),
        (lambda: moist_air.dew_point(20.0, 0.0), "humidity is 0 %; it must be a number from 0.01 to 100 %"),
        (lambda: moist_air.dew_point(20.0, [50.0, float("nan")]), "humidity is nan %"),
        (lambda: moist_air.wet_bulb(20.0, 101.0), "humidity is 101 %"),
        (
            lambda: moist_air.wet_bulb(20.0, 50.0, 1013.25),
            "pressure is 1013.25 Pa; it must be a number from 50000 to 110000 Pa",
        ),
        (lambda: moist_air.humidity_ratio(20.0, -1.0), "humidity is -1 %"),
        (lambda: moist_air.vapour_concentration(-273.0, 50.0), "temperature is -273 °C"),
        (lambda: moist_air.vapour_pressure_deficit(20.0, 120.0), "humidity is 120 %"),
        (lambda: moist_air.density(20.0, 50.0, float("nan")), "pressure is nan Pa"),
        (lambda: moist_air.diffusivity(float("inf")), "temperature is inf °C"),
        (lambda: moist_air.viscosity(100.0), "temperature is 100 °C"),
        (lambda: moist_air.conductivity(100.0), "temperature is 100 °C"),
    ],
)
def test_that_values_out_of_range_are_named(call: Callable[[], object], told: str) -> None:
    with pytest.raises(OutOfRange, match=told.replace(".", r"\.")):
        call()


@pytest.mark.parametrize(
    "function",
    [
        moist_air.dew_point,
        moist_air.wet_bulb,
        moist_air.humidity_ratio,
        moist_air.vapour_concentration,
        moist_air.vapour_pressure_deficit,
        moist_air.vapour_pressure,
        moist_air.density,
        moist_air.heat_capacity,
    ],
)
def test_that_shapes_broadcast_and_scalars_stay_scalars(function: Callable[..., np.ndarray]) -> None:
    table = function(np.array([[10.0], [20.0]]), np.array([30.0, 50.0, 70.0]))
    assert table.shape == (2, 3)
    alone = function(20.0, 50.0)
    assert np.ndim(alone) == 0
    assert float(alone) == pytest.approx(table[1, 1], rel=1e-9)
