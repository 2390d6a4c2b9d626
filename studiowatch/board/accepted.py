"""What she accepted of a board's columns, on its way from her thread to the reader's: no other board is read by it."""

from __future__ import annotations

from threading import Lock

from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import PortSeen


class Accepted:
    """Holds the newest mapping that she accepted until its board is heard. Every call may come from any thread."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._held: tuple[PortSeen, ColumnMapping] | None = None

    def give(self, board: PortSeen, mapping: ColumnMapping) -> None:
        """Hold `mapping` for `board`, in the place of what was held."""
        with self._lock:
            self._held = (board, mapping)

    def take(self, board: PortSeen) -> ColumnMapping | None:
        """Return what is held for `board`, once, or None; what is held for another stays."""
        with self._lock:
            if self._held is None or not self._held[0].is_same_board(board):
                return None
            (_, mapping), self._held = self._held, None
            return mapping
