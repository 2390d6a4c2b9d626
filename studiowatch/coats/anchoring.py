"""Anchoring: what a product must be like so that the model gives its sheet's own times at the sheet's own conditions.

The sheet's film is dried once at 23 °C and 50 % RH. The factor kappa on the vapour transfer is sought so that free
water goes at the sheet's touch-dry time; the rate of bound water and the ages for recoating and cure are read off the
same run. Away from those conditions physics only scales the sheet's times.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from math import inf

import numpy as np

from studiowatch.coats.bound_water import BOUND_AS_LAID, CLEAR_BELOW, Drift, water_content
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.draws import NOMINAL, Draws
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.free_water import Layer, layer
from studiowatch.coats.paint import PaintProduct
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import Product, WaterState, freshly_laid, lose_free_water
from studiowatch.physics.air import Air
from studiowatch.physics.constants import REFERENCE_HUMIDITY_PCT, REFERENCE_TEMPERATURE_C, ZERO_CELSIUS_K
from studiowatch.physics.plate_transfer import Face, PlateAir
from studiowatch.physics.ranges import Array

REFERENCE_AIR = Air(  # 23 °C, 50 % RH: ISO 3270, ASTM D3924; the air speed of a calm laboratory: assumption
    temperature_C=REFERENCE_TEMPERATURE_C, humidity_pct=REFERENCE_HUMIDITY_PCT, air_speed_m_s=0.1
)
REFERENCE_SIDE_M = 0.15  # m, side of a test panel; assumption
PLAUSIBLE_KAPPA = (0.5, 2.5)  # outside this the sheet's times and thickness do not fit each other; assumption

_KAPPA = (0.02, 50.0)  # where kappa is sought
_TOLERANCE_S = 0.05  # s, of the touch-dry time
_ATTEMPTS = 60
_LEAST_GAP_S = 60.0  # s from touch-dry to clear and on, where kappa could not be found
_MOST_SOLIDS = 0.70  # of the volume, in any draw


class NotModelled(ValueError):  # noqa: N818 - a plain word for a plain fault
    """A kind of coat that is not modelled. The message is one sentence for the user."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Anchor:
    """A product tied to its sheet, per draw.

    Attributes
    ----------
    wet_m, solids : ndarray
        The sheet's own wet film, m, and the volume share of polymer.
    fastest : ndarray
        Péclet number of the sheet's own run but for the product's own factor, see `WaterState`.
    agrees : bool
        False if kappa is implausible; `sentence` then says so, else it is "".
    """

    sheet: DataSheet
    draws: Draws
    wet_m: Array
    solids: Array
    product: Product | PaintProduct
    fastest: Array
    agrees: bool = True
    sentence: str = ""

    @property
    def kappa(self) -> float:
        """Vapour transfer of this product over that of a plate of water, nominal; 1 for paint."""
        return float(self.product.kappa[0]) if isinstance(self.product, Product) else 1.0

    def layer(self, *, wet_m: Array, thinning: float, side_m: float, face: Face) -> Layer:
        """Return a layer of this product; `thinning` is the volume of water added over that of the product."""
        return layer(
            wet_m=wet_m,
            solids=self.solids / (1.0 + thinning),
            reference_dry_m=self.wet_m * self.solids,
            thickness_power=self.draws.thickness_power,
            side_m=side_m,
            face=face,
        )


@lru_cache(maxsize=128)
def anchor(sheet: DataSheet, draws: Draws = NOMINAL) -> Anchor:
    """Return `sheet` tied to its own times in each draw; remembered, for the search takes a moment.

    Raises
    ------
    NotModelled
        If the coat is solvent-borne.
    """
    if sheet.kind is Kind.SOLVENTBORNE:
        raise NotModelled(f"{sheet.title} is solvent-borne; drying is modelled for water-borne coats and paint only")
    wet_m = np.full(len(draws), sheet.wet_um * 1e-6)
    solids = np.minimum(sheet.volume_solids * draws.solids_factor, _MOST_SOLIDS)
    if sheet.kind is Kind.PAINT:
        product = _paint(sheet, draws)
        return Anchor(
            sheet=sheet, draws=draws, wet_m=wet_m, solids=solids, product=product, fastest=np.ones(len(draws))
        )
    return _waterborne(sheet, draws, wet_m, solids)


def _paint(sheet: DataSheet, draws: Draws) -> PaintProduct:
    return PaintProduct(
        draws=draws,
        touch_age_s=sheet.touch_dry_min * 60.0 * draws.sheet_time_factor,
        recoat_age_s=sheet.recoat_h * 3600.0 * draws.sheet_time_factor,
        cure_age_s=sheet.cure_days * 86400.0 * draws.sheet_time_factor,
    )


