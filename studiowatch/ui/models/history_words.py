"""The room history in words, for those who hear the screen instead of seeing it."""

from __future__ import annotations

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.history_lanes import lanes_of

NOTHING_YET = mark(
    "Temperature, humidity and air speed over time, with one lane for each piece. Nothing has been read yet."
)
KEYS = mark(
    "Left and right move in time, plus and minus zoom, Home returns to now, up and down choose a piece, Shift with "
    "left and right a range."
)


def description(snapshot: Snapshot | None) -> str:
    """Return what the picture shows, short and without figures that change each second."""
    if snapshot is None:
        return f"{say(NOTHING_YET)} {say(KEYS)}"
    lanes = lanes_of(snapshot)
    ready = [
        " ".join((f"{lane.title}: {lane.coats[-1].label}", lane.coats[-1].ready_words)).strip()
        for lane in lanes
        if lane.coats
    ]
    shown = say("Temperature, humidity and air speed over time.")
    return " ".join((shown, *(f"{words}." for words in ready), say(KEYS)))
