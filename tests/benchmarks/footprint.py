"""What the whole program costs while it watches: processor, memory, and how soon its window is there.

    xvfb-run -a -s "-screen 0 1400x900x24" python tests/benchmarks/footprint.py [seconds] [--bare]

A process of its own runs the program as `studiowatch` starts it, on a studio of twelve pieces. The board, which sends
one reading a second, is played by this process at the other end of a pseudo-terminal: what it costs is not the
program's. The program tells its own processor time (all threads, user and system) over `seconds` (600 unless told:
looks ahead at the coats come every ten minutes) with the window visible, then three times as long hidden as in the
tray (plans and looks ahead come every half hour there), as a share of one core; and its resident memory. On a busy
machine each piece of work costs more, since others empty the processor's caches.

The start is measured apart, in turn with its floor: from the start of the process to the window's frame, which says
that the studio opens, and to the first painting of the whole window; against importing PySide6, pyqtgraph and numpy
and showing an empty window; by the clock and by the processor.
`--bare` leaves the start out.
"""

# ruff: noqa: PLC0415 - the start is what is measured: nothing is imported before the program imports it

from __future__ import annotations

import argparse
import json
import os
import select
import statistics
import subprocess
import sys
import tempfile
import threading
import time
import tty
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studiowatch.service.doors import Doors
    from studiowatch.service.ports import Desk
    from studiowatch.ui.window import StudioWindow

