"""What the records do not show of a coat's time, one sentence each."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.stages import Stage
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.amounts import is_measured
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_course import HOUR_MS, Course, LaidStack
from studiowatch.studio.review_room import Room
from studiowatch.studio.review_words import lasted

SHORT_MS = 900_000  # ms of a hole beside the drying of a coat that is not worth a sentence; assumption
FEW = 0.9  # of the readings of a channel under which it counts as missing at times; assumption


_WHILE_WET = mark("No readings for {span} while it was wet, from {time}.")
_WHILE_CLOSING = mark("No readings for {span} while it closed, from {time}.")
_WHILE_HARDENING = mark("No readings for {span} while it hardened, from {time}.")


def blind_spots(
    course: Course,
    room: Room,
    *,
    outcome: Outcome | None,
    seen_ms: int | None,
    assumed: tuple[str, ...],
    when_text: Callable[[int], str],
    now_ms: int | None = None,
) -> tuple[str, ...]:
    """Return what nobody saw; `assumed` are sentences on what was taken for granted on its way here.

    Hours after `now_ms`, UTC ms, are no hole of the log: they are still to come. None is for a coat long past.
    """
    return (
        *_of_room(course, room, when_text, now_ms),
        *_of_speed(course),
        *_of_coat(course, outcome, seen_ms),
        *assumed,
    )


def _of_room(course: Course, room: Room, when_text: Callable[[int], str], now_ms: int | None) -> Iterator[str]:
    stack = course.stack
    laid_ms, end_ms = stack.top.laid_ms, course.steps[-1].end_ms if course.steps else course.until_ms
    if now_ms is not None and laid_ms <= now_ms < end_ms:
        yield say(
            "From {time} on the room is still to come: it is taken to stay as it was read last.", time=when_text(now_ms)
        )
        end_ms = now_ms
    dry_ms, clear_ms = course.stage_ms(Stage.DRY_TO_TOUCH), course.stage_ms(Stage.CLEAR)
    holes = room.holes(laid_ms, end_ms)
    if end_ms > laid_ms and (not room.moments or sum(end - start for start, end in holes) >= end_ms - laid_ms):
        yield say(
            "The log holds no reading of its time: {temperature}, 65 % and still air are taken, or "
            "what was read nearest.",
            temperature=chosen().limit(18.0),
        )
    else:
        for start_ms, until_ms in holes:
            during = _WHILE_WET if dry_ms is None or start_ms < dry_ms else _WHILE_CLOSING
            during = during if clear_ms is None or start_ms < clear_ms else _WHILE_HARDENING
            yield say(during, span=lasted(until_ms - start_ms), time=when_text(start_ms))
    yield from _of_below(stack, room, when_text)


def _of_below(stack: LaidStack, room: Room, when_text: Callable[[int], str]) -> Iterator[str]:
    below = stack.below
    if below is None:
        return
    start_ms = max(below.laid_ms, stack.top.laid_ms - 48 * HOUR_MS)
    unseen_ms = sum(end - start for start, end in room.holes(start_ms, stack.top.laid_ms))
    if unseen_ms > SHORT_MS:
        yield say(
            "No readings for {span} while the {label} below dried, laid at {time}.",
            span=lasted(unseen_ms),
            label=below.label,
            time=when_text(below.laid_ms),
        )


def _of_speed(course: Course) -> Iterator[str]:
    read = [step for step in course.steps if step.is_read]
    known = sum(step.speed_known for step in read)
    if read and known < FEW * len(read):
        if known:
            yield say("Air speed was not measured at times: a fan or a draught would not show; still air is taken.")
        else:
            yield say("Air speed was not measured: a fan or a draught would not show; still air is taken.")


def _of_coat(course: Course, outcome: Outcome | None, seen_ms: int | None) -> Iterator[str]:
    laid = course.stack.top
    if not is_measured(laid.coat):
        film = chosen().film(laid.sheet.wet_um)
        yield say("How much was laid is not recorded: {film} wet is taken, as on its sheet.", film=film)
    if outcome is None:
        yield say("How it came out is not recorded: these are the causes that it would most likely have.")
    elif seen_ms is None:
        yield say("When it was looked at is not recorded: a day after it was laid is taken.")
    if laid.sheet.kind is Kind.SOLVENTBORNE:
        yield say("It is solvent-borne: of its film, only warmth and the dew point are followed.")
