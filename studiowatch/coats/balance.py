"""The terms of a coat's balance at one moment, each with its unit, so that the physics can be checked by hand.

All terms are of the nominal run. A term that plays no part at that moment is None: without free water no flux leaves
through the air, and the film only drifts to the room's temperature.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from studiowatch.coats.bound_water import BOUND_AS_LAID, CLEAR_BELOW, humidity_rate, water_content
from studiowatch.coats.exposure import COVER_SPEED_FACTOR, air_at_film
from studiowatch.coats.film_state import Film
from studiowatch.coats.free_water import Balance, balance, dry_layer
from studiowatch.coats.paint import THROUGH_NUMBER, PaintProduct, PaintState
from studiowatch.coats.solvent_terms import solvent_groups
from studiowatch.coats.solventborne import SolventProduct, SolventState
from studiowatch.coats.terms import (
    G_M2,
    G_M2_H,
    HOUR_S,
    Here,
    MomentTerms,
    Phase,
    Terms,
    air_terms,
    diffusion_rate,
    film_terms,
    heat_terms,
    out_of_play,
    pace_terms,
    term,
)
from studiowatch.coats.waterborne import Product, WaterState
from studiowatch.physics import moist_air_core as core
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array
from studiowatch.speech.words import mark


def balance_at(film: Film, air: Air, *, covered: bool = False) -> MomentTerms:
    """Return the terms of the balance of `film`, as it stands, in `air`.

    Raises
    ------
    OutOfRange
        If a value of `air` is out of range.
    TypeError
        If the film's anchor belongs to another kind of coat.
    """
    draws = film.anchor.draws
    plate = air_at_film(air, draws, covered=covered, side_m=film.layer.side_m, face=film.layer.face)
    speed = np.maximum(air.air_speed_m_s * draws.air_speed_factor, draws.air_speed_floor_m_s)
    here = Here(
        film=film,
        air=air,
        plate=plate,
        speed_m_s=speed * COVER_SPEED_FACTOR if covered else speed,
        film_K=film.state.film_K if film.elapsed_s > 0.0 else plate.air_K,
    )
    phase, groups = _told(here)
    drifts = phase in {Phase.BOUND, Phase.RETAINED, Phase.PAINT}
    room = {"air": air_terms(here), "film": film_terms(here, drifts=drifts)}
    return MomentTerms(elapsed_s=film.elapsed_s, phase=phase, groups={**room, **groups})


def _told(here: Here) -> tuple[Phase, Mapping[str, Terms]]:
    match here.film.state, here.film.anchor.product:
        case WaterState() as water, Product() as product:
            return _phase(here.film, water), _water_groups(here, water, product)
        case SolventState() as solvent, SolventProduct() as product:
            phase = Phase.SOLVENT if solvent.free[0] > 0.0 else Phase.RETAINED
            return phase, solvent_groups(here, solvent, product)
        case PaintState() as layer, PaintProduct() as product:
            return Phase.PAINT, {"water": _paint_water(here, layer), "ages": _paint_ages(here, layer, product)}
    raise TypeError(f"{here.film.sheet.name}: the anchor belongs to another kind of sheet")  # not said


def _phase(film: Film, state: WaterState) -> Phase:
    free = state.free[0]
    if free <= 0.0:
        return Phase.BOUND
    return Phase.OPEN if free > film.layer.free_packed[0] else Phase.PACKED


def _water_groups(here: Here, state: WaterState, product: Product) -> Mapping[str, Terms]:
    layer_m = dry_layer(here.film.layer, state.free)
    now = balance(here.plate, here.film_K, layer_m, kappa=product.kappa, draws=product.draws)
    exchange = {
        "vapour": _vapour(here, now),
        "transfer": _transfer(here, now, product, layer_m),
        "heat": heat_terms(here, now, product.draws),
    }
    return {
        **(exchange if state.free[0] > 0.0 else out_of_play(exchange)),
        "skinning": _skinning(here, now, state),
        "water": _water(here, state, product),
        "ages": _ages(here, state, product),
    }


def _vapour(here: Here, now: Balance) -> Terms:
    room = here.plate.vapour_kg_m3
    return {
        "at_film_g_m3": term("g/m³", 1000.0 * (now.deficit_kg_m3 + room), mark("c_f = c_sat(T_f), over the film")),
        "in_air_g_m3": term("g/m³", 1000.0 * room, mark("c_a = RH c_sat(T_a), in the room")),
        "difference_g_m3": term("g/m³", 1000.0 * now.deficit_kg_m3, "c_f - c_a"),
    }


def _transfer(here: Here, now: Balance, product: Product, layer_m: Array) -> Terms:
    plate, side_m = here.plate, here.film.layer.side_m
    vapour_Pa = core.saturation_pressure(here.film_K)
    heat, mass = plate.coefficients(here.film_K, vapour_Pa)
    rayleigh = plate.rayleigh(core.virtual_temperature(here.film_K, vapour_Pa, plate.pressure_Pa))
    layer_s_m = layer_m / product.draws.layer_diffusivity_m2_s
    return {
        "reynolds": term("", here.speed_m_s * side_m / here.viscosity_m2_s, mark("Re = v L / kinematic viscosity")),
        "prandtl": term("", plate.prandtl, "Pr"),
        "schmidt": term("", plate.schmidt, mark("Sc = kinematic viscosity / D")),
        "rayleigh": term("", rayleigh, mark("Ra of heat; below 0 the air at the film is heavier")),
        "nusselt": term("", heat / plate.heat_per_nusselt, mark("Nu, forced and free flow together")),
        "sherwood": term("", mass / plate.mass_per_sherwood, mark("Sh, forced and free flow together")),
        "heat_W_m2_K": term("W/(m² K)", heat, "h_c = Nu λ/L"),
        "kappa": term("", product.kappa, mark("κ, of this product, from its sheet")),
        "mass_m_s": term("m/s", product.kappa * mass, "k_m = κ Sh D/L"),  # not said
        "air_resistance_s_m": term("s/m", 1.0 / (product.kappa * mass), "1/k_m"),
        "dry_layer_um": term("µm", 1e6 * layer_m, mark("s, dry layer over the wet part")),
        "layer_diffusivity_m2_s": term(
            "m²/s", product.draws.layer_diffusivity_m2_s, mark("D_s, vapour in the dry layer")
        ),
        "layer_resistance_s_m": term("s/m", layer_s_m, "s/D_s"),
        "flux_g_m2_h": term("g/(m² h)", G_M2_H * now.flux, "J = (c_f - c_a)/(1/k_m + s/D_s)"),
    }


def _skinning(here: Here, now: Balance, state: WaterState) -> Terms:
    film = here.film
    pace = film.layer.wet_m * now.flux / here.film_K / film.anchor.fastest
    is_open = state.free[0] > film.layer.free_packed[0]
    return {
        "peclet_now": term(
            "", pace if is_open else None, mark("Pe over the largest of the sheet's own run, until packed")
        ),
        "peclet_fastest": term("", film.skinning, mark("the largest so far")),
    }


def _water(here: Here, state: WaterState, product: Product) -> Terms:
    layer, kept = here.film.layer, water_content(here.plate.humidity)
    pace_s = product.bound_rate_per_s * diffusion_rate(here, product.draws) / layer.slowness
    leaving = layer.polymer_kg_m2 * pace_s * (state.bound - kept) if state.free[0] <= 0.0 else None
    as_laid = layer.free_laid + BOUND_AS_LAID * layer.polymer_kg_m2
    return {
        "as_laid_g_m2": term("g/m²", G_M2 * as_laid, mark("free and bound, as laid")),
        "free_g_m2": term("g/m²", G_M2 * state.free, mark("m_f, free")),
        "free_at_packing_g_m2": term("g/m²", G_M2 * layer.free_packed, mark("m_fc, free when the polymer packs")),
        "polymer_g_m2": term("g/m²", G_M2 * layer.polymer_kg_m2, mark("dry polymer")),
        "bound_g_m2": term("g/m²", G_M2 * state.bound * layer.polymer_kg_m2, mark("m_b = w times the polymer")),
        "bound_kg_kg": term("kg/kg", state.bound, mark("w, bound")),
        "equilibrium_kg_kg": term("kg/kg", kept, mark("w_eq, kept by the polymer in this air")),
        "clear_below_kg_kg": term("kg/kg", CLEAR_BELOW, mark("w_eq at 85 % RH; the film is clear below it")),
        "bound_rate_per_h": term("1/h", 3600.0 * product.bound_rate_per_s, mark("k_b, in the sheet's film at 23 °C")),
        "bound_flux_g_m2_h": term(
            "g/(m² h)",
            None if leaving is None else G_M2_H * leaving,
            mark("k_b a_D/(h/h_ref)ⁿ (w - w_eq) times the polymer"),
        ),
    }


def _ages(here: Here, state: WaterState, product: Product) -> Terms:
    return {
        **pace_terms(here, product.draws),
        "humidity_rate": term("", humidity_rate(here.plate.humidity, product.draws.humidity_term), "g(RH), 1 at 50 %"),
        "recoat_age_h": term("h", state.recoat_age_s / HOUR_S, mark("θ_r so far; runs once free water has gone")),
        "recoat_needed_h": term("h", product.recoat_age_s / HOUR_S, mark("θ_r when dry to recoat, if clear by then")),
        "cure_age_h": term("h", state.cure_age_s / HOUR_S, mark("θ_c so far; runs once packed")),
        "cure_needed_h": term("h", product.cure_age_s / HOUR_S, mark("θ_c when cured")),
    }


def _paint_water(here: Here, state: PaintState) -> Terms:
    diffusivity = here.film.anchor.draws.paint_diffusivity_m2_s
    return {
        "left_g_m2": term("g/m²", here.film.water_g_m2, mark("water left in the layer")),
        "share_left": term("", state.share_kept(), mark("share of the water still there (Crank's series)")),
        "fourier": term("", state.fourier, mark("D t/h² so far")),
        "fourier_through": term("", THROUGH_NUMBER, mark("D t/h² when dry through")),
        "diffusivity_m2_s": term("m²/s", diffusivity, mark("D, in the paint at 23 °C, in air of any humidity")),
    }


def _paint_ages(here: Here, state: PaintState, product: PaintProduct) -> Terms:
    return {
        **pace_terms(here, product.draws),
        "humidity_rate": term(
            "",
            humidity_rate(here.plate.humidity, product.draws.humidity_term),
            mark("g(RH), of the top alone, 1 at 50 %"),
        ),
        "surface_age_h": term("h", state.surface_age_s / HOUR_S, mark("age of the top so far")),
        "touch_needed_h": term("h", product.touch_age_s / HOUR_S, mark("age of the top when dry to touch")),
        "recoat_needed_h": term(
            "h", product.recoat_age_s / HOUR_S, mark("age of the top to recoat, if dry through by then")
        ),
        "cure_age_h": term("h", state.cure_age_s / HOUR_S, mark("θ_c so far")),
        "cure_needed_h": term("h", product.cure_age_s / HOUR_S, mark("θ_c when cured")),
    }
