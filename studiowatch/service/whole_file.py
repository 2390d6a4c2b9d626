"""Files that appear whole or not at all."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TextIO


@contextmanager
def whole_file(path: Path) -> Iterator[TextIO]:
    r"""Give what is to be written to the file at `path`, which bears its name only once it is whole.

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
        unfinished.replace(path)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise
