"""Readings reach the disk within five seconds, and wait in memory while it refuses."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service import journal as journal_module
from studiowatch.service.journal import Journal
from studiowatch.store.trouble import StoreTrouble


class Disk:
    """A log that may be told to refuse."""

    def __init__(self) -> None:
        self.batches: list[tuple[Reading, ...]] = []
        self.full = False

    def append(self, readings: Sequence[Reading]) -> None:
        if self.full:
            raise StoreTrouble("The disk is full; make room and the readings will be kept.")
        self.batches.append(tuple(readings))


def run(journal: Journal, seconds: range) -> None:
    for second in seconds:
        journal.add(Reading(time_ms=second * 1000), float(second))


def test_that_no_reading_waits_more_than_five_seconds_at_one_a_second() -> None:
    disk = Disk()
    run(Journal(log=disk), range(100))
    on_disk = [reading.time_ms // 1000 for batch in disk.batches for reading in batch]
    assert on_disk == list(range(100))
    assert max(len(batch) for batch in disk.batches) == 5


def test_that_a_quiet_board_s_last_readings_are_committed_by_the_clock_alone() -> None:
    disk = Disk()
    journal = Journal(log=disk)
    run(journal, range(2))
    journal.settle(3.9)
    assert disk.batches == []
    journal.settle(4.0)
    assert [len(batch) for batch in disk.batches] == [2]


def test_that_a_full_disk_is_said_and_nothing_is_lost_when_it_has_room_again() -> None:
    disk = Disk()
    journal = Journal(log=disk)
    disk.full = True
    run(journal, range(30))
    assert "full" in journal.trouble
    disk.full = False
    run(journal, range(30, 40))
    assert journal.trouble == ""
    assert [reading.time_ms // 1000 for batch in disk.batches for reading in batch] == list(range(40))


def test_that_memory_is_bounded_and_what_was_given_up_is_counted(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(journal_module, "HELD_MOST", 10)
    disk = Disk()
    journal = Journal(log=disk)
    disk.full = True
    run(journal, range(25))
    assert journal.dropped == 15
