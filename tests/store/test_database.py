"""Opening: made once, refused in one sentence, never touched when refused. Files are compared by their bytes."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.store.database import Database, open_database
from studiowatch.store.header import APPLICATION_ID, Header, read_header
from studiowatch.store.migrations import STEPS
from studiowatch.store.quiet import log_of
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.trouble import StoreRefused, StoreTrouble

READINGS = [Reading(time_ms=1_772_442_000_000 + at, temperature_C=20.0) for at in range(3)]


def _folder(path: Path) -> dict[str, bytes]:
    return {each.name: each.read_bytes() for each in path.iterdir() if each.is_file()}


def _made(path: Path) -> Path:
    """Make a file of ours with three readings and let go of it."""
    file = path / "studio.sqlite3"
    database = open_database(file)
    ReadingsStore(database).append(READINGS)
    database.close()
    return file


def _run(file: Path, *statements: str) -> None:
    with closing(sqlite3.connect(file)) as connection:
        for statement in statements:
            connection.execute(statement)
        connection.commit()


def test_that_a_new_file_keeps_a_log_is_fully_synchronous_and_minds_references(database: Database) -> None:
    # sqlite.org/pragma.html: synchronous 2 is FULL
    assert database.rows("PRAGMA journal_mode") == [("wal",)]
    assert database.rows("PRAGMA synchronous") == [(2,)]
    assert database.rows("PRAGMA foreign_keys") == [(1,)]
    assert database.rows("PRAGMA user_version") == [(len(STEPS),)]
    assert database.rows("PRAGMA application_id") == [(APPLICATION_ID,)]
    assert database.rows("PRAGMA busy_timeout") == [(5000,)]
    ((limit,),) = database.rows("PRAGMA journal_size_limit")
    assert limit > 0


def test_that_a_new_file_alone_without_its_log_has_the_tables_and_our_mark(database: Database, tmp_path: Path) -> None:
    alone = tmp_path / "alone.sqlite3"
    alone.write_bytes(database.path.read_bytes())
    copy = open_database(alone)
    assert ReadingsStore(copy).between(0, 2**60) == []
    copy.close()


def test_that_what_was_written_is_there_when_opened_again(tmp_path: Path) -> None:
    database = open_database(_made(tmp_path))
    assert ReadingsStore(database).between(0, 2**60) == READINGS
    database.close()
    assert list(_folder(tmp_path)) == ["studio.sqlite3"]


def test_that_a_name_with_signs_of_an_address_is_only_a_name(tmp_path: Path) -> None:
    database = open_database(tmp_path / "ä b?mode=memory#1%41.sqlite3")
    database.close()
    assert list(_folder(tmp_path)) == ["ä b?mode=memory#1%41.sqlite3"]


def test_that_an_empty_file_becomes_the_records(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    file.touch()
    open_database(file).close()
    assert file.stat().st_size > 0


NOT_OURS: dict[str, tuple[Callable[[Path], None], str]] = {
    "a text": (lambda file: file.write_text("title,width\n" * 50) and None, "is not a database"),
    "a short file": (lambda file: file.write_bytes(b"SQLite format 3\x00") and None, "is not a database"),
    "another program's": (lambda file: _run(file, "CREATE TABLE music (x)"), "belongs to another program"),
    "another program's, marked": (
        lambda file: _run(file, "PRAGMA application_id = 1234", "PRAGMA user_version = 1", "CREATE TABLE music (x)"),
        "belongs to another program.*0x4d2",
    ),
    "another program's, with a log": (
        lambda file: _run(file, "PRAGMA journal_mode = WAL", "CREATE TABLE music (x)"),
        "belongs to another program",
    ),
    "a newer one": (
        lambda file: _run(
            file,
            f"PRAGMA application_id = {APPLICATION_ID}",
            "PRAGMA user_version = 77",
            "CREATE TABLE reading (x)",
        ),
        f"has version 77.*up to version {len(STEPS)}",
    ),
}


@pytest.mark.parametrize("read_only", [False, True])
@pytest.mark.parametrize("kind", NOT_OURS)
def test_that_a_file_that_is_not_ours_is_refused_in_one_sentence_and_not_touched(
    tmp_path: Path,
    kind: str,
    read_only: bool,  # noqa: FBT001 - given by name
) -> None:
    file = tmp_path / "studio.sqlite3"
    make, sentence = NOT_OURS[kind]
    make(file)
    before = _folder(tmp_path)
    with pytest.raises(StoreRefused, match=sentence) as refusal:
        open_database(file, read_only=read_only)
    assert _folder(tmp_path) == before
    assert str(refusal.value).startswith(str(file))
    assert "\n" not in str(refusal.value)
    assert str(refusal.value).endswith(".")


def test_that_a_newer_version_that_stands_only_in_the_log_is_refused(tmp_path: Path) -> None:
    file = _made(tmp_path)
    with closing(sqlite3.connect(file)) as newer:
        newer.execute("PRAGMA user_version = 77")
        before = file.read_bytes()
        with pytest.raises(StoreRefused, match="has version 77"):
            open_database(file)
        assert file.read_bytes() == before


def test_that_a_folder_in_the_place_of_the_file_is_refused(tmp_path: Path) -> None:
    with pytest.raises(StoreRefused, match="cannot be read"):
        open_database(tmp_path)


def test_that_a_missing_folder_is_refused_and_not_made(tmp_path: Path) -> None:
    with pytest.raises(StoreRefused, match="is not there; make it"):
        open_database(tmp_path / "nowhere" / "studio.sqlite3")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("lock", ["BEGIN IMMEDIATE", "BEGIN EXCLUSIVE"])
def test_that_a_file_another_program_has_locked_is_refused_and_not_touched(tmp_path: Path, lock: str) -> None:
    file = _made(tmp_path)
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute(lock)
        before = file.read_bytes()
        with pytest.raises(StoreRefused, match="is in use by another program"):
            open_database(file, busy_timeout_ms=0)
        assert file.read_bytes() == before
        other.execute("ROLLBACK")
        open_database(file, busy_timeout_ms=0).close()


def test_that_a_file_another_program_keeps_to_itself_is_refused(tmp_path: Path) -> None:
    file = _made(tmp_path)
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("PRAGMA locking_mode = EXCLUSIVE")
        other.execute("BEGIN IMMEDIATE")
        for read_only in (False, True):
            with pytest.raises(StoreTrouble, match="is in use by another program"):
                open_database(file, busy_timeout_ms=0, read_only=read_only).rows("SELECT * FROM reading")


def test_that_a_lock_taken_while_running_is_trouble_and_the_batch_can_be_written_later(database: Database) -> None:
    store = ReadingsStore(database)
    database.rows("PRAGMA busy_timeout = 0")
    with closing(sqlite3.connect(database.path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(StoreTrouble, match="is in use by another program"):
            store.append(READINGS)
        other.execute("ROLLBACK")
    store.append(READINGS)
    assert store.between(0, 2**60) == READINGS


def test_that_a_mistake_inside_a_transaction_undoes_it_and_is_loud(database: Database) -> None:
    def half_wrong() -> None:
        with database.transaction() as connection:
            connection.execute("INSERT INTO note (time_ms, kind, text) VALUES (1, 'a', 'b')")
            connection.execute("INSERT INTO nowhere VALUES (1)")

    with pytest.raises(sqlite3.OperationalError, match="no such table"):
        half_wrong()
    assert database.rows("SELECT count(*) FROM note") == [(0,)]


def test_that_a_read_only_connection_cannot_write(database: Database) -> None:
    reader = open_database(database.path, read_only=True)
    with pytest.raises(StoreTrouble, match="may only be read"), reader.transaction() as connection:
        connection.execute("DELETE FROM reading")
    reader.close()


GOOD_STEP = ("ALTER TABLE note ADD COLUMN extra TEXT", "CREATE TABLE later (x TEXT)")
BAD_STEP = ("CREATE TABLE half_done (x TEXT)", "DELETE FROM reading", "INSERT INTO nowhere VALUES (1)")


@pytest.mark.parametrize("journal", ["WAL", "DELETE"], ids=["as left", "as restored from a backup"])
def test_that_a_step_forward_copies_the_file_first_and_keeps_what_is_in_it(tmp_path: Path, journal: str) -> None:
    file = _made(tmp_path)
    _run(file, f"PRAGMA journal_mode = {journal}")
    database = open_database(file, steps=(*STEPS, GOOD_STEP))
    assert ReadingsStore(database).between(0, 2**60) == READINGS
    # sqlite.org/fileformat2.html, section 1.3: the version is the four bytes at 60; here without what the log holds
    assert file.read_bytes()[60:64] == bytes([0, 0, 0, len(STEPS) + 1])
    database.close()
    copy = tmp_path / f"studio.sqlite3.before-version-{len(STEPS) + 1}"
    assert set(_folder(tmp_path)) == {file.name, copy.name}
    earlier = open_database(copy)
    assert ReadingsStore(earlier).between(0, 2**60) == READINGS
    assert earlier.rows("PRAGMA user_version") == [(len(STEPS),)]
    earlier.close()
    with pytest.raises(StoreRefused, match="made by a newer studiowatch"):
        open_database(file)


def test_that_a_step_that_fails_half_way_leaves_the_file_as_it_was(tmp_path: Path) -> None:
    file = _made(tmp_path)
    before, newest = file.read_bytes(), len(STEPS)
    sentence = f"could not be brought to version {newest + 2}.*left as it was, at version {newest}"
    with pytest.raises(StoreTrouble, match=sentence):
        open_database(file, steps=(*STEPS, GOOD_STEP, BAD_STEP))
    assert file.read_bytes() == before
    assert not file.with_name(file.name + "-wal").exists()
    database = open_database(file)
    assert ReadingsStore(database).between(0, 2**60) == READINGS
    database.close()


def test_that_a_failing_first_step_leaves_no_tables(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    with pytest.raises(StoreTrouble, match="could not be brought to version 1"):
        open_database(file, steps=[("CREATE TABLE half_done (x TEXT)", "CREATE TABLE half_done (x TEXT)")])
    open_database(file).close()


def test_that_opening_again_at_the_same_version_makes_no_copy(tmp_path: Path) -> None:
    file = _made(tmp_path)
    open_database(file).close()
    assert list(_folder(tmp_path)) == [file.name]


def test_that_a_file_that_lost_a_table_is_refused_and_named(tmp_path: Path) -> None:
    path = tmp_path / "studio.sqlite3"
    open_database(path).close()
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA foreign_keys = OFF")
        connection.execute("DROP TABLE reading")
        connection.commit()
    with pytest.raises(StoreRefused, match="lacks reading"):
        open_database(path)


def test_that_a_file_that_was_taken_away_is_said_and_not_written_into_nowhere(tmp_path: Path) -> None:
    path = tmp_path / "studio.sqlite3"
    database = open_database(path)
    path.rename(tmp_path / "elsewhere.sqlite3")
    with pytest.raises(StoreTrouble, match="is gone"), database.transaction():
        pytest.fail("the transaction was begun")
    database.close()


# sqlite.org/wal.html: whoever closes a file last folds the log into it and deletes that
ANOTHER_PROGRAM = """
import sqlite3, sys
other = sqlite3.connect(sys.argv[1])
other.execute("SELECT count(*) FROM note").fetchall()
other.close()
"""


@pytest.mark.parametrize("look", [read_header, lambda file: open_database(file, read_only=True).close()])
def test_that_no_look_at_the_file_gives_the_log_away_to_another_program(
    tmp_path: Path, look: Callable[[Path], object]
) -> None:
    database = open_database(tmp_path / "studio.sqlite3")
    store = ReadingsStore(database)
    store.append(READINGS[:1])
    look(database.path)
    subprocess.run([sys.executable, "-c", ANOTHER_PROGRAM, str(database.path)], check=True)
    assert log_of(database.path).exists()
    store.append(READINGS[1:])
    database.close()
    again = open_database(database.path)
    assert ReadingsStore(again).between(0, 2**60) == READINGS
    again.close()


def test_that_a_header_is_read_as_it_is_now_while_the_file_is_open(database: Database) -> None:
    assert read_header(database.path) == Header(user_version=len(STEPS), application_id=APPLICATION_ID, logged=True)
    database.rows("PRAGMA user_version = 5")
    database.rows("PRAGMA wal_checkpoint(TRUNCATE)")
    assert read_header(database.path) == Header(user_version=5, application_id=APPLICATION_ID, logged=True)
    database.rows(f"PRAGMA user_version = {len(STEPS)}")
