"""Every earlier version of the file comes forward whole, or, wherever that fails, is left as it was.

The earlier files are made with the steps of their time; what they hold is read back through SQLite alone.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from studiowatch.store.database import open_database, tables_of_version
from studiowatch.store.examine import examine
from studiowatch.store.migrations import STEPS, Step
from studiowatch.store.trouble import StoreFull, StoreTrouble

EARLIER = range(1, len(STEPS))
GROWING = [at for at in EARLIER if any("CREATE TABLE" in statement for step in STEPS[at:] for statement in step)]
BREAKS = [
    (version, number, place)
    for version in range(len(STEPS))
    for number in range(version + 1, len(STEPS) + 1)
    for place in range(len(STEPS[number - 1]) + 1)
]
_SAMPLES = {"INTEGER": 7, "REAL": 0.1, "TEXT": "[]", "BLOB": b"\x01"}


def _made(path: Path, version: int) -> Path:
    """Make a file of an earlier version with a row in each table, or none for version 0."""
    file = path / "studio.sqlite3"
    if version:
        open_database(file, steps=STEPS[:version]).close()
        with closing(sqlite3.connect(file)) as connection, connection:
            connection.execute("PRAGMA defer_foreign_keys = ON")
            for table in tables_of_version(version) - {"sqlite_sequence"}:
                types = [kind for _, _, kind, *_ in connection.execute(f"PRAGMA table_info({table})")]
                marks = ", ".join("?" * len(types))
                connection.execute(f"INSERT INTO {table} VALUES ({marks})", [_SAMPLES[kind] for kind in types])  # noqa: S608
    return file


def _columns(version: int) -> dict[str, list[str]]:
    """Return the columns by table as the steps up to this version alone make them."""
    with closing(sqlite3.connect(":memory:")) as connection:
        for step in STEPS[:version]:
            for statement in step:
                connection.execute(statement)
        return {
            table: [name for _, name, *_ in connection.execute(f"PRAGMA table_info({table})")]
            for table in sorted(tables_of_version(version))
        }


def _rows(file: Path, version: int) -> dict[str, list[tuple[Any, ...]]]:
    """Return the rows of the tables and columns that this version has, from a file of this version or a later one."""
    columns = _columns(version)
    with closing(sqlite3.connect(f"{file.as_uri()}?mode=ro", uri=True)) as connection:
        return {
            table: connection.execute(f"SELECT {', '.join(names)} FROM {table}").fetchall()  # noqa: S608
            for table, names in columns.items()
        }


def _folder(path: Path) -> dict[str, bytes]:
    return {each.name: each.read_bytes() for each in path.iterdir()}


def _broken(number: int, place: int) -> list[Step]:
    """Return the steps, of which that of this number fails before the statement at this place, or at its end."""
    step = STEPS[number - 1]
    steps = list(STEPS)
    steps[number - 1] = (*step[:place], "INSERT INTO nowhere VALUES (1)", *step[place:])
    return steps


@pytest.mark.parametrize("version", EARLIER)
def test_that_every_earlier_version_comes_forward_with_all_its_rows(tmp_path: Path, version: int) -> None:
    file = _made(tmp_path, version)
    before = _rows(file, version)
    assert all(len(rows) == 1 for rows in before.values())
    with closing(open_database(file)) as database:
        assert database.rows("PRAGMA user_version") == [(len(STEPS),)]
        assert database.rows("PRAGMA integrity_check") == [("ok",)]
    assert _rows(file, version) == before
    copy = file.with_name(f"{file.name}.before-version-{len(STEPS)}")
    assert _rows(copy, version) == before


@pytest.mark.parametrize(("version", "number", "place"), BREAKS)
def test_that_a_step_that_fails_anywhere_leaves_the_file_as_it_was(
    tmp_path: Path, version: int, number: int, place: int
) -> None:
    file = _made(tmp_path, version)
    before = _folder(tmp_path)
    with pytest.raises(StoreTrouble, match=f"could not be brought to version {number} .* at version {version}: "):
        open_database(file, steps=_broken(number, place))
    after = _folder(tmp_path)
    copy = after.pop(f"{file.name}.before-version-{len(STEPS)}", None)
    if version:
        assert after == before
        assert copy is not None
    else:
        assert after in ({}, {file.name: b""})
    open_database(file).close()
    if not version:
        assert examine(file).faults == ()


@pytest.mark.parametrize("version", GROWING)
def test_that_a_disk_too_full_for_a_step_leaves_the_file_as_it_was(
    tmp_path: Path, version: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = _made(tmp_path, version)
    before = _folder(tmp_path)
    connect = sqlite3.connect

    def on_a_full_disk(*arguments: object, **options: object) -> sqlite3.Connection:
        connection = connect(*arguments, **options)
        if "mode=rwc" in str(arguments[0]):
            ((pages,),) = connection.execute("PRAGMA page_count")
            connection.execute(f"PRAGMA max_page_count = {pages}")
        return connection

    with monkeypatch.context() as patched:
        patched.setattr(sqlite3, "connect", on_a_full_disk)
        with pytest.raises(StoreFull, match=r"^The disk of .* is full; make room on it, nothing was half written\.$"):
            open_database(file)
    after = _folder(tmp_path)
    after.pop(f"{file.name}.before-version-{len(STEPS)}")
    assert after == before
    open_database(file).close()
