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
    PortLost,
    PortOpened,
    ReadingArrived,
)
from studiowatch.room.readings import Reading
from studiowatch.service.snapshot import BoardView

TROUBLES: Mapping[str, str] = MappingProxyType(  # the board's own words, as the notes on its wire format list them
    {
        "bus": "the wires to its sensor are stuck; check the sensor's wires",
        "nak": "its sensor does not answer; check the sensor's wires",
        "none": "it finds no sensor; check the sensor's wires",
        "crc": "what its sensor sends arrives spoilt; check the sensor's wires, and shorten them",
        "busy": "its sensor is not ready; if this stays, pull the board's plug and push it home again",
        "range": "its sensor gives numbers that make no sense; check the sensor",
    }
)
OTHER_TROUBLE = "something is wrong; check its sensor and wires"


def followed(board: BoardView, event: BoardEvent) -> BoardView:
    """Return the board after `event`."""
    match event:
        case ReadingArrived(reading=reading):
            board = board if _goes_on(board, reading) else replace(board, trouble="", trouble_code=None)
            return replace(board, counts=event.counts, last_ms=reading.time_ms, checked=reading.checked)
        case BoardTrouble():
            return replace(board, counts=event.counts, trouble=trouble_sentence(event), trouble_code=event.code)
        case PortOpened():
            return replace(board, connected=True, port=event.port, trouble="", trouble_code=None)
        case PortLost():
            return replace(board, connected=False, port=event.port, trouble=event.reason, trouble_code=None)
        case BoardNamed():
            return replace(board, sensor=event.sensor)
        case LineRefused():
            board = replace(board, counts=event.counts)
    return board


def trouble_sentence(trouble: BoardTrouble) -> str:
    """Return in one sentence what the board says, with its own words in brackets."""
    own_words = " ".join(word.replace("_", " ") for word in (trouble.code, trouble.message) if word)
    said = TROUBLES.get(trouble.code, OTHER_TROUBLE)
    return f"The board says that {said}{f' ({own_words})' if own_words else ''}."


def _goes_on(board: BoardView, reading: Reading) -> bool:
    """Tell whether what the board said of itself still holds: one line says it, the data lines go on saying it."""
    return board.trouble_code is None or any(fault.code == board.trouble_code for fault in reading.faults)
