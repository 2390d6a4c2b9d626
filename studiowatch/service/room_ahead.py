"""The room to come while the studio is watched: its outlook, made anew now and then, and its air for the films."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from studiowatch.coats.exposure import ahead
from studiowatch.physics.air import Air, AnyAir
from studiowatch.room.hourly_log import HOUR_MS, known_rows
from studiowatch.room.intentions import Intention, balance_of, with_intentions
from studiowatch.room.outlook import LONGEST_H, Outlook, look_ahead
from studiowatch.service.air_ahead import calm
from studiowatch.service.coat_run import DRAWS, SEED
from studiowatch.service.coming_air import coming_air
from studiowatch.service.ports import ReadingsLog
from studiowatch.service.room_band import RoomBand, band_of
from studiowatch.service.room_hours import MINUTE_MS, RoomHours
from studiowatch.studio.concern import AirNow

AGAIN_MS = 600_000  # ms after which the outlook is made anew
SOON_MS = 180_000  # ms between two of them though the room strayed from the first
STRAYED_K, STRAYED_PCT = 0.5, 2.0  # from the middle of the outlook, that have it made anew before its time; assumption

Spans = Sequence[tuple[AnyAir, float]]


@dataclass(slots=True)
class RoomAhead:
    """Holds the outlook of the room as it is.

    Attributes
    ----------
    outlook : Outlook or None
        The newest; None while less than an hour is known of the room.
    made_ms : int or None
        UTC ms at which it was made.
    band : RoomBand or None
        What of it is shown.
    meant : callable
        Returns what she means to do with the room, hours from a UTC ms; the outlook is that of the room with it.
    free : Outlook or None
        That of the room left to itself.
    """

    log: ReadingsLog
    outlook: Outlook | None = None
    made_ms: int | None = None
    band: RoomBand | None = None
    meant: Callable[[int], Sequence[Intention]] = lambda _: ()
    free: Outlook | None = None
    hours: RoomHours = field(init=False)
    _tried_ms: int | None = None
    _days_in_it: int = 0
    _middles: tuple[tuple[float, float], ...] = ()  # of °C and %RH, when the outlook was made and an hour later
    _spans: tuple[tuple[int, float, float], Spans] | None = None  # of one minute: they are half a megabyte

    def __post_init__(self) -> None:
        self.hours = RoomHours(log=self.log)

    def forget(self) -> None:
        """Begin anew: the clock was set, or readings came from elsewhere."""
        self.hours.forget()
        self.outlook, self.free, self.made_ms, self._tried_ms, self._days_in_it = None, None, None, None, 0
        self.band, self._spans = None, None

    def look(self, air: AirNow, now_ms: int) -> None:
        """Keep what is read, and make the outlook anew if it is time."""
        self.hours.look(air, now_ms)
        if self._is_due(air, now_ms):
            self.make(now_ms)

    def read_whole(self, now_ms: int) -> None:
        """Read all that it goes by, at once, and make the outlook: for who asks but once."""
        while not self.hours.is_whole:
            before = self.hours.read_days
            self.hours.read_day(now_ms)
            if self.hours.read_days == before:
                break
        self.make(now_ms)

    def make(self, now_ms: int) -> None:
        """Make the outlook of this moment; with less than an hour of the room there is none."""
        self._spans = None
        self._tried_ms, self._days_in_it = now_ms, self.hours.read_days
        self.outlook, self.free, self.band, self.made_ms = None, None, None, None
        if self.hours.span_of_log_ms(now_ms) < HOUR_MS:
            return
        log = self.hours.hourly(now_ms)
        if known_rows(log.climate[-2:]).any():
            self.free, self.made_ms = look_ahead(log, LONGEST_H, draws=DRAWS, seed=SEED), now_ms
            meant = self.meant(now_ms)
            self.outlook = with_intentions(self.free, meant, balance_of(log)) if meant else self.free
            self.band = band_of(self.outlook, now_ms, is_meant=bool(meant))
            self._middles = tuple(
                (float(np.median(draws[:, 0])), float(np.median(draws[:, 1])))
                for draws in (self.outlook.temperature_C, self.outlook.humidity_pct)
            )

    def _is_due(self, air: AirNow, now_ms: int) -> bool:
        if self._tried_ms is None or not 0 <= now_ms - self._tried_ms < AGAIN_MS:
            return True
        if self.hours.is_whole and self._days_in_it < self.hours.read_days:
            return True
        since_ms = now_ms - self._tried_ms
        return since_ms >= SOON_MS and (self.outlook is None or self._has_strayed(air, since_ms))

    def _has_strayed(self, air: AirNow, since_ms: int) -> bool:
        if self.outlook is None or air.temperature_C is None or air.humidity_pct is None:
            return False
        part = since_ms / HOUR_MS
        middle_C, middle_pct = ((1.0 - part) * now + part * next_hour for now, next_hour in self._middles)
        return abs(air.temperature_C - middle_C) > STRAYED_K or abs(air.humidity_pct - middle_pct) > STRAYED_PCT

    def spans(self, air: Air, at_ms: int, horizon_s: float) -> Spans:
        """Return the air from `at_ms` on, each with how long it holds, s; the same value within a minute.

        What nobody measures, and a room that was hardly seen, stay as they are, ever less certainly.
        """
        if air.age_s is not None:
            return tuple(ahead(calm(air), horizon_s))
        if self.outlook is None or self.made_ms is None or at_ms < self.made_ms - AGAIN_MS:
            return tuple(ahead(replace(calm(air), age_s=0.0), horizon_s))
        minutes = max(at_ms - self.made_ms, 0) // MINUTE_MS
        key = (minutes, air.pressure_Pa, horizon_s)
        if self._spans is None or self._spans[0] != key:
            coming = coming_air(
                self.outlook, DRAWS, passed_s=60.0 * minutes, horizon_s=horizon_s, pressure_Pa=air.pressure_Pa
            )
            self._spans = key, coming
        return self._spans[1]
