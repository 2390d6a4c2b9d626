"""The minutes of the last hour, and where they are heading."""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass, field

import numpy as np

from studiowatch.room.trend import WINDOW_MS, Crossing, Trend, trend_of
from studiowatch.studio.concern import AirNow
from studiowatch.studio.heading import Figure

MINUTE_MS = 60_000  # ms of readings that make one point
GAP_MS = 600_000  # ms without a reading after which what was before tells nothing


@dataclass(slots=True)
class _Minute:
    """The sums of one minute: its number, how many readings, and the sum of each figure."""

    number: int
    count: int = 0
    sums: dict[Figure, float] = field(default_factory=dict)


@dataclass(slots=True)
class RoomHeading:
    """Keeps minute means and answers as `studio.heading.Heading`; a trend is only drawn anew each minute."""

    _minutes: deque[_Minute] = field(default_factory=lambda: deque(maxlen=WINDOW_MS // MINUTE_MS + 2))
    _trends: dict[Figure, Trend | None] = field(default_factory=dict)

    def take(self, air: AirNow, now_ms: int) -> None:
        """Take the room as measured now; where it is not measured, or was typed, there is no trend."""
        if air.typed is not None or air.implausible or air.temperature_C is None or air.humidity_pct is None:
            return
        number = now_ms // MINUTE_MS
        if not self._minutes or number != self._minutes[-1].number:
            self._begin(number)
        minute = self._minutes[-1]
        minute.count += 1
        dew_C = air.temperature_C if air.dew_point_C is None else air.dew_point_C
        for figure, value in (
            (Figure.HUMIDITY, air.humidity_pct),
            (Figure.TEMPERATURE, air.temperature_C),
            (Figure.ABOVE_DEW, air.temperature_C - dew_C),
        ):
            minute.sums[figure] = minute.sums.get(figure, 0.0) + value

    def _begin(self, number: int) -> None:
        if self._minutes and not 0 < number - self._minutes[-1].number <= GAP_MS // MINUTE_MS:
            self._minutes.clear()
        self._trends.clear()
        self._minutes.append(_Minute(number))

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        """Return in how long `figure` will have moved by `distance`; see `studio.heading.Heading`."""
        if figure not in self._trends:
            whole = list(self._minutes)[:-1]  # the last one is not over yet
            times_ms = np.array([float(one.number * MINUTE_MS) for one in whole])
            self._trends[figure] = trend_of(times_ms, np.array([one.sums[figure] / one.count for one in whole]))
        trend = self._trends[figure]
        return None if trend is None else trend.until(distance, said_before=said_before)

    def fan_from_ms(self, now_ms: int) -> int | None:
        """Return None: an hour that lies behind tells nothing of what she means to do."""
        del now_ms
        return None
