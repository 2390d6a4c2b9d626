"""Lengths of time as people read them."""

from __future__ import annotations

HOUR_S = 3600
DAYS_FROM_S = 172_800  # s, two days, from which minutes no longer matter


def told(seconds: float) -> str:
    """Return a length of time in hours and minutes, or in days and hours from two days on."""
    if seconds >= DAYS_FROM_S:
        hours = round(seconds / HOUR_S)
        return f"{hours // 24} d {hours % 24} h"
    hours, minutes = divmod(round(seconds / 60.0), 60)
    return f"{hours} h {minutes:02} min" if hours else f"{minutes} min"
