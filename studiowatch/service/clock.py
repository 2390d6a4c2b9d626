"""The machine's clocks, and a watch on whether the wall clock was set."""

from __future__ import annotations

import sys
import time
from dataclasses import dataclass, field


class SystemClock:
    """The machine's wall clock for what is stored, and one that counts through sleep for durations.

    Linux stops its monotonic clock while the computer sleeps; its boot-time clock runs on, and so do the monotonic
    clocks of macOS and Windows as they are read here. A wall clock that parts from it was therefore set.
    """

    def utc_ms(self) -> int:
        """Return UTC, milliseconds since 1970-01-01."""
        return time.time_ns() // 1_000_000

    def monotonic_s(self) -> float:
        """Return seconds that never run backwards, sleep included."""
        return _counting_through_sleep()


if sys.platform == "win32":

    def _counting_through_sleep() -> float:
        return time.monotonic()

else:
    _CLOCK = getattr(time, "CLOCK_BOOTTIME", time.CLOCK_MONOTONIC)

    def _counting_through_sleep() -> float:
        return time.clock_gettime(_CLOCK)


JUMP_S = 2.0  # s, wall minus monotonic beyond this between two looks is a clock step; slewing stays far below


@dataclass(slots=True)
class JumpWatch:
    """Notices when the wall clock and the one that counts through sleep part: the clock was set.

    Steps of under `JUMP_S` pass unseen, each for itself.
    """

    _offset_s: float | None = field(default=None)

    def look(self, utc_ms: int, monotonic_s: float) -> float:
        """Return the seconds by which the wall clock jumped since the last look; 0.0 if it did not."""
        offset_s = utc_ms / 1000.0 - monotonic_s
        before, self._offset_s = self._offset_s, offset_s
        if before is None or abs(offset_s - before) <= JUMP_S:
            return 0.0
        return offset_s - before
