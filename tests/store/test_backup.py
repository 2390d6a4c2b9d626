"""A backup is whole, checked, one file, and never in the way of what is there."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.store.backup import backup
from studiowatch.store.database import Database, open_database
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.trouble import StoreRefused, StoreTrouble

READINGS = [Reading(time_ms=1_772_442_000_000 + 1000 * at, temperature_C=at / 100) for at in range(2_000)]


def test_that_a_backup_beside_an_open_writer_holds_all_that_was_committed(
    database: Database,
    readings_store: ReadingsStore,
    tmp_path: Path,
) -> None:
    readings_store.append(READINGS)
    readings_store.seal(READINGS[1000].time_ms)
    copy = tmp_path / "copy.sqlite3"
    with database.transaction() as connection:
        connection.execute("INSERT INTO note (time_ms, kind, text) VALUES (1, 'not', 'committed')")
        backup(database.path, copy)
    assert not list(tmp_path.glob("copy.sqlite3?*"))
    # sqlite.org/fileformat2.html, section 1.3: 1 in the bytes at 18 and 19 is a file that needs no log beside it
    assert copy.read_bytes()[18:20] == bytes([1, 1])
    with closing(sqlite3.connect(f"{copy.as_uri()}?immutable=1", uri=True)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert plain.execute("SELECT count(*) FROM note").fetchone() == (0,)
    restored = open_database(copy)
    assert ReadingsStore(restored).between(0, 2**60) == READINGS
    restored.close()


def test_that_a_backup_never_overwrites(database: Database, tmp_path: Path) -> None:
    there = tmp_path / "there"
    there.write_text("hers")
    with pytest.raises(StoreRefused, match="is there already"):
        backup(database.path, there)
    with pytest.raises(StoreRefused, match="is there already"):
        backup(database.path, database.path)
    assert there.read_text() == "hers"


def test_that_nothing_to_back_up_is_said_and_makes_no_file(tmp_path: Path) -> None:
    with pytest.raises(StoreRefused, match="nothing to back up"):
        backup(tmp_path / "missing", tmp_path / "copy")
    assert list(tmp_path.iterdir()) == []


def test_that_a_backup_into_a_missing_folder_is_one_sentence(database: Database, tmp_path: Path) -> None:
    with pytest.raises(StoreTrouble, match="check that its folder is there"):
        backup(database.path, tmp_path / "nowhere" / "copy")


def test_that_a_damaged_file_is_not_backed_up_as_if_it_were_whole(tmp_path: Path) -> None:
    file, copy = tmp_path / "studio.sqlite3", tmp_path / "copy.sqlite3"
    database = open_database(file)
    ReadingsStore(database).append(READINGS)
    ((page, page_bytes),) = database.rows(
        "SELECT rootpage, page_size FROM sqlite_schema, pragma_page_size WHERE name = 'reading'",
    )
    database.close()
    damaged = bytearray(file.read_bytes())
    damaged[(page - 1) * page_bytes : page * page_bytes] = bytes(page_bytes)
    file.write_bytes(damaged)
    with pytest.raises(StoreTrouble, match="damaged"):
        backup(file, copy)
    assert not list(tmp_path.glob("copy*"))
