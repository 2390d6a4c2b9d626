"""The three panels of the room history: their curves, limits, ranges and the values under the pointer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum, auto

import numpy as np
from numpy.typing import NDArray

from studiowatch.coats.stages import Surface
from studiowatch.room.limits import AIR_SPEED
from studiowatch.service.piece_view import CoatView
from studiowatch.service.ports import Series
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import METRIC, Degrees, Speed
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import Kind
from studiowatch.ui.models.history_axis import ValueScale, value_scale
from studiowatch.ui.models.history_gaps import gap_ms, nearest_to, seen_between
from studiowatch.ui.models.history_live import RoomData, with_live

NO_READING = mark("no reading")
AS_MEANT = (mark("to come: with what you mean to do"), mark("to come: as meant"))


class Quantity(Enum):
    """What a curve shows; the value is its word in the legend, empty where the panel's title says it all."""

    AIR = mark("air")
    FILM = mark("film")
    DEW = mark("dew point")
    ONLY = ""


class Place(Enum):
    """The panels, from the top."""

    TEMPERATURE = auto()
    HUMIDITY = auto()
    AIR = auto()


# A warning about the board belongs to no panel: there its curves have a gap.
PLACES: dict[str, Place] = {
    Kind.AIR_MOVING: Place.AIR,
    Kind.DAMP: Place.HUMIDITY,
    Kind.TOO_COLD: Place.TEMPERATURE,
    Kind.NEAR_DEW_POINT: Place.TEMPERATURE,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Limit:
    """A dashed line at `value`, in the panel's unit, with its words."""

    value: float
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """One curve of a panel."""

    quantity: Quantity
    series: Series


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Ahead:
    """What a panel's first curve may do from now on, in the panel's unit: four in five ways lie from low to high.

    `words` say what that counts on, in the order of what they need of room; none if on nothing.
    """

    time_ms: NDArray[np.int64]
    low: NDArray[np.float64]
    middle: NDArray[np.float64]
    high: NDArray[np.float64]
    words: tuple[str, ...] = ()

    def between(self, start_ms: float, end_ms: float) -> slice:
        """Return the part that is seen between two times, with a corner beyond each."""
        first, last = np.searchsorted(self.time_ms, (start_ms, end_ms))
        return slice(max(int(first) - 1, 0), int(last) + 1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Panel:
    """One panel. `least` and `floor` shape its range: never narrower than `least`, never below `floor`.

    `point` is the decimal sign; `ahead` what is to come, from `now_ms` on.
    """

    place: Place
    title: str
    decimals: int
    unit: str
    least: float
    floor: float | None
    curves: tuple[Curve, ...]
    limits: tuple[Limit, ...] = ()
    point: str = "."
    ahead: Ahead | None = None
    now_ms: int = 0

    def scale(self, start_ms: int, end_ms: int, most_ticks: int) -> ValueScale:
        """Return the range that holds all that is seen between two times, and the limits."""
        lows, highs = [limit.value for limit in self.limits], [limit.value for limit in self.limits]
        for curve in self.curves:
            seen = seen_between(curve.series, start_ms, end_ms)
            if seen.start < seen.stop:
                lows.append(float(curve.series.low[seen].min()))
                highs.append(float(curve.series.high[seen].max()))
        if self.ahead is not None and end_ms > self.now_ms:
            part = self.ahead.between(max(start_ms, self.now_ms), end_ms)
            if part.stop - part.start > 1:
                lows.append(float(self.ahead.low[part].min()))
                highs.append(float(self.ahead.high[part].max()))
        low, high = (min(lows), max(highs)) if lows else (self.floor or 0.0, (self.floor or 0.0) + self.least)
        spare = max(self.least - (high - low), 0.08 * (high - low))
        low, high = low - spare / 2, high + spare / 2
        if self.floor is not None and low < self.floor:
            low, high = self.floor, max(high, self.floor + self.least)
        return replace(value_scale(low, high, most_ticks), point=self.point)

    def logged(self, start_ms: int, end_ms: int) -> bool:
        """Return whether any curve has a reading between two times."""
        seen = (seen_between(curve.series, start_ms, end_ms) for curve in self.curves)
        return any(part.start < part.stop for part in seen)

    def expected(self, time_ms: float) -> str:
        """Return what may be at a time to come: "likely 19.0-21.3", or "" where nothing is foretold."""
        if self.ahead is None or not self.now_ms < time_ms <= self.ahead.time_ms[-1]:
            return ""
        low, high = (
            f"{float(np.interp(time_ms, self.ahead.time_ms, values)):.{self.decimals}f}".replace(".", self.point)
            for values in (self.ahead.low, self.ahead.high)
        )
        return say("likely {low}\N{EN DASH}{high}", low=low, high=high)

    def reading(self, curve: Curve, time_ms: float) -> str:
        """Return the value of `curve` at a time: "20.6", "0.04-0.34" where a bucket spans that, or "no reading"."""
        found = nearest_to(curve.series, time_ms)
        if found is None:
            return say(NO_READING)
        low, high, mean = (
            f"{values[found]:.{self.decimals}f}".replace(".", self.point)
            for values in (curve.series.low, curve.series.high, curve.series.mean)
        )
        visible = float(curve.series.high[found] - curve.series.low[found]) > 2 * 10**-self.decimals
        return f"{low}\N{EN DASH}{high}" if visible else mean


def panels_of(data: RoomData, film: Series, snapshot: Snapshot | None) -> tuple[Panel, Panel, Panel]:
    """Return the panels for what was read, the film's temperature and the limits of the coats that are wet now.

    Each curve ends at the newest live value: the log is asked again only once a pixel's worth of time has passed.
    """
    data, film = with_live(data, film, snapshot)
    units = METRIC if snapshot is None else snapshot.units
    degrees, point = units.degrees, units.numbers.value
    wet = [coat for coat in _coats(snapshot) if _wet(coat)]
    films_C = [coat.limit_C for coat in wet if coat.limit_C is not None]
    damp_pct = [coat.limit_humidity_pct for coat in wet if coat.limit_humidity_pct is not None]
    temperature = Panel(
        place=Place.TEMPERATURE,
        title=say("temperature {unit}", unit=degrees.value),
        decimals=1,
        unit=degrees.value,
        least=6.0 * degrees.per_K,
        floor=None,
        curves=(
            Curve(quantity=Quantity.AIR, series=_read_in(data.temperature, degrees)),
            Curve(quantity=Quantity.FILM, series=_read_in(film, degrees)),
            Curve(quantity=Quantity.DEW, series=_read_in(data.dew, degrees)),
        ),
        limits=tuple(
            Limit(
                value=degrees.from_celsius(film_C),
                words=say("film must stay above {limit}", limit=units.limit(film_C)),
            )
            for film_C in sorted(films_C)[-1:]
        ),
    )
    humidity = Panel(
        place=Place.HUMIDITY,
        title=say("relative humidity %"),
        decimals=0,
        unit="%",
        least=25.0,
        floor=0.0,
        curves=(Curve(quantity=Quantity.ONLY, series=data.humidity),),
        limits=(Limit(value=min(damp_pct), words=say("too damp for a wet coat")),) if damp_pct else (),
    )
    air = _air_panel(data, units.speed, anything_wet=bool(wet))
    temperature, humidity = _with_ahead(temperature, humidity, snapshot)
    return replace(temperature, point=point), humidity, replace(air, point=point)


def _with_ahead(temperature: Panel, humidity: Panel, snapshot: Snapshot | None) -> tuple[Panel, Panel]:
    """Return the panels with what the room may do from now on, where that is foretold."""
    band = None if snapshot is None else snapshot.room_band
    if snapshot is None or band is None:
        return temperature, humidity
    degrees = snapshot.units.degrees
    in_unit = degrees.from_celsius(0.0) + degrees.per_K * band.temperature_C
    ahead = [
        Ahead(time_ms=band.time_ms, low=low, middle=middle, high=high)
        for low, middle, high in (in_unit, band.humidity_pct)
    ]
    return (
        replace(
            temperature,
            ahead=replace(ahead[0], words=tuple(say(one) for one in AS_MEANT) if band.is_meant else ()),
            now_ms=snapshot.time_ms,
        ),
        replace(humidity, ahead=ahead[1], now_ms=snapshot.time_ms),
    )


def empty_stretches(
    panels: Sequence[Panel], start_ms: int, end_ms: int, least_ms: float
) -> tuple[tuple[int, int], ...]:
    """Return the stretches between two times, at least `least_ms` long, in which no curve has a reading, UTC ms."""
    series = [curve.series for panel in panels for curve in panel.curves if len(curve.series.time_ms)]
    seen = [one.time_ms[seen_between(one, start_ms, end_ms)] for one in series]
    time_ms = np.sort(np.concatenate(([start_ms], *seen, [max(start_ms, end_ms)])))
    apart_ms = np.diff(time_ms)
    if apart_ms.max() < least_ms:
        return ()
    longest_ms = max([least_ms, *(gap_ms(one) for one in series)])
    return tuple((int(time_ms[at]), int(time_ms[at + 1])) for at in np.flatnonzero(apart_ms > longest_ms))


def _read_in(series: Series, unit: Degrees | Speed) -> Series:
    """Return a series in another unit; itself where it is in that one already."""
    if unit in {Degrees.CELSIUS, Speed.METRES_PER_SECOND}:
        return series
    zero, factor = (
        (unit.from_celsius(0.0), unit.per_K) if isinstance(unit, Degrees) else (unit.from_si(0.0), unit.from_si(1.0))
    )
    low, high, mean = (zero + factor * values for values in (series.low, series.high, series.mean))
    return replace(series, low=low, high=high, mean=mean)


def _air_panel(data: RoomData, unit: Speed, *, anything_wet: bool) -> Panel:
    if data.signal:
        curves = (Curve(quantity=Quantity.ONLY, series=data.air),)
        title = say("air signal mV, no speed until calibrated")
        return Panel(place=Place.AIR, title=title, decimals=0, unit="mV", least=40.0, floor=0.0, curves=curves)
    limits = (Limit(value=unit.from_si(AIR_SPEED.caution), words=say("moving air")),) if anything_wet else ()
    return Panel(
        place=Place.AIR,
        title=say("air speed {unit}", unit=unit.value),
        decimals=unit.places,
        unit=unit.value,
        least=unit.from_si(0.4),
        floor=0.0,
        curves=(Curve(quantity=Quantity.ONLY, series=_read_in(data.air, unit)),),
        limits=limits,
    )


def _coats(snapshot: Snapshot | None) -> tuple[CoatView, ...]:
    return tuple(coat for piece in snapshot.pieces for coat in piece.coats) if snapshot is not None else ()


def _wet(coat: CoatView) -> bool:
    return coat.surface in {Surface.WET, Surface.TACKY} or coat.milky
