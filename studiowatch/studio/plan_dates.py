"""The dates of one piece: each coat to come at its place in the working hours, and when it is fit to leave."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from studiowatch.speech.words import mark, say
from studiowatch.studio.plan_shapes import (
    Milestone,
    MilestoneTime,
    PieceToPlan,
    PlannedCoat,
    Times,
    Waits,
)
from studiowatch.studio.working_hours import MINUTE_MS, Span, WallClock, WorkingHours

PREPARE_MS = 25 * MINUTE_MS  # wipe and let dry 10 min, bottle at rest 15 min: common practice, no source
PRESENCE_MS = 45 * MINUTE_MS  # brush, second pass and scrape, cover, a look: common practice, no source
PACK_MS = 30 * MINUTE_MS  # to wrap and pack a piece; assumption

HANDLE_BASIS = mark(
    "dry-hard: nine tenths of what makes the film soft have left it (assumption); by its edges, clean hands"
)
WRAP_BASIS = mark("cured as its sheet says: a film wrapped before sticks to its wrapping (common practice, no source)")
SHIP_BASIS = mark("cured, and wrapped in the next working hours (common practice, no source)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Desk:
    """When she works, and now, UTC ms."""

    hours: WorkingHours
    clock: WallClock
    now_ms: int

    def place(self, from_ms: int | None, busy: Sequence[Span] = ()) -> int | None:
        """Return the first moment from `from_ms` on at which a coat can be laid."""
        if from_ms is None:
            return None
        return self.hours.fit(
            from_ms, self.clock, now_ms=self.now_ms, before_ms=PREPARE_MS, after_ms=PRESENCE_MS, busy=busy
        )

    def packing(self, from_ms: int | None) -> int | None:
        """Return the first moment from `from_ms` on at which a piece is packed."""
        if from_ms is None:
            return None
        start = self.hours.fit(from_ms, self.clock, now_ms=self.now_ms, before_ms=0, after_ms=PACK_MS)
        return None if start is None else start + PACK_MS


@dataclass(slots=True)
class Course:
    """One piece on its way through its coats to come: what is placed, and what the next needs.

    It is followed three times at once: as it is told (p90), and as it may go if a touch test finds each coat ready
    earlier (p10, p50); those two do not wait for other pieces.
    """

    piece: PieceToPlan
    desk: Desk
    placed: list[PlannedCoat] = field(default_factory=list)
    ready: Times = field(init=False)
    handle: Times | None = field(init=False)
    cured: Times | None = field(init=False)
    waited_ms: int = 0  # between coats
    idle_ms: int = 0  # for her hours, and for her hands

    def __post_init__(self) -> None:
        self.ready = self.piece.ready
        self.handle, self.cured = self.piece.handle, self.piece.cured

    @property
    def is_done(self) -> bool:
        """Whether all coats to come have been taken up."""
        return len(self.placed) == len(self.piece.coats)

    def moment(self, busy: Sequence[Span]) -> int | None:
        """Return when the next coat can be laid, or None if that is not in sight."""
        return self.desk.place(self.ready.p90, busy)

    def lay(self, lay_ms: int | None, why_first: str = "") -> PlannedCoat:
        """Take up the next coat at `lay_ms`."""
        coat = self.piece.coats[len(self.placed)]
        planned = PlannedCoat(coat=coat, ready=self.ready, why_first=why_first)
        if lay_ms is not None:
            planned = PlannedCoat(
                coat=coat,
                ready=self.ready,
                start_ms=lay_ms - PREPARE_MS,
                lay_ms=lay_ms,
                end_ms=lay_ms + PRESENCE_MS,
                why_first=why_first,
            )
        self.placed.append(planned)
        self._go_on(planned)
        return planned

    def _go_on(self, planned: PlannedCoat) -> None:
        laid = Times(p10=self.desk.place(self.ready.p10), p50=self.desk.place(self.ready.p50), p90=planned.lay_ms)
        waits = [None if at is None else self.piece.waits(planned.coat, at) for at in (laid.p10, laid.p50, laid.p90)]
        told = waits[-1]
        if planned.lay_ms is not None:
            self.idle_ms += planned.lay_ms - max(self.ready.p90 or 0, self.desk.now_ms)
        if told is not None and told.next.p90 is not None and not self.is_done:
            self.waited_ms += told.next.p90
        self.ready = _times(laid, [None if wait is None else wait.next for wait in waits])
        self.handle = _times(laid, [None if wait is None else wait.handle for wait in waits])
        self.cured = _times(laid, [None if wait is None else wait.cured for wait in waits])

    def wait_ms(self) -> int:
        """Return how long the next coat takes once it is on, ms: until the one above may go on, or until cured."""
        coat = self.piece.coats[len(self.placed)]
        waits: Waits | None = None if self.ready.p90 is None else self.piece.waits(coat, self.ready.p90)
        if waits is None:
            return 0
        is_last = len(self.placed) + 1 == len(self.piece.coats)
        return (waits.cured.p90 if is_last else waits.next.p90) or 0

    def run_alone(self) -> Course:
        """Take up all coats as if there were no other piece, and return this course."""
        while not self.is_done:
            self.lay(self.moment(()))
        return self

    def milestones(self) -> tuple[MilestoneTime, ...]:
        """Return when the piece is fit to handle, to wrap and to ship; nothing if nothing lies on it."""
        if self.handle is None or self.cured is None:
            return ()
        ship = Times(
            p10=self.desk.packing(self.cured.p10),
            p50=self.desk.packing(self.cured.p50),
            p90=self.desk.packing(self.cured.p90),
        )
        return (
            MilestoneTime(kind=Milestone.HANDLE, times=self.handle, basis=say(HANDLE_BASIS)),
            MilestoneTime(kind=Milestone.WRAP, times=self.cured, basis=say(WRAP_BASIS)),
            MilestoneTime(kind=Milestone.SHIP, times=ship, basis=say(SHIP_BASIS)),
        )

    def ship_ms(self) -> int | None:
        """Return when it is told to be fit to ship, UTC ms."""
        return None if self.cured is None else self.desk.packing(self.cured.p90)


def _times(laid: Times, waits: Sequence[Times | None]) -> Times:
    early, middle, late = waits
    return Times(
        p10=_sum(laid.p10, None if early is None else early.p10),
        p50=_sum(laid.p50, None if middle is None else middle.p50),
        p90=_sum(laid.p90, None if late is None else late.p90),
    )


def _sum(at: int | None, wait: int | None) -> int | None:
    return None if at is None or wait is None else at + wait
