"""A log goes into the records hour by hour, and can be taken up again wherever it stopped."""

from __future__ import annotations

import io
from collections.abc import Iterator
from contextlib import closing
from itertools import islice
from pathlib import Path

import numpy as np
import pytest

from studiowatch.board.room_log_blocks import Event, log_blocks
from studiowatch.board.room_log_cells import FaultKind
from studiowatch.board.room_log_header import LogForm
from studiowatch.room.log_columns import LogColumns
from studiowatch.room.readings import Reading
from studiowatch.service.importing import FaultTeller, Summary, take_log
from studiowatch.store.database import Database, open_database
from studiowatch.store.examine import examine
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.taking_in import Verdict, Verdicts
from studiowatch.store.trouble import StoreFull

MIDNIGHT_S = 1_772_409_600  # date -u -d 2026-03-02T00:00:00Z +%s
HOUR_S = 3600


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with closing(open_database(tmp_path / "studio.sqlite3")) as opened:
        yield opened


def events(rows: int, step_s: int = 60) -> Iterator[Event]:
    lines = ["time_unix,temperature_C\n", *(f"{MIDNIGHT_S + step_s * at},{at % 50}\n" for at in range(rows))]
    return log_blocks(iter(lines), LogForm(needed=()))


def taking(database: Database, told: list[str], rows: int, *, now_min: int = 60_000) -> Iterator[Summary]:
    now_ms = (MIDNIGHT_S + 60 * now_min) * 1000
    log = ReadingsStore(database)
    return take_log(events(rows), log.take_in, origin="room.csv", now_ms=now_ms, tell=told.append)


def test_that_what_was_taken_before_a_stop_is_there_and_the_rest_follows(database: Database) -> None:
    list(islice(taking(database, [], 300), 2))  # two hours, then pulled out
    assert [one.time_ms for one in ReadingsStore(database).between(0, 2**60)] == [
        (MIDNIGHT_S + 60 * at) * 1000 for at in range(120)
    ]
    *_, summary = taking(database, [], 300)
    assert (summary.taken, summary.there, summary.refused) == (180, 120, 0)
    assert len(ReadingsStore(database).between(0, 2**60)) == 300
    assert examine(database.path).faults == ()


def test_that_hours_that_are_over_are_sealed_and_the_hour_that_is_on_is_not(database: Database) -> None:
    list(taking(database, [], 300, now_min=4 * 60 + 59))
    assert database.rows("SELECT count(*) FROM reading") == [(60,)]
    assert database.rows("SELECT count(*), sum(count) FROM chunk") == [(4, 240)]


def test_that_a_sealed_hour_takes_more_readings_and_sums_them_up(database: Database) -> None:
    log = ReadingsStore(database)
    log.append([Reading(time_ms=(MIDNIGHT_S + 30 + 60 * at) * 1000, temperature_C=-10.0) for at in range(60)])
    log.seal((MIDNIGHT_S + HOUR_S) * 1000)
    *_, summary = taking(database, [], 60)
    assert summary.taken == 60
    assert [one.temperature_C for one in log.between(0, 2**60)][:4] == [0.0, -10.0, 1.0, -10.0]
    assert examine(database.path).faults == ()


def test_that_a_gap_is_told_and_left_as_it_is(database: Database) -> None:
    minutes = [*range(100), *range(400, 500)]
    lines = ["time_unix,temperature_C\n", *(f"{MIDNIGHT_S + 60 * at},20\n" for at in minutes)]
    told: list[str] = []
    log = ReadingsStore(database)
    read = log_blocks(iter(lines), LogForm(needed=()))
    *_, summary = take_log(read, log.take_in, origin="room.csv", now_ms=2**50, tell=told.append)
    assert told == ["room.csv, line 102: no reading for 301 min before this row."]
    assert summary.taken == 200
    assert [one.time_ms // 60_000 - MIDNIGHT_S // 60 for one in log.between(0, 2**60)] == minutes


@pytest.mark.parametrize("repeated", [0, 1], ids=["in a block", "row by row"])
def test_that_rows_ahead_of_the_clock_are_refused_and_taken_once_they_have_been(
    database: Database, repeated: int
) -> None:
    minutes = range(60)
    lines = ["time_unix,temperature_C\n", *(f"{MIDNIGHT_S + 60 * at},20\n" for at in minutes)]
    lines += lines[-1:] * repeated
    log, told = ReadingsStore(database), list[str]()

    def take(now_min: int) -> Summary:
        read = log_blocks(iter(lines), LogForm(needed=()))
        now_ms = (MIDNIGHT_S + 60 * now_min) * 1000
        *_, summary = take_log(read, log.take_in, origin="room.csv", now_ms=now_ms, tell=told.append)
        return summary

    summary = take(29)  # a minute ahead is a slip of the hand, as where she types a time
    assert (summary.taken, summary.there) == (31, 0)
    assert summary.reasons[FaultKind.AHEAD] == 29 + repeated  # the row that comes twice is not there already
    assert told[0] == (
        "room.csv, line 33: its time, 2026-03-02T00:31:00Z, lies ahead of the clock, 2026-03-02T00:29:00Z; "
        "correct the log's times or zone or the clock, or import it again once they have been."
    )
    assert [one.time_ms // 1000 for one in log.between(0, 2**60)] == [MIDNIGHT_S + 60 * at for at in minutes[:31]]
    summary = take(1000)
    assert (summary.taken, summary.there) == (29, 31 + repeated)
    assert summary.reasons[FaultKind.AHEAD] == 0


def test_that_a_disk_that_fills_up_ends_it_with_what_was_told_on_disk() -> None:
    calls: list[int] = []

    def take_in(readings: LogColumns, *, seal_before_ms: int) -> Verdicts:
        calls.append(seal_before_ms)
        if len(calls) > 2:
            raise StoreFull("The disk is full.")
        return np.full(readings.size, Verdict.TAKEN, dtype=np.int8)

    summaries: list[int] = []
    read = take_log(events(300), take_in, origin="room.csv", now_ms=2**50, tell=print)
    with pytest.raises(StoreFull):
        summaries.extend(summary.taken for summary in read)
    assert summaries == [60, 120]
    assert calls == [2**50] * 3


def test_that_faults_of_one_kind_in_a_row_are_told_as_one_stretch() -> None:
    told: list[str] = []
    teller = FaultTeller(origin="room.csv", tell=told.append)
    for line in (2, 3, 4, 9, 10):
        teller.fault(line, FaultKind.UNIT, "looks like °F.")
        teller.fault(line, FaultKind.RANGE, "too damp.")
    teller.close()
    for word, clause in (("another unit", "looks like °F."), ("out of range", "too damp.")):
        assert [line for line in told if word in line or clause in line] == [
            f"room.csv, line 2: {clause}",
            f"room.csv, lines 3 to 4: the same again ({word}).",
            f"room.csv, line 9: {clause}",
            f"room.csv, line 10: the same again ({word}).",
        ]


def test_that_every_line_of_a_log_of_faults_is_told(database: Database) -> None:
    text = "time_unix,temperature_C\n" + "soon,20\n" * 5000
    told: list[str] = []
    read = log_blocks(io.StringIO(text, newline=""), LogForm(needed=()))
    *_, summary = take_log(read, ReadingsStore(database).take_in, origin="a", now_ms=2**50, tell=told.append)
    assert (summary.taken, summary.refused) == (0, 5000)
    assert told[0].startswith("a, line 2: ")
    assert told[1:] == ["a, lines 3 to 5001: the same again (no number)."]
