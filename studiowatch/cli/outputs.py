"""Files that calls write: whole or not at all, and never over another."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TextIO

from studiowatch.cli.answers import wrong
from studiowatch.service.whole_file import whole_file
from studiowatch.speech.words import say

STDOUT = "-"


@contextmanager
def written(name: str) -> Iterator[TextIO]:
    r"""Give what is to be written to the file `name`, or to stdout for "-". Line ends are written as they are given.

    The file bears its name only once it is whole. A device or a pipe is written to as it is.
    """
    if name == STDOUT:
        if sys.__stdout__ is None:  # closed by the caller
            wrong(say("The output is closed, so that nothing can be written to it; give the name of a file."))
        if hasattr(sys.stdout, "reconfigure"):
            sys.stdout.reconfigure(encoding="utf-8", newline="")
        yield sys.stdout
        sys.stdout.flush()
        return
    path = Path(name)
    if path.exists() and not path.is_file():
        if path.is_dir():
            wrong(say("{file} is a folder; give the name of a file.", file=path))
        with path.open("w", encoding="utf-8", newline="") as out:
            yield out
        return
    if path.exists() and path.stat().st_size:
        wrong(say("{file} is there already; choose a new name, or move it away first.", file=path))
    with whole_file(path) as out:
        yield out
