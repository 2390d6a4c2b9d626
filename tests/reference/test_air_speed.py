"""The air speed calibration against published relations for heated wires."""

from __future__ import annotations

import pytest

from studiowatch.room.air_points import AirPoint
from studiowatch.room.air_speed_calibration import calibrate_air_speed
from studiowatch.room.king_law import FREE_CONVECTION_M_S

# air at 40 °C, halfway between a bead at 60 °C of overheat and the room; U.S. Standard Atmosphere (1976)
VISCOSITY_m2_s = 1.70e-5
GRAVITY_m_s2 = 9.81
FILM_K = 323.0


@pytest.mark.parametrize("diameter_m", [0.3e-3, 1e-3, 3e-3])
def test_that_free_convection_takes_over_where_collis_and_williams_say(diameter_m: float) -> None:
    # source: D. C. Collis and M. J. Williams (1959), J. Fluid Mech. 6, 357, abstract: free convection is significant
    # when, roughly, the Reynolds number is less than the cube root of the Grashof number. Tolerance: half the last
    # digit of 0.03
    grashof = GRAVITY_m_s2 * 60.0 / FILM_K * diameter_m**3 / VISCOSITY_m2_s**2
    takes_over_m_s = grashof ** (1 / 3) * VISCOSITY_m2_s / diameter_m
    assert takes_over_m_s == pytest.approx(FREE_CONVECTION_M_S, abs=0.005)


def test_that_walks_with_a_wire_give_the_published_exponent_and_coefficients() -> None:
    # source: Collis and Williams (1959), table 3, from memory, below the vortex street (Re < 44):
    # Nu (Tm/T)^-0.17 = 0.24 + 0.56 Re^0.45. With a wire of 5 µm the walks lie at Re 0.09 to 0.35. In still air it has
    # its own rising air
    diameter_m = 5e-6

    def signal_mV(speed_m_s: float) -> float:
        return 1000.0 * (0.24 + 0.56 * (speed_m_s * diameter_m / VISCOSITY_m2_s) ** 0.45) ** 0.5

    points = [
        AirPoint(speed_m_s=speed_m_s, signal_mV=signal_mV(speed_m_s or FREE_CONVECTION_M_S), temperature_C=21.0)
        for speed_m_s in (0.0, 0.3, 0.6, 1.2)
    ]
    law = calibrate_air_speed(points).law
    assert law.exponent == pytest.approx(0.45, abs=0.0005)
    assert law.offset_mV2 == pytest.approx(0.24e6, rel=0.01)
    assert law.slope == pytest.approx(0.56e6 * (diameter_m / VISCOSITY_m2_s) ** 0.45, rel=0.01)
