"""The shapes of a finishing plan: what it is made from, and what it says."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from studiowatch.studio.plan_checks import Remark
from studiowatch.studio.unready import Unready
from studiowatch.studio.working_hours import Span, WorkingHours


@dataclass(frozen=True, slots=True, kw_only=True)
class Times:
    """When something is ready, UTC ms or ms after laying; None where it is not in sight.

    `p90` is what is told: nine studios in ten that fit what is known have got there.
    """

    p10: int | None
    p50: int | None
    p90: int | None

    def after(self, start: Times) -> Times:
        """Return these ms counted from each of `start`."""
        pairs = ((self.p10, start.p10), (self.p50, start.p50), (self.p90, start.p90))
        p10, p50, p90 = (None if wait is None or at is None else at + wait for wait, at in pairs)
        return Times(p10=p10, p50=p50, p90=p90)


@dataclass(frozen=True, slots=True, kw_only=True)
class Waits:
    """What a coat needs after it was laid, ms: until the next may go on, until dry-hard, and until it is cured."""

    next: Times
    handle: Times
    cured: Times


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatToCome:
    """A coat to come.

    Attributes
    ----------
    label, title : str
        Its short name within the stack, and its sheet's title.
    volume_mL : float or None
        How much to pour; None if its sheet is not known.
    through : bool
        Whether the coat above it may go on only once this one is dry through.
    solvent : bool
        Whether it is solvent-borne.
    """

    key: str
    label: str
    sheet: str
    title: str
    volume_mL: float | None = None
    through: bool = False
    solvent: bool = False


WaitsFor = Callable[[CoatToCome, int], Waits | None]
"""What a coat that is laid at a UTC ms will need; None where nothing can be told."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceToPlan:
    """A piece, as the plan takes it up.

    Attributes
    ----------
    coats : tuple of CoatToCome
        From the lowest up.
    top : str
        Label of what lies on it now, "" if nothing is on record.
    ready : Times
        UTC ms from which the first of `coats` may go on.
    handle, cured : Times or None
        UTC ms at which what lies on it now is dry-hard, and cured; None where nothing is watched.
    waits : callable
        What each coat will need.
    unready : Unready or None
        The last test of what lies on it, if that found it tacky or milky.
    """

    key: str
    title: str
    due: date | None
    coats: tuple[CoatToCome, ...]
    ready: Times
    waits: WaitsFor
    top: str = ""
    handle: Times | None = None
    cured: Times | None = None
    remarks: tuple[Remark, ...] = ()
    unready: Unready | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedCoat:
    """A coat to come with its dates, UTC ms; those that are None are not in sight.

    Attributes
    ----------
    ready : Times
        When what lies below is ready for it.
    start_ms, lay_ms, end_ms
        When to begin to prepare, when the brush goes down, and until when she stays with it.
    why_first : str
        Why it comes at its place where several pieces compete, or "".
    """

    coat: CoatToCome
    ready: Times
    start_ms: int | None = None
    lay_ms: int | None = None
    end_ms: int | None = None
    why_first: str = ""

    @property
    def span(self) -> Span | None:
        """When it takes her hands."""
        return None if self.start_ms is None or self.end_ms is None else (self.start_ms, self.end_ms)


class Milestone(StrEnum):
    """What a finished piece becomes fit for."""

    HANDLE = "handle"
    WRAP = "wrap"
    SHIP = "ship"


@dataclass(frozen=True, slots=True, kw_only=True)
class MilestoneTime:
    """When a piece is fit for something, UTC ms, and what that rests on."""

    kind: Milestone
    times: Times
    basis: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PiecePlan:
    """One piece's plan.

    Attributes
    ----------
    slack_days : int or None
        Days between being fit to ship and being due; negative if it will be late, None if either is not known.
    late : str
        "Cannot be ready by … : about N days late, because …", or "".
    helps : tuple of str
        What could help, one sentence each.
    unsure : str
        Why there are no dates, or not all, or "".
    """

    key: str
    title: str
    due: date | None
    coats: tuple[PlannedCoat, ...]
    milestones: tuple[MilestoneTime, ...]
    remarks: tuple[Remark, ...] = ()
    slack_days: int | None = None
    late: str = ""
    helps: tuple[str, ...] = ()
    unsure: str = ""
    top: str = ""

    def milestone(self, kind: Milestone) -> MilestoneTime | None:
        """Return when it is fit for `kind`, or None where that is not in the plan."""
        return next((time for time in self.milestones if time.kind is kind), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class TodayStep:
    """Something to lay today, in the order in which to do it."""

    piece_key: str
    piece_title: str
    coat: PlannedCoat


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishingPlan:
    """The plan of all pieces on the rack, by place, made at `made_ms`, UTC ms.

    `first` says what to do first today, or that there is nothing, and `air` what air it is dated for, in one sentence.
    """

    made_ms: int
    hours: WorkingHours
    pieces: tuple[PiecePlan, ...] = ()
    today: tuple[TodayStep, ...] = ()
    first: str = ""
    air: str = ""

    def piece(self, key: str) -> PiecePlan | None:
        """Return the plan of one piece, or None if it has none."""
        return next((piece for piece in self.pieces if piece.key == key), None)
