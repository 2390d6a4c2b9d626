"""Is the air over the rack moving? A two-stage detector on one signal, fast for a fan and hard to fool by drift."""

from __future__ import annotations

from enum import StrEnum


class Movement(StrEnum):
    """What the air over the rack does."""

    UNKNOWN = "unknown"
    STILL = "still"
    MOVING = "moving"
    FAN = "fan"
