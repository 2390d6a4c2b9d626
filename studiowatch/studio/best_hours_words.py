"""The best hours in her words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import replace

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.speech.words import mark, say
from studiowatch.studio.best_hours import HOUR_MS, Aside, Reason, Stretch
from studiowatch.studio.counting import number_word

When = Callable[[int], str]

_SPANS = {
    Reason.OUTSIDE_HOURS: mark("{first} to {last}: outside your working hours"),
    Reason.NOT_READY: mark("{first} to {last}: what lies below is not ready"),
    Reason.DAMP: mark("{first} to {last}: likely too damp before it is safe"),
    Reason.COLD: mark("{first} to {last}: likely too cold before it is safe"),
    Reason.WARM: mark("{first} to {last}: likely too warm before it is safe"),
    Reason.NEAR_DEW: mark("{first} to {last}: the air likely comes too near its dew point"),
    Reason.MOVING_AIR: mark("{first} to {last}: the air usually moves then, as with a fan on"),
    Reason.FAN_MEANT: mark("{first} to {last}: you mean to have a fan on"),
}
_SINGLE = {
    Reason.OUTSIDE_HOURS: mark("{first}: outside your working hours"),
    Reason.NOT_READY: mark("{first}: what lies below is not ready"),
    Reason.DAMP: mark("{first}: likely too damp before it is safe"),
    Reason.COLD: mark("{first}: likely too cold before it is safe"),
    Reason.WARM: mark("{first}: likely too warm before it is safe"),
    Reason.NEAR_DEW: mark("{first}: the air likely comes too near its dew point"),
    Reason.MOVING_AIR: mark("{first}: the air usually moves then, as with a fan on"),
    Reason.FAN_MEANT: mark("{first}: you mean to have a fan on"),
}


def unknown_text() -> str:
    """Return what is said while too little is known of the room."""
    return say("Not known yet: the best hours are told once the room has been logged for a day.")


def stretch_text(one: Stretch, when: When) -> str:
    """Return "Sat 10:00 to Sat 14:00: good in nine of ten ways that this room may go"."""
    number = number_word(int(one.chance * 10.0 + 1e-9))  # never rounded up: it is told as a promise
    if one.first_ms == one.last_ms:
        return say(
            "lay at {first}: good in {number} of ten ways that this room may go",
            first=when(one.first_ms),
            number=number,
        )
    return say(
        "lay from {first} to {last}: good in {number} of ten ways that this room may go",
        first=when(one.first_ms),
        last=when(one.last_ms),
        number=number,
    )


def aside_text(one: Aside, ready_ms: int | None, when: When) -> str:
    """Return why hours are not good; `ready_ms` is when what lies below is ready, UTC ms, or None if not in sight."""
    if one.reason is Reason.NOT_READY and ready_ms is not None:
        return say("before {time}: what lies below is not ready", time=when(ready_ms))
    spans = _SINGLE if one.first_ms == one.last_ms else _SPANS
    return say(spans[one.reason], first=when(one.first_ms), last=when(one.last_ms))


def next_text(good: Sequence[Stretch], others: Sequence[Aside], ready_ms: int | None, when: When) -> str:
    """Return in one line the first of the good hours, and why it is not sooner; see `aside_text` for `ready_ms`."""
    if not good:
        told = none_text(good)
    else:
        first = min(good, key=lambda one: one.first_ms)
        number = number_word(int(first.chance * 10.0 + 1e-9))  # never rounded up: it is told as a promise
        if first.first_ms == first.last_ms:
            told = say(
                "Next good hour for it: {first}, in {number} of ten ways that this room may go.",
                first=when(first.first_ms),
                number=number,
            )
        else:
            told = say(
                "Next good hours for it: {first} to {last}, in {number} of ten ways that this room may go.",
                first=when(first.first_ms),
                last=when(first.last_ms),
                number=number,
            )
    if not others:
        return told
    why = aside_text(_telling(good, others), ready_ms, when)
    return f"{told} {why[:1].upper()}{why[1:]}."


def _telling(good: Sequence[Stretch], others: Sequence[Aside]) -> Aside:
    """Return what of the hours before the first good one tells most, the last of its kind.

    That is the room's own reason, then that what lies below is not ready, then that she does not work. Where none is
    good it is what holds for most of her working hours: the others she left out herself.
    """
    if not good:
        return _holding(others)
    first_ms = min(one.first_ms for one in good)
    before = [one for one in others if one.first_ms < first_ms] or others[:1]
    working = [one for one in before if one.reason is not Reason.OUTSIDE_HOURS]
    rooms = [one for one in working if one.reason is not Reason.NOT_READY]
    return (rooms or working or before)[-1]


def _holding(others: Sequence[Aside]) -> Aside:
    """Return the last of the asides whose reason holds longest; what lies below is not ready through the nights too."""
    working = [one for one in others if one.reason is not Reason.OUTSIDE_HOURS] or others
    lengths_h: Counter[Reason] = Counter()
    for one in working:
        lengths_h[one.reason] += (one.last_ms - one.first_ms) // HOUR_MS + 1
    reason, _ = lengths_h.most_common(1)[0]
    held = [one for one in working if one.reason is reason]
    return replace(held[-1], first_ms=held[0].first_ms) if reason is Reason.NOT_READY else held[-1]


def none_text(found: Sequence[Stretch]) -> str:
    """Return what is said where no hour is good, else ""."""
    return "" if found else say("No hour of the next two days is likely to be good for it.")


def caution_text(sheet: DataSheet) -> str:
    """Return what goes before all hours for a solvent-borne coat, else ""."""
    if sheet.kind is not Kind.SOLVENTBORNE:
        return ""
    return say(
        "Fresh air first: lay it only with the room aired all the while, and keep it aired as its sheet says, "
        "whatever the hour; no flame, no spark, no heater near."
    )
