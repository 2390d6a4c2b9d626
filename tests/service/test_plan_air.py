"""The air ahead of coats to come: the room's outlook from their laying on, and its mean beyond."""

from __future__ import annotations

import numpy as np
import pytest

from studiowatch.coats.stages import Orientation
from studiowatch.physics.air import Air, AirDraws
from studiowatch.room.outlook import Outlook
from studiowatch.service.film_waits import AHEAD_S, FilmWaits
from studiowatch.service.plan_air import SLOT_MS, PlanAir, foretold_by
from studiowatch.service.replaying import NoLog
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.sheet_shelf import built_in_sheets

NOW_MS = 1_772_460_000_000
HOUR_MS = 3_600_000
GLOSS = built_in_sheets()["gloss-waterborne"]
AIR = Air(temperature_C=20.0, humidity_pct=50.0)


def night_and_day(damp_pct: float = 90.0) -> PlanAir:
    """Return a room that is dry for twelve hours from now, damp for the next twelve, and so on, for 96 h."""
    hours = np.arange(97)
    humidity_pct = np.where(hours % 24 < 12, 50.0, damp_pct)
    shape = (64, 1)
    told = Outlook(
        temperature_C=np.full((64, 97), 20.0),
        humidity_pct=np.tile(humidity_pct, shape),
        air_speed_m_s=np.full((64, 97), 0.05),
    )
    return PlanAir(outlook=told, made_ms=NOW_MS, pressure_Pa=101325.0)


@pytest.mark.parametrize("after_h", [0, 13, 95, 500])
def test_that_the_spans_cover_what_was_asked(after_h: int) -> None:
    spans = night_and_day()(NOW_MS + after_h * HOUR_MS, AHEAD_S)
    assert sum(span_s for _, span_s in spans) == pytest.approx(AHEAD_S)


def test_that_layings_of_one_slot_share_their_air_and_those_beyond_it_meet_its_mean() -> None:
    ahead = night_and_day()
    assert ahead(NOW_MS, AHEAD_S) is ahead(NOW_MS + SLOT_MS - 1, AHEAD_S)
    ((air, _),) = ahead(NOW_MS + 500 * HOUR_MS, AHEAD_S)
    assert isinstance(air, AirDraws)
    assert air.humidity_pct == pytest.approx(np.full(air.humidity_pct.size, 70.0), abs=2.0)  # half the time each


def test_that_a_coat_laid_before_the_damp_night_waits_longer_than_one_of_the_morning() -> None:
    waits = FilmWaits(air_ahead=night_and_day())

    def next_ms(after_h: int) -> int:
        told = waits.of(
            GLOSS, side_m=0.4, orientation=Orientation.FACE_UP, through=False, lay_ms=NOW_MS + after_h * HOUR_MS
        )
        assert told is not None
        assert told.next.p50 is not None
        return told.next.p50

    assert next_ms(12) > next_ms(0) + HOUR_MS
    next_ms(13)
    assert waits.runs == 2  # the same slot


def test_that_an_unknown_room_and_a_typed_one_are_held() -> None:
    held = foretold_by(RoomAhead(log=NoLog()))(AIR)
    assert held(NOW_MS, AHEAD_S) == held(NOW_MS + 5 * HOUR_MS, AHEAD_S)
    assert not isinstance(held, PlanAir)
