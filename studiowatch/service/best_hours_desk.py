"""The best hours for the coats that come next on the rack, by the room anew each ten minutes, by a worker.

While nobody looks they wait for a new plan; a plan that is ten minutes newer has them worked out at once. They are said
by the plan that is shown beside them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import Future
from dataclasses import dataclass

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.local_time import when_text
from studiowatch.service.plan_desk import UNSEEN_AGAIN_MS
from studiowatch.service.room_ahead import AGAIN_MS, RoomAhead
from studiowatch.service.room_foretold import KNOWN_MS
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import chosen
from studiowatch.studio.best_hours import SURE, Room, StartHour, asides, room_hours, start_hours, stretches
from studiowatch.studio.best_hours_words import (
    aside_text,
    caution_text,
    next_text,
    none_text,
    stretch_text,
    unknown_text,
)
from studiowatch.studio.plan_shapes import FinishingPlan, PlannedCoat, Times
from studiowatch.studio.working_hours import WallClock, WorkingHours

BEST_TOLD = 3  # stretches that are told in words


@dataclass(frozen=True, slots=True, kw_only=True)
class _Next:
    """The next coat of one sheet, and the pieces that wait for it."""

    sheet: str
    title: str
    piece_keys: tuple[str, ...]
    piece_titles: tuple[str, ...]
    ready: Times

    def told(self, made_ms: int) -> tuple[object, ...]:
        """Return what is told of it by a plan of `made_ms`, UTC ms; what is ready by then waits for nothing."""
        ready_ms = self.ready.p90
        waits_until_ms = None if ready_ms is None else ready_ms if ready_ms > made_ms else 0
        return self.sheet, self.piece_keys, self.piece_titles, waits_until_ms


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class RoomHours:
    """The hours of each sheet by the room alone, worked out at `made_ms`, UTC ms; none while nothing is known of it."""

    made_ms: int
    by_sheet: Mapping[str, tuple[StartHour, ...]]


Views = tuple[BestHoursView, ...]
BestHoursWork = Callable[[Callable[[], RoomHours]], "Future[RoomHours]"]


@dataclass(slots=True)
class BestHoursDesk:
    """Holds the views.

    What the room has against each hour is worked out seldom; her hours, units and what lies below are heeded at once.

    Attributes
    ----------
    work : callable or None
        Has the hours worked out and returns their future: until then the earlier ones stand. With None that is done at
        once.
    is_seen : bool
        Whether somebody looks; else they are worked out anew as seldom as the plan.
    """

    room: RoomAhead
    shelf: SheetShelf
    clock: WallClock
    work: BestHoursWork | None = None
    is_seen: bool = True
    _views: Views = ()
    _told: tuple[object, ...] = ()
    _known: RoomHours | None = None
    _asked: Future[RoomHours] | None = None
    _made_ms: int | None = None
    _of: tuple[object, ...] = ()
    _plan: FinishingPlan | None = None
    _plan_ms: int = 0  # UTC ms of the plan that they are by
    _next: tuple[_Next, ...] = ()

    def views(self, plan: FinishingPlan | None, hours: WorkingHours, now_ms: int, meant: object = ()) -> Views:
        """Return the best hours of each sheet that comes next; `meant`, changed, has them worked out anew."""
        if plan is None:
            return ()
        if self._asked is not None and self._asked.done():
            asked, self._asked = self._asked, None
            self._known = asked.result()
        if plan is not self._plan:
            self._plan, self._next = plan, tuple(_coming(plan))
        coming = tuple(one for one in self._next if one.sheet in self.shelf.sheets)
        if self._asked is None:
            self._work_out(coming, plan, now_ms, meant)
        told = (tuple(one.told(plan.made_ms) for one in coming), hours, chosen(), self._known)
        if self._known is not None and told != self._told:
            self._told, self._views = told, tuple(self._said(self._known, coming, hours, now_ms))
        return self._views

    def _work_out(self, coming: Sequence[_Next], plan: FinishingPlan, now_ms: int, meant: object) -> None:
        """Have what the room has against each hour worked out if it is time."""
        is_known = self.room.outlook is not None and self.room.hours.span_of_log_ms(now_ms) >= KNOWN_MS
        key = (tuple(one.sheet for one in coming), is_known, meant)
        again_ms = AGAIN_MS if self.is_seen else UNSEEN_AGAIN_MS
        is_fresh = self._made_ms is not None and 0 <= now_ms - self._made_ms < again_ms
        if key == self._of and is_fresh and plan.made_ms - self._plan_ms < AGAIN_MS:
            return
        self._of, self._made_ms, self._plan_ms = key, now_ms, plan.made_ms
        make = self._making(coming, now_ms, is_known=is_known)
        if self.work is None:
            self._known = make()
        else:
            self._asked = self.work(make)

    def _making(self, coming: Sequence[_Next], now_ms: int, *, is_known: bool) -> Callable[[], RoomHours]:
        """Return what works them out from what is gathered here: it asks nothing of the keeper's."""
        clock = self.clock
        each = [(self.shelf.sheets[one.sheet], self._room_for(one, is_known=is_known)) for one in coming]

        def make() -> RoomHours:
            by_sheet = {
                sheet.name: () if room is None else room_hours(room, sheet, clock, now_ms=now_ms)
                for sheet, room in each
            }
            return RoomHours(made_ms=now_ms, by_sheet=by_sheet)

        return make

    def _said(
        self, known: RoomHours, coming: Sequence[_Next], hours: WorkingHours, now_ms: int
    ) -> Iterator[BestHoursView]:
        """Yield what is told of the sheets whose hours are worked out."""
        for one in coming:
            sheet = self.shelf.sheets[one.sheet]
            if one.sheet in known.by_sheet:
                told = start_hours(known.by_sheet[one.sheet], hours, self.clock, ready=one.ready)
                yield _view(one, sheet, told, made_ms=known.made_ms, now_ms=now_ms)

    def _room_for(self, one: _Next, *, is_known: bool) -> Room | None:
        # nothing heats or dries the room of a coat that gives off flammable vapour
        is_solvent = self.shelf.sheets[one.sheet].kind is Kind.SOLVENTBORNE
        outlook, made_ms = self.room.free if is_solvent else self.room.outlook, self.room.made_ms
        return (
            Room(outlook=outlook, made_ms=made_ms) if is_known and outlook is not None and made_ms is not None else None
        )


