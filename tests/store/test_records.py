"""Her records come back as they were, and what was changed is kept."""

from __future__ import annotations

import itertools
import json
import sqlite3
from dataclasses import replace
from datetime import date

import pytest

from studiowatch.coats.stages import Orientation
from studiowatch.store.database import Database, open_database
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import PromptRecord, WarningRecord
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece

LAID_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
KILN_LIGHT = Piece(
    key="p1",
    title="Kiln Light",
    width_cm=40.0,
    height_cm=30.5,
    due=date(2026, 3, 20),
    support="panel",
    orientation=Orientation.VERTICAL,
    place=1,
    coats=(
        Coat(
            key="c1",
            sheet="isolation-waterborne",
            laid_ms=LAID_MS,
            volume_mL=14.0,
            thinned_pct=5.0,
            covered_from_ms=LAID_MS + 1_200_000,
            outcome=Outcome.MILKY_IN_PATCHES,
            seen_ms=LAID_MS + 86_400_000,
            looks=(
                Look(key="l1", time_ms=LAID_MS + 3_600_000, finding=Finding.TACKY),
                Look(key="l2", time_ms=LAID_MS + 7_200_000, finding=Finding.MILKY),
            ),
        ),
        Coat(key="c2", sheet="gloss-waterborne", laid_ms=LAID_MS + 86_500_000, wet_um=90.0),
        Coat(key="c3", sheet="satin-waterborne"),
    ),
)
QUARRY = Piece(key="p2", title="Quarry", width_cm=20.0, height_cm=20.0, archived=True)
FAN = WarningRecord(
    key="w1",
    kind="air-moving",
    level=2,
    state="raised",
    headline="Air is moving over Kiln Light",
    detail="0.4 m/s",
    advice="Turn the fan off.",
    began_ms=LAID_MS,
    raised_ms=LAID_MS + 2_000,
    cleared_ms=None,
    pieces=("p1", "p2"),
)


@pytest.fixture
def records(database: Database) -> RecordsStore:
    return RecordsStore(database, itertools.count(1_000).__next__)


def test_that_pieces_come_back_by_place_with_coats_and_looks_in_order(records: RecordsStore) -> None:
    records.save_piece(KILN_LIGHT)
    records.save_piece(QUARRY)
    assert records.pieces() == [QUARRY, KILN_LIGHT]


def test_that_records_are_on_disk_when_saved(database: Database, records: RecordsStore) -> None:
    records.save_piece(KILN_LIGHT)
    records.save_warning(FAN)
    other = open_database(database.path)
    again = RecordsStore(other, lambda: 0)
    assert again.pieces() == [KILN_LIGHT]
    assert again.warnings(1) == [FAN]
    other.close()


def test_that_a_changed_piece_replaces_coats_and_looks_and_the_earlier_form_is_kept(
    database: Database,
    records: RecordsStore,
) -> None:
    first, second, third = KILN_LIGHT.coats
    changed = replace(
        KILN_LIGHT,
        title="Kiln Light II",
        due=None,
        coats=(replace(first, looks=first.looks[1:]), third, replace(second, wet_um=None, grams=12.0)),
    )
    records.save_piece(KILN_LIGHT)
    records.save_piece(changed)
    assert records.pieces() == [changed]
    ((time_ms, key, earlier),) = database.rows("SELECT time_ms, piece_key, earlier FROM correction")
    assert (time_ms, key) == (1_000, "p1")
    kept = json.loads(earlier)
    assert kept["title"] == "Kiln Light"
    assert kept["due"] == "2026-03-20"
    assert [coat["key"] for coat in kept["coats"]] == ["c1", "c2", "c3"]
    assert [look["finding"] for look in kept["coats"][0]["looks"]] == ["tacky", "still milky"]


def test_that_saving_the_same_piece_again_is_no_correction(database: Database, records: RecordsStore) -> None:
    records.save_piece(KILN_LIGHT)
    records.save_piece(KILN_LIGHT)
    assert database.rows("SELECT count(*) FROM correction") == [(0,)]


