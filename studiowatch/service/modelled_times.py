"""When the coats of a piece were set and ready by the model, in the room that was read, for the finishing record."""

from __future__ import annotations

from collections.abc import Callable

from studiowatch.coats.readiness import Ready, next_ready, ready_by_s, ready_times
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import OutOfRange
from studiowatch.room.readings import Reading
from studiowatch.service.review_log import MinuteLog, ReviewedCoat, room_from, stack_of
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.modelled import Modelled, TimeRange
from studiowatch.studio.pieces import Piece
from studiowatch.studio.plan_checks import needs_dry_through
from studiowatch.studio.review_course import Course, run

READ_LEAST = 0.5  # share of the time up to a stage that has to be read for it to be told; assumption


def modelled_times(
    piece: Piece,
    shelf: SheetShelf,
    log: MinuteLog,
    correct: Callable[[Reading], Reading] = lambda reading: reading,
) -> Callable[[int], Modelled | None]:
    """Return what tells the modelled times of a coat by its number among the laid ones, from 1.

    It answers None for paint, for a coat without its sheet, and where the room was not read.
    """

    def of(number: int) -> Modelled | None:
        try:
            stack = stack_of(piece, shelf, number)
            room = room_from(log, stack, correct)
            if not room.moments:
                return None
            last_ms = room.moments[-1].time_ms
            if last_ms <= stack.top.laid_ms:
                return None
            above = next((shelf.sheets.get(coat.sheet) for coat in piece.coats[number : number + 1]), None)
            through = needs_dry_through(stack.top.sheet, above)
            until_ms = last_ms if stack.above_ms is None else min(stack.above_ms, last_ms)
            course = run(stack, room, until_ms, through=through)
        except (ReviewedCoat, OutOfRange):
            return None
        return _modelled(course, through=through)

    return of


def _modelled(course: Course, *, through: bool) -> Modelled:
    top = course.stack.top
    ready = ready_times(top.sheet, course.film.state.reached)
    clear, recoat = _range(course, ready.get(Stage.CLEAR)), _range(course, ready.get(Stage.DRY_TO_RECOAT))
    by_s = None if recoat is None else ready_by_s(top.sheet, next_ready(ready, through=through))
    ready_ms = None if by_s is None else top.laid_ms + round(1000.0 * by_s)
    return Modelled(
        clear=clear,
        recoat=recoat,
        ready_ms=ready_ms,
        set_ms=course.stage_ms(Stage.SET_TO_TOUCH),
        read_ms=course.until_ms,
    )


def _range(course: Course, ready: Ready | None) -> TimeRange | None:
    if ready is None or ready.p10_s is None or ready.p50_s is None or ready.p90_s is None:
        return None
    laid_ms = course.stack.top.laid_ms
    latest_ms = laid_ms + round(1000.0 * ready.p90_s)
    met_s = [(step.dt_s, step.is_read) for step in course.steps if step.start_ms < latest_ms]
    if sum(dt_s for dt_s, is_read in met_s if is_read) < READ_LEAST * sum(dt_s for dt_s, _ in met_s):
        return None
    return TimeRange(
        earliest_ms=laid_ms + round(1000.0 * ready.p10_s),
        middle_ms=laid_ms + round(1000.0 * ready.p50_s),
        latest_ms=latest_ms,
    )
