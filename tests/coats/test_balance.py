"""The terms of the balance: each recomputed with a reference library, heat and mass closing on the film's own run."""

from __future__ import annotations

from dataclasses import replace
from math import exp

import ht
import psychrolib
import pytest
from CoolProp.CoolProp import HAPropsSI, PropsSI

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.balance import balance_at
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.prediction import predict
from studiowatch.coats.stages import Stage
from studiowatch.coats.terms import MomentTerms, Phase
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange

ROOM = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)
ROOMS = [
    ROOM,
    Air(temperature_C=27.0, humidity_pct=35.0, air_speed_m_s=0.4),
    Air(temperature_C=14.0, humidity_pct=70.0, air_speed_m_s=0.0, pressure_Pa=95_000.0),
]
SIDE_M = 0.4
SOON_S = 600.0  # s after laying: the film is wet and near its steady temperature
VAPOUR_GAS_CONSTANT = 8.314462618 / 0.018015268  # J/(kg K); CODATA 2018 and the molar mass of water, IAPWS
psychrolib.SetUnitSystem(psychrolib.SI)


def laid(sheet: DataSheet, room: Air, age_s: float, wet_um: float = 90.0) -> Film:
    film, _ = advance(lay(sheet, anchor(sheet), wet_um=wet_um, side_m=SIDE_M), room, age_s)
    return film


def packed(sheet: DataSheet, room: Air) -> Film:
    film = laid(sheet, room, 1.0)
    while film.reached_s(Stage.DUST_FREE) is None:
        film, _ = advance(film, room, 5.0)
    return film


def value(moment: MomentTerms, group: str, name: str) -> float:
    told = moment.groups[group][name].value
    assert told is not None, f"{group}.{name}"
    return told


@pytest.mark.parametrize("room", ROOMS)
def test_that_vapour_is_what_psychrolib_gives(gloss: DataSheet, room: Air) -> None:
    # source: psychrolib, saturation pressure and vapour pressure (ASHRAE 2017), as ideal gas; tolerance its 0.1 %
    told = balance_at(laid(gloss, room, SOON_S), room)
    film_C = value(told, "film", "temperature_C")
    over = psychrolib.GetSatVapPres(film_C) / (VAPOUR_GAS_CONSTANT * (film_C + 273.15))
    inside = psychrolib.GetVapPresFromRelHum(room.temperature_C, room.humidity_pct / 100.0) / (
        VAPOUR_GAS_CONSTANT * (room.temperature_C + 273.15)
    )
    assert value(told, "vapour", "at_film_g_m3") == pytest.approx(1000.0 * over, rel=1e-3)
    assert value(told, "vapour", "in_air_g_m3") == pytest.approx(1000.0 * inside, rel=1e-3)
    dew_C = psychrolib.GetTDewPointFromRelHum(room.temperature_C, room.humidity_pct / 100.0)
    assert value(told, "air", "dew_point_C") == pytest.approx(dew_C, abs=0.05)


@pytest.mark.parametrize("room", ROOMS)
def test_that_the_air_is_what_reference_libraries_give(gloss: DataSheet, room: Air) -> None:
    # sources: psychrolib density (tolerance 0.2 %); CoolProp viscosity and conductivity of humid air, good to about 1 %
    # near room conditions; we leave the room's vapour out, which is worth up to 1 % more: 2 %
    told = balance_at(laid(gloss, room, SOON_S), room)
    ratio = psychrolib.GetHumRatioFromRelHum(room.temperature_C, room.humidity_pct / 100.0, room.pressure_Pa)
    density = psychrolib.GetMoistAirDensity(room.temperature_C, ratio, room.pressure_Pa)
    state = ("T", room.temperature_C + 273.15, "P", room.pressure_Pa, "R", room.humidity_pct / 100.0)
    assert value(told, "air", "density_kg_m3") == pytest.approx(density, rel=2e-3)
    assert value(told, "air", "kinematic_viscosity_m2_s") == pytest.approx(HAPropsSI("mu", *state) / density, rel=0.02)
    assert value(told, "air", "conductivity_W_m_K") == pytest.approx(HAPropsSI("k", *state), rel=0.02)


