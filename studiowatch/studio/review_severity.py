"""How severe each cause was for one coat, per draw, from its course, its amounts, and when it was looked at."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np

from studiowatch.coats.bound_water import water_content
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film
from studiowatch.coats.paint import PaintState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import WaterState
from studiowatch.physics.ranges import Array, Mask
from studiowatch.studio.amounts import wet_um_of
from studiowatch.studio.otherwise import Otherwise
from studiowatch.studio.pieces import Coat, Finding, Outcome
from studiowatch.studio.prompts import COVER_MS
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_course import DRAWS, HOUR_MS, Course, LaidStack, alone, run
from studiowatch.studio.review_room import Room
from studiowatch.studio.review_tally import Tally

KEPT_PAINT = 0.05  # of its water that paint still holds when it is ready; as dry-through in the film model
MATTING_COATS = 2  # coats with matting agent that may lie on each other where no sheet says; common practice
TEST_ON_WET = 0.7  # severity of a fingertip on a film that had not set; judgement
TEST_ON_TACKY = 0.4  # severity of a fingertip on a film that was still tacky; judgement
LAID_OVER_WET = 0.7  # severity of a brush over a film that was not dry to touch; judgement
STRAIGHT_ON_PAINT = 0.5  # of a coat more: matting agent straight on paint, in its pores; judgement
FAIR_PCT = 60.0  # %RH at most in the room that the normal milky time is told for; judgement
LONGEST_CLEARING_MS = 24 * HOUR_MS  # ms after which no coat is in its normal milky time; judgement
USUAL_FILM = 1.5  # times its sheet's film up to which a coat clears in its normal time; as the limits on thickness
USUAL_THINNING_PCT = 10.0  # % of water up to which it does; common practice, no source
COLDEST_TIMES = 4.0  # times its sheet's own that a coat of its sheet's film is milky in a cold room; judgement
_KEPT = float(water_content(0.5))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Severities:
    """How severe each cause was.

    Attributes
    ----------
    values : (draws, measured causes) ndarray
        As the curves take them.
    shown : mapping of Cause to float
        As people are told: nominal, but for the minutes below the film-forming temperature, which is known to 2 °C
        only: those are the mean of the draws.
    """

    values: Array
    shown: Mapping[Cause, float]


def severities_of(course: Course, room: Room, *, outcome: Outcome | None, seen_ms: int | None) -> Severities:
    """Return the severity of every cause; `outcome` and `seen_ms` matter for a coat that was looked at too early."""
    stack = course.stack
    sheets = [laid.sheet for laid in stack.coats]
    sealed = None if course.below is None else unready_water_g_m2(course.below)
    hands = touched(
        stack.top.coat,
        set_ms=course.stage_ms(Stage.SET_TO_TOUCH),
        dry_ms=course.stage_ms(Stage.DRY_TO_TOUCH),
        above_ms=stack.above_ms,
    )
    found = film_severities(course.film, course.tally, sheets=sheets, sealed_g_m2=sealed, hands=hands)
    if outcome not in (None, Outcome.CLEAR) and seen_ms is not None:
        found[Cause.STILL_CLEARING] = _clearing(stack, room, seen_ms)
    shown = {cause: float(values[0]) for cause, values in found.items()}
    shown[Cause.BELOW_MFFT] = float(found[Cause.BELOW_MFFT].mean())
    shown[Cause.SEALED_IN_WATER] = course.fresh.sealed_in_g_m2
    shown[Cause.MATTING_BUILD_UP] = float(sum(sheet.matting_agent for sheet in sheets))
    return Severities(values=columns(found), shown=shown)


def film_severities(
    film: Film, tally: Tally, *, sheets: Sequence[DataSheet], sealed_g_m2: Array | None, hands: float
) -> dict[Cause, Array]:
    """Return the severity of every cause but "still clearing", live or reviewed, per draw.

    Parameters
    ----------
    sheets : sequence of DataSheet
        Of the coats of the stack, lowest first, this one last.
    sealed_g_m2 : ndarray or None
        Water that had still to leave the coats below when this one was laid, g/m².
    hands : float
        How severely it was touched, 0-1.
    """
    zero = np.zeros(len(film.anchor.draws))
    found: dict[Cause, Array] = dict.fromkeys(MEASURED, zero)
    if film.sheet.kind is Kind.PAINT:
        return found
    found[Cause.SEALED_IN_WATER] = zero if sealed_g_m2 is None else sealed_g_m2
    found[Cause.DAMP_AIR] = tally.damp_h
    found[Cause.CONDENSATION] = tally.dew_min
    found[Cause.SKINNED] = tally.pace
    if isinstance(film.state, WaterState):
        found[Cause.BELOW_MFFT] = film.state.below_mfft_s / 60.0
    found[Cause.TOO_THICK] = film.wet_um / film.sheet.wet_um * film.anchor.draws.thickness_factor
    found[Cause.THINNED] = zero + film.thinned_pct
    found[Cause.MATTING_BUILD_UP] = zero + matting_over(sheets)
    found[Cause.TOUCHED] = zero + hands
    return found


def columns(found: Mapping[Cause, Array]) -> Array:
    """Return severities as the curves take them, (draws, measured causes)."""
    return np.column_stack([found[cause] for cause in MEASURED])


def unready_water_g_m2(below: Film) -> Array:
    """Return the water that had still to leave the coats below when the next was laid, g/m² per draw.

    What stays in them in an ordinary room is left out: a coat that was just ready seals in nothing.
    """
    total = np.zeros(len(below.anchor.draws))
    for film in (*below.below, below):
        total = total + np.where(_too_early(film), np.maximum(film.water_kg_m2 - _stays_kg_m2(film), 0.0), 0.0)
    return 1000.0 * total


def _too_early(film: Film) -> Mask:
    """Return whether a coat on this film comes too early for it, per draw.

    Paint that has had its sheet's time counts as ready, though the depth of a poured layer may hold water for weeks:
    what seeps from there passes through a coat too slowly to cloud it. Assumption.
    """
    if film.sheet.kind is not Kind.PAINT:
        return film.unready
    return np.full(len(film.anchor.draws), film.reached_s(Stage.DRY_TO_RECOAT) is None)


def _stays_kg_m2(film: Film) -> Array | float:
    if isinstance(film.state, WaterState):
        return _KEPT * film.layer.polymer_kg_m2
    if isinstance(film.state, PaintState):
        return KEPT_PAINT * film.water_kg_m2 / np.maximum(film.state.share_kept(), 1e-9)
    return 0.0


def matting_most(sheets: Sequence[DataSheet]) -> int:
    """Return how many coats with matting agent may lie on each other: the least that a sheet among them names."""
    named = [sheet.max_matting_coats for sheet in sheets if sheet.matting_agent]
    return min((most for most in named if most is not None), default=MATTING_COATS)


def matting_over(sheets: Sequence[DataSheet]) -> float:
    """Return how the coats with matting agent stand against what may be: 1 at the most that may be, 2 one above."""
    many = sum(sheet.matting_agent for sheet in sheets)
    if many == 0:
        return 0.0
    on_paint = any(upper.matting_agent and lower.kind is Kind.PAINT for lower, upper in pairwise(sheets))
    straight = on_paint or sheets[0].matting_agent
    return max(many - matting_most(sheets) + 1.0, 0.0) + (STRAIGHT_ON_PAINT if straight else 0.0)


def touched(coat: Coat, *, set_ms: int | None, dry_ms: int | None, above_ms: int | None) -> float:
    """Return how severely a coat was touched, 0-1: covered too soon, tested or painted over while wet.

    Parameters
    ----------
    set_ms, dry_ms, above_ms : int or None
        UTC ms when it set and was dry to touch, None if it was not yet; and when a coat was laid over it.
    """
    found = [0.0]
    if coat.covered_from_ms is not None and (set_ms is None or coat.covered_from_ms < set_ms):
        found.append(max(1.0 - (coat.covered_from_ms - (coat.laid_ms or 0)) / COVER_MS, 0.0))
    for at_ms in touch_tests_ms(coat):
        if set_ms is None or at_ms < set_ms:
            found.append(TEST_ON_WET)
        elif dry_ms is None or at_ms < dry_ms:
            found.append(TEST_ON_TACKY)
    if above_ms is not None and (dry_ms is None or above_ms < dry_ms):
        found.append(LAID_OVER_WET)
    return max(found)


def touch_tests_ms(coat: Coat) -> tuple[int, ...]:
    """Return when a fingertip was on it, UTC ms: a look is not a touch."""
    return tuple(look.time_ms for look in coat.looks if look.finding in (Finding.TACKY, Finding.DRY))


def _clearing(stack: LaidStack, room: Room, seen_ms: int) -> Array:
    """Return the normal milky time over the age at which it was looked at, per draw; 0 for a coat that has none."""
    laid_ms, sheet = stack.top.laid_ms, stack.top.sheet
    age_ms = max(seen_ms - laid_ms, 60_000)
    if sheet.kind is not Kind.WATERBORNE or age_ms >= _longest_clearing_ms(sheet):
        return np.zeros(DRAWS)
    usual = alone(stack.with_top(_usual(stack)))
    course = run(usual, room.holding(Otherwise(most_humidity_pct=FAIR_PCT)), laid_ms + LONGEST_CLEARING_MS)
    cleared_s: Array = np.minimum(course.film.state.reached[ROW[Stage.CLEAR]], LONGEST_CLEARING_MS / 1000.0)
    return 1000.0 / age_ms * cleared_s


def _usual(stack: LaidStack) -> Coat:
    """Return the top coat as is usual: neither thick nor thinned far, for those are causes of their own."""
    coat, sheet = stack.top.coat, stack.top.sheet
    wet_um = wet_um_of(coat, area_m2=stack.piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
    return replace(
        coat,
        wet_um=min(wet_um, USUAL_FILM * sheet.wet_um),
        volume_mL=None,
        grams=None,
        thinned_pct=min(coat.thinned_pct, USUAL_THINNING_PCT),
    )


def _longest_clearing_ms(sheet: DataSheet) -> float:
    """Return after how long no coat of a sheet is in its normal milky time any more, ms."""
    return min(COLDEST_TIMES * USUAL_FILM**2 * (sheet.clear_h or sheet.recoat_h) * HOUR_MS, LONGEST_CLEARING_MS)