def _view(one: _Next, sheet: DataSheet, told: tuple[StartHour, ...], *, made_ms: int, now_ms: int) -> BestHoursView:
    good, others = stretches(told), asides(told)

    def when(time_ms: int) -> str:
        return when_text(time_ms, now_ms)

    by_time = sorted(good[:BEST_TOLD], key=lambda one: (one.chance < SURE, one.first_ms))
    best = tuple(stretch_text(stretch, when) for stretch in by_time)
    none = none_text(good)
    return BestHoursView(
        sheet=one.sheet,
        title=sheet.title,
        piece_keys=one.piece_keys,
        piece_titles=one.piece_titles,
        made_ms=made_ms,
        ready_ms=one.ready.p90,
        hours=told,
        good=good,
        unknown="" if told else unknown_text(),
        caution=caution_text(sheet),
        lines=best or ((none,) if told else ()),
        aside_lines=tuple(dict.fromkeys(aside_text(aside, one.ready.p90, when) for aside in others)),
        next_line=next_text(good, others, one.ready.p90, when) if told else "",
    )


def _coming(plan: FinishingPlan) -> Iterator[_Next]:
    """Yield the sheets that come next by the place of the first piece that waits for each."""
    by_sheet: dict[str, list[tuple[str, str, PlannedCoat]]] = {}
    for piece in plan.pieces:
        if piece.coats:
            first = piece.coats[0]
            by_sheet.setdefault(first.coat.sheet, []).append((piece.key, piece.title, first))
    for sheet, waiting in by_sheet.items():
        coats = [coat for _, _, coat in waiting]
        yield _Next(
            sheet=sheet,
            title=coats[0].coat.title,
            piece_keys=tuple(key for key, _, _ in waiting),
            piece_titles=tuple(title for _, title, _ in waiting),
            ready=min((coat.ready for coat in coats), key=lambda ready: (ready.p90 is None, ready.p90 or 0)),
        )
