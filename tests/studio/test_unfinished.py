"""How long a coat of a finishing record counts as wet, and what makes the piece unfinished."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.service.record_page import page
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.finishing_record import FinishingRecord, finishing_record
from studiowatch.studio.modelled import Modelled
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece
from studiowatch.studio.unfinished import Unfinished

LAID_MS = 1_772_442_000_000  # 2 March 2026, 09:00 UTC
MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
GLOSS = Coat(key="gloss", sheet="gloss-waterborne", laid_ms=LAID_MS)
PLANNED = Coat(key="second", sheet="gloss-waterborne")
KILN = Piece(key="kiln", title="Kiln Light", width_cm=40.0, height_cm=60.0, coats=(GLOSS,))
SET_LATE = Modelled(set_ms=LAID_MS + 3 * HOUR_MS, read_ms=LAID_MS + 9 * HOUR_MS)
SET_EARLY = Modelled(set_ms=LAID_MS + MINUTE_MS, read_ms=LAID_MS + 9 * HOUR_MS)
UNSET = Modelled(read_ms=LAID_MS + 5 * HOUR_MS)
TOUCH_MS = 30 * MINUTE_MS  # what the sheet of these tests says


@pytest.fixture
def shelf(tmp_path: Path) -> SheetShelf:
    return SheetShelf.open(tmp_path)


def made(
    shelf: SheetShelf, piece: Piece, modelled: Modelled | None, now_ms: int, asked: list[tuple[int, int]] | None = None
) -> FinishingRecord:
    sheets = {name: replace(sheet, touch_dry_min=TOUCH_MS / MINUTE_MS) for name, sheet in shelf.sheets.items()}

    def room(start_ms: int, end_ms: int) -> None:
        if asked is not None:
            asked.append((start_ms, end_ms))

    return finishing_record(piece, sheets, room, now_ms=now_ms, modelled=lambda _: modelled)


@pytest.mark.parametrize(
    ("modelled", "wet_ms"),
    [(None, TOUCH_MS), (SET_LATE, 3 * HOUR_MS), (SET_EARLY, TOUCH_MS), (UNSET, 5 * HOUR_MS)],
    ids=["no-model", "set-after-the-sheet", "set-before-the-sheet", "not-set"],
)
def test_that_the_room_while_wet_runs_until_the_coat_was_set(
    shelf: SheetShelf, modelled: Modelled | None, wet_ms: int
) -> None:
    asked: list[tuple[int, int]] = []
    made(shelf, KILN, modelled, LAID_MS + 9 * HOUR_MS, asked)
    assert asked == [(LAID_MS, LAID_MS + wet_ms)]


def test_that_a_top_coat_is_wet_as_of_the_last_reading_while_it_is_not_set(shelf: SheetShelf) -> None:
    told = made(shelf, KILN, UNSET, LAID_MS + 7 * HOUR_MS).unfinished
    assert told == Unfinished(as_of_ms=LAID_MS + 5 * HOUR_MS, is_wet=True, to_come=0)
    assert made(shelf, KILN, UNSET, LAID_MS + 48 * HOUR_MS).unfinished is None  # two days on, nobody knows


def test_that_a_coat_without_a_model_is_wet_by_its_sheet(shelf: SheetShelf) -> None:
    now_ms = LAID_MS + TOUCH_MS - 1
    assert made(shelf, KILN, None, now_ms).unfinished == Unfinished(as_of_ms=now_ms, is_wet=True, to_come=0)
    assert made(shelf, KILN, None, now_ms + 1).unfinished is None


@pytest.mark.parametrize(
    "seen",
    [
        replace(GLOSS, looks=(Look(key="look", time_ms=LAID_MS + HOUR_MS, finding=Finding.DRY),)),
        replace(GLOSS, outcome=Outcome.CLEAR),
    ],
    ids=["tested-dry", "came-out"],
)
def test_that_a_coat_that_she_found_dry_is_not_called_wet(shelf: SheetShelf, seen: Coat) -> None:
    assert made(shelf, replace(KILN, coats=(seen,)), UNSET, LAID_MS + 7 * HOUR_MS).unfinished is None


def test_that_coats_still_to_come_leave_a_piece_unfinished_while_it_is_on_the_rack(shelf: SheetShelf) -> None:
    now_ms = LAID_MS + 9 * HOUR_MS
    piece = replace(KILN, coats=(GLOSS, PLANNED))
    record = made(shelf, piece, SET_LATE, now_ms)
    assert record.unfinished == Unfinished(as_of_ms=now_ms, is_wet=False, to_come=1)
    head = page(record).partition("<h2>")[0]
    assert "this piece is not finished. A coat is still to come.</strong>" in head
    assert made(shelf, replace(piece, archived=True), SET_LATE, now_ms).unfinished is None
    two = replace(KILN, coats=(GLOSS, PLANNED, replace(PLANNED, key="third")))
    assert "is still wet. 2 coats are still to come." in page(made(shelf, two, UNSET, LAID_MS + 6 * HOUR_MS))
