"""From a log to the room of a review, and from a piece to the stack that is reviewed."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from statistics import fmean
from typing import Any, Protocol

from studiowatch.physics.air import steady_speed
from studiowatch.room.air_movement import Movement
from studiowatch.room.readings import Channel, Reading
from studiowatch.room.typed import is_typed
from studiowatch.service.log_air import PART_MS
from studiowatch.service.room_now import WARM_UP_MS, RoomNow
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.studio.labels import stack_labels
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.review import SEEN_AFTER_MS
from studiowatch.studio.review_course import HOUR_MS, LONGEST_MS, LaidStack, laid_stack
from studiowatch.studio.review_room import Room, RoomMoment

MINUTE_MS = 60_000
DAY_MS = 24 * HOUR_MS
FINE_MS = 6 * HOUR_MS  # ms after its laying in which the air is taken by the minute; assumption
COARSE_MS = 5 * MINUTE_MS  # ms, the means that are taken elsewhere; assumption
FRESH_MS = DAY_MS  # ms after the laying of a coat below whose air is read; later it changes little; assumption
BEFORE_MS = DAY_MS  # ms before the laying of a coat whose air is read: what the one below last dried in; assumption


class MinuteLog(Protocol):
    """The part of a readings log that a review reads."""

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return one reading per minute that has any, each channel the mean of that minute."""
        ...


class ReviewedCoat(Exception):  # noqa: N818 - reads as the answer it is
    """A coat that cannot be reviewed: one sentence that says why and what to do."""


def minute_means(readings: Iterable[Reading]) -> Iterator[Reading]:
    """Yield one reading per minute that has any, each channel the mean of what was read of it."""
    return means_of(readings, lambda _: MINUTE_MS)


def means_of(readings: Iterable[Reading], width_ms: Callable[[int], int]) -> Iterator[Reading]:
    """Yield one reading for each width that has any, the mean of each channel; typed ones as they are.

    Its time is the mean time of what it is of, so that a coarse log keeps its own times.

    Parameters
    ----------
    width_ms : callable
        How wide means are at a time, UTC ms: whole parts of the hour.
    """
    for _, group in groupby(
        readings, key=lambda reading: reading.time_ms // (width := width_ms(reading.time_ms)) * width
    ):
        many = list(group)
        if len(many) == 1:
            yield many[0]
            continue
        yield from (reading for reading in many if is_typed(reading))
        measured = [reading for reading in many if not is_typed(reading)]
        if measured:
            yield _mean(measured)


def _mean(readings: Sequence[Reading]) -> Reading:
    means: dict[str, Any] = {}
    for channel in Channel:
        values = [value for reading in readings if (value := reading.value(channel)) is not None]
        mean = steady_speed if channel is Channel.AIR_SPEED else fmean
        means[channel.value] = mean(values) if values else None
    return Reading(time_ms=round(fmean(reading.time_ms for reading in readings)), **means)


def room_of(minutes: Iterable[Reading], correct: Callable[[Reading], Reading] = lambda reading: reading) -> Room:
    """Return the room of minute means in the order of time, judged as the live room is.

    Parameters
    ----------
    correct : callable
        Puts a reading right by the calibrations.
    """
    room, moments = RoomNow(began_ms=0, correct=correct), []
    for reading in minutes:
        room.take(reading)
        air = room.mean_air(reading.time_ms)
        if air is not None:
            known = room.value(Channel.AIR_SPEED) is not None or room.moves is not Movement.UNKNOWN
            moments.append(
                RoomMoment(time_ms=reading.time_ms, air=air, speed_known=known, surface_C=room.value(Channel.SURFACE))
            )
    return Room(moments=tuple(moments))


def until_ms(stack: LaidStack) -> int:
    """Return up to when the log may matter for the top coat, and for a better time to lay it, UTC ms."""
    coat, laid_ms = stack.top.coat, stack.top.laid_ms
    seen_ms = laid_ms + SEEN_AFTER_MS if coat.seen_ms is None else coat.seen_ms
    return laid_ms + LONGEST_MS if coat.outcome is None else max(seen_ms, laid_ms + SEEN_AFTER_MS)


