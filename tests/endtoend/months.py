"""Months of board time at speed: bytes through the real reader, keeper, store and window; the bytes move the clock.

    xvfb-run -a -s "-screen 0 1400x900x24" python tests/endtoend/months.py 90 [FOLDER] [--pieces 12] [--every 1]

begins with pieces of one, two and three coats, lays a coat each day, and finishes pieces and begins others
(`painting.py`), so that the studio holds about as many coats on every day; SIGTERM ends it earlier. It prints a line
for each day of board time, and at the end what must hold: resident memory flat after the first day (the slope in MB a
month), threads and open files as many as on the first day, every line of the board accounted for, no reading lost
between reader and log, and warnings and prompts told in order. Exit code 1 if one of them does not.
`test_months.py` runs the same over some minutes.
"""

from __future__ import annotations

import argparse
import signal
import sqlite3
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

sys.path.insert(0, str(Path(__file__).parents[2]))
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SIMULATED_NAME, SimulatedPort
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.compose import outfit
from studiowatch.room.readings import Reading
from studiowatch.service.heap import settle_heap
from studiowatch.service.outfit import OpenStore
from studiowatch.service.ports import ReadingsLog
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder
from studiowatch.ui.app import build_window
from studiowatch.ui.settings import ViewSettings
from tests.benchmarks.footprint import resident_MB
from tests.endtoend.month_sums import MOST_WAITING_S, Months, line_of, measured
from tests.endtoend.painting import DAY_MS, SHEETS, Painter
from tests.endtoend.whole import NoTray, QuietSpeaker

BEGAN_MS = int(datetime(2026, 3, 2, 9, 0, tzinfo=UTC).timestamp() * 1000)
MOST_ASKED = 2000  # times, 0.01 s apart, that the board is asked on after its last line: what is not taken then is lost
SPOILT_EVERY = 997  # lines, of which one has a bit flipped on its way: a prime, so that it meets all kinds of lines
PIECES = 12
SETTLED_DAYS, SLOPE_GOAL_MB = 1.0, 1.0


class HeldClock:
    """A clock that only `advance` moves; a thread that called `look` sees it move only when it calls that again.

    The watch calls it with each snapshot, so that UTC and monotonic, which it asks one after the other, are of one
    moment: else a thread that is held up between the two would see a wall clock that was set, as seconds pass there.
    """

    def __init__(self, start_ms: int) -> None:
        self._start_ms = self._now_ms = start_ms
        self._seen = threading.local()

    def advance(self, step_ms: int) -> None:
        self._now_ms += step_ms

    def look(self) -> None:
        self._seen.moment_ms = self._now_ms

    @property
    def now_ms(self) -> int:
        return self._now_ms

    def utc_ms(self) -> int:
        moment_ms: int = getattr(self._seen, "moment_ms", self._now_ms)
        return moment_ms

    def monotonic_s(self) -> float:
        return (self.utc_ms() - self._start_ms) / 1000


class PacedBoard(SimulatedPort):
    """The simulated board, a period of it at each read, held up while the watch is far behind or the end is reached.

    Every so many lines one has a bit flipped; `sent` and `spoilt` count them. It has `ended` when all it sent was
    taken, or plainly will not be: a window that leaves is told no more of what is taken after it. Cancelled it waits
    for nothing.
    """

    def __init__(self, clock: HeldClock, taken: Callable[[], int], end_ms: int, period_ms: int) -> None:
        self._moved, self._taken, self._end_ms = clock, taken, end_ms
        self.sent = self.data = self.spoilt = self.spoilt_data = 0
        self._asked = 0
        self._is_cancelled = False
        self.ended = threading.Event()
        super().__init__(clock=clock, room=SimulatedRoom(seed=7), advance=self._step, period_ms=period_ms)

    def _step(self, step_ms: int) -> None:
        if self._moved.now_ms >= self._end_ms:
            self._asked += 1
            if self._ahead() <= 0 or self._asked > MOST_ASKED:
                self.ended.set()
            time.sleep(0.01)  # the reader asks on until it is stopped
            return
        while not self._is_cancelled and self._ahead() * step_ms > 1000 * MOST_WAITING_S:
            time.sleep(0.001)
        self._moved.advance(step_ms)

    def _ahead(self) -> int:
        """Return how many lines were sent that are not known to be taken."""
        return self.sent - self.spoilt - self._taken()

    def cancel(self) -> None:
        self._is_cancelled = True  # before the port is asked for, which a board that waits holds
        super().cancel()

    def read_some(self, timeout_s: float) -> bytes:
        lines = super().read_some(timeout_s).splitlines(keepends=True)
        for at, line in enumerate(lines):
            self.sent += 1
            self.data += line.startswith(b"$D")
            if self.sent % SPOILT_EVERY == 0:
                self.spoilt += 1
                self.spoilt_data += line.startswith(b"$D")
                lines[at] = line[:5] + bytes([line[5] ^ 0x04]) + line[6:]
        return b"".join(lines)


@dataclass(slots=True)
class CountedLog:
    """The log, which counts what was committed to it."""

    log: ReadingsLog
    count: int = 0

    def append(self, readings: Sequence[Reading]) -> None:
        self.log.append(readings)
        self.count += len(readings)

    def __getattr__(self, name: str) -> object:
        return getattr(self.log, name)


