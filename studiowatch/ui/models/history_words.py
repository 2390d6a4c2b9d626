"""The room history in words, for those who hear the screen instead of seeing it."""

from __future__ import annotations

from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.history_lanes import lanes_of

NOTHING_YET = "Temperature, humidity and air speed over time, with one lane for each piece. Nothing has been read yet."
KEYS = (
    "Left and right move in time, plus and minus zoom, Home returns to now, up and down choose a piece, Shift with "
    "left and right a range."
)


def description(snapshot: Snapshot | None) -> str:
    """Return what the picture shows, short and without figures that change each second."""
    if snapshot is None:
        return f"{NOTHING_YET} {KEYS}"
    lanes = lanes_of(snapshot)
    ready = [
        " ".join((f"{lane.title}: {lane.coats[-1].label}", lane.coats[-1].ready_words)).strip()
        for lane in lanes
        if lane.coats
    ]
    return " ".join(("Temperature, humidity and air speed over time.", *(f"{words}." for words in ready), KEYS))
