"""What she accepted of each board's columns, kept in a small file beside the records."""

from __future__ import annotations

import json
import logging
from pathlib import Path
from typing import Any

from studiowatch.board.kept_file import write_kept
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import PortSeen

_LOG = logging.getLogger(__name__)


class MappingMemory:
    """Recalls the mapping of a board and keeps it. A file that cannot be read costs the memory, never the watch."""

    def __init__(self, path: Path) -> None:
        self._path = path

    def recall(self, board: PortSeen) -> ColumnMapping | None:
        """Return what was accepted of `board`, or None."""
        try:
            plain = self._kept().get(board.identity)
            return None if plain is None else ColumnMapping.from_plain(plain)
        except OSError as fault:
            _LOG.warning("%s cannot be read (%s); she is asked anew.", self._path, fault)  # not said
            return None
        except (ValueError, AttributeError) as fault:
            _LOG.warning("%s: %s", self._path, fault)
            return None

    def keep(self, board: PortSeen, mapping: ColumnMapping) -> None:
        """Keep `mapping` for `board`.

        Raises
        ------
        OSError
            If it cannot be written, or if those of other boards, which stay in the file, cannot be read.
        """
        write_kept(self._path, self._kept() | {board.identity: mapping.to_plain()})

    def _kept(self) -> dict[str, Any]:
        try:
            kept = json.loads(self._path.read_text("utf-8"))
        except FileNotFoundError:
            return {}
        except ValueError as fault:
            _LOG.warning("%s tells no columns (%s); she is asked anew.", self._path, fault)  # not said
            return {}
        if not isinstance(kept, dict):
            _LOG.warning("%s tells no columns (it holds no table); she is asked anew.", self._path)  # not said
            return {}
        return kept
