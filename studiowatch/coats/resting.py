"""A water-borne coat once its free water has gone: bound water leaves, it clears, and its ages run to the end."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from math import log

import numpy as np

from studiowatch.coats.bound_course import BoundCourse, bound_through
from studiowatch.coats.bound_water import CLEAR_BELOW, EXCESS_AT_REFERENCE, HARD_SHARE, THROUGH_SHARE, recoat_pace
from studiowatch.coats.free_water import Layer
from studiowatch.coats.seal import Hold, Seal, Seep
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.step_paths import Steps, gathering, picked
from studiowatch.coats.stretch import Stretch
from studiowatch.coats.waterborne import Product, WaterState
from studiowatch.physics.ranges import Array, Mask

_DEEP = ((Stage.DRY_HARD, HARD_SHARE), (Stage.DRY_THROUGH, THROUGH_SHARE))
_SLOWEST = 1e-12  # keeps a recoat age that stands still in a saturated room from dividing


def rest(
    coat: Layer,
    product: Product,
    before: WaterState,
    stretch: Stretch,
    *,
    ended_s: float,
    seal: Seal | None = None,
    seep: Seep | None = None,
    hold: Hold | None = None,
) -> tuple[WaterState, Array]:
    """Return the state after a stretch without free water, and the bound water on the way.

    Parameters
    ----------
    ended_s : float
        Age of the coat at the end of the stretch, s.
    seal : Seal or None
        How the coat lies under another; None while nothing lies on it.
    seep, hold
        What the films below give to this coat, and keep it from; None if it lies on none.

    Returns
    -------
    state : WaterState
    bound : ndarray, (steps + 1, draws)
        Before each step and after the last, kg/kg.
    """
    slowness, rate_per_s = coat.slowness, product.bound_rate_per_s / coat.slowness
    if seal is not None:
        slowness = np.where(seal.mask, seal.slowness, slowness)
        rate_per_s = np.where(seal.mask, seal.rate_per_s, rate_per_s)
    kept = stretch.airs.kept
    bound = bound_through(
        kept=kept,
        bound=before.bound,
        rate_per_s=rate_per_s,
        polymer_kg_m2=coat.polymer_kg_m2,
        seep=seep,
        age_s=stretch.age_s,
    )
    pace = recoat_pace(kept, product.draws.humidity_term)
    recoat_s = pace * stretch.age_s
    after = replace(
        before,
        bound=bound[-1],
        film_K=stretch.film_K,
        recoat_age_s=before.recoat_age_s + recoat_s.sum(axis=0) / slowness,
        cure_age_s=before.cure_age_s + stretch.cure_age_s.sum(axis=0),
        e_folds=before.e_folds + rate_per_s * stretch.age_s.sum(axis=0),
    )
    if not before.awaited:
        return after, bound
    late = _Late(
        product=product,
        before=before,
        after=after,
        stretch=stretch,
        ended_s=ended_s,
        hold=hold,
        bound=bound,
        rate_per_s=rate_per_s,
        slowness=slowness,
        polymer_kg_m2=coat.polymer_kg_m2,
        seep=seep,
        pace=pace,
        recoat_s=recoat_s,
    )
    reached = late.stages()
    too_cold_s = late.below_mfft_s(reached)
    if reached is before.reached and too_cold_s is None:
        return after, bound
    return replace(
        after,
        below_mfft_s=before.below_mfft_s if too_cold_s is None else before.below_mfft_s + too_cold_s,
        reached=reached,
        awaited=tuple(stage for stage in before.awaited if np.isinf(reached[ROW[stage]]).any()),
    ), bound


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Late:
    """What a stretch makes of a resting coat, step by step; arrays are (steps, draws) but for those of the coat.

    Attributes
    ----------
    bound : ndarray, (steps + 1, draws)
        Bound water before each step and after the last, kg/kg.
    rate_per_s, slowness, polymer_kg_m2 : ndarray, (draws,)
        Rate at which bound water leaves at 23 °C, 1/s, how much slower the recoat age runs than in the sheet's own
        film, and the polymer, kg/m².
    pace, recoat_s : ndarray
        How fast the recoat age would run in the sheet's own film, per second at 23 °C, and what each step would add, s.
    """

    product: Product
    before: WaterState
    after: WaterState
    stretch: Stretch
    ended_s: float
    hold: Hold | None
    bound: Array
    rate_per_s: Array
    slowness: Array
    polymer_kg_m2: Array
    seep: Seep | None
    pace: Array
    recoat_s: Array

    def stages(self) -> Array:
        """Return the table with the stages that come after free water has gone."""
        reached, after, product = self.before.reached, self.after, self.product
        if Stage.CLEAR in self.before.awaited:
            reached = self._enter(reached, Stage.CLEAR, self.bound[1:] < CLEAR_BELOW, self._when_clear)
        clear_s = reached[ROW[Stage.CLEAR]]
        reached = self._deep_stages(reached)
        if self._may_come(Stage.DRY_TO_RECOAT, after.recoat_age_s >= product.recoat_age_s):
            ages_s = gathering(self.before.recoat_age_s, self.recoat_s / self.slowness)
            now = (ages_s[1:] >= product.recoat_age_s) & self.stretch.by_then(clear_s, self.ended_s)
            when = partial(self._when_recoat, ages_s, clear_s)
            reached = self._enter(reached, Stage.DRY_TO_RECOAT, now, when)
        if self._may_come(Stage.CURED, (after.cure_age_s >= product.cure_age_s) & (after.free <= 0.0)):
            ages_s = gathering(self.before.cure_age_s, self.stretch.cure_age_s)
            when = partial(self._when_cured, ages_s)
            now = ages_s[1:] >= product.cure_age_s
            reached = self.stretch.enter(reached, Stage.CURED, now, when, ended_s=self.ended_s)
        return reached

    def _deep_stages(self, reached: Array) -> Array:
        """Return the table with the stages that need what softens the film gone from its depth.

        All but a share of what this air lets go must have left, and there must have been the time for that. Damp air
        makes nothing leave, it only lets less go: without the time it would make a film dry through at once.
        """
        clear_s = reached[ROW[Stage.CLEAR]]
        deep = [(stage, share) for stage, share in _DEEP if stage in self.before.awaited]
        if not deep:
            return reached
        excess = self.bound[1:] - self.stretch.airs.kept
        least = excess.min(axis=0)
        for stage, share in deep:
            level, needed = share * EXCESS_AT_REFERENCE, -log(share)
            if self._may_come(stage, (least <= level) & (self.after.e_folds >= needed)):
                passed = gathering(self.before.e_folds, self.rate_per_s * self.stretch.age_s)
                now = (excess <= level) & (passed[1:] >= needed) & self.stretch.by_then(clear_s, self.ended_s)
                when = partial(self._when_deep, level, needed - passed, clear_s)
                reached = self._enter(reached, stage, now, when)
        return reached

    def _may_come(self, stage: Stage, far_enough: Mask) -> bool:
        """Return whether `stage` is new to some draw that came `far_enough` for it at any time in the stretch."""
        return stage in self.before.awaited and bool((far_enough & np.isinf(self.before.reached[ROW[stage]])).any())

    def below_mfft_s(self, reached: Array) -> Array | None:
        """Return how long the film was too cold to form, s, until it was clear as `reached` says, or None if never."""
        if Stage.CLEAR not in self.before.awaited:
            return None
        drift, mfft_K = self.stretch.drift, self.product.mfft_K
        coldest = np.maximum(drift.inverse_film[0], drift.inverse_air.max(axis=0))
        if not (coldest > 1.0 / mfft_K).any():
            return None
        forming_s = reached[ROW[Stage.CLEAR]] - self.stretch.starts_s(self.ended_s)
        below_s: Array = drift.time_below(mfft_K, np.clip(forming_s, 0.0, self.stretch.dry_s)).sum(axis=0)
        return below_s

    def _enter(self, reached: Array, stage: Stage, now: Mask, when: Callable[[Steps], Array]) -> Array:
        return self.stretch.enter(reached, stage, now, when, ended_s=self.ended_s, hold=self.hold)

    def _when_bound(self, level: Array | float, steps: Steps) -> Array:
        seep = self.seep
        course = BoundCourse.over(
            kept=picked(self.stretch.airs.kept, steps),
            bound=picked(self.bound, steps),
            rate_per_s=self.rate_per_s,
            polymer_kg_m2=self.polymer_kg_m2,
            seep=None if seep is None else replace(seep, water_kg_m2=picked(seep.water_kg_m2, steps)),
        )
        age_s = course.age_below(level, picked(self.stretch.age_s, steps))
        return self._starts_s(steps) + self.stretch.drift.at(steps).diffusion_time(age_s)

    def _when_clear(self, steps: Steps) -> Array:
        return self._when_bound(CLEAR_BELOW, steps)

    def _when_deep(self, excess: float, missing: Array, clear_s: Array, steps: Steps) -> Array:
        left_s = self._when_bound(picked(self.stretch.airs.kept, steps) + excess, steps)
        age_s = np.maximum(picked(missing, steps), 0.0) / self.rate_per_s
        passed_s = self._starts_s(steps) + self.stretch.drift.at(steps).diffusion_time(age_s)
        return np.maximum(np.maximum(left_s, passed_s), clear_s)

    def _when_recoat(self, ages_s: Array, clear_s: Array, steps: Steps) -> Array:
        missing_s = np.maximum(self.product.recoat_age_s - picked(ages_s, steps), 0.0)
        age_s = missing_s * self.slowness / np.maximum(picked(self.pace, steps), _SLOWEST)
        return np.maximum(self._starts_s(steps) + self.stretch.drift.at(steps).diffusion_time(age_s), clear_s)

    def _when_cured(self, ages_s: Array, steps: Steps) -> Array:
        missing_s = np.maximum(self.product.cure_age_s - picked(ages_s, steps), 0.0)
        return self._starts_s(steps) + self.stretch.drift.at(steps).cure_time(missing_s)

    def _starts_s(self, steps: Steps) -> Array:
        return picked(self.stretch.starts_s(self.ended_s), steps)
