"""Times in words."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from studiowatch.ui.models.times import (
    ago_words,
    clock_words,
    clock_words_beside,
    from_day_words,
    lasting_words,
)


def ms(*wall: int) -> int:
    return int(datetime(*wall, tzinfo=UTC).timestamp() * 1000)


NOW = ms(2026, 3, 4, 14, 12)  # a Wednesday: ISO 8601 week date 2026-W10-3


@pytest.mark.parametrize(
    ("moment", "words"),
    [
        (ms(2026, 3, 4, 14, 7), "14:07"),
        (ms(2026, 3, 5, 8, 10), "Thu 08:10"),
        (ms(2026, 3, 2, 8, 10), "Mon 08:10"),
        (ms(2026, 3, 11, 8, 10), "11 Mar 08:10"),
        (ms(2025, 12, 9, 0, 0), "9 Dec 00:00"),
        (ms(2025, 3, 11, 8, 10), "11 Mar 2025 08:10"),
        (ms(2027, 2, 3, 8, 10), "3 Feb 2027 08:10"),
    ],
)
def test_that_a_moment_names_its_day_only_when_it_is_another(moment: int, words: str) -> None:
    assert datetime(2026, 3, 4, tzinfo=UTC).isocalendar() == (2026, 10, 3)
    assert clock_words(moment, NOW, UTC) == words


@pytest.mark.parametrize(
    ("moment", "beside", "words"),
    [
        (ms(2026, 3, 4, 16, 7), ms(2026, 3, 4, 18, 0), "16:07"),
        (ms(2026, 3, 4, 16, 7), ms(2026, 3, 5, 10, 35), "Wed 16:07"),
        (ms(2026, 3, 5, 9, 7), ms(2026, 3, 5, 10, 35), "09:07"),
        (ms(2026, 3, 5, 9, 7), ms(2026, 3, 6, 10, 35), "Thu 09:07"),
        (ms(2026, 3, 5, 9, 7), ms(2026, 3, 4, 23, 35), "Thu 09:07"),
        (ms(2026, 3, 21, 9, 7), ms(2026, 3, 21, 10, 35), "09:07"),
        (ms(2026, 3, 21, 9, 7), ms(2026, 3, 23, 10, 35), "21 Mar 09:07"),
    ],
)
def test_that_a_bare_time_beside_another_is_of_the_day_that_was_named_last(
    moment: int, beside: int, words: str
) -> None:
    assert clock_words_beside(moment, beside, NOW, UTC) == words


def test_that_the_local_day_counts_and_not_the_day_of_utc() -> None:
    late = ms(2026, 3, 4, 23, 30)
    assert clock_words(late, NOW, ZoneInfo("Europe/Berlin")) == "Thu 00:30"
    assert from_day_words(late, NOW, UTC) == "23:30"
    assert from_day_words(late, NOW, ZoneInfo("Europe/Berlin")) == "5 Mar"


def test_that_summer_time_moves_the_clock() -> None:
    # European summer time begins on the last Sunday of March at 01:00 UTC: 29 March 2026 (Directive 2000/84/EC).
    berlin = ZoneInfo("Europe/Berlin")
    assert clock_words(ms(2026, 3, 29, 0, 59), ms(2026, 3, 29, 12), berlin) == "01:59"
    assert clock_words(ms(2026, 3, 29, 1, 1), ms(2026, 3, 29, 12), berlin) == "03:01"


@pytest.mark.parametrize(
    ("length_s", "words"),
    [
        (-5, "0 s"),
        (40, "40 s"),
        (2280, "38 min"),
        (3600, "1 h"),
        (7800, "2 h 10 min"),
        (86_400, "1 day"),
        (3 * 86_400 + 5, "3 days"),
    ],
)
def test_that_a_length_is_said_in_its_largest_useful_unit(length_s: int, words: str) -> None:
    assert lasting_words(length_s * 1000) == words


def test_that_ago_is_just_now_at_first() -> None:
    assert ago_words(NOW - 400, NOW) == "just now"
    assert ago_words(NOW - 40_000, NOW) == "40 s ago"
