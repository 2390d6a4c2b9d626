"""Times and lengths of time, as one says them beside a drying rack."""

from __future__ import annotations

from datetime import UTC, date, datetime, tzinfo

from studiowatch.speech.dates import day_of_month, day_of_year, weekday
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.prompts import IN_SECONDS_MS

SECOND_MS = 1000  # ms
MINUTE_MS = 60 * SECOND_MS  # ms
HOUR_MS = 60 * MINUTE_MS  # ms
DAY_MS = 24 * HOUR_MS  # ms
REMIND_AFTER_MS = 10 * MINUTE_MS  # ms, by which "In 10 min" puts a warning off
SNOOZE_AFTER_MS = 5 * MINUTE_MS  # ms, by which "In 5 min" puts a prompt off
_HALF_YEAR_DAYS = 182  # days to either side in which a day and its month alone say which year is meant
_WEEK_DAYS = 6  # days ahead in which a weekday alone says which day is meant


def local(time_ms: int, zone: tzinfo | None = None) -> datetime:
    """Return UTC `time_ms` in `zone`, or in the machine's own zone."""
    return datetime.fromtimestamp(time_ms / SECOND_MS, tz=UTC).astimezone(zone)


def day_words(day: date) -> str:
    """Return "9 Dec"."""
    return day_of_month(day)


def from_day_words(time_ms: int, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return "16 Dec", or "14:07" for today."""
    day = local(time_ms, zone).date()
    return clock_words(time_ms, now_ms, zone) if day == local(now_ms, zone).date() else day_words(day)


def near_words(time_ms: int, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return "14:07" or "Thu 08:10" within six days, and only "9 Dec" beyond, where the hour does not matter."""
    if _is_far(time_ms, now_ms, zone):
        return day_words(local(time_ms, zone).date())
    return clock_words(time_ms, now_ms, zone)


def near_words_beside(time_ms: int, beside_ms: int, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return `near_words` as they are said after those of `beside_ms`: see `clock_words_beside`."""
    if _is_far(time_ms, now_ms, zone):
        return near_words(time_ms, now_ms, zone)
    return clock_words_beside(time_ms, beside_ms, now_ms, zone)


def _is_far(time_ms: int, now_ms: int, zone: tzinfo | None) -> bool:
    return abs((local(time_ms, zone).date() - local(now_ms, zone).date()).days) > _WEEK_DAYS


def clock_words(time_ms: int, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return "14:07" for today, "Thu 08:10" within six days, "9 Dec 08:10" beyond, with its year half a year off."""
    moment, now = local(time_ms, zone), local(now_ms, zone)
    days = abs((moment.date() - now.date()).days)
    clock = chosen().clock(moment)
    if days == 0:
        return clock
    if days <= _WEEK_DAYS:
        return say("{weekday} {time}", weekday=weekday(moment.date()), time=clock)
    day = day_words(moment.date()) if days <= _HALF_YEAR_DAYS else day_of_year(moment.date())
    return say("{day} {time}", day=day, time=clock)


def clock_words_beside(time_ms: int, beside_ms: int, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return `clock_words` as they are said after those of `beside_ms`: a bare time is of the day that those name.

    Today has its name too where they name another day.
    """
    moment = local(time_ms, zone)
    if moment.date() == local(beside_ms, zone).date():
        return chosen().clock(moment)
    if moment.date() == local(now_ms, zone).date():
        return say("{weekday} {time}", weekday=weekday(moment.date()), time=chosen().clock(moment))
    return clock_words(time_ms, now_ms, zone)


def lasting_words(length_ms: int) -> str:
    """Return "40 s", "38 min", "2 h 10 min" or "3 days"; a negative length counts as none."""
    length_ms = max(0, length_ms)
    if length_ms < MINUTE_MS:
        return f"{length_ms // SECOND_MS} s"
    if length_ms < HOUR_MS:
        return f"{length_ms // MINUTE_MS} min"
    if length_ms < DAY_MS:
        hours, minutes = divmod(length_ms // MINUTE_MS, 60)
        return f"{hours} h {minutes} min" if minutes else f"{hours} h"
    return days_words(length_ms // DAY_MS)


def days_words(days: int) -> str:
    """Return "1 day" or "3 days"."""
    return say_counted(days, "1 day", "{n} days")


def ago_words(then_ms: int, now_ms: int) -> str:
    """Return "just now" under two seconds, then "38 min ago"."""
    if now_ms - then_ms < 2 * SECOND_MS:
        return say("just now")
    length_ms = now_ms - then_ms
    if length_ms >= DAY_MS:
        return say_counted(length_ms // DAY_MS, "1 day ago", "{n} days ago")
    return say("{length} ago", length=lasting_words(length_ms))


def countdown_words(left_ms: int) -> str:
    """Return "12 min", or "45 s" in the last two minutes, rounded up; what is over is "0 s"."""
    if left_ms < IN_SECONDS_MS:
        return f"{max(0, -(-left_ms // SECOND_MS))} s"
    return f"{-(-left_ms // MINUTE_MS)} min"
