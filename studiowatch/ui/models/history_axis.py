"""The time axis in her local time, and the value axes: where ticks stand and what they say."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, tzinfo
from math import ceil, floor, log10

from studiowatch.speech.dates import day_of_week, day_of_week_and_year, month, weekday
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.ui.models.times import day_words, local

MINUTE_S = 60
HOUR_S = 3600
DAY_S = 86400

CLOCK_STEPS_S = (
    *(1, 2, 5, 10, 15, 30),
    *(MINUTE_S * minutes for minutes in (1, 2, 5, 10, 15, 30)),
    *(HOUR_S * hours for hours in (1, 2, 3, 6, 12)),
)
DAY_STEPS = (1, 2, 7)
MONTH_STEPS = (1, 2, 3, 6, 12, 24, 60, 120, 240, 600)
MONTHS_IN_YEAR = 12
DAYS_IN_MONTH = 30.4
DAYS_IN_WEEK = 7
NUDGE = 1e-9  # of a tick: 0.3/0.1 is not quite 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Tick:
    """One tick: UTC ms and its label; `strong` marks the start of a day, or of a year among months."""

    time_ms: int
    label: str
    strong: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeScale:
    """The map between time and pixels.

    Attributes
    ----------
    start_ms, end_ms : int
        Times at the left and the right edge, UTC ms.
    left_px, width_px : float
        The left edge and the width, px.
    """

    start_ms: int
    end_ms: int
    left_px: float
    width_px: float

    @property
    def right_px(self) -> float:
        """The right edge, px."""
        return self.left_px + self.width_px

    @property
    def ms_per_px(self) -> float:
        """Milliseconds in one pixel."""
        return (self.end_ms - self.start_ms) / self.width_px

    def x(self, time_ms: float) -> float:
        """Return the pixel of a time."""
        return self.left_px + (time_ms - self.start_ms) / self.ms_per_px

    def time_ms(self, x_px: float) -> float:
        """Return the time of a pixel, UTC ms."""
        return self.start_ms + (x_px - self.left_px) * self.ms_per_px


def time_ticks(start_ms: int, end_ms: int, most: int, zone: tzinfo | None = None) -> tuple[Tick, ...]:
    """Return ticks at round local times between two times.

    Parameters
    ----------
    start_ms, end_ms : int
        UTC ms.
    most : int
        How many labels fit beside each other, at least 1.
    zone : tzinfo or None
        The zone of the labels; None is the machine's own.
    """
    finest_s = (end_ms - start_ms) / 1000 / max(most, 1)
    ticks = _ticks_at_least(finest_s, start_ms, end_ms, zone)
    return tuple(tick for tick in ticks if start_ms <= tick.time_ms <= end_ms)


def _ticks_at_least(finest_s: float, start_ms: int, end_ms: int, zone: tzinfo | None) -> Iterator[Tick]:
    first, last = local(start_ms, zone).date(), local(end_ms, zone).date()
    for step_s in CLOCK_STEPS_S:
        if step_s >= finest_s:
            return _clock_ticks(step_s, start_ms, end_ms, zone)
    for days in DAY_STEPS:
        if days * DAY_S >= finest_s:
            return _day_ticks(days, first, last, zone)
    wide_enough = (months for months in MONTH_STEPS if months * DAYS_IN_MONTH * DAY_S >= finest_s)
    return _month_ticks(next(wide_enough, MONTH_STEPS[-1]), first, last, zone)


def _clock_ticks(step_s: int, start_ms: int, end_ms: int, zone: tzinfo | None) -> Iterator[Tick]:
    """Step through UTC in strides that any zone's offset is a multiple of, and keep the round local times."""
    stride_s = min(step_s, 15 * MINUTE_S)
    second = floor(start_ms / 1000 / stride_s) * stride_s
    while second * 1000 <= end_ms:
        wall = local(second * 1000, zone)
        of_day_s = wall.hour * HOUR_S + wall.minute * MINUTE_S + wall.second
        if of_day_s % step_s == 0:
            label = day_of_week(wall.date()) if of_day_s == 0 else chosen().clock(wall, seconds=step_s < MINUTE_S)
            yield Tick(time_ms=second * 1000, label=label, strong=of_day_s == 0)
        second += stride_s


