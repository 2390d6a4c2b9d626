"""What she means to have on in the room, by the hours of her day, and what it asks of her care."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from studiowatch.physics.ranges import OutOfRange
from studiowatch.room.intentions import TARGETS, Doing, Intention
from studiowatch.room.outlook import LONGEST_H
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.working_hours import DAY_MIN, WallClock

DAYS_MOST = 366  # days on end that one is meant for
HOUR_MS = 3_600_000  # ms
_HOURS = re.compile(r"(\d{1,2}):(\d{2})-(\d{1,2}):(\d{2})")
_LAST_MINUTE = 59

_CAUTIONS = {
    Doing.HEATER: mark(
        "Use the heater by its own instructions: clear of fabric, paper and rags, clear of solvent and its vapour, and "
        "not left alone if they say so. Never use it to dry a coat that gives off flammable vapour."
    ),
    Doing.DEHUMIDIFIER: mark(
        "Use the dryer by its own instructions: clear of fabric, clear of solvent and its vapour. Never use it to dry "
        "a coat that gives off flammable vapour: that needs fresh air, and a dryer wants the room shut."
    ),
    Doing.FAN: mark("Use the fan by its own instructions, clear of solvent and its vapour."),
}
_FRESH_AIR = mark("Fresh air comes before a perfect coat. Product sheets and local codes come before this program.")


@dataclass(frozen=True, slots=True, kw_only=True)
class Meant:
    """Something on each day from `from_min` to `to_min`, minutes into her day; into the next if not later.

    Attributes
    ----------
    target : float
        °C, % or m/s that it is set to.
    first_day : date
        The first day on which it goes on; `days` is on how many in a row.
    """

    key: str
    doing: Doing
    from_min: int
    to_min: int
    target: float
    first_day: date
    days: int = 1

    def spans(self, clock: WallClock) -> Iterator[tuple[int, int]]:
        """Yield from when until when it is on, UTC ms, day by day."""
        for day in (self.first_day + timedelta(days=n) for n in range(self.days)):
            last = day if self.to_min > self.from_min else day + timedelta(days=1)
            yield clock.at(day, self.from_min), clock.at(last, self.to_min)

    def is_over(self, clock: WallClock, now_ms: int) -> bool:
        """Return whether its last hours lie behind."""
        return all(end_ms <= now_ms for _, end_ms in self.spans(clock))


def meant_fault(meant: Meant) -> str:
    """Return in one sentence why this cannot be meant, or ""."""
    if meant.doing is Doing.FAN:
        return say("A fan is not meant here; give --heater or --dehumidifier.")
    if not 1 <= meant.days <= DAYS_MOST:
        return say("Days in a row are {given}; allowed is 1 to {most}.", given=meant.days, most=DAYS_MOST)
    if not (0 <= meant.from_min < DAY_MIN and 0 <= meant.to_min <= DAY_MIN and meant.from_min != meant.to_min):
        return say("The hours must begin and end at two times of the day, as 18:00-23:00.")
    try:
        Intention(doing=meant.doing, start_h=0.0, end_h=1.0, target=meant.target)
    except OutOfRange as fault:
        return str(fault)
    return ""


def intentions_of(meant: Sequence[Meant], clock: WallClock, now_ms: int) -> tuple[Intention, ...]:
    """Return what is meant as hours from now, as far as an outlook goes; of two at one time the first holds."""
    return tuple(
        Intention(
            doing=one.doing,
            start_h=(from_ms - now_ms) / HOUR_MS,
            end_h=(until_ms - now_ms) / HOUR_MS,
            target=one.target,
        )
        for one in meant
        for from_ms, until_ms in one.spans(clock)
        if until_ms > now_ms and from_ms < now_ms + LONGEST_H * HOUR_MS
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


def target_text(meant: Meant) -> str:
    """Return the target with its unit as she reads it."""
    if meant.doing is Doing.HEATER:
        return chosen().limit(meant.target)
    return f"{chosen().number(meant.target, 0)} {TARGETS[meant.doing][2]}"


def cautions(doing: Doing) -> tuple[str, ...]:
    """Return what bites at the step of switching it on."""
    return say(_CAUTIONS[doing]), say(_FRESH_AIR)


def vapour_sentence(coat: str) -> str:
    """Return why nothing is heated or dried now; `coat` gives off vapour still, in words."""
    return say(
        "{coat} still gives off flammable vapour: no heater and no dryer now, air the room. Say it again when that "
        "coat is ready.",
        coat=f"{coat[:1].upper()}{coat[1:]}",
    )


def withheld_sentence(coat: str) -> str:
    """Return why what is meant is not counted on; `coat` gives off vapour still, in words."""
    return say(
        "{coat} still gives off flammable vapour: this is not counted on until that coat is ready. No heater and no "
        "dryer now; air the room.",
        coat=f"{coat[:1].upper()}{coat[1:]}",
    )
