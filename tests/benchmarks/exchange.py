"""What taking a log in and out costs, against the bare CSV library in the same run, and how memory grows with length.

    python tests/benchmarks/exchange.py [READINGS]

Prints ratios: trust them rather than the seconds. Memory is that of a process of its own for each length.
"""

from __future__ import annotations

import csv
import os
import resource
import subprocess
import sys
import tempfile
import time
from collections import deque
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from random import Random

from studiowatch.board.room_log import LogForm, log_text
from studiowatch.board.room_log_blocks import log_blocks
from studiowatch.board.room_log_rows import log_events
from studiowatch.service.importing import take_log
from studiowatch.store.database import looking, open_database
from studiowatch.store.log_out import RoomLogWriter, stream
from studiowatch.store.readings import ReadingsStore

START_MS = 1_740_000_000_000
HEADER = ("time", "temperature_C", "humidity_pct", "air_speed_m_s")


def write_log(path: Path, count: int) -> None:
    """Write a log of one reading a second."""
    random = Random(1)
    with path.open("w", newline="") as file:
        table = csv.writer(file)
        table.writerow(HEADER)
        for at in range(count):
            moment = datetime.fromtimestamp(START_MS / 1000 + at, UTC).isoformat()
            values = (20 + random.gauss(0, 0.1), 50 + random.gauss(0, 0.3), 0.05 + random.random() / 100)
            table.writerow((moment, f"{values[0]:.2f}", f"{values[1]:.1f}", f"{values[2]:.3f}"))


def bare_read(path: Path) -> None:
    """Read the log as anyone would who checks nothing."""
    with path.open(newline="") as file:
        table = csv.reader(file)
        next(table)
        for _, *cells in table:
            for cell in cells:
                float(cell)


def read_rows(path: Path) -> None:
    """Read the log row by row with every check, and store nothing."""
    with path.open("rb") as file, log_text(file, "log") as lines:
        deque(log_events(lines, LogForm()), maxlen=0)


def read_blocks(path: Path) -> None:
    """Read the log in blocks with every check, and store nothing."""
    with path.open("rb") as file, log_text(file, "log") as lines:
        deque(log_blocks(lines, LogForm()), maxlen=0)


def take_in(path: Path, database_path: Path) -> None:
    """Import the log."""
    database = open_database(database_path)
    log = ReadingsStore(database)
    with path.open("rb") as file, log_text(file, "log") as lines:
        for _ in take_log(log_blocks(lines, LogForm()), log.take_in, origin="log", now_ms=2 * START_MS, tell=print):
            pass
    database.close()


def take_out(database_path: Path, path: Path) -> None:
    """Export it again."""
    with looking(database_path) as database, path.open("w", newline="") as file:
        writer = RoomLogWriter(file)
        for readings in stream(database, 0, 2**62):
            writer.write(readings)


def bare_write(path_from: Path, path: Path) -> None:
    """Copy the rows from file to file."""
    with path_from.open(newline="") as file, path.open("w", newline="") as copy:
        csv.writer(copy).writerows(csv.reader(file))


def seconds(work: Callable[[], None]) -> float:
    """Return how long `work` takes."""
    began = time.perf_counter()
    work()
    return time.perf_counter() - began


def main(count: int) -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        log, database, out = folder / "log.csv", folder / "studio.sqlite3", folder / "out.csv"
        write_log(log, count)
        floor_in, floor_out = seconds(lambda: bare_read(log)), seconds(lambda: bare_write(log, folder / "bare.csv"))
        taken, given = seconds(lambda: take_in(log, database)), seconds(lambda: take_out(database, out))
        by_row, by_block = seconds(lambda: read_rows(log)), seconds(lambda: read_blocks(log))
        peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        size = database.stat().st_size
    print(f"{count} readings, {size / count:.2f} bytes each in the records; peak memory {peak_mb:.0f} MB")
    told = f"{count / taken:7.0f} rows/s; the floor of csv.reader and float has {count / floor_in:.0f}"
    print(f"  import {taken:6.1f} s = {taken / floor_in:4.1f} x bare reading, {told}")
    for name, took in (("row by row", by_row), ("in blocks", by_block)):
        print(f"    of that reading with every check, {name}: {took / floor_in:.1f} x")
    print(f"  export {given:6.1f} s = {given / floor_out:4.1f} x bare copying")


if __name__ == "__main__":
    if os.environ.get("EXCHANGE_PART"):
        main(int(sys.argv[1]))
    else:
        whole = int(sys.argv[1]) if len(sys.argv) > 1 else 400_000
        for part in (whole // 8, whole):
            subprocess.run([sys.executable, __file__, str(part)], check=True, env={**os.environ, "EXCHANGE_PART": "1"})
