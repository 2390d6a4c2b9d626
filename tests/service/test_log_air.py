"""The air of a film from the log: fine after each laying, coarse where that will do, and holes said."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.room.typed import typed_reading
from studiowatch.service.log_air import DRY_WIDTH_MS, PART_MS, JudgedLog, Moment, airs, moments
from studiowatch.service.replaying import NoLog
from studiowatch.service.room_now import MOVING_M_S
from studiowatch.studio.otherwise import STILL_M_S

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


def steps_ms(readings: list[Reading], *, wet: list[range], layings_ms: list[int]) -> dict[int, int]:
    """Return the step before each moment, by its time since START_MS, for a stack that is wet in these ranges."""

    def width_ms(time_ms: int) -> int:
        return 0 if any(time_ms in span for span in wet) else DRY_WIDTH_MS

    found = moments(airs(readings), START_MS, width_ms=width_ms, layings_ms=layings_ms)
    times = [moment.time_ms for moment in found]
    return {after - START_MS: after - before for before, after in zip([START_MS, *times], times, strict=False)}


def test_that_the_air_is_fine_while_a_coat_is_wet_and_coarse_elsewhere() -> None:
    second_ms = START_MS + 12 * HOUR_MS
    wet = [range(START_MS, START_MS + HOUR_MS), range(second_ms, second_ms + HOUR_MS)]
    steps = steps_ms(minutes(START_MS + DAY_MS), wet=wet, layings_ms=[START_MS, second_ms])
    first = [step for time_ms, step in steps.items() if 0 < time_ms < HOUR_MS]
    between = [step for time_ms, step in steps.items() if HOUR_MS + DRY_WIDTH_MS < time_ms < 12 * HOUR_MS - MINUTE_MS]
    second = [step for time_ms, step in steps.items() if 12 * HOUR_MS < time_ms < 13 * HOUR_MS]
    assert set(first) == {MINUTE_MS}
    assert set(between) == {DRY_WIDTH_MS}
    assert set(second) == {MINUTE_MS}


def test_that_no_mean_reaches_over_a_laying() -> None:
    laid_ms = START_MS + 2 * HOUR_MS + 7 * MINUTE_MS
    steps = steps_ms(minutes(START_MS + 5 * HOUR_MS), wet=[], layings_ms=[START_MS, laid_ms])
    assert 2 * HOUR_MS + 6 * MINUTE_MS in steps


WARM_DRY_FANNED = Air(temperature_C=22.0, humidity_pct=45.0, air_speed_m_s=0.6)
COLD_DAMP_FANNED = Air(temperature_C=18.0, humidity_pct=60.0, air_speed_m_s=0.4)
COLD_DRY_CALM = Air(temperature_C=18.0, humidity_pct=45.0, air_speed_m_s=0.03)


@pytest.mark.parametrize(
    ("before", "after", "harsher"),
    [
        (WARM_DRY_FANNED, COLD_DAMP_FANNED, (18.0, 60.0, STILL_M_S)),
        (COLD_DAMP_FANNED, WARM_DRY_FANNED, (18.0, 60.0, STILL_M_S)),
        (COLD_DRY_CALM, WARM_DRY_FANNED, (18.0, 45.0, 0.03)),
        (WARM_DRY_FANNED, COLD_DRY_CALM, (18.0, 45.0, 0.03)),
        (None, WARM_DRY_FANNED, (22.0, 45.0, STILL_M_S)),
    ],
)
def test_that_a_hole_takes_the_colder_the_damper_and_the_stiller_of_its_ends(
    before: Air | None, after: Air, harsher: tuple[float, float, float]
) -> None:
    hole = Moment.after(before, after, START_MS, START_MS + HOUR_MS)
    assert hole.unseen
    assert (hole.air.temperature_C, hole.air.humidity_pct, hole.air.air_speed_m_s) == harsher
    no_hole = Moment.after(before, after, START_MS, START_MS + 1000)
    assert not no_hole.unseen
    assert no_hole.air == after


def test_that_a_hole_is_said_and_what_follows_it_is_not() -> None:
    hole = range(START_MS + HOUR_MS, START_MS + 2 * HOUR_MS)
    found = moments(airs(minutes(START_MS + 3 * HOUR_MS, hole=hole)), START_MS, width_ms=lambda _: DRY_WIDTH_MS)
    assert [moment.time_ms for moment in found if moment.unseen] == [START_MS + 2 * HOUR_MS]


class MinuteLog(NoLog):
    """A log that counts how many readings were read from it, and how many at most at once."""

    def __init__(self, readings: list[Reading]) -> None:
        self.readings = readings
        self.read = self.most = 0

    def minute_means(self, start_ms: int, end_ms: int) -> list[Reading]:
        found = [reading for reading in self.readings if start_ms <= reading.time_ms < end_ms]
        self.read += len(found)
        self.most = max(self.most, len(found))
        return found


def test_that_the_log_is_judged_once_for_all_coats_and_anew_once_it_may_have_grown() -> None:
    log = MinuteLog(minutes(START_MS + DAY_MS))
    judged = JudgedLog(log)
    first = list(judged.airs(START_MS, START_MS + DAY_MS))
    once = log.read
    assert list(judged.airs(START_MS + HOUR_MS, START_MS + DAY_MS)) == first[60:]
    assert log.read == once
    log.readings += [replace(log.readings[-1], time_ms=START_MS + DAY_MS)]
    judged.forget()
    assert len(list(judged.airs(START_MS, START_MS + 2 * DAY_MS))) == len(first) + 1


def test_that_air_judged_in_parts_is_the_air_judged_in_one_go() -> None:
    border_ms = (START_MS // PART_MS + 2) * PART_MS
    hole = range(border_ms + PART_MS - HOUR_MS, border_ms + PART_MS + HOUR_MS)
    readings = [
        replace(
            one,
            temperature_C=None if abs(one.time_ms - border_ms) < 3 * MINUTE_MS else 20.0 + (at % 97) / 10,
            air_speed_m_s=0.05 + (at % 13) / 100,
            pressure_Pa=None if at < 600 else 99_000.0 + at % 11,
        )
        for at, one in enumerate(minutes(START_MS + 3 * DAY_MS, hole=hole))
    ]
    judged = JudgedLog(MinuteLog(readings))
    found = list(judged.airs(START_MS, START_MS + 3 * DAY_MS))
    assert found == list(airs(readings))
    assert any(time_ms == border_ms for time_ms, _ in found)  # in the last air that was known before it


def test_that_no_more_than_a_part_of_the_log_is_read_at_once() -> None:
    log = MinuteLog(minutes(START_MS + 3 * DAY_MS))
    assert list(JudgedLog(log).airs(START_MS + DAY_MS, START_MS + 3 * DAY_MS))
    assert log.most == PART_MS // MINUTE_MS


def test_that_a_typed_reading_is_kept_as_it_was_felt_and_grows_older() -> None:
    typed = typed_reading(time_ms=START_MS, temperature_C=19.0, humidity_pct=60.0, felt=None)
    found = list(JudgedLog(MinuteLog([typed])).airs(START_MS, START_MS + 2 * PART_MS))
    assert [air.age_s for _, air in found] == [60.0 * minute for minute in range(2 * PART_MS // MINUTE_MS)]
    assert not any(air.speed_is_measured for _, air in found)


def test_that_a_fan_is_still_known_after_midnight_where_only_a_voltage_tells_of_it() -> None:
    midnight_ms = (START_MS // DAY_MS + 1) * DAY_MS
    fan_ms = midnight_ms - HOUR_MS  # after two hours a voltage counts as having drifted
    readings = [
        Reading(
            time_ms=time_ms,
            temperature_C=20.0,
            humidity_pct=50.0,
            air_signal_mV=(900.0 if time_ms >= fan_ms else 600.0) + (time_ms // MINUTE_MS) % 3,
        )
        for time_ms in range(START_MS, midnight_ms + HOUR_MS // 2, MINUTE_MS)
    ]
    judged = JudgedLog(MinuteLog(readings))
    after = [air.air_speed_m_s for _, air in judged.airs(START_MS, midnight_ms + HOUR_MS)][-30:]
    assert set(after) == {MOVING_M_S}