def spans_ms(stack: LaidStack) -> list[tuple[int, int]]:
    """Return the stretches of the log that a review rests on, UTC ms, joined where they meet, in the order of time."""
    laid_ms = stack.top.laid_ms
    wanted = [(laid.laid_ms - WARM_UP_MS, min(laid.laid_ms + FRESH_MS, laid_ms)) for laid in stack.coats[:-1]]
    start_ms = laid_ms - HOUR_MS if stack.below is None else max(laid_ms - BEFORE_MS, stack.below.laid_ms)
    wanted.append((start_ms - WARM_UP_MS, min(until_ms(stack), laid_ms + LONGEST_MS) + MINUTE_MS))
    joined: list[tuple[int, int]] = []
    for begin_ms, end_ms in sorted(wanted):
        if joined and begin_ms <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(joined[-1][1], end_ms))
        else:
            joined.append((begin_ms, end_ms))
    return joined


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LogInMemory:
    """A log that was read whole, from a file."""

    readings: Sequence[Reading]

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return one reading per minute that has any with start <= time < end; see `MinuteLog`."""
        first = bisect_left(self.readings, start_ms, key=lambda reading: reading.time_ms)
        last = bisect_left(self.readings, end_ms, key=lambda reading: reading.time_ms)
        return tuple(minute_means(self.readings[first:last]))


def minutes_of(log: MinuteLog, start_ms: int, end_ms: int) -> Iterator[Reading]:
    """Yield what `log.minute_means` returns, read in parts: as one list days of it are megabytes in small pieces."""
    while start_ms < end_ms:
        part_ms = min((start_ms // PART_MS + 1) * PART_MS, end_ms)
        yield from log.minute_means(start_ms, part_ms)
        start_ms = part_ms


def room_from(
    log: MinuteLog, stack: LaidStack, correct: Callable[[Reading], Reading] = lambda reading: reading
) -> Room:
    """Return the room that a stack dried in, as far as it matters for its top coat."""
    fine_ms, coarse_ms = stack.top.laid_ms, stack.top.laid_ms + FINE_MS
    minutes = (reading for start_ms, end_ms in spans_ms(stack) for reading in minutes_of(log, start_ms, end_ms))
    thinned = means_of(minutes, lambda time_ms: MINUTE_MS if fine_ms <= time_ms < coarse_ms else COARSE_MS)
    return room_of(thinned, correct)


def stack_of(piece: Piece, shelf: SheetShelf, number: int) -> LaidStack:
    """Return the stack up to the coat `number` of a piece, counted among its laid coats from 1; paint counts.

    Raises
    ------
    ReviewedCoat
        If there is no such coat, it has not been laid, or it is paint.
    """
    laid = [coat for coat in piece.coats if coat.laid_ms is not None]
    if not 1 <= number <= len(piece.coats):
        raise ReviewedCoat(
            say("{title} has no coat {number}; {laid}.", title=piece.title, number=number, laid=_has(len(laid)))
        )
    if number > len(laid):
        raise ReviewedCoat(
            say(
                "Coat {number} of {title} has not been laid yet; {laid}.",
                number=number,
                title=piece.title,
                laid=_has(len(laid)),
            )
        )
    missing = [coat.sheet for coat in laid[:number] if coat.sheet not in shelf.sheets]
    if missing:
        raise ReviewedCoat(say("The data sheet {sheet} is missing; put it back among your sheets.", sheet=missing[0]))
    sheets = [shelf.stand_in(coat.sheet) for coat in piece.coats]
    stack = laid_stack(piece, sheets, stack_labels(sheets), number)
    if not stack.top.sheet.clear_film:
        raise ReviewedCoat(
            say(
                "Coat {number} of {title} is paint, which does not cloud; ask about a clear coat.",
                number=number,
                title=piece.title,
            )
        )
    return stack


def _has(laid: int) -> str:
    if laid == 0:
        return say("none of its coats has been laid")
    return (
        say("it has one laid coat, number 1")
        if laid == 1
        else say("its laid coats are 1, the lowest, to {topmost}", topmost=laid)
    )


def number_of(piece: Piece, coat: Coat) -> int:
    """Return the number of a laid coat of `piece`, from 1 at the lowest.

    Raises
    ------
    ReviewedCoat
        If it has not been laid.
    """
    laid = [one.key for one in piece.coats if one.laid_ms is not None]
    if coat.key not in laid:
        raise ReviewedCoat(
            say("That coat of {title} has not been laid yet; {laid}.", title=piece.title, laid=_has(len(laid)))
        )
    return laid.index(coat.key) + 1
