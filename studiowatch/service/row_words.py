"""Why rows of a log are refused, in her words."""

from __future__ import annotations

from studiowatch.board.room_log_cells import FaultKind
from studiowatch.speech.words import mark, say

_KINDS = {
    FaultKind.CSV: mark("no CSV"),
    FaultKind.CELLS: mark("wrong number of cells"),
    FaultKind.TIME: mark("time that cannot be read"),
    FaultKind.NIGHT: mark("local time that is missing or comes twice that night"),
    FaultKind.ORDER: mark("time before that of an earlier row"),
    FaultKind.SAME_TIME: mark("another reading at the same time"),
    FaultKind.NUMBER: mark("no number"),
    FaultKind.UNIT: mark("another unit"),
    FaultKind.RANGE: mark("out of range"),
    FaultKind.COVER: mark("cover that is neither 0 nor 1"),
}


def kind_word(kind: FaultKind) -> str:
    """Return what a summary calls the faults of a kind."""
    return say(_KINDS[kind])
