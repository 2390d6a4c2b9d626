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
_PUT_HEAD = (
    "INSERT INTO chunk (id, start_ms, last_ms, count) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET "
    "start_ms = excluded.start_ms, last_ms = excluded.last_ms, count = excluded.count"
)
_HEADS = (
    "SELECT chunk_id, data, start_ms, last_ms, count FROM chunk_column LEFT JOIN chunk ON chunk.id = chunk_id "
    "WHERE name = ?"
)


def mend_hours(connection: Connection) -> Iterator[str]:
    """Make every sealed hour readable, and yield a sentence for each that lost something.

    An hour without its times is lost. One without a channel keeps the others. Which lines had a checksum, and what the
    board said of failed channels, is taken as not known where it is lost.
    """
    yield from _put_heads_right(connection)
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


def _put_heads_right(connection: Connection) -> Iterator[str]:
    """Make the row of a chunk anew from its times, where it is lost or contradicts them.

    What is packed bears a checksum, and such a row does not: it is the row that is damaged then, and not the hour.
    """
    for chunk_id, data, *head in connection.execute(_HEADS, (TIME,)).fetchall():
        time_ms = times_of(data)
        if time_ms is None:
            continue
        first_ms, last_ms = int(time_ms[0]), int(time_ms[-1])
        if head == [first_ms, last_ms, time_ms.size]:
            continue
        connection.execute(_PUT_HEAD, (chunk_id, first_ms, last_ms, time_ms.size))
        yield say(
            "The head of the sealed readings of {first} to {last} was lost, and made again.",
            first=moment(first_ms),
            last=moment(last_ms),
        )


def _mend(connection: Connection, hour: SealedHour, time_ms: Integers) -> None:
    for name in hour.damaged:
        connection.execute("DELETE FROM chunk_column WHERE chunk_id = ? AND name = ?", (hour.chunk_id, name))
    made = {name: pack_integers(np.zeros(time_ms.size, dtype=np.int64)) for name in MARKS}
    made[TEXTS] = pack_texts([None] * time_ms.size)
    for name in hour.damaged:
        if name in made:
            connection.execute(_PUT, (hour.chunk_id, name, made[name]))
