"""The room history: a planted peak is seen at every zoom, and every bucket is what numpy makes of its readings."""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from pathlib import Path

import numpy as np
import pytest

from studiowatch.room.readings import Channel, Reading
from studiowatch.store import sealing
from studiowatch.store.database import Database, open_database
from studiowatch.store.history import HistoryReader
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.shapes import Series
from studiowatch.store.trouble import StoreRefused

T0 = 1_772_442_000_000  # 2026-03-02T09:00:00Z
HOUR_MS = 3_600_000
HOURS = 30
PEAK, DIP = 99.0, -9.0


def _log() -> tuple[np.ndarray, np.ndarray]:
    """Thirty hours at about 1 Hz with lost lines and a gap, one peak and one dip of a second each."""
    dice = np.random.default_rng(7)
    seconds = np.arange(HOURS * 3600)
    kept = (dice.random(seconds.size) > 0.02) & ((seconds < 40_000) | (seconds > 47_000))
    kept[[12_345, 100_001]] = True
    values = np.round(20 + 2 * np.sin(seconds / 5000) + dice.normal(0, 0.1, seconds.size), 2)
    values[12_345], values[100_001] = PEAK, DIP
    return T0 + seconds[kept] * 1000, values[kept]


TIME_MS, VALUES = _log()


