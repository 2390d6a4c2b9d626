"""What the board's parts take the time from."""

from __future__ import annotations

from typing import Protocol


class Clock(Protocol):
    """The wall time that readings are stamped with, and a time that never runs backwards."""

    def utc_ms(self) -> int:
        """Return UTC, milliseconds since 1970-01-01."""
        ...

    def monotonic_s(self) -> float:
        """Return seconds that never run backwards."""
        ...