def _day_ticks(days: int, first: date, last: date, zone: tzinfo | None) -> Iterator[Tick]:
    """Every day, every second, or every Monday, counted from a fixed Monday so that panning does not shift them."""
    for ordinal in range(first.toordinal(), last.toordinal() + 1):
        day = date.fromordinal(ordinal)
        if (ordinal - 1) % days == 0:
            label = day_words(day) if days == DAYS_IN_WEEK else day_of_week(day)
            yield Tick(time_ms=_midnight_ms(day, zone), label=label)


def _month_ticks(months: int, first: date, last: date, zone: tzinfo | None) -> Iterator[Tick]:
    for count in range(first.year * MONTHS_IN_YEAR + first.month - 1, last.year * MONTHS_IN_YEAR + last.month):
        if count % months == 0:
            day = date(count // MONTHS_IN_YEAR, count % MONTHS_IN_YEAR + 1, 1)
            january = day.month == 1
            yield Tick(
                time_ms=_midnight_ms(day, zone),
                label=f"{day.year}" if january else month(day),
                strong=january and months < MONTHS_IN_YEAR,
            )


def _midnight_ms(day: date, zone: tzinfo | None) -> int:
    return round(datetime.combine(day, time(), zone).timestamp() * 1000)


def moment_words(time_ms: float, width_ms: int, zone: tzinfo | None = None) -> str:
    """Return a time in words as fine as a view of `width_ms` can tell: "Wed 25 Nov 13:42:10"."""
    wall = local(round(time_ms), zone)
    if is_told_by_day(width_ms):
        return day_of_week_and_year(wall.date())
    clock = moment_clock(time_ms, width_ms, zone)
    return say("{day} {time}", day=day_of_week(wall.date()), time=clock)


def moment_clock(time_ms: float, width_ms: int, zone: tzinfo | None = None) -> str:
    """Return the time of day as fine as a view of `width_ms` can tell: "13:42:10"."""
    return chosen().clock(local(round(time_ms), zone), seconds=width_ms < HOUR_S * 1000)


def is_told_by_day(width_ms: int) -> bool:
    """Return whether `moment_words` leave the time of day out in so wide a view."""
    return width_ms > 400 * DAY_S * 1000


def range_words(start_ms: int, end_ms: int, zone: tzinfo | None = None) -> str:
    """Return the days of a view in words: "Wed 25 Nov 2026", or "Wed 18 - Thu 26 Nov 2026"."""
    first, last = local(start_ms, zone).date(), local(end_ms, zone).date()
    closing = day_of_week_and_year(last)
    if first == last:
        return closing
    if first.year != last.year:
        opening = day_of_week_and_year(first)
    elif first.month == last.month:
        opening = say("{weekday} {day}", weekday=weekday(first), day=first.day)
    else:
        opening = day_of_week(first)
    return f"{opening} \N{EN DASH} {closing}"


@dataclass(frozen=True, slots=True, kw_only=True)
class ValueScale:
    """The range of a value axis and the ticks on it, in the panel's unit."""

    low: float
    high: float
    ticks: tuple[float, ...]
    decimals: int
    point: str = "."

    def label(self, value: float) -> str:
        """Return the tick's label."""
        return f"{value:.{self.decimals}f}".replace(".", self.point)


def value_scale(low: float, high: float, most_ticks: int) -> ValueScale:
    """Return a scale that holds `low` to `high`, with ticks 1, 2 or 5 times a power of ten apart.

    The ends lie on fifths of a tick, so that a live view does not creep with each reading.

    Raises
    ------
    ValueError
        If `high` is not above `low`.
    """
    if not high > low:
        raise ValueError(f"value axis from {low} to {high}: the upper end must be above the lower")  # not said
    step = _round_step((high - low) / max(most_ticks, 1))
    fifth = step / 5
    bottom, top = floor(low / fifth + NUDGE) * fifth, ceil(high / fifth - NUDGE) * fifth
    first, last = ceil(bottom / step - NUDGE), floor(top / step + NUDGE)
    ticks = tuple(round(count * step, 9) for count in range(first, last + 1))
    return ValueScale(low=bottom, high=top, ticks=ticks, decimals=max(0, -floor(log10(step) + NUDGE)))


def _round_step(least: float) -> float:
    power: float = 10.0 ** floor(log10(least))
    return next(factor * power for factor in (1, 2, 5, 10) if factor * power >= least * (1 - NUDGE))
