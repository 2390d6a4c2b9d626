"""What was learnt is kept by coat, and comes to files of the first version as an empty table."""

from __future__ import annotations

import itertools
import sqlite3
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.store.database import Database, open_database
from studiowatch.store.migrations import STEPS
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import LearntRecord
from studiowatch.studio.pieces import Coat, Piece

PIECE = Piece(
    key="p1",
    title="Kiln Light",
    width_cm=40.0,
    height_cm=30.0,
    coats=(Coat(key="c1", sheet="gloss", laid_ms=1_000), Coat(key="c2", sheet="gloss", laid_ms=2_000)),
)
LEARNT = LearntRecord(
    coat_key="c1",
    sheet="gloss",
    sheet_hash="0123456789ab",
    laid_ms=1_000,
    tests=3,
    rows=({"sheet_time_factor": 0.7, "humidity_offset_pct": -1e-17, "value": 1.25}, {"value": -0.5}),
)


@pytest.fixture
def records(database: Database) -> RecordsStore:
    store = RecordsStore(database, itertools.count(1_000).__next__)
    store.save_piece(PIECE)
    return store


def test_that_what_was_learnt_comes_back_exactly_in_the_order_of_laying(records: RecordsStore) -> None:
    second = replace(LEARNT, coat_key="c2", laid_ms=2_000, rows=())
    records.save_learnt(second)
    records.save_learnt(LEARNT)
    assert records.learnt() == [LEARNT, second]


def test_that_a_correction_replaces_what_a_coat_taught(records: RecordsStore) -> None:
    records.save_learnt(LEARNT)
    records.save_learnt(replace(LEARNT, tests=1, rows=()))
    assert records.learnt() == [replace(LEARNT, tests=1, rows=())]


def test_that_it_stays_when_the_piece_changes_and_goes_with_its_coat(records: RecordsStore) -> None:
    records.save_learnt(LEARNT)
    records.save_piece(replace(PIECE, archived=True))
    assert records.learnt() == [LEARNT]
    records.save_piece(replace(PIECE, coats=PIECE.coats[1:]))
    assert records.learnt() == []


def test_that_a_coat_that_is_not_there_cannot_have_taught(records: RecordsStore) -> None:
    with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
        records.save_learnt(replace(LEARNT, coat_key="nobody"))


def test_that_what_is_no_number_is_refused(records: RecordsStore) -> None:
    with pytest.raises(ValueError, match="not JSON compliant"):
        records.save_learnt(replace(LEARNT, rows=({"value": float("nan")},)))
    assert records.learnt() == []


def test_that_a_file_of_the_first_version_gains_the_table_and_loses_nothing(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    first = open_database(file, steps=STEPS[:1])
    with first.transaction() as connection:
        connection.execute(
            "INSERT INTO piece (key, title, width_cm, height_cm, support, orientation, place, archived) "
            "VALUES ('p1', 'Kiln Light', 40, 30, 'canvas', 'face-up', 0, 0)"
        )
        connection.execute(
            "INSERT INTO coat (key, piece_key, layer, sheet, laid_ms, thinned_pct) "
            "VALUES ('c1', 'p1', 0, 'gloss', 1000, 0), ('c2', 'p1', 1, 'gloss', 2000, 0)"
        )
    first.close()
    database = open_database(file)
    store = RecordsStore(database, lambda: 2)
    assert store.pieces() == [PIECE]
    assert store.learnt() == []
    store.save_learnt(LEARNT)
    assert store.learnt() == [LEARNT]
    database.close()
    assert (tmp_path / f"studio.sqlite3.before-version-{len(STEPS)}").exists()
