"""What the records say for or against each cause: sentences with figures and times."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import isfinite

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.readiness import ready_at
from studiowatch.coats.solventborne import SolventState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.room.limits import AIR_SPEED, humidity_limit
from studiowatch.studio.amounts import is_measured
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.prompts import COVER_MS
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_course import HOUR_MS, Course
from studiowatch.studio.review_room import Step
from studiowatch.studio.review_severity import Severities, matting_most, touch_tests_ms
from studiowatch.studio.review_words import amount, lasted

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
        return ("No coat of hers lies below it, so nothing was sealed in.",)
    age_ms = stack.top.laid_ms - below.laid_ms
    sealed = case.course.fresh.sealed_in_g_m2
    fluid = "solvent" if below.sheet.kind is Kind.SOLVENTBORNE else "water"
    if sealed <= 0.0:
        needed = "" if case.needed_ms is None else f", and needed about {lasted(case.needed_ms)}"
        return (f"The {below.label} below was {lasted(age_ms)} old{needed}: it held nothing back.",)
    needed = (
        "it was not ready within the time that was followed"
        if case.needed_ms is None
        else f"in its room it needed about {lasted(case.needed_ms)}"
    )
    return (
        f"The {below.label} below was {lasted(age_ms)} old; {needed}.",
        f"{fluid.capitalize()} left under the new coat: {amount(sealed)} g/m².",
    )


def _damp(case: Case) -> tuple[str, ...]:
    tally, limit = case.course.tally, humidity_limit()
    if not isfinite(tally.dampest_pct):
        return ("Its air is not known.",)
    span = lasted(_MS * tally.forming_s)
    if tally.damp_s <= 0.0:
        return (f"Humidity reached {tally.dampest_pct:.0f} % at most while it dried and cleared.",)
    first = next((step for step in case.steps if step.air.humidity_pct > limit.caution), None)
    since = "" if first is None else f", from {case.when_text(first.start_ms)}"
    damp = f"Humidity above {limit.caution:.0f} % for {lasted(_MS * tally.damp_s)} of {span}{since}"
    said = [f"{damp}; at most {tally.dampest_pct:.0f} %."]
    if case.sheet.max_humidity_pct is not None and tally.dampest_pct > case.sheet.max_humidity_pct:
        said.append(f"Its sheet allows up to {case.sheet.max_humidity_pct:g} %.")
    return tuple(said)


def _cold(case: Case) -> tuple[str, ...]:
    if case.sheet.kind is not Kind.WATERBORNE:
        return ("Only a water-borne coat has a least temperature at which its film forms.",)
    mfft_C = case.sheet.mfft_C
    samples = case.course.samples[case.course.stack.top.coat.key]
    coldest = min(samples, key=lambda one: one.film_C, default=None)
    if mfft_C is None or coldest is None:
        return ("Its least film-forming temperature is not known.",)
    cold_min = float(case.severities.values[0, MEASURED.index(Cause.BELOW_MFFT)])
    at_coldest = f"At its coldest it was {coldest.film_C:.1f} °C, at {case.when_text(coldest.time_ms)}."
    if cold_min > 0.0:
        return (
            f"It closed under {mfft_C:g} °C, where a film cannot form, for {lasted(60_000 * cold_min)}.",
            at_coldest,
        )
    if case.severities.shown[Cause.BELOW_MFFT] >= 1.0:
        return (f"It closed little above {mfft_C:g} °C, where a film begins to form, known to 2 °C.", at_coldest)
    return (f"The film was never under {coldest.film_C:.1f} °C; it can form from {mfft_C:g} °C.",)


def _dew(case: Case) -> tuple[str, ...]:
    tally, state = case.course.tally, case.course.film.state
    if not isfinite(tally.least_margin_K):
        return ("Its air is not known.",)
    margin_K = tally.least_margin_K
    side = "above" if margin_K >= 0.0 else "below"
    said = f"The film, or what it lies on, was {amount(abs(margin_K))} °C {side} the dew point at the closest"
    minutes = case.severities.shown[Cause.CONDENSATION]
    if isinstance(state, SolventState) and float(state.blush_s[0]) > 0.0:
        return (f"{said}.", f"It was within 3 °C of it, while wet, for {lasted(_MS * float(state.blush_s[0]))}.")
    if minutes >= 1.0:
        return (f"{said}.", f"Water settled on it for about {lasted(60_000 * minutes)}.")
    return (f"{said}: no water settled on it.",)


def _skinned(case: Case) -> tuple[str, ...]:
    tally, pace = case.course.tally, case.severities.shown[Cause.SKINNED]
    if not isfinite(tally.fastest_m_s):
        return ("Its air is not known.",)
    said = [f"At its fastest it lost water {amount(pace)} times as fast as in its sheet's own room."]
    fast = [step for step in case.steps if step.speed_known and step.air.air_speed_m_s > AIR_SPEED.caution]
    if fast:
        total_ms = sum(step.end_ms - step.start_ms for step in fast)
        moved = f"Air moved over it, up to {tally.fastest_m_s:.2f} m/s, for {lasted(total_ms)}"
        said.append(f"{moved}, from {case.when_text(fast[0].start_ms)}.")
    said.append(f"While wet: up to {tally.warmest_C:.0f} °C, down to {tally.driest_pct:.0f} %.")
    return tuple(said)


def _thick(case: Case) -> tuple[str, ...]:
    fresh, coat, sheet = case.course.fresh, case.course.stack.top.coat, case.sheet
    if not is_measured(coat):
        return (f"How much was laid is not recorded; its sheet's own {sheet.wet_um:.0f} µm is taken.",)
    amounts = _poured(coat, case.course.stack.piece)
    ratio = fresh.wet_um / sheet.wet_um
    told_for = f"{amount(ratio)} times the {sheet.wet_um:.0f} µm that its sheet's times are for"
    return (f"{amounts}{fresh.wet_um:.0f} µm wet, {told_for}.",)


def _poured(coat: Coat, piece: Piece) -> str:
    if coat.volume_mL is not None:
        return f"{coat.volume_mL:g} mL on {piece.area_m2:.2g} m²: "
    return "" if coat.grams is None else f"{coat.grams:g} g on {piece.area_m2:.2g} m²: "


def _thinned(case: Case) -> tuple[str, ...]:
    thinned_pct = case.course.stack.top.coat.thinned_pct
    if thinned_pct <= 0.0:
        return ("No water was added.",)
    said = f"{thinned_pct:g} % of water was added"
    return (f"{said}; sheets commonly allow up to {THIN_PCT:.0f} %." if thinned_pct > THIN_PCT else f"{said}.",)


def _matting(case: Case) -> tuple[str, ...]:
    stack = case.course.stack
    coats = [laid.label for laid in stack.coats if laid.sheet.matting_agent]
    if not coats:
        return ("No satin or matt coat is in the stack.",)
    most = matting_most([laid.sheet for laid in stack.coats])
    verb = "holds" if len(coats) == 1 else "hold"
    return (f"{', '.join(coats)} {verb} matting agent: {len(coats)}, where {most} may lie on each other.",)


def _touched(case: Case) -> tuple[str, ...]:
    course, coat = case.course, case.course.stack.top.coat
    laid_ms = course.stack.top.laid_ms
    set_ms, dry_ms = course.stage_ms(Stage.SET_TO_TOUCH), course.stage_ms(Stage.DRY_TO_TOUCH)
    said = []
    if coat.covered_from_ms is not None:
        after_ms = coat.covered_from_ms - laid_ms
        wet = set_ms is None or coat.covered_from_ms < set_ms
        early = wet and after_ms < COVER_MS
        said.append(
            f"Covered {_after(after_ms)} after it was laid{', while wet: 20 minutes are usual' if early else ''}."
        )
    said += [
        f"A fingertip was on it at {case.when_text(at_ms)}, before it was dry to touch."
        for at_ms in touch_tests_ms(coat)
        if dry_ms is None or at_ms < dry_ms
    ]
    above_ms = course.stack.above_ms
    if above_ms is not None and (dry_ms is None or above_ms < dry_ms):
        said.append(f"The next coat was brushed over it at {case.when_text(above_ms)}, before it was dry to touch.")
    return tuple(said) or ("Nothing recorded says that it was touched while wet.",)


def _after(ms: int) -> str:
    return "at once, less than a minute" if ms < 60_000 else lasted(ms)  # noqa: PLR2004 - a minute


def _clearing(case: Case) -> tuple[str, ...]:
    if case.seen_ms is None:
        return ("When it was looked at is not recorded.",)
    age_ms = case.seen_ms - case.course.stack.top.laid_ms
    ratio = case.severities.shown[Cause.STILL_CLEARING]
    if ratio <= 0.0:
        return (f"It was looked at {lasted(age_ms)} after it was laid, long after a fresh coat has cleared.",)
    normal = "a day or more" if ratio * age_ms >= 24 * HOUR_MS else f"about {lasted(ratio * age_ms)}"
    milky = f"in its warmth a coat of usual thickness is milky for {normal}"
    return (f"It was looked at {lasted(age_ms)} after it was laid; {milky}.",)


def _unknown(case: Case) -> tuple[str, ...]:
    parts = ["dust, soap or grease below, a bottle that was shaken or had frozen, or a finger"]
    if case.outcome is Outcome.SPECKS:
        parts = ["dust or hair that fell on it, lint of a brush or cloth, or bubbles"]
    return (f"What the records cannot show: {parts[0]}.",)


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
