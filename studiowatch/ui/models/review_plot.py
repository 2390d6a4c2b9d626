"""What the room did under a coat, as panels of lines over one time: numbers and words, no drawing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from studiowatch.physics.ranges import Array
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.review_views import FilmTrace, OtherCoat, Review, Span
from studiowatch.ui.models.history_axis import ValueScale, moment_words, value_scale
from studiowatch.ui.models.times import HOUR_MS

MOST_TICKS = 3
_LEAST_SPAN = {
    "°C": 6.0,
    "°F": 10.8,
    "%": 20.0,
    "g/m²": 8.0,
    "m/s": 0.3,
    "ft/min": 60.0,
}  # so that a quiet stretch does not look rough


_HEADROOM = 0.12  # of a panel's height, above a limit


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Line:
    """One line of a panel; `ink` names a colour of the theme, `words` what it is.

    `wide` marks the coat that is reviewed, `dashed` another that clouded.
    """

    words: str
    ink: str
    time_ms: NDArray[np.int64]
    values: Array
    wide: bool = False
    dashed: bool = False

    def at(self, time_ms: float) -> float | None:
        """Return the value last known at a time, or None before the first or in a stretch without readings."""
        place = int(np.searchsorted(self.time_ms, time_ms, side="right")) - 1
        if place < 0 or time_ms > self.time_ms[-1]:
            return None
        value = float(self.values[place])
        return value if np.isfinite(value) else None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Panel:
    """Lines over one value axis, with a limit and its words where there is one."""

    title: str
    unit: str
    lines: tuple[Line, ...]
    scale: ValueScale
    limit: float | None = None
    limit_words: str = ""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Picture:
    """The panels from top to bottom between two times, UTC ms, and what is marked in them.

    With `since_laid` times count from the laying, and a line read out is the reviewed coat's alone.
    """

    start_ms: int
    end_ms: int
    laid_ms: int
    panels: tuple[Panel, ...]
    spans: tuple[Span, ...]
    sealed_words: str = ""
    described: str = ""
    since_laid: bool = False

    def read(self, time_ms: float) -> str:
        """Return all values at a time in words."""
        units = chosen()
        read = [
            say("{hours} h after laying", hours=units.number(time_ms / HOUR_MS, 1))
            if self.since_laid
            else moment_words(time_ms, self.end_ms - self.start_ms)
        ]
        for panel in self.panels:
            for line in (line for line in panel.lines if line.wide or not self.since_laid):
                value = line.at(time_ms)
                if value is not None:
                    read.append(f"{line.words} {units.number(value, _decimals(panel.unit))} {panel.unit}")
        return "   ".join(read)


def picture_of(review: Review) -> Picture:
    """Return what is drawn of a review."""
    start_ms, end_ms = _shown(review)
    panels = tuple(panel for panel in _panels(review) if panel.lines)
    sealed = review.sealed_in_g_m2
    return Picture(
        start_ms=start_ms,
        end_ms=end_ms,
        laid_ms=review.laid_ms,
        panels=panels,
        spans=review.spans,
        sealed_words=say("{amount} g/m² sealed in", amount=chosen().plain(float(f"{sealed:.2g}")))
        if sealed >= 0.05  # noqa: PLR2004 - rounds to nothing
        else "",
        described=f"{', '.join(panel.title for panel in panels)}, {_spanned(start_ms, end_ms)}",
    )


def beside_of(coats: Sequence[OtherCoat]) -> Picture:
    """Return what is drawn of a coat, the first, beside her others."""
    this, others = coats[0], coats[1:]
    start_ms, end_ms = -HOUR_MS // 2, 10 * HOUR_MS
    counts = {clouded: sum(one.clouded is clouded for one in others) for clouded in (True, False)}
    lines = [*(_beside(one) for one in others), _beside(this, wide=True)]
    panels = (
        _panel(say("relative humidity"), "%", tuple(line[1] for line in lines)),
        _panel(say("temperature"), chosen().degrees.value, tuple(line[0] for line in lines)),
    )
    return Picture(
        start_ms=start_ms,
        end_ms=end_ms,
        laid_ms=0,
        panels=tuple(panel for panel in panels if panel.lines),
        spans=(),
        described=say(
            "This coat beside {clear} that came out clear and {clouded} that clouded",
            clear=counts[False],
            clouded=counts[True],
        ),
        since_laid=True,
    )


def _beside(coat: OtherCoat, *, wide: bool = False) -> tuple[Line, Line]:
    """Return the lines of temperature and humidity of one coat."""
    times = np.round(coat.hours * HOUR_MS).astype(np.int64)
    ink = "film_wet" if wide else "act" if coat.clouded else "good"
    both = tuple(
        Line(words=words, ink=ink, time_ms=times, values=values, wide=wide, dashed=coat.clouded and not wide)
        for words, values in ((say("temperature"), _degrees(coat.temperature_C)), (say("humidity"), coat.humidity_pct))
    )
    return both[0], both[1]


def _shown(review: Review) -> tuple[int, int]:
    """Return from when to when something is known, so that a coat dry within hours is not lost in days."""
    ends = [span.end_ms for span in review.spans] or [review.laid_ms]
    last_ms = max(ends)
    margin_ms = max((last_ms - review.laid_ms) // 4, 1_800_000)
    times = [each for each in (review.room.time_ms, *(film.time_ms for film in review.films)) if len(each)]
    first_ms = min((int(time_ms[0]) for time_ms in times), default=review.laid_ms - margin_ms)
    until_ms = max((int(time_ms[-1]) for time_ms in times), default=last_ms)
    return min(first_ms, review.laid_ms - margin_ms), max(min(until_ms, last_ms + margin_ms), last_ms)


def _panels(review: Review) -> Iterator[Panel]:
    room, top = review.room, review.films[-1] if review.films else None
    units = chosen()
    air = Line(words=say("air"), ink="ink", time_ms=room.time_ms, values=_degrees(room.temperature_C))
    dew = Line(words=say("dew point"), ink="dew", time_ms=room.time_ms, values=_degrees(room.dew_point_C))
    film = () if top is None else (_film(top),)
    least, least_words = None, ""
    if review.limit_C is not None:
        least = units.degrees.from_celsius(review.limit_C)
        least_words = say("sheet's least film temperature {limit}", limit=units.limit(review.limit_C))
    yield _panel(say("temperature"), units.degrees.value, (air, *film, dew), limit=least, limit_words=least_words)
    humidity = Line(words=say("humidity"), ink="ink", time_ms=room.time_ms, values=room.humidity_pct)
    limit_pct = review.limit_humidity_pct
    damp_words = "" if limit_pct is None else say("damp for it above {limit} %", limit=units.plain(limit_pct))
    yield _panel(say("relative humidity"), "%", (humidity,), limit=limit_pct, limit_words=damp_words)
    speeds = room.air_speed_m_s * units.speed.from_si(1.0)
    speed = Line(words=say("air speed"), ink="ink", time_ms=room.time_ms, values=speeds)
    yield _panel(say("air speed"), units.speed.value, (speed,), floor=0.0)
    yield _panel(say("held in each coat"), "g/m²", tuple(_held(review.films)), floor=0.0)


def _film(top: FilmTrace) -> Line:
    return Line(words=say("film"), ink="paint", time_ms=top.time_ms, values=_degrees(top.film_C), wide=True)


def _degrees(temperature_C: Array) -> Array:
    """Return temperatures, °C, in her unit."""
    degrees = chosen().degrees
    return temperature_C * degrees.per_K + degrees.from_celsius(0.0)


def _held(films: Sequence[FilmTrace]) -> Iterator[Line]:
    for film in films:
        is_top = film is films[-1]
        ink = "film_wet" if is_top else "film_dry_mark"
        yield Line(words=film.label, ink=ink, time_ms=film.time_ms, values=film.water_g_m2, wide=is_top)


def _panel(
    title: str,
    unit: str,
    lines: tuple[Line, ...],
    *,
    limit: float | None = None,
    limit_words: str = "",
    floor: float | None = None,
) -> Panel:
    known = tuple(line for line in lines if len(line.values) and np.isfinite(line.values).any())
    values = [float(bound) for line in known for bound in (np.nanmin(line.values), np.nanmax(line.values))]
    values += [] if limit is None else [limit]
    values += [] if floor is None else [floor]
    low, high = (min(values), max(values)) if values else (0.0, 1.0)
    lacking = max(_LEAST_SPAN[unit] - (high - low), 0.0)
    low, high = (low, high + lacking) if floor is not None else (low - lacking / 2, high + lacking / 2)
    if limit is not None:
        high = max(high, limit + _HEADROOM * (high - low))  # so that a limit's words do not touch the title
    return Panel(
        title=title,
        unit=unit,
        lines=known,
        scale=replace(value_scale(low, high, MOST_TICKS), point=chosen().numbers.value),
        limit=limit,
        limit_words=limit_words,
    )


def _decimals(unit: str) -> int:
    return {"%": 0, "m/s": 2, "ft/min": 0}.get(unit, 1)


def _spanned(start_ms: int, end_ms: int) -> str:
    width_ms = end_ms - start_ms
    start, end = moment_words(start_ms, width_ms), moment_words(end_ms, width_ms)
    return say("from {start} to {end}", start=start, end=end)
