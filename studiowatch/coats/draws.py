"""Draws: the many studios that would all fit what is known, one of which is hers.

Draw 0 is always the nominal run, every quantity at its centre. The others are a Latin hypercube, so that a few dozen
of them already cover each quantity evenly. Every quantity rises with, or stays along, a coordinate that is standard
normal before anything was seen: what is learnt is learnt in these coordinates.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from functools import lru_cache
from statistics import NormalDist

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.speech.words import say

MEASURED_SPREAD = 0.07  # s.d. of ln thickness when grams or mL were measured; assumption
GUESSED_SPREAD = 0.20  # s.d. of ln thickness when it was not; assumption
AIR_SPEED_SPREAD = 0.35  # s.d. of ln air speed: sensor and place; assumption
AIR_SPEED_FLOOR_M_S = (0.02, 0.05)  # m/s, ends of what a heated bead cannot tell from still air; from memory
TEMPERATURE_SPREAD_K = 0.4  # K, sensor and place; assumption
HUMIDITY_SPREAD_PCT = 3.0  # %, sensor and place; assumption
SOLIDS_SPREAD = 0.04  # s.d. of ln volume solids; assumption
RECOAT_ENERGY = (38e3, 10e3)  # J/mol, centre and s.d.: water through a polymer film; from memory
CURE_ENERGY = (60e3, 15e3)  # J/mol, centre and s.d.; "halves per 10 K" is 50e3; from memory
CROWDED = 0.25  # how the draws of the thickness power that are under 2 crowd towards it; assumption
CANDIDATES = 20  # hypercubes drawn, the least correlated of which is kept
LEAST_ENERGY = 5e3  # J/mol: no draw may run backwards
MFFT_SPREAD_K = 2.0  # K; assumption
SHEET_TIME_SPREAD = 0.15  # s.d. of ln of all times on a sheet; assumption
LAYER_DIFFUSIVITY = (7e-7, 0.3)  # m²/s and s.d. of its ln, vapour in the dry layer; Kiil (2006); spread: assumption
BACK_CONDUCTANCE = (6.0, 0.3)  # W/(m² K) and s.d. of its ln, through canvas or panel; from memory
THICKNESS_POWER = (1.0, 2.0)  # between drying at the face and through the film; median 2, diffusion; assumption
HUMIDITY_TERM = (0.5, 1.5)  # strength of the humidity term of the recoat age; centre 1; assumption
PAINT_DIFFUSIVITY = (9.5e-13, 0.9)  # m²/s and s.d. of its ln: 3e-13 to 3e-12 holds 80 % of the draws; from memory

_NORMAL = NormalDist()


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Draws:
    """One value per draw of all that is not known well. Equal only to itself, so it may key a cache.

    Attributes
    ----------
    thickness_factor : ndarray
        The thickness laid over the thickness stated.
    air_speed_factor, air_speed_floor_m_s, temperature_offset_K, humidity_offset_pct : ndarray
        What the room at the film is, against what the board says.
    solids_factor, sheet_time_factor : ndarray
        What the product is, against what its sheet says.
    recoat_energy_J_mol, cure_energy_J_mol, mfft_offset_K, layer_diffusivity_m2_s, paint_diffusivity_m2_s : ndarray
        Properties of the film: J/mol, K, m²/s.
    back_conductance_W_m2_K : ndarray
        Heat through the back of the piece, W/(m² K).
    thickness_power, humidity_term : ndarray
        Exponent of thickness in the recoat age, and strength of its humidity term.
    """

    thickness_factor: Array
    air_speed_factor: Array
    air_speed_floor_m_s: Array
    temperature_offset_K: Array
    humidity_offset_pct: Array
    solids_factor: Array
    sheet_time_factor: Array
    recoat_energy_J_mol: Array
    cure_energy_J_mol: Array
    mfft_offset_K: Array
    layer_diffusivity_m2_s: Array
    paint_diffusivity_m2_s: Array
    back_conductance_W_m2_K: Array
    thickness_power: Array
    humidity_term: Array

    def __len__(self) -> int:
        """Return the number of draws, the nominal one among them."""
        return int(self.thickness_factor.size)

    def in_reference_room(self) -> Draws:
        """Return the same products and pieces in a room that is known exactly."""
        zero, one = np.zeros(len(self)), np.ones(len(self))
        return replace(
            self,
            thickness_factor=one,
            air_speed_factor=one,
            air_speed_floor_m_s=zero,
            temperature_offset_K=zero,
            humidity_offset_pct=zero,
        )


FIELDS = tuple(field.name for field in fields(Draws))


@lru_cache(maxsize=32)
def sample(n: int, seed: int = 0, *, measured: bool = False) -> Draws:
    """Return `n` draws, the first of them nominal; the same arguments give the same object.

    Parameters
    ----------
    measured : bool
        Whether the grams or mL of the coat were measured: its thickness is then known better.

    Raises
    ------
    ValueError
        If `n` is below 1.
    """
    return draws_of(latin_hypercube(n, seed), measured=measured)


def latin_hypercube(n: int, seed: int) -> Array:
    """Return the coordinates of `n` draws, shape (n, fields): 0 for the nominal one, one from each equal slice else.

    Raises
    ------
    ValueError
        If `n` is below 1.
    """
    if n < 1:
        raise ValueError(say("draws is {number}; it must be a whole number from 1 up", number=n))
    rng = np.random.default_rng(seed)
    shares = min((_slices(n - 1, rng) for _ in range(CANDIDATES)), key=_correlation)
    inverse = np.vectorize(_NORMAL.inv_cdf, otypes=[np.float64])
    return np.vstack([np.zeros(len(FIELDS)), inverse(shares) if n > 1 else np.empty((0, len(FIELDS)))])


def _slices(n: int, rng: np.random.Generator) -> Array:
    """Return one share from each of `n` equal slices, shape (n, fields), each field in an order of its own."""
    columns = [(rng.permutation(n) + rng.uniform(0.05, 0.95, n)) / max(n, 1) for _ in FIELDS]
    return np.column_stack(columns)


def _correlation(shares: Array) -> float:
    """Return the strongest correlation between two fields, 0-1: chance alone makes some, and it would show in p90."""
    if len(shares) < len(FIELDS):
        return 0.0
    return float(np.abs(np.corrcoef(shares, rowvar=False) - np.eye(len(FIELDS))).max())


def draws_of(coordinates: Array, *, measured: bool) -> Draws:
    """Return the draws at these coordinates, shape (n, fields)."""
    at: dict[str, Array] = dict(zip(FIELDS, coordinates.T, strict=True))

    def factor(field: str, sigma: float) -> Array:
        return np.exp(sigma * at[field])

    def energy(field: str, centre: float, sigma: float) -> Array:
        return np.maximum(centre + sigma * at[field], LEAST_ENERGY)

    def share(field: str) -> Array:
        return np.array([_NORMAL.cdf(z) for z in at[field]])

    least_m_s, most_m_s = AIR_SPEED_FLOOR_M_S
    return Draws(
        thickness_factor=factor("thickness_factor", MEASURED_SPREAD if measured else GUESSED_SPREAD),
        air_speed_factor=factor("air_speed_factor", AIR_SPEED_SPREAD),
        air_speed_floor_m_s=least_m_s * (most_m_s / least_m_s) ** share("air_speed_floor_m_s"),
        temperature_offset_K=TEMPERATURE_SPREAD_K * at["temperature_offset_K"],
        humidity_offset_pct=HUMIDITY_SPREAD_PCT * at["humidity_offset_pct"],
        solids_factor=factor("solids_factor", SOLIDS_SPREAD),
        sheet_time_factor=factor("sheet_time_factor", SHEET_TIME_SPREAD),
        recoat_energy_J_mol=energy("recoat_energy_J_mol", *RECOAT_ENERGY),
        cure_energy_J_mol=energy("cure_energy_J_mol", *CURE_ENERGY),
        mfft_offset_K=MFFT_SPREAD_K * at["mfft_offset_K"],
        layer_diffusivity_m2_s=LAYER_DIFFUSIVITY[0] * factor("layer_diffusivity_m2_s", LAYER_DIFFUSIVITY[1]),
        paint_diffusivity_m2_s=PAINT_DIFFUSIVITY[0] * factor("paint_diffusivity_m2_s", PAINT_DIFFUSIVITY[1]),
        back_conductance_W_m2_K=BACK_CONDUCTANCE[0] * factor("back_conductance_W_m2_K", BACK_CONDUCTANCE[1]),
        thickness_power=_power(share("thickness_power")),
        humidity_term=HUMIDITY_TERM[0] + (HUMIDITY_TERM[1] - HUMIDITY_TERM[0]) * share("humidity_term"),
    )


def _power(share: Array) -> Array:
    """Return exponents of which half are 2, as diffusion has it, and the others thin out from there down to 1."""
    low, high = THICKNESS_POWER
    return low + (high - low) * np.minimum(2.0 * share, 1.0) ** CROWDED


NOMINAL = sample(1)
