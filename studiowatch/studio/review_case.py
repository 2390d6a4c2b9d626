"""One clouded coat and all that the sentences about it rest on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.readiness import next_ready, ready_at, recoat_s
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_course import Course
from studiowatch.studio.review_room import Step
from studiowatch.studio.review_severity import Severities

_MS = 1000.0  # ms in a second


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """All that the sentences rest on.

    Attributes
    ----------
    when_text : callable
        Turns UTC ms into the time, with its day where that is not the day of the laying.
    needed_ms, safe_ms : int or None
        How old the coat below would have had to be, ms, half of the draws, and to be told that the next may go on; None
        if nothing was sealed in, or it was never ready.
    """

    course: Course
    severities: Severities
    outcome: Outcome | None
    seen_ms: int | None
    when_text: Callable[[int], str]
    needed_ms: int | None = None
    safe_ms: int | None = None

    @property
    def sheet(self) -> DataSheet:
        """The sheet of the coat."""
        return self.course.stack.top.sheet

    @property
    def steps(self) -> list[Step]:
        """The air until the coat was clear, or as long as it was followed."""
        return self.until(Stage.CLEAR)

    def until(self, stage: Stage) -> list[Step]:
        """Return the air until the coat reached `stage`, or as long as it was followed."""
        end_ms = self.course.stage_ms(stage)
        return [step for step in self.course.steps if end_ms is None or step.start_ms < end_ms]


def recoat_ages_ms(course_below: Course, *, through: bool = False) -> tuple[int | None, int | None]:
    """Return the ages at which half of the draws of a coat were ready for the next, and at which it may go on, ms.

    That is with nine draws in ten, and as on the rack never before the sheet's own recoat time, nor before it is dry
    through where the next coat waits for that. None where not reached.
    """
    reached = course_below.film.state.reached
    times = {stage: ready_at(reached[ROW[stage]]) for stage in (Stage.DRY_TO_RECOAT, Stage.DRY_THROUGH)}
    ready = next_ready(times, through=through)
    is_paint = course_below.film.sheet.kind is Kind.PAINT  # which is held to its sheet's own time
    half_s, most_s = (ready.nominal_s,) * 2 if is_paint else (ready.p50_s, ready.p90_s)
    told_s = recoat_s(course_below.film.sheet, most_s)
    half, told = (None if age_s is None else round(_MS * age_s) for age_s in (half_s, told_s))
    return half, told
