"""What the room's days foretell: a limit passed, and when the room is fit; its last hour while it is new."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, pi

import numpy as np
import pytest

from studiowatch.room.outlook import FITTED_DAYS
from studiowatch.room.passing import lasting_passing, passing
from studiowatch.room.readings import Reading
from studiowatch.service.replaying import NoLog
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.room_foretold import RoomForetold
from studiowatch.studio.concern import AirNow
from studiowatch.studio.heading import Figure
from studiowatch.studio.waiting import Need, Quantity

NOW_MS = 1_772_460_000_000
MINUTE_MS, HOUR_MS, DAY_MS = 60_000, 3_600_000, 86_400_000


def humidity_pct(time_ms: int) -> float:
    """Return the humidity of a room that is dampest six hours after NOW_MS, 70 %; 60 % at NOW_MS."""
    return 60.0 + 10.0 * cos(2.0 * pi * (time_ms - NOW_MS - 6 * HOUR_MS) / DAY_MS)


class Rounds(NoLog):
    """A log of such a room."""

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        return [
            Reading(time_ms=time_ms, temperature_C=20.0, humidity_pct=humidity_pct(time_ms), air_speed_m_s=0.05)
            for time_ms in range(start_ms, end_ms, MINUTE_MS)
        ]


def foretold_at(now_ms: int, log: NoLog) -> RoomForetold:
    room = RoomAhead(log=log)
    foretold = RoomForetold(room=room)
    air = AirNow(temperature_C=20.0, humidity_pct=humidity_pct(now_ms), dew_point_C=12.0)
    for look in range(FITTED_DAYS + 1):
        room.look(air, now_ms + look)
    foretold.take(air, now_ms)
    return foretold


def test_that_draws_pass_when_their_lines_do_and_what_lies_behind_counts_no_more() -> None:
    draws = np.array([[0.0, 1.0, 2.0, 3.0, 4.0], [0.0, 0.0, 0.0, 0.0, 0.0], [0.0, 2.0, 4.0, 6.0, 8.0]])
    told = passing(draws, 0.0, 2.0, 3.0)
    assert told.after_h.tolist() == pytest.approx([2.0, np.inf, 1.0])
    assert told.chance == pytest.approx(2 / 3)
    assert passing(draws, 1.0, 2.0, 3.0).after_h.tolist() == pytest.approx([2.0, np.inf, 1.0])
    assert passing(-draws, 0.0, -2.0, 3.0).after_h.tolist() == pytest.approx([2.0, np.inf, 1.0])
    assert passing(draws, 0.0, -2.0, 3.0).chance == 0.0


def test_that_a_limit_passed_for_a_moment_does_not_last() -> None:
    draws = np.array([[0.0, 1.0, 0.0, 0.0, 0.0, 0.0], [0.0, 1.0, 1.0, 1.0, 1.0, 1.0]])
    assert lasting_passing(draws, 0.0, 1.0, 3.0, 0.5).after_h.tolist() == pytest.approx([np.inf, 1.0])


@pytest.mark.parametrize(("limit_pct", "after_h"), [(65.0, 2.0), (62.6, 1.0)])
def test_that_a_limit_that_each_evening_passes_is_foretold_with_its_time(limit_pct: float, after_h: float) -> None:
    # sin(2 pi 2 h / 24 h) = 1/2, and of 1 h 0.259: the room passes 65 % after two hours, 62.6 % after one
    crossing = foretold_at(NOW_MS, Rounds()).until(Figure.HUMIDITY, limit_pct - 60.0, said_before=False)
    assert crossing is not None
    assert crossing.by_days
    assert crossing.middle_ms / HOUR_MS == pytest.approx(after_h, abs=0.35)
    assert crossing.low_ms <= crossing.middle_ms <= crossing.high_ms


def test_that_a_limit_that_no_evening_passes_or_that_lies_behind_is_not_foretold() -> None:
    foretold = foretold_at(NOW_MS, Rounds())
    assert foretold.until(Figure.HUMIDITY, 15.0, said_before=False) is None
    assert foretold.until(Figure.HUMIDITY, -5.0, said_before=False) is None


def test_that_a_room_is_said_to_be_fit_when_its_days_come_to_it() -> None:
    need = Need(quantity=Quantity.HUMIDITY, limit=55.0, is_least=False)
    guess = foretold_at(NOW_MS, Rounds()).met(need, NOW_MS)  # it falls under 55 % fourteen hours from now
    assert guess is not None
    assert (guess.time_ms - NOW_MS) / HOUR_MS == pytest.approx(14.0, abs=0.6)
    assert "of ten ways" in guess.basis
    never = Need(quantity=Quantity.HUMIDITY, limit=40.0, is_least=False)
    assert foretold_at(NOW_MS, Rounds()).met(never, NOW_MS) is None


def test_that_a_new_room_is_told_by_its_last_hour() -> None:
    room = RoomAhead(log=NoLog())
    foretold = RoomForetold(room=room)
    need = Need(quantity=Quantity.HUMIDITY, limit=75.0, is_least=False)
    for minute in range(62):
        air = AirNow(temperature_C=20.0, humidity_pct=85.0 - 0.1 * minute, dew_point_C=12.0)
        room.look(air, NOW_MS + minute * MINUTE_MS)
        foretold.take(air, NOW_MS + minute * MINUTE_MS)
        if minute < 20:
            assert foretold.met(need, NOW_MS + minute * MINUTE_MS) is None
    guess = foretold.met(need, NOW_MS + 61 * MINUTE_MS)  # 3.9 % at 6 % an hour
    assert guess is not None
    assert (guess.time_ms - NOW_MS) / MINUTE_MS == pytest.approx(100.0, abs=2.0)
    assert guess.basis == "the humidity is falling as it did in the last hour"
