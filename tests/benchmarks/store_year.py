"""What the store takes for a year at one reading a second, as ratios to bare calls in the same run.

    python tests/benchmarks/year_file.py year.db
    python tests/benchmarks/store_year.py year.db

size    bytes of the file for each reading of three channels, and of the packed columns alone
read    the three channels of the whole year, over bare zlib on the very streams that they are packed in
memory  what reading all of it, hour by hour, and the year's room history add to a process of their own
ingest  batches of five readings, each put on disk, and bare executemany of the same rows, batch after batch in turns
live    one more batch, and sealing one more hour, in a file of the first day and in one that holds the year, in turns
"""

from __future__ import annotations

import argparse
import resource
import shutil
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time
import zlib
from collections import deque
from collections.abc import Callable, Sequence
from contextlib import closing
from pathlib import Path
from typing import Any

from studiowatch.room.readings import Channel, Reading
from studiowatch.store.database import open_database
from studiowatch.store.history import HistoryReader
from studiowatch.store.packing import split_parts
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.rows import INSERT_READING, row_of
from studiowatch.store.sealing import HOUR_MS, sealed_columns

CHANNELS = (Channel.TEMPERATURE, Channel.HUMIDITY, Channel.AIR_SPEED)
BATCH = 5
BATCHES = 400
HOURS = 24
PACKED_HEAD = {b"\x01": 1, b"\x02": 2}  # bytes in front of the stream, by the first of them
INGEST_GOAL, SIZE_GOAL_B = 0.6, 3.4


def readings(count: int, start_ms: int) -> list[Reading]:
    """Return readings a second apart."""
    return [
        Reading(
            time_ms=start_ms + 1000 * at,
            temperature_C=20.0 + at % 7 / 100.0,
            humidity_pct=50.0 + at % 11 / 100.0,
            air_speed_m_s=0.04 + at % 5 / 1000.0,
        )
        for at in range(count)
    ]


def batches(rows: Sequence[Reading]) -> list[Sequence[Reading]]:
    """Return the rows as they are put on disk."""
    return [rows[at : at + BATCH] for at in range(0, len(rows), BATCH)]


def size(path: Path) -> None:
    """Print the bytes a reading takes."""
    with closing(sqlite3.connect(path)) as connection:
        (count,) = connection.execute("SELECT sum(count) FROM chunk").fetchone()
        (columns,) = connection.execute("SELECT sum(length(data)) FROM chunk_column").fetchone()
        (pyramid,) = connection.execute("SELECT sum(length(data)) FROM pyramid").fetchone()
    met = "met" if columns / count <= SIZE_GOAL_B else "not met"
    each_B = path.stat().st_size / count
    print(f"size: {count} readings of three channels, {each_B:.2f} B each in the file, of which")
    print(f"  {columns / count:.2f} B packed (goal {SIZE_GOAL_B:g}: {met}), {pyramid / count:.2f} B in the pyramid")


def read(path: Path) -> None:
    """Print how long the whole year takes to read."""
    database = open_database(path, read_only=True)
    with database.view() as connection:
        began_s = time.process_time()
        count = sum(times.size for times, _, _ in sealed_columns(connection, 0, 2**62, CHANNELS))
        took_s = time.process_time() - began_s
        names = ("time_ms", "checked", *CHANNELS)
        marks = ", ".join("?" * len(names))
        blobs = connection.execute(f"SELECT name, data FROM chunk_column WHERE name IN ({marks})", names).fetchall()  # noqa: S608
    database.close()
    streams = [stream for name, data in blobs for stream in streams_of(name, data)]
    began_s = time.process_time()
    for stream in streams:
        zlib.decompress(stream)
    least_s = time.process_time() - began_s
    print(f"read: {count} readings in {took_s:.2f} s of the processor, {took_s / least_s:.2f} x bare zlib")


def streams_of(name: str, data: bytes) -> list[bytes]:
    """Return the zlib streams in a packed column."""
    if name not in CHANNELS:
        return [data[PACKED_HEAD.get(data[:1], 0) :]]
    _, mask, body = split_parts(data)
    return [mask, *streams_of("body", body)]


