from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.physics import moist_air
from studiowatch.physics.air import Air
from studiowatch.physics.constants import GRAVITY
from studiowatch.physics.ranges import OutOfRange
from studiowatch.physics.settling import mean_free_path, settling_velocity, slip_correction

ROOM = Air(temperature_C=20.0, humidity_pct=50.0)


@given(
    diameter_um=st.floats(0.1, 500.0),
    density_kg_m3=st.floats(100.0, 8000.0),
    temperature_C=st.floats(0.0, 40.0),
    pressure_Pa=st.floats(60_000.0, 105_000.0),
)
def test_that_the_drag_of_the_fall_carries_the_weight(
    diameter_um: float, density_kg_m3: float, temperature_C: float, pressure_Pa: float
) -> None:
    air = Air(temperature_C=temperature_C, humidity_pct=50.0, pressure_Pa=pressure_Pa)
    air_density = moist_air.density(temperature_C, 50.0, pressure_Pa)
    viscosity = moist_air.viscosity(temperature_C)
    diameter_m = diameter_um * 1e-6
    fall = settling_velocity(diameter_um, density_kg_m3, air)
    inertia = 1.0 + 0.15 * (air_density * fall * diameter_m / viscosity) ** 0.687
    drag = 3.0 * np.pi * viscosity * diameter_m * fall * inertia / slip_correction(diameter_um, air)
    weight = np.pi / 6.0 * diameter_m**3 * (density_kg_m3 - air_density) * GRAVITY
    assert drag == pytest.approx(weight, rel=1e-9)


def test_that_larger_and_denser_specks_fall_faster_without_a_step_between_the_laws() -> None:
    sizes = np.geomspace(0.1, 500.0, 2000)
    falls = settling_velocity(sizes, 1000.0, ROOM)
    # between the square of the diameter, less slip, and its root: no step anywhere
    slopes = np.diff(np.log(falls)) / np.diff(np.log(sizes))
    assert slopes.min() > 0.5
    assert slopes.max() < 2.0
    densities = settling_velocity(50.0, np.linspace(100.0, 8000.0, 50), ROOM)
    assert (np.diff(densities) > 0.0).all()


def test_that_thin_air_lets_molecules_and_fine_specks_slip_farther() -> None:
    mountain = replace(ROOM, pressure_Pa=60_000.0)
    assert mean_free_path(mountain) == pytest.approx(mean_free_path(ROOM) * 101_325.0 / 60_000.0)
    assert settling_velocity(0.3, 1000.0, mountain) > settling_velocity(0.3, 1000.0, ROOM)


def test_that_shapes_broadcast_and_scalars_stay_scalars() -> None:
    falls = settling_velocity(np.array([[1.0], [10.0], [100.0]]), np.array([1000.0, 2600.0]), ROOM)
    assert falls.shape == (3, 2)
    alone = settling_velocity(10.0, 2600.0, ROOM)
    assert np.ndim(alone) == 0
    assert float(alone) == pytest.approx(falls[1, 1], rel=1e-12)


@pytest.mark.parametrize(
    ("call", "told"),
    [
        (
            lambda: settling_velocity(0.0, 1000.0, ROOM),
            "diameter of dust is 0 µm; it must be a number from 0.1 to 500 µm",
        ),
        (lambda: settling_velocity([5.0, float("nan")], 1000.0, ROOM), "diameter of dust is nan µm"),
        (
            lambda: settling_velocity(5.0, 1.2, ROOM),
            "density of dust is 1.2 kg/m³; it must be a number from 100 to 8000 kg/m³",
        ),
        (lambda: settling_velocity(5.0, float("inf"), ROOM), "density of dust is inf kg/m³"),
        (lambda: slip_correction(501.0, ROOM), "diameter of dust is 501 µm"),
        (lambda: mean_free_path(replace(ROOM, temperature_C=80.0)), "temperature is 80 °C"),
        (lambda: slip_correction(5.0, replace(ROOM, pressure_Pa=1013.0)), "pressure is 1013 Pa"),
        (lambda: settling_velocity(5.0, 1000.0, replace(ROOM, humidity_pct=float("nan"))), "humidity is nan %"),
    ],
)
def test_that_values_out_of_range_are_named(call: Callable[[], object], told: str) -> None:
    with pytest.raises(OutOfRange, match=told.replace(".", r"\.")):
        call()
