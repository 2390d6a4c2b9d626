"""What goes to disk gets there in the end: what was lost is noted, hours are packed, and the end has patience."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service import journal as journal_module
from studiowatch.service.disk import RETRY_S
from studiowatch.service.ledger import LAST_TRIES, SEAL_EVERY_S, Ledger
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.store.trouble import StoreTrouble

NOW_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z


class BusyLog(NoLog):
    """A log that is in use for the next so many writes."""

    def __init__(self) -> None:
        self.busy = 0
        self.held: list[Reading] = []
        self.sealed = 0
        self.hours = 0

    def _be_asked(self) -> None:
        if self.busy:
            self.busy -= 1
            raise StoreTrouble("It is in use.")

    def append(self, readings: Sequence[Reading]) -> None:
        self._be_asked()
        self.held += readings

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        del before_ms
        self._be_asked()
        packed = min(self.hours, self.hours if most_hours is None else most_hours)
        self.hours -= packed
        self.sealed += 1
        return 3600 * packed


@pytest.fixture
def log() -> BusyLog:
    return BusyLog()


@pytest.fixture
def records() -> MemoryRecords:
    return MemoryRecords(held={})


def read(ledger: Ledger, seconds: range) -> None:
    for second in seconds:
        ledger.add(Reading(time_ms=NOW_MS + second * 1000), float(second))
        ledger.write(NOW_MS + second * 1000, float(second))


def test_that_what_was_lost_is_noted_once_when_the_disk_takes_again(
    log: BusyLog, records: MemoryRecords, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(journal_module, "HELD_MOST", 10)
    ledger = Ledger(log=log, records=records)
    read(ledger, range(1))
    log.busy = 4
    read(ledger, range(1, 40))
    lost = 40 - len(log.held) - ledger._journal.waiting
    assert lost > 0
    assert str(lost) in ledger.trouble
    read(ledger, range(40, 50))
    assert [(kind, str(lost) in text) for _, kind, text in records.notes] == [("dropped", True)]


def test_that_old_hours_are_packed_now_and_then_and_not_while_the_disk_refuses(
    log: BusyLog, records: MemoryRecords
) -> None:
    ledger = Ledger(log=log, records=records)
    ledger.write(NOW_MS, 0.0)
    ledger.write(NOW_MS, SEAL_EVERY_S - 1)
    assert log.sealed == 1
    log.busy = 1
    ledger.write(NOW_MS, SEAL_EVERY_S)
    assert "in use" in ledger.trouble
    ledger.write(NOW_MS, SEAL_EVERY_S + RETRY_S)
    ledger.write(NOW_MS, 2 * SEAL_EVERY_S)
    assert log.sealed == 2
    assert ledger.trouble == ""


def test_that_many_old_hours_are_packed_one_with_each_write_and_none_while_something_else_waits(
    log: BusyLog, records: MemoryRecords
) -> None:
    ledger = Ledger(log=log, records=records)
    log.hours = 3
    left = []
    for second in range(5):
        ledger.write(NOW_MS, float(second), packs=second != 1)
        left.append(log.hours)
    assert left == [2, 2, 1, 0, 0]
    log.hours = 1
    ledger.write(NOW_MS, 6.0)
    assert log.hours == 1  # nothing was left: the next look for an hour is some minutes away


def test_that_a_short_lock_at_the_end_loses_nothing(log: BusyLog, records: MemoryRecords) -> None:
    ledger = Ledger(log=log, records=records)
    ledger.write(NOW_MS, 0.0)
    ledger.add(Reading(time_ms=NOW_MS), 0.0)
    ledger.note(NOW_MS, "overflow", "Some.")
    log.busy = LAST_TRIES - 1
    ledger.close(1.0)
    assert len(log.held) == 1
    assert len(records.notes) == 1
    assert not ledger.leavings().readings


def test_that_a_disk_that_refuses_to_the_last_leaves_the_readings_and_why(log: BusyLog, records: MemoryRecords) -> None:
    ledger = Ledger(log=log, records=records)
    ledger.write(NOW_MS, 0.0)
    ledger.add(Reading(time_ms=NOW_MS), 0.0)
    log.busy = 10 * LAST_TRIES
    ledger.close(1.0)
    left = ledger.leavings()
    assert ([reading.time_ms for reading in left.readings], left.trouble) == ([NOW_MS], "It is in use.")
