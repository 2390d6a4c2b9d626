"""Which stretches of the log came from outside."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.corrections import Imported
from studiowatch.store.database import Database

MOST_IN_AN_HOUR = 60  # stretches: two logs woven closer than that cannot be told apart, and count as the board's
Integers = NDArray[np.int64]


def all_imported(database: Database) -> list[Imported]:
    """Return the stretches that came from outside, in the order of arrival."""
    rows = database.rows("SELECT start_ms, end_ms FROM imported ORDER BY id")
    return [Imported(start_ms=start_ms, end_ms=end_ms) for start_ms, end_ms in rows]


def stretches(taken_ms: Integers, there_ms: Integers, hour_ms: int, after_ms: int | None) -> Iterator[Imported]:
    """Yield the stretches of an hour that hold readings taken from outside and none that were there.

    Parameters
    ----------
    taken_ms, there_ms : (n,) int64
        UTC ms, rising, of the readings that are taken, and of those of the hour that were there.
    hour_ms : int
        When the hour begins, UTC ms.
    after_ms : int or None
        When it ends, UTC ms, if it is over: nothing of the board's will come into it any more.
    """
    between = np.searchsorted(there_ms, taken_ms)
    begins = np.concatenate([[0], np.flatnonzero(np.diff(between)) + 1])
    if begins.size > MOST_IN_AN_HOUR:
        return
    ends = np.append(begins[1:], taken_ms.size) - 1
    for first, last in zip(begins.tolist(), ends.tolist(), strict=True):
        at = between[first]
        is_first, is_last = at == 0, at == there_ms.size and after_ms is not None
        start_ms = hour_ms if is_first else int(taken_ms[first])
        end_ms = after_ms if is_last and after_ms is not None else int(taken_ms[last]) + 1
        yield Imported(start_ms=start_ms, end_ms=end_ms)


def put_imported(connection: sqlite3.Connection, stretch: Imported) -> None:
    """Add a stretch, to the one that ends where it begins if there is one; to be called inside a transaction."""
    moved = connection.execute(
        "UPDATE imported SET end_ms = ? WHERE id = (SELECT max(id) FROM imported WHERE end_ms = ?)",
        (stretch.end_ms, stretch.start_ms),
    )
    if not moved.rowcount:
        connection.execute("INSERT INTO imported (start_ms, end_ms) VALUES (?, ?)", (stretch.start_ms, stretch.end_ms))
