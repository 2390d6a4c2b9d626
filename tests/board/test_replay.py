from __future__ import annotations

from studiowatch.board.events import LineCounts
from studiowatch.board.replay import replayed
from studiowatch.room.readings import Reading

NINE_MS = 1_772_442_000_000
READINGS = tuple(Reading(time_ms=NINE_MS + 1000 * second, temperature_C=20.0 + second) for second in range(100))


def test_that_the_log_happens_again_with_its_own_times() -> None:
    assert tuple(event.reading for event in replayed(READINGS)) == READINGS


def test_that_each_reading_counts_as_one_good_line_more() -> None:
    assert [event.counts for event in replayed(READINGS)] == [LineCounts(good=good) for good in range(1, 101)]


def test_that_an_empty_log_tells_nothing() -> None:
    assert list(replayed(())) == []
