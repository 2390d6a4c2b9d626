"""How a form's fields write a day, and a time of day: as she reads both elsewhere."""

from __future__ import annotations

from studiowatch.speech.units import Hours, chosen
from studiowatch.speech.words import say

# In Qt's letters: d a day, MMM a short month, yyyy a year, HH and h an hour, ap am or pm.


def day_format() -> str:
    """Return how a field writes a day, "13 Dec 2025"."""
    return say("d MMM yyyy")


def moment_format() -> str:
    """Return how a field writes a day with a time of day, "13 Dec 2025  14:07", "13 Dec 2025  2:07 pm"."""
    clock = "HH:mm" if chosen().hours is Hours.TWENTY_FOUR else "h:mm ap"  # not said
    return f"{day_format()}  {clock}"
