"""The sentence, the warnings, the board's line, and when they must be drawn."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

import pytest

from studiowatch.board.events import LineCounts
from studiowatch.studio.concern import Kind
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.board import board_line
from studiowatch.ui.models.notices import PAST_ROWS, sentence_card, warning_rows
from studiowatch.ui.models.pace import NEVER_SPOKE, STALLED, is_event, stalled, wet_titles

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


def test_that_the_card_answers_the_warning_it_speaks_of() -> None:
    other = warning("w0", BLIND, WarningState.RAISED, 1000)
    snapshot = replace(FOUR_WARNED, warnings=(other, AIR_WARNING))
    assert sentence_card(snapshot, UTC).warning_key == "w1"
    assert sentence_card(snapshot, UTC).can_hear


def test_that_a_calm_sentence_has_nothing_to_answer() -> None:
    card = sentence_card(FOUR_CALM, UTC)
    assert (card.warning_key, card.can_hear) == ("", False)


def test_that_a_heard_or_put_off_warning_says_so() -> None:
    heard = sentence_card(HEARD, UTC)
    assert (heard.note, heard.can_hear, heard.can_remind) == ("heard", False, False)
    until = replace(AIR_WARNING, state=WarningState.REMIND, remind_ms=NOW_MS + 600_000)
    card = sentence_card(replace(FOUR_WARNED, warnings=(until,)), UTC)
    assert card.note == "put off until 14:22"
    assert (card.can_hear, card.can_remind) == (True, False)


def test_that_warnings_say_what_since_when_and_which_pieces() -> None:
    rows = warning_rows(FOUR_WARNED, UTC)
    assert rows[0].when == "since 14:07 · Orchard at Low Water, Blue Ladder"
    assert (rows[0].is_open, rows[0].can_hear) == (True, True)
    assert rows[1].when == "08:12 · 12 min · Lamp in the Fog"
    assert rows[2].when == "Tue 12:12 · 12 min · no coat was wet"
    assert not any(row.is_open for row in rows[1:])


@pytest.mark.parametrize(
    ("kind", "now", "past"),
    [
        (Kind.AIR_MOVING, "Air is moving over one wet coat", "Air moved over one wet coat"),
        (Kind.TOO_COLD, "Too cold for two drying coats", "It was too cold for two drying coats"),
        (Kind.DAMP, "It is getting damp for one drying coat", "It was getting damp for one drying coat"),
        (Kind.NEAR_DEW_POINT, "Water may settle on one drying coat", "Water may have settled on one drying coat"),
        (Kind.BOARD_SILENT, "The board is silent: one wet coat", "The board was silent: one wet coat"),
        (Kind.READING_IMPLAUSIBLE, "A reading cannot be right", "A reading could not be right"),
    ],
)
def test_that_a_past_warning_is_told_in_the_past(kind: Kind, now: str, past: str) -> None:
    sentence = Sentence(level=Level.ACT, headline=now)
    open_one = warning("w1", sentence, WarningState.RAISED, 60_000, kind=kind.value)
    gone = warning("w2", sentence, WarningState.CLEARED, 3_600_000, kind=kind.value)
    rows = warning_rows(replace(FOUR_WARNED, warnings=(open_one, gone)), UTC)
    assert [row.headline for row in rows] == [now, past]


def test_that_only_the_latest_past_warnings_stand_below_those_that_are_open() -> None:
    sentence = Sentence(level=Level.ACT, headline="Too damp for one drying coat")
    still = [warning(f"now {at}", sentence, WarningState.HEARD, 60_000, kind=Kind.DAMP.value) for at in range(2)]
    gone = [
        warning(f"{at} h ago", sentence, WarningState.CLEARED, at * 3_600_000, kind=Kind.DAMP.value)
        for at in range(1, 51)
    ]
    keys = [row.key for row in warning_rows(replace(FOUR_WARNED, warnings=(*still, *gone)), UTC)]
    assert keys == ["now 0", "now 1", *(f"{at} h ago" for at in range(1, PAST_ROWS + 1))]


def test_that_the_sentence_says_which_pieces_and_since_when() -> None:
    assert sentence_card(FOUR_WARNED, UTC).where == "Orchard at Low Water, Blue Ladder · since 14:07"
    assert sentence_card(FOUR_CALM, UTC).where == ""


def test_that_the_board_line_counts_what_was_lost() -> None:
    assert board_line(FOUR_WARNED).words == "Board on ttyUSB0 · SHT4x · last reading just now · none lost"
    said = board_line(UNCALIBRATED).words
    for part in ("1,204 lost", "3 faulty", "unchecked lines"):
        assert part in said
    over = replace(FOUR_WARNED, board=replace(FOUR_WARNED.board, overflowed=7, counts=LineCounts()))
    assert "7 could not be kept up with" in board_line(over).words


def test_that_trouble_of_our_own_stands_beside_the_board() -> None:
    full = replace(FOUR_WARNED, store_trouble="The disk is full: free some space; readings wait in memory.")
    assert board_line(full).trouble == full.store_trouble
    both = replace(full, own_fault="The watch met a fault of its own.")
    assert board_line(both).trouble == f"{both.own_fault} {full.store_trouble}"
    assert board_line(both).words == board_line(FOUR_WARNED).words
    assert is_event(full, both)
    assert board_line(FOUR_WARNED).trouble == ""


def test_that_a_board_that_is_away_says_what_to_do() -> None:
    assert "plug it in" in board_line(FIRST_RUN).words
    assert board_line(SILENT).words == "The board on ttyUSB0 was unplugged."


def test_that_drift_is_no_event_and_a_change_of_level_is() -> None:
    warmer = replace(FOUR_WARNED, time_ms=NOW_MS + 900, room=replace(FOUR_WARNED.room, temperature_C=22.0))
    assert not is_event(FOUR_WARNED, warmer)
    milder = replace(AIR_WARNING, level=Level.CAUTION)
    assert is_event(FOUR_WARNED, replace(FOUR_WARNED, warnings=(milder, *PAST_WARNINGS)))
    assert is_event(FOUR_WARNED, HEARD)
    assert is_event(FOUR_WARNED, replace(FOUR_WARNED, prompts=()))


def test_that_a_stopped_watch_is_said_and_its_figures_are_old() -> None:
    old = stalled(FOUR_CALM, NOW_MS)
    assert old.sentence == STALLED
    assert old.board.silent
    assert stalled(None, NOW_MS).sentence == NEVER_SPOKE


def test_that_the_wet_pieces_are_named() -> None:
    assert wet_titles(FOUR_CALM) == ("Orchard at Low Water", "Blue Ladder", "Lamp in the Fog")
    assert wet_titles(EMPTY) == ()