def test_that_changing_one_piece_leaves_the_others_coats(records: RecordsStore) -> None:
    quarry = replace(QUARRY, coats=(Coat(key="c9", sheet="gloss-waterborne"),))
    records.save_piece(KILN_LIGHT)
    records.save_piece(quarry)
    records.save_piece(replace(KILN_LIGHT, coats=()))
    assert records.pieces() == [quarry, replace(KILN_LIGHT, coats=())]


def test_that_a_warning_is_replaced_and_each_change_of_its_state_is_logged_once(
    database: Database,
    records: RecordsStore,
) -> None:
    cleared = replace(FAN, state="cleared", cleared_ms=LAID_MS + 60_000)
    for warning in (FAN, replace(FAN, detail="0.5 m/s"), replace(FAN, state="heard"), cleared):
        records.save_warning(warning)
    assert records.warnings(10) == [cleared]
    logged = database.rows("SELECT warning_key, time_ms, state FROM warning_state ORDER BY id")
    assert logged == [("w1", 1_000, "raised"), ("w1", 1_001, "heard"), ("w1", 1_002, "cleared")]


def test_that_the_latest_warnings_come_first_and_an_old_open_one_is_among_them(records: RecordsStore) -> None:
    records.save_warning(replace(FAN, key="old", state="heard", remind_ms=LAID_MS + 5))
    for at in range(1, 6):
        records.save_warning(replace(FAN, key=f"w{at}", state="cleared", raised_ms=FAN.raised_ms + at))
    assert [warning.key for warning in records.warnings(2)] == ["w5", "w4", "old"]
    assert records.warnings(10)[-1].remind_ms == LAID_MS + 5


def test_that_prompts_not_done_come_soonest_first(records: RecordsStore) -> None:
    records.save_piece(KILN_LIGHT)
    later = PromptRecord(key="a", coat_key="c1", due_ms=LAID_MS + 900_000, text="Look at it from the side.")
    sooner = PromptRecord(key="b", coat_key="c1", due_ms=LAID_MS + 60_000, text="Second pass.")
    records.save_prompt(later)
    records.save_prompt(sooner)
    assert records.prompts() == [sooner, later]
    records.save_prompt(replace(sooner, done_ms=LAID_MS + 70_000))
    assert records.prompts() == [later]


def test_that_prompts_stay_when_their_piece_is_changed_and_go_with_their_coat(records: RecordsStore) -> None:
    prompt = PromptRecord(key="a", coat_key="c1", due_ms=LAID_MS, text="Second pass.")
    records.save_piece(KILN_LIGHT)
    records.save_prompt(prompt)
    records.save_piece(replace(KILN_LIGHT, title="Other"))
    assert records.prompts() == [prompt]
    records.save_piece(replace(KILN_LIGHT, coats=KILN_LIGHT.coats[1:]))
    assert records.prompts() == []


def test_that_pieces_that_change_together_are_saved_all_or_none(records: RecordsStore) -> None:
    records.save_pieces((KILN_LIGHT, QUARRY))
    nameless = replace(QUARRY, title=None)
    with pytest.raises(sqlite3.IntegrityError, match=r"NOT NULL constraint failed: piece\.title"):
        records.save_pieces((replace(KILN_LIGHT, place=7), nameless))
    assert records.pieces() == [QUARRY, KILN_LIGHT]


def test_that_a_prompt_that_applies_no_longer_is_dropped_but_not_one_that_was_ticked(records: RecordsStore) -> None:
    records.save_piece(KILN_LIGHT)
    for key, done_ms in (("a", None), ("b", LAID_MS)):
        records.save_prompt(PromptRecord(key=key, coat_key="c1", due_ms=LAID_MS, text="Look.", done_ms=done_ms))
        records.drop_prompt(key)
    assert records.prompts() == []
    assert records.done_prompts() == {"b"}


def test_that_a_prompt_of_no_coat_is_a_loud_mistake(records: RecordsStore) -> None:
    with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
        records.save_prompt(PromptRecord(key="a", coat_key="nowhere", due_ms=0, text=""))


def test_that_facts_about_the_log_are_kept(database: Database, records: RecordsStore) -> None:
    records.note(LAID_MS, "clock-step", "The clock was set back by 3600 s.")
    assert database.rows("SELECT time_ms, kind, text FROM note") == [
        (LAID_MS, "clock-step", "The clock was set back by 3600 s."),
    ]
