"""Files that only their owner reads, whatever the rights that new files get here."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path
from shutil import copyfile

_OWN_FILE, _OWN_FOLDER = 0o600, 0o700


def make_private(path: Path) -> None:
    """Make an empty file for a database, unless there is one; its log and index get the rights that it has."""
    if not path.exists():
        with suppress(OSError):  # who opens it next meets the same fault, and says it in plain words
            path.touch(mode=_OWN_FILE)


def copy_private(paths: Iterable[Path], into: Path) -> None:
    """Copy files into the new folder `into`; what is no file is left out.

    Raises
    ------
    OSError
        If one cannot be copied.
    """
    into.mkdir(mode=_OWN_FOLDER)
    for path in paths:
        copy_file_private(path, into / path.name)


def copy_file_private(path: Path, copy: Path) -> None:
    """Copy a file to the new file `copy`; what is no file is left out.

    Raises
    ------
    OSError
        If it cannot be copied.
    """
    if path.is_file():
        copy.touch(mode=_OWN_FILE)
        copyfile(path, copy)
