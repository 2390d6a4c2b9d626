"""A preparation is a frozen state machine: its timers run by the clock that is passed in. Times: common practice."""

from __future__ import annotations

from functools import reduce

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.studio.chores import Task, chores_for
from studiowatch.studio.preparation import (
    FORGOTTEN_MS,
    ChoreState,
    CoatLaid,
    CoatToLay,
    Ended,
    Event,
    Phase,
    Preparation,
    RoomLookedAt,
    Ticked,
    Told,
    TorchChosen,
    Unticked,
    advance,
    chores_now,
    phase_at,
    ready_ms,
    rested,
    shifted,
)

BEGAN_MS = 1_772_442_000_000
MINUTE_MS = 60_000
PIECES = ("low-tide", "kiln-light", "gulls")
BEGUN = Preparation(
    key="p", began_ms=BEGAN_MS, coats=tuple(CoatToLay(piece_key=key, sheet="gloss-waterborne") for key in PIECES)
)


def after(*events: Event, begun: Preparation = BEGUN) -> Preparation:
    return reduce(advance, events, begun)


def ticked(task: Task, minute: float = 0) -> Ticked:
    return Ticked(task=task, time_ms=BEGAN_MS + round(minute * MINUTE_MS))


def states(preparation: Preparation, minute: float) -> dict[Task, ChoreState]:
    return {one.chore.task: one.state for one in chores_now(preparation, BEGAN_MS + round(minute * MINUTE_MS))}


def all_ticked(minute: float = 0) -> list[Ticked]:
    return [ticked(chore.task, minute) for chore in BEGUN.chores]


def test_that_the_bottle_rests_a_quarter_of_an_hour_and_the_wiped_surface_ten_minutes() -> None:
    # common practice, no source
    resting = after(ticked(Task.BOTTLE), ticked(Task.WIPE))
    for minute, bottle, wiped in (
        (9.9, ChoreState.RESTING, ChoreState.RESTING),
        (10, ChoreState.RESTING, ChoreState.DONE),
        (14.9, ChoreState.RESTING, ChoreState.DONE),
        (15, ChoreState.DONE, ChoreState.DONE),
    ):
        assert (states(resting, minute)[Task.BOTTLE], states(resting, minute)[Task.WIPE]) == (bottle, wiped)


def test_that_a_surface_wiped_an_hour_ago_is_wiped_again() -> None:
    wiped = after(ticked(Task.WIPE))
    assert states(wiped, 61)[Task.WIPE] is ChoreState.STALE
    assert states(after(ticked(Task.WIPE, 61), begun=wiped), 62)[Task.WIPE] is ChoreState.RESTING


def test_that_it_goes_from_preparing_through_resting_to_ready_and_ends_with_the_last_coat() -> None:
    done = after(*all_ticked())
    assert phase_at(BEGUN, BEGAN_MS) is Phase.PREPARING
    assert phase_at(done, BEGAN_MS + 14 * MINUTE_MS) is Phase.RESTING
    assert ready_ms(done, BEGAN_MS) == BEGAN_MS + 15 * MINUTE_MS
    assert phase_at(done, BEGAN_MS + 15 * MINUTE_MS) is Phase.READY
    for piece_key, following in zip(PIECES, (*PIECES[1:], None), strict=True):
        done = advance(done, CoatLaid(piece_key=piece_key, time_ms=BEGAN_MS + 20 * MINUTE_MS))
        assert (done.turn.piece_key if done.turn else None) == following
        assert phase_at(done, BEGAN_MS + 20 * MINUTE_MS) is (Phase.LAYING if following else Phase.ENDED)


def test_that_a_piece_may_be_laid_out_of_turn() -> None:
    done = after(CoatLaid(piece_key="gulls", time_ms=BEGAN_MS))
    assert done.turn is not None
    assert done.turn.piece_key == "low-tide"
    assert advance(done, CoatLaid(piece_key="stranger", time_ms=BEGAN_MS)) == done


