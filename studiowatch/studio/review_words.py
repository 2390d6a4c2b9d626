"""Small words of a review: durations and figures as she reads them."""

from __future__ import annotations

from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

_HOUR_MIN = 60
_LONG_H = 48  # h, from which days are counted


def lasted(ms: float) -> str:
    """Return "12 min", "1 h 10 min", "9 h", "3 days"; at least a minute."""
    minutes = max(round(ms / 60_000), 1)
    if minutes < _HOUR_MIN:
        return say("{minutes} min", minutes=minutes)
    hours, rest = divmod(minutes, _HOUR_MIN)
    if hours >= _LONG_H:
        return say("{days} days", days=round(hours / 24))
    return say("{hours} h {minutes} min", hours=hours, minutes=rest) if rest else say("{hours} h", hours=hours)


def amount(value: float) -> str:
    """Return a small amount with the digits that matter: "0.4", "6.1", "53"."""
    if value < 0.005:  # noqa: PLR2004 - it would round to 0.00
        return "0"
    places = 0 if value >= 9.95 else 1 if value >= 0.095 else 2  # noqa: PLR2004
    return chosen().number(value, places)


def apart(difference_K: float) -> str:
    """Return how far two temperatures lie apart, with the digits that matter: "0.4 °C"."""
    degrees = chosen().degrees
    return f"{amount(difference_K * degrees.per_K)} {degrees.value}"
