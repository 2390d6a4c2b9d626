"""Readings out, hour by hour, so that a year takes no more memory than a day: as a room log (CSV) or as SenML."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from math import isfinite
from typing import TextIO

from studiowatch.room.readings import Channel, Reading
from studiowatch.room.typed import is_typed
from studiowatch.store.database import Database
from studiowatch.store.history import SPAN
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.sealing import HOUR_MS

_NEXT = (
    "SELECT min(time_ms) FROM (SELECT min(time_ms) AS time_ms FROM reading WHERE time_ms >= ?1 UNION ALL "
    "SELECT max(start_ms, ?1) FROM (SELECT start_ms FROM chunk WHERE start_ms > ?1 - ?2 AND last_ms >= ?1 "
    "ORDER BY start_ms LIMIT 1))"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Senml:
    """How a channel is named and counted in SenML."""

    unit: str
    factor: float = 1.0


# RFC 8428, section 12.1: the registered units; a voltage is in V there
_SENML = {
    Channel.TEMPERATURE: _Senml(unit="Cel"),
    Channel.HUMIDITY: _Senml(unit="%RH"),
    Channel.AIR_SPEED: _Senml(unit="m/s"),
    Channel.AIR_SIGNAL: _Senml(unit="V", factor=1e-3),
    Channel.SURFACE: _Senml(unit="Cel"),
    Channel.PRESSURE: _Senml(unit="Pa"),
    Channel.PARTICLES: _Senml(unit="count"),
}
_SENML_NAMES = {Channel.AIR_SIGNAL: "air_signal"}  # the others keep their column's name


def span_ms(database: Database) -> tuple[int, int] | None:
    """Return the times of the first and the last reading, UTC ms, or None if there is none."""
    ((first_ms, last_ms),) = database.rows(SPAN)
    return None if first_ms is None else (first_ms, last_ms)


def stream(database: Database, start_ms: int, end_ms: int) -> Iterator[list[Reading]]:
    """Yield the readings with start <= time < end as stored, in the order of time, an hour at a time.

    Hours without readings are passed over: what is yielded is never empty. The file is let go between two hours, so
    that a writer's log stays short.
    """
    readings = ReadingsStore(database)
    at_ms = start_ms
    while at_ms < end_ms:
        next_ms = database.rows(_NEXT, (at_ms, HOUR_MS))[0][0]
        if next_ms is None or next_ms >= end_ms:
            return
        after_ms = min((next_ms // HOUR_MS + 1) * HOUR_MS, end_ms)
        if part := list(readings.between(next_ms, after_ms)):  # none between two readings of a sealed hour
            yield part
        at_ms = after_ms


class RoomLogWriter:
    """Writes readings as a room log that `studiowatch import` takes back (RFC 4180, UTF-8); what is not finite, empty.

    Attributes
    ----------
    rows : int
        How many were written.
    same_time : int
        How many of them share their time with the one before: they came at once, or the clock was set back.
    typed : int
        How many of them were typed, which a room log has no word for.
    """

    def __init__(self, out: TextIO) -> None:
        self.rows = 0
        self.same_time = 0
        self.typed = 0
        self._table = csv.writer(out)
        self._before_ms: int | None = None
        self._table.writerow(("time", *Channel))

    def write(self, readings: list[Reading]) -> None:
        """Write some more."""
        self._table.writerows(
            (iso(one.time_ms), *(_cell(one.value(channel)) for channel in Channel)) for one in readings
        )
        for one in readings:
            self.same_time += one.time_ms == self._before_ms
            self.typed += is_typed(one)
            self._before_ms = one.time_ms
        self.rows += len(readings)

    def close(self) -> None:
        """Write what must come last: nothing."""


class SenmlWriter:
    """Writes readings as one SenML pack in JSON (RFC 8428, sections 4 and 5): a record for each value.

    Parameters
    ----------
    base_name : str
        What makes the names unique in the world, in the characters of section 4.5.1.

    Attributes
    ----------
    rows : int
        How many readings were written.
    empty : int
        How many of them have no value and so no record.
    """

    def __init__(self, out: TextIO, base_name: str) -> None:
        self.rows = 0
        self.empty = 0
        self._out = out
        self._base_name = base_name
        self._begun = False

    def write(self, readings: list[Reading]) -> None:
        """Write some more; each call begins with a base time of its own, so that times stay short."""
        base: dict[str, object] = {"bt": readings[0].time_ms / 1000} if readings else {}
        for one in readings:
            for record in self._records(one, readings[0].time_ms):
                if not self._begun:
                    base = {"bn": self._base_name, **base}
                self._out.write((",\n" if self._begun else "[") + json.dumps({**base, **record}, allow_nan=False))
                self._begun, base = True, {}
        self.rows += len(readings)

    def close(self) -> None:
        """End the pack."""
        self._out.write("]\n" if self._begun else "[]\n")

    def _records(self, reading: Reading, base_ms: int) -> Iterator[dict[str, object]]:
        given = [(channel, value) for channel in Channel if (value := reading.value(channel)) is not None]
        self.empty += not given
        for channel, value in given:
            form = _SENML[channel]
            yield {
                "n": _SENML_NAMES.get(channel, channel.value),
                "u": form.unit,
                "v": value * form.factor,
                "t": (reading.time_ms - base_ms) / 1000,
            }


def _cell(value: float | None) -> str:
    return "" if value is None or not isfinite(value) else repr(float(value))


def iso(time_ms: int) -> str:
    """Return a time as a room log has it: UTC, to the millisecond."""
    return datetime.fromtimestamp(time_ms / 1000, UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")
