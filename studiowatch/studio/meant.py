"""What she means to have on in the room, or off, by the hours of her day."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import count, takewhile

from studiowatch.physics.ranges import OutOfRange
from studiowatch.room.intentions import Doing, Intention
from studiowatch.room.outlook import LONGEST_H
from studiowatch.speech.words import say
from studiowatch.studio.working_hours import DAY_MIN, WallClock

DAYS_MOST = 366  # days on end that one is meant for, unless for every day
FAN_M_S = 0.5  # m/s at the pieces, of a common fan across a room, where nobody measured it; assumption
OFF_M_S = 0.0  # m/s, the target of a fan that stays off
HOUR_MS = 3_600_000  # ms
_HOURS = re.compile(r"(\d{1,2}):(\d{2})-(\d{1,2}):(\d{2})")
_LAST_MINUTE = 59


@dataclass(frozen=True, slots=True, kw_only=True)
class Meant:
    """Something on each day from `from_min` to `to_min`, minutes into her day; into the next if not later.

    Attributes
    ----------
    target : float
        °C, % or m/s that it is set to; a fan at 0 stays off.
    first_day : date
        The first day on which it goes on.
    days : int or None
        On how many in a row; None is every day until she says otherwise.
    """

    key: str
    doing: Doing
    from_min: int
    to_min: int
    target: float
    first_day: date
    days: int | None = 1

    @property
    def is_on(self) -> bool:
        """Whether something goes on; else a fan stays off."""
        return self.doing is not Doing.FAN or self.target > OFF_M_S

    @property
    def is_all_day(self) -> bool:
        """Whether its hours are the whole day."""
        return (self.from_min, self.to_min) == (0, DAY_MIN)

    def spans(self, clock: WallClock, now_ms: int) -> Iterator[tuple[int, int]]:
        """Yield from when until when it is on, UTC ms, day by day from that of `now_ms` on, without end if every day.

        The day before is the first, whose hours may last until now. Hours that a clock change leaves nothing of, as
        02:30-03:10 on a day that has no time from 02:00 to 03:00, are left out on that day.
        """
        first = max((clock.day(now_ms) - self.first_day).days - 1, 0)
        for number in count(first) if self.days is None else range(first, self.days):
            day = self.first_day + timedelta(days=number)
            last = day if self.to_min > self.from_min else day + timedelta(days=1)
            from_ms, until_ms = clock.at(day, self.from_min), clock.at(last, self.to_min)
            if until_ms > from_ms:
                yield from_ms, until_ms

    def is_over(self, clock: WallClock, now_ms: int) -> bool:
        """Return whether its last hours lie behind."""
        return self.days is not None and all(end_ms <= now_ms for _, end_ms in self.spans(clock, now_ms))


def meant_fault(meant: Meant) -> str:
    """Return in one sentence why this cannot be meant, or ""."""
    if meant.days is not None and not 1 <= meant.days <= DAYS_MOST:
        return say("Days in a row are {given}; allowed is 1 to {most}.", given=meant.days, most=DAYS_MOST)
    if not (0 <= meant.from_min < DAY_MIN and 0 <= meant.to_min <= DAY_MIN and meant.from_min != meant.to_min):
        return say("The hours must begin and end at two times of the day, as 18:00-23:00.")
    try:
        Intention(doing=meant.doing, start_h=0.0, end_h=1.0, target=meant.target)
    except OutOfRange as fault:
        return str(fault)
    return ""


def intentions_of(meant: Sequence[Meant], clock: WallClock, now_ms: int) -> tuple[Intention, ...]:
    """Return what is meant as hours from now, as far as an outlook goes; of two at one time the last holds."""
    end_ms = now_ms + LONGEST_H * HOUR_MS
    return tuple(
        Intention(
            doing=one.doing,
            start_h=(from_ms - now_ms) / HOUR_MS,
            end_h=(until_ms - now_ms) / HOUR_MS,
            target=one.target,
        )
        for one in meant
        for from_ms, until_ms in takewhile(lambda span: span[0] < end_ms, one.spans(clock, now_ms))
        if until_ms > now_ms
    )


def read_span(text: str) -> tuple[int, int]:
    """Return minutes into the day of "18:00-23:00"; "22:00-06:00" ends on the next day.

    Raises
    ------
    ValueError
        With one sentence, if it is none.
    """
    match = _HOURS.fullmatch(text.strip())
    numbers = () if match is None else tuple(int(part) for part in match.groups())
    if numbers and max(numbers[1], numbers[3]) <= _LAST_MINUTE:
        from_min, to_min = numbers[0] * 60 + numbers[1], numbers[2] * 60 + numbers[3]
        if from_min < DAY_MIN and to_min <= DAY_MIN and from_min != to_min:
            return from_min, to_min
    raise ValueError(
        say("The hours are {text}; give from and until, as 18:00-23:00, or 22:00-06:00 overnight.", text=repr(text))
    )


def span_text(meant: Meant) -> str:
    """Return the hours as `read_span` takes them: what is stored and typed."""
    return "-".join(f"{minutes // 60:02d}:{minutes % 60:02d}" for minutes in (meant.from_min, meant.to_min))
