"""What was recorded of a coat before the clock was set, by the clock of its film: how old it was then."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime

import pytest

from studiowatch.coats.learning import Seen
from studiowatch.coats.stages import Stage
from studiowatch.service.commands import RecordLook
from studiowatch.service.correction_commands import CorrectLook
from studiowatch.service.kept_views import KeptViews
from studiowatch.service.rack import Rack
from studiowatch.studio.pieces import Coat, Finding, Look
from studiowatch.studio.review_views import Risk

from .racks import HOUR_MS, MINUTE_MS, gloss, live, minutes, piece, rack, restarted, step
from .rooms import START_MS

STEPS_MS = [-20 * MINUTE_MS, 15 * MINUTE_MS, 5 * HOUR_MS]
TACKY = Look(key="tacky", time_ms=START_MS + 30 * MINUTE_MS, finding=Finding.TACKY)
STILL_TACKY = Seen(after_s=1800.0, stage=Stage.TACK_FREE, reached=False)  # half an hour after laying


def left(coat: Coat, many: int = 41) -> Rack:
    """Return the rack with a coat of an earlier session that was laid `many` - 1 minutes ago."""
    return rack(piece(coat), minutes(START_MS, many))


def lived(made: Rack, many: int) -> Sequence[int]:
    """Let so many minutes go by, and return their times, UTC ms."""
    then = minutes(made.runs["g"].at_ms + MINUTE_MS, many)
    live(made, then)
    return [reading.time_ms for reading in then]


def set_clock(made: Rack, by_ms: int) -> None:
    step(made, made.runs["g"].at_ms + by_ms, by_ms)


def risk(made: Rack) -> Risk:
    (view,) = KeptViews().views(made, local_date, made.runs["g"].at_ms)
    (coat,) = view.coats
    assert coat.risk is not None
    return coat.risk


def local_date(time_ms: int) -> date:
    return datetime.fromtimestamp(time_ms / 1000, UTC).date()


@pytest.mark.parametrize("by_ms", STEPS_MS)
def test_that_a_set_clock_moves_no_test_of_a_coat_of_an_earlier_session_and_teaches_nothing_else(by_ms: int) -> None:
    made = left(gloss("g", START_MS, looks=(TACKY,)))
    assert made.runs["g"].tests() == (STILL_TACKY,)
    taught = made.records.learnt()
    assert [record.tests for record in taught] == [1]
    set_clock(made, by_ms)
    lived(made, 3)
    assert made.runs["g"].tests() == (STILL_TACKY,)
    assert made.pieces["p"].coats[0].looks == (TACKY,)
    assert made.records.learnt() == taught


@pytest.mark.parametrize("by_ms", STEPS_MS)
def test_that_a_look_after_the_clock_was_set_is_taken_by_the_clock_as_it_is_then(by_ms: int) -> None:
    made = left(gloss("g", START_MS, looks=(TACKY,)))
    set_clock(made, by_ms)
    now_ms = lived(made, 5)[-1]
    made.carry_out(RecordLook(coat_key="g", time_ms=now_ms, finding=Finding.MILKY), now_ms)
    made.follow(now_ms)
    # 40 min lay behind before the clock was set, 5 min since
    assert made.runs["g"].tests() == (STILL_TACKY, Seen(after_s=2700.0, stage=Stage.CLEAR, reached=False))


@pytest.mark.parametrize("by_ms", STEPS_MS)
def test_that_a_look_right_before_the_clock_was_set_is_taken_by_the_clock_as_it_was(by_ms: int) -> None:
    made = left(gloss("g", START_MS, looks=(TACKY,)))
    now_ms = made.runs["g"].at_ms
    made.carry_out(RecordLook(coat_key="g", time_ms=now_ms, finding=Finding.MILKY), now_ms)
    set_clock(made, by_ms)
    made.follow(now_ms + by_ms)
    assert made.runs["g"].tests() == (STILL_TACKY, Seen(after_s=2400.0, stage=Stage.CLEAR, reached=False))


def test_that_a_look_whose_finding_is_corrected_keeps_its_time_by_the_film() -> None:
    made = left(gloss("g", START_MS, looks=(TACKY,)))
    set_clock(made, 15 * MINUTE_MS)
    now_ms = lived(made, 2)[-1]
    made.carry_out(CorrectLook(look_key="tacky", time_ms=TACKY.time_ms, finding=Finding.MILKY), now_ms)
    made.follow(now_ms)
    assert made.runs["g"].tests() == (Seen(after_s=1800.0, stage=Stage.CLEAR, reached=False),)


@pytest.mark.parametrize("by_ms", [15 * MINUTE_MS, 5 * HOUR_MS])
def test_that_a_restart_has_the_tests_of_hours_that_the_clock_left_out_at_the_age_of_the_coat(by_ms: int) -> None:
    made = left(gloss("g", START_MS, looks=(TACKY,)))
    before = minutes(START_MS, 41)
    set_clock(made, by_ms)
    now_ms = lived(made, 5)[-1]
    made.carry_out(RecordLook(coat_key="g", time_ms=now_ms, finding=Finding.MILKY), now_ms)
    since = minutes(before[-1].time_ms + by_ms + MINUTE_MS, 5)
    again = restarted(made, [*before, *since], now_ms)
    assert again.runs["g"].tests() == (STILL_TACKY, Seen(after_s=2700.0, stage=Stage.CLEAR, reached=False))


@pytest.mark.parametrize("by_ms", STEPS_MS)
def test_that_a_set_clock_takes_no_cover_off(by_ms: int) -> None:
    made = left(gloss("g", START_MS, covered_from_ms=START_MS + 35 * MINUTE_MS))
    assert made.runs["g"].covered
    set_clock(made, by_ms)
    lived(made, 1)
    assert made.runs["g"].covered


@pytest.mark.parametrize("by_ms", STEPS_MS)
def test_that_a_touch_is_weighed_by_how_dry_the_coat_was_whatever_the_clock_was_set_to(by_ms: int) -> None:
    made, plain = left(gloss("g", START_MS), 6), left(gloss("g", START_MS), 6)
    set_clock(made, by_ms)
    for one in (made, plain):
        now_ms = lived(one, 3)[-1]
        one.carry_out(RecordLook(coat_key="g", time_ms=now_ms, finding=Finding.TACKY), now_ms)
        one.follow(now_ms)
        lived(one, 120)
        assert one.runs["g"].reached_ms(Stage.SET_TO_TOUCH) is not None
    assert risk(made) == risk(plain)
