"""The room history in words: at the pointer, and for those who hear the screen instead of seeing it."""

from __future__ import annotations

from studiowatch.service.room_band import RoomBand
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import Units
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

AHEAD = {
    1: mark("In an hour the room is likely at {low} to {high} and {dry} to {damp} % humidity."),
    6: mark("In six hours the room is likely at {low} to {high} and {dry} to {damp} % humidity."),
    24: mark("In a day the room is likely at {low} to {high} and {dry} to {damp} % humidity."),
}
AS_MEANT = mark("What you mean to do with the room is counted in.")


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
    return " ".join((shown, *(f"{words}." for words in ready), *ahead_words(snapshot), say(KEYS)))


def ahead_words(snapshot: Snapshot) -> tuple[str, ...]:
    """Return where the room is likely in an hour, in six and in a day, four in five ways; none while it is not known.

    They follow the hours of the band, so that they stay the same until it is foretold anew.
    """
    band = snapshot.room_band
    if band is None:
        return ()
    told = [
        say(sentence, **_likely(band, hours, snapshot.units))
        for hours, sentence in AHEAD.items()
        if hours < len(band.time_ms)
    ]
    return (*told, *([say(AS_MEANT)] if band.is_meant else []))


def _likely(band: RoomBand, hours: int, units: Units) -> dict[str, str]:
    low_C, _, high_C = band.temperature_C[:, hours]
    low_pct, _, high_pct = band.humidity_pct[:, hours]
    degrees = units.degrees
    return {
        "low": units.number(degrees.from_celsius(float(low_C))),
        "high": f"{units.number(degrees.from_celsius(float(high_C)))} {degrees.value}",
        "dry": units.number(float(low_pct)),
        "damp": units.number(float(high_pct)),
    }


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
