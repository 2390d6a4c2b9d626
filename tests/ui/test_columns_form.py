"""What an own sketch's numbers are, without a window."""

from __future__ import annotations

import pytest

from studiowatch.board.column_tests import ACT_MS, QUIET_MS, Kind, Verdict, begin
from studiowatch.board.mapping import Choice, Outcome, Sureness
from studiowatch.room.readings import Channel
from studiowatch.service.columns_view import ColumnsView
from studiowatch.ui.models.columns_form import (
    ColumnsDraft,
    column_rows,
    doing,
    is_over,
    unsaid_sentence,
)
from studiowatch.ui.models.tones import Tone

from .board_scenes import ask_columns

WARM, HUMID = Choice(Channel.TEMPERATURE, "°C"), Choice(Channel.HUMIDITY, "%")


@pytest.fixture
def view() -> ColumnsView:
    columns = ask_columns().board.columns
    assert columns is not None
    return columns


def test_that_each_column_is_shown_with_its_number_and_asked(view: ColumnsView) -> None:
    rows = column_rows(view, view.mapping)
    assert [row.number for row in rows] == ["21.1", "47", "512"]
    assert {row.chosen for row in rows} == {None}
    assert {row.tone for row in rows} == {Tone.CAUTION}
    assert "air temperature in °C" in [option.words for option in rows[0].options]
    assert "not used" in [option.words for option in rows[0].options]
    assert len({option.words for option in rows[0].options}) == len(rows[0].options)


def test_that_what_she_says_is_chosen_and_nothing_is_left_to_ask(view: ColumnsView) -> None:
    one, two, three = view.mapping.keys
    draft = ColumnsDraft().with_word(view, one, WARM).with_word(view, two, HUMID)
    assert unsaid_sentence(draft.mapping(view)) == f"Say what {three} is, or choose “not used”."
    draft = draft.with_word(view, three, None)
    mapping = draft.mapping(view)
    assert unsaid_sentence(mapping) == ""
    assert mapping.chosen == {one: WARM, two: HUMID}
    chosen = [row.options[row.chosen].words for row in column_rows(view, mapping) if row.chosen is not None]
    assert chosen == ["air temperature in °C", "relative humidity in %", "not used"]


def test_that_two_columns_may_be_exchanged_one_after_the_other(view: ColumnsView) -> None:
    one, two, _ = view.mapping.keys
    draft = ColumnsDraft().with_word(view, one, HUMID).with_word(view, two, WARM)
    with pytest.raises(ValueError, match="not used"):
        draft.with_word(view, one, WARM)
    draft = draft.with_word(view, two, None).with_word(view, one, WARM).with_word(view, two, HUMID)
    assert draft.mapping(view).chosen == {one: WARM, two: HUMID}


def test_that_all_not_used_is_not_enough(view: ColumnsView) -> None:
    draft = ColumnsDraft()
    for key in view.mapping.keys:
        draft = draft.with_word(view, key, None)
    assert "one at least" in unsaid_sentence(draft.mapping(view))


def test_that_a_test_settles_a_column_and_her_own_word_outdoes_it(view: ColumnsView) -> None:
    _, two, _ = view.mapping.keys
    verdict = Verdict(found={two: (Channel.HUMIDITY,), "gone": (Channel.TEMPERATURE,)}, why="It jumped.")
    column = ColumnsDraft(verdicts=(verdict,)).mapping(view).column(two)
    assert {choice.channel for choice in ((column.choice,) if column.choice else column.candidates)} == {
        Channel.HUMIDITY
    }
    assert "It jumped." in column.why
    by_hand = ColumnsDraft(verdicts=(verdict,)).with_word(view, two, WARM).mapping(view).column(two)
    assert (by_hand.choice, by_hand.outcome, by_hand.sureness) == (WARM, Outcome.MAPPED, Sureness.BY_HAND)


def test_that_a_test_says_what_to_do_and_for_how_long() -> None:
    test = begin(Kind.BREATH, 0)
    assert doing(test, 4000).told.startswith("Stand back")
    assert doing(test, 4000).left_s == (QUIET_MS - 4000) // 1000
    assert doing(test, QUIET_MS + 1).told.startswith("Breathe")
    assert doing(test, QUIET_MS + 10_000).left_s == (ACT_MS - 10_000) // 1000
    assert not is_over(test, QUIET_MS + ACT_MS - 1)
    assert is_over(test, QUIET_MS + ACT_MS)
