"""A piece is not fit for its next coat while the one below is wet, tacky or still giving off water."""

from __future__ import annotations

import pytest

from studiowatch.coats.stages import Surface
from studiowatch.studio.laying import not_yet
from studiowatch.studio.words import Level, Sentence

NOW_MS, HOUR_MS = 1_800_000_000_000, 3_600_000


def told(surface: Surface, *, ready_h: float | None, likely_h: float | None = None) -> Sentence | None:
    return not_yet(
        label="gloss 1",
        surface=surface,
        ready_ms=None if ready_h is None else NOW_MS + round(ready_h * HOUR_MS),
        likely_ms=None if likely_h is None else NOW_MS + round(likely_h * HOUR_MS),
        now_ms=NOW_MS,
        when_text=lambda ms, beside_ms: f"{(ms - beside_ms) / HOUR_MS:+g} h",
    )


def test_that_a_ready_coat_stops_nobody() -> None:
    assert told(Surface.DRY, ready_h=0.0) is None
    assert told(Surface.DRY, ready_h=-3.0) is None


@pytest.mark.parametrize(
    ("surface", "level", "words"),
    [
        (Surface.WET, Level.ACT, "still wet"),
        (Surface.TACKY, Level.CAUTION, "still tacky"),
        (Surface.DRY, Level.CAUTION, "not ready for the next coat"),
    ],
)
def test_that_a_coat_that_is_not_ready_says_how_it_stands_and_from_when(
    surface: Surface, level: Level, words: str
) -> None:
    sentence = told(surface, ready_h=5.0, likely_h=2.5)
    assert sentence is not None
    assert sentence.level is level
    assert sentence.headline == f"Not yet: gloss 1 is {words}"
    assert sentence.detail == "Ready from +5 h, perhaps from -2.5 h."  # the early one is said beside the other
    assert "sealed in" in sentence.advice


def test_that_a_bound_in_the_past_and_a_time_out_of_sight_are_not_promised() -> None:
    early = told(Surface.DRY, ready_h=5.0, likely_h=-1.0)
    assert early is not None
    assert early.detail == "Ready from +5 h."
    assert early.headline == "Not yet: gloss 1 is not surely ready for the next coat"
    one_time = told(Surface.DRY, ready_h=5.0, likely_h=5.0)
    assert one_time is not None
    assert one_time.detail == "Ready from +5 h."
    never = told(Surface.DRY, ready_h=None)
    assert never is not None
    assert "no time" in never.detail
