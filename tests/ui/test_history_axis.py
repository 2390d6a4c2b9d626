"""Ticks of the time axis in local time, and of the value axes."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.ui.models.history_axis import TimeScale, moment_words, range_words, time_ticks, value_scale

BERLIN = ZoneInfo("Europe/Berlin")
HOUR_MS = 3_600_000
DAY_MS = 24 * HOUR_MS


def ms(*wall: int) -> int:
    return round(datetime(*wall, tzinfo=UTC).timestamp() * 1000)


def labels(start_ms: int, end_ms: int, most: int, zone: ZoneInfo | None = None) -> list[str]:
    return [tick.label for tick in time_ticks(start_ms, end_ms, most, zone or ZoneInfo("UTC"))]


def test_that_eight_hours_are_ticked_on_round_hours() -> None:
    found = labels(ms(2026, 11, 25, 6, 12), ms(2026, 11, 25, 14, 12), 5)
    assert found == ["08:00", "10:00", "12:00", "14:00"]


def test_that_a_midnight_among_hours_names_its_day() -> None:
    # 25 November 2026 is a Wednesday: ISO 8601 week date 2026-W48-3.
    assert datetime(2026, 11, 25, tzinfo=UTC).isocalendar() == (2026, 48, 3)
    ticks = time_ticks(ms(2026, 11, 24, 18), ms(2026, 11, 25, 13), 4, ZoneInfo("UTC"))
    assert [(tick.label, tick.strong) for tick in ticks] == [
        ("18:00", False),
        ("Wed 25 Nov", True),
        ("06:00", False),
        ("12:00", False),
    ]


def test_that_seconds_are_told_when_zoomed_in() -> None:
    assert labels(ms(2026, 11, 25, 13, 49, 42), ms(2026, 11, 25, 13, 50, 2), 5) == [
        "13:49:45",
        "13:49:50",
        "13:49:55",
        "13:50:00",
    ]


def test_that_weeks_begin_on_monday() -> None:
    ticks = time_ticks(ms(2026, 11, 1), ms(2026, 12, 1), 5, ZoneInfo("UTC"))
    days = [datetime.fromtimestamp(tick.time_ms / 1000, UTC) for tick in ticks]
    assert [day.isoweekday() for day in days] == [1] * len(days)  # ISO 8601: Monday is day 1
    assert [tick.label for tick in ticks] == ["2 Nov", "9 Nov", "16 Nov", "23 Nov", "30 Nov"]


def test_that_a_new_year_among_months_is_named() -> None:
    ticks = time_ticks(ms(2025, 9, 15), ms(2026, 4, 15), 8, ZoneInfo("UTC"))
    assert [tick.label for tick in ticks] == ["Oct", "Nov", "Dec", "2026", "Feb", "Mar", "Apr"]
    assert [tick.label for tick in ticks if tick.strong] == ["2026"]


def test_that_decades_are_ticked_by_years() -> None:
    assert labels(ms(1996, 6, 1), ms(2026, 6, 1), 7) == ["2000", "2005", "2010", "2015", "2020", "2025"]


def test_that_hours_stay_round_when_summer_time_begins() -> None:
    # Directive 2000/84/EC, art. 2: summer time begins at 01:00 UTC on the last Sunday of March (29 March 2026),
    # so there is no 02:00 that night.
    ticks = time_ticks(ms(2026, 3, 28, 23), ms(2026, 3, 29, 4), 10, BERLIN)
    hours = [tick for tick in ticks if tick.label.endswith(":00")]
    assert [tick.label for tick in hours] == ["01:00", "03:00", "04:00", "05:00", "06:00"]
    assert hours[1].time_ms == ms(2026, 3, 29, 1)


def test_that_midnights_stay_midnights_when_summer_time_ends() -> None:
    # Directive 2000/84/EC, art. 3: it ends at 01:00 UTC on the last Sunday of October (25 October 2026).
    ticks = time_ticks(ms(2026, 10, 23, 22), ms(2026, 10, 26, 23), 4, BERLIN)
    assert [tick.time_ms for tick in ticks] == [
        ms(2026, 10, 23, 22),
        ms(2026, 10, 24, 22),
        ms(2026, 10, 25, 23),
        ms(2026, 10, 26, 23),
    ]


@given(
    start_ms=st.integers(ms(2000, 1, 1), ms(2060, 1, 1)),
    width_ms=st.integers(20_000, 40 * 365 * DAY_MS),
    most=st.integers(1, 20),
)
def test_that_ticks_rise_within_the_view_and_are_not_too_many(start_ms: int, width_ms: int, most: int) -> None:
    times = [tick.time_ms for tick in time_ticks(start_ms, start_ms + width_ms, most, BERLIN)]
    assert times == sorted(set(times))
    assert all(start_ms <= time <= start_ms + width_ms for time in times)
    assert len(times) <= 2 * most + 2  # months differ in length, and an hour comes twice when summer time ends


def test_that_panning_does_not_move_the_ticks() -> None:
    start_ms = ms(2026, 11, 3)
    here = {tick.time_ms for tick in time_ticks(start_ms, start_ms + 12 * DAY_MS, 6, BERLIN)}
    there = {tick.time_ms for tick in time_ticks(start_ms + DAY_MS, start_ms + 13 * DAY_MS, 6, BERLIN)}
    inner = range(start_ms + DAY_MS, start_ms + 12 * DAY_MS)
    assert {time for time in here if time in inner} == {time for time in there if time in inner}


def test_that_pixels_and_times_are_each_others_inverse() -> None:
    scale = TimeScale(start_ms=1_000_000, end_ms=1_600_000, left_px=80.0, width_px=600.0)
    assert scale.x(1_000_000) == pytest.approx(80.0)
    assert scale.x(1_600_000) == pytest.approx(680.0)
    assert scale.time_ms(scale.x(1_234_567)) == pytest.approx(1_234_567)


@pytest.mark.parametrize(
    ("low", "high", "most", "ticks"),
    [
        (9.0, 21.4, 3, [10, 15, 20]),
        (0.0, 0.41, 3, [0.0, 0.2, 0.4]),
        (43.0, 76.0, 2, [40, 60]),
    ],
)
def test_that_value_ticks_are_round(low: float, high: float, most: int, ticks: list[float]) -> None:
    assert list(value_scale(low, high, most).ticks) == pytest.approx(ticks)


@given(low=st.floats(-100, 2000), width=st.floats(0.01, 5000), most=st.integers(1, 6))
def test_that_a_value_scale_holds_its_range_on_steps_of_one_two_or_five(low: float, width: float, most: int) -> None:
    scale = value_scale(low, low + width, most)
    slack = 1e-6 * width
    assert scale.low <= low + slack
    assert scale.high >= low + width - slack
    assert scale.high - scale.low <= 2 * width  # no more than a fifth of a tick is added at either end
    for first, second in zip(scale.ticks, scale.ticks[1:], strict=False):
        digits = f"{second - first:.6e}"
        assert digits[0] in "125"
        assert digits[2:8] == "000000"


def test_that_a_value_label_shows_as_many_decimals_as_its_step_needs() -> None:
    assert value_scale(0.0, 0.41, 3).label(0.2) == "0.2"
    assert value_scale(9.0, 21.4, 3).label(15.0) == "15"
    assert value_scale(0.0, 0.1, 3).label(0.05) == "0.05"


def test_that_a_value_axis_without_height_is_refused() -> None:
    with pytest.raises(ValueError, match="upper end must be above"):
        value_scale(3.0, 3.0, 4)


def test_that_a_moment_is_told_as_finely_as_the_view() -> None:
    moment_ms = ms(2026, 11, 25, 13, 42, 10)
    utc = ZoneInfo("UTC")
    assert moment_words(moment_ms, 10 * 60_000, utc) == "Wed 25 Nov 13:42:10"
    assert moment_words(moment_ms, 8 * HOUR_MS, utc) == "Wed 25 Nov 13:42"
    assert moment_words(moment_ms, 800 * DAY_MS, utc) == "Wed 25 Nov 2026"


@pytest.mark.parametrize(
    ("start", "end", "words"),
    [
        ((2026, 11, 25, 6), (2026, 11, 25, 16), "Wed 25 Nov 2026"),
        ((2026, 11, 18), (2026, 11, 26), "Wed 18 \N{EN DASH} Thu 26 Nov 2026"),
        ((2026, 11, 28), (2026, 12, 1), "Sat 28 Nov \N{EN DASH} Tue 1 Dec 2026"),
        ((2025, 12, 31), (2026, 1, 1), "Wed 31 Dec 2025 \N{EN DASH} Thu 1 Jan 2026"),
    ],
)
def test_that_the_days_in_view_are_named_without_repetition(
    start: tuple[int, ...], end: tuple[int, ...], words: str
) -> None:
    assert range_words(ms(*start), ms(*end), ZoneInfo("UTC")) == words
