"""The time behind, out of the records."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.service.past import StudioHistory
from studiowatch.store.corrected_history import CorrectedHistory
from studiowatch.store.database import Database
from studiowatch.store.past import PastReader
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import PromptRecord, WarningRecord
from studiowatch.studio.pieces import Coat, Outcome, Piece

DAY_MS = 86_400_000
NOW_MS = 1_795_000_000_000
COATS = (
    Coat(key="c1", sheet="gloss-waterborne", laid_ms=NOW_MS, outcome=Outcome.POWDERY, seen_ms=NOW_MS + DAY_MS),
    Coat(key="c2", sheet="gloss-waterborne", laid_ms=NOW_MS + DAY_MS),
    Coat(key="c3", sheet="matt-waterborne"),
)
PIECE = Piece(key="p", title="Kiln Light", width_cm=40, height_cm=40, coats=COATS)


def warning(number: int) -> WarningRecord:
    return WarningRecord(
        key=f"w{number}",
        kind="damp",
        level=2,
        state="cleared",
        headline="Too damp",
        detail="",
        advice="",
        began_ms=NOW_MS + number,
        raised_ms=NOW_MS + number,
        cleared_ms=NOW_MS + number + 1,
        pieces=("Kiln Light",),
    )


class Studio:
    """The records and their reader, with a clock of their own."""

    def __init__(self, database: Database) -> None:
        self.now_ms = NOW_MS
        self.records = RecordsStore(database, lambda: self.now_ms)
        self.reader = PastReader(database)


@pytest.fixture
def studio(database: Database) -> Studio:
    made = Studio(database)
    made.records.save_piece(PIECE)
    return made


def test_that_a_piece_is_past_once_it_left_the_rack_and_when_is_known(studio: Studio) -> None:
    assert studio.reader.read().pieces == ()
    studio.now_ms = NOW_MS + 9 * DAY_MS
    studio.records.save_piece(replace(PIECE, archived=True))
    (piece,) = studio.reader.read().pieces
    assert (piece.key, piece.title, piece.left_ms) == ("p", "Kiln Light", NOW_MS + 9 * DAY_MS)
    assert [(coat.key, coat.laid_ms, coat.outcome) for coat in piece.coats] == [
        ("c1", NOW_MS, "powdery"),
        ("c2", NOW_MS + DAY_MS, None),
        ("c3", None, None),
    ]


def test_that_all_warnings_are_there_in_the_order_in_which_they_began(studio: Studio) -> None:
    for number in reversed(range(120)):
        studio.records.save_warning(warning(number))
    past = studio.reader.read()
    assert [one.began_ms - NOW_MS for one in past.warnings] == list(range(120))
    assert past.warnings[0].pieces == ("Kiln Light",)


def test_that_prompts_are_there_with_when_they_were_done(studio: Studio) -> None:
    studio.records.save_prompt(
        PromptRecord(key="a", coat_key="c1", due_ms=NOW_MS + 5, text="Scrape", done_ms=NOW_MS + 9)
    )
    studio.records.save_prompt(PromptRecord(key="b", coat_key="c1", due_ms=NOW_MS + 7, text="Look"))
    assert [(one.piece_key, one.text, one.done_ms) for one in studio.reader.read().prompts] == [
        ("p", "Look", None),
        ("p", "Scrape", NOW_MS + 9),
    ]


def test_that_it_is_read_again_only_when_something_changed(studio: Studio) -> None:
    prompt = PromptRecord(key="a", coat_key="c1", due_ms=NOW_MS + 5, text="Scrape")
    changes = [
        lambda: studio.records.save_warning(warning(1)),
        lambda: studio.records.save_warning(replace(warning(1), state="heard")),
        lambda: studio.records.save_prompt(prompt),
        lambda: studio.records.save_prompt(replace(prompt, done_ms=NOW_MS + 6)),
        lambda: studio.records.drop_prompt("b"),
        lambda: studio.records.save_piece(replace(PIECE, archived=True)),
    ]
    for number, change in enumerate(changes):
        before = studio.reader.read()
        assert studio.reader.read() is before
        change()
        assert (studio.reader.read() is before) == (number == 4), number  # dropping what is not there changes nothing


def test_that_coats_get_their_names_and_their_sheets_time_to_touch(studio: Studio, database: Database) -> None:
    studio.now_ms = NOW_MS + 9 * DAY_MS
    studio.records.save_piece(replace(PIECE, archived=True))
    recorded = CorrectedHistory(Path(database.path))
    history = StudioHistory(recorded)
    (piece,) = history.past().pieces
    assert history.past() is history.past()
    history.close()
    assert [(coat.label, coat.end_ms) for coat in piece.coats] == [
        ("gloss 1", NOW_MS + DAY_MS),
        ("gloss 2", NOW_MS + 9 * DAY_MS),
    ]
    dry_ms = piece.coats[0].touch_dry_ms
    assert dry_ms is not None
    assert NOW_MS < dry_ms < NOW_MS + DAY_MS
