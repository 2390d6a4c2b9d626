"""The modelled times of a finishing record: from the room that was read, with a range, and silent where it was not."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service.finishing_sheets import record_by_log
from studiowatch.service.modelled_times import modelled_times
from studiowatch.service.record_page import page
from studiowatch.service.review_log import LogInMemory
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.finishing_record import finishing_record
from studiowatch.studio.modelled import Modelled
from studiowatch.studio.pieces import Coat, Piece

LAID_MS = 1_772_442_000_000  # 2 March 2026, 09:00 UTC
HOUR_MS = 3_600_000
PAINT = Coat(key="paint", sheet="paint-brushed", laid_ms=LAID_MS - 720 * HOUR_MS)
GLOSS = Coat(key="gloss", sheet="gloss-waterborne", laid_ms=LAID_MS)


@pytest.fixture
def shelf(tmp_path: Path) -> SheetShelf:
    return SheetShelf.open(tmp_path)


def piece(*coats: Coat) -> Piece:
    return Piece(key="kiln", title="Kiln Light", width_cm=40.0, height_cm=60.0, support="canvas", coats=coats)


def room(hours: float, humidity_pct: float) -> list[Reading]:
    """Return an hour of readings before the laying and `hours` after it, one a minute."""
    return [
        Reading(time_ms=time_ms, temperature_C=23.0, humidity_pct=humidity_pct, air_speed_m_s=0.05)
        for time_ms in range(LAID_MS - HOUR_MS, LAID_MS + round(hours * HOUR_MS), 60_000)
    ]


def told(shelf: SheetShelf, readings: Sequence[Reading], *coats: Coat) -> Modelled | None:
    return modelled_times(piece(*coats), shelf, LogInMemory(readings=readings))(len(coats))


def told_first(shelf: SheetShelf, hours: float, *coats: Coat) -> Modelled:
    modelled = modelled_times(piece(*coats), shelf, LogInMemory(readings=room(hours, 50.0)))(1)
    assert modelled is not None
    return modelled


def test_that_a_damp_room_takes_longer_and_the_next_coat_waits_for_the_sheet(shelf: SheetShelf) -> None:
    dry, damp = (told(shelf, room(24, humidity_pct), GLOSS) for humidity_pct in (50.0, 75.0))
    for modelled in (dry, damp):
        assert modelled is not None
        assert modelled.clear is not None
        assert modelled.recoat is not None
        assert LAID_MS < modelled.clear.earliest_ms < modelled.clear.middle_ms < modelled.clear.latest_ms
        assert LAID_MS < modelled.recoat.earliest_ms < modelled.recoat.middle_ms < modelled.recoat.latest_ms
        wait_ms = round(shelf.get("gloss-waterborne").recoat_h * HOUR_MS)
        assert modelled.ready_ms == max(modelled.recoat.latest_ms, LAID_MS + wait_ms)
    assert dry is not None
    assert damp is not None
    assert dry.clear is not None
    assert damp.clear is not None
    assert dry.clear.middle_ms < damp.clear.middle_ms


@pytest.mark.parametrize("above_laid_ms", [None, LAID_MS + 40 * HOUR_MS])
def test_that_a_solvent_borne_coat_was_told_to_wait_until_the_one_below_is_dry_through(
    shelf: SheetShelf, above_laid_ms: int | None
) -> None:
    above = Coat(key="satin", sheet="satin-solventborne", laid_ms=above_laid_ms)
    alone, below = (told_first(shelf, 47, *coats) for coats in ((GLOSS,), (GLOSS, above)))
    assert alone.recoat == below.recoat
    assert alone.ready_ms is not None
    assert below.ready_ms is not None
    between_h = (alone.ready_ms + below.ready_ms - 2 * LAID_MS) / 2 / HOUR_MS
    assert alone.ready_ms < LAID_MS + between_h * HOUR_MS < below.ready_ms
    assert told_first(shelf, between_h, GLOSS).ready_ms == alone.ready_ms
    assert told_first(shelf, between_h, GLOSS, above).ready_ms is None  # not dry through while it was read


def test_that_nothing_is_told_of_paint_nor_of_what_no_one_read(shelf: SheetShelf) -> None:
    assert told(shelf, room(24, 50.0), PAINT) is None
    assert told(shelf, [], GLOSS) is None
    short = told(shelf, room(0.25, 50.0), GLOSS)  # no stage was reached while it was read
    assert short is not None
    assert not short.has_times
    assert told(shelf, room(0, 50.0), GLOSS) is None  # read before its laying only
    missing = Coat(key="gone", sheet="no-such-sheet", laid_ms=LAID_MS)
    assert told(shelf, room(24, 50.0), missing) is None


def test_that_the_record_has_them_beside_the_coat_they_are_of(shelf: SheetShelf) -> None:
    kiln = piece(PAINT, GLOSS)
    modelled = modelled_times(kiln, shelf, LogInMemory(readings=room(24, 50.0)))
    paint, gloss = finishing_record(kiln, shelf.sheets, lambda *_: None, now_ms=LAID_MS, modelled=modelled).coats
    assert paint.modelled is None
    assert gloss.modelled == modelled(2)
    assert gloss.modelled is not None


def damp_room(minutes: int, fan_from: int) -> list[Reading]:
    """Return a room in which a gloss coat stays wet for hours, with a fan on from a minute after the laying."""
    return [
        Reading(
            time_ms=LAID_MS + minute * 60_000,
            temperature_C=12.0,
            humidity_pct=96.0,
            air_speed_m_s=0.35 if minute >= fan_from else 0.02,
        )
        for minute in range(-60, minutes)
    ]


def test_that_the_moving_air_over_a_coat_that_is_still_wet_is_counted_and_the_piece_is_not_finished(
    shelf: SheetShelf,
) -> None:
    # the last reading is 89 minutes after the laying, past the sheet's time to touch; the fan is on from minute 70
    assert shelf.get("gloss-waterborne").touch_dry_min < 70
    log = LogInMemory(readings=damp_room(90, fan_from=70))
    record = record_by_log(piece(PAINT, GLOSS), shelf, log, now_ms=LAID_MS + 90 * 60_000, with_notes=True)
    gloss = record.coats[1]
    assert gloss.modelled is not None
    assert gloss.modelled.set_ms is None
    assert gloss.room is not None
    assert (gloss.room.moving_min, gloss.room.read_min) == (89 - 70, 89)
    head = page(record).partition("<h2>")[0]
    assert "this piece is not finished. Coat 2, gloss, is still wet." in head


def test_that_a_coat_that_set_while_it_was_read_is_wet_until_then(shelf: SheetShelf) -> None:
    log = LogInMemory(readings=room(24, 75.0))
    record = record_by_log(piece(PAINT, GLOSS), shelf, log, now_ms=LAID_MS + 24 * HOUR_MS, with_notes=True)
    gloss = record.coats[1]
    assert gloss.modelled is not None
    assert gloss.modelled.set_ms is not None
    assert gloss.room is not None
    sheet_ms = round(shelf.get("gloss-waterborne").touch_dry_min * 60_000)
    wet_ms = max(gloss.modelled.set_ms - LAID_MS, sheet_ms)
    assert gloss.room.whole_min == -(-wet_ms // 60_000)
    assert record.unfinished is None
    assert "not finished" not in page(record)
