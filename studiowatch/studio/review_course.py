"""A stack dried again through the room of a review: the film code of the live coats, with what the top coat met."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import sample
from studiowatch.coats.film import Film, advance, advance_through, lay
from studiowatch.coats.readiness import stages_of
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.support import Support, support_of
from studiowatch.studio.amounts import is_measured, wet_um_of
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.review_room import Room, Step, step_ends_ms
from studiowatch.studio.review_tally import Tally, nothing_met, tallied

DRAWS = 16  # of a review: the nominal run, and 15 others for how sure it is; its cost goes with their number
SEED = 20260301  # any fixed number: a review says the same each time
HOUR_MS = 3_600_000  # ms
# steps of the coat that is reviewed: how long after its laying, and how wide, ms
_OPEN = (
    (2 * HOUR_MS, 240_000),
    (6 * HOUR_MS, 480_000),
    (12 * HOUR_MS, 900_000),
    (48 * HOUR_MS, 1_800_000),
    (0, 4 * HOUR_MS),
)
_BELOW = ((6 * HOUR_MS, 300_000), (24 * HOUR_MS, 600_000), (0, HOUR_MS))  # steps of the coats below
_TOGETHER = 6  # steps of a coat below that are taken at once
LONGEST_MS = 48 * HOUR_MS  # ms after its laying for which a coat is followed; assumption: what clouds it is over then


@dataclass(frozen=True, slots=True, kw_only=True)
class LaidCoat:
    """A coat that was laid, on its sheet."""

    coat: Coat
    sheet: DataSheet
    label: str
    laid_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class LaidStack:
    """The coats of a piece up to the one that is looked at, lowest first; `above_ms` is when one was laid over it."""

    piece: Piece
    coats: tuple[LaidCoat, ...]
    above_ms: int | None = None

    @property
    def top(self) -> LaidCoat:
        """The coat that is looked at."""
        return self.coats[-1]

    @property
    def below(self) -> LaidCoat | None:
        """The coat that it lies on, or None."""
        return self.coats[-2] if len(self.coats) > 1 else None

    def with_top(self, coat: Coat) -> LaidStack:
        """Return the same stack with its top coat laid otherwise."""
        laid_ms = self.top.laid_ms if coat.laid_ms is None else coat.laid_ms
        return replace(self, coats=(*self.coats[:-1], replace(self.top, coat=coat, laid_ms=laid_ms)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Sample:
    """How a coat stood at a time, nominal: UTC ms, °C, g/m²."""

    time_ms: int
    film_C: float
    water_g_m2: float


@dataclass(slots=True)
class Course:
    """What became of the top coat of a stack.

    Attributes
    ----------
    fresh, film, below : Film
        As it was laid, as it was at `until_ms`, and the coat below as this one was laid on it, or None.
    steps : list of Step
        The air it was in.
    samples : dict
        By the coat's key: how it, and the coat below, stood over time.
    """

    stack: LaidStack
    fresh: Film
    film: Film
    tally: Tally
    until_ms: int
    below: Film | None = None
    steps: list[Step] = field(default_factory=list)
    samples: dict[str, list[Sample]] = field(default_factory=dict)

    def stage_ms(self, stage: Stage) -> int | None:
        """Return when the top coat reached `stage`, UTC ms, nominal; None if it did not within its course."""
        reached_s = self.film.reached_s(stage)
        return None if reached_s is None else self.stack.top.laid_ms + round(1000.0 * reached_s)


def run(stack: LaidStack, room: Room, until_ms: int, *, longest_ms: int = LONGEST_MS, through: bool = False) -> Course:
    """Dry a stack through a room until a time, or until its top coat is ready for the next: dry through if `through`.

    Raises
    ------
    OutOfRange
        If a coat cannot be followed: a size, an amount or air out of range.
    """
    samples: dict[str, list[Sample]] = {}
    below: Film | None = None
    for lower, upper in zip(stack.coats, stack.coats[1:], strict=False):
        film = _lay(stack, lower, below)
        kept = samples.setdefault(lower.coat.key, []) if upper is stack.top else None
        below = _dry_below(lower, film, room, upper.laid_ms, kept)
    fresh = _lay(stack, stack.top, below)
    course = Course(
        stack=stack,
        fresh=fresh,
        film=fresh,
        tally=nothing_met(DRAWS),
        until_ms=min(until_ms, stack.top.laid_ms + longest_ms),
        below=below,
        samples=samples,
    )
    _dry_top(course, room, through=through)
    return course


def _lay(stack: LaidStack, laid: LaidCoat, over: Film | None) -> Film:
    piece, coat, sheet = stack.piece, laid.coat, laid.sheet
    wet_um = wet_um_of(coat, area_m2=piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
    return lay(
        sheet,
        anchor(sheet, sample(DRAWS, SEED, measured=is_measured(coat))),
        wet_um=wet_um,
        side_m=piece.side_m,
        orientation=piece.orientation,
        thinned_pct=coat.thinned_pct,
        over=over,
        support=support_of(piece.support) if coat.key == piece.coats[0].key else Support.SEALED,
    )


def _dry_below(laid: LaidCoat, film: Film, room: Room, until_ms: int, kept: list[Sample] | None) -> Film:
    """Return the film as it is when the next is laid on it."""
    steps = room.steps(step_ends_ms(laid.laid_ms, until_ms, _BELOW), laid.laid_ms)
    for first in range(0, len(steps), _TOGETHER):
        group = steps[first : first + _TOGETHER]
        covered = _is_covered(laid.coat, group[0].start_ms)
        film, _ = advance_through(film, [(step.air, step.dt_s) for step in group], covered=covered)
        if kept is not None:
            kept.append(_sample(film, group[-1].end_ms))
    return film


def _dry_top(course: Course, room: Room, *, through: bool) -> None:
    top = course.stack.top
    below = course.stack.below
    steps = room.steps(step_ends_ms(top.laid_ms, course.until_ms, _OPEN), top.laid_ms)
    own = course.samples.setdefault(top.coat.key, [])
    for step in steps:
        before = course.film
        course.film, _ = advance(before, step.air, step.dt_s, covered=_is_covered(top.coat, step.start_ms))
        course.tally = tallied(
            course.tally, before, course.film, step.air, is_read=step.is_read, surface_C=step.surface_C
        )
        course.steps.append(step)
        own.append(_sample(course.film, step.end_ms))
        if below is not None:
            course.samples[below.coat.key].append(_sample(course.film.below[-1], step.end_ms))
        if _is_over(course.film, through=through):
            return


def _is_over(film: Film, *, through: bool) -> bool:
    """Return whether nothing that clouds this film can come any more: every draw is ready for the next coat."""
    ready = Stage.DRY_TO_RECOAT if Stage.DRY_TO_RECOAT in stages_of(film.sheet) else Stage.DRY_TO_TOUCH
    asked = (ready, Stage.DRY_THROUGH) if through else (ready,)
    return not bool(np.isinf(film.state.reached[[ROW[stage] for stage in asked]]).any())


def _is_covered(coat: Coat, at_ms: int) -> bool:
    return coat.covered_from_ms is not None and at_ms >= coat.covered_from_ms


def _sample(film: Film, time_ms: int) -> Sample:
    film_C = film.film_C
    return Sample(time_ms=time_ms, film_C=0.0 if film_C is None else film_C, water_g_m2=film.water_g_m2)


def alone(stack: LaidStack) -> LaidStack:
    """Return the top coat as if it lay on nothing that holds water."""
    return replace(stack, coats=(stack.top,))


def laid_stack(piece: Piece, sheets: Sequence[DataSheet], labels: Sequence[str], number: int) -> LaidStack:
    """Return the stack up to the coat `number` of `piece`, counted among its laid coats from 1.

    Parameters
    ----------
    sheets, labels : sequences
        One for each coat of the piece, planned ones too.
    """
    laid = [
        LaidCoat(coat=coat, sheet=sheet, label=label, laid_ms=coat.laid_ms)
        for coat, sheet, label in zip(piece.coats, sheets, labels, strict=True)
        if coat.laid_ms is not None
    ]
    above_ms = laid[number].laid_ms if number < len(laid) else None
    return LaidStack(piece=piece, coats=tuple(laid[:number]), above_ms=above_ms)
