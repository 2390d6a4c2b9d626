"""The moment at which every made-up studio stands, and a clock that stands there too."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime

NOW_MS = int(datetime(2026, 3, 4, 14, 12, tzinfo=UTC).timestamp() * 1000)


@dataclass
class ScriptedClock:
    """A clock that stands until it is moved."""

    now_ms: int = NOW_MS
    seconds: float = 100.0

    def utc_ms(self) -> int:
        return self.now_ms

    def monotonic_s(self) -> float:
        return self.seconds
