"""Hours that a set clock left out: no coat dries through them, in this session or after a restart."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from studiowatch.service.commands import LayCoat
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.set_clock import CLOCK_STEP, ClockStep, clock_steps, lost_hours
from studiowatch.studio.pieces import Piece

from .racks import AIR, HOUR_MS, MINUTE_MS, gloss, live, minutes, piece, rack, restarted, step
from .rooms import START_MS


@pytest.mark.parametrize("hours", [1, 8, 24 * 30])
def test_that_a_restart_does_not_dry_a_coat_of_an_earlier_session_through_hours_that_the_clock_left_out(
    hours: int,
) -> None:
    first, step_ms = minutes(START_MS, 16), hours * HOUR_MS
    made = rack(piece(gloss("g", START_MS)), first)
    set_ms = START_MS + 15 * MINUTE_MS + step_ms
    step(made, set_ms, step_ms)
    then = minutes(set_ms + MINUTE_MS, 10)
    live(made, then)
    now_ms = then[-1].time_ms
    again = restarted(made, [*first, *then], now_ms)
    lived_s = (now_ms - START_MS - step_ms) / 1000
    assert lived_s == 25 * 60
    assert again.runs["g"].film.elapsed_s == pytest.approx(lived_s, abs=1)
    assert again.runs["g"].film.is_wet
    assert again.runs["g"].film.elapsed_s == pytest.approx(made.runs["g"].film.elapsed_s, abs=1)


def test_that_the_hours_are_left_out_where_nothing_was_read_since_and_where_the_coat_is_dried_anew() -> None:
    first = minutes(START_MS, 16)
    made = rack(piece(gloss("g", START_MS)), first)
    set_ms = START_MS + 15 * MINUTE_MS + 8 * HOUR_MS
    step(made, set_ms, 8 * HOUR_MS)
    for other in (restarted(made, first, set_ms + MINUTE_MS), made):
        other.dry_anew()
        other.follow(set_ms + MINUTE_MS)
        other.advance(AIR, set_ms + 2 * MINUTE_MS)
        assert other.runs["g"].film.elapsed_s == pytest.approx(17 * 60, abs=1)


def test_that_a_clock_set_forward_and_back_again_costs_a_coat_nothing() -> None:
    first = minutes(START_MS, 16)
    made = rack(piece(gloss("g", START_MS)), first)
    wrong_ms = START_MS + 15 * MINUTE_MS + 8 * HOUR_MS
    step(made, wrong_ms, 8 * HOUR_MS)
    wrong = minutes(wrong_ms + MINUTE_MS, 5)
    live(made, wrong)
    right_ms = wrong[-1].time_ms - 8 * HOUR_MS
    step(made, right_ms, -8 * HOUR_MS)
    then = minutes(right_ms + MINUTE_MS, 5)
    live(made, then)
    again = restarted(made, [*first, *then, *wrong], then[-1].time_ms)
    assert again.runs["g"].film.elapsed_s == pytest.approx(25 * 60, abs=1)


def test_that_a_coat_laid_in_this_session_on_an_older_one_keeps_all_its_hours() -> None:
    lower_ms, upper_ms = START_MS - 30 * HOUR_MS, START_MS
    first = minutes(lower_ms, 31 * 60)
    made = rack(piece(gloss("a", lower_ms)), [one for one in first if one.time_ms < upper_ms])
    upper = made.carry_out(LayCoat(piece_key="p", laid_ms=upper_ms, sheet="gloss-waterborne"), upper_ms)
    made.follow(upper_ms)
    live(made, [one for one in first if one.time_ms > upper_ms])
    set_ms = first[-1].time_ms + 2 * HOUR_MS
    step(made, set_ms, 2 * HOUR_MS)
    again = restarted(made, first, set_ms + MINUTE_MS)
    again.advance(AIR, set_ms + MINUTE_MS)
    assert again.runs[upper].film.elapsed_s == pytest.approx(60 * 60, abs=1)
    assert again.runs[upper].laid_ms - again.runs["a"].laid_ms == 30 * HOUR_MS


@pytest.mark.parametrize("text", ["", "[]", "{}", '{"step_ms": "x", "stayed": []}', '{"step_ms": 1e999, "stayed": []}'])
def test_that_a_note_that_cannot_be_read_is_left_out(text: str) -> None:
    kept = ClockStep(time_ms=START_MS, step_ms=-HOUR_MS, stayed=frozenset({"g"}))
    assert clock_steps([(START_MS, text), (START_MS, kept.written())]) == [kept]


@pytest.mark.parametrize(
    ("steps_h", "lost_h"),
    [
        ((8,), [(0, 8)]),
        ((8, -3), [(0, 5)]),
        ((8, -8), []),
        ((-8, 8), []),
        ((-2, 5), [(0, 3)]),
        ((-5, 2), []),
        ((1, 1, -1), [(0, 1)]),
    ],
)
def test_that_what_the_clock_was_set_back_is_no_loss(steps_h: Sequence[int], lost_h: Sequence[tuple[int, int]]) -> None:
    steps, now_ms = [], START_MS
    for hours in steps_h:
        now_ms += hours * HOUR_MS
        steps.append(ClockStep(time_ms=now_ms, step_ms=hours * HOUR_MS, stayed=frozenset({"g"})))
    held: Piece = piece(gloss("g", START_MS - 99 * HOUR_MS), gloss("h", None))
    spans = [(lost.start_ms - START_MS, lost.end_ms - START_MS) for lost in lost_hours(held, {"g"}, steps)]
    assert [tuple(ms / HOUR_MS for ms in span) for span in spans] == [tuple(map(float, span)) for span in lost_h]
    assert lost_hours(held, {"h"}, steps) == []


def test_that_the_memory_of_a_replay_gives_notes_by_kind() -> None:
    records = MemoryRecords(held={})
    records.note(1, "clock-set", "a")
    records.note(2, CLOCK_STEP, "b")
    assert records.noted(CLOCK_STEP) == ((2, "b"),)
