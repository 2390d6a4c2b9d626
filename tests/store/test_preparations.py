"""Preparations, and what was told of prompts or put off, come back exactly, here and through a studio file."""

from __future__ import annotations

import itertools
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.store.all_records import StudioConflict, read_all, take_all
from studiowatch.store.database import Database, open_database
from studiowatch.store.preparations import preparation_fault, preparation_of, record_of
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import PreparationRecord, PromptRecord, TellingRecord
from studiowatch.store.studio_file import read_studio, write_studio
from studiowatch.studio.chores import Task
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.preparation import CoatToLay, Preparation, Tick

NOON_MS = 1_772_452_800_000
PIECE = Piece(
    key="p1", title="Kiln Light", width_cm=40.0, height_cm=30.0, coats=(Coat(key="c1", sheet="gloss", laid_ms=NOON_MS),)
)
PROMPT = PromptRecord(key="c1:bubbles", coat_key="c1", due_ms=NOON_MS, text="Second pass")
PREPARATION = Preparation(
    key="prep",
    began_ms=NOON_MS,
    coats=(CoatToLay(piece_key="p1", sheet="gloss", volume_mL=14.25), CoatToLay(piece_key="p2", sheet="gloss")),
    torch=True,
    ticks=(Tick(task=Task.BOTTLE, time_ms=NOON_MS + 1, told=True), Tick(task=Task.WIPE, time_ms=NOON_MS + 2)),
)
_TEXT = st.text(min_size=1, max_size=8)
_TIMES = st.integers(min_value=0, max_value=7_000_000_000_000)
_AMOUNTS = st.none() | st.floats(min_value=0, max_value=5_000)


@pytest.fixture
def records(database: Database) -> RecordsStore:
    store = RecordsStore(database, itertools.count(1_000).__next__)
    store.save_piece(PIECE)
    store.save_prompt(PROMPT)
    return store


@given(
    st.builds(
        Preparation,
        key=_TEXT,
        began_ms=_TIMES,
        ended_ms=st.none() | _TIMES,
        coats=st.lists(
            st.builds(CoatToLay, piece_key=_TEXT, sheet=_TEXT, volume_mL=_AMOUNTS, grams=_AMOUNTS), min_size=1
        ).map(tuple),
        ticks=st.lists(st.builds(Tick, task=st.sampled_from(Task), time_ms=_TIMES, told=st.booleans())).map(tuple),
        solvent=st.booleans(),
        torch=st.booleans(),
    )
)
def test_that_any_preparation_comes_back_from_its_record(preparation: Preparation) -> None:
    record = record_of(preparation)
    assert preparation_of(record) == preparation
    assert preparation_fault(record) == ""


def test_that_the_open_ones_come_back_and_an_ended_one_stays_in_the_file(records: RecordsStore) -> None:
    records.save_preparation(PREPARATION)
    assert records.preparations() == [PREPARATION]
    records.save_preparation(replace(PREPARATION, ended_ms=NOON_MS + 5))
    assert records.preparations() == []


def test_that_a_telling_goes_with_its_prompt_and_is_not_kept_of_one_that_is_gone(records: RecordsStore) -> None:
    told = TellingRecord(key=PROMPT.key, told_ms=NOON_MS)
    records.save_telling(told)
    records.save_telling(TellingRecord(key="c9:cover", told_ms=NOON_MS))
    assert records.tellings() == [told]
    records.save_telling(replace(told, told_ms=None, snoozed_ms=NOON_MS + 1))
    assert records.tellings() == [TellingRecord(key=PROMPT.key, snoozed_ms=NOON_MS + 1)]
    records.drop_prompt(PROMPT.key)
    assert records.tellings() == []


def test_that_both_go_out_and_in_through_a_studio_file(
    records: RecordsStore, database: Database, tmp_path: Path
) -> None:
    records.save_preparation(PREPARATION)
    records.save_telling(TellingRecord(key=PROMPT.key, told_ms=NOON_MS, snoozed_ms=NOON_MS + 1))
    out = read_all(database, "here")
    text = write_studio(out.pieces, out.rows)
    other = open_database(tmp_path / "other.sqlite3")
    take_all(other, read_studio(text, "there"), lambda: NOON_MS, replace=False)
    again = read_all(other, "there")
    other.close()
    assert (again.pieces, again.rows) == (out.pieces, out.rows)


@pytest.mark.parametrize(
    "state",
    [
        "not json",
        "[]",
        '{"coats": [], "ticks": []}',
        '{"coats": [{"piece_key": 3, "sheet": "gloss"}], "ticks": []}',
        '{"coats": [{"piece_key": "p", "sheet": "gloss", "volume_mL": NaN}], "ticks": []}',
        '{"coats": [{"piece_key": "p", "sheet": "gloss"}], "ticks": [{"task": "juggle", "time_ms": 3}]}',
        '{"coats": [{"piece_key": "p", "sheet": "gloss"}], "ticks": [{"task": "wipe", "time_ms": "3"}]}',
        '{"coats": [{"piece_key": "p", "sheet": "gloss"}], "ticks": [], "torch": "yes"}',
    ],
)
def test_that_a_preparation_of_a_file_that_cannot_be_one_is_named_and_nothing_is_taken(
    database: Database, records: RecordsStore, state: str
) -> None:
    record = PreparationRecord(key="prep", began_ms=NOON_MS, ended_ms=None, state=state)
    assert preparation_fault(record).startswith("preparation prep cannot be one (")
    studio = replace(read_all(database, "here"), rows=(record,))
    with pytest.raises(StudioConflict, match="preparation prep cannot be one"):
        take_all(database, studio, lambda: NOON_MS, replace=True)
    assert records.preparations() == []
