"""The air of a film from the log: fine after each laying, coarse where that will do, and holes said."""

from __future__ import annotations

from studiowatch.room.readings import Reading
from studiowatch.service.log_air import STILL_M_S, moments

from .rooms import START_MS

MINUTE_MS = 60_000
HOUR_MS = 3_600_000
DAY_MS = 24 * HOUR_MS


def minutes(until_ms: int, *, hole: range = range(0)) -> list[Reading]:
    return [
        Reading(time_ms=time_ms, temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)
        for time_ms in range(START_MS, until_ms, MINUTE_MS)
        if time_ms not in hole
    ]


def steps_ms(readings: list[Reading], layings_ms: list[int]) -> dict[int, int]:
    """Return the step before each moment, by its time since START_MS."""
    times = [moment.time_ms for moment in moments(readings, START_MS, layings_ms)]
    return {after - START_MS: after - before for before, after in zip([START_MS, *times], times, strict=False)}


def test_that_the_air_is_fine_for_a_day_after_each_laying_and_coarse_elsewhere() -> None:
    second_ms = START_MS + 3 * DAY_MS
    steps = steps_ms(minutes(START_MS + 6 * DAY_MS), [START_MS, second_ms])
    first_day = [step for time_ms, step in steps.items() if 0 < time_ms < DAY_MS]
    second_day = [step for time_ms, step in steps.items() if DAY_MS + HOUR_MS < time_ms < 3 * DAY_MS - HOUR_MS]
    fourth_day = [step for time_ms, step in steps.items() if 3 * DAY_MS < time_ms < 4 * DAY_MS]
    assert set(first_day) == {MINUTE_MS}
    assert set(second_day) == {10 * MINUTE_MS}
    assert set(fourth_day) <= {MINUTE_MS}


def test_that_no_mean_reaches_over_a_laying() -> None:
    laid_ms = START_MS + 2 * DAY_MS + 7 * MINUTE_MS
    times = [moment.time_ms for moment in moments(minutes(START_MS + 3 * DAY_MS), START_MS, [START_MS, laid_ms])]
    before_ms = max(time_ms for time_ms in times if time_ms < laid_ms)
    assert laid_ms - before_ms == MINUTE_MS


def test_that_a_hole_is_said_and_taken_as_still() -> None:
    hole = range(START_MS + HOUR_MS, START_MS + 2 * HOUR_MS)
    unseen = [
        moment for moment in moments(minutes(START_MS + 3 * HOUR_MS, hole=hole), START_MS, [START_MS]) if moment.unseen
    ]
    assert [moment.time_ms for moment in unseen] == [START_MS + 2 * HOUR_MS]
    assert unseen[0].air.air_speed_m_s == STILL_M_S
