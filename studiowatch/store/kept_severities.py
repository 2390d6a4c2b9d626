"""Severities of coats as they were worked out, in a file beside the records, so that a review need not dry them all.

They follow from the records and are made anew where they are missing or stale. So they are no part of the records: a
call that only reads those may keep them beside a running watch, and nothing is lost with the file.
"""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from threading import get_ident

from studiowatch.speech.words import say

Rows = Sequence[Sequence[float]]
_MOST_BYTES = 64 * 2**20  # bytes of a file that is read; assumption: far more than a lifetime of coats


@dataclass(slots=True)
class KeptSeverities:
    """Holds rows of numbers by the key of a coat, each with the stamp of all that they rest on.

    Attributes
    ----------
    path : Path or None
        The file; None keeps them in memory only.
    trouble : str
        One sentence why they are not in the file, or "".
    """

    path: Path | None
    trouble: str = ""
    _held: dict[str, tuple[str, Rows]] | None = None
    _fresh: set[str] = field(default_factory=set)

    def get(self, key: str, stamp: str) -> Rows | None:
        """Return the rows kept for a coat, or None if there are none of this stamp."""
        held = self._all().get(key)
        return held[1] if held is not None and held[0] == stamp else None

    def put(self, key: str, stamp: str, rows: Rows) -> None:
        """Hold rows; `save` puts them into the file."""
        self._all()[key] = (stamp, rows)
        self._fresh.add(key)

    def save(self) -> None:
        """Write the file whole, or leave it as it was; where it cannot be written, `trouble` says why."""
        if self.path is None or not self._fresh:
            return
        unfinished = self.path.with_name(f"{self.path.name}.{os.getpid()}-{get_ident()}.unfinished")
        try:
            unfinished.touch(mode=0o600)
            unfinished.write_text(json.dumps(self._all(), allow_nan=False), "utf-8")
            unfinished.replace(self.path)
        except OSError as fault:
            self.trouble = say(
                "{path} cannot be written: {fault}. Reviews take longer without it.",
                path=self.path,
                fault=fault.strerror or fault,
            )
            unfinished.unlink(missing_ok=True)
            return
        self._fresh.clear()

    def _all(self) -> dict[str, tuple[str, Rows]]:
        if self._held is None:
            self._held = {} if self.path is None else _read(self.path)
        return self._held


def _read(path: Path) -> dict[str, tuple[str, Rows]]:
    """Return what a file holds; one that is missing or damaged holds nothing."""
    try:
        if path.stat().st_size > _MOST_BYTES:
            return {}
        found = json.loads(path.read_text("utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    if not isinstance(found, dict):
        return {}
    return {key: (value[0], value[1]) for key, value in found.items() if _is_kept(value)}


def _is_kept(value: object) -> bool:
    if not isinstance(value, list) or len(value) != 2 or not isinstance(value[0], str):  # noqa: PLR2004 - stamp, rows
        return False
    rows = value[1]
    return isinstance(rows, list) and all(
        isinstance(row, list) and all(type(number) in (int, float) for number in row) for row in rows
    )
