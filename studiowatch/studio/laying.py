"""Whether a piece is fit for its next coat: what lies below must be ready, whatever the room says."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from studiowatch.coats.stages import Surface
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import Risk
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


MAY_CLOUD, WILL_CLOUD = 0.3, 0.6  # chances from which a coat is warned of, and warned off; judgement


def may_cloud(risk: Risk, *, label: str) -> Sentence | None:
    """Return why the coat `label` may come out cloudy if it were laid now, or None if it hardly may."""
    if risk.chance < MAY_CLOUD:
        return None
    is_strong = risk.chance >= WILL_CLOUD
    return Sentence(
        level=Level.ACT if is_strong else Level.CAUTION,
        headline=f"{label.capitalize()} {'would likely' if is_strong else 'may'} come out cloudy",
        detail=risk.sentence,
        advice=_BETTER[risk.cause],
    )


_WAIT = "Wait until it is ready, or test an edge first."
_DRIER = "Wait for drier air, or warm the room gently."
_WARMER = "Warm the room, and the piece with it, before it is laid."
_CALMER = "Still and cool the air first; solvent vapour always needs fresh air, away from the piece."
_BETTER: Mapping[Cause, str] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: _WAIT,
        Cause.DAMP_AIR: _DRIER,
        Cause.BELOW_MFFT: _WARMER,
        Cause.CONDENSATION: _WARMER,
        Cause.SKINNED: _CALMER,
        Cause.TOO_THICK: "Pour less.",
        Cause.THINNED: "Add less water.",
        Cause.MATTING_BUILD_UP: "Gloss first, one satin or matt coat last.",
        Cause.TOUCHED: _WAIT,
        Cause.STILL_CLEARING: _WAIT,
        Cause.UNKNOWN: _WAIT,
    }
)
