"""The words for how the board does, and for the calibrations that hold."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

import pytest

from studiowatch.board.onlooker import HeardLine
from studiowatch.service.board_view import BoardView
from studiowatch.studio.words import Level
from studiowatch.ui.models.board_now import HEALTHY, board_health, last_words, line_counts, line_words
from studiowatch.ui.models.holding import holding_rows
from studiowatch.ui.models.tones import Tone

from .board_scenes import HEALTH, HOLDING, READ, UNREAD, UNWELL
from .scenes import DAY_MS, NOW_MS


def test_that_a_good_board_is_called_good() -> None:
    health = board_health(READ)
    assert (health.level, health.words, health.is_good) == (Level.CALM, HEALTHY, True)


@pytest.mark.parametrize(
    ("board", "said"),
    [
        (UNWELL.board, HEALTH),
        (UNREAD.board, UNREAD.board.trouble),
        (replace(READ.board, silent=True, last_ms=NOW_MS - 40_000), "its last reading came 40 s ago"),
        (BoardView(), "plug it in"),
    ],
)
def test_that_what_is_wrong_is_said_in_one_sentence(board: BoardView, said: str) -> None:
    health = board_health(replace(READ, board=board))
    assert health.level is Level.CAUTION
    assert said in health.words
    assert not health.is_good


def test_that_only_counts_of_trouble_that_happened_stand_out() -> None:
    good, refused, lost, restarts = line_counts(READ.board)
    assert (good.value, good.tone) == ("48,211", Tone.INK)
    assert (refused.value, refused.tone, lost.value) == ("3", Tone.CAUTION, "2")
    assert restarts.value == "1"
    assert line_counts(BoardView())[1].tone is Tone.MUTED
    assert line_counts(replace(READ.board, overflowed=7))[-1].name == "not kept up with"


def test_that_the_age_of_the_last_reading_is_told() -> None:
    old = replace(READ, board=replace(READ.board, last_ms=NOW_MS - 3 * 60_000))
    assert last_words(old) == "Last reading 3 min ago."


def test_that_a_line_has_the_time_at_which_it_came() -> None:
    assert line_words(HeardLine(number=1, time_ms=NOW_MS, text="$D n=0*5962"), UTC) == "14:12:00  $D n=0*5962"


def test_that_the_newest_calibration_stands_first_and_a_check_that_is_due_stands_out() -> None:
    air, humidity = holding_rows(READ.calibrations, NOW_MS, UTC)
    assert air.title == "Air speed, sensor CAFE0042"
    assert (air.recheck, air.recheck_tone) == ("To be checked again from 29 Mar", Tone.MUTED)
    assert (humidity.recheck, humidity.recheck_tone) == ("A check is due since 3 Mar", Tone.CAUTION)
    assert humidity.made == "Made 1 Feb 14:12, on the board now"
    assert humidity.question == "Withdraw the calibration of humidity, sensor CAFE0042?"


def test_that_a_calibration_of_another_sensor_stands_last() -> None:
    away = replace(HOLDING[1], is_present=False, made_ms=NOW_MS - DAY_MS)
    rows = holding_rows(replace(READ.calibrations, holding=(away, HOLDING[0])), NOW_MS, UTC)
    assert [row.title.split(",")[0] for row in rows] == ["Humidity", "Air speed"]
    assert "not on the board now" in rows[1].made
