"""How a coat was laid, and what was done to it since, for or against each cause: sentences with figures and times."""

from __future__ import annotations

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.stages import Stage
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.amounts import is_measured
from studiowatch.studio.labels import measured_text
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.prompts import COVER_MS
from studiowatch.studio.review_case import Case
from studiowatch.studio.review_course import LaidCoat
from studiowatch.studio.review_severity import matting_most, touch_tests_ms
from studiowatch.studio.review_words import amount, lasted

MINUTE_MS = 60_000  # ms
THIN_PCT = 10.0  # % of the volume added that sheets commonly allow; common practice, no source


def sealed_in(case: Case) -> tuple[str, ...]:
    """Return what the coat below still held when this one was laid over it."""
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


def thick(case: Case) -> tuple[str, ...]:
    """Return how much was laid."""
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


def thinned(case: Case) -> tuple[str, ...]:
    """Return how far it was thinned."""
    thinned_pct = case.course.stack.top.coat.thinned_pct
    if thinned_pct <= 0.0:
        return (say("It was not thinned."),)
    share = chosen().plain(thinned_pct)
    if thinned_pct <= THIN_PCT:
        return (say("It was thinned by {share} %.", share=share),)
    return (
        say(
            "It was thinned by {share} %; sheets commonly allow up to {limit} %.",
            share=share,
            limit=chosen().number(THIN_PCT),
        ),
    )


def matting(case: Case) -> tuple[str, ...]:
    """Return which coats hold matting agent."""
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


def touched(case: Case) -> tuple[str, ...]:
    """Return what lay on it, or touched it, before it could bear that."""
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
