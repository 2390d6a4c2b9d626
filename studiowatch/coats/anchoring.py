"""Anchoring: what a product must be like so that the model gives its sheet's own times at the sheet's own conditions.

The sheet's film is dried once at 23 °C and 50 % RH. The factor kappa on the vapour transfer is sought so that free
water, or solvent, goes at the sheet's touch-dry time; the rate of what is bound and the ages for recoating and cure are
read off the same run. Away from those conditions physics only scales the sheet's times.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache, partial
from math import inf, log

import numpy as np

from studiowatch.coats import solventborne, waterborne
from studiowatch.coats.bound_water import BOUND_AS_LAID, CLEAR_BELOW, water_content
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.draws import NOMINAL, Draws
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.free_water import Layer, layer
from studiowatch.coats.paint import PaintProduct
from studiowatch.coats.reference_run import SheetAges, kappa_for
from studiowatch.coats.solvent import WHITE_SPIRIT
from studiowatch.coats.solventborne import (
    LEFT_AT_RECOAT,
    RETAINED,
    SolventProduct,
    SolventState,
    lose_free_solvent,
    solvent_draws,
    solvent_layer,
)
from studiowatch.coats.waterborne import Product, WaterState, lose_free_water
from studiowatch.physics.air import Air
from studiowatch.physics.constants import REFERENCE_HUMIDITY_PCT, REFERENCE_TEMPERATURE_C, ZERO_CELSIUS_K
from studiowatch.physics.plate_transfer import Face, PlateAir
from studiowatch.physics.ranges import Array
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

REFERENCE_AIR = Air(  # 23 °C, 50 % RH: ISO 3270, ASTM D3924; the air speed of a calm laboratory: assumption
    temperature_C=REFERENCE_TEMPERATURE_C, humidity_pct=REFERENCE_HUMIDITY_PCT, air_speed_m_s=0.1
)
REFERENCE_SIDE_M = 0.15  # m, side of a test panel; assumption
PLAUSIBLE_KAPPA = (0.5, 2.5)  # outside this the sheet's times and thickness do not fit each other; assumption
REMEMBERED = 24  # anchors of up to 0.1 MB: those of the products at hand, live and planned; assumption

_MOST_SOLIDS = {Kind.SOLVENTBORNE: 0.90, Kind.PAINT: 1.0}  # of the volume, in any draw
_MOST_SOLIDS_IN_WATER = 0.70  # of the volume, in any draw of a coat that sets by packing


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
    product: Product | SolventProduct | PaintProduct
    fastest: Array
    agrees: bool = True
    sentence: str = ""

    @property
    def kappa(self) -> float:
        """Vapour transfer of this product over that of a plate of water, or of white spirit, nominal; 1 for paint."""
        return 1.0 if isinstance(self.product, PaintProduct) else float(self.product.kappa[0])

    def layer(self, *, wet_m: Array, thinning: Array | float, side_m: float, face: Face) -> Layer:
        """Return a layer of this product; `thinning` is the volume of thinner added over that of the product."""
        lay_out = partial(solvent_layer, self.product.solvent) if isinstance(self.product, SolventProduct) else layer
        return lay_out(
            wet_m=wet_m,
            solids=self.solids / (1.0 + thinning),
            reference_dry_m=self.wet_m * self.solids,
            thickness_power=self.draws.thickness_power,
            side_m=side_m,
            face=face,
        )

    def bare(self, coat: Layer) -> Layer:
        """Return a layer of this product as it was laid, without what it took up from a wet one below."""
        solids = coat.dry_m / coat.wet_m
        thinning = self.solids / solids - 1.0
        return self.layer(wet_m=coat.wet_m, thinning=thinning, side_m=coat.side_m, face=coat.face)


@lru_cache(maxsize=REMEMBERED)
def anchor(sheet: DataSheet, draws: Draws = NOMINAL) -> Anchor:
    """Return `sheet` tied to its own times in each draw; remembered, for the search takes a moment."""
    wet_m = np.full(len(draws), sheet.wet_um * 1e-6)
    solids = np.minimum(sheet.volume_solids * draws.solids_factor, _MOST_SOLIDS.get(sheet.kind, _MOST_SOLIDS_IN_WATER))
    if sheet.kind is Kind.PAINT:
        product = _paint(sheet, draws)
        return Anchor(
            sheet=sheet, draws=draws, wet_m=wet_m, solids=solids, product=product, fastest=np.ones(len(draws))
        )
    tie = _solventborne if sheet.kind is Kind.SOLVENTBORNE else _waterborne
    return tie(sheet, draws, wet_m, solids)


def _paint(sheet: DataSheet, draws: Draws) -> PaintProduct:
    return PaintProduct(
        draws=draws,
        touch_age_s=sheet.touch_dry_min * 60.0 * draws.sheet_time_factor,
        recoat_age_s=sheet.recoat_h * 3600.0 * draws.sheet_time_factor,
        cure_age_s=sheet.cure_days * 86400.0 * draws.sheet_time_factor,
    )


def _waterborne(sheet: DataSheet, draws: Draws, wet_m: Array, solids: Array) -> Anchor:
    many = len(draws)
    blank = Product(
        draws=draws,
        kappa=np.ones(many),
        bound_rate_per_s=np.zeros(many),
        recoat_age_s=np.full(many, inf),
        cure_age_s=np.full(many, inf),
        mfft_K=np.ones(many) if sheet.mfft_C is None else sheet.mfft_C + ZERO_CELSIUS_K + draws.mfft_offset_K,
    )
    untied = Anchor(sheet=sheet, draws=draws, wet_m=wet_m, solids=solids, product=blank, fastest=np.ones(many))
    film, plate = _on_the_panel(untied)

    def dried(kappa: Array) -> WaterState:
        product = replace(blank, kappa=kappa)
        state, elapsed_s = waterborne.freshly_laid(film, plate.air_K), 0.0
        while state.wet:
            state, lost = lose_free_water(film, product, state, plate, longest_s=inf, elapsed_s=elapsed_s)
            elapsed_s += lost.dt_s
        return state

    kappa = kappa_for(dried, _touch_dry_s(sheet, draws))
    state = dried(kappa)
    ages = SheetAges(sheet=sheet, draws=draws, state=state, plate=plate)
    clear_age_s = ages.diffusion_age(sheet.recoat_h if sheet.clear_h is None else sheet.clear_h)
    kept = float(water_content(REFERENCE_HUMIDITY_PCT / 100.0))
    product = replace(
        blank,
        kappa=kappa,
        bound_rate_per_s=log((BOUND_AS_LAID - kept) / (CLEAR_BELOW - kept)) / clear_age_s,
        recoat_age_s=ages.diffusion_age(sheet.recoat_h),
        cure_age_s=ages.cure_age(),
    )
    return _tied(replace(untied, product=product, fastest=state.fastest))


def _solventborne(sheet: DataSheet, draws: Draws, wet_m: Array, solids: Array) -> Anchor:
    many = len(draws)
    blank = SolventProduct(
        draws=solvent_draws(draws),
        solvent=WHITE_SPIRIT,
        kappa=np.ones(many),
        bound_rate_per_s=np.zeros(many),
        recoat_age_s=np.full(many, inf),
        cure_age_s=np.full(many, inf),
    )
    untied = Anchor(sheet=sheet, draws=draws, wet_m=wet_m, solids=solids, product=blank, fastest=np.ones(many))
    film, plate = _on_the_panel(untied)

    def dried(kappa: Array) -> SolventState:
        product = replace(blank, kappa=kappa)
        state, elapsed_s = solventborne.freshly_laid(film, product, plate.air_K), 0.0
        while state.wet:
            state, lost = lose_free_solvent(film, product, state, plate, longest_s=inf, elapsed_s=elapsed_s)
            elapsed_s += lost.dt_s
        return state

    kappa = kappa_for(dried, _touch_dry_s(sheet, draws))
    ages = SheetAges(sheet=sheet, draws=blank.draws, state=dried(kappa), plate=plate)
    recoat_age_s = ages.diffusion_age(sheet.recoat_h)
    product = replace(
        blank,
        kappa=kappa,
        bound_rate_per_s=log(RETAINED / LEFT_AT_RECOAT) / recoat_age_s,
        recoat_age_s=recoat_age_s,
        cure_age_s=ages.cure_age(),
    )
    return _tied(replace(untied, product=product))


def _on_the_panel(untied: Anchor) -> tuple[Layer, PlateAir]:
    """Return the sheet's own film on a test panel, and the air of the sheet's room over it, which is known exactly."""
    film = untied.layer(wet_m=untied.wet_m, thinning=0.0, side_m=REFERENCE_SIDE_M, face=Face.UP)
    known = untied.draws.in_reference_room()
    return film, air_at_film(REFERENCE_AIR, known, covered=False, side_m=REFERENCE_SIDE_M, face=Face.UP)


def _touch_dry_s(sheet: DataSheet, draws: Draws) -> Array:
    return sheet.touch_dry_min * 60.0 * draws.sheet_time_factor


def _tied(found: Anchor) -> Anchor:
    """Return an anchor that says whether the sheet's times and thickness fit each other."""
    agrees = PLAUSIBLE_KAPPA[0] <= found.kappa <= PLAUSIBLE_KAPPA[1]
    return replace(found, agrees=agrees, sentence="" if agrees else _disagreement(found.sheet, found.kappa))


def _disagreement(sheet: DataSheet, kappa: float) -> str:
    units = chosen()
    return say(
        _TOO_LONG if kappa < 1.0 else _TOO_SHORT,
        product=sheet.title,
        minutes=units.plain(sheet.touch_dry_min),
        film=units.film(sheet.wet_um),
        solids=units.number(100.0 * sheet.volume_solids),
        kappa=units.plain(float(f"{kappa:.2g}")),
        low=units.plain(PLAUSIBLE_KAPPA[0]),
        high=units.plain(PLAUSIBLE_KAPPA[1]),
    )


_TOO_LONG = mark(
    "{product}: touch-dry in {minutes} min is far longer than {film} wet at {solids} % solids "
    "would take (kappa {kappa}, "
    "plausible {low} to {high}); check the times and the thickness on the product's sheet"
)
_TOO_SHORT = mark(
    "{product}: touch-dry in {minutes} min is far shorter than {film} wet at {solids} % solids "
    "would take (kappa {kappa}, "
    "plausible {low} to {high}); check the times and the thickness on the product's sheet"
)
