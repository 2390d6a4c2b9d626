"""The hours of the week in which she works, and where in them a piece of work fits."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta

from studiowatch.speech.dates import weekday
from studiowatch.speech.units import Hours, chosen
from studiowatch.speech.words import say

DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
OFF = "off"
_MONDAY = date(2024, 1, 1)  # any Monday
SEARCH_DAYS = 400  # days looked ahead for a place: over a year
DAY_MIN = 24 * 60
MINUTE_MS = 60_000
GRAIN_MS = 5 * MINUTE_MS  # plans are told to five minutes
_HOURS = re.compile(r"(\d{1,2}):(\d{2})\s*[-–]\s*(\d{1,2}):(\d{2})")

Span = tuple[int, int]
"""From and until, UTC ms."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WallClock:
    """Her calendar: the local day of a UTC ms, and the UTC ms of so many minutes into a local day."""

    day: Callable[[int], date]
    at: Callable[[date, int], int]


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkingHours:
    """From when until when she works, minutes into each day of the week from Monday on; None is a day off."""

    days: tuple[tuple[int, int] | None, ...] = (*((9 * 60, 18 * 60),) * 6, None)  # common practice, no source

    def with_day(self, name: str, text: str) -> WorkingHours:
        """Return these hours with those of one day replaced; `text` as in `read_hours`."""
        at = DAYS.index(name)
        return replace(self, days=(*self.days[:at], read_hours(text), *self.days[at + 1 :]))

    def of(self, day: date) -> tuple[int, int] | None:
        """Return the hours of a day, in minutes, or None if it is off."""
        return self.days[day.weekday()]

    @property
    def is_never(self) -> bool:
        """Whether no day of the week has hours."""
        return not any(self.days)

    def spans(self, first: date, days_n: int, clock: WallClock) -> Iterator[Span]:
        """Yield the working spans of so many days from `first` on."""
        for day in (first + timedelta(days=n) for n in range(days_n)):
            hours = self.of(day)
            if hours is not None:
                yield clock.at(day, hours[0]), clock.at(day, hours[1])

    def fit(
        self, from_ms: int, clock: WallClock, *, now_ms: int, before_ms: int, after_ms: int, busy: Sequence[Span] = ()
    ) -> int | None:
        """Return the first moment, UTC ms, for work that begins `before_ms` earlier and ends `after_ms` later.

        The moment itself is not before `from_ms`, and the work not before `now_ms`; all of it lies in one day's hours
        and outside of `busy`. None if there is no such place within `SEARCH_DAYS`.
        """
        earliest = max(from_ms, now_ms + before_ms)
        taken = sorted(busy)
        days_n = 0 if self.is_never else SEARCH_DAYS
        for opens_ms, closes_ms in self.spans(clock.day(earliest), days_n, clock):
            moment = _past(-(-max(earliest, opens_ms + before_ms) // GRAIN_MS) * GRAIN_MS, before_ms, after_ms, taken)
            if moment + after_ms <= closes_ms:
                return moment
        return None


def _past(moment: int, before_ms: int, after_ms: int, taken: Sequence[Span]) -> int:
    """Return the first moment from `moment` on whose work keeps out of what is taken, which is in order."""
    for start_ms, end_ms in taken:
        if start_ms < moment + after_ms and moment - before_ms < end_ms:
            moment = end_ms + before_ms
    return moment


def read_hours(text: str) -> tuple[int, int] | None:
    """Return minutes into the day of "09:00-18:00", or None of "off" or of that in her language.

    Raises
    ------
    ValueError
        With one sentence, if it is neither.
    """
    plain = text.strip().lower()
    if plain in {OFF, off_word().lower()}:
        return None
    match = _HOURS.fullmatch(plain)
    if match is None:
        raise ValueError(
            say(
                'Working hours are {text}; give from and until like 09:00-18:00, or "{off}".',
                text=repr(text),
                off=off_word(),
            )
        )
    from_h, from_min, to_h, to_min = map(int, match.groups())
    start, end = from_h * 60 + from_min, to_h * 60 + to_min
    if max(from_min, to_min) > 59 or not 0 <= start < end <= DAY_MIN:  # noqa: PLR2004 - minutes of an hour
        raise ValueError(
            say("Working hours are {text}; the end must be later than the start, and 24:00 at most.", text=repr(text))
        )
    return start, end


def off_word() -> str:
    """Return how she writes that a day is off."""
    return say("off", about="a day")


def hours_text(hours: tuple[int, int] | None) -> str:
    """Return hours as `read_hours` takes them, and as they are stored."""
    if hours is None:
        return OFF
    return "-".join(f"{minutes // 60:02d}:{minutes % 60:02d}" for minutes in hours)


def week_text(hours: WorkingHours) -> str:
    """Return the week in words: "Mon to Sat 09:00-18:00, Sun off"."""
    parts: list[tuple[int, int]] = []
    for at, day in enumerate(hours.days):
        if parts and hours.days[parts[-1][0]] == day:
            parts[-1] = (parts[-1][0], at)
        else:
            parts.append((at, at))
    return ", ".join(_stretch_text(first, last, hours.days[first]) for first, last in parts)


def _stretch_text(first: int, last: int, hours: tuple[int, int] | None) -> str:
    from_day, to_day = (weekday(_MONDAY + timedelta(days=at)) for at in (first, last))
    days = from_day if first == last else say("{first} to {last}", first=from_day, last=to_day)
    if hours is None:
        return say("{days} off", days=days)
    return f"{days} {'-'.join(_clock(minutes) for minutes in hours)}"


def _clock(minutes: int) -> str:
    """Return minutes into the day as she reads the clock; the end of a day is 24:00, or 12:00 am."""
    if minutes == DAY_MIN and chosen().hours is Hours.TWENTY_FOUR:
        return "24:00"
    return chosen().clock(datetime.combine(_MONDAY, time()) + timedelta(minutes=minutes))
