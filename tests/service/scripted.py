"""A clock, a room and a lock that the test holds in its hand."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from studiowatch.room.readings import Reading

START_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
BOOTED_S = 5_000.0  # s, the monotonic clock at START_MS: far from the wall clock


@dataclass
class ScriptedClock:
    """A wall clock and a monotonic clock that the test moves together."""

    now_ms: int = START_MS
    now_s: float = BOOTED_S

    def utc_ms(self) -> int:
        return self.now_ms

    def monotonic_s(self) -> float:
        return self.now_s

    def pass_s(self, seconds: float) -> None:
        self.now_ms += round(seconds * 1000)
        self.now_s += seconds


def still(time_ms: int, **changes: object) -> Reading:
    plain = Reading(time_ms=time_ms, temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.04)
    return replace(plain, **changes)


@contextmanager
def lock_held(path: Path) -> Iterator[None]:
    """Hold the file's write lock, as another program would."""
    with closing(sqlite3.connect(path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        yield
        other.execute("ROLLBACK")
