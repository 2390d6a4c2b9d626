"""Files that appear whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import get_ident
from typing import TextIO


@contextmanager
def whole_file(path: Path) -> Iterator[TextIO]:
    r"""Give what is to be written to the file at `path`, which bears its name only once it is whole and on disk.

    Line ends are written as they are given. Whatever is raised inside leaves what was there before as it was.

    Raises
    ------
    OSError
        If it cannot be written.
    """
    unfinished = path.with_name(f"{path.name}.unfinished")
    unfinished.unlink(missing_ok=True)  # and never written through: it may be a link that someone else put there
    try:
        with unfinished.open("x", encoding="utf-8", newline="") as out:
            yield out
            out.flush()
            os.fsync(out.fileno())  # else a power cut may leave the name on an empty file
        unfinished.replace(path)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise


def put_whole(path: Path, content: bytes) -> None:
    """Write `content` to the file at `path`, for its owner's eyes only; as `whole_file`, also by two threads at once.

    Raises
    ------
    OSError
        If it cannot be written; what was there before is there still.
    """
    unfinished = path.with_name(f"{path.name}.{os.getpid()}-{get_ident()}.unfinished")
    unfinished.unlink(missing_ok=True)  # and never written through: it may be a link that someone else put there
    try:
        unfinished.touch(mode=0o600, exist_ok=False)
        with unfinished.open("wb") as out:
            out.write(content)
            out.flush()
            os.fsync(out.fileno())
        unfinished.replace(path)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise
