"""A coat on a piece at one moment, with the coats that it lies on."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf, isfinite

import numpy as np

from studiowatch.coats.anchoring import Anchor
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.free_water import Layer
from studiowatch.coats.paint import PaintState
from studiowatch.coats.seal import Seal
from studiowatch.coats.solventborne import SolventState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage, Surface
from studiowatch.coats.waterborne import WaterState
from studiowatch.physics.constants import WATER_DENSITY, ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array, Mask

State = WaterState | SolventState | PaintState
_ALL, _NOMINAL = slice(None), slice(0, 1)  # of the draws


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
        Water of the coats below when this one was laid over them too early, g/m²; 0 if they were ready.
    soaked_g_m2 : float
        Water that a bare, absorbing support took up as the coat was laid, g/m².
    layer, state
        What was laid, and how it stands, per draw.
    below : tuple of Film
        The coats that it lies on, lowest first. They are advanced with it.
    seal : Seal or None
        How it lies under the coat above; None while nothing lies on it.
    """

    sheet: DataSheet
    anchor: Anchor
    wet_um: float
    thinned_pct: float
    layer: Layer
    state: State
    elapsed_s: float = 0.0
    sealed_in_g_m2: float = 0.0
    soaked_g_m2: float = 0.0
    below: tuple[Film, ...] = ()
    seal: Seal | None = None

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
    def is_wet(self) -> bool:
        """Whether a fingertip would mark it in any draw."""
        return bool(np.isinf(self.state.reached[ROW[Stage.DRY_TO_TOUCH]]).any())

    @property
    def milky(self) -> bool:
        """Whether this is a clear coat that looks milky: itself, or through the coats below that have not cleared.

        A solvent-borne coat is clear from the brush on; if it clouds, it has blushed.
        """
        return self.sheet.kind is Kind.WATERBORNE and self.reached_s(Stage.CLEAR) is None

    @property
    def film_C(self) -> float | None:
        """Temperature of the film, °C; None until the first air has reached it."""
        return float(self.state.film_K[0]) - ZERO_CELSIUS_K if self.elapsed_s > 0.0 else None

    @property
    def water_kg_m2(self) -> Array:
        """Water still in this coat itself, free and bound, kg/m² per draw; solvent, if it is solvent-borne."""
        return self._water_kg_m2(_ALL)

    @property
    def water_g_m2(self) -> float:
        """Water still in this coat itself, free and bound, g/m²; solvent, if it is solvent-borne."""
        return 1000.0 * float(self._water_kg_m2(_NOMINAL)[0])

    def _water_kg_m2(self, of: slice) -> Array:
        state, layer = self.state, self.layer
        if isinstance(state, PaintState):
            return WATER_DENSITY * (layer.wet_m[of] - layer.dry_m[of]) * state.share_kept(of)
        own = state.free[of] - self._pooled_kg_m2(of)
        if isinstance(state, SolventState):
            return own + state.retained[of]
        return own + state.bound[of] * layer.polymer_kg_m2[of]

    @property
    def pooled_kg_m2(self) -> Array | float:
        """Free water, or solvent, of still wet coats below that leaves with this coat's own, kg/m² per draw."""
        return self._pooled_kg_m2(_ALL)

    def _pooled_kg_m2(self, of: slice) -> Array | float:
        wet = (film.state.free[of] for film in self.below if not isinstance(film.state, PaintState))
        return sum(wet, start=0.0)

    @property
    def trapped_g_m2(self) -> float:
        """Water still sealed in below this coat, g/m²."""
        return sum(film.water_g_m2 for film in self.below if film.seal is not None and film.seal.mask[0])

    @property
    def below_mfft(self) -> float | None:
        """Share of the time from packing to clear, so far, in which the film was too cold to form, 0-1.

        None where that is not known: the sheet names no minimum film-forming temperature, or the coat is no clear
        water-borne one, whose film alone is followed in this.
        """
        if not isinstance(self.state, WaterState) or self.sheet.mfft_C is None:
            return None
        set_s = self.reached_s(Stage.SET_TO_TOUCH)
        if set_s is None:
            return 0.0
        clear_s = self.reached_s(Stage.CLEAR)
        forming_s = (self.elapsed_s if clear_s is None else clear_s) - set_s
        return min(float(self.state.below_mfft_s[0]) / forming_s, 1.0) if forming_s > 0.0 else 0.0

    @property
    def chance_below_mfft(self) -> float | None:
        """Share of the draws too cold to form at any time from packing to clear, 0-1; None as `below_mfft`."""
        if not isinstance(self.state, WaterState) or self.sheet.mfft_C is None:
            return None
        return float(np.mean(self.state.below_mfft_s > 0.0))

    @property
    def skinning(self) -> float:
        """Péclet number of the fastest drying so far over that of the sheet's own run; 1 as on the sheet.

        Particles pile up under the surface where they are swept there faster than they diffuse away: A. F. Routh,
        W. B. Russel (1998), AIChE J. 44, 2088. Particle size and viscosity are the product's and cancel.
        """
        return float(self.state.fastest[0] / self.anchor.fastest[0]) if isinstance(self.state, WaterState) else 0.0

    @property
    def blush_s(self) -> float:
        """How long, while wet, a solvent-borne coat was within 3 K of the dew point, s: it clouds, for good."""
        return float(self.state.blush_s[0]) if isinstance(self.state, SolventState) else 0.0

    @property
    def blush_from_s(self) -> float | None:
        """Age at which a solvent-borne coat was first within 3 K of the dew point, s, or None if it never was."""
        when_s = float(self.state.blush_from_s[0]) if isinstance(self.state, SolventState) else inf
        return when_s if isfinite(when_s) else None

    @property
    def chance_of_blush(self) -> float:
        """Share of the draws of a solvent-borne coat that were within 3 K of the dew point while wet, 0-1."""
        return float(np.mean(self.state.blush_s > 0.0)) if isinstance(self.state, SolventState) else 0.0

    @property
    def unready(self) -> Mask:
        """Whether a coat laid now would seal this one in, per draw: paint must be dry through, a clear coat ready."""
        ready = Stage.DRY_THROUGH if self.sheet.kind is Kind.PAINT else Stage.DRY_TO_RECOAT
        unready: Mask = np.isinf(self.state.reached[ROW[ready]])
        return unready

    def reached_s(self, stage: Stage) -> float | None:
        """Return the age at which the nominal run reached `stage`, s, or None if it has not."""
        when_s = float(self.state.reached[ROW[stage], 0])
        return when_s if isfinite(when_s) else None
