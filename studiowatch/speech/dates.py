"""Days as she reads them, in her language."""

from __future__ import annotations

from datetime import date

from studiowatch.speech.words import mark, say

_WEEKDAYS = (mark("Mon"), mark("Tue"), mark("Wed"), mark("Thu"), mark("Fri"), mark("Sat"), mark("Sun"))
_WHOLE_WEEKDAYS = (
    mark("Monday"),
    mark("Tuesday"),
    mark("Wednesday"),
    mark("Thursday"),
    mark("Friday"),
    mark("Saturday"),
    mark("Sunday"),
)
_MONTHS = (
    mark("Jan"),
    mark("Feb"),
    mark("Mar"),
    mark("Apr"),
    mark("May"),
    mark("Jun"),
    mark("Jul"),
    mark("Aug"),
    mark("Sep"),
    mark("Oct"),
    mark("Nov"),
    mark("Dec"),
)


def weekday(day: date) -> str:
    """Return the short name of the day of the week, "Sat"."""
    return say(_WEEKDAYS[day.weekday()])


def month(day: date) -> str:
    """Return the short name of the month, "Dec"."""
    return say(_MONTHS[day.month - 1])


def day_of_week(day: date) -> str:
    """Return the day, "Sat 13 Dec"."""
    return say("{weekday} {day} {month}", weekday=weekday(day), day=day.day, month=month(day))


def day_of_week_and_year(day: date) -> str:
    """Return the day with its year, "Sat 13 Dec 2025"."""
    return say("{day} {year}", day=day_of_week(day), year=day.year)


def day_seen_from(day: date, today: date) -> str:
    """Return the day as said on `today`, with its year where that is another: "Sat 13 Dec", "Sat 13 Dec 2025"."""
    return day_of_week(day) if day.year == today.year else day_of_week_and_year(day)


def day_of_month(day: date) -> str:
    """Return the day, "13 Dec"."""
    return say("{day} {month}", day=day.day, month=month(day))


def day_of_year(day: date) -> str:
    """Return the day with its year, "13 Dec 2025"."""
    return say("{day} {month} {year}", day=day.day, month=month(day), year=day.year)


def day_names() -> tuple[str, ...]:
    """Return the names of the days of the week, from "Monday" on."""
    return tuple(say(name) for name in _WHOLE_WEEKDAYS)
