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
                "0 h to 5 h: likely too damp before it is safe."
            ),
        ),
        (
            (ONE,),
            (HOURS,),
            (
                "Next good hour for it: 9 h, in seven of ten ways that this room may go. "
                "6 h to 8 h: outside your working hours."
            ),
        ),
        ((SURE,), (), "Next good hours for it: 30 h to 34 h, in nine of ten ways that this room may go."),
        (
            (),
            (HOURS, LATE),
            (
                "No hour of the next two days is likely to be good for it. "
                "12 h to 29 h: likely too cold before it is safe."
            ),
        ),
        (
            (SURE,),
            (
                Aside(first_ms=0, last_ms=20 * H, reason=Reason.NOT_READY),
                Aside(first_ms=21 * H, last_ms=29 * H, reason=Reason.OUTSIDE_HOURS),
            ),
            (
                "Next good hours for it: 30 h to 34 h, in nine of ten ways that this room may go. "
                "Before 29 h: what lies below is not ready."
            ),
        ),
    ],
)
def test_that_the_next_good_hours_are_told_with_what_the_room_has_against_sooner_ones(
    good: tuple[Stretch, ...], others: tuple[Aside, ...], expected: str
) -> None:
    assert next_text(good, others, 29 * H, when) == expected


def test_that_where_no_hour_is_good_the_reason_of_most_working_hours_is_told_and_not_the_last_night() -> None:
    below = [Aside(first_ms=first * H, last_ms=(first + 8) * H, reason=Reason.NOT_READY) for first in (0, 24)]
    nights = [Aside(first_ms=first * H, last_ms=(first + 14) * H, reason=Reason.OUTSIDE_HOURS) for first in (9, 33)]
    none = "No hour of the next two days is likely to be good for it."
    waiting = (below[0], nights[0], below[1], nights[1])
    assert next_text((), waiting, 300 * H, when) == f"{none} Before 300 h: what lies below is not ready."
    assert next_text((), waiting, None, when) == f"{none} 0 h to 32 h: what lies below is not ready."
    damp = [Aside(first_ms=first * H, last_ms=last * H, reason=Reason.DAMP) for first, last in ((0, 8), (20, 23))]
    # 9 and 4 hours too damp against 9 for what lies below
    told = next_text((), (damp[0], nights[0], damp[1], below[1], nights[1]), 33 * H, when)
    assert told == f"{none} 20 h to 23 h: likely too damp before it is safe."
    assert next_text((), (nights[0], nights[1]), None, when) == f"{none} 33 h to 47 h: outside your working hours."
