"""What a run of `months.py` measured, what it was told, and the sums at its end that must hold."""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from statistics import median
from types import TracebackType

import numpy as np

from studiowatch.service.happenings import Happening, PromptHappened, WarningHappened
from studiowatch.service.snapshot import Snapshot

ORDERED = {WarningHappened.__name__, PromptHappened.__name__}
MOST_WAITING_S = 60  # s by which the board and its clock may be ahead of the watch
LATE_THREADS = 2  # begun when first asked for, later on a crowded machine: one reads the history, one makes plans
LATE_FILES = 3  # of the reader of the history: the database, the log beside it and the memory that both share
MONTH_DAYS = 30.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """What was measured over a stretch of board time; `day` counts from the start.

    Resident memory is the median and the most of many moments of the stretch, as plans in the making hold some
    megabytes for a second at a time; threads and files are those at its end.
    """

    day: float
    resident_MB: float
    most_MB: float
    threads: int
    files: int


@dataclass(slots=True)
class Months:
    """A run: what it measured, what was told, and the sums at its end.

    Attributes
    ----------
    latest_ms : dict of str to int
        UTC ms of the latest thing of a kind that was told.
    ahead_s : int
        Seconds by which the clock may be ahead of a reading: what a reading brings about has its time, all else that
        of the clock, so that far two things told in turn may stand in the other order.
    back_s : dict of str to float
        The most by which one of a kind came before the latest of it, s, where that is more.
    """

    days: list[Day] = field(default_factory=list)
    told: int = 0
    latest_ms: dict[str, int] = field(default_factory=dict)
    ahead_s: int = MOST_WAITING_S + 1
    back_s: dict[str, float] = field(default_factory=dict)
    faults: list[str] = field(default_factory=list)
    sent: int = 0
    spoilt: int = 0
    data: int = 0
    stored: int = 0
    good: int = 0
    faulty: int = 0
    overflowed: int = 0
    notes: int = 0
    seen: Snapshot | None = None

    def tell(self, happening: Happening) -> None:
        """Take it that this was told."""
        kind, time_ms = type(happening).__name__, happening.time_ms
        self.told += 1
        back_s = (self.latest_ms.get(kind, time_ms) - time_ms) / 1000
        if back_s > self.ahead_s:
            self.back_s[kind] = max(back_s, self.back_s.get(kind, 0.0))
        self.latest_ms[kind] = max(time_ms, self.latest_ms.get(kind, time_ms))

    @contextmanager
    def hearing_faults(self) -> Iterator[None]:
        """Take it that what a slot of the window raises is a fault."""
        before = sys.excepthook

        def hear(kind: type[BaseException], fault: BaseException, trace: TracebackType | None) -> None:
            if (sentence := f"{kind.__name__}: {fault}") not in self.faults:
                self.faults.append(sentence)
                before(kind, fault, trace)

        sys.excepthook = hear
        try:
            yield
        finally:
            sys.excepthook = before

    def slope_MB_a_month(self, after_day: float) -> float:
        """Return the slope of a straight line, by least squares, through what the stretches begun since then held."""
        later = [day for before, day in pairwise(self.days) if before.day >= after_day]
        slope, _ = np.polyfit([day.day for day in later], [day.resident_MB for day in later], 1)
        return float(slope) * MONTH_DAYS

    def missing(self) -> list[str]:
        """Return in words what does not hold, but for the memory."""
        wrong = [*self.faults]
        if self.good + self.faulty != self.sent:
            wrong.append(f"{self.sent} lines were sent, {self.good} taken and {self.faulty} counted as faulty")
        if self.faulty != self.spoilt:
            wrong.append(f"{self.spoilt} lines were spoilt, {self.faulty} counted as faulty")
        for count, words in (
            (self.notes, "the clock was taken to be set {} times"),
            (self.overflowed, "{} readings were refused by a full inbox"),
        ):
            wrong += [words.format(count)] if count else []
        wrong += [
            f"{kind} was told out of order, by {back_s:g} s" for kind, back_s in self.back_s.items() if kind in ORDERED
        ]
        return wrong + self._growing()

    def _growing(self) -> list[str]:
        wrong = []
        settled = self.days[min(1, len(self.days) - 1) :]
        for name, counts, begun_later in (
            ("threads", {day.threads for day in settled}, LATE_THREADS),
            ("open files", {day.files for day in settled}, LATE_FILES),
        ):
            if max(counts) > min(counts) + begun_later:
                wrong.append(f"{name} went from {min(counts)} to {max(counts)}")
        return wrong


def measured(day: float, held_MB: Sequence[float]) -> Day:
    """Return what was measured over a stretch that ends now, with what was held at moments of it."""
    return Day(
        day=day,
        resident_MB=median(held_MB),
        most_MB=max(held_MB),
        threads=sum(1 for _ in Path("/proc/self/task").iterdir()),
        files=sum(1 for _ in Path("/proc/self/fd").iterdir()),
    )


def line_of(day: Day, stored: int, told: int) -> str:
    """Return one line about a stretch."""
    return (
        f"{day.day:7.2f} d  {day.resident_MB:6.1f} MB (most {day.most_MB:.1f})  {day.threads} threads  "
        f"{day.files} files  {stored} readings stored  {told} told"
    )