STARTS = 7  # pairs of starts
SETTLE_S = 240.0  # after the first finishing plan is there: weeks of the log are read, what her coats teach is learnt
HIDDEN_SETTLE_S = 5.0
HIDDEN_TIMES = 3  # as long hidden as visible
VISIBLE_GOAL_PCT, HIDDEN_GOAL_PCT, RESIDENT_GOAL_MB, START_GOAL = 1.0, 0.4, 180.0, 1.5
DEMO_COPIES = (0.0, 9.0, 30.0)  # h by which the demo's pieces were laid earlier in each copy
PIECES = 12
SEED, LOOK_S = 7, 0.5  # of the board: its room, and how often it looks for what the program says, s
FLOOR = """
import time
import numpy, pyqtgraph
from PySide6.QtWidgets import QApplication, QMainWindow
class Empty(QMainWindow):
    def paintEvent(self, event):
        print(time.monotonic(), time.process_time(), flush=True)
        QApplication.exit(0)
app = QApplication([])
window = Empty()
window.resize(1280, 800)
window.show()
app.exec()
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Start:
    """One start: s by the clock and by the processor until the first frame."""

    clock_s: float
    processor_s: float


def resident_MB() -> float:
    """Return the resident memory of this process, MB of 1024 * 1024 bytes, by Linux's own account."""
    pages = int(Path("/proc/self/statm").read_text("ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1024**2


def furnish_twelve(folder: Path) -> None:
    """Build a studio of twelve pieces in `folder`: the demo's, laid at three times."""
    from studiowatch.compose import open_store, simulated_studio
    from studiowatch.service.clock import SystemClock
    from studiowatch.service.demo import Scenario, furnish, scenario
    from studiowatch.store.folder import StudioFolder

    studio = StudioFolder(path=folder)
    studio.make()
    clock, made_up = SystemClock(), scenario()
    pieces = [
        _earlier(piece, shift_h, f"{piece['title']} {number}")
        for number, shift_h in enumerate(DEMO_COPIES, 1)
        for piece in made_up.pieces
    ][:PIECES]
    if len(pieces) != PIECES:
        raise SystemExit(f"The demo gives {len(pieces)} pieces; {PIECES} are wanted.")
    whole = Scenario(seed=made_up.seed, past_h=made_up.past_h + max(DEMO_COPIES), pieces=tuple(pieces))
    store = open_store(studio.database, clock.utc_ms)
    room = simulated_studio(made_up.seed, clock)
    furnish(whole, now_ms=clock.utc_ms(), log=store.log, records=store.records, past_readings=room.past)
    store.close()


def _earlier(piece: dict[str, Any], shift_h: float, title: str) -> dict[str, Any]:
    times = ("laid_h_before", "covered_h_before")
    coats = [coat | {name: coat[name] + shift_h for name in times if name in coat} for coat in piece["coat"]]
    return piece | {"title": title, "coat": coats}


@contextmanager
def board_beside() -> Iterator[str]:
    """Yield the port of a board that this process plays meanwhile."""
    from studiowatch.board.simulated import SimulatedPort
    from studiowatch.compose import simulated_studio
    from studiowatch.service.clock import SystemClock

    own, theirs = os.openpty()
    tty.setraw(theirs)
    clock, ended = SystemClock(), threading.Event()
    board = SimulatedPort(clock=clock, room=simulated_studio(SEED, clock).room)

    def play() -> None:
        while not ended.is_set():
            if select.select([own], [], [], 0.0)[0]:
                board.write(os.read(own, 64))
            os.write(own, board.read_some(LOOK_S))

    player = threading.Thread(target=play, name="board")
    player.start()
    try:
        yield os.ttyname(theirs)
    finally:
        ended.set()
        player.join()
        os.close(own)
        os.close(theirs)


def run_program(folder: Path, port: str | None, then: Callable[[StudioWindow], None]) -> int:
    """Start the program on `folder` and the board at `port`, and call `then` with the window at its first frame.

    Without a port it is the simulated board.
    """
    from studiowatch import compose as program
    from studiowatch.cli.commands import run
    from studiowatch.service.heap import settle_heap

    settle_heap()
    parts = program.outfit()

    def open_window(desk: Desk, doors: Doors, note: str) -> int:
        from studiowatch.ui.window import StudioWindow

        painted, told = StudioWindow.paintEvent, []

        def paint(window: StudioWindow, event: QPaintEvent) -> None:
            painted(window, event)
            if not told:
                told.append(True)
                then(window)

        StudioWindow.paintEvent = paint
        return parts.window(desk, doors, note)

    simulated = program.simulated_studio(SEED, parts.clock).source
    board = parts.board
    if port is None:
        asked = replace(parts, window=open_window, board=lambda _port, _folder: simulated())
    else:
        asked = replace(parts, window=open_window, board=lambda _port, folder: board(port, folder))
    return run(["--folder", str(folder)], asked)


def tell_start(window: StudioWindow) -> None:
    """Print when the whole window was first painted, and leave."""
    from PySide6.QtCore import QTimer

    print(time.monotonic(), time.process_time(), flush=True)
    QTimer.singleShot(0, window.leave)


def tell_frame() -> None:
    """Start as the program does, print when the window's frame was painted, and end."""
    from studiowatch.language import speak
    from studiowatch.service.heap import settle_heap
    from studiowatch.ui.starting import starting

    settle_heap()
    speak()
    with starting() as frame:
        if not frame.is_painted:
            raise SystemExit("the frame was not painted in time")
        print(time.monotonic(), time.process_time(), flush=True)


def watch_cost(seconds: float, window: StudioWindow) -> None:
    """Measure with the window visible, then hidden; print one line of JSON each, and leave."""
    from PySide6.QtCore import QTimer

    def begin(name: str, times: int, then: Callable[[], None]) -> None:
        at_s, used_s = time.monotonic(), time.process_time()
        QTimer.singleShot(round(times * seconds * 1000), window, partial(end, name, at_s, used_s, then))

    def end(name: str, at_s: float, used_s: float, then: Callable[[], None]) -> None:
        passed_s, worked_s = time.monotonic() - at_s, time.process_time() - used_s
        share_pct = 100 * worked_s / passed_s
        told = {"state": name, "share_pct": share_pct, "passed_s": round(passed_s), "resident_MB": resident_MB()}
        print(json.dumps(told), flush=True)
        then()

    def hide() -> None:
        window.hide()
        QTimer.singleShot(round(HIDDEN_SETTLE_S * 1000), window, lambda: begin("hidden", HIDDEN_TIMES, window.leave))

    def settle() -> None:
        is_busy = window.feed.latest is None or window.feed.latest.plan is None  # the last that a start does
        once = settle if is_busy else partial(begin, "visible", 1, hide)
        QTimer.singleShot(round((1.0 if is_busy else SETTLE_S) * 1000), window, once)

    settle()


def one_start(words: Sequence[str]) -> Start:
    """Return how long a process took to its first frame."""
    began_s = time.monotonic()
    answer = subprocess.run([sys.executable, *words], capture_output=True, text=True, check=True)
    painted_s, processor_s = (float(word) for word in answer.stdout.split()[:2])
    return Start(clock_s=painted_s - began_s, processor_s=processor_s)


def start_ratios(folder: Path) -> None:
    """Print how many times the floor the start of the program takes."""
    frames: list[Start] = []
    wholes: list[Start] = []
    floor: list[Start] = []
    for _ in range(STARTS):
        floor.append(one_start(["-c", FLOOR]))
        frames.append(one_start([__file__, "--child", "frame"]))
        wholes.append(one_start([__file__, "--child", "start", "--folder", str(folder)]))
    for shown, ours, goal in (("frame", frames, f"goal {START_GOAL} x"), ("whole window", wholes, "no goal")):
        for name, read in (("clock", lambda one: one.clock_s), ("processor", lambda one: one.processor_s)):
            pairs = [read(mine) / read(bare) for mine, bare in zip(ours, floor, strict=True)]
            mine_s, bare_s = statistics.median(map(read, ours)), statistics.median(map(read, floor))
            print(
                f"{shown} by the {name}: {statistics.median(pairs):.2f} x an empty window with the libraries "
                f"({mine_s:.2f} s to {bare_s:.2f} s; pairs {min(pairs):.2f} to {max(pairs):.2f}); {goal}"
            )


def main() -> None:
    """Measure and print."""
    call = argparse.ArgumentParser(description=__doc__)
    call.add_argument("seconds", nargs="?", type=float, default=600.0)
    call.add_argument("--bare", action="store_true")
    call.add_argument("--child", choices=["frame", "start", "watch"])
    call.add_argument("--folder", type=Path)
    call.add_argument("--port")
    asked = call.parse_args()
    if asked.child == "frame":
        tell_frame()
        return
    if asked.child:
        then = tell_start if asked.child == "start" else partial(watch_cost, asked.seconds)
        raise SystemExit(run_program(asked.folder, asked.port, then))
    with tempfile.TemporaryDirectory() as holder:
        os.environ["XDG_CONFIG_HOME"] = holder  # the window's own settings, not hers
        folder = Path(holder) / "studio"
        furnish_twelve(folder)
        print(f"{PIECES} pieces, one reading a second, begun {datetime.now(UTC):%Y-%m-%d %H:%M} UTC", flush=True)
        words = [sys.executable, __file__, "--child", "watch", "--folder", str(folder), str(asked.seconds)]
        with board_beside() as port:
            answer = subprocess.run([*words, "--port", port], stdout=subprocess.PIPE, text=True, check=True)
        goals = {"visible": VISIBLE_GOAL_PCT, "hidden": HIDDEN_GOAL_PCT}
        for line in answer.stdout.splitlines():
            told = json.loads(line)
            state = told["state"]
            print(
                f"{state}: {told['share_pct']:.2f} % of one core over {told['passed_s']} s (goal {goals[state]} %), "
                f"{told['resident_MB']:.0f} MB resident (goal {RESIDENT_GOAL_MB:g} MB)",
                flush=True,
            )
        if not asked.bare:
            start_ratios(folder)


if __name__ == "__main__":
    main()
