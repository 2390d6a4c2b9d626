"""The board as she sees it, frozen."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.board.events import LineCounts
from studiowatch.service.columns_view import ColumnsView


@dataclass(frozen=True, slots=True, kw_only=True)
class BoardView:
    """The board as she sees it: connected or not, and what it lost.

    Attributes
    ----------
    board : str
        What the board is known by: its USB numbers, or its port's name without them.
    last_ms : int or None
        UTC ms of the last reading; `silent` is True once that is too long ago.
    trouble, trouble_code : str, str or None
        What is wrong, one sentence, and the board's own word for it while that is what it told.
    health : str
        What is wrong with the sensor's readings, one sentence, or "".
    columns : ColumnsView or None
        None for a board that sends checked lines.
    """

    connected: bool = False
    port: str = ""
    board: str = ""
    sensor: str = ""
    trouble: str = ""
    trouble_code: str | None = None
    last_ms: int | None = None
    silent: bool = False
    health: str = ""
    checked: bool = True
    counts: LineCounts = LineCounts()
    overflowed: int = 0
    columns: ColumnsView | None = None
