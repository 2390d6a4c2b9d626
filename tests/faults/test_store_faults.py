"""What full disks and folders that may not be written do to the file: nothing; what it costs is said in one sentence.

SQLite's own integrity check is the judge of the file. Kills, power cuts and full disks under load: `test_hard_life`.
"""

from __future__ import annotations

import os
import random
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.store.database import Database, open_database
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.trouble import StoreFull, StoreRefused, StoreTrouble

resource = pytest.importorskip("resource", reason="limits on the size of a file are set as POSIX systems have them")

T0 = 1_772_442_000_000  # 2026-03-02T09:00:00Z
STEP_MS = 20_000
NOBODY = 65_534  # user id without rights on Debian and most others


def _readings(count: int, start: int = 0) -> list[Reading]:
    return [Reading(time_ms=T0 + at * STEP_MS, temperature_C=at / 8) for at in range(start, start + count)]


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    opened = open_database(tmp_path / "studio.sqlite3")
    yield opened
    assert opened.rows("PRAGMA integrity_check") == [("ok",)]
    opened.close()


@contextmanager
def _full_disk(database: Database) -> Iterator[None]:
    """Let the file grow no further, by SQLite's own limit."""
    ((pages,),) = database.rows("PRAGMA page_count")
    database.rows(f"PRAGMA max_page_count = {pages}")
    yield
    database.rows("PRAGMA max_page_count = 1000000")


def test_that_a_full_disk_is_one_sentence_and_the_batch_is_written_once_when_there_is_room(database: Database) -> None:
    store = ReadingsStore(database)
    store.append(_readings(100))
    batch = _readings(5_000, 100)
    with _full_disk(database):
        for _ in range(3):
            with pytest.raises(
                StoreFull, match=r"^The disk of .* is full; make room on it, nothing was half written\.$"
            ):
                store.append(batch)
        assert store.between(0, 2**60) == _readings(100)
    store.append(batch)
    assert store.between(0, 2**60) == _readings(5_100)


def test_that_an_hour_that_finds_no_room_to_be_sealed_stays_as_rows(database: Database) -> None:
    store = ReadingsStore(database)
    dice = random.Random(1)
    readings = [Reading(time_ms=T0 + at * 1000, temperature_C=dice.random()) for at in range(3_600)]
    store.append(readings)
    with _full_disk(database):
        with pytest.raises(StoreFull):
            store.seal(T0 + 10**8)
        assert store.between(0, 2**60) == readings
    assert store.seal(T0 + 10**8) == 3_600
    assert store.between(0, 2**60) == readings


def test_that_a_file_that_may_not_grow_is_trouble_and_is_caught_up_later(database: Database) -> None:
    store = ReadingsStore(database)
    store.append(_readings(100))
    size = database.path.with_name(database.path.name + "-wal").stat().st_size
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size + 6_000, hard))  # in the middle of the second page written
    try:
        with pytest.raises(StoreTrouble, match="nothing was half written"):
            store.append(_readings(5_000, 100))
        assert store.between(0, 2**60) == _readings(100)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))
    store.append(_readings(5_000, 100))
    assert store.between(0, 2**60) == _readings(5_100)


@pytest.fixture
def open_to_all() -> Iterator[Path]:
    """Give a folder that any user reaches; pytest's own ones are closed to others."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder)
        path.chmod(0o777)
        yield path


@contextmanager
def _ordinary_user() -> Iterator[None]:
    """Go without the rights of root, who may write everywhere."""
    root = os.geteuid() == 0
    if root:
        os.seteuid(NOBODY)
    try:
        yield
    finally:
        if root:
            os.seteuid(0)


def _contents(folder: Path) -> dict[str, bytes]:
    return {each.name: each.read_bytes() for each in folder.iterdir()}


def test_that_a_folder_that_may_only_be_read_is_refused_and_not_touched(open_to_all: Path) -> None:
    path = open_to_all / "studio.sqlite3"
    with _ordinary_user():
        open_database(path).close()
    open_to_all.chmod(0o555)
    before = _contents(open_to_all)
    with _ordinary_user(), pytest.raises(StoreRefused, match=r"^The folder .* may only be read.*\.$"):
        open_database(path)
    with _ordinary_user(), pytest.raises(StoreRefused, match=r"^The folder .* may only be read.*\.$"):
        open_database(open_to_all / "new.sqlite3")
    assert _contents(open_to_all) == before


def test_that_a_file_that_may_only_be_read_is_refused_and_not_touched(open_to_all: Path) -> None:
    path = open_to_all / "studio.sqlite3"
    open_database(path).close()
    path.chmod(0o444)
    before = _contents(open_to_all)
    with _ordinary_user(), pytest.raises(StoreRefused, match=r"studio\.sqlite3 may only be read, not written"):
        open_database(path)
    assert _contents(open_to_all) == before


def test_that_a_file_that_may_not_even_be_read_is_refused(open_to_all: Path) -> None:
    path = open_to_all / "studio.sqlite3"
    open_database(path).close()
    path.chmod(0o000)
    with _ordinary_user(), pytest.raises(StoreRefused, match="cannot be read"):
        open_database(path)