@contextmanager
def running(
    folder: Path, board_days: float, months: Months, pieces: int, every_s: int
) -> Iterator[tuple[PacedBoard, HeldClock, CountedLog, Painter]]:
    """Run everything on the paced board, with so many pieces as far as pieces are on any later day."""
    clock = HeldClock(BEGAN_MS)
    logs: list[CountedLog] = []
    parts = outfit()

    def open_store(path: Path) -> OpenStore:
        store = parts.open_store(path)
        logs.append(CountedLog(store.log))
        return replace(store, log=logs[-1])  # type: ignore[arg-type] - it hands on what it does not count

    def listen(snapshot: Snapshot) -> None:
        clock.look()
        months.seen = snapshot
        months.good, months.faulty = snapshot.board.counts.good, snapshot.board.counts.faulty
        months.overflowed = snapshot.board.overflowed
        if snapshot.own_fault and snapshot.own_fault not in months.faults:
            months.faults.append(snapshot.own_fault)

    board = PacedBoard(clock, lambda: months.good, BEGAN_MS + round(board_days * DAY_MS), 1000 * every_s)
    reader = Reader(clock=clock, wanted=SIMULATED_NAME, open_port=board.open, list_ports=lambda: ())
    studio = StudioFolder(path=folder / "studio")
    with watching(
        replace(parts, clock=clock, open_store=open_store), studio, reader, tell=months.tell, listener=listen
    ) as keeper:
        painter = Painter(keeper)
        for number in range(pieces):
            painter.begin_piece(BEGAN_MS, coats=1 + number % len(SHEETS))
        window = build_window(
            keeper,
            parts.open_history(studio.database),
            clock,
            settings=ViewSettings(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat)),
            speaker=QuietSpeaker(),
            tray=NoTray(),  # type: ignore[arg-type] - a desktop without one
        )
        window.show()
        try:
            yield board, clock, logs[-1], painter
            with closing(sqlite3.connect(studio.database)) as records:
                ((months.notes,),) = records.execute("SELECT count(*) FROM note WHERE kind = 'clock-set'")
        finally:
            window.leave()
            window.deleteLater()


def run(
    folder: Path,
    board_days: float,
    step_days: float,
    say: Callable[[str], None] = lambda _: None,
    *,
    pieces: int = PIECES,
    every_s: int = 1,
    works: bool = False,
    stop: threading.Event | None = None,
) -> Months:
    """Run for so many days of board time or until `stop`, measuring at every step; return what was found.

    With `works` somebody does a day's work at every step.
    """
    app = QApplication.instance() or QApplication(["studiowatch"])
    months = Months(ahead_s=MOST_WAITING_S + every_s)
    with months.hearing_faults(), running(folder, board_days, months, pieces, every_s) as (board, clock, log, painter):
        next_day, held_MB = step_days, [resident_MB()]
        while not (board.ended.wait(0.02) or (stop is not None and stop.is_set())):
            app.processEvents()
            held_MB.append(resident_MB())
            day = (clock.now_ms - BEGAN_MS) / DAY_MS
            if day >= next_day:
                next_day += step_days
                months.days.append(measured(day, held_MB))
                held_MB.clear()
                say(line_of(months.days[-1], log.count, months.told))
                if works and months.seen is not None:
                    painter.work(months.seen)
        held_MB.append(resident_MB())
        months.days.append(measured((clock.now_ms - BEGAN_MS) / DAY_MS, held_MB))
    months.sent, months.spoilt, months.data = board.sent, board.spoilt, board.data - board.spoilt_data
    months.stored = log.count
    if months.stored != months.data:
        months.faults.append(f"{months.data} readings reached the reader, {months.stored} the log")
    return months


def main() -> int:
    """Run the long form."""
    settle_heap()
    call = argparse.ArgumentParser(description=__doc__)
    call.add_argument("days", type=float)
    call.add_argument("folder", type=Path, nargs="?")
    call.add_argument("--pieces", type=int, default=PIECES)
    call.add_argument("--every", type=int, default=1, help="s between two readings")
    asked = call.parse_args()
    stop = threading.Event()
    signal.signal(signal.SIGTERM, lambda *_: stop.set())
    with tempfile.TemporaryDirectory() as holder:
        began_s = time.monotonic()

        def say(line: str) -> None:
            print(f"{time.monotonic() - began_s:7.0f} s  {line}", flush=True)

        folder = asked.folder or Path(holder)
        months = run(folder, asked.days, 1.0, say, pieces=asked.pieces, every_s=asked.every, works=True, stop=stop)
        days = months.days[-1].day
        print(f"{days:.2f} days of board time in {time.monotonic() - began_s:.0f} s; {months.told} things told")
    if days > SETTLED_DAYS + 2:
        slope = months.slope_MB_a_month(SETTLED_DAYS)
        print(f"resident memory {slope:+.2f} MB a month after the first day (goal: under {SLOPE_GOAL_MB})")
        if slope >= SLOPE_GOAL_MB:
            months.faults.append("the memory grows")
    print(f"{months.sent} lines sent, {months.good} taken, {months.faulty} counted as faulty; {months.stored} stored")
    for wrong in months.missing():
        print("!", wrong)
    return 1 if months.missing() else 0


if __name__ == "__main__":
    sys.exit(main())
