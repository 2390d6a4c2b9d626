"""The review of one coat: why it clouded or would, what would have changed it, and what to do now."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

import numpy as np

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.stages import Stage
from studiowatch.physics.moist_air import dew_point
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.plan_checks import needs_dry_through
from studiowatch.studio.remedies import remedies, remedy
from studiowatch.studio.review_blind import blind_spots
from studiowatch.studio.review_case import Case, recoat_ages_ms
from studiowatch.studio.review_causes import MEASURED, TITLES, UNITS, WITHIN, Cause
from studiowatch.studio.review_changes import changes, figures
from studiowatch.studio.review_course import HOUR_MS, Course, LaidStack, run
from studiowatch.studio.review_curves import CURVES, LEAK_BASIS, PRIOR, Curves, chance, shares
from studiowatch.studio.review_evidence import evidence
from studiowatch.studio.review_room import Room, Step, step_ends_ms
from studiowatch.studio.review_severity import Severities, severities_of
from studiowatch.studio.review_tally import told_damp_pct
from studiowatch.studio.review_views import FilmTrace, FoundCause, Phase, Review, RoomTrace, Span

SEEN_AFTER_MS = 24 * HOUR_MS  # ms after laying, where it is not recorded when it was looked at; assumption
ASSUMED_MFFT_C = 9.0  # °C, where a sheet of a water-borne coat names none: as on the generic ones; assumption
NEEDED_WITHIN_MS = 21 * 24 * HOUR_MS  # ms, in which a coat below is sought to be ready; assumption
BEFORE_MS = 24 * HOUR_MS  # ms that are drawn before the laying, at most; assumption
FURTHER = 0.15  # share from which a second cause has its own remedy; judgement
NONE_IN_TEN = 0.05  # chance under which none of ten coats clouds: half of one
DRAWN_STEP_MS = 300_000  # ms between two points of the room that are drawn


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """What a review is seen against.

    Attributes
    ----------
    curves : Curves
        As they have learnt from her coats, but not from the one that is reviewed.
    when_text : callable
        Turns a time and the time it is seen from, UTC ms, into words, with the day where it is another.
    now_ms : int or None
        UTC ms, up to which the log can hold anything; None for a coat long past.
    """

    when_text: Callable[[int, int], str]
    curves: Curves = PRIOR
    now_ms: int | None = None


def coat_severities(stack: LaidStack, room: Room) -> Severities:
    """Return how severe each cause was for a coat, without weighing them: what the curves learn from.

    Raises
    ------
    OutOfRange
        If a coat cannot be followed.
    """
    course, seen_ms, _ = _followed(stack, room)
    return severities_of(course, room, outcome=stack.top.coat.outcome, seen_ms=seen_ms)


def review(stack: LaidStack, room: Room, setting: Setting) -> Review:
    """Return the review of the top coat of a stack; see `review_and_severities`."""
    return review_and_severities(stack, room, setting)[0]


def review_and_severities(stack: LaidStack, room: Room, setting: Setting) -> tuple[Review, Severities]:
    """Return the review of the top coat of a stack, and what the curves learn from it.

    Raises
    ------
    OutOfRange
        If a coat cannot be followed: a size, an amount or air out of range.
    """
    course, seen_ms, assumed = _followed(stack, room)
    stack, coat, laid_ms = course.stack, stack.top.coat, stack.top.laid_ms
    found = severities_of(course, room, outcome=coat.outcome, seen_ms=seen_ms)
    needed_ms, safe_ms = _ready_ages_ms(course, room)
    case = Case(
        course=course,
        severities=found,
        outcome=coat.outcome,
        seen_ms=seen_ms,
        when_text=lambda time_ms: setting.when_text(time_ms, laid_ms),
        needed_ms=needed_ms,
        safe_ms=safe_ms,
    )
    before = chance(setting.curves, found.values)
    parts = dict(sorted(shares(setting.curves, found.values, coat.outcome).items(), key=lambda item: -item[1]))
    ranked = _ranked(case, parts)
    order = [cause.cause for cause in ranked]
    spans = _spans(course)
    told = Review(
        piece_key=stack.piece.key,
        piece_title=stack.piece.title,
        coat_key=coat.key,
        coat_number=len(stack.coats),
        coat_label=stack.top.label,
        laid_ms=laid_ms,
        outcome=coat.outcome,
        seen_ms=coat.seen_ms,
        headline=_headline(coat.outcome, ranked[0], before),
        chance=before,
        causes=ranked,
        as_it_was=figures(course),
        changes=changes(case, room, setting.curves, parts, before),
        blind_spots=blind_spots(
            course,
            room,
            outcome=coat.outcome,
            seen_ms=coat.seen_ms,
            assumed=assumed,
            when_text=case.when_text,
            now_ms=setting.now_ms,
        ),
        remedy=remedy(order[0], stack.top.sheet, coat.outcome),
        further=remedies([cause for cause in order[1:] if parts[cause] >= FURTHER], stack.top.sheet, coat.outcome),
        room=_room_trace(stack, course, room),
        films=_film_traces(course),
        spans=spans,
        limit_C=None if stack.top.sheet.kind is not Kind.WATERBORNE else stack.top.sheet.mfft_C,
        limit_humidity_pct=told_damp_pct(stack.top.sheet.max_humidity_pct),
        sealed_in_g_m2=course.fresh.sealed_in_g_m2,
        learnt_from=setting.curves.learnt_from,
    )
    return told, found


def _followed(stack: LaidStack, room: Room) -> tuple[Course, int | None, tuple[str, ...]]:
    """Return the course of a coat, when it was looked at, UTC ms, and what was taken for granted."""
    assumed: tuple[str, ...] = ()
    top = stack.top
    if top.sheet.kind is Kind.WATERBORNE and top.sheet.mfft_C is None:
        taken = chosen().limit(ASSUMED_MFFT_C)
        assumed = (
            say("Its sheet names no least film-forming temperature: {temperature} is taken.", temperature=taken),
        )
        stack = replace(stack, coats=(*stack.coats[:-1], replace(top, sheet=_with_mfft(top.sheet))))
    seen_ms = top.coat.seen_ms
    if seen_ms is None and top.coat.outcome is not None:
        seen_ms = top.laid_ms + SEEN_AFTER_MS
    until_ms = min(
        (one for one in (seen_ms, stack.above_ms) if one is not None and one > top.laid_ms),
        default=top.laid_ms + 10 * SEEN_AFTER_MS,
    )
    return run(stack, room, until_ms), seen_ms, assumed


def _with_mfft(sheet: DataSheet) -> DataSheet:
    return replace(sheet, mfft_C=ASSUMED_MFFT_C)


def _ready_ages_ms(course: Course, room: Room) -> tuple[int | None, int | None]:
    """Return how old the coat below would have had to be, ms, likely and surely, where it was not old enough."""
    stack = course.stack
    if stack.below is None or course.fresh.sealed_in_g_m2 <= 0.0:
        return None, None
    below = replace(stack, coats=stack.coats[:-1], above_ms=None)
    through = needs_dry_through(stack.below.sheet, stack.top.sheet)
    until_ms = stack.below.laid_ms + NEEDED_WITHIN_MS
    return recoat_ages_ms(run(below, room, until_ms, longest_ms=NEEDED_WITHIN_MS, through=through), through=through)


def _ranked(case: Case, parts: Mapping[Cause, float]) -> tuple[FoundCause, ...]:
    sentences = evidence(case)
    return tuple(
        FoundCause(
            cause=cause,
            title=say(TITLES[cause]),
            share=share,
            severity=case.severities.shown[cause] if cause in MEASURED else None,
            unit=UNITS[cause],
            evidence=sentences[cause],
            basis=say(CURVES[cause].basis if cause in MEASURED else LEAK_BASIS),
        )
        for cause, share in parts.items()
    )


def _headline(outcome: Outcome | None, first: FoundCause, before: float) -> str:
    cause = say(WITHIN[first.cause])
    if outcome is None:
        return _would_cloud(before, cause)
    if outcome is Outcome.CLEAR:
        return _came_out_clear(before)
    if first.share >= 0.6:  # noqa: PLR2004
        return say("Most likely: {cause}. Likely is not proven.", cause=cause)
    if first.share >= 0.4:  # noqa: PLR2004
        return say("More likely than any other: {cause}. Likely is not proven.", cause=cause)
    return say("Perhaps: {cause}. Likely is not proven.", cause=cause)


def _would_cloud(before: float, cause: str) -> str:
    if before < NONE_IN_TEN:
        return say("Of ten coats like this about none would cloud; likeliest then: {cause}.", cause=cause)
    return say(
        "Of ten coats like this about {many} would cloud; likeliest then: {cause}.", many=_tens(before), cause=cause
    )


def _came_out_clear(before: float) -> str:
    if before < NONE_IN_TEN:
        return say("It came out clear; of ten coats like this about none cloud.")
    return say("It came out clear; of ten coats like this about {many} cloud.", many=_tens(before))


def _tens(share: float) -> int:
    return max(round(10.0 * share), 1)


def _spans(course: Course) -> tuple[Span, ...]:
    laid_ms, end_ms = course.stack.top.laid_ms, course.steps[-1].end_ms if course.steps else course.until_ms
    dry_ms = course.stage_ms(Stage.DRY_TO_TOUCH)
    if dry_ms is None:
        return (Span(phase=Phase.WET, start_ms=laid_ms, end_ms=end_ms),)
    recoat_ms = course.stage_ms(Stage.DRY_TO_RECOAT) or end_ms
    return (
        Span(phase=Phase.WET, start_ms=laid_ms, end_ms=dry_ms),
        Span(phase=Phase.CLOSING, start_ms=dry_ms, end_ms=max(recoat_ms, dry_ms)),
    )


def _room_trace(stack: LaidStack, course: Course, room: Room) -> RoomTrace:
    start_ms = stack.top.laid_ms - HOUR_MS
    if stack.below is not None:
        start_ms = max(min(start_ms, stack.below.laid_ms - HOUR_MS), stack.top.laid_ms - BEFORE_MS)
    end_ms = course.steps[-1].end_ms if course.steps else course.until_ms
    ends = step_ends_ms(start_ms, end_ms, ((0, DRAWN_STEP_MS),))
    steps = room.steps(ends, start_ms)

    def column(value: Callable[[Step], float]) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
        return np.array([value(step) if step.is_read else np.nan for step in steps], dtype=np.float64)

    temperature_C, humidity_pct = (
        column(lambda step: step.air.temperature_C),
        column(lambda step: step.air.humidity_pct),
    )
    seen = ~np.isnan(temperature_C)
    dew_C = np.full(temperature_C.size, np.nan)
    dew_C[seen] = dew_point(temperature_C[seen], np.maximum(humidity_pct[seen], 1.0))
    return RoomTrace(
        time_ms=np.array([(step.start_ms + step.end_ms) // 2 for step in steps], dtype=np.int64),
        temperature_C=temperature_C,
        dew_point_C=dew_C,
        humidity_pct=humidity_pct,
        air_speed_m_s=column(lambda step: step.air.air_speed_m_s if step.speed_known else np.nan),
    )


def _film_traces(course: Course) -> tuple[FilmTrace, ...]:
    traces = []
    for laid in course.stack.coats[-2:]:
        samples = [
            one for one in course.samples.get(laid.coat.key, []) if one.time_ms >= course.stack.top.laid_ms - BEFORE_MS
        ]
        traces.append(
            FilmTrace(
                label=laid.label,
                coat_key=laid.coat.key,
                time_ms=np.array([one.time_ms for one in samples], dtype=np.int64),
                film_C=np.array([one.film_C for one in samples], dtype=np.float64),
                water_g_m2=np.array([one.water_g_m2 for one in samples], dtype=np.float64),
            )
        )
    return tuple(traces)
