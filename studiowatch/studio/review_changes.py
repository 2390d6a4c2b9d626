"""What would have changed it: the same coat dried again with one thing otherwise."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from studiowatch.room.limits import humidity_limit
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.labels import suggested_mL, volume_text
from studiowatch.studio.otherwise import STILL_M_S, Otherwise
from studiowatch.studio.prompts import COVER_MS
from studiowatch.studio.review_case import Case
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_course import HOUR_MS, LONGEST_MS, Course, LaidStack, run
from studiowatch.studio.review_curves import Curves, chance
from studiowatch.studio.review_room import Room, step_ends_ms
from studiowatch.studio.review_severity import severities_of
from studiowatch.studio.review_views import Change, Figures

SHOWN = 3  # changes that are told
WORTH = 0.8  # of the chance as it was: a change that leaves more is not worth a row; judgement
LEAST_SHARE = 0.08  # of the explanation that a cause must have to be tried otherwise; judgement
HELD_C, HELD_PCT = 20.0, 55.0  # °C, %RH: a good room; common practice, no source
EVEN_MS = 600_000  # ms to which a better time is told
LATEST_MS = 24 * HOUR_MS  # ms after its laying in which a better time is sought; assumption
FIT_HOURS = 4  # h in a row that the air must be fit for its sheet; assumption
LEAST_C = 15.0  # °C, where a sheet names no least temperature; common practice, no source
LOOK_LATER = 1.25  # times the normal milky time after which looking again tells more; judgement


@dataclass(frozen=True, slots=True, kw_only=True)
class Tried:
    """The same coat with one thing otherwise."""

    words: str
    stack: LaidStack
    room: Room
    seen_ms: int | None


def changes(
    case: Case, room: Room, curves: Curves, shares: Mapping[Cause, float], as_it_was: float
) -> tuple[Change, ...]:
    """Return the changes that matter, the best first."""
    tried: dict[str, Change] = {}
    for cause, share in shares.items():
        if share < LEAST_SHARE or cause not in _TRIES:
            continue
        for other in _TRIES[cause](case, room):
            if other.words not in tried:
                tried[other.words] = _tried(other, case, curves)
    better = [change for change in tried.values() if change.chance <= WORTH * as_it_was]
    return tuple(sorted(better, key=lambda change: change.chance)[:SHOWN])


def _tried(other: Tried, case: Case, curves: Curves) -> Change:
    until_ms = case.course.until_ms + other.stack.top.laid_ms - case.course.stack.top.laid_ms
    course = run(other.stack, other.room, until_ms)
    found = severities_of(course, other.room, outcome=case.outcome, seen_ms=other.seen_ms)
    return Change(change=other.words, chance=chance(curves, found.values), figures=figures(course))


def figures(course: Course) -> Figures:
    """Return what the coat of a course met."""
    stack, tally = course.stack, course.tally
    below, wet_s = stack.below, tally.wet_s
    return Figures(
        below_age_ms=None if below is None else stack.top.laid_ms - below.laid_ms,
        temperature_C=tally.warmth_C_s / wet_s if wet_s > 0.0 else None,
        humidity_pct=tally.humidity_pct_s / wet_s if wet_s > 0.0 else None,
        air_speed_m_s=tally.speed_m / wet_s if wet_s > 0.0 else None,
        sealed_in_g_m2=course.fresh.sealed_in_g_m2,
    )


def _waited(case: Case, room: Room) -> Iterator[Tried]:
    stack = case.course.stack
    if stack.below is None or case.safe_ms is None:
        return
    laid_ms = -(-(stack.below.laid_ms + case.safe_ms) // EVEN_MS) * EVEN_MS
    if laid_ms > stack.top.laid_ms:
        yield _laid_at(case, room, laid_ms, say("Waited until {time}", time=case.when_text(laid_ms)))


def _laid_at(case: Case, room: Room, laid_ms: int, words: str) -> Tried:
    """Return the same coat laid at another time, and looked at as long after."""
    stack, coat = case.course.stack, case.course.stack.top.coat
    by_ms = laid_ms - stack.top.laid_ms
    later = replace(
        coat,
        laid_ms=laid_ms,
        covered_from_ms=None if coat.covered_from_ms is None else coat.covered_from_ms + by_ms,
        looks=(),
    )
    seen_ms = None if case.seen_ms is None else case.seen_ms + by_ms
    return Tried(words=words, stack=replace(stack.with_top(later), above_ms=None), room=room, seen_ms=seen_ms)


def _held(case: Case, room: Room) -> Iterator[Tried]:
    stack = case.course.stack
    from_ms = stack.top.laid_ms if stack.below is None else stack.below.laid_ms
    held = Otherwise(temperature_C=HELD_C, humidity_pct=HELD_PCT, from_ms=from_ms)
    yield Tried(words=held.words, stack=stack, room=room.holding(held), seen_ms=case.seen_ms)


def _drier(case: Case, room: Room) -> Iterator[Tried]:
    """Yield the first time, later in the log, at which the air stayed fit for its sheet, and the room held better."""
    stack, from_ms = case.course.stack, case.course.stack.top.laid_ms
    limit_pct = humidity_limit(stack.top.sheet.max_humidity_pct).caution
    least_C = LEAST_C if stack.top.sheet.apply_C is None else stack.top.sheet.apply_C[0]
    ends = step_ends_ms(from_ms, from_ms + LATEST_MS, ((0, HOUR_MS),))
    steps = room.steps(ends, from_ms)
    fit = [step.is_read and step.air.humidity_pct < limit_pct and step.air.temperature_C >= least_C for step in steps]
    first = next((at for at in range(1, len(fit) - FIT_HOURS + 1) if all(fit[at : at + FIT_HOURS])), None)
    if first is not None:
        yield _laid_at(
            case, room, steps[first].start_ms, say("Laid at {time}", time=case.when_text(steps[first].start_ms))
        )
    yield from _held(case, room)


def _still(case: Case, room: Room) -> Iterator[Tried]:
    top = case.course.stack.top
    held = Otherwise(most_air_speed_m_s=STILL_M_S, from_ms=top.laid_ms)
    yield Tried(words=held.words, stack=case.course.stack, room=room.holding(held), seen_ms=case.seen_ms)
    coat = top.coat
    if coat.covered_from_ms is None or coat.covered_from_ms > top.laid_ms + COVER_MS:
        covered = replace(coat, covered_from_ms=top.laid_ms + COVER_MS)
        words = say("Under a mesh cover from {time}", time=case.when_text(top.laid_ms + COVER_MS))
        yield Tried(words=words, stack=case.course.stack.with_top(covered), room=room, seen_ms=case.seen_ms)
    yield from _held(case, room)


def _thinner(case: Case, room: Room) -> Iterator[Tried]:
    stack, sheet = case.course.stack, case.sheet
    coat = replace(stack.top.coat, wet_um=sheet.wet_um, volume_mL=None, grams=None)
    pour = volume_text(suggested_mL(stack.piece.area_m2, sheet.wet_um))
    words = say("Laid at {film}: {poured}", film=chosen().film(sheet.wet_um), poured=pour)
    yield Tried(words=words, stack=stack.with_top(coat), room=room, seen_ms=case.seen_ms)


def _undiluted(case: Case, room: Room) -> Iterator[Tried]:
    stack = case.course.stack
    coat = replace(stack.top.coat, thinned_pct=0.0)
    yield Tried(words=say("Not thinned"), stack=stack.with_top(coat), room=room, seen_ms=case.seen_ms)


def _glossy(case: Case, room: Room) -> Iterator[Tried]:
    stack = case.course.stack
    coats = tuple(replace(laid, sheet=replace(laid.sheet, matting_agent=False)) for laid in stack.coats[:-1])
    last_only = replace(stack, coats=(*coats, stack.top))
    yield Tried(
        words=say("Gloss below, this coat alone with matting agent")
        if stack.top.sheet.matting_agent
        else say("Gloss in place of the coats with matting agent"),
        stack=last_only,
        room=room,
        seen_ms=case.seen_ms,
    )


def _untouched(case: Case, room: Room) -> Iterator[Tried]:
    stack = case.course.stack
    coat, laid_ms = stack.top.coat, stack.top.laid_ms
    if coat.covered_from_ms is not None and coat.covered_from_ms < laid_ms + COVER_MS:
        coat = replace(coat, covered_from_ms=laid_ms + COVER_MS, looks=())
        words = say("Covered at {time}, not touched before", time=case.when_text(laid_ms + COVER_MS))
    else:
        coat, words = replace(coat, looks=()), say("Not touched before it was dry")
    other = replace(stack.with_top(coat), above_ms=None)
    yield Tried(words=words, stack=other, room=room, seen_ms=case.seen_ms)


def _seen_later(case: Case, room: Room) -> Iterator[Tried]:
    ratio = case.severities.shown[Cause.STILL_CLEARING]
    if case.seen_ms is None or ratio <= 0.0:
        return
    laid_ms = case.course.stack.top.laid_ms
    again_ms = laid_ms + min(round(LOOK_LATER * ratio * (case.seen_ms - laid_ms)), LONGEST_MS)
    again_ms = -(-again_ms // EVEN_MS) * EVEN_MS
    words = say("Looked at {time}", time=case.when_text(again_ms))
    yield Tried(words=words, stack=case.course.stack, room=room, seen_ms=again_ms)


_TRIES: Mapping[Cause, Callable[[Case, Room], Iterator[Tried]]] = {
    Cause.SEALED_IN_WATER: lambda case, room: (
        other for tries in (_waited(case, room), _held(case, room)) for other in tries
    ),
    Cause.DAMP_AIR: _drier,
    Cause.BELOW_MFFT: _drier,
    Cause.CONDENSATION: _drier,
    Cause.SKINNED: _still,
    Cause.TOO_THICK: _thinner,
    Cause.THINNED: _undiluted,
    Cause.MATTING_BUILD_UP: _glossy,
    Cause.TOUCHED: _untouched,
    Cause.STILL_CLEARING: _seen_later,
}
