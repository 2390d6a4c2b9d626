"""The room in spans of ten minutes: read from the log a day at a look, and kept from the readings from then on."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

import numpy as np
import numpy.typing as npt

from studiowatch.physics.ranges import Array
from studiowatch.room.hourly_log import DAY_H, HOUR_MS, HourlyLog
from studiowatch.room.outlook import FITTED_DAYS
from studiowatch.service.ports import ReadingsLog
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import AirNow

MINUTE_MS = 60_000  # ms
SPAN_MS = 10 * MINUTE_MS  # ms
DAY_MS = 86_400_000  # ms
AGAIN_MS = 10 * MINUTE_MS  # ms until a log that could not be read is tried again
_WIDTH = 6  # sums of °C, % and m/s, and how many each is of
_KEPT = (FITTED_DAYS + 2) * DAY_MS // SPAN_MS  # spans, the oldest overwritten: as much memory after months as at first
_MOST_H = FITTED_DAYS * DAY_H  # hours back from now that are told
_NONE = -1  # the number of a span that is not there

Numbers = npt.NDArray[np.int64]
Values = tuple[float | None, float | None, float | None]


@dataclass(slots=True)
class RoomHours:
    """Holds the last weeks of the room.

    Attributes
    ----------
    read_days : int
        How many days before the first look were read; at most `FITTED_DAYS`.
    """

    log: ReadingsLog
    read_days: int = 0
    _numbers: Numbers = field(default_factory=lambda: np.full(_KEPT, _NONE, dtype=np.int64))
    _sums: Array = field(default_factory=lambda: np.full((_KEPT, _WIDTH), 0.0))  # zeros would get their pages by and by
    _read_to_ms: int | None = None
    _not_before_ms: int = 0
    _kept_ms: int | None = None
    _oldest: int | None = None  # of the spans: asked for with each reading

    def forget(self) -> None:
        """Read everything anew: the clock was set, or readings came from elsewhere."""
        self._numbers.fill(_NONE)
        self._read_to_ms, self.read_days, self._kept_ms, self._oldest = None, 0, None, None
        self._not_before_ms = 0

    @property
    def is_whole(self) -> bool:
        """Whether all that it goes by was read."""
        return self.read_days >= FITTED_DAYS

    def look(self, air: AirNow, now_ms: int) -> None:
        """Keep the minute that is over, and read one more day of the log if there is one to read."""
        self._keep(air, now_ms)
        if not self.is_whole and now_ms >= self._not_before_ms:
            self.read_day(now_ms)

    def read_day(self, now_ms: int) -> None:
        """Read one more day, the newest first; a log that cannot be read is left alone for a while."""
        if self._read_to_ms is None:
            self._read_to_ms = now_ms
        try:
            means = self.log.minute_means(self._read_to_ms - DAY_MS, self._read_to_ms)
        except StoreTrouble:
            self._not_before_ms = now_ms + AGAIN_MS
            return
        self._add((one.time_ms, (one.temperature_C, one.humidity_pct, one.air_speed_m_s)) for one in means)
        self._read_to_ms -= DAY_MS
        self.read_days += 1

    def _keep(self, air: AirNow, now_ms: int) -> None:
        if air.typed is not None or air.implausible or air.temperature_C is None or air.humidity_pct is None:
            return
        if self._kept_ms is not None and 0 <= now_ms - self._kept_ms < MINUTE_MS:
            return
        self._kept_ms = now_ms
        self._add([(now_ms, (air.temperature_C, air.humidity_pct, air.air_speed_m_s))])

    def _add(self, minutes: Iterable[tuple[int, Values]]) -> None:
        for time_ms, values in minutes:
            number = time_ms // SPAN_MS
            sums = self._sums[number % _KEPT]
            if self._numbers[number % _KEPT] != number:
                self._begin(number)
            for at, value in enumerate(values):
                if value is not None:
                    sums[at] += value
                    sums[at + 3] += 1.0

    def _begin(self, number: int) -> None:
        """Begin a span, in the place of one that is too old by now."""
        self._numbers[number % _KEPT] = number
        self._sums[number % _KEPT] = 0.0
        self._oldest = int(self._numbers[self._numbers != _NONE].min())

    def span_of_log_ms(self, now_ms: int) -> int:
        """Return from how long ago on, ms, there is anything of the last weeks; 0 if there is nothing."""
        return 0 if self._oldest is None else max(0, now_ms - self._oldest * SPAN_MS)

    def hourly(self, now_ms: int) -> HourlyLog:
        """Return means around each full hour of the last weeks, and of the minutes up to now; see `HourlyLog`.

        All spans are gone through and all hours told, those too that are not there: numpy keeps some arrays of each
        small size for the next of it, and of a size that rises with each span or hour it would gather megabytes.
        """
        is_there = self._numbers != _NONE
        middles_ms = self._numbers * SPAN_MS + SPAN_MS // 2
        back_h = np.where(is_there, np.maximum(np.rint((now_ms - middles_ms) / HOUR_MS).astype(np.int64), 0), 0)
        inside = is_there & (back_h <= _MOST_H) & (middles_ms <= now_ms + SPAN_MS)
        totals = np.zeros((_MOST_H + 1, _WIDTH))
        np.add.at(totals, _MOST_H - np.where(inside, back_h, 0), np.where(inside[:, np.newaxis], self._sums, 0.0))
        newest = np.where(inside & (self._numbers >= now_ms // SPAN_MS - 1), self._numbers, _NONE)
        last_but_one, last = np.sort(newest)[-2:]
        if last != _NONE:  # now is the last minutes: a room that was changed is not what it was half an hour ago
            is_now = (newest != _NONE) & (newest >= last_but_one)
            totals[-1] = np.where(is_now[:, np.newaxis], self._sums, 0.0).sum(axis=0)
        counts = totals[:, 3:]
        means = np.divide(totals[:, :3], counts, out=np.full((_MOST_H + 1, 3), np.nan), where=counts > 0.0)
        return HourlyLog(temperature_C=means[:, 0], humidity_pct=means[:, 1], air_speed_m_s=means[:, 2])
