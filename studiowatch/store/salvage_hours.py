"""Sealed hours after a salvage: what is left of each is kept, and what is lost of it is told."""

from __future__ import annotations

from collections.abc import Iterator
from sqlite3 import Connection

import numpy as np

from studiowatch.speech.words import say
from studiowatch.store.chunk_check import MARKS, TEXTS, TIME, SealedHour, moment, sealed_hours, times_of
from studiowatch.store.packing import Integers, pack_integers
from studiowatch.store.sealing import pack_texts

_PUT = (
    "INSERT INTO chunk_column (chunk_id, name, data) VALUES (?, ?, ?) "
    "ON CONFLICT (chunk_id, name) DO UPDATE SET data = excluded.data"
)


def mend_hours(connection: Connection) -> Iterator[str]:
    """Make every sealed hour readable, and yield a sentence for each that lost something.

    An hour without its times is lost. One without a channel keeps the others. Which lines had a checksum, and what the
    board said of failed channels, is taken as not known where it is lost.
    """
    yield from _find_heads(connection)
    for hour in sealed_hours(connection):
        if hour.time_ms is None:
            connection.execute("DELETE FROM chunk_column WHERE chunk_id = ?", (hour.chunk_id,))
            connection.execute("DELETE FROM chunk WHERE id = ?", (hour.chunk_id,))
            yield say("Sealed readings of {span}: all {count} are lost.", span=hour.span, count=hour.count)
        elif hour.damaged:
            _mend(connection, hour, hour.time_ms)
            yield say(
                "Sealed readings of {span}: {columns} of all {count} is lost.",
                span=hour.span,
                columns=", ".join(hour.damaged),
                count=hour.count,
            )


def _find_heads(connection: Connection) -> Iterator[str]:
    """Make the row of a chunk again, where it is lost and its times are not."""
    headless = connection.execute(
        "SELECT chunk_id, data FROM chunk_column WHERE name = ? AND chunk_id NOT IN (SELECT id FROM chunk)", (TIME,)
    ).fetchall()
    for chunk_id, data in headless:
        time_ms = times_of(data)
        if time_ms is None:
            continue
        head = (chunk_id, int(time_ms[0]), int(time_ms[-1]), time_ms.size)
        connection.execute("INSERT INTO chunk (id, start_ms, last_ms, count) VALUES (?, ?, ?, ?)", head)
        yield say(
            "The head of the sealed readings of {first} to {last} was lost, and made again.",
            first=moment(head[1]),
            last=moment(head[2]),
        )


def _mend(connection: Connection, hour: SealedHour, time_ms: Integers) -> None:
    for name in hour.damaged:
        connection.execute("DELETE FROM chunk_column WHERE chunk_id = ? AND name = ?", (hour.chunk_id, name))
    made = {name: pack_integers(np.zeros(time_ms.size, dtype=np.int64)) for name in MARKS}
    made[TEXTS] = pack_texts([None] * time_ms.size)
    for name in hour.damaged:
        if name in made:
            connection.execute(_PUT, (hour.chunk_id, name, made[name]))
