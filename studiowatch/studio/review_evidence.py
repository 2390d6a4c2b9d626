"""What the records say for or against each cause: sentences with figures and times."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import isfinite

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.draws import MFFT_SPREAD_K
from studiowatch.coats.readiness import ready_at
from studiowatch.coats.solventborne import BLUSH_MARGIN_K, SolventState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.room.limits import AIR_SPEED, humidity_limit
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.amounts import is_measured
from studiowatch.studio.labels import measured_text
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.prompts import COVER_MS
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_course import HOUR_MS, Course, LaidCoat
from studiowatch.studio.review_room import Step
from studiowatch.studio.review_severity import Severities, matting_most, touch_tests_ms
from studiowatch.studio.review_words import amount, apart, lasted

MINUTE_MS = 60_000  # ms
THIN_PCT = 10.0  # % of water that sheets commonly allow; common practice, no source
_MS = 1000.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """All that the sentences rest on.

    Attributes
    ----------
    when_text : callable
        Turns UTC ms into the time, with its day where that is not the day of the laying.
    needed_ms, safe_ms : int or None
        How old the coat below would have had to be, ms, half of the draws and nine in ten of them; None if nothing
        was sealed in, or it was never ready.
    """

    course: Course
    severities: Severities
    outcome: Outcome | None
    seen_ms: int | None
    when_text: Callable[[int], str]
    needed_ms: int | None = None
    safe_ms: int | None = None

    @property
    def sheet(self) -> DataSheet:
        """The sheet of the coat."""
        return self.course.stack.top.sheet

    @property
    def steps(self) -> list[Step]:
        """The air until the coat was clear, or as long as it was followed."""
        clear_ms = self.course.stage_ms(Stage.CLEAR)
        return [step for step in self.course.steps if clear_ms is None or step.start_ms < clear_ms]


def evidence(case: Case) -> dict[Cause, tuple[str, ...]]:
    """Return sentences for every cause; none is left without one."""
    return {cause: _SAYS[cause](case) for cause in (*MEASURED, Cause.UNKNOWN)}


def _sealed_in(case: Case) -> tuple[str, ...]:
    stack = case.course.stack
    below = stack.below
    if below is None:
        return (say("No coat of hers lies below it, so nothing was sealed in."),)
    age_ms = stack.top.laid_ms - below.laid_ms
    sealed = case.course.fresh.sealed_in_g_m2
    told = _held_nothing(below.label, age_ms, case.needed_ms) if sealed <= 0.0 else _too_young(below, age_ms, case)
    if sealed <= 0.0:
        return (told,)
    if below.sheet.kind is Kind.SOLVENTBORNE:
        return told, say("Solvent left under the new coat: {figure} g/m².", figure=amount(sealed))
    return told, say("Water left under the new coat: {figure} g/m².", figure=amount(sealed))


def _held_nothing(label: str, age_ms: int, needed_ms: int | None) -> str:
    if needed_ms is None:
        return say("The {label} below was {age} old: it held nothing back.", label=label, age=lasted(age_ms))
    return say(
        "The {label} below was {age} old, and needed about {needed}: it held nothing back.",
        label=label,
        age=lasted(age_ms),
        needed=lasted(needed_ms),
    )


def _too_young(below: LaidCoat, age_ms: int, case: Case) -> str:
    if case.needed_ms is None:
        return say(
            "The {label} below was {age} old; it was not ready within the time that was followed.",
            label=below.label,
            age=lasted(age_ms),
        )
    return say(
        "The {label} below was {age} old; in its room it needed about {needed}.",
        label=below.label,
        age=lasted(age_ms),
        needed=lasted(case.needed_ms),
    )


def _damp(case: Case) -> tuple[str, ...]:
    tally, limit = case.course.tally, humidity_limit()
    if not isfinite(tally.dampest_pct):
        return (say("Its air is not known."),)
    dampest = chosen().number(tally.dampest_pct)
    if tally.damp_s <= 0.0:
        return (say("Humidity reached {dampest} % at most while it dried and cleared.", dampest=dampest),)
    figures = {
        "limit": chosen().number(limit.caution),
        "damp": lasted(_MS * tally.damp_s),
        "whole": lasted(_MS * tally.forming_s),
        "dampest": dampest,
    }
    first = next((step for step in case.steps if step.air.humidity_pct > limit.caution), None)
    said = [
        say("Humidity above {limit} % for {damp} of {whole}; at most {dampest} %.", **figures)
        if first is None
        else say(
            "Humidity above {limit} % for {damp} of {whole}, from {time}; at most {dampest} %.",
            time=case.when_text(first.start_ms),
            **figures,
        )
    ]
    if case.sheet.max_humidity_pct is not None and tally.dampest_pct > case.sheet.max_humidity_pct:
        said.append(say("Its sheet allows up to {most} %.", most=chosen().plain(case.sheet.max_humidity_pct)))
    return tuple(said)


def _cold(case: Case) -> tuple[str, ...]:
    if case.sheet.kind is not Kind.WATERBORNE:
        return (say("Only a water-borne coat has a least temperature at which its film forms."),)
    mfft_C = case.sheet.mfft_C
    samples = case.course.samples[case.course.stack.top.coat.key]
    coldest = min(samples, key=lambda one: one.film_C, default=None)
    if mfft_C is None or coldest is None:
        return (say("Its least film-forming temperature is not known."),)
    cold_min = float(case.severities.values[0, MEASURED.index(Cause.BELOW_MFFT)])
    units = chosen()
    temperature, least = units.temperature(coldest.film_C), units.limit(mfft_C)
    at_coldest = say(
        "At its coldest it was {temperature}, at {time}.",
        temperature=temperature,
        time=case.when_text(coldest.time_ms),
    )
    if cold_min > 0.0:
        closed = say(
            "It closed under {least}, where a film cannot form, for {span}.",
            least=least,
            span=lasted(60_000 * cold_min),
        )
        return closed, at_coldest
    if case.severities.shown[Cause.BELOW_MFFT] >= 1.0:
        closed = say(
            "It closed little above {least}, where a film begins to form, known to {margin}.",
            least=least,
            margin=units.difference_limit(MFFT_SPREAD_K),
        )
        return closed, at_coldest
    return (
        say("The film was never under {temperature}; it can form from {least}.", temperature=temperature, least=least),
    )


def _dew(case: Case) -> tuple[str, ...]:
    tally, state = case.course.tally, case.course.film.state
    if not isfinite(tally.least_margin_K):
        return (say("Its air is not known."),)
    margin, is_above = apart(abs(tally.least_margin_K)), tally.least_margin_K >= 0.0
    minutes = case.severities.shown[Cause.CONDENSATION]
    blushes = isinstance(state, SolventState) and float(state.blush_s[0]) > 0.0
    if not blushes and minutes < 1.0:
        return (_no_dew(margin, is_above=is_above),)
    closest = (
        say("The film, or what it lies on, was {margin} above the dew point at the closest.", margin=margin)
        if is_above
        else say("The film, or what it lies on, was {margin} below the dew point at the closest.", margin=margin)
    )
    if isinstance(state, SolventState) and blushes:
        span, limit = lasted(_MS * float(state.blush_s[0])), chosen().difference_limit(BLUSH_MARGIN_K)
        return closest, say("It was within {margin} of it, while wet, for {span}.", margin=limit, span=span)
    return closest, say("Water settled on it for about {span}.", span=lasted(60_000 * minutes))


def _no_dew(margin: str, *, is_above: bool) -> str:
    if is_above:
        return say(
            "The film, or what it lies on, was {margin} above the dew point at the closest: no water settled on it.",
            margin=margin,
        )
    return say(
        "The film, or what it lies on, was {margin} below the dew point at the closest: no water settled on it.",
        margin=margin,
    )


def _skinned(case: Case) -> tuple[str, ...]:
    tally, pace = case.course.tally, case.severities.shown[Cause.SKINNED]
    if not isfinite(tally.fastest_m_s):
        return (say("Its air is not known."),)
    units = chosen()
    said = [say("At its fastest it lost water {pace} times as fast as in its sheet's own room.", pace=amount(pace))]
    fast = [step for step in case.steps if step.speed_known and step.air.air_speed_m_s > AIR_SPEED.caution]
    if fast:
        total_ms = sum(step.end_ms - step.start_ms for step in fast)
        said.append(
            say(
                "Air moved over it, up to {speed}, for {span}, from {time}.",
                speed=units.air_speed(tally.fastest_m_s),
                span=lasted(total_ms),
                time=case.when_text(fast[0].start_ms),
            )
        )
    warmest, driest = units.temperature(tally.warmest_C, places=0), units.number(tally.driest_pct)
    said.append(say("While wet: up to {warmest}, down to {driest} %.", warmest=warmest, driest=driest))
    return tuple(said)


def _thick(case: Case) -> tuple[str, ...]:
    fresh, coat, sheet = case.course.fresh, case.course.stack.top.coat, case.sheet
    if not is_measured(coat):
        film = chosen().film(sheet.wet_um)
        return (say("How much was laid is not recorded; its sheet's own {film} is taken.", film=film),)
    poured = _poured(coat, case.course.stack.piece)
    film = say(
        "{film} wet, {ratio} times the {sheet} that its sheet's times are for.",
        film=chosen().film(fresh.wet_um),
        ratio=amount(fresh.wet_um / sheet.wet_um),
        sheet=chosen().film(sheet.wet_um),
    )
    return (f"{poured}: {film}" if poured else film,)


def _poured(coat: Coat, piece: Piece) -> str:
    area = chosen().plain(float(f"{piece.area_m2:.2g}"))
    if coat.volume_mL is not None:
        return say("{poured} on {area} m²", poured=measured_text(coat.volume_mL), area=area)
    return "" if coat.grams is None else say("{grams} g on {area} m²", grams=chosen().plain(coat.grams), area=area)


def _thinned(case: Case) -> tuple[str, ...]:
    thinned_pct = case.course.stack.top.coat.thinned_pct
    if thinned_pct <= 0.0:
        return (say("No water was added."),)
    share = chosen().plain(thinned_pct)
    if thinned_pct <= THIN_PCT:
        return (say("{share} % of water was added.", share=share),)
    return (
        say(
            "{share} % of water was added; sheets commonly allow up to {limit} %.",
            share=share,
            limit=chosen().number(THIN_PCT),
        ),
    )


def _matting(case: Case) -> tuple[str, ...]:
    stack = case.course.stack
    coats = [laid.label for laid in stack.coats if laid.sheet.matting_agent]
    if not coats:
        return (say("No satin or matt coat is in the stack."),)
    return (
        say_counted(
            len(coats),
            "{labels} holds matting agent: {n}, where {most} may lie on each other.",
            "{labels} hold matting agent: {n}, where {most} may lie on each other.",
            labels=", ".join(coats),
            most=matting_most([laid.sheet for laid in stack.coats]),
        ),
    )


def _touched(case: Case) -> tuple[str, ...]:
    course, coat = case.course, case.course.stack.top.coat
    laid_ms = course.stack.top.laid_ms
    set_ms, dry_ms = course.stage_ms(Stage.SET_TO_TOUCH), course.stage_ms(Stage.DRY_TO_TOUCH)
    said = []
    if coat.covered_from_ms is not None:
        after_ms = coat.covered_from_ms - laid_ms
        wet = set_ms is None or coat.covered_from_ms < set_ms
        early = wet and after_ms < COVER_MS
        said.append(_covered(after_ms, early=early))
    said += [
        say("A fingertip was on it at {time}, before it was dry to touch.", time=case.when_text(at_ms))
        for at_ms in touch_tests_ms(coat)
        if dry_ms is None or at_ms < dry_ms
    ]
    above_ms = course.stack.above_ms
    if above_ms is not None and (dry_ms is None or above_ms < dry_ms):
        time = case.when_text(above_ms)
        said.append(say("The next coat was brushed over it at {time}, before it was dry to touch.", time=time))
    return tuple(said) or (say("Nothing recorded says that it was touched while wet."),)


def _covered(after_ms: int, *, early: bool) -> str:
    """Return how long after the laying it was covered, and what is usual where that was too early."""
    if after_ms < MINUTE_MS:
        if early:
            return say("Covered at once, less than a minute after it was laid, while wet: 20 minutes are usual.")
        return say("Covered at once, less than a minute after it was laid.")
    span = lasted(after_ms)
    if early:
        return say("Covered {span} after it was laid, while wet: 20 minutes are usual.", span=span)
    return say("Covered {span} after it was laid.", span=span)


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
    Cause.SEALED_IN_WATER: _sealed_in,
    Cause.DAMP_AIR: _damp,
    Cause.BELOW_MFFT: _cold,
    Cause.CONDENSATION: _dew,
    Cause.SKINNED: _skinned,
    Cause.TOO_THICK: _thick,
    Cause.THINNED: _thinned,
    Cause.MATTING_BUILD_UP: _matting,
    Cause.TOUCHED: _touched,
    Cause.STILL_CLEARING: _clearing,
    Cause.UNKNOWN: _unknown,
}


def recoat_ages_ms(course_below: Course) -> tuple[int | None, int | None]:
    """Return the ages at which half of the draws, and nine in ten, of a coat were ready for the next, ms, or None."""
    ready = ready_at(course_below.film.state.reached[ROW[Stage.DRY_TO_RECOAT]])
    is_paint = course_below.film.sheet.kind is Kind.PAINT  # which is held to its sheet's own time
    ages_s = (ready.nominal_s,) * 2 if is_paint else (ready.p50_s, ready.p90_s)
    half, most = (None if age_s is None else round(_MS * age_s) for age_s in ages_s)
    return half, most
