"""Which board was read last, kept in a small file beside the records: it is tried first at the next start."""

from __future__ import annotations

import json
import logging
from pathlib import Path
from typing import Any

from studiowatch.board.kept_file import write_kept
from studiowatch.board.port import PortSeen

_LOG = logging.getLogger(__name__)


class BoardMemory:
    """Recalls a board and keeps it. A file that cannot be read or written costs the memory, never the watch."""

    def __init__(self, path: Path) -> None:
        self._path = path

    def recall(self) -> PortSeen | None:
        """Return the board that was read last, or None if none is known."""
        try:
            kept: dict[str, Any] = json.loads(self._path.read_text("utf-8"))
            return PortSeen(
                name=str(kept["port"]), vid=_number(kept["vid"]), pid=_number(kept["pid"]), serial=_text(kept["serial"])
            )
        except FileNotFoundError:
            return None
        except (OSError, ValueError, TypeError, KeyError) as fault:
            _LOG.warning("%s tells no board (%s); all ports are tried alike.", self._path, fault)  # not said
            return None

    def keep(self, board: PortSeen) -> None:
        """Keep `board` for the next start."""
        kept = {"port": board.name, "vid": board.vid, "pid": board.pid, "serial": board.serial}
        try:
            write_kept(self._path, kept)
        except OSError as fault:
            _LOG.warning("The board cannot be remembered in %s (%s).", self._path, fault)  # not said


def _number(kept: object) -> int | None:
    return None if kept is None else int(str(kept))


def _text(kept: object) -> str | None:
    return None if kept is None else str(kept)
