from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.vapour import VENTILATE, VapourBuildUp, solvent_laid_g, vapour_build_up
from studiowatch.physics.ranges import OutOfRange


def build_up(**changes: float) -> VapourBuildUp:
    plain = {"solvent_g": 18.0, "over_h": 1.0, "room_m3": 30.0, "changes_per_h": 0.5, "temperature_C": 20.0}
    return vapour_build_up(**{**plain, **changes})


def test_that_the_figures_are_those_of_a_hand_calculation() -> None:
    # by hand: 18 g in an hour into 30 m³ are 600 mg/(m³ h); at 0.5 changes an hour 600/0.5 (1 - e^-0.5) = 472 mg/m³
    # after it. 472/350 = 1.35; limit: NIOSH recommended exposure limit of Stoddard solvent, 350 mg/m³.
    # Lower flammable limit 0.6 % by volume: 0.006 x 101325/(8.314 x 293.15) x 142 g = 35.4 g/m³, 1.33 %.
    told = build_up()
    assert told.highest_mg_m3 == pytest.approx(472.2, abs=0.1)
    assert told.share_of_limit == pytest.approx(1.349, abs=0.001)
    assert told.share_of_flammable == pytest.approx(0.01333, abs=0.0001)


def test_that_a_room_stepped_minute_by_minute_gives_the_same() -> None:
    # dc/dt = G/V - n c by 60 000 Euler steps of 0.06 s: right to 1e-4
    concentration, dt_h = 0.0, 1.0 / 60_000
    for _ in range(60_000):
        concentration += dt_h * (600.0 - 0.5 * concentration)
    assert build_up().highest_mg_m3 == pytest.approx(concentration, rel=1e-4)


def test_that_a_shut_room_keeps_it_all() -> None:
    assert build_up(changes_per_h=0.0).highest_mg_m3 == pytest.approx(600.0)


@given(changes_per_h=st.floats(0.0, 20.0), more=st.floats(0.1, 20.0))
def test_that_more_fresh_air_means_less_vapour(changes_per_h: float, more: float) -> None:
    less, much = build_up(changes_per_h=changes_per_h), build_up(changes_per_h=changes_per_h + more)
    assert much.highest_mg_m3 < less.highest_mg_m3


@pytest.mark.parametrize("solvent_g", [0.0, 5.0, 18.0, 400.0, 4000.0])
def test_that_ventilating_comes_first_whatever_the_figure(solvent_g: float) -> None:
    told = build_up(solvent_g=solvent_g).sentences
    assert told[0] == VENTILATE
    assert told[0].startswith("Ventilate first")
    assert len(told) == 3


def test_that_a_room_that_can_burn_is_told_before_one_that_is_bad_to_breathe() -> None:
    assert "what burns" in build_up(solvent_g=4000.0).sentences[2]
    assert "Too much to breathe" in build_up(solvent_g=18.0).sentences[2]
    assert "estimate" in build_up(solvent_g=5.0).sentences[2]


def test_that_the_solvent_of_a_coat_is_what_is_not_solids(gloss: DataSheet) -> None:
    sheet = replace(gloss, kind=Kind.SOLVENTBORNE, volume_solids=0.4)
    # 75 µm on 0.5 m² are 37.5 mL, 60 % of it solvent of 0.78 g/mL
    assert solvent_laid_g(sheet, wet_um=75.0, area_m2=0.5) == pytest.approx(37.5 * 0.6 * 0.78)
    # thinned by a quarter: 0.4/1.25 = 0.32 solids
    assert solvent_laid_g(sheet, wet_um=75.0, area_m2=0.5, thinned_pct=25.0) == pytest.approx(37.5 * 0.68 * 0.78)
    assert solvent_laid_g(gloss, wet_um=75.0, area_m2=0.5) == 0.0


@pytest.mark.parametrize(
    ("field", "value", "named"),
    [
        ("room_m3", 0.0, "room is 0 m³; it must be a number from 1"),
        ("changes_per_h", -1.0, "air changes is -1 per hour"),
        ("solvent_g", float("nan"), "solvent is nan g"),
        ("over_h", 0.0, "time in which it leaves is 0 h"),
        ("temperature_C", 80.0, "air temperature is 80 °C"),
    ],
)
def test_that_an_impossible_room_is_refused_by_name(field: str, value: float, named: str) -> None:
    with pytest.raises(OutOfRange, match=named):
        build_up(**{field: value})
