"""The board as she sees it: what it says of itself stands until its data lines no longer say it."""

from __future__ import annotations

import pytest

from studiowatch.board.events import (
    BoardTrouble,
    LineCounts,
    MappingAsked,
    MappingHolds,
    NumbersSeen,
    PortLost,
    PortOpened,
    ReadingArrived,
)
from studiowatch.board.loose_lines import Style
from studiowatch.board.mapping import ColumnMapping
from studiowatch.room.readings import Channel, ChannelFault, Reading
from studiowatch.service.board_now import SAY_COLUMNS, TROUBLES, followed, trouble_sentence
from studiowatch.service.board_view import BoardView
from studiowatch.service.columns_view import ColumnsView

from .rooms import START_MS

OPEN = BoardView(connected=True, port="COM3")


def trouble(code: str = "bus", message: str = "timeout") -> BoardTrouble:
    return BoardTrouble(time_ms=START_MS, code=code, message=message, counts=LineCounts(good=1, troubles=1))


def reading(*codes: str) -> ReadingArrived:
    faults = tuple(ChannelFault(channel=Channel.TEMPERATURE, code=code) for code in codes)
    return ReadingArrived(reading=Reading(time_ms=START_MS, faults=faults), counts=LineCounts(good=2, troubles=1))


def test_that_a_stuck_bus_is_told_with_what_to_check_and_the_boards_own_words() -> None:
    board = followed(OPEN, trouble())
    assert board.trouble == (
        "The board says that the wires to its sensor are stuck; check the sensor's wires (bus timeout)."
    )
    assert board.connected
    assert board.counts.troubles == 1


def test_that_it_stands_while_the_data_lines_go_on_saying_it() -> None:
    board = followed(followed(OPEN, trouble()), reading("bus"))
    assert board.trouble
    assert followed(board, reading()).trouble == ""
    assert followed(board, reading("nak")).trouble == ""


@pytest.mark.parametrize(
    "event", [PortOpened(time_ms=0, port="COM3", board="COM3"), PortLost(time_ms=0, port="COM3", reason="Gone.")]
)
def test_that_another_port_begins_without_it(event: PortOpened | PortLost) -> None:
    board = followed(followed(followed(OPEN, trouble()), event), reading("bus"))
    assert "The board says" not in board.trouble


def test_that_a_lost_port_stays_told_until_it_is_opened() -> None:
    board = followed(OPEN, PortLost(time_ms=0, port="COM3", reason="Gone."))
    assert followed(board, reading()).trouble == "Gone."
    assert followed(board, PortOpened(time_ms=0, port="COM3", board="COM3")).trouble == ""


@pytest.mark.parametrize("code", [*TROUBLES, "heap", ""])
@pytest.mark.parametrize("message", ["", "no_pull_up"])
def test_that_every_trouble_is_one_sentence_that_says_what_to_do(code: str, message: str) -> None:
    sentence = trouble_sentence(trouble(code, message))
    assert sentence.startswith("The board says that ")
    assert sentence.endswith(".")
    assert "check" in sentence or "plug" in sentence
    assert "()" not in sentence


def test_that_an_own_sketch_waits_for_her_word_and_says_so() -> None:
    mapping = ColumnMapping(style=Style.COLUMNS, columns=())
    board = followed(OPEN, MappingAsked(time_ms=START_MS, mapping=mapping, samples=("21.0,47.0",)))
    assert board.trouble == SAY_COLUMNS
    assert not board.checked
    board = followed(board, NumbersSeen(time_ms=START_MS, numbers=(("1", 21.0),)))
    assert board.columns == ColumnsView(
        mapping=mapping, samples=("21.0,47.0",), numbers=(("1", 21.0),), numbers_ms=START_MS
    )
    board = followed(board, MappingHolds(time_ms=START_MS, mapping=mapping))
    assert board.columns == ColumnsView(mapping=mapping, accepted=True)
    assert board.trouble == ""
    assert followed(board, PortLost(time_ms=0, port="COM3", reason="Gone.")).columns is None
