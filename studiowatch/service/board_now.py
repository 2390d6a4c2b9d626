"""The board as she sees it, after each of its events: connected or not, what it lost, what it says of itself."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from studiowatch.board.events import (
    BoardEvent,
    BoardNamed,
    BoardTrouble,
    LineRefused,
    MappingAsked,
    MappingHolds,
    NumbersSeen,
    PortLost,
    PortOpened,
    ReadingArrived,
)
from studiowatch.room.readings import Reading
from studiowatch.service.board_view import BoardView
from studiowatch.service.columns_view import ColumnsView
from studiowatch.speech.words import mark, say

TROUBLES: Mapping[str, str] = MappingProxyType(  # the board's own words, as the notes on its wire format list them
    {
        "bus": mark("the wires to its sensor are stuck; check the sensor's wires"),
        "nak": mark("its sensor does not answer; check the sensor's wires"),
        "none": mark("it finds no sensor; check the sensor's wires"),
        "crc": mark("what its sensor sends arrives spoilt; check the sensor's wires, and shorten them"),
        "busy": mark("its sensor is not ready; if this stays, pull the board's plug and push it home again"),
        "range": mark("its sensor gives numbers that make no sense; check the sensor"),
    }
)
SAY_COLUMNS = mark("The board runs a sketch of its own: say on the board page what its numbers are.")
COLUMNS = "columns"  # in the place of the board's own word, until she said it
OTHER_TROUBLE = mark("something is wrong; check its sensor and wires")


def followed(board: BoardView, event: BoardEvent) -> BoardView:
    """Return the board after `event`."""
    match event:
        case ReadingArrived(reading=reading):
            board = board if _goes_on(board, reading) else replace(board, trouble="", trouble_code=None)
            board = replace(board, counts=event.counts, last_ms=reading.time_ms, checked=reading.checked)
        case BoardTrouble():
            board = replace(board, counts=event.counts, trouble=trouble_sentence(event), trouble_code=event.code)
        case PortOpened():
            board = replace(board, connected=True, port=event.port, board=event.board, trouble="", trouble_code=None)
        case PortLost():
            board = replace(
                board, connected=False, port=event.port, trouble=event.reason, trouble_code=None, columns=None
            )
        case BoardNamed():
            board = replace(board, sensor=event.sensor)
        case LineRefused():
            board = replace(board, counts=event.counts)
        case MappingAsked() | MappingHolds() | NumbersSeen():
            board = _of_columns(board, event)
    return board


def _of_columns(board: BoardView, event: MappingAsked | MappingHolds | NumbersSeen) -> BoardView:
    """Return the board after what a sketch of its own sent, or after she said what that is."""
    match event:
        case MappingAsked():
            columns = ColumnsView(mapping=event.mapping, samples=event.samples)
            return replace(board, columns=columns, trouble=say(SAY_COLUMNS), trouble_code=COLUMNS, checked=False)
        case MappingHolds():
            columns = ColumnsView(mapping=event.mapping, accepted=True)
            return replace(board, columns=columns, trouble="", trouble_code=None, checked=False)
        case NumbersSeen() if board.columns is not None:
            seen = replace(board.columns, numbers=event.numbers, numbers_ms=event.time_ms)
            return replace(board, columns=seen)
    return board


def stands_otherwise(before: BoardView, after: BoardView) -> bool:
    """Return whether the board stands otherwise, and did not only send more of the same."""
    is_first = before.last_ms is None and after.last_ms is not None
    return is_first or replace(after, counts=before.counts, last_ms=before.last_ms) != before


def noted(before: BoardView, after: BoardView, event: BoardEvent) -> tuple[int, str, str] | None:
    """Return what is worth a note of an event that made `after` of the board, or None: UTC ms, kind and text."""
    match event:
        case ReadingArrived() if after.counts.resets > before.counts.resets:
            return event.reading.time_ms, "board-reset", say("The board started again.")
        case BoardTrouble() if after.trouble != before.trouble:
            return event.time_ms, "board-trouble", after.trouble
        case PortLost():
            return event.time_ms, "port-lost", event.reason
        case BoardNamed():
            return event.time_ms, "board", f"{event.board_id} {event.sensor} {event.sensor_serial}"
    return None


def trouble_sentence(trouble: BoardTrouble) -> str:
    """Return in one sentence what the board says, with its own words in brackets."""
    own_words = " ".join(word.replace("_", " ") for word in (trouble.code, trouble.message) if word)
    said = say(TROUBLES.get(trouble.code, OTHER_TROUBLE))
    if not own_words:
        return say("The board says that {trouble}.", trouble=said)
    return say("The board says that {trouble} ({own_words}).", trouble=said, own_words=own_words)


def _goes_on(board: BoardView, reading: Reading) -> bool:
    """Tell whether what the board said of itself still holds: one line says it, the data lines go on saying it."""
    return board.trouble_code is None or any(fault.code == board.trouble_code for fault in reading.faults)