@pytest.mark.parametrize("room", ROOMS)
def test_that_nusselt_and_sherwood_follow_from_the_printed_numbers(gloss: DataSheet, room: Air) -> None:
    # sources: ht, laminar flow along a plate (Baehr) and free flow over a flat plate (McAdams), joined by cubes
    # (Incropera 7th ed., sec. 9.9): the same closed laws, tolerance rounding
    told = balance_at(laid(gloss, room, SOON_S), room)
    reynolds, rayleigh = value(told, "transfer", "reynolds"), value(told, "transfer", "rayleigh")
    speed = value(told, "air", "air_speed_at_film_m_s")
    viscosity = value(told, "air", "kinematic_viscosity_m2_s")
    assert reynolds == pytest.approx(speed * SIDE_M / viscosity, rel=1e-9)
    heat_number, mass_number = value(told, "transfer", "prandtl"), value(told, "transfer", "schmidt")
    for number, name in ((heat_number, "nusselt"), (mass_number, "sherwood")):
        forced = ht.Nu_horizontal_plate_laminar_Baehr(reynolds, number)
        grashof = abs(rayleigh) / heat_number
        free = ht.Nu_horizontal_plate_McAdams(number, grashof, buoyancy=rayleigh > 0.0)
        assert value(told, "transfer", name) == pytest.approx((forced**3 + free**3) ** (1.0 / 3.0), rel=1e-6)


@pytest.mark.parametrize("room", ROOMS)
def test_that_the_flux_is_the_difference_over_the_two_resistances(gloss: DataSheet, room: Air) -> None:
    # by hand from the printed terms: k_m = kappa Sh D/L, J = (c_f - c_a)/(1/k_m + s/D_s)
    for film in (laid(gloss, room, SOON_S), packed(gloss, room)):
        told = balance_at(film, room)
        part = {name: term.value for name, term in told.groups["transfer"].items()}
        assert all(number is not None for number in part.values())
        mass = part["kappa"] * part["sherwood"] * value(told, "air", "diffusivity_m2_s") / SIDE_M
        layer = part["dry_layer_um"] * 1e-6 / part["layer_diffusivity_m2_s"]
        assert part["mass_m_s"] == pytest.approx(mass, rel=1e-9)
        assert part["layer_resistance_s_m"] == pytest.approx(layer, rel=1e-9)
        flux = 3600.0 * value(told, "vapour", "difference_g_m3") / (1.0 / mass + layer)
        assert part["flux_g_m2_h"] == pytest.approx(flux, rel=1e-9)


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("age_s", [0.0, 30.0, SOON_S])
def test_that_the_heat_terms_are_those_of_reference_libraries_and_close(
    gloss: DataSheet, room: Air, age_s: float
) -> None:
    # sources: ht q_rad for radiation between film and room (linearised here: cubic in a few K of 290, 0.1 %);
    # CoolProp (IAPWS-95) for the heat of evaporation, tolerance 0.1 % and the two lines' fit; first law for the sum
    told = balance_at(laid(gloss, room, age_s), room)
    heat = {name: value(told, "heat", name) for name in told.groups["heat"]}
    film_K, air_K = value(told, "film", "temperature_C") + 273.15, room.temperature_C + 273.15
    assert heat["radiation_W_m2"] == pytest.approx(ht.q_rad(0.95, air_K, film_K), rel=1e-3, abs=1e-9)
    exact = PropsSI("H", "T", film_K, "Q", 1, "Water") - PropsSI("H", "T", film_K, "Q", 0, "Water")
    assert heat["latent_heat_J_kg"] == pytest.approx(exact, rel=1e-3)
    flux = value(told, "transfer", "flux_g_m2_h") / 3.6e6
    assert heat["latent_W_m2"] == pytest.approx(-exact * flux, rel=1e-3)
    assert heat["convection_W_m2"] == pytest.approx(
        value(told, "transfer", "heat_W_m2_K") * (air_K - film_K), rel=1e-9, abs=1e-9
    )
    gained = heat["convection_W_m2"] + heat["radiation_W_m2"] + heat["back_W_m2"] + heat["latent_W_m2"]
    assert heat["stored_W_m2"] == pytest.approx(gained, abs=1e-9)


@pytest.mark.parametrize("room", ROOMS)
def test_that_heat_and_mass_close_on_the_films_own_run(gloss: DataSheet, room: Air) -> None:
    # conservation: over a tenth of a second the film warms by stored/C and loses J; meanwhile the terms drift by well
    # under a hundredth
    step_s = 0.1
    for film in (laid(gloss, room, 20.0), packed(gloss, room)):
        told = balance_at(film, room)
        after, _ = advance(film, room, step_s)
        lost = (film.water_g_m2 - after.water_g_m2) / step_s * 3600.0
        assert lost == pytest.approx(value(told, "transfer", "flux_g_m2_h"), rel=0.01)
        assert film.film_C is not None
        assert after.film_C is not None
        warmed_K_min = (after.film_C - film.film_C) / step_s * 60.0
        assert warmed_K_min == pytest.approx(value(told, "heat", "warming_K_min"), rel=0.01, abs=1e-4)


