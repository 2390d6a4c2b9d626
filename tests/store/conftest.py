"""An open database in a folder of its own, and what is written through it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from studiowatch.store.database import Database, open_database
from studiowatch.store.readings import ReadingsStore


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    opened = open_database(tmp_path / "studio.sqlite3")
    yield opened
    assert opened.rows("PRAGMA integrity_check") == [("ok",)]
    assert opened.rows("PRAGMA foreign_key_check") == []
    opened.close()


@pytest.fixture
def readings_store(database: Database) -> ReadingsStore:
    return ReadingsStore(database)
