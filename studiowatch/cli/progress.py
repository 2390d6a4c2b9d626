"""A bar on stderr for work that takes long, where stderr is a terminal."""

from __future__ import annotations

import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager

WIDTH = 30  # characters of the bar itself
EVERY_S = 0.2  # s between two drawings


class Progress:
    """Draws how much is done; elsewhere than on a terminal it does nothing."""

    def __init__(self, title: str) -> None:
        self._title = title
        self._live = sys.stderr.isatty()
        self._drawn_s = -EVERY_S
        self._length = 0

    def show(self, share: float, words: str) -> None:
        """Draw the bar with `share` of it done, 0 to 1, and `words` behind it."""
        now_s = time.monotonic()
        if not self._live or now_s - self._drawn_s < EVERY_S:
            return
        self._drawn_s = now_s
        full = round(min(max(share, 0.0), 1.0) * WIDTH)
        line = f"{self._title} [{'#' * full}{'.' * (WIDTH - full)}] {words}"
        sys.stderr.write(f"\r{line:<{self._length}}")
        sys.stderr.flush()
        self._length = len(line)

    def clear(self) -> None:
        """Take the bar away, so that a sentence may stand in its place."""
        if self._length:
            sys.stderr.write(f"\r{'':<{self._length}}\r")
            sys.stderr.flush()
            self._length = 0


@contextmanager
def progress(title: str) -> Iterator[Progress]:
    """Give a bar that is gone when the work ends, however it ends."""
    bar = Progress(title)
    try:
        yield bar
    finally:
        bar.clear()
