"""Whether a piece is fit for its next coat: what lies below must be ready, whatever the room says."""

from __future__ import annotations

from collections.abc import Callable

from studiowatch.coats.stages import Surface
from studiowatch.studio.words import Level, Sentence

SEALED_IN = "What is sealed in below clouds the coat above. A touch test at an edge comes before the next coat."


def not_yet(
    *,
    label: str,
    surface: Surface,
    ready_ms: int | None,
    likely_ms: int | None,
    now_ms: int,
    when_text: Callable[[int], str],
) -> Sentence | None:
    """Return why no coat should go on a piece now, or None if its topmost coat is ready.

    Parameters
    ----------
    label, surface
        The topmost laid coat, and how its surface stands.
    ready_ms, likely_ms : int or None
        UTC ms when it is told to be ready, and when it may be at the earliest; None if neither is in sight.
    when_text : callable
        Turns UTC ms into the day and time as she reads them.
    """
    if ready_ms is not None and ready_ms <= now_ms:
        return None
    wet = surface is Surface.WET
    state = {Surface.WET: "still wet", Surface.TACKY: "still tacky", Surface.DRY: "not dry through yet"}[surface]
    if ready_ms is None:
        detail = "In this room as it is, no time for the next coat is in sight."
    else:
        perhaps = "" if likely_ms is None or likely_ms <= now_ms else f", perhaps from {when_text(likely_ms)}"
        detail = f"Ready from {when_text(ready_ms)}{perhaps}."
    return Sentence(
        level=Level.ACT if wet else Level.CAUTION,
        headline=f"Not yet: {label} is {state}",
        detail=detail,
        advice=SEALED_IN,
    )
