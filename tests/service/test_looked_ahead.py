"""A coat is looked ahead at again when that would say something else, and not before."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.physics.air import Air
from studiowatch.service.looked_ahead import RESTING_EVERY_MS, LookedAhead

MINUTE_MS = 60_000
AIR = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)
WANDERED = replace(AIR, humidity_pct=54.0)
BEFORE = LookedAhead(at_ms=0, air=AIR, is_covered=False, foretold_ms=-MINUTE_MS)
HELD = replace(BEFORE, foretold_ms=None)


def minutes_until_stale(
    before: LookedAhead, now: LookedAhead, *, is_wet: bool = True, rests_ms: int | None = None
) -> int:
    return next(
        minutes
        for minutes in range(1, 120)
        if before.is_stale(replace(now, at_ms=minutes * MINUTE_MS), is_wet=is_wet, rests_ms=rests_ms)
    )


@pytest.mark.parametrize(
    ("before", "now", "minutes"),
    [
        (HELD, HELD, 10),  # a room that is held to stay, and does
        (HELD, replace(HELD, air=WANDERED), 1),
        (HELD, BEFORE, 1),  # foretold at last
        (BEFORE, replace(BEFORE, air=WANDERED), 10),  # as it was foretold that it would wander
        (BEFORE, replace(BEFORE, air=WANDERED, foretold_ms=0), 5),  # foretold anew
        (BEFORE, replace(BEFORE, air=WANDERED, is_covered=True), 5),
        (BEFORE, replace(BEFORE, air=replace(AIR, age_s=60.0)), 5),  # the board is gone, and the room was typed
    ],
)
def test_that_a_wet_coat_is_looked_ahead_at_again_after(before: LookedAhead, now: LookedAhead, minutes: int) -> None:
    assert minutes_until_stale(before, now) == minutes


def test_that_a_wet_coat_that_nobody_waits_for_rests_whatever_the_room_does() -> None:
    wandered = replace(BEFORE, air=WANDERED, foretold_ms=0)
    assert minutes_until_stale(BEFORE, wandered, rests_ms=RESTING_EVERY_MS) == 30
    held = minutes_until_stale(HELD, replace(HELD, air=WANDERED), rests_ms=RESTING_EVERY_MS)
    assert held == 1  # nothing foretold how it goes


@pytest.mark.parametrize(("rests_ms", "minutes"), [(None, 10), (RESTING_EVERY_MS, 30)])
def test_that_a_dry_coat_waits_longer_once_it_only_cures(rests_ms: int | None, minutes: int) -> None:
    anew = replace(BEFORE, air=WANDERED, foretold_ms=0)
    assert minutes_until_stale(BEFORE, anew, is_wet=False, rests_ms=rests_ms) == minutes
