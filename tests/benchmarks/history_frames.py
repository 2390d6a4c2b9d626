"""How long the room history takes over a year at one reading a second, as ratios to bare plots in the same run.

    python tests/benchmarks/year_file.py year.db
    python tests/benchmarks/history_frames.py year.db
    python tests/benchmarks/history_frames.py year.db coats
    python tests/benchmarks/history_frames.py year.db bands

For each width of view, a walk through the year: each step reads what is in view, on a thread of its own, and paints
what was read. The floor walks along as many points as the picture's three panels hold (least, greatest and mean of each
bucket), one plot of the plotting library each, at the same size, with all of its points given beforehand; its steps are
taken in turn with ours. Times are of the processor, of all threads.
With `coats`, the same file holds 300 coats, 2,000 warnings and 1,500 prompts, and the rack eight pieces.
With `bands`, now stands at two thirds of the view, and what the room may do from then on is painted and left out in
turn.
Then, in a process of its own: the time by the clock from an empty window to the first picture of the year, and what the
resident memory grew by.
"""

from __future__ import annotations

import argparse
import resource
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections import deque
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from pathlib import Path

import numpy as np
import pyqtgraph
from PySide6.QtWidgets import QApplication

from studiowatch.room.readings import Channel
from studiowatch.service.board_view import BoardView
from studiowatch.service.past import StudioHistory
from studiowatch.service.piece_view import PieceView
from studiowatch.service.room_band import RoomBand
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.store.history import HistoryReader
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.history_fetch import Request
from studiowatch.ui.models.history_view import DAY_MS, HOUR_MS, Span, View
from studiowatch.ui.widgets.history import RoomHistory

sys.path.insert(0, str(Path(__file__).parents[2]))
from tests.benchmarks.year_records import add

SIZE = (905, 620)  # px, of the history in a window of 1280 x 800
STEPS = 40  # of each walk
GOAL = 1.3  # times the floor
FIRST_GOAL_S, GROWTH_GOAL_MB = 0.3, 30.0
WIDTHS_MS = {
    "hour": HOUR_MS,
    "day": DAY_MS,
    "week": 7 * DAY_MS,
    "month": 30 * DAY_MS,
    "quarter": 91 * DAY_MS,
    "year": 365 * DAY_MS,
}


def application() -> QApplication:
    """Return the one application."""
    return QApplication.instance() or QApplication([])


@contextmanager
def shown(path: Path, pieces: tuple[PieceView, ...] = ()) -> Iterator[tuple[RoomHistory, int, int]]:
    """Yield a history over the file at `path`, without anything read yet, with the log's first and last time."""
    reader = HistoryReader(path)
    span_ms = reader.span_ms()
    if span_ms is None:
        raise SystemExit(f"{path} holds no readings.")
    window = RoomHistory()
    window.resize(*SIZE)
    window.set_snapshot(
        Snapshot(
            time_ms=span_ms[1],
            board=BoardView(),
            room=RoomView(time_ms=span_ms[1]),
            sentence=Sentence(level=Level.CALM, headline=""),
            pieces=pieces,
        )
    )
    window.show()
    window.set_history(StudioHistory(reader))
    try:
        yield window, *span_ms
    finally:
        window.stop()


def wait_for(done: Callable[[], bool]) -> None:
    """Let the window work until `done`."""
    while not done():
        application().processEvents()


def walk(window: RoomHistory, width_ms: int, first_ms: int, last_ms: int) -> Iterator[Request]:
    """Move the view along the log, wait for what is read, paint it, and yield what was asked for."""
    furthest_ms = max(last_ms - width_ms, first_ms)
    for step in range(STEPS):
        start_ms = first_ms + round((furthest_ms - first_ms) * step / STEPS) + step * width_ms // (10 * STEPS)
        before = window.canvas.read
        window._move(View(start_ms=start_ms, end_ms=start_ms + width_ms, following=False))
        wait_for(lambda before=before: window.canvas.read is not before)
        window.canvas.grab()
        if window.canvas.read is not None:
            yield window.canvas.read


