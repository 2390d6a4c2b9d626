"""A watch over a room with cold nights, what she may mean for it, and what its hours are said to be good for."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, pi

from studiowatch.room.intentions import Doing
from studiowatch.room.readings import Reading
from studiowatch.service.intention_commands import AddIntention
from studiowatch.service.local_time import wall_clock
from studiowatch.service.plan_only import watch_at
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.studio.best_hours import Reason
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.working_hours import WorkingHours

NOW_MS = 1_772_460_000_000
MINUTE_MS, HOUR_MS, DAY_MS = 60_000, 3_600_000, 86_400_000
ALWAYS = WorkingHours(days=((0, 24 * 60),) * 7)


class ColdNights(NoLog):
    """A log of a room that is 20 °C at NOW_MS's time of day and 8 °C twelve hours from it."""

    def __init__(self, days: int = 30) -> None:
        self.days = days

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        first_ms = max(start_ms, NOW_MS - self.days * DAY_MS)
        return [
            Reading(
                time_ms=time_ms,
                temperature_C=14.0 + 6.0 * cos(2.0 * pi * (time_ms - NOW_MS) / DAY_MS),
                humidity_pct=45.0,
                air_speed_m_s=0.05,
            )
            for time_ms in range(first_ms, end_ms, 5 * MINUTE_MS)
        ]


def piece(key: str, *coats: Coat) -> Piece:
    return Piece(key=key, title=key.title(), width_cm=30, height_cm=30, place=0, coats=coats)


def watch_over(*pieces: Piece, log: NoLog | None = None, hours: WorkingHours = ALWAYS) -> Watchkeeping:
    records = MemoryRecords(held={one.key: one for one in pieces}, kept_hours=hours)
    watch = watch_at(NOW_MS, records, log or ColdNights(), SheetShelf.open(), foretell=True)
    watch.make_plan(NOW_MS)
    return watch


def heater(hours_from_now: float = 4.0, hours: float = 14.0, target_C: float = 21.0) -> AddIntention:
    clock = wall_clock()
    start_ms = NOW_MS + round(hours_from_now * HOUR_MS)
    day = clock.day(start_ms)
    from_min = (start_ms - clock.at(day, 0)) // MINUTE_MS
    return AddIntention(
        doing=Doing.HEATER,
        from_min=from_min,
        to_min=round(from_min + 60 * hours) % (24 * 60),
        target=target_C,
        first_day=day,
    )


SATIN = "satin-waterborne"
GLOSS = piece("kiln", Coat(key="g", sheet="gloss-waterborne"))


def reason_at(watch: Watchkeeping, hours_ahead: float, now_ms: int = NOW_MS) -> Reason | None:
    (told,) = (one for one in watch.snapshot(now_ms).best_hours if one.sheet == "gloss-waterborne")
    return next(hour.reason for hour in told.hours if hour.start_ms >= NOW_MS + hours_ahead * HOUR_MS)
