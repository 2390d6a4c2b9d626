"""The terms of a solvent-borne coat's balance: solvent vapour through the air, then solvent through the resin."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import numpy as np

from studiowatch.coats.free_water import Balance
from studiowatch.coats.solvent import activity, coefficients
from studiowatch.coats.solventborne import (
    BLUSH_MARGIN_K,
    SolventProduct,
    SolventState,
    retained_as_laid,
    solvent_balance,
)
from studiowatch.coats.terms import (
    G_M2,
    G_M2_H,
    HOUR_S,
    Here,
    Terms,
    diffusion_rate,
    heat_terms,
    out_of_play,
    pace_terms,
    term,
)
from studiowatch.physics import moist_air
from studiowatch.physics.constants import ZERO_CELSIUS_K
from studiowatch.speech.words import mark


def solvent_groups(here: Here, state: SolventState, product: SolventProduct) -> Mapping[str, Terms]:
    """Return the groups of terms of a solvent-borne coat."""
    now = solvent_balance(here.film.layer, product, replace(state, film_K=here.film_K), here.plate)
    exchange = {
        "vapour": _vapour(here, now, state, product),
        "transfer": _transfer(here, now, product),
        "heat": heat_terms(here, now, product.draws),
    }
    return {
        **(exchange if state.free[0] > 0.0 else out_of_play(exchange)),
        "solvent": _solvent(here, state, product),
        "blush": _blush(here, state),
        "ages": _ages(here, state, product),
    }


def _vapour(here: Here, now: Balance, state: SolventState, product: SolventProduct) -> Terms:
    held_m = (state.free + state.retained) / product.solvent.density_kg_m3
    share = activity(held_m, here.film.layer.packed_m) if held_m[0] > 0.0 else None
    return {
        "saturated_g_m3": term("g/m³", 1000.0 * now.deficit_kg_m3, mark("c_sat(T_f), over the solvent alone")),
        "activity": term("", share, mark("a, of the solvent over the film (Flory and Huggins)")),
        "solvent_share": term(
            "", held_m / (held_m + here.film.layer.packed_m), mark("φ, solvent's share of the volume")
        ),
    }


def _transfer(here: Here, now: Balance, product: SolventProduct) -> Terms:
    plate, side_m = here.plate, here.film.layer.side_m
    vapour_Pa = product.solvent.saturation_pressure(here.film_K)
    heat, mass = coefficients(product.solvent, plate, here.film_K, vapour_Pa, side_m)
    diffusivity = product.solvent.diffusivity(plate.air_K, plate.pressure_Pa)
    return {
        "reynolds": term("", here.speed_m_s * side_m / here.viscosity_m2_s, mark("Re = v L / kinematic viscosity")),
        "prandtl": term("", plate.prandtl, "Pr"),
        "schmidt": term("", here.viscosity_m2_s / diffusivity, mark("Sc = kinematic viscosity / D")),
        "diffusivity_m2_s": term("m²/s", diffusivity, mark("D, solvent vapour in air")),
        "nusselt": term("", heat / plate.heat_per_nusselt, mark("Nu, forced and free flow together")),
        "sherwood": term("", mass * side_m / diffusivity, mark("Sh, forced and free flow together")),
        "heat_W_m2_K": term("W/(m² K)", heat, "h_c = Nu λ/L"),
        "kappa": term("", product.kappa, mark("κ, of this product, from its sheet")),
        "mass_m_s": term("m/s", product.kappa * mass, "k_m = κ Sh D/L"),  # not said
        "flux_g_m2_h": term("g/(m² h)", G_M2_H * now.flux, mark("J = k_m a c_sat(T_f); the room's air holds none")),
    }


def _solvent(here: Here, state: SolventState, product: SolventProduct) -> Terms:
    layer = here.film.layer
    pace_s = product.bound_rate_per_s * diffusion_rate(here, product.draws) / layer.slowness
    leaving = G_M2_H * pace_s * state.retained if state.free[0] <= 0.0 else None
    retained = retained_as_laid(product.solvent, layer)
    return {
        "as_laid_g_m2": term("g/m²", G_M2 * (layer.free_laid + retained), mark("free and retained, as laid")),
        "free_g_m2": term("g/m²", G_M2 * state.free, mark("leaves through the air")),
        "free_when_set_g_m2": term("g/m²", G_M2 * layer.free_packed, mark("free when set to touch")),
        "retained_g_m2": term("g/m²", G_M2 * state.retained, mark("must leave through the resin")),
        "resin_g_m2": term("g/m²", G_M2 * layer.polymer_kg_m2, mark("resin")),
        "retained_rate_per_h": term(
            "1/h", HOUR_S * product.bound_rate_per_s, mark("k_b, in the sheet's film at 23 °C")
        ),
        "retained_flux_g_m2_h": term("g/(m² h)", leaving, mark("k_b a_D/(h/h_ref)ⁿ times the retained")),
    }


def _blush(here: Here, state: SolventState) -> Terms:
    air_C, humidity_pct = here.air.temperature_C, here.air.humidity_pct
    dew_C = moist_air.dew_point_if_any(air_C, humidity_pct)
    margin = None if dew_C is None else here.film_K - ZERO_CELSIUS_K - dew_C
    began_h = state.blush_from_s / HOUR_S
    return {
        "margin_K": term("K", margin, mark("film over dew point")),
        "blushes_below_K": term("K", BLUSH_MARGIN_K, mark("margin under which a wet film takes up water")),
        "blush_h": term("h", state.blush_s / HOUR_S, mark("time below that margin while wet, so far")),
        "blush_from_h": term("h", began_h if np.isfinite(began_h[0]) else None, mark("age when that began")),
    }


def _ages(here: Here, state: SolventState, product: SolventProduct) -> Terms:
    return {
        **pace_terms(here, product.draws),
        "recoat_age_h": term("h", state.recoat_age_s / HOUR_S, mark("θ_r so far; runs once free solvent has gone")),
        "recoat_needed_h": term("h", product.recoat_age_s / HOUR_S, mark("θ_r when dry to recoat")),
        "cure_age_h": term("h", state.cure_age_s / HOUR_S, mark("θ_c so far; runs once set")),
        "cure_needed_h": term("h", product.cure_age_s / HOUR_S, mark("θ_c when cured")),
    }
