"""The sentence, the prompts, the warnings, the board's line, and when they must be drawn."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

from studiowatch.board.events import LineCounts
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level
from studiowatch.ui.models.board import board_line
from studiowatch.ui.models.notices import next_prompt_words, prompt_rows, sentence_card, warning_rows
from studiowatch.ui.models.pace import STALLED, events_of, stalled, wet_titles
from studiowatch.ui.models.tones import SHAPES, Tone

from .scenes import (
    AIR_WARNING,
    BLIND,
    EMPTY,
    FIRST_RUN,
    FOUR_CALM,
    FOUR_WARNED,
    HEARD,
    NOW_MS,
    PAST_WARNINGS,
    SILENT,
    UNCALIBRATED,
    warning,
)


def test_that_every_level_has_a_shape_of_its_own() -> None:
    assert len(set(SHAPES.values())) == len(Level)


def test_that_the_card_answers_the_warning_it_speaks_of() -> None:
    other = warning("w0", BLIND, WarningState.RAISED, 1000)
    snapshot = replace(FOUR_WARNED, warnings=(other, AIR_WARNING))
    assert sentence_card(snapshot, UTC).warning_key == "w1"
    assert sentence_card(snapshot, UTC).can_hear


def test_that_a_calm_sentence_has_nothing_to_answer() -> None:
    card = sentence_card(FOUR_CALM, UTC)
    assert (card.warning_key, card.can_hear) == ("", False)


def test_that_a_heard_or_put_off_warning_says_so() -> None:
    assert sentence_card(HEARD, UTC).note == "heard"
    until = replace(AIR_WARNING, state=WarningState.REMIND, remind_ms=NOW_MS + 600_000)
    card = sentence_card(replace(FOUR_WARNED, warnings=(until,)), UTC)
    assert (card.note, card.can_hear) == ("quiet until 14:22", False)


def test_that_prompts_come_soonest_first_and_late_ones_say_so() -> None:
    shuffled = replace(FOUR_WARNED, prompts=FOUR_WARNED.prompts[::-1])
    rows = prompt_rows(shuffled, UTC)
    assert [row.key for row in rows] == ["p1", "p2", "p3", "p4", "p5"]
    assert rows[0].when == "now, since 14:10 · Blue Ladder"
    assert rows[0].tone is Tone.CAUTION
    assert "Torch" in rows[0].spoken
    assert rows[4].when == "Thu 08:12 · Orchard at Low Water"


def test_that_the_next_prompt_is_said_for_the_far_end_of_the_room() -> None:
    assert next_prompt_words(FOUR_WARNED, UTC).startswith("Second bubble pass, scrape drips\nnow")
    assert next_prompt_words(EMPTY, UTC) == "Nothing to do at the rack"


def test_that_warnings_say_what_since_when_and_which_pieces() -> None:
    rows = warning_rows(FOUR_WARNED, UTC)
    assert rows[0].when == "since 14:07 · Orchard at Low Water, Blue Ladder"
    assert (rows[0].is_open, rows[0].can_hear) == (True, True)
    assert rows[1].when == "08:12 · 12 min · Lamp in the Fog"
    assert rows[2].when == "Tue 12:12 · 12 min · no coat was wet"
    assert not any(row.is_open for row in rows[1:])


def test_that_the_board_line_counts_what_was_lost() -> None:
    assert board_line(FOUR_WARNED).words == "Board on ttyUSB0 · SHT4x · last reading just now · none lost"
    said = board_line(UNCALIBRATED).words
    for part in ("1,204 lost", "3 faulty", "unchecked lines"):
        assert part in said
    over = replace(FOUR_WARNED, board=replace(FOUR_WARNED.board, overflowed=7, counts=LineCounts()))
    assert "7 could not be kept up with" in board_line(over).words


def test_that_trouble_with_the_records_comes_before_the_board() -> None:
    full = replace(FOUR_WARNED, store_trouble="The disk is full: free some space; readings wait in memory.")
    assert (board_line(full).words, board_line(full).tone) == (full.store_trouble, Tone.ACT)


def test_that_a_board_that_is_away_says_what_to_do() -> None:
    assert "plug it in" in board_line(FIRST_RUN).words
    assert board_line(SILENT).words == "The board on ttyUSB0 was unplugged."


def test_that_drift_is_no_event_and_a_change_of_level_is() -> None:
    warmer = replace(FOUR_WARNED, time_ms=NOW_MS + 900, room=replace(FOUR_WARNED.room, temperature_C=22.0))
    assert events_of(warmer) == events_of(FOUR_WARNED)
    milder = replace(AIR_WARNING, level=Level.CAUTION)
    assert events_of(replace(FOUR_WARNED, warnings=(milder, *PAST_WARNINGS))) != events_of(FOUR_WARNED)
    assert events_of(HEARD) != events_of(FOUR_WARNED)
    assert events_of(replace(FOUR_WARNED, prompts=())) != events_of(FOUR_WARNED)


def test_that_a_stopped_watch_is_said_and_its_figures_are_old() -> None:
    old = stalled(FOUR_CALM)
    assert old.sentence == STALLED
    assert old.board.silent


def test_that_the_wet_pieces_are_named() -> None:
    assert wet_titles(FOUR_CALM) == ("Orchard at Low Water", "Blue Ladder", "Lamp in the Fog")
    assert wet_titles(EMPTY) == ()
