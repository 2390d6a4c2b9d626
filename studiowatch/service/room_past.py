"""What the room did before now, read from the log a day at a look, and kept by the minute from then on."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import nan

import numpy as np

from studiowatch.service.ports import ReadingsLog
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import AirNow
from studiowatch.studio.waiting import DAY_MS, MINUTE_MS, MOST_DAYS, Guess, Need, RoomPast

AGAIN_MS = 10 * MINUTE_MS  # ms until a log that could not be read is tried again

Minute = tuple[int, float, float]


@dataclass(slots=True)
class RoomPastDesk:
    """An outlook for the watch: it answers from what was read so far, and asks the same thing once a minute at most."""

    log: ReadingsLog
    _minutes: list[Minute] = field(default_factory=list)
    _read_to_ms: int | None = None
    _days_read: int = 0
    _not_before_ms: int = 0
    _past: RoomPast | None = None
    _answers: dict[Need, Guess | None] = field(default_factory=dict)
    _answered_ms: int | None = None

    def forget(self) -> None:
        """Read everything anew: the clock was set, or readings came from elsewhere."""
        self._minutes, self._read_to_ms, self._days_read = [], None, 0
        self._past, self._answered_ms = None, None

    def look(self, air: AirNow, now_ms: int) -> None:
        """Keep the minute that is over, and read one more day of the log if there is one to read."""
        self._keep(air, now_ms)
        if self._days_read >= MOST_DAYS or now_ms < self._not_before_ms:
            return
        if self._read_to_ms is None:
            self._read_to_ms = now_ms
        try:
            means = self.log.minute_means(self._read_to_ms - DAY_MS, self._read_to_ms)
        except StoreTrouble:
            self._not_before_ms = now_ms + AGAIN_MS  # "not known" is what is said meanwhile
            return
        self._minutes[:0] = [(one.time_ms, _or_nan(one.temperature_C), _or_nan(one.humidity_pct)) for one in means]
        self._read_to_ms -= DAY_MS
        self._days_read += 1
        self._past = None

    def _keep(self, air: AirNow, now_ms: int) -> None:
        if air.typed is not None or air.implausible or air.temperature_C is None or air.humidity_pct is None:
            return
        if self._minutes and now_ms - self._minutes[-1][0] < MINUTE_MS:
            return
        self._minutes.append((now_ms, air.temperature_C, air.humidity_pct))
        while self._minutes[0][0] < now_ms - (MOST_DAYS + 1) * DAY_MS:
            del self._minutes[0]
        self._past = None

    def met(self, need: Need, now_ms: int) -> Guess | None:
        """Return when `need` is likely met; see `studiowatch.studio.waiting.Outlook`."""
        if self._answered_ms is None or not 0 <= now_ms - self._answered_ms < MINUTE_MS:
            self._answers, self._answered_ms = {}, now_ms
        if need not in self._answers:
            self._answers[need] = self._whole().met(need, now_ms)
        return self._answers[need]

    def _whole(self) -> RoomPast:
        if self._past is None:
            table = np.array(self._minutes, dtype=np.float64).reshape(-1, 3)
            self._past = RoomPast(
                time_ms=table[:, 0].astype(np.int64), temperature_C=table[:, 1], humidity_pct=table[:, 2]
            )
        return self._past


def _or_nan(value: float | None) -> float:
    return nan if value is None else value