def test_that_the_water_adds_up(gloss: DataSheet) -> None:
    film = laid(gloss, ROOM, SOON_S)
    told = balance_at(film, ROOM)
    # 90 µm wet at 36 % solids, water 0.998 g/cm³ (IAPWS-95 at 20 °C)
    assert value(told, "water", "as_laid_g_m2") == pytest.approx(90.0 * 0.64 * 0.998)
    held = value(told, "water", "free_g_m2") + value(told, "water", "bound_g_m2")
    assert held == pytest.approx(film.water_g_m2)
    assert told.phase is Phase.OPEN


def test_that_without_free_water_only_bound_water_leaves(gloss: DataSheet) -> None:
    film = laid(gloss, ROOM, 3.0 * 3600.0)
    told = balance_at(film, ROOM)
    assert told.phase is Phase.BOUND
    for group in ("vapour", "transfer", "heat"):
        assert {term.value for term in told.groups[group].values()} == {None}
    after, _ = advance(film, ROOM, 1.0)
    lost = (film.water_g_m2 - after.water_g_m2) * 3600.0
    assert value(told, "water", "bound_flux_g_m2_h") == pytest.approx(lost, rel=1e-3)
    # by hand: exp(-E/R (1/T - 1/296.15)) with 38 kJ/mol at 20 °C, and (h/h_ref)² at the sheet's own film
    arrhenius = exp(-38e3 / 8.314462618 * (1.0 / 293.15 - 1.0 / 296.15))
    assert value(told, "ages", "diffusion_rate") == pytest.approx(arrhenius, rel=1e-3)
    assert value(told, "ages", "slowness") == pytest.approx(1.0)
    assert value(told, "ages", "humidity_rate") == pytest.approx(1.0)
    assert value(told, "film", "drift_s") == 300.0


def test_that_ages_pass_their_thresholds_when_the_stage_is_reached(gloss: DataSheet) -> None:
    ready_s = predict(gloss, wet_um=90.0, side_m=SIDE_M, room=ROOM, draws_n=1).stages[Stage.DRY_TO_RECOAT].nominal_s
    assert ready_s is not None
    told = balance_at(laid(gloss, ROOM, ready_s), ROOM)
    assert value(told, "ages", "recoat_age_h") == pytest.approx(value(told, "ages", "recoat_needed_h"), rel=1e-3)
    assert value(told, "water", "bound_kg_kg") < value(told, "water", "clear_below_kg_kg")


def test_that_the_steady_flux_is_the_constant_rate_that_predict_tells(gloss: DataSheet) -> None:
    figures = predict(gloss, wet_um=90.0, side_m=SIDE_M, room=ROOM, draws_n=1).film
    told = balance_at(laid(gloss, ROOM, 1200.0), ROOM)
    assert value(told, "transfer", "flux_g_m2_h") == pytest.approx(figures.constant_rate_g_m2_h, rel=1e-3)
    assert value(told, "film", "temperature_C") == pytest.approx(figures.constant_rate_temperature_C, abs=0.01)


def test_that_a_cover_halves_the_air_speed_and_still_air_is_the_floor(gloss: DataSheet) -> None:
    film = laid(gloss, ROOM, SOON_S)
    windy = replace(ROOM, air_speed_m_s=0.4)
    assert value(balance_at(film, windy, covered=True), "air", "air_speed_at_film_m_s") == pytest.approx(0.2)
    still = balance_at(film, replace(ROOM, air_speed_m_s=0.0))
    assert 0.02 <= value(still, "air", "air_speed_at_film_m_s") <= 0.05


def test_that_air_without_vapour_has_no_dew_point(gloss: DataSheet) -> None:
    told = balance_at(laid(gloss, ROOM, SOON_S), replace(ROOM, humidity_pct=0.0))
    assert told.groups["air"]["dew_point_C"].value is None


def test_that_a_faster_drying_than_the_sheets_is_seen_in_peclet(gloss: DataSheet) -> None:
    reference = Air(temperature_C=23.0, humidity_pct=50.0, air_speed_m_s=0.1)
    hot = Air(temperature_C=33.0, humidity_pct=30.0, air_speed_m_s=0.5)
    film = laid(gloss, reference, 60.0)
    assert value(balance_at(film, hot), "skinning", "peclet_now") > 2.0 * value(
        balance_at(film, reference), "skinning", "peclet_now"
    )


