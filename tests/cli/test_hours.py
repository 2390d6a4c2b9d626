from __future__ import annotations

import pytest

from studiowatch.cli.hours import told


@pytest.mark.parametrize(
    ("seconds", "words"),
    [
        (0.0, "0 min"),
        (29.0, "0 min"),
        (1500.0, "25 min"),
        (3599.0, "1 h 00 min"),
        (3 * 3600.0 + 5 * 60.0, "3 h 05 min"),
        (47 * 3600.0, "47 h 00 min"),
        (2 * 86400.0, "2 d 0 h"),
        (14.5 * 86400.0, "14 d 12 h"),
    ],
)
def test_that_times_are_told_as_people_read_them(seconds: float, words: str) -> None:
    assert told(seconds) == words
