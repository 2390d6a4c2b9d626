"""Dust: counted where the board counts, guessed where it does not, and worse in dry air."""

from __future__ import annotations

import pytest

from studiowatch.room.dust import dust_load
from studiowatch.room.limits import DUST, Standing


@pytest.mark.parametrize(
    ("per_m3", "standing"),
    [(29_300, Standing.FINE), (293_000, Standing.FINE), (293_001, Standing.CAUTION), (2_930_001, Standing.ACT)],
)
def test_that_class_9_of_the_clean_room_standard_is_where_care_begins(per_m3: float, standing: Standing) -> None:
    # ISO 14644-1:2015, table 1: at most 29 300 and 293 000 particles of 5 µm and larger per m³ in classes 8 and 9
    assert DUST.standing(dust_load(per_m3, humidity_pct=50.0).counts_as_per_m3) is standing


def test_that_dust_counts_for_more_the_drier_the_air() -> None:
    loads = [dust_load(1000.0, humidity_pct=pct).counts_as_per_m3 for pct in (60.0, 40.0, 35.0, 30.0, 20.0)]
    assert loads[0] == loads[1] == 1000.0
    assert loads[1] < loads[2] < loads[3] == loads[4]


def test_that_a_guess_says_so_and_follows_the_air() -> None:
    still, stirred = dust_load(None, air_speed_m_s=0.04), dust_load(None, air_speed_m_s=0.4)
    assert not still.is_counted
    assert 29_300 < still.per_m3 < stirred.per_m3 < 293_000  # between classes 8 and 9: a guess alone warns of nothing
    assert stirred.per_m3 == pytest.approx(2.5 * still.per_m3)  # three quarters of the way from once to three times
    assert dust_load(None).per_m3 == still.per_m3  # air that is not measured is taken to be still


def test_that_a_count_is_not_multiplied_by_the_air_that_is_in_it_already() -> None:
    assert dust_load(50_000.0, air_speed_m_s=0.5).per_m3 == 50_000.0
