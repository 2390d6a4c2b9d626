"""The records folder taken away under a watch: said, kept in memory, caught up or left as a room log."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from studiowatch.board.room_log import open_room_log
from studiowatch.service.snapshot import Snapshot
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.trouble import StoreTrouble

from ..service.scripted import START_MS, still  # noqa: TID252 - shared with the keeper's tests
from ..service.test_keeper_faults import Threaded  # noqa: TID252 - the same
from ..service.test_keeper_faults import threaded as threaded  # noqa: PLC0414, TID252 - a fixture


def stored_ms(folder: StudioFolder) -> list[int]:
    database = open_database(folder.database)
    try:
        return [reading.time_ms for reading in ReadingsStore(database).between(0, 2**53)]
    finally:
        database.close()


def all_taken(threaded: Threaded) -> Callable[[Snapshot], bool]:
    return lambda seen: seen.board.counts.good >= threaded.good


def read_on(threaded: Threaded, seconds: int) -> None:
    """Read on with a batch begun at the first second: one begun at the last is not due while the clock stands."""
    threaded.read(1)
    threaded.until(all_taken(threaded))
    threaded.read(seconds - 1)


def expected_ms(first: int, last: int) -> list[int]:
    return [still(START_MS + 1000 * second).time_ms for second in range(first, last + 1)]


def test_that_a_folder_that_was_moved_away_and_back_has_every_reading(threaded: Threaded, tmp_path: Path) -> None:
    with threaded.watched():
        threaded.read(10)
        threaded.until(all_taken(threaded))
        threaded.folder.path.rename(tmp_path / "elsewhere")
        read_on(threaded, 20)
        threaded.until(lambda seen: "is gone" in seen.store_trouble)
        (tmp_path / "elsewhere").rename(threaded.folder.path)
        read_on(threaded, 20)
        threaded.until(lambda seen: seen.time_ms >= START_MS + 50_000 and not seen.store_trouble)
    assert stored_ms(threaded.folder) == expected_ms(1, 50)


def test_that_nothing_is_written_into_a_file_that_was_replaced(threaded: Threaded, tmp_path: Path) -> None:
    with pytest.raises(StoreTrouble, match="replaced") as told, threaded.watched():  # noqa: PT012 - raised at its end
        threaded.read(10)
        threaded.until(all_taken(threaded))
        shutil.copytree(threaded.folder.path, tmp_path / "copy")
        shutil.rmtree(threaded.folder.path)
        (tmp_path / "copy").rename(threaded.folder.path)
        read_on(threaded, 20)
        threaded.until(lambda seen: "replaced" in seen.store_trouble)
    (path,) = threaded.folder.path.glob("not-stored-*.csv")
    assert str(path) in str(told.value)
    kept = [reading.time_ms for reading in open_room_log(path).readings()]
    assert set(expected_ms(11, 30)) <= set(kept)


def test_that_what_a_removed_folder_cannot_take_is_left_where_it_was(threaded: Threaded) -> None:
    with pytest.raises(StoreTrouble) as told, threaded.watched():  # noqa: PT012 - raised at its end
        threaded.read(10)
        threaded.until(all_taken(threaded))
        shutil.rmtree(threaded.folder.path)
        read_on(threaded, 20)
        threaded.until(lambda seen: "is gone" in seen.store_trouble)
    (path,) = threaded.folder.path.glob("not-stored-*.csv")
    assert str(path) in str(told.value)
    assert set(expected_ms(11, 30)) <= {reading.time_ms for reading in open_room_log(path).readings()}
