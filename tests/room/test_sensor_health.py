from __future__ import annotations

import pytest

from studiowatch.room.readings import Channel, Reading
from studiowatch.room.sensor_health import SensorHealth, check
from studiowatch.speech.units import US, choose

START_MS = 1_772_460_000_000


def fed(
    values: list[tuple[float | None, float | None]], *, step_ms: int = 1000, health: SensorHealth | None = None
) -> SensorHealth:
    health = health or SensorHealth()
    for index, (temperature_C, humidity_pct) in enumerate(values):
        reading = Reading(time_ms=START_MS + index * step_ms, temperature_C=temperature_C, humidity_pct=humidity_pct)
        health = check(health, reading)
    return health


def test_that_an_ordinary_room_is_believed() -> None:
    health = fed([(21.0 + 0.01 * n, 48.0 - 0.02 * n) for n in range(100)])
    assert health.suspect == ()
    assert health.sentence == ""


@pytest.mark.parametrize("temperature_C", [-10.0, 50.0])
def test_that_the_ends_of_the_range_are_believed(temperature_C: float) -> None:
    assert fed([(temperature_C, 50.0)]).suspect == ()


@pytest.mark.parametrize(
    ("values", "channel", "words"),
    [
        ((-10.1, 50.0), Channel.TEMPERATURE, "-10.1 °C"),
        ((50.1, 50.0), Channel.TEMPERATURE, "50.1 °C"),
        ((21.0, -0.1), Channel.HUMIDITY, "-0.1 %"),
        ((21.0, 100.1), Channel.HUMIDITY, "100.1 %"),
    ],
)
def test_that_what_no_room_has_is_named_with_its_range(
    values: tuple[float, float], channel: Channel, words: str
) -> None:
    health = fed([values])
    assert health.suspect == (channel,)
    assert words in health.sentence
    assert "a room has" in health.sentence


def test_that_a_leap_is_suspect_for_ten_seconds() -> None:
    leapt = [(21.0, 50.0), (22.1, 50.0)]
    assert fed(leapt).suspect == (Channel.TEMPERATURE,)
    assert "leapt to 22.1 °C" in fed(leapt).sentence
    assert fed(leapt + [(22.1, 50.0)] * 9).suspect == (Channel.TEMPERATURE,)
    assert fed(leapt + [(22.1, 50.0)] * 10).suspect == ()


def test_that_the_fastest_believable_change_is_believed() -> None:
    assert fed([(21.0, 50.0), (22.0, 60.0)]).suspect == ()
    assert fed([(21.0, 50.0), (21.0, 60.2)]).suspect == (Channel.HUMIDITY,)


def test_that_a_change_over_a_minute_is_no_leap() -> None:
    assert fed([(21.0, 50.0), (25.0, 70.0)], step_ms=60_000).suspect == ()


def test_that_a_fine_channel_is_stuck_after_two_minutes() -> None:
    moving = [(21.03 + 0.01 * (n % 2), 50.0 + 0.1 * (n % 2)) for n in range(121)]
    assert fed([(21.04, humidity) for _, humidity in moving]).suspect == ()
    stuck = fed([(21.04, humidity) for _, humidity in [*moving, (0.0, 50.3)]])
    assert stuck.suspect == (Channel.TEMPERATURE,)
    assert stuck.sentence == "The temperature has read exactly 21.04 °C for 2 minutes: the sensor seems stuck."


def test_that_a_coarse_channel_is_stuck_after_six_hours() -> None:
    six_hours = 6 * 60
    wobble = [50.0 + 0.01 * (n % 2) for n in range(six_hours + 2)]
    assert fed([(21.3, h) for h in wobble[: six_hours + 1]], step_ms=60_000).suspect == ()
    assert fed([(21.3, h) for h in wobble], step_ms=60_000).suspect == (Channel.TEMPERATURE,)


def test_that_a_few_equal_minute_means_are_not_called_stuck() -> None:
    assert fed([(21.34, 50.27)] * 5, step_ms=60_000).suspect == ()


def test_that_a_channel_that_was_not_read_keeps_its_state() -> None:
    before = fed([(60.0, 50.0)])
    after = check(before, Reading(time_ms=START_MS + 1000))
    assert after == before


def test_that_a_channel_is_judged_afresh_after_a_gap_and_after_a_clock_set_back() -> None:
    first = fed([(21.0, 50.0)])
    for jump_ms in (1_200_000, -3_600_000):
        later = check(first, Reading(time_ms=START_MS + jump_ms, temperature_C=35.0, humidity_pct=20.0))
        assert later.suspect == ()


def test_that_lines_that_a_stall_delivered_together_are_no_leap() -> None:
    health = SensorHealth()
    for number in range(5):
        health = check(health, Reading(time_ms=START_MS + 20 * number, temperature_C=20.0 + 0.2 * number))
        assert health.sentence == ""


def test_that_what_cannot_be_right_is_told_in_the_units_that_she_chose() -> None:
    choose(US)
    told = check(SensorHealth(), Reading(time_ms=0, temperature_C=85.0, humidity_pct=50.0)).sentence
    # 85 °C = 185 °F, -10 °C = 14 °F, 50 °C = 122 °F: NIST SP 811 (2008), appendix B.8
    assert told == "The temperature reads 185 °F; a room has 14 to 122 °F."