@pytest.fixture(scope="module", params=[0, 13, 29], ids=["all rows", "half sealed", "nearly all sealed"])
def log(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Iterator[HistoryReader]:
    path = tmp_path_factory.mktemp("history") / "studio.sqlite3"
    database = open_database(path)
    store = ReadingsStore(database)
    store.append(
        [
            Reading(time_ms=time_ms, temperature_C=value)
            for time_ms, value in zip(TIME_MS.tolist(), VALUES.tolist(), strict=True)
        ],
    )
    store.seal(T0 + request.param * HOUR_MS)
    reader = HistoryReader(path)
    yield reader
    reader.close()
    database.close()


def _views(count: int) -> Iterator[tuple[int, int, int]]:
    """Yield ranges of every width from seconds to all of it, and numbers of buckets."""
    dice = random.Random(99)
    for _ in range(count):
        width_ms = int(10 ** dice.uniform(4, 8.2))
        start_ms = T0 + dice.randrange(-HOUR_MS, HOURS * HOUR_MS)
        yield start_ms, start_ms + width_ms, dice.choice([1, 7, 100, 800, 2000])


def _expected(series: Series, at: int) -> np.ndarray:
    start_ms = series.time_ms[at] - series.bucket_ms // 2
    return VALUES[(start_ms <= TIME_MS) & (start_ms + series.bucket_ms > TIME_MS)]


def test_that_hours_put_away_do_not_push_out_what_a_view_remembers(readings_store: ReadingsStore) -> None:
    minutes = range(T0, T0 + HOURS * HOUR_MS, 60_000)
    readings_store.append([Reading(time_ms=time_ms, temperature_C=20.0) for time_ms in minutes])
    before = sealing._buckets.cache_info()
    assert readings_store.seal(T0 + HOURS * HOUR_MS) == len(minutes)
    assert sealing._buckets.cache_info() == before


def test_that_a_peak_of_one_second_never_vanishes_at_any_zoom(log: HistoryReader) -> None:
    dice = random.Random(5)
    for width_s in (5, 60, 600, 3600, 7200, 21_600, 50_000, 108_000, 864_000):
        for buckets in (1, 3, 50, 333, 1000, 4000):
            for second, value in ((12_345, PEAK), (100_001, DIP)):
                start_ms = T0 + second * 1000 - dice.randrange(width_s * 1000)
                series = log.series(Channel.TEMPERATURE, start_ms, start_ms + width_s * 1000, buckets)
                assert value in (series.high.max(), series.low.min())


def test_that_least_greatest_and_mean_of_a_bucket_are_those_of_its_readings(log: HistoryReader) -> None:
    dice = random.Random(3)
    checked = 0
    for start_ms, end_ms, buckets in _views(60):
        series = log.series(Channel.TEMPERATURE, start_ms, end_ms, buckets)
        # the first and the last may reach past the range, and hold what lies there or not
        for at in dice.sample(range(1, len(series.time_ms) - 1), min(5, max(0, len(series.time_ms) - 2))):
            values = _expected(series, at)
            assert series.low[at] == values.min()
            assert series.high[at] == values.max()
            assert series.mean[at] == pytest.approx(np.mean(values), rel=1e-12)
            checked += 1
    assert checked > 100


def test_that_no_reading_of_the_range_is_left_out_and_buckets_are_about_as_many_as_asked(log: HistoryReader) -> None:
    for start_ms, end_ms, buckets in _views(60):
        series = log.series(Channel.TEMPERATURE, start_ms, end_ms, buckets)
        inside = TIME_MS[(start_ms <= TIME_MS) & (end_ms > TIME_MS)]
        first_ms = series.time_ms - series.bucket_ms // 2
        held = np.searchsorted(first_ms, inside, side="right") - 1
        assert np.all(held >= 0)
        assert np.all(inside < first_ms[held] + series.bucket_ms)
        assert len(series.time_ms) <= buckets + 1
        # widths of 1, 2, 5 and 10 s, and beyond whole multiples: each is at most 2.5 times the one before
        assert series.bucket_ms <= max(1000, 2.5 * (end_ms - start_ms) / buckets + 1)
        assert np.all(np.diff(series.time_ms) > 0)


def test_that_a_gap_has_no_buckets(log: HistoryReader) -> None:
    series = log.series(Channel.TEMPERATURE, T0, T0 + HOURS * HOUR_MS, 1000)
    widest_ms = np.diff(series.time_ms).max()
    assert widest_ms == pytest.approx(7_000_000, abs=2 * series.bucket_ms)


def test_that_buckets_stand_still_while_the_view_moves(log: HistoryReader) -> None:
    one = log.series(Channel.TEMPERATURE, T0 + 5 * HOUR_MS, T0 + 10 * HOUR_MS, 500)
    for moved_ms in (1, 7_777, 60_000, 1_234_567):
        start_ms = T0 + 5 * HOUR_MS + moved_ms
        other = log.series(Channel.TEMPERATURE, start_ms, start_ms + 5 * HOUR_MS, 500)
        assert one.bucket_ms == other.bucket_ms
        both, here, there = np.intersect1d(one.time_ms, other.time_ms, return_indices=True)
        assert both.size >= one.time_ms.size - moved_ms // one.bucket_ms - 2
        assert np.array_equal(one.mean[here][1:-1], other.mean[there][1:-1])


def test_that_the_span_is_from_the_first_to_the_last_reading(log: HistoryReader) -> None:
    assert log.span_ms() == (TIME_MS[0], TIME_MS[-1])


def test_that_a_channel_that_was_never_read_is_an_empty_series(log: HistoryReader) -> None:
    for end_ms in (T0 + 60_000, T0 + HOURS * HOUR_MS):
        assert log.series(Channel.SURFACE, T0, end_ms, 100).time_ms.size == 0


def test_that_an_empty_range_or_no_buckets_are_refused(log: HistoryReader) -> None:
    with pytest.raises(ValueError, match="more than 0"):
        log.series(Channel.TEMPERATURE, T0, T0, 10)
    with pytest.raises(ValueError, match="more than 0"):
        log.series(Channel.TEMPERATURE, T0, T0 + 1, 0)


def test_that_an_empty_log_has_no_span(database: Database) -> None:
    reader = HistoryReader(database.path)
    assert reader.span_ms() is None
    assert reader.series(Channel.TEMPERATURE, 0, 1000, 10).time_ms.size == 0
    reader.close()


def test_that_a_board_that_speaks_once_a_minute_shows_no_gaps(
    database: Database,
    readings_store: ReadingsStore,
) -> None:
    readings_store.append([Reading(time_ms=T0 + at * 60_000, temperature_C=20.0) for at in range(500)])
    reader = HistoryReader(database.path)
    for hours in (1, 3, 8):
        series = reader.series(Channel.TEMPERATURE, T0, T0 + hours * HOUR_MS, 2000)
        assert np.diff(series.time_ms).max() == series.bucket_ms
    reader.close()


@pytest.mark.parametrize("starts_s", [(0, 25_200), range(0, 86_400, 7_200)], ids=["one pause", "many pauses"])
def test_that_long_pauses_between_few_readings_stay_gaps(
    database: Database,
    readings_store: ReadingsStore,
    starts_s: Sequence[int],
) -> None:
    for start_s in starts_s:
        readings_store.append([Reading(time_ms=T0 + (start_s + at) * 1000, temperature_C=20.0) for at in range(5)])
    reader = HistoryReader(database.path)
    series = reader.series(Channel.TEMPERATURE, T0, T0 + 8 * HOUR_MS, 500)
    whole = reader.series(Channel.TEMPERATURE, T0, T0 + 24 * HOUR_MS, 1440)
    reader.close()
    assert series.bucket_ms == whole.bucket_ms == 60_000
    assert np.diff(whole.time_ms).tolist() == [1000 * pause_s for pause_s in np.diff(starts_s)]


def test_that_the_reader_sees_each_commit_and_holds_nothing_up(
    database: Database,
    readings_store: ReadingsStore,
) -> None:
    reader = HistoryReader(database.path)
    for at in range(5):
        readings_store.append([Reading(time_ms=T0 + at * 1000, temperature_C=float(at))])
        assert reader.span_ms() == (T0, T0 + at * 1000)
    # a reader in a transaction of its own would keep the log from being folded in: busy would be 1
    ((busy, _, _),) = database.rows("PRAGMA wal_checkpoint(TRUNCATE)")
    assert busy == 0
    reader.close()


def test_that_a_log_that_is_not_there_is_refused_and_not_made(tmp_path: Path) -> None:
    with pytest.raises(StoreRefused, match="is not there"):
        HistoryReader(tmp_path / "studio.sqlite3")
    assert list(tmp_path.iterdir()) == []
