"""Files that appear whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import get_ident
from typing import IO, TextIO


@contextmanager
def replacing(path: Path, *, apart: str = "") -> Iterator[Path]:
    """Give the path of the file that takes the place of that at `path` once it is written, and is gone after a fault.

    It lies beside that, under the same name with `apart` and ".unfinished".

    Raises
    ------
    OSError
        If it cannot take that place; what was there before is there still.
    """
    unfinished = path.with_name(f"{path.name}{apart}.unfinished")
    unfinished.unlink(missing_ok=True)  # and never written through: it may be a link that someone else put there
    try:
        yield unfinished
        unfinished.replace(path)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise


def put_on_disk(out: IO[str] | IO[bytes]) -> None:
    """Have all that was written to `out` on disk: else a power cut may leave its name on an empty file."""
    out.flush()
    os.fsync(out.fileno())


@contextmanager
def whole_file(path: Path) -> Iterator[TextIO]:
    r"""Give what is to be written to the file at `path`, which bears its name only once it is whole and on disk.

    Line ends are written as they are given. Whatever is raised inside leaves what was there before as it was.

    Raises
    ------
    OSError
        If it cannot be written.
    """
    with replacing(path) as unfinished, unfinished.open("x", encoding="utf-8", newline="") as out:
        yield out
        put_on_disk(out)


def put_whole(path: Path, content: bytes) -> None:
    """Write `content` to the file at `path`, for its owner's eyes only; as `whole_file`, also by two threads at once.

    Raises
    ------
    OSError
        If it cannot be written; what was there before is there still.
    """
    with replacing(path, apart=f".{os.getpid()}-{get_ident()}") as unfinished:
        unfinished.touch(mode=0o600, exist_ok=False)
        with unfinished.open("wb") as out:
            out.write(content)
            put_on_disk(out)