def read_s(reader: HistoryReader, request: Request) -> float:
    """Return how long the three channels take to read, s."""
    began_s = time.process_time()
    for channel in (Channel.TEMPERATURE, Channel.HUMIDITY, Channel.AIR_SPEED):
        reader.series(channel, request.start_ms, request.end_ms, request.buckets)
    return time.process_time() - began_s


def paint_s(window: RoomHistory) -> float:
    """Return how long it takes to paint the picture afresh, s."""
    window.canvas.refresh()
    began_s = time.process_time()
    window.canvas.grab()
    return time.process_time() - began_s


class Floor:
    """Three plots of `points` static points each, to walk along."""

    def __init__(self, points: int) -> None:
        self._points = points
        self._board = pyqtgraph.GraphicsLayoutWidget()
        self._board.resize(*SIZE)
        drawn = np.random.default_rng(1)
        self._plots = [self._board.addPlot(row=row, col=0) for row in range(3)]
        for plot in self._plots:
            plot.plot(np.arange(points), drawn.normal(size=points).cumsum())
            plot.disableAutoRange()
        self._board.show()
        application().processEvents()

    def step_s(self, step: int) -> float:
        """Return how long one step takes, s."""
        began_s = time.process_time()
        for plot in self._plots:
            plot.setXRange(0.1 * step, self._points + 0.1 * step, padding=0.0)
        self._board.grab()
        return time.process_time() - began_s

    def close(self) -> None:
        """Take the plots away."""
        self._board.close()


def frames(path: Path, pieces: tuple[PieceView, ...] = ()) -> None:
    """Print the frame times at each width, with `pieces` on the rack."""
    print(
        f"{'view':>8} {'points':>7} {'read':>7} {'worst':>7} {'paint':>7} {'floor':>7}  paint over floor, with the read"
    )
    reader = HistoryReader(path)
    with shown(path, pieces) as (window, first_ms, last_ms):
        for name, width_ms in WIDTHS_MS.items():
            reads_s, paints_s, floors_s = [], [], []
            floor: Floor | None = None
            points = 0
            for step, request in enumerate(walk(window, min(width_ms, last_ms - first_ms), first_ms, last_ms)):
                data = window.canvas.data
                if floor is None:
                    points = 3 * max(len(series.time_ms) for series in (data.temperature, data.humidity, data.air))
                    floor = Floor(points)
                    floor.step_s(0)
                reads_s.append(read_s(reader, request))
                paints_s.append(paint_s(window))
                floors_s.append(floor.step_s(step))
            if floor is not None:
                floor.close()
            reading_s, painting_s, least_s = map(statistics.median, (reads_s, paints_s, floors_s))
            ratio = painting_s / least_s
            print(
                f"{name:>8} {points:7d} {1e3 * reading_s:4.1f} ms {1e3 * max(reads_s):4.0f} ms "
                f"{1e3 * painting_s:4.1f} ms {1e3 * least_s:4.1f} ms  {ratio:.2f} "
                f"(goal {GOAL:g}: {'met' if ratio <= GOAL else 'not met'}), {(painting_s + reading_s) / least_s:.2f}"
            )
    reader.close()


def bands(path: Path) -> None:
    """Print what the bands of the room to come cost in views that end after now."""
    print(f"{'view':>8} {'points':>7} {'without':>8} {'with':>8} {'floor':>8}  with over without, over floor")
    with shown(path) as (window, _, now_ms):
        free = window.canvas.snapshot
        coming = replace(free, room_band=room_band(now_ms))
        for name, width_ms in {"8 h": 8 * HOUR_MS, "day": DAY_MS, "week": 7 * DAY_MS}.items():
            before = window.canvas.read
            start_ms = now_ms - 2 * width_ms // 3
            window._move(View(start_ms=start_ms, end_ms=start_ms + width_ms, following=False))
            wait_for(lambda before=before: window.canvas.read is not before)
            points = 3 * len(window.canvas.data.temperature.time_ms)
            floor = Floor(points)
            floor.step_s(0)
            times_s: list[tuple[float, float, float]] = []
            for step in range(STEPS):
                window.canvas.show_snapshot(free)
                without_s = paint_s(window)
                window.canvas.show_snapshot(coming)
                times_s.append((without_s, paint_s(window), floor.step_s(step)))
            floor.close()
            without_s, with_s, least_s = (statistics.median(column) for column in zip(*times_s, strict=True))
            print(
                f"{name:>8} {points:7d} {1e3 * without_s:5.1f} ms {1e3 * with_s:5.1f} ms {1e3 * least_s:5.1f} ms  "
                f"{with_s / without_s:.2f}, {with_s / least_s:.2f} (goal {GOAL:g})"
            )


