"""What all parts take the time from."""

from __future__ import annotations

from typing import Protocol


class Clock(Protocol):
    """Wall time for what is stored, and monotonic time for durations."""

    def utc_ms(self) -> int:
        """Return UTC, milliseconds since 1970-01-01."""
        ...

    def monotonic_s(self) -> float:
        """Return seconds that never run backwards."""
        ...
