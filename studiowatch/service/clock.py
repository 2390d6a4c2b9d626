"""Clocks: the machine's own, and one that a log drives."""

from __future__ import annotations

import time
from dataclasses import dataclass, field


class SystemClock:
    """The machine's wall clock for what is stored, and its monotonic clock for durations."""

    def utc_ms(self) -> int:
        """Return UTC, milliseconds since 1970-01-01."""
        return time.time_ns() // 1_000_000

    def monotonic_s(self) -> float:
        """Return seconds that never run backwards."""
        return time.monotonic()


@dataclass(slots=True)
class LogClock:
    """A clock that stands where the last reading of a log left it."""

    now_ms: int = 0

    def utc_ms(self) -> int:
        """Return the log's present, UTC ms."""
        return self.now_ms

    def monotonic_s(self) -> float:
        """Return the log's present in seconds."""
        return self.now_ms / 1000.0


JUMP_S = 2.0  # s, wall minus monotonic beyond this is a clock step or a resume; ordinary slewing stays far below


@dataclass(slots=True)
class JumpWatch:
    """Notices when the wall clock and the monotonic clock part: a clock set by hand, or a computer that slept."""

    _offset_s: float | None = field(default=None)

    def look(self, utc_ms: int, monotonic_s: float) -> float:
        """Return the seconds by which the wall clock jumped since the last look; 0.0 if it did not."""
        offset_s = utc_ms / 1000.0 - monotonic_s
        before, self._offset_s = self._offset_s, offset_s
        if before is None or abs(offset_s - before) <= JUMP_S:
            return 0.0
        return offset_s - before
