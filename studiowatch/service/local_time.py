"""Times as she reads them: UTC ms to her wall clock and her calendar."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from studiowatch.speech.dates import day_of_year, day_seen_from
from studiowatch.speech.units import chosen
from studiowatch.studio.working_hours import WallClock


def clock_text(time_ms: int) -> str:
    """Return the time of day in her zone, "14:07"."""
    return chosen().clock(_local(time_ms))


def seconds_text(time_ms: int) -> str:
    """Return the time of day in her zone to the second, "14:07:05"."""
    return chosen().clock(_local(time_ms), seconds=True)


def when_text(time_ms: int, now_ms: int) -> str:
    """Return the time in her zone, with the day if it is not today's: "15:20", "Sat 13 Dec 16:35".

    The day has its year where that is not the year of `now_ms`. Said after another time, `now_ms` is that one: a bare
    time is of the day that was named last.
    """
    day, today = local_date(time_ms), local_date(now_ms)
    return clock_text(time_ms) if day == today else f"{day_seen_from(day, today)} {clock_text(time_ms)}"


def dated_text(time_ms: int) -> str:
    """Return a day with its year and the time of day in her zone, "2 Mar 2026, 10:01"."""
    return f"{day_of_year(local_date(time_ms))}, {clock_text(time_ms)}"


def local_date(time_ms: int) -> date:
    """Return her calendar day."""
    return _local(time_ms).date()


def utc_offset_s(time_ms: int) -> int:
    """Return how far her zone is ahead of UTC at a time, s."""
    offset = _local(time_ms).utcoffset()
    return 0 if offset is None else round(offset.total_seconds())


def wall_clock() -> WallClock:
    """Return her calendar."""
    return WallClock(day=local_date, at=_local_ms)


def _local(time_ms: int) -> datetime:
    return datetime.fromtimestamp(time_ms / 1000).astimezone()


def _local_ms(day: date, minutes: int) -> int:
    """Return the UTC ms at which her clock shows so many minutes into a day.

    A time that a clock change skips is counted by the offset before it, as RFC 5545, 3.3.5 has it: 02:30 comes half an
    hour after 02:00, when the clock shows 03:30. Of one that comes twice it is the first.
    """
    moment = datetime.combine(day, time()) + timedelta(minutes=minutes)
    return round(moment.timestamp() * 1000)