def room_band(now_ms: int) -> RoomBand:
    """Return a made-up room that swings by the day for four days, and widens."""
    hours = np.arange(97)
    middle = 19.0 + 2.0 * np.cos(2.0 * np.pi * hours / 24.0)
    spread = 2.5 * (1.0 - np.exp(-hours / 12.0))
    temperature_C = np.array([middle - spread, middle, middle + spread])
    return RoomBand(
        time_ms=now_ms + HOUR_MS * hours, temperature_C=temperature_C, humidity_pct=2.5 * temperature_C, is_meant=True
    )


def resident_mb() -> float:
    """Return the resident memory of this process, MB."""
    pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    return pages * resource.getpagesize() / 1e6


def first_picture(path: Path) -> None:
    """Print how long the first picture of the year takes, and how much memory the window grows by."""
    application()
    with shown(path) as (window, first_ms, last_ms):
        window.canvas.grab()
        empty_mb = resident_mb()
        before = window.canvas.data
        began_s = time.perf_counter()
        window.set_span(Span.ALL)
        wait_for(lambda: window.canvas.data is not before and window.view.start_ms <= first_ms)
        window.canvas.grab()
        first_s = time.perf_counter() - began_s
        for width_ms in WIDTHS_MS.values():
            deque(walk(window, min(width_ms, last_ms - first_ms), first_ms, last_ms), maxlen=0)
        grown_mb = resident_mb() - empty_mb
    print(f"first picture of the year: {first_s:.3f} s ({'met' if first_s < FIRST_GOAL_S else 'not met'})")
    memory_goal = "met" if grown_mb < GROWTH_GOAL_MB else "not met"
    print(f"memory over the empty window, after all walks: {grown_mb:+.1f} MB ({memory_goal})")


def coats(path: Path) -> None:
    """Print the frame times of the file at `path` with a year of records in it."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(shutil.copy(path, Path(folder) / "studio.db"))
        with closing(HistoryReader(copy)) as reader:
            span_ms = reader.span_ms()
        if span_ms is None:
            raise SystemExit(f"{path} holds no readings.")
        pieces = add(copy, *span_ms)
        with closing(HistoryReader(copy)) as reader:
            began_s = time.process_time()
            past = reader.past()
            first_s = time.process_time() - began_s
            began_s = time.process_time()
            reader.past()
            again_s = time.process_time() - began_s
        laid = sum(len(piece.coats) for piece in (*past.pieces, *pieces))
        print(f"{laid} coats, {len(past.warnings)} warnings, {len(past.prompts)} prompts: ", end="")
        print(f"read once in {1e3 * first_s:.1f} ms, unchanged in {1e3 * again_s:.2f} ms")
        frames(copy, pieces)


def main() -> None:
    """Measure the file that was named."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("path", type=Path)
    parser.add_argument("part", nargs="?", choices=["frames", "coats", "bands", "first"], default="frames")
    asked = parser.parse_args()
    application()
    if asked.part == "first":
        first_picture(asked.path)
        return
    if asked.part == "bands":
        bands(asked.path)
        return
    if asked.part == "coats":
        coats(asked.path)
        return
    frames(asked.path)
    sys.stdout.flush()
    subprocess.run([sys.executable, __file__, str(asked.path), "first"], check=True)


if __name__ == "__main__":
    main()
