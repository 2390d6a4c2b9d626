"""What the air did to a coat, for or against each cause: sentences with figures and times."""

from __future__ import annotations

from math import isfinite

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.draws import MFFT_SPREAD_K
from studiowatch.coats.solventborne import BLUSH_MARGIN_K, SolventState
from studiowatch.coats.stages import Stage
from studiowatch.room.limits import AIR_SPEED
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.review_case import Case
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_tally import told_damp_pct
from studiowatch.studio.review_words import amount, apart, lasted

_MS = 1000.0  # ms in a second


def damp(case: Case) -> tuple[str, ...]:
    """Return how damp its air was while it dried and cleared."""
    tally, limit_pct = case.course.tally, told_damp_pct(case.sheet.max_humidity_pct)
    if not isfinite(tally.dampest_pct):
        return (say("Its air is not known."),)
    dampest = chosen().number(tally.dampest_pct)
    if tally.damp_s <= 0.0:
        return (say("Humidity reached {dampest} % at most while it dried and cleared.", dampest=dampest),)
    figures = {
        "limit": chosen().plain(limit_pct),
        "damp": lasted(_MS * tally.damp_s),
        "whole": lasted(_MS * tally.forming_s),
        "dampest": dampest,
    }
    first = next((step for step in case.steps if step.air.humidity_pct > limit_pct), None)
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


def cold(case: Case) -> tuple[str, ...]:
    """Return whether it closed where its film could not form."""
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


def dew(case: Case) -> tuple[str, ...]:
    """Return how near the dew point it came, and whether water settled on it."""
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


def skinned(case: Case) -> tuple[str, ...]:
    """Return how fast it dried, where that is followed, and in what moving air while it was wet."""
    tally, pace = case.course.tally, case.severities.shown[Cause.SKINNED]
    if not isfinite(tally.fastest_m_s):
        return (say("Its air is not known."),)
    units = chosen()
    said = []
    if case.sheet.kind is Kind.WATERBORNE:
        said.append(
            say("At its fastest it lost water {pace} times as fast as in its sheet's own room.", pace=amount(pace))
        )
    wet = case.until(Stage.DRY_TO_TOUCH)
    fast = [step for step in wet if step.speed_known and step.air.air_speed_m_s > AIR_SPEED.caution]
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
