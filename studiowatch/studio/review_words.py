"""Small words of a review: durations and figures as she reads them."""

from __future__ import annotations

from collections.abc import Sequence

_HOUR_MIN = 60
_LONG_H = 48  # h, from which days are counted


def lasted(ms: float) -> str:
    """Return "12 min", "1 h 10 min", "9 h", "3 days"; at least a minute."""
    minutes = max(round(ms / 60_000), 1)
    if minutes < _HOUR_MIN:
        return f"{minutes} min"
    hours, rest = divmod(minutes, _HOUR_MIN)
    if hours >= _LONG_H:
        return f"{round(hours / 24)} days"
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def amount(value: float) -> str:
    """Return a small amount with the digits that matter: "0.4", "6.1", "53"."""
    if value < 0.005:  # noqa: PLR2004 - it would round to 0.00
        return "0"
    return f"{value:.0f}" if value >= 9.95 else f"{value:.1f}" if value >= 0.095 else f"{value:.2f}"  # noqa: PLR2004


def joined(sentences: Sequence[str]) -> str:
    """Return sentences one after another, empty ones left out."""
    return " ".join(sentence for sentence in sentences if sentence)
