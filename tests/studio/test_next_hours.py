"""The next good hours in one line, for whoever was told to wait."""

from __future__ import annotations

import pytest

from studiowatch.studio.best_hours import Aside, Reason, Stretch
from studiowatch.studio.best_hours_words import next_text

H = 3_600_000
SURE = Stretch(first_ms=30 * H, last_ms=34 * H, chance=0.95)
SOON = Stretch(first_ms=9 * H, last_ms=11 * H, chance=0.7)
ONE = Stretch(first_ms=9 * H, last_ms=9 * H, chance=0.7)
DAMP = Aside(first_ms=0, last_ms=5 * H, reason=Reason.DAMP)
HOURS = Aside(first_ms=6 * H, last_ms=8 * H, reason=Reason.OUTSIDE_HOURS)
LATE = Aside(first_ms=12 * H, last_ms=29 * H, reason=Reason.COLD)


def when(time_ms: int) -> str:
    return f"{time_ms // H} h"


@pytest.mark.parametrize(
    ("good", "others", "expected"),
    [
        (
            (SURE, SOON),
            (DAMP, HOURS, LATE),
            (
                "Next good hours for it: 9 h to 11 h, in seven of ten ways that this room may go. "
                "0 h to 5 h: likely too damp before it is safe"
            ),
        ),
        (
            (ONE,),
            (HOURS,),
            (
                "Next good hour for it: 9 h, in seven of ten ways that this room may go. "
                "6 h to 8 h: outside your working hours"
            ),
        ),
        ((SURE,), (), "Next good hours for it: 30 h to 34 h, in nine of ten ways that this room may go."),
        (
            (),
            (HOURS, LATE),
            "No hour of the next two days is likely to be good for it. 12 h to 29 h: likely too cold before it is safe",
        ),
        (
            (SURE,),
            (Aside(first_ms=0, last_ms=29 * H, reason=Reason.NOT_READY),),
            (
                "Next good hours for it: 30 h to 34 h, in nine of ten ways that this room may go. "
                "before 29 h: what lies below is not ready"
            ),
        ),
    ],
)
def test_that_the_next_good_hours_are_told_with_what_the_room_has_against_sooner_ones(
    good: tuple[Stretch, ...], others: tuple[Aside, ...], expected: str
) -> None:
    assert next_text(good, others, 29 * H, when) == expected
