"""A piece's view that is kept says what one made afresh would say, and is made anew where anything of it changed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from studiowatch.physics.air import Air
from studiowatch.service.kept_views import MINUTE_MS, KeptViews
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import piece_views
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import METRIC, US, choose
from studiowatch.studio.pieces import Coat, Piece

from .rooms import START_MS

STEP_MS = 1_000  # a snapshot a second, as the watch gives them
FILMS_MS = 5_000  # between two steps of a wet film
ROOMS = (Air(temperature_C=20.0, humidity_pct=52.0, air_speed_m_s=0.05), Air(temperature_C=17.0, humidity_pct=80.0))
HOUR_MS = 3_600_000


def day(time_ms: int) -> date:
    return datetime.fromtimestamp(time_ms / 1000, UTC).date()


def rack_of_three() -> Rack:
    """Return a rack with a wet coat over paint, resting paint, and a coat that is still to be laid."""
    pieces = (
        Piece(
            key="wet",
            title="Low Tide",
            width_cm=40,
            height_cm=40,
            coats=(
                Coat(key="paint", sheet="paint-brushed", laid_ms=START_MS - 60 * HOUR_MS),
                Coat(key="gloss", sheet="gloss-waterborne", laid_ms=START_MS, volume_mL=12.8),
            ),
        ),
        Piece(
            key="rest",
            title="Kiln",
            width_cm=30,
            height_cm=30,
            place=1,
            coats=(Coat(key="old", sheet="paint-brushed", laid_ms=START_MS - 90 * HOUR_MS),),
        ),
        Piece(
            key="new",
            title="Pool",
            width_cm=20,
            height_cm=20,
            place=2,
            coats=(Coat(key="n", sheet="gloss-waterborne"),),
        ),
    )
    rack = Rack(shelf=SheetShelf.open(), records=MemoryRecords(held={one.key: one for one in pieces}), log=NoLog())
    rack.open(START_MS)
    return rack


def seconds(rack: Rack, until_s: int, air: Air) -> Iterator[int]:
    """Yield each second's UTC ms, with the films dried up to it where it is their turn."""
    for now_ms in range(START_MS + STEP_MS, START_MS + until_s * 1000, STEP_MS):
        if (now_ms - START_MS) % FILMS_MS == 0:
            rack.advance(air, now_ms)
        yield now_ms


@pytest.mark.parametrize("air", ROOMS, ids=["good", "damp"])
def test_that_kept_views_say_what_views_made_afresh_say(air: Air) -> None:
    rack, kept = rack_of_three(), KeptViews()
    for now_ms in seconds(rack, 240, air):
        assert kept.views(rack, day, now_ms) == piece_views(rack, day, now_ms)


def test_that_a_view_is_made_anew_only_where_something_moved() -> None:
    rack, kept = rack_of_three(), KeptViews()
    made: dict[str, list[object]] = {"wet": [], "rest": [], "new": []}
    for now_ms in seconds(rack, 120, ROOMS[0]):
        for view in kept.views(rack, day, now_ms):
            if not made[view.key] or made[view.key][-1] is not view:
                made[view.key].append(view)
    minutes = 120_000 // MINUTE_MS
    assert len(made["new"]) <= minutes + 1
    assert len(made["rest"]) < len(made["wet"]) <= 120_000 // FILMS_MS + minutes + 1


def test_that_a_piece_that_changed_or_other_units_are_seen_at_once() -> None:
    rack, kept = rack_of_three(), KeptViews()
    before = kept.views(rack, day, START_MS)
    assert all(one is other for one, other in zip(before, kept.views(rack, day, START_MS), strict=True))
    rack.pieces["new"] = replace(rack.pieces["new"], title="Deep Pool")
    assert [view.title for view in kept.views(rack, day, START_MS)] == ["Low Tide", "Kiln", "Deep Pool"]
    choose(US)
    assert all(one is not other for one, other in zip(before, kept.views(rack, day, START_MS), strict=True))
    choose(METRIC)


def test_that_forgetting_makes_all_anew() -> None:
    rack, kept = rack_of_three(), KeptViews()
    before = kept.views(rack, day, START_MS)
    kept.forget()
    now = kept.views(rack, day, START_MS)
    assert now == before
    assert all(one is not other for one, other in zip(before, now, strict=True))
