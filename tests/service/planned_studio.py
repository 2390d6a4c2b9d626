"""Made-up pieces under a watch that makes plans, with a worker that works when the test says so."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Future
from dataclasses import replace
from datetime import date
from pathlib import Path

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.physics.air import Air
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.plan_desk import Work
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf, built_in_sheets
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.plan_shapes import FinishingPlan
from studiowatch.studio.working_hours import WorkingHours

from .scripted import START_MS, still

HOUR_MS = 3_600_000
SHEETS = built_in_sheets()
AIR = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.04)
ALWAYS = WorkingHours(days=((0, 24 * 60),) * 7)


class Later:
    """A worker that works when the test says so."""

    def __init__(self) -> None:
        self.asked: list[tuple[Callable[[], FinishingPlan], Future[FinishingPlan]]] = []

    def __call__(self, make: Callable[[], FinishingPlan]) -> Future[FinishingPlan]:
        done: Future[FinishingPlan] = Future()
        self.asked.append((make, done))
        return done

    def work(self) -> None:
        make, done = self.asked.pop(0)
        done.set_result(make())


def piece(**changes: object) -> Piece:
    plain = Piece(
        key="p",
        title="Kiln Light",
        width_cm=40,
        height_cm=40,
        due=date(2026, 4, 20),
        coats=(
            Coat(key="iso", sheet="isolation-waterborne", laid_ms=START_MS - 30 * 60_000),
            Coat(key="gloss", sheet="gloss-waterborne"),
        ),
    )
    return replace(plain, **changes)


def unread_watch_of(
    *pieces: Piece, work: Work | None = None, hours: WorkingHours = ALWAYS, sheets: Path | None = None
) -> Watchkeeping:
    """Return a watch over `pieces` that has no reading yet."""
    records = MemoryRecords(held={one.key: one for one in pieces}, kept_hours=hours)
    watch = Watchkeeping(
        log=NoLog(),
        records=records,
        shelf=SheetShelf.open(),
        clock_text=clock_text,
        local_date=local_date,
        began_ms=START_MS,
        plan_work=work,
        sheet_folder=None if sheets is None else SheetFolder(folder=sheets),
    )
    watch.open()
    return watch


def watch_of(
    *pieces: Piece, work: Work | None = None, hours: WorkingHours = ALWAYS, sheets: Path | None = None
) -> Watchkeeping:
    """Return a watch over `pieces` after its first reading."""
    watch = unread_watch_of(*pieces, work=work, hours=hours, sheets=sheets)
    live(watch, 0)
    return watch


def live(watch: Watchkeeping, second: int, *, is_seen: bool = True, **air: object) -> None:
    reading = still(START_MS + second * 1000, **air)
    watch.take(ReadingArrived(reading=reading, counts=LineCounts()), float(second))
    watch.look(START_MS + second * 1000, float(second), is_seen=is_seen)
