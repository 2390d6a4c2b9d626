"""Bytes of any sketch cut into lines."""

from __future__ import annotations

import re

LONGEST_LOOSE_LINE = 1024  # bytes: far more than a sensor board has to say: assumption
_ENDS = re.compile(rb"([\r\n]+)")


class LooseLines:
    """Bytes to lines that LF, CR or both end, in any portions. A line that is too long comes cut, once."""

    def __init__(self, *, mid_line: bool = False) -> None:
        self.pending = b""
        self._skipping = mid_line

    def feed(self, data: bytes) -> list[bytes]:
        """Return the lines that `data` completes, each with its end."""
        *pieces, self.pending = _ENDS.split(self.pending + data)
        lines = [line + end for line, end in zip(pieces[::2], pieces[1::2], strict=True)]
        if self._skipping and lines:
            lines, self._skipping = lines[1:], False
        if len(self.pending) > LONGEST_LOOSE_LINE:
            lines += [] if self._skipping else [self.pending]
            self.pending, self._skipping = b"", True
        return lines
