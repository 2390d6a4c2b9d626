"""Lengths of time as people read them."""

from __future__ import annotations

from studiowatch.speech.words import say

HOUR_S = 3600
DAYS_FROM_S = 172_800  # s, two days, from which minutes no longer matter


def told(seconds: float) -> str:
    """Return a length of time in hours and minutes, or in days and hours from two days on."""
    if seconds >= DAYS_FROM_S:
        hours = round(seconds / HOUR_S)
        return say("{days} d {hours} h", days=hours // 24, hours=hours % 24)
    hours, minutes = divmod(round(seconds / 60.0), 60)
    if not hours:
        return say("{minutes} min", minutes=minutes)
    return say("{hours} h {minutes} min", hours=hours, minutes=f"{minutes:02}")
