"""The room history in words: at the pointer, and for those who hear the screen instead of seeing it."""

from __future__ import annotations

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.history_axis import moment_words
from studiowatch.ui.models.history_lanes import Lane, lanes_of
from studiowatch.ui.models.history_marks import Marks

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


def pointed_words(pointed_ms: float, width_ms: int, marks: Marks, lane: Lane | None, reach_ms: float) -> str:
    """Return the pointer's time, the coat below it, and the prompt and the warning next to it.

    The warning is one of the lane's, or one of `marks` where the pointer is on no lane.
    """
    words = [moment_words(pointed_ms, width_ms)]
    near = marks.near(pointed_ms, reach_ms) if lane is None else lane.marks.near(pointed_ms, reach_ms)
    if lane is not None:
        words.append(lane.words(pointed_ms))
        prompts = lane.prompts.near(pointed_ms, reach_ms)
        words += [prompts.words] if prompts is not None else []
    words += [near.words] if near is not None else []
    return " · ".join(word for word in words if word)
