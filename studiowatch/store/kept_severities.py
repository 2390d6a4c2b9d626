"""Severities of coats as they were worked out, in a file beside the records, so that a review need not dry them all.

They follow from the records and are made anew where they are missing or stale. So they are no part of the records: a
call that only reads those may keep them beside a running watch, and nothing is lost with the file. A coat's numbers
are one string in it: as numbers of JSON those of ninety took 1.4 MB of small objects to write, 0.7 MB to read.
"""

from __future__ import annotations

import json
import os
from base64 import b64decode, b64encode
from dataclasses import dataclass, field
from pathlib import Path
from threading import get_ident

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.speech.words import say

_FLOATS = np.dtype("<f8")  # as they lie in the file, on any machine
_PARTS = 3  # of a coat in the file: its stamp, how many rows, and their numbers in base64
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
    _held: dict[str, tuple[str, Array]] | None = None
    _fresh: set[str] = field(default_factory=set)

    def get(self, key: str, stamp: str) -> Array | None:
        """Return the rows kept for a coat, or None if there are none of this stamp."""
        held = self._all().get(key)
        return held[1] if held is not None and held[0] == stamp else None

    def put(self, key: str, stamp: str, rows: Array) -> None:
        """Hold rows, all of them finite; `save` puts them into the file."""
        self._all()[key] = (stamp, rows)
        self._fresh.add(key)

    def save(self) -> None:
        """Write the file whole, or leave it as it was; where it cannot be written, `trouble` says why."""
        if self.path is None or not self._fresh:
            return
        unfinished = self.path.with_name(f"{self.path.name}.{os.getpid()}-{get_ident()}.unfinished")
        try:
            unfinished.touch(mode=0o600)
            packed = {key: _packed(stamp, rows) for key, (stamp, rows) in self._all().items()}
            unfinished.write_text(json.dumps(packed), "utf-8")
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

    def _all(self) -> dict[str, tuple[str, Array]]:
        if self._held is None:
            self._held = {} if self.path is None else _read(self.path)
        return self._held


def _packed(stamp: str, rows: Array) -> tuple[str, int, str]:
    if not np.isfinite(rows).all():
        raise ValueError("a severity is no number")  # not said
    return stamp, len(rows), b64encode(rows.astype(_FLOATS).tobytes()).decode("ascii")


def _read(path: Path) -> dict[str, tuple[str, Array]]:
    """Return what a file holds; one that is missing or damaged holds nothing."""
    try:
        if path.stat().st_size > _MOST_BYTES:
            return {}
        found = json.loads(path.read_text("utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    if not isinstance(found, dict):
        return {}
    read = ((key, _unpacked(value)) for key, value in found.items())
    return {key: kept for key, kept in read if kept is not None}


def _unpacked(value: object) -> tuple[str, Array] | None:
    """Return the stamp and the rows of a coat, or None if it is damaged, or was written by an earlier release."""
    if not isinstance(value, list) or len(value) != _PARTS:
        return None
    stamp, count, text = value
    if not (isinstance(stamp, str) and type(count) is int and count > 0 and isinstance(text, str)):
        return None
    try:
        rows = np.frombuffer(b64decode(text, validate=True), _FLOATS).reshape(count, -1)
    except ValueError:
        return None
    return (stamp, rows) if np.isfinite(rows).all() else None
