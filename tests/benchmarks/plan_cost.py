"""What the finishing plan costs, as ratios to `predict` timed in the same run. A script, run by hand.

    python tests/benchmarks/plan_cost.py [PIECES]

The floor is one call of `predict` for a coat of the same sheet: what a plan must do once for each product and size. A
plan is made first (nothing is known yet), again a minute later (all is remembered), and in an air that changed. Then
how far a worker that plans holds up the keeper: readings taken one by one, alone and while plans are made beside them.
"""

from __future__ import annotations

import sys
import threading
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import date, timedelta
from statistics import median

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.prediction import predict
from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.plan_desk import ROOM_MS
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf, built_in_sheets
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.studio.pieces import Coat, Piece

START_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
HOUR_MS = 3_600_000
SECONDS = 300  # readings of each of the two courses
COATS = ("isolation-waterborne", "gloss-waterborne", "gloss-waterborne", "satin-waterborne")


def rack(count: int) -> list[Piece]:
    """Return pieces of as many sizes, every other one with its first coat on for some hours."""
    return [
        Piece(
            key=f"p{n}",
            title=f"Piece {n}",
            width_cm=30 + 3 * n,
            height_cm=40,
            place=n,
            due=date(2026, 3, 20) + timedelta(days=n),
            coats=tuple(
                Coat(key=f"p{n}c{at}", sheet=sheet, laid_ms=START_MS - n * HOUR_MS if at == 0 and n % 2 else None)
                for at, sheet in enumerate(COATS)
            ),
        )
        for n in range(count)
    ]


def watch_of(pieces: list[Piece]) -> Watchkeeping:
    """Return a watch that knows its room."""
    watch = Watchkeeping(
        log=NoLog(),
        records=MemoryRecords(held={one.key: one for one in pieces}),
        shelf=SheetShelf.open(),
        clock_text=clock_text,
        local_date=local_date,
        began_ms=START_MS,
    )
    watch.open()
    read(watch, 0)
    return watch


def read(watch: Watchkeeping, second: int, temperature_C: float = 20.5) -> float:
    """Give the watch a reading and return how long it took, s."""
    time_ms = START_MS + second * 1000
    reading = Reading(time_ms=time_ms, temperature_C=temperature_C, humidity_pct=50.0, air_speed_m_s=0.04)
    began = time.perf_counter()
    watch.take(ReadingArrived(reading=reading, counts=LineCounts()), float(second))
    watch.look(time_ms, float(second))
    return time.perf_counter() - began


def timed(work: Callable[[], object]) -> float:
    """Return how long it takes, s."""
    began = time.perf_counter()
    work()
    return time.perf_counter() - began


def predict_s(count: int) -> float:
    """Return the median of a prediction of the coats that a plan follows, s; anchors are there already."""
    sheets, air = built_in_sheets(), Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.04)

    def once(n: int) -> float:
        sheet = sheets[COATS[n % len(COATS)]]
        return timed(lambda: predict(sheet, wet_um=sheet.wet_um, side_m=0.3 + 0.02 * n, room=air, seed=20260301))

    for n in range(len(COATS)):
        once(n)
    return median(once(n) for n in range(count))


def main() -> None:
    """Print the costs."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 20
    floor_s = predict_s(count)
    watch = watch_of(rack(count))
    made = {"first": timed(lambda: watch.make_plan(START_MS + 1000))}
    runs = watch.desks.plans._waits.runs if watch.desks.plans._waits else 0
    made["a minute later"] = timed(lambda: watch.make_plan(START_MS + 61_000))
    later_s = ROOM_MS // 1000 + 60
    for second in range(later_s - 30, later_s):
        read(watch, second, temperature_C=18.0)
    made["in another air"] = timed(lambda: watch.make_plan(START_MS + later_s * 1000))
    print(f"predict, one coat: {1000 * floor_s:.1f} ms")
    print(f"plan of {count} pieces, {runs} products times sizes")
    for name, seconds in made.items():
        print(f"  {name:<16} {1000 * seconds:8.1f} ms = {seconds / floor_s:6.1f} x predict")
    alone = [read(watch, later_s + n) for n in range(SECONDS)]
    stop = threading.Event()

    def plan_on() -> None:
        while not stop.is_set():
            watch.desks.plans._waits = None
            watch.desks.plans._making(replace(Air(temperature_C=19.0, humidity_pct=50.0)), START_MS + later_s * 1000)()

    with ThreadPoolExecutor(1) as worker:
        worker.submit(plan_on)
        beside = [read(watch, later_s + SECONDS + n) for n in range(SECONDS)]
        stop.set()
    for name, course in (("alone", alone), ("beside a plan", beside)):
        print(f"a reading {name:<14} median {1000 * median(course):6.2f} ms, longest {1000 * max(course):7.1f} ms")


if __name__ == "__main__":
    main()