def test_that_paint_tells_its_diffusion(paint_sheet: DataSheet) -> None:
    film = laid(paint_sheet, ROOM, 86400.0, wet_um=500.0)
    told = balance_at(film, ROOM)
    assert told.phase is Phase.PAINT
    assert set(told.groups) == {"air", "film", "water", "ages"}
    # by hand: D a_D t / h² with the film at the room's temperature all day
    fourier = value(told, "water", "diffusivity_m2_s") * value(told, "ages", "diffusion_rate") * 86400.0 / (200e-6**2)
    assert value(told, "water", "fourier") == pytest.approx(fourier, rel=0.01)
    assert value(told, "water", "fourier_through") == 1.13


def test_that_impossible_air_is_refused(gloss: DataSheet) -> None:
    with pytest.raises(OutOfRange, match="humidity is 120 %"):
        balance_at(laid(gloss, ROOM, SOON_S), replace(ROOM, humidity_pct=120.0))


@pytest.fixture(scope="module")
def solvent_sheet() -> DataSheet:
    """Return an invented solvent-borne varnish."""
    return DataSheet(
        name="solvent",
        title="Solvent",
        kind=Kind.SOLVENTBORNE,
        volume_solids=0.35,
        density_kg_m3=870.0,
        wet_um=60.0,
        dry_um=21.0,
        touch_dry_min=180.0,
        recoat_h=24.0,
        cure_days=14.0,
    )


@pytest.mark.parametrize("room", ROOMS)
def test_that_heat_and_mass_of_a_solvent_borne_coat_close_too(solvent_sheet: DataSheet, room: Air) -> None:
    # conservation, as above; the flux by hand from the printed terms: J = k_m a c_sat(T_f)
    film = laid(solvent_sheet, room, SOON_S, wet_um=60.0)
    told = balance_at(film, room)
    assert told.phase is Phase.SOLVENT
    driving = value(told, "vapour", "activity") * value(told, "vapour", "saturated_g_m3")
    flux = value(told, "transfer", "flux_g_m2_h")
    assert flux == pytest.approx(3600.0 * value(told, "transfer", "mass_m_s") * driving)
    heat = {name: value(told, "heat", name) for name in told.groups["heat"]}
    gained = heat["convection_W_m2"] + heat["radiation_W_m2"] + heat["back_W_m2"] + heat["latent_W_m2"]
    assert heat["stored_W_m2"] == pytest.approx(gained, abs=1e-9)
    film_K, air_K = value(told, "film", "temperature_C") + 273.15, room.temperature_C + 273.15
    assert heat["radiation_W_m2"] == pytest.approx(ht.q_rad(0.95, air_K, film_K), rel=1e-3)
    assert heat["latent_W_m2"] == pytest.approx(-heat["latent_heat_J_kg"] * flux / 3.6e6)
    after, _ = advance(film, room, 0.1)
    lost = {
        name: value(told, "solvent", name) - value(balance_at(after, room), "solvent", name)
        for name in ("free_g_m2", "retained_g_m2")
    }
    assert lost["free_g_m2"] * 36_000.0 == pytest.approx(flux, rel=0.01)
    assert lost["retained_g_m2"] == 0.0


def test_that_retained_solvent_leaves_at_the_rate_that_is_told(solvent_sheet: DataSheet) -> None:
    film = laid(solvent_sheet, ROOM, 20.0 * 3600.0, wet_um=60.0)
    told = balance_at(film, ROOM)
    assert told.phase is Phase.RETAINED
    assert {term.value for term in told.groups["transfer"].values()} == {None}
    after, _ = advance(film, ROOM, 60.0)
    lost = value(told, "solvent", "retained_g_m2") - value(balance_at(after, ROOM), "solvent", "retained_g_m2")
    assert 60.0 * lost == pytest.approx(value(told, "solvent", "retained_flux_g_m2_h"), rel=1e-3)


def test_that_the_margin_over_the_dew_point_is_told(solvent_sheet: DataSheet) -> None:
    # source: psychrolib, dew point; tolerance 0.05 K
    damp = replace(ROOM, humidity_pct=92.0)
    told = balance_at(laid(solvent_sheet, damp, SOON_S, wet_um=60.0), damp)
    dew_C = psychrolib.GetTDewPointFromRelHum(20.0, 0.92)
    assert value(told, "blush", "margin_K") == pytest.approx(value(told, "film", "temperature_C") - dew_C, abs=0.05)
    assert value(told, "blush", "blush_h") == pytest.approx(SOON_S / 3600.0)
    assert value(told, "blush", "blush_from_h") == 0.0
