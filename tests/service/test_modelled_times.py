"""The modelled times of a finishing record: from the room that was read, with a range, and silent where it was not."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service.modelled_times import modelled_times
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


def test_that_nothing_is_told_of_paint_nor_of_what_no_one_read(shelf: SheetShelf) -> None:
    assert told(shelf, room(24, 50.0), PAINT) is None
    assert told(shelf, [], GLOSS) is None
    assert told(shelf, room(0.25, 50.0), GLOSS) is None  # no stage was reached while it was read
    missing = Coat(key="gone", sheet="no-such-sheet", laid_ms=LAID_MS)
    assert told(shelf, room(24, 50.0), missing) is None


def test_that_the_record_has_them_beside_the_coat_they_are_of(shelf: SheetShelf) -> None:
    kiln = piece(PAINT, GLOSS)
    modelled = modelled_times(kiln, shelf, LogInMemory(readings=room(24, 50.0)))
    paint, gloss = finishing_record(kiln, shelf.sheets, lambda *_: None, modelled=modelled).coats
    assert paint.modelled is None
    assert gloss.modelled == modelled(2)
    assert gloss.modelled is not None
