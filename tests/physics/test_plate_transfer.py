from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from studiowatch.physics.moist_air_core import saturation_pressure
from studiowatch.physics.plate_transfer import Face, PlateAir, free_nusselt, mixed, plate_air


def room(face: Face = Face.UP, air_speed_m_s: float = 0.0, side_m: float = 0.4) -> PlateAir:
    one = np.ones(1)
    return plate_air(
        temperature_C=20.0 * one,
        humidity_pct=50.0 * one,
        air_speed_m_s=air_speed_m_s * one,
        pressure_Pa=101_325.0 * one,
        side_m=side_m,
        face=face,
    )


def vapour_transfer(plate: PlateAir, film_C: float) -> float:
    film_K = np.array([film_C + 273.15])
    return float(plate.coefficients(film_K, saturation_pressure(film_K))[1][0])


def test_that_a_cool_wet_film_facing_up_keeps_its_heavy_air() -> None:
    # as cold below the room as it would be warm above: cold air lies on the plate, warm air rises from it
    plate = room()
    assert vapour_transfer(plate, 16.0) < vapour_transfer(plate, 25.0)


def test_that_facing_down_turns_it_round() -> None:
    rayleigh, prandtl, rising = np.array([-1e6, 1e6]), np.full(2, 0.71), np.array([0.0, 1.0])
    up, down = (free_nusselt(rayleigh, prandtl, face, rising) for face in (Face.UP, Face.DOWN))
    np.testing.assert_allclose(up, down[::-1])
    assert up[0] < up[1]


def test_that_vapour_alone_lifts_the_air_from_a_film_as_warm_as_the_room() -> None:
    plate = room()
    wet = vapour_transfer(plate, 20.0)
    dry = float(plate.coefficients(plate.air_K, plate.vapour_Pa)[1][0])
    assert wet > dry > 0.0  # what is left for the dry film is the room's own unrest


@pytest.mark.parametrize("face", list(Face))
def test_that_transfer_does_not_jump_where_heat_and_vapour_cancel(face: Face) -> None:
    # 1 mK is a hundredth of the room's own unrest; McAdams' two laws lie a factor of 2 apart
    plate, films_C = room(face), np.arange(18.0, 20.0, 0.001)
    transfers = np.array([vapour_transfer(plate, film_C) for film_C in films_C])
    np.testing.assert_allclose(transfers[1:], transfers[:-1], rtol=0.02)


@pytest.mark.parametrize("face", list(Face))
def test_that_wind_helps_whichever_way_the_face_looks(face: Face) -> None:
    speeds = [vapour_transfer(room(face, speed), 17.0) for speed in (0.0, 0.05, 0.2, 1.0)]
    assert all(slower < faster for slower, faster in pairwise(speeds))


def test_that_in_wind_a_larger_plate_transfers_less_per_area() -> None:
    assert vapour_transfer(room(air_speed_m_s=1.0, side_m=0.8), 17.0) < vapour_transfer(
        room(air_speed_m_s=1.0, side_m=0.2), 17.0
    )


def test_that_equal_flows_join_as_the_cube_root_of_two() -> None:
    assert mixed(np.array([8.0**3]), np.array([8.0]))[0] == pytest.approx(8.0 * 2.0 ** (1.0 / 3.0))
