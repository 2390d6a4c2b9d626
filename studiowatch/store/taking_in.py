"""Readings from outside: beside those already there, never over them."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from enum import Enum, auto
from typing import Any

from studiowatch.room.readings import Reading
from studiowatch.store.rows import CHANNELS, INSERT_READING, READINGS_BETWEEN, row_of
from studiowatch.store.sealing import seal_hour, sealed_rows


class Verdict(Enum):
    """What became of a reading from outside."""

    TAKEN = auto()
    THERE = auto()
    DIFFERENT = auto()


def take_in(connection: sqlite3.Connection, hour_ms: int, readings: Sequence[Reading], *, seal: bool) -> list[Verdict]:
    """Insert the `readings` of the hour that begins at `hour_ms`; return what became of each.

    One whose time and values are there already is passed over; one with a time that is there with other values is not
    taken. They are stored as they are, marked as not checked by a board's checksum. To be called inside a transaction.

    Parameters
    ----------
    seal : bool
        Whether to pack the hour at once, as one that is over.
    """
    first_ms, after_ms = readings[0].time_ms, readings[-1].time_ms + 1
    there: dict[int, list[tuple[Any, ...]]] = {}
    for rows in (
        sealed_rows(connection, first_ms, after_ms),
        connection.execute(READINGS_BETWEEN, (first_ms, after_ms)),
    ):
        for row in rows:
            there.setdefault(row[1], []).append(tuple(row[2 : 2 + len(CHANNELS)]))
    verdicts = [_verdict(reading, there.get(reading.time_ms)) for reading in readings]
    taken = [reading for reading, verdict in zip(readings, verdicts, strict=True) if verdict is Verdict.TAKEN]
    connection.executemany(INSERT_READING, [(*row_of(reading)[:-2], 0, None) for reading in taken])
    if seal and taken:
        seal_hour(connection, hour_ms)
    return verdicts


def _verdict(reading: Reading, there: list[tuple[Any, ...]] | None) -> Verdict:
    if there is None:
        return Verdict.TAKEN
    values = tuple(reading.value(channel) for channel in CHANNELS)
    return Verdict.THERE if values in there else Verdict.DIFFERENT