def _waterborne(sheet: DataSheet, draws: Draws, wet_m: Array, solids: Array) -> Anchor:
    film = layer(
        wet_m=wet_m,
        solids=solids,
        reference_dry_m=wet_m * solids,
        thickness_power=draws.thickness_power,
        side_m=REFERENCE_SIDE_M,
        face=Face.UP,
    )
    known = draws.in_reference_room()
    plate = air_at_film(REFERENCE_AIR, known, covered=False, side_m=REFERENCE_SIDE_M, face=Face.UP)
    endless = np.full(len(draws), np.inf)
    mfft_K = np.ones(len(draws)) if sheet.mfft_C is None else sheet.mfft_C + ZERO_CELSIUS_K + draws.mfft_offset_K
    blank = Product(
        draws=draws,
        kappa=np.ones(len(draws)),
        bound_rate_per_s=np.zeros(len(draws)),
        recoat_age_s=endless,
        cure_age_s=endless,
        mfft_K=mfft_K,
    )
    run = _Reference(film=film, plate=plate, product=blank)
    wanted_s = sheet.touch_dry_min * 60.0 * draws.sheet_time_factor
    kappa = run.kappa_for(wanted_s)
    product, state = run.thresholds(sheet, kappa)
    agrees = PLAUSIBLE_KAPPA[0] <= kappa[0] <= PLAUSIBLE_KAPPA[1]
    return Anchor(
        sheet=sheet,
        draws=draws,
        wet_m=wet_m,
        solids=solids,
        product=product,
        fastest=state.fastest,
        agrees=bool(agrees),
        sentence="" if agrees else _disagreement(sheet, float(kappa[0])),
    )


def _disagreement(sheet: DataSheet, kappa: float) -> str:
    slow = "longer" if kappa < 1.0 else "shorter"
    return (
        f"{sheet.title}: touch-dry in {sheet.touch_dry_min:g} min is far {slow} than {sheet.wet_um:.0f} µm wet at "
        f"{100.0 * sheet.volume_solids:.0f} % solids would take (kappa {kappa:.2g}, plausible "
        f"{PLAUSIBLE_KAPPA[0]:g} to {PLAUSIBLE_KAPPA[1]:g}); check the times and the thickness on the product's sheet"
    )


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Reference:
    """The sheet's film in the sheet's room."""

    film: Layer
    plate: PlateAir
    product: Product

    def dried(self, kappa: Array) -> WaterState:
        """Return the state in which each draw was when its free water had just gone."""
        product = replace(self.product, kappa=kappa)
        state, elapsed_s = freshly_laid(self.film, self.plate.air_K), 0.0
        while state.wet:
            state, lost = lose_free_water(self.film, product, state, self.plate, longest_s=inf, elapsed_s=elapsed_s)
            elapsed_s += lost.dt_s
        return state

    def kappa_for(self, wanted_s: Array) -> Array:
        """Return the kappa with which free water goes at `wanted_s`: in each draw the end of the range if none does.

        The time is all but linear in 1/kappa, so the bracket is cut where the chord through its ends crosses zero, and
        the weight of an end that stays twice is halved (the Illinois rule).
        """
        low, high = np.full(wanted_s.size, 1.0 / _KAPPA[1]), np.full(wanted_s.size, 1.0 / _KAPPA[0])
        at_low, at_high = self._miss_s(low, wanted_s), self._miss_s(high, wanted_s)
        inverse = np.where(at_low >= 0.0, low, high)
        sought = (at_low < 0.0) & (at_high > 0.0)
        last = np.zeros(wanted_s.size)
        for _ in range(_ATTEMPTS):
            if not sought.any():
                return 1.0 / inverse
            chord = (low * at_high - high * at_low) / np.where(sought, at_high - at_low, 1.0)
            inverse = np.where(sought, chord, inverse)
            miss_s = self._miss_s(inverse, wanted_s)
            side = np.sign(miss_s)
            at_high = np.where(side > 0.0, miss_s, np.where(side == last, at_high / 2.0, at_high))
            at_low = np.where(side < 0.0, miss_s, np.where(side == last, at_low / 2.0, at_low))
            low, high = np.where(side < 0.0, inverse, low), np.where(side > 0.0, inverse, high)
            last = side
            sought &= np.abs(miss_s) >= _TOLERANCE_S
        raise ArithmeticError("kappa was not found; the drying time must rise with the resistance of the air")

    def _miss_s(self, inverse: Array, wanted_s: Array) -> Array:
        return _touch_dry_s(self.dried(1.0 / inverse)) - wanted_s

    def thresholds(self, sheet: DataSheet, kappa: Array) -> tuple[Product, WaterState]:
        """Return the product whose clear, recoat and cure times are the sheet's, and the run they were read off."""
        state = self.dried(kappa)
        draws = self.product.draws
        drift = Drift(film_K=state.film_K, air_K=self.plate.air_K, draws=draws)

        def from_touch_dry_s(hours: float) -> Array:
            """Return the time from touch-dry to a time on the sheet, s."""
            return np.maximum(hours * 3600.0 * draws.sheet_time_factor - _touch_dry_s(state), _LEAST_GAP_S)

        clear_h = sheet.recoat_h if sheet.clear_h is None else sheet.clear_h
        clear_age_s = drift.diffusion_age(from_touch_dry_s(clear_h))
        kept = float(water_content(REFERENCE_HUMIDITY_PCT / 100.0))
        product = replace(
            self.product,
            kappa=kappa,
            bound_rate_per_s=np.log((BOUND_AS_LAID - kept) / (CLEAR_BELOW - kept)) / clear_age_s,
            recoat_age_s=drift.diffusion_age(from_touch_dry_s(sheet.recoat_h)),
            cure_age_s=state.cure_age_s + drift.cure_age(from_touch_dry_s(sheet.cure_days * 24.0)),
        )
        return product, state


def _touch_dry_s(state: WaterState) -> Array:
    touch_dry_s: Array = state.reached[ROW[Stage.DRY_TO_TOUCH]]
    return touch_dry_s
