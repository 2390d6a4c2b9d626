"""What the window may do with files, as Protocols: out of the records and into them while the watch is on."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Protocol

from studiowatch.service.readings_out import Show


class Interrupted(Exception):  # noqa: N818 - she asked for it
    """She cancelled; nothing of what was begun is left but what was said to be taken."""


class ExchangeFault(Exception):  # noqa: N818 - reads as the answer it is
    """It could not be done; the message is one sentence for her."""


class Exchange(Protocol):
    """What the window may do with files. Calls take long: from a thread of their own, never the window's."""

    def readings_out(self, path: Path, start_ms: int, end_ms: int, show: Show, *, senml: bool = False) -> str:
        """Write the readings with start <= time < end as CSV or SenML; return what was done, in words."""
        ...

    def records_out(self, path: Path, show: Show) -> str:
        """Write all records but readings as a studio file; return what was done, in words."""
        ...

    def back_up(self, into: Path, show: Show) -> str:
        """Copy the whole studio into a new folder in `into`, checked; return what was done, in words."""
        ...

    def take_in(self, path: Path, show: Show, tell: Callable[[str], None]) -> str:
        """Take another logger's readings into the log, and tell every fault by its line; return what was done.

        They go through the watch, an hour at a time. What was taken before it ended is on disk, however it ended.
        """
        ...
