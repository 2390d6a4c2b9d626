"""Whether a piece is fit for its next coat: what lies below must be ready, whatever the room says."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from studiowatch.coats.stages import Surface
from studiowatch.speech.words import mark, say
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import Risk
from studiowatch.studio.unready import Unready
from studiowatch.studio.words import Level, Sentence

SEALED_IN = mark("What is sealed in below clouds the coat above. A touch test at an edge comes before the next coat.")


def not_yet(
    *,
    label: str,
    surface: Surface,
    ready_ms: int | None,
    likely_ms: int | None,
    now_ms: int,
    when_text: Callable[[int, int], str],
    unready: Unready | None = None,
) -> Sentence | None:
    """Return why no coat should go on a piece now, or None if its topmost coat is ready.

    Parameters
    ----------
    label, surface
        The topmost laid coat, and how its surface stands.
    ready_ms, likely_ms : int or None
        UTC ms when it is told to be ready, and when it may be at the earliest; None if neither is in sight.
    when_text : callable
        Turns UTC ms into the time as she reads it, with its day where that is not the one of the second UTC ms.
    unready : Unready or None
        Her last test of it, if that found it tacky or milky.
    """
    if ready_ms is not None and ready_ms <= now_ms:
        return None
    wet = surface is Surface.WET
    if ready_ms is None and unready is not None:
        detail = say("Test it again from {time}: a new test decides.", time=when_text(unready.again_ms, now_ms))
    elif ready_ms is None:
        detail = say("In this room as it is, no time for the next coat is in sight.")
    elif likely_ms is None or not now_ms < likely_ms < ready_ms:
        detail = say("Ready from {time}.", time=when_text(ready_ms, now_ms))
    else:
        early = when_text(likely_ms, ready_ms)
        detail = say("Ready from {time}, perhaps from {early}.", time=when_text(ready_ms, now_ms), early=early)
    return Sentence(
        level=Level.ACT if wet else Level.CAUTION,
        headline=_headline(
            label,
            surface,
            unready,
            lambda time_ms: when_text(time_ms, now_ms),
            perhaps=likely_ms is not None and likely_ms <= now_ms,
        ),
        detail=detail,
        advice=say(SEALED_IN),
    )


def _headline(
    label: str, surface: Surface, unready: Unready | None, when_text: Callable[[int], str], *, perhaps: bool
) -> str:
    """Return that it is not ready, as it was found last or else is; `perhaps` says that some of its range is behind."""
    if unready is not None:
        found = {"finding": unready.finding.word, "time": when_text(unready.found_ms)}
        return say("Not yet: {label} was found {finding}, {time}", label=label, **found)
    if perhaps and surface is Surface.DRY:
        return say("Not yet: {label} is not surely ready for the next coat", label=label)
    return say(_NOT_YET[surface], label=label)


_NOT_YET = {
    Surface.WET: mark("Not yet: {label} is still wet"),
    Surface.TACKY: mark("Not yet: {label} is still tacky"),
    Surface.DRY: mark("Not yet: {label} is not ready for the next coat"),
}


MAY_CLOUD, WILL_CLOUD = 0.3, 0.6  # chances from which a coat is warned of, and warned off; judgement


def may_cloud(risk: Risk, *, label: str) -> Sentence | None:
    """Return why the coat `label` may come out cloudy if it were laid now, or None if it hardly may."""
    if risk.chance < MAY_CLOUD:
        return None
    is_strong = risk.chance >= WILL_CLOUD
    return Sentence(
        level=Level.ACT if is_strong else Level.CAUTION,
        headline=say("{coat} would likely come out cloudy", coat=_first(label))
        if is_strong
        else say("{coat} may come out cloudy", coat=_first(label)),
        detail=risk.sentence,
        advice=say(_BETTER[risk.cause]),
    )


def _first(label: str) -> str:
    return f"{label[:1].upper()}{label[1:]}"


_WAIT = mark("Wait until it is ready, or test an edge first.")
_DRIER = mark("Wait for drier air, or warm the room gently.")
_WARMER = mark("Warm the room, and the piece with it, before it is laid.")
_CALMER = mark("Still and cool the air first; solvent vapour always needs fresh air, away from the piece.")
_BETTER: Mapping[Cause, str] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: _WAIT,
        Cause.DAMP_AIR: _DRIER,
        Cause.BELOW_MFFT: _WARMER,
        Cause.CONDENSATION: _WARMER,
        Cause.SKINNED: _CALMER,
        Cause.TOO_THICK: mark("Pour less."),
        Cause.THINNED: mark("Add less water."),
        Cause.MATTING_BUILD_UP: mark("Gloss first, one satin or matt coat last."),
        Cause.TOUCHED: _WAIT,
        Cause.STILL_CLEARING: _WAIT,
        Cause.UNKNOWN: _WAIT,
    }
)
