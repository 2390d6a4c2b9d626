"""Files that this process has open as databases: their first bytes are read without giving up the locks on them.

Whoever closes any descriptor of a file gives up all locks that the process has on it, by whatever descriptor (POSIX,
fcntl): see "How To Corrupt An SQLite Database File", sqlite.org/howtocorrupt.html, section 2.2. A program that closes
the file next takes itself for the last one then, folds the log into it and deletes that, and what is written to the log
from then on is lost. So a descriptor of a file that is open stays open as long as that is.
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path
from threading import Lock

FileKey = tuple[int, int]
"""What tells a file from any other, whatever it is called: its device and its number there."""

_READING = os.O_RDONLY | getattr(os, "O_BINARY", 0)  # the latter is there on Windows alone


@dataclass(slots=True)
class _Held:
    """How many connections a file has, and the descriptor by which its first bytes are read meanwhile."""

    connections: int = 0
    descriptor: int | None = None


_guard = Lock()
_held: dict[FileKey, _Held] = {}


def which_file(path: Path) -> FileKey | None:
    """Return what tells the file at `path` from any other, or None if there is none."""
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino


def hold(path: Path) -> FileKey | None:
    """Take note that a connection to the file at `path` is about to be opened; return what `let_go` is to be given."""
    with _guard:
        key = which_file(path)
        if key is not None:
            _held.setdefault(key, _Held()).connections += 1
    return key


def let_go(key: FileKey | None) -> None:
    """Take note that a connection is closed."""
    if key is None:
        return
    with _guard:
        _held[key].connections -= 1
        if not _held[key].connections:
            descriptor = _held.pop(key).descriptor
            if descriptor is not None:
                os.close(descriptor)


def first_bytes(path: Path, count: int) -> bytes:
    """Return the first `count` bytes of the file at `path`, or as many as it has.

    Raises
    ------
    OSError
        If it cannot be read.
    """
    with _guard:
        key = which_file(path)
        held = None if key is None else _held.get(key)
        if held is None:
            with path.open("rb") as file:
                return file.read(count)
        if held.descriptor is None:
            held.descriptor = os.open(path, _READING)
        os.lseek(held.descriptor, 0, os.SEEK_SET)
        return os.read(held.descriptor, count)
