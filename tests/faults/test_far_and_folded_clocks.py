"""The watch across the end of 32-bit time and across both changes of the clock: the film knows neither.

A signed 32-bit count of seconds since 1970 ends at 2038-01-19T03:14:07Z (2**31 - 1; POSIX.1-2017, A.4.16).
Europe/Berlin changes at 01:00 UTC on the last Sundays of March and October (IANA time zone database).
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from studiowatch.service.local_time import clock_text, local_date, wall_clock

from ..service.scripted import ScriptedClock  # noqa: TID252 - shared with the keeper's tests
from .test_watch_faults import Stepped

LAST_32_BIT_MS = (2**31 - 1) * 1000
SPRING_MS = round(datetime(2026, 3, 29, 1, tzinfo=UTC).timestamp() * 1000)
AUTUMN_MS = round(datetime(2026, 10, 25, 1, tzinfo=UTC).timestamp() * 1000)


def dried_h(folder: Path, start_ms: int) -> tuple[float, list[int]]:
    """Lay a coat a minute before a time and read on past it; return its next step, h after laying, and the log, ms."""
    stepped = Stepped(folder / f"{start_ms}.sqlite3", clock=ScriptedClock(now_ms=start_ms - 120_000))
    stepped.open()
    stepped.read(60)
    laid_ms = stepped.clock.now_ms
    stepped.lay()
    stepped.read(180)
    stepped.restart()
    stepped.read(10)
    (piece,) = stepped.snapshot().pieces
    rows = [int(str(row[0])) for row in stepped.stored("SELECT time_ms FROM reading ORDER BY time_ms")]
    notes = stepped.stored("SELECT kind FROM note WHERE kind = 'clock-set'")
    stepped.close()
    assert notes == []
    assert piece.next_ms is not None
    return (piece.next_ms - laid_ms) / 3_600_000, rows


@pytest.mark.usefixtures("berlin")
@pytest.mark.parametrize("turn_ms", [LAST_32_BIT_MS, SPRING_MS, AUTUMN_MS], ids=["2038", "spring", "autumn"])
def test_that_a_coat_dries_as_on_any_other_day(turn_ms: int, tmp_path: Path) -> None:
    plain_h, _ = dried_h(tmp_path, SPRING_MS - 30 * 86_400_000)
    over_h, rows = dried_h(tmp_path, turn_ms)
    assert over_h == pytest.approx(plain_h, rel=1e-6)
    assert rows == [turn_ms - 119_000 + 1000 * second for second in range(len(rows))]
    assert rows[-1] > turn_ms + 60_000


@pytest.mark.usefixtures("berlin")
def test_what_her_clock_shows_around_the_changes() -> None:
    assert [clock_text(SPRING_MS + step) for step in (-1000, 0)] == ["01:59", "03:00"]
    assert [clock_text(AUTUMN_MS + step) for step in (-1000, 0)] == ["02:59", "02:00"]
    assert clock_text(LAST_32_BIT_MS + 1000) == "04:14"
    assert str(local_date(LAST_32_BIT_MS + 1000)) == "2038-01-19"


@pytest.mark.usefixtures("berlin")
def test_that_a_time_that_the_change_skips_is_counted_by_the_offset_before_it() -> None:
    """RFC 5545, 3.3.5, for local times that do not occur, and the first of those that occur twice."""
    spring, autumn, at = date(2026, 3, 29), date(2026, 10, 25), wall_clock().at
    assert [at(spring, minutes) - SPRING_MS for minutes in (119, 120, 150, 180)] == [
        minutes * 60_000 for minutes in (-1, 0, 30, 0)
    ]
    assert at(autumn, 150) == AUTUMN_MS - 30 * 60_000
