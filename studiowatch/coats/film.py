"""A coat on a piece, from the brush to cured: laid once, then advanced by the air as it comes.

The same `advance` serves the live coat, the replayed log and the look ahead. The film carries many draws at once; its
properties speak of draw 0, the nominal run.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import inf, isfinite

import numpy as np

from studiowatch.coats import paint, waterborne
from studiowatch.coats.anchoring import Anchor, NotModelled
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.free_water import Layer
from studiowatch.coats.paint import PaintProduct, PaintState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.coats.waterborne import Product, WaterState
from studiowatch.physics.air import Air
from studiowatch.physics.constants import REFERENCE_TEMPERATURE_K, WATER_DENSITY, ZERO_CELSIUS_K
from studiowatch.physics.plate_transfer import Face, PlateAir
from studiowatch.physics.ranges import Array, check

__all__ = ["Film", "NotModelled", "StageReached", "advance", "lay", "sealed_in_g_m2"]

WET_UM = (1.0, 10_000.0)  # µm, film that may be laid
SIDE_M = (0.01, 10.0)  # m, side of the square of the piece's area
THINNED_PCT = (0.0, 100.0)  # % of the volume
LONGEST_STEP_S = 4.0e8  # s, over twelve years


@dataclass(frozen=True, slots=True, kw_only=True)
class StageReached:
    """The nominal run reached `stage` when the coat was `elapsed_s` old."""

    stage: Stage
    elapsed_s: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Film:
    """One coat at one moment.

    Attributes
    ----------
    wet_um : float
        Film as stated when it was laid, µm.
    thinned_pct : float
        Water added, % of the volume of the product.
    elapsed_s : float
        Age of the coat, s.
    sealed_in_g_m2 : float
        Water of the coat below that this one was laid over, g/m²; 0 if that was ready.
    layer, state
        What was laid, and how it stands, per draw.
    """

    sheet: DataSheet
    anchor: Anchor
    wet_um: float
    thinned_pct: float
    layer: Layer
    state: WaterState | PaintState
    elapsed_s: float = 0.0
    sealed_in_g_m2: float = 0.0

    @property
    def dry_um(self) -> float:
        """Thickness when dry, µm."""
        return self.wet_um * self.sheet.volume_solids / (1.0 + self.thinned_pct / 100.0)

    @property
    def surface(self) -> Surface:
        """What a fingertip would find."""
        if self.reached_s(Stage.SET_TO_TOUCH) is None:
            return Surface.WET
        return Surface.TACKY if self.reached_s(Stage.TACK_FREE) is None else Surface.DRY

    @property
    def milky(self) -> bool:
        """Whether this is a clear coat that has not cleared yet."""
        return self.sheet.clear_film and self.reached_s(Stage.CLEAR) is None

    @property
    def film_C(self) -> float | None:
        """Temperature of the film, °C; None until the first air has reached it."""
        return float(self.state.film_K[0]) - ZERO_CELSIUS_K if self.elapsed_s > 0.0 else None

    @property
    def water_kg_m2(self) -> Array:
        """Water still in the film, free and bound, kg/m² per draw."""
        if isinstance(self.state, WaterState):
            return self.state.free + self.state.bound * self.layer.polymer_kg_m2
        laid = WATER_DENSITY * (self.layer.wet_m - self.layer.dry_m)
        return laid * paint.share_kept(self.state.fourier)

    @property
    def water_g_m2(self) -> float:
        """Water still in the film, free and bound, g/m²."""
        return 1000.0 * float(self.water_kg_m2[0])

    @property
    def below_mfft(self) -> float:
        """Share of the time from packing to clear, so far, in which the film was too cold to form, 0-1."""
        set_s = self.reached_s(Stage.SET_TO_TOUCH)
        if not isinstance(self.state, WaterState) or set_s is None:
            return 0.0
        clear_s = self.reached_s(Stage.CLEAR)
        forming_s = (self.elapsed_s if clear_s is None else clear_s) - set_s
        return min(float(self.state.below_mfft_s[0]) / forming_s, 1.0) if forming_s > 0.0 else 0.0

    @property
    def chance_below_mfft(self) -> float:
        """Share of the draws that were too cold to form at any time from packing to clear, 0-1."""
        return float(np.mean(self.state.below_mfft_s > 0.0)) if isinstance(self.state, WaterState) else 0.0

    @property
    def skinning(self) -> float:
        """Péclet number of the fastest drying so far over that of the sheet's own run; 1 as on the sheet.

        Particles pile up under the surface where they are swept there faster than they diffuse away: A. F. Routh,
        W. B. Russel (1998), AIChE J. 44, 2088. Particle size and viscosity are the product's and cancel.
        """
        return float(self.state.fastest[0] / self.anchor.fastest[0]) if isinstance(self.state, WaterState) else 0.0

    def reached_s(self, stage: Stage) -> float | None:
        """Return the age at which the nominal run reached `stage`, s, or None if it has not."""
        when_s = float(self.state.reached[ROW[stage], 0])
        return when_s if isfinite(when_s) else None


def sealed_in_g_m2(film: Film) -> float:
    """Return the water that a coat laid now would seal in, g/m²: none if `film` is dry to recoat."""
    return film.water_g_m2 if film.reached_s(Stage.DRY_TO_RECOAT) is None else 0.0


def lay(
    sheet: DataSheet,
    anchor: Anchor,
    *,
    wet_um: float,
    side_m: float,
    orientation: Orientation = Orientation.FACE_UP,
    thinned_pct: float = 0.0,
    over: Film | None = None,
) -> Film:
    """Return a coat that was laid this moment.

    Parameters
    ----------
    anchor : Anchor
        Of the same sheet; its draws are the film's.
    wet_um : float
        Wet film, µm, 1 to 10 000.
    side_m : float
        Side of the square of the piece's area, m, 0.01 to 10.
    thinned_pct : float
        Water added, % of the volume, 0 to 100.
    over : Film or None
        The coat below, as it stands now.

    Raises
    ------
    NotModelled
        If the coat is solvent-borne.
    OutOfRange
        Names the quantity, its value, the unit and the allowed range; NaN is refused.
    """
    if sheet.kind is Kind.SOLVENTBORNE:
        raise NotModelled(f"{sheet.title} is solvent-borne; drying is modelled for water-borne coats and paint only")
    check("wet film", wet_um, *WET_UM, "µm")
    check("side of the piece", side_m, *SIDE_M, "m")
    check("thinning", thinned_pct, *THINNED_PCT, "% of the volume")
    draws = anchor.draws
    laid = anchor.layer(
        wet_m=wet_um * 1e-6 * draws.thickness_factor,
        thinning=thinned_pct / 100.0,
        side_m=side_m,
        face=Face(orientation.value),
    )
    film_K = np.full(len(draws), REFERENCE_TEMPERATURE_K)
    fresh = paint.freshly_laid(film_K) if sheet.kind is Kind.PAINT else waterborne.freshly_laid(laid, film_K)
    return Film(
        sheet=sheet,
        anchor=anchor,
        wet_um=wet_um,
        thinned_pct=thinned_pct,
        layer=laid,
        state=fresh,
        sealed_in_g_m2=0.0 if over is None else sealed_in_g_m2(over),
    )


def advance(film: Film, air: Air, dt_s: float, *, covered: bool = False) -> tuple[Film, tuple[StageReached, ...]]:
    """Return the film after `dt_s` in `air`, and the stages that its nominal run reached meanwhile, in order of time.

    Any step may be taken at once: it is cut inside as finely as the film needs. A fresh film takes the temperature of
    the first air that it meets.

    Raises
    ------
    OutOfRange
        If `dt_s` or a value of `air` is not a number or out of range; the film is unchanged.
    """
    check("time step", dt_s, 0.0, LONGEST_STEP_S, "s")
    plate = air_at_film(air, film.anchor.draws, covered=covered, side_m=film.layer.side_m, face=film.layer.face)
    before = film.state
    state = before if film.elapsed_s > 0.0 else replace(before, film_K=plate.air_K)
    state = _stepped(film, state, plate, dt_s)
    after = Film(
        sheet=film.sheet,
        anchor=film.anchor,
        wet_um=film.wet_um,
        thinned_pct=film.thinned_pct,
        layer=film.layer,
        state=state,
        elapsed_s=film.elapsed_s + dt_s,
        sealed_in_g_m2=film.sealed_in_g_m2,
    )
    return after, _newly_reached(before.reached, state.reached)


def _stepped(film: Film, state: WaterState | PaintState, plate: PlateAir, dt_s: float) -> WaterState | PaintState:
    """Return the state after `dt_s`, in as many steps as it needs."""
    product = film.anchor.product
    if isinstance(state, PaintState) and isinstance(product, PaintProduct):
        return paint.step(film.layer, product, state, plate, dt_s=dt_s, elapsed_s=film.elapsed_s)
    if not (isinstance(state, WaterState) and isinstance(product, Product)):
        raise TypeError(f"{film.sheet.name}: the anchor belongs to another kind of sheet")
    elapsed_s, left_s = film.elapsed_s, dt_s
    while left_s > 0.0:
        state, step_s = waterborne.step(film.layer, product, state, plate, longest_s=left_s, elapsed_s=elapsed_s)
        elapsed_s += step_s
        left_s -= step_s
    return state


def _newly_reached(before: Array, after: Array) -> tuple[StageReached, ...]:
    if after is before:
        return ()
    found = [
        StageReached(stage=stage, elapsed_s=float(after[row, 0]))
        for stage, row in ROW.items()
        if before[row, 0] == inf and after[row, 0] < inf
    ]
    return tuple(sorted(found, key=lambda reached: reached.elapsed_s))