def memory(path: Path) -> None:
    """Print what reading adds to the resident memory, in a process of its own."""
    database = open_database(path, read_only=True)
    with database.view() as connection:
        first_ms, last_ms = connection.execute("SELECT min(start_ms), max(last_ms) FROM chunk").fetchone()
        deque(sealed_columns(connection, first_ms, first_ms + HOUR_MS, CHANNELS), maxlen=0)
        before_MB = peak_MB()
        for start_ms in range(first_ms, last_ms + 1, HOUR_MS):
            deque(sealed_columns(connection, start_ms, start_ms + HOUR_MS, CHANNELS), maxlen=0)
        hours_MB = peak_MB() - before_MB
    database.close()
    with closing(HistoryReader(path)) as reader:
        for channel in CHANNELS:
            reader.series(channel, first_ms, last_ms, 1000)
    print(f"memory: {hours_MB:+.1f} MB for the year hour by hour, {peak_MB() - before_MB:+.1f} MB with its history")


def peak_MB() -> float:
    """Return the most resident memory that this process has had."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def ingest(folder: Path) -> None:
    """Print how many readings a second go in, over bare executemany, batch after batch in turns."""
    rows = readings(BATCH * BATCHES, 1_772_442_000_000)
    own = open_database(folder / "own.db")
    store = ReadingsStore(own)
    open_database(folder / "bare.db").close()
    own_s, bare_s = [], []
    with closing(sqlite3.connect(folder / "bare.db", isolation_level=None)) as bare:
        bare.execute("PRAGMA synchronous = FULL")
        for batch in batches(rows):
            ready = [row_of(reading) for reading in batch]

            def put(ready: list[tuple[Any, ...]] = ready) -> None:
                bare.execute("BEGIN IMMEDIATE")
                bare.executemany(INSERT_READING, ready)
                bare.execute("COMMIT")

            bare_s.append(timed(put))
            own_s.append(timed(lambda batch=batch: store.append(batch)))
    own.close()
    ratio, middle = sum(bare_s) / sum(own_s), statistics.median(bare_s) / statistics.median(own_s)
    print(
        f"ingest: {len(rows) / sum(own_s):.0f} readings a second, {100 * ratio:.0f} % of bare executemany, the middle "
        f"batch {100 * middle:.0f} % (goal {100 * INGEST_GOAL:.0f} %: {'met' if ratio >= INGEST_GOAL else 'not met'})"
    )


def live(path: Path, folder: Path) -> None:
    """Print what one more batch, and sealing one more hour, cost on the first day and after the year."""
    shutil.copy(path, folder / "year.db")
    databases = [open_database(folder / name) for name in ("first.db", "year.db")]
    stores = [ReadingsStore(database) for database in databases]
    start_ms = databases[1].rows("SELECT max(start_ms) FROM chunk")[0][0] // HOUR_MS * HOUR_MS + HOUR_MS
    batch_ms, seal_ms = ([], []), ([], [])
    for hour_ms in range(start_ms, start_ms + HOURS * HOUR_MS, HOUR_MS):
        rows = batches(readings(3600, hour_ms))
        for batch in rows:
            for store, times_ms in zip(stores, batch_ms, strict=True):
                times_ms.append(1e3 * timed(lambda store=store, batch=batch: store.append(batch)))
        for store, times_ms in zip(stores, seal_ms, strict=True):
            times_ms.append(1e3 * timed(lambda store=store, hour_ms=hour_ms: store.seal(hour_ms + HOUR_MS)))
    for database in databases:
        database.close()
    for what, (first, after) in (("a batch", batch_ms), ("sealing an hour", seal_ms)):
        first_ms, after_ms = statistics.median(first), statistics.median(after)
        print(f"live: {what} takes {first_ms:.2f} ms on the first day, {after_ms / first_ms:.2f} x that after the year")


def timed(work: Callable[[], object]) -> float:
    """Return how long `work` takes by the clock, s: putting on disk is waiting."""
    began_s = time.perf_counter()
    work()
    return time.perf_counter() - began_s


def main() -> None:
    """Measure the file that was named."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("path", type=Path)
    parser.add_argument("part", nargs="?", choices=["all", "memory"], default="all")
    asked = parser.parse_args()
    if asked.part == "memory":
        memory(asked.path)
        return
    # first, for a new process counts what the one that started it held as its own
    subprocess.run([sys.executable, __file__, str(asked.path), "memory"], check=True)
    size(asked.path)
    read(asked.path)
    with tempfile.TemporaryDirectory() as name:
        ingest(Path(name))
        live(asked.path, Path(name))


if __name__ == "__main__":
    main()
