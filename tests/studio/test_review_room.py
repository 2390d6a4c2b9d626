"""The room of a review: means where it was read, a straight line with growing doubt where it was not."""

from __future__ import annotations

import pytest

from studiowatch.physics.air import Air
from studiowatch.studio.otherwise import Otherwise
from studiowatch.studio.review_room import UNSEEN, Room, RoomMoment, step_ends_ms

MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS


def room(*readings: tuple[int, float, float], speed_known: bool = True, surface_C: float | None = None) -> Room:
    """Return a room of (minute, °C, %)."""
    return Room(
        moments=tuple(
            RoomMoment(
                time_ms=minute * MINUTE_MS,
                air=Air(temperature_C=temperature_C, humidity_pct=humidity_pct),
                speed_known=speed_known,
                surface_C=surface_C,
            )
            for minute, temperature_C, humidity_pct in readings
        )
    )


def test_that_a_step_holds_the_mean_of_its_readings() -> None:
    (step,) = room((0, 20, 50), (1, 22, 60), (2, 30, 90)).steps([2 * MINUTE_MS], 0)
    assert (step.air.temperature_C, step.air.humidity_pct) == (pytest.approx(21), pytest.approx(55))
    assert step.is_read
    assert step.air.age_s is None


def test_that_between_the_rows_of_a_coarse_log_the_air_goes_in_a_straight_line_and_is_no_hole() -> None:
    coarse = room((0, 20, 50), (30, 22, 60), (60, 20, 50), (90, 22, 60))
    assert coarse.holes(0, 90 * MINUTE_MS) == []
    (step,) = coarse.steps([16 * MINUTE_MS], 14 * MINUTE_MS)
    assert step.air.temperature_C == pytest.approx(21)
    assert step.is_read
    assert step.air.age_s is None


def test_that_in_a_hole_the_air_grows_old_up_to_the_middle_and_young_again() -> None:
    rows = [(minute, 20.0, 50.0) for minute in range(11)] + [(minute, 24.0, 70.0) for minute in range(190, 201)]
    holed = room(*rows)
    assert holed.holes(0, 200 * MINUTE_MS) == [(10 * MINUTE_MS, 190 * MINUTE_MS)]
    ages = [holed.steps([at + MINUTE_MS], at)[0] for at in (20 * MINUTE_MS, 99 * MINUTE_MS, 180 * MINUTE_MS)]
    assert [step.is_read for step in ages] == [False] * 3
    assert ages[1].air.temperature_C == pytest.approx(22, abs=0.1)
    assert ages[0].air.age_s is not None
    assert ages[1].air.age_s is not None
    assert ages[0].air.age_s < ages[1].air.age_s
    assert not ages[1].air.speed_is_measured


def test_that_what_lies_past_the_last_reading_was_not_read() -> None:
    by_the_minute = room(*((minute, 20.0, 50.0) for minute in range(11)))  # the last in the tenth minute
    steps = by_the_minute.steps([12 * MINUTE_MS, 16 * MINUTE_MS, 20 * MINUTE_MS], 8 * MINUTE_MS)
    assert [step.speed_known for step in steps] == [True, False, False]
    assert [step.air.age_s for step in steps] == [None, 4 * 60.0, 8 * 60.0]  # 10 to the middles, 14 and 18


def test_that_a_coarse_log_holds_until_its_next_row_is_due() -> None:
    coarse = room((0, 20, 50), (30, 22, 60), (60, 20, 50))
    steps = coarse.steps([70 * MINUTE_MS, 110 * MINUTE_MS], 62 * MINUTE_MS)  # middles 66 and 90
    assert [step.is_read for step in steps] == [True, True]
    (late,) = coarse.steps([94 * MINUTE_MS], 90 * MINUTE_MS)
    assert not late.is_read


def test_that_an_empty_log_gives_an_ordinary_room_that_nobody_knows() -> None:
    (step,) = room().steps([HOUR_MS], 0)
    assert step.air.temperature_C == UNSEEN.temperature_C
    assert not step.is_read
    assert room().holes(0, HOUR_MS) == [(0, HOUR_MS)]


def test_that_a_log_that_begins_late_is_carried_back_with_doubt() -> None:
    late = room((120, 16, 70), (121, 16, 70))
    (step,) = late.steps([MINUTE_MS], 0)
    assert step.air.temperature_C == 16
    assert not step.is_read
    assert late.holes(0, 121 * MINUTE_MS)[0] == (0, 120 * MINUTE_MS)


def test_that_held_air_is_held_from_its_time_on_and_the_room_itself_stays() -> None:
    own = room(*((minute, 15.0, 80.0) for minute in range(60)))
    other = own.holding(Otherwise(temperature_C=20.0, from_ms=30 * MINUTE_MS))
    before, after = other.steps([30 * MINUTE_MS, 40 * MINUTE_MS], 20 * MINUTE_MS)
    assert (before.air.temperature_C, after.air.temperature_C) == (pytest.approx(15), 20)
    assert own.steps([40 * MINUTE_MS], 30 * MINUTE_MS)[0].air.temperature_C == pytest.approx(15)


def test_that_surface_and_air_speed_are_told_only_where_they_were_measured() -> None:
    (bare,) = room((0, 20, 50), speed_known=False).steps([MINUTE_MS], 0)
    assert not bare.speed_known
    assert bare.surface_C is None
    (measured,) = room((0, 20, 50), surface_C=0.0).steps([MINUTE_MS], 0)
    assert measured.surface_C == 0.0


def test_that_steps_widen_and_end_where_they_must() -> None:
    ends = step_ends_ms(0, 10 * MINUTE_MS, ((3 * MINUTE_MS, MINUTE_MS), (0, 4 * MINUTE_MS)))
    assert ends == [MINUTE_MS, 2 * MINUTE_MS, 3 * MINUTE_MS, 7 * MINUTE_MS, 10 * MINUTE_MS]
    assert step_ends_ms(5, 5, ((0, MINUTE_MS),)) == []
