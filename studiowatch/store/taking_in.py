"""Readings from outside: beside those already there, never over them."""

from __future__ import annotations

import sqlite3
from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.log_columns import LogColumns
from studiowatch.store.imported import put_imported, stretches
from studiowatch.store.packing import Numbers
from studiowatch.store.rows import CHANNELS, INSERT_READING, READINGS_BETWEEN, integers, numbers, with_none
from studiowatch.store.sealing import HOUR_MS, HourColumns, seal_columns, seal_hour, sealed_columns

_COUNTER = "SELECT seq FROM sqlite_sequence WHERE name = 'reading'"


class Verdict(IntEnum):
    """What became of a reading from outside."""

    TAKEN = 0
    THERE = 1
    DIFFERENT = 2


Verdicts = NDArray[np.int8]  # of `Verdict`, one for each reading


def take_in(connection: sqlite3.Connection, hour_ms: int, readings: LogColumns, *, seal: bool) -> Verdicts:
    """Insert the `readings` of the hour that begins at `hour_ms`; return what became of each.

    One whose time and values are there already is passed over; one with a time that is there with other values is not
    taken. They are stored as they are, marked as not checked by a board's checksum. To be called inside a transaction.

    Parameters
    ----------
    seal : bool
        Whether to pack them at once, as those of an hour that is over.

    Raises
    ------
    ValueError
        If a value is infinite.
    """
    for channel, column in readings.values.items():
        if np.isinf(column).any():
            raise ValueError(
                f"{channel} is infinite; a reading holds finite numbers, or NaN for what was not read"  # not said
            )
    times, values = _there(connection, hour_ms, hour_ms + HOUR_MS)
    verdicts = _verdicts(times, values, readings)
    taken = np.flatnonzero(verdicts == Verdict.TAKEN)
    if taken.size:
        for stretch in stretches(readings.time_ms[taken], times, hour_ms, hour_ms + HOUR_MS if seal else None):
            put_imported(connection, stretch)
        _put(connection, hour_ms, readings, taken, seal=seal)
    return verdicts


def _verdicts(times: NDArray[np.int64], values: Numbers, readings: LogColumns) -> Verdicts:
    """Return what becomes of each reading beside those that are there, whose `times` rise."""
    verdicts = np.full(readings.size, Verdict.TAKEN, dtype=np.int8)
    if not times.size:
        return verdicts
    mine = np.column_stack([readings.column(channel) for channel in CHANNELS])
    first, after = np.searchsorted(times, readings.time_ms, "left"), np.searchsorted(times, readings.time_ms, "right")
    verdicts[after > first] = Verdict.DIFFERENT
    for ahead in range(int((after - first).max(initial=0))):  # a clock that was set back repeats times
        at = np.flatnonzero(first + ahead < after)
        others = values[first[at] + ahead]
        same = ((others == mine[at]) | (np.isnan(others) & np.isnan(mine[at]))).all(axis=1)
        verdicts[at[same]] = Verdict.THERE
    return verdicts


def _there(connection: sqlite3.Connection, start_ms: int, end_ms: int) -> tuple[NDArray[np.int64], Numbers]:
    """Return times and values of the readings that are there, a column for each of `CHANNELS`, rising in time."""
    times, values = [np.empty(0, np.int64)], [np.empty((0, len(CHANNELS)))]
    for time_ms, _, columns in sealed_columns(connection, start_ms, end_ms, CHANNELS):
        nothing = np.full(time_ms.size, np.nan)
        times.append(time_ms)
        values.append(np.column_stack([columns.get(channel, nothing) for channel in CHANNELS]))
    rows = connection.execute(READINGS_BETWEEN, (start_ms, end_ms)).fetchall()
    if rows:
        times.append(integers(row[1] for row in rows))
        values.append(np.column_stack([numbers(row[2 + at] for row in rows) for at in range(len(CHANNELS))]))
    every = np.concatenate(times)
    order = np.argsort(every, kind="stable")
    return every[order], np.concatenate(values)[order]


def _put(
    connection: sqlite3.Connection, hour_ms: int, readings: LogColumns, taken: NDArray[np.intp], *, seal: bool
) -> None:
    time_ms = readings.time_ms[taken]
    values = {channel: readings.column(channel)[taken] for channel in CHANNELS if channel in readings.values}
    if not seal:
        columns = [with_none(values[channel]) if channel in values else [None] * taken.size for channel in CHANNELS]
        rows = zip(time_ms.tolist(), *columns, [0] * taken.size, [None] * taken.size, strict=True)
        connection.executemany(INSERT_READING, rows)
        return
    hour = HourColumns(
        ids=_next_ids(connection, taken.size),
        time_ms=time_ms,
        values=values,
        checked=np.zeros(taken.size, dtype=np.int64),
        faults=[None] * taken.size,
    )
    seal_columns(connection, hour)
    seal_hour(connection, hour_ms)  # what the watch left of it as rows is over as well


def _next_ids(connection: sqlite3.Connection, count: int) -> NDArray[np.int64]:
    """Take the next numbers of arrival, as if the readings had been rows first: none of them comes again."""
    row = connection.execute(_COUNTER).fetchone()
    last = 0 if row is None else int(row[0])
    if row is None:
        connection.execute("INSERT INTO sqlite_sequence (name, seq) VALUES ('reading', ?)", (last + count,))
    else:
        connection.execute("UPDATE sqlite_sequence SET seq = ? WHERE name = 'reading'", (last + count,))
    return np.arange(last + 1, last + 1 + count)
