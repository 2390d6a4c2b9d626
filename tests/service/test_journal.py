"""Readings reach the disk within five seconds, and wait in memory while it refuses."""

from __future__ import annotations

from collections.abc import Sequence
from math import nan

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service import journal as journal_module
from studiowatch.service.disk import RETRY_S, Disk
from studiowatch.service.journal import SLICE, Journal
from studiowatch.store.trouble import StoreTrouble


class Log:
    """A log that may be told to refuse, and that like the store's own cannot hold NaN."""

    def __init__(self) -> None:
        self.batches: list[tuple[Reading, ...]] = []
        self.refuses_after: int | None = None

    @property
    def seconds(self) -> list[int]:
        return [reading.time_ms // 1000 for batch in self.batches for reading in batch]

    def append(self, readings: Sequence[Reading]) -> None:
        if self.refuses_after is not None and len(self.batches) >= self.refuses_after:
            raise StoreTrouble("The disk is full; make room and the readings will be kept.")
        if any(reading.temperature_C != reading.temperature_C for reading in readings):
            raise ValueError("NaN")
        self.batches.append(tuple(readings))


def journal_on(log: Log) -> Journal:
    return Journal(log=log, disk=Disk())


def run(journal: Journal, seconds: range) -> None:
    for second in seconds:
        journal.add(Reading(time_ms=second * 1000), float(second))
        journal.settle(float(second))


def test_that_no_reading_waits_more_than_five_seconds_at_one_a_second() -> None:
    log = Log()
    run(journal_on(log), range(100))
    assert log.seconds == list(range(100))
    assert max(len(batch) for batch in log.batches) == 5


def test_that_a_quiet_board_s_last_readings_are_committed_by_the_clock_alone() -> None:
    log = Log()
    journal = journal_on(log)
    run(journal, range(2))
    journal.settle(3.9)
    assert log.batches == []
    journal.settle(4.0)
    assert [len(batch) for batch in log.batches] == [2]


def test_that_a_full_disk_is_said_and_nothing_is_lost_when_it_has_room_again() -> None:
    log = Log()
    journal = journal_on(log)
    log.refuses_after = 0
    run(journal, range(30))
    assert "full" in journal.disk.trouble
    log.refuses_after = None
    run(journal, range(30, 40))
    assert journal.disk.trouble == ""
    assert log.seconds == list(range(40))


def test_that_memory_is_bounded_and_what_was_given_up_is_counted_and_said(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(journal_module, "HELD_MOST", 10)
    log = Log()
    journal = journal_on(log)
    log.refuses_after = 0
    run(journal, range(25))
    assert journal.dropped == 15
    assert "lost" in journal.trouble
    assert "15" in journal.trouble


def test_that_many_that_waited_are_written_in_slices_and_none_twice() -> None:
    log = Log()
    journal = journal_on(log)
    for second in range(2 * SLICE + 7):
        journal.add(Reading(time_ms=second * 1000), 0.0)
    log.refuses_after = 1
    journal.settle(10.0)
    journal.settle(10.5)
    assert [len(batch) for batch in log.batches] == [SLICE]
    log.refuses_after = None
    for now_s in (10.5 + RETRY_S, 11.0 + RETRY_S):
        journal.settle(now_s)
    assert [len(batch) for batch in log.batches] == [SLICE, SLICE, 7]
    assert log.seconds == list(range(2 * SLICE + 7))


def test_that_a_reading_at_fault_is_set_aside_said_and_left_and_the_others_are_written() -> None:
    log = Log()
    journal = journal_on(log)
    for second in range(100):
        value = nan if second in {41, 42, 99} else 20.0
        journal.add(Reading(time_ms=second * 1000, temperature_C=value), 0.0)
    journal.flush(10.0)
    assert log.seconds == [second for second in range(100) if second not in {41, 42, 99}]
    assert [reading.time_ms // 1000 for reading in journal.left()] == [41, 42, 99]
    assert "cannot be stored" in journal.trouble
    run(journal, range(100, 110))
    assert log.seconds[-10:] == list(range(100, 110))


def test_that_what_the_disk_refused_to_the_last_is_left() -> None:
    log = Log()
    journal = journal_on(log)
    log.refuses_after = 0
    run(journal, range(12))
    journal.flush(20.0)
    assert [reading.time_ms // 1000 for reading in journal.left()] == list(range(12))
