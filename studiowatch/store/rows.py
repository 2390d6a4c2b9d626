"""A reading as a row of the table, and back."""

from __future__ import annotations

import json
from collections.abc import Iterable
from math import isfinite
from typing import Any

import numpy as np

from studiowatch.room.readings import Channel, ChannelFault, Reading
from studiowatch.room.typed import TYPED
from studiowatch.store.packing import Integers, Numbers

CHANNELS = tuple(Channel)
CHANNEL_COLUMNS = ", ".join(CHANNELS)
INSERT_READING = (
    f"INSERT INTO reading (time_ms, {CHANNEL_COLUMNS}, checked, faults) "  # noqa: S608 - names of our own enum
    f"VALUES ({', '.join('?' * (len(CHANNELS) + 3))})"
)
READINGS_BETWEEN = (
    f"SELECT id, time_ms, {CHANNEL_COLUMNS}, checked, faults FROM reading "  # noqa: S608 - names of our own enum
    "WHERE time_ms >= ? AND time_ms < ? ORDER BY time_ms, id"
)
MARKED_TYPED = f'"{TYPED}'  # what the faults of a typed reading hold, and those of no other
TYPED_BETWEEN = (
    f"SELECT id, time_ms, {CHANNEL_COLUMNS}, checked, faults FROM reading "  # noqa: S608 - names of our own enum
    "WHERE time_ms >= ? AND time_ms < ? AND instr(faults, ?) ORDER BY time_ms, id"
)


def row_of(reading: Reading) -> tuple[Any, ...]:
    """Return `reading` in the order of `INSERT_READING`.

    Raises
    ------
    ValueError
        If a channel is not a finite number: SQLite would turn it into "not read" without a word.
    """
    values = [reading.value(channel) for channel in CHANNELS]
    for channel, value in zip(CHANNELS, values, strict=True):
        if value is not None and not isfinite(value):
            raise ValueError(
                f"{channel} is {value}; a reading holds finite numbers, or None for what was not read"  # not said
            )
    return (reading.time_ms, *values, int(reading.checked), faults_text(reading.faults))


def reading_of(row: tuple[Any, ...]) -> Reading:
    """Return the reading that a row of `READINGS_BETWEEN` holds."""
    _, time_ms, *values, checked, faults = row
    return Reading(
        time_ms=time_ms,
        **dict(zip(CHANNELS, values, strict=True)),
        checked=bool(checked),
        faults=faults_of(faults),
    )


def faults_text(faults: Iterable[ChannelFault]) -> str | None:
    """Return `faults` as JSON, or None if there are none."""
    return json.dumps([[fault.channel, fault.code] for fault in faults]) if faults else None


def faults_of(text: str | None) -> tuple[ChannelFault, ...]:
    """Return the faults that `faults_text` was given."""
    if text is None:
        return ()
    return tuple(ChannelFault(channel=Channel(channel), code=code) for channel, code in json.loads(text))


def integers(values: Iterable[int]) -> Integers:
    """Return a column of whole numbers as an array."""
    return np.array(list(values), dtype=np.int64)


def numbers(values: Iterable[float | None]) -> Numbers:
    """Return a column of numbers as an array, NaN where nothing was read."""
    return np.array(list(values), dtype=np.float64)


def with_none(values: Numbers) -> list[float | None]:
    """Return the column that `numbers` was given."""
    column: list[float | None] = values.tolist()
    for at in np.flatnonzero(np.isnan(values)).tolist():
        column[at] = None
    return column
