"""A water-borne coat once its free water has gone: bound water leaves, it clears, and its ages run to the end."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

import numpy as np

from studiowatch.coats.bound_course import BoundCourse
from studiowatch.coats.bound_water import (
    CLEAR_BELOW,
    EXCESS_AT_REFERENCE,
    HARD_SHARE,
    THROUGH_SHARE,
    Drift,
    recoat_pace,
    water_content,
)
from studiowatch.coats.free_water import Layer
from studiowatch.coats.seal import Hold, Seal, Seep
from studiowatch.coats.stage_table import ROW, enter, enter_held
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import Product, WaterState
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array

_DEEP = ((Stage.DRY_HARD, HARD_SHARE), (Stage.DRY_THROUGH, THROUGH_SHARE))
_SLOWEST = 1e-12  # keeps a recoat age that stands still in a saturated room from dividing


def rest(
    coat: Layer,
    product: Product,
    before: WaterState,
    plate: PlateAir,
    *,
    drift: Drift,
    dry_s: Array | float,
    end_s: float,
    seal: Seal | None = None,
    seep: Seep | None = None,
    hold: Hold | None = None,
) -> WaterState:
    """Return the state after each draw was without free water for the last `dry_s` of a step that ends at `end_s`.

    Parameters
    ----------
    drift : Drift
        Of the film's temperature, from the beginning of that time.
    end_s : float
        Age of the coat at the end, s.
    seal : Seal or None
        How the coat lies under another; None while nothing lies on it.
    seep, hold
        What the films below give to this coat, and keep it from; None if it lies on none.
    """
    slowness, rate_per_s = coat.slowness, product.bound_rate_per_s / coat.slowness
    if seal is not None:
        slowness = np.where(seal.mask, seal.slowness, slowness)
        rate_per_s = np.where(seal.mask, seal.rate_per_s, rate_per_s)
    kept = water_content(plate.humidity)
    course = BoundCourse.over(
        kept=kept, bound=before.bound, rate_per_s=rate_per_s, polymer_kg_m2=coat.polymer_kg_m2, seep=seep
    )
    age_s = drift.diffusion_age(dry_s)
    pace = recoat_pace(kept, product.draws.humidity_term) / slowness
    after = WaterState(
        free=before.free,
        bound=course.at(age_s),
        film_K=drift.temperature(dry_s),
        recoat_age_s=before.recoat_age_s + pace * age_s,
        cure_age_s=before.cure_age_s + drift.cure_age(dry_s),
        below_mfft_s=before.below_mfft_s,
        fastest=before.fastest,
        reached=before.reached,
        awaited=before.awaited,
    )
    if not before.awaited:
        return after
    start_s = end_s - dry_s
    late = _Late(product=product, before=before, after=after, drift=drift, course=course, age_s=age_s, start_s=start_s)
    reached = late.stages(pace=pace, hold=hold)
    below_mfft_s = before.below_mfft_s
    if Stage.CLEAR in before.awaited and (np.minimum(drift.film_K, plate.air_K) < product.mfft_K).any():
        forming_s = np.clip(reached[ROW[Stage.CLEAR]] - start_s, 0.0, dry_s)
        below_mfft_s = below_mfft_s + drift.time_below(product.mfft_K, forming_s)
    elif reached is before.reached:
        return after
    awaited = tuple(stage for stage in before.awaited if np.isinf(reached[ROW[stage]]).any())
    return replace(after, below_mfft_s=below_mfft_s, reached=reached, awaited=awaited)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Late:
    """One step of a resting coat; `age_s` is the age gathered in it, and each draw began it at `start_s`."""

    product: Product
    before: WaterState
    after: WaterState
    drift: Drift
    course: BoundCourse
    age_s: Array
    start_s: Array | float

    def stages(self, *, pace: Array, hold: Hold | None) -> Array:
        """Return the table with the stages that come after free water has gone; `pace` is that of the recoat age."""
        before, after, product = self.before, self.after, self.product
        reached = before.reached
        if Stage.CLEAR in before.awaited:
            now = after.bound < CLEAR_BELOW
            reached = enter_held(reached, Stage.CLEAR, now, lambda: self._when_bound(CLEAR_BELOW), hold)
        clear_s = reached[ROW[Stage.CLEAR]]
        for stage, share in _DEEP:
            if stage in before.awaited:
                level = self.course.kept + share * EXCESS_AT_REFERENCE
                now = (after.bound <= level) & np.isfinite(clear_s)
                reached = enter_held(reached, stage, now, partial(self._when_bound_and_clear, level, clear_s), hold)
        if Stage.DRY_TO_RECOAT in before.awaited:
            now = (after.recoat_age_s >= product.recoat_age_s) & np.isfinite(clear_s)
            when = partial(self._when_recoat_and_clear, pace, clear_s)
            reached = enter_held(reached, Stage.DRY_TO_RECOAT, now, when, hold)
        cured = after.cure_age_s >= product.cure_age_s
        if not cured.any():
            return reached
        return enter(reached, Stage.CURED, cured & (after.free <= 0.0), self._when_cured)

    def _when_bound(self, level: Array | float) -> Array:
        return self.start_s + self.drift.diffusion_time(self.course.age_below(level, self.age_s))

    def _when_bound_and_clear(self, level: Array, clear_s: Array) -> Array:
        return np.maximum(self._when_bound(level), clear_s)

    def _when_recoat_and_clear(self, pace: Array, clear_s: Array) -> Array:
        missing_s = np.maximum(self.product.recoat_age_s - self.before.recoat_age_s, 0.0)
        recoat_s = self.start_s + self.drift.diffusion_time(missing_s / np.maximum(pace, _SLOWEST))
        return np.maximum(recoat_s, clear_s)

    def _when_cured(self) -> Array:
        missing_s = np.maximum(self.product.cure_age_s - self.before.cure_age_s, 0.0)
        return self.start_s + self.drift.cure_time(missing_s)