def test_that_each_timer_is_told_once_however_late() -> None:
    resting = after(ticked(Task.BOTTLE), ticked(Task.WIPE), ticked(Task.LEVEL))
    assert rested(resting, BEGAN_MS + 9 * MINUTE_MS) == ()
    slept = BEGAN_MS + 50 * MINUTE_MS
    over = tuple(one.chore.task for one in rested(resting, slept))
    assert over == (Task.BOTTLE, Task.WIPE)
    assert rested(advance(resting, Told(tasks=over)), slept) == ()
    again = after(ticked(Task.BOTTLE, 60), begun=advance(resting, Told(tasks=over)))
    assert [one.chore.task for one in rested(again, BEGAN_MS + 76 * MINUTE_MS)] == [Task.BOTTLE]


def test_that_a_clock_that_was_set_shortens_no_rest() -> None:
    step_ms = 3_600_000
    resting = after(ticked(Task.BOTTLE))
    assert chores_now(shifted(resting, step_ms), BEGAN_MS + step_ms + 5 * MINUTE_MS)[0].state is ChoreState.RESTING
    assert chores_now(resting, BEGAN_MS + step_ms + 5 * MINUTE_MS)[0].state is ChoreState.DONE


def test_that_a_forgotten_preparation_is_over_and_an_ended_one_takes_nothing_more() -> None:
    assert phase_at(BEGUN, BEGAN_MS + FORGOTTEN_MS + 1) is Phase.ENDED
    ended = after(Ended(time_ms=BEGAN_MS))
    assert after(ticked(Task.BOTTLE), TorchChosen(torch=True), begun=ended) == ended


def test_that_a_tick_can_be_taken_back() -> None:
    assert after(ticked(Task.LEVEL), Unticked(task=Task.LEVEL)) == BEGUN


@pytest.mark.parametrize(("solvent", "vapour"), [(True, False), (False, True), (True, True)])
def test_that_no_torch_is_prepared_for_where_there_is_solvent_and_fresh_air_is_on(solvent: bool, vapour: bool) -> None:  # noqa: FBT001
    chores = {one.task: one for one in chores_for(solvent=solvent, torch=True, vapour_in_room=vapour)}
    assert Task.NO_SOLVENT not in chores
    assert "Fresh air" in chores[Task.WINDOW].words
    assert not any("clos" in one.words.lower() or "shut" in one.words.lower() for one in chores.values())


def test_that_a_torch_brings_the_extinguisher_and_keeps_solvent_out() -> None:
    without = {one.task for one in BEGUN.chores}
    assert {one.task for one in after(TorchChosen(torch=True)).chores} - without == {
        Task.EXTINGUISHER,
        Task.NO_SOLVENT,
    }


def test_that_window_and_fans_are_seen_to_anew_once_vapour_comes_into_the_room() -> None:
    done = after(*all_ticked(), RoomLookedAt(vapour_in_room=True))
    assert {task for task, state in states(done, 20).items() if state is ChoreState.TO_DO} == {
        Task.WINDOW,
        Task.AIR_OFF,
    }


@given(
    st.lists(
        st.one_of(
            st.builds(Ticked, task=st.sampled_from(Task), time_ms=st.integers(BEGAN_MS, BEGAN_MS + 10_000_000)),
            st.builds(Unticked, task=st.sampled_from(Task)),
            st.builds(TorchChosen, torch=st.booleans()),
            st.builds(CoatLaid, piece_key=st.sampled_from((*PIECES, "x")), time_ms=st.just(BEGAN_MS)),
        ),
        max_size=30,
    )
)
def test_that_whatever_comes_a_task_is_ticked_at_most_once_and_coats_keep_their_order(events: list[Event]) -> None:
    made = after(*events)
    tasks = [tick.task for tick in made.ticks]
    assert len(tasks) == len(set(tasks))
    assert tuple(coat.piece_key for coat in made.coats) == PIECES
    assert (made.turn is None) == (made.ended_ms is not None)
