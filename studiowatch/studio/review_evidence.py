"""What the records say for or against each cause: sentences with figures and times."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from studiowatch.speech.words import say
from studiowatch.studio.evidence_of_air import cold, damp, dew, skinned
from studiowatch.studio.evidence_of_laying import matting, sealed_in, thick, thinned, touched
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_case import Case
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_course import HOUR_MS
from studiowatch.studio.review_words import lasted


def evidence(case: Case) -> dict[Cause, tuple[str, ...]]:
    """Return sentences for every cause; none is left without one."""
    return {cause: _SAYS[cause](case) for cause in (*MEASURED, Cause.UNKNOWN)}


def _clearing(case: Case) -> tuple[str, ...]:
    if case.seen_ms is None:
        return (say("When it was looked at is not recorded."),)
    age_ms = case.seen_ms - case.course.stack.top.laid_ms
    ratio = case.severities.shown[Cause.STILL_CLEARING]
    if ratio <= 0.0:
        return (
            say("It was looked at {age} after it was laid, long after a fresh coat has cleared.", age=lasted(age_ms)),
        )
    if ratio * age_ms >= 24 * HOUR_MS:
        return (
            say(
                "It was looked at {age} after it was laid; in its warmth a coat of usual thickness is milky for a day "
                "or more.",
                age=lasted(age_ms),
            ),
        )
    return (
        say(
            "It was looked at {age} after it was laid; in its warmth a coat of usual thickness is "
            "milky for about {span}.",
            age=lasted(age_ms),
            span=lasted(ratio * age_ms),
        ),
    )


def _unknown(case: Case) -> tuple[str, ...]:
    if case.outcome is Outcome.SPECKS:
        return (
            say("What the records cannot show: dust or hair that fell on it, lint of a brush or cloth, or bubbles."),
        )
    return (
        say(
            "What the records cannot show: dust, soap or grease below, a bottle that was shaken or had frozen, "
            "or a finger."
        ),
    )


_SAYS: Mapping[Cause, Callable[[Case], tuple[str, ...]]] = {
    Cause.SEALED_IN_WATER: sealed_in,
    Cause.DAMP_AIR: damp,
    Cause.BELOW_MFFT: cold,
    Cause.CONDENSATION: dew,
    Cause.SKINNED: skinned,
    Cause.TOO_THICK: thick,
    Cause.THINNED: thinned,
    Cause.MATTING_BUILD_UP: matting,
    Cause.TOUCHED: touched,
    Cause.STILL_CLEARING: _clearing,
    Cause.UNKNOWN: _unknown,
}
