"""The times that are told of a laid coat: what the model looks ahead to, beside her last test and its data sheet."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import Film
from studiowatch.coats.readiness import Ready, next_ready, ready_by_s, recoat_s
from studiowatch.coats.stages import Stage
from studiowatch.service.coat_tests import beside
from studiowatch.service.piece_view import StageTime
from studiowatch.studio.unready import Unready


@dataclass(frozen=True, slots=True, kw_only=True)
class ToldTimes:
    """What is told of a coat whose film has dried up to `at_ms`.

    Attributes
    ----------
    laid_ms, at_ms : int
        UTC ms of its laying, and up to which `film` has dried.
    ahead : mapping of Stage to Ready
        When each stage was or will be reached, in seconds from `laid_ms`.
    is_learnt : bool
        Whether tests were learnt from: the middle of a range is that of the draws then, not the nominal run.
    unready : Unready or None
        Her last test of it, if that found it tacky or milky.
    """

    sheet: DataSheet
    film: Film
    laid_ms: int
    at_ms: int
    ahead: Mapping[Stage, Ready]
    is_learnt: bool
    unready: Unready | None

    def stages(self) -> tuple[StageTime, ...]:
        """Return the times of all stages that this coat has."""
        return tuple(beside(self.unready, self._modelled(stage, ready)) for stage, ready in self.ahead.items())

    def stage(self, stage: Stage) -> StageTime | None:
        """Return the time of one stage, or None if this coat has it not."""
        ready = self.ahead.get(stage)
        return None if ready is None else beside(self.unready, self._modelled(stage, ready))

    def next_coat(self, *, through: bool) -> StageTime | None:
        """Return when it is dry to recoat, or None if that is not known.

        Where `through` is true the next coat waits for this one to be dry through as well.
        """
        if Stage.DRY_TO_RECOAT not in self.ahead:
            return None
        ready = next_ready(self.ahead, through=through)
        return beside(self.unready, self._modelled(Stage.DRY_TO_RECOAT, ready))

    def through_ms(self) -> int | None:
        """Return when it is surely dry through, UTC ms, or None if that is not in sight; a test as in `recoat_ms`."""
        ready = self.ahead.get(Stage.DRY_THROUGH)
        return self._beside_test(None if ready is None else ready.p90_s)

    def recoat_ms(self) -> int | None:
        """Return when she is told that the next coat may go on, UTC ms, or None if that is not in sight.

        After a test that found it tacky or milky, only what lies well after that test is told.
        """
        ready = self.ahead.get(Stage.DRY_TO_RECOAT)
        return self._beside_test(None if ready is None else ready_by_s(self.sheet, ready))

    def _beside_test(self, age_s: float | None) -> int | None:
        modelled_ms = self.after_ms(age_s)
        return modelled_ms if self.unready is None else self.unready.told_ms(modelled_ms)

    def _modelled(self, stage: Stage, ready: Ready) -> StageTime:
        middle_s = ready.p50_s if self.is_learnt else ready.nominal_s
        ages_s = [ready.p10_s, middle_s, ready.p90_s]
        if stage is Stage.DRY_TO_RECOAT:
            ages_s = [recoat_s(self.sheet, age_s) for age_s in ages_s]
        p10_ms, middle_ms, p90_ms = (self.after_ms(age_s) for age_s in ages_s)
        reached_ms = self.after_ms(self.film.reached_s(stage))
        if stage is Stage.DRY_TO_RECOAT:
            reached_ms = p90_ms if p90_ms is not None and p90_ms <= self.at_ms else None
        if reached_ms is not None:
            return StageTime(stage=stage, time_ms=reached_ms, reached=True)
        return StageTime(stage=stage, time_ms=middle_ms, reached=False, p10_ms=p10_ms, p90_ms=p90_ms)

    def after_ms(self, elapsed_s: float | None) -> int | None:
        """Return the UTC ms at which the coat is `elapsed_s` old; None stays None."""
        return None if elapsed_s is None else self.laid_ms + round(elapsed_s * 1000)
