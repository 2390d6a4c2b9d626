"""The rack as the finishing plan takes it up: frozen values, so that the plan may be made on another thread."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film
from studiowatch.coats.learning import Seen
from studiowatch.coats.readiness import Ready, lasting, outlook, ready_times
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import Standing
from studiowatch.physics.air import Air, AnyAir
from studiowatch.service.air_ahead import RoomToCome, calm
from studiowatch.service.coat_run import HORIZON_S, CoatRun
from studiowatch.service.film_waits import FAR_S, FilmWaits, waits_of
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import next_ready_ms
from studiowatch.studio.labels import suggested_mL
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.plan_checks import StackCoat, check_stack, needs_dry_through
from studiowatch.studio.plan_shapes import CoatToCome, PieceToPlan, Times, Waits, WaitsFor
from studiowatch.studio.unready import Unready
from studiowatch.studio.working_hours import GRAIN_MS

_NEEDED = (Stage.DRY_TO_RECOAT, Stage.DRY_HARD, Stage.DRY_THROUGH, Stage.CURED)
NOT_IN_SIGHT = Times(p10=None, p50=None, p90=None)
ReadyByPiece = Mapping[str, tuple[int | None, int | None]]
"""UTC ms by the key of a piece; None is not in sight."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Top:
    """The topmost coat that is on, as it stood when the plan was asked for."""

    film: Film
    air: Air
    covered: bool
    laid_ms: int
    standing: Standing
    tests: tuple[Seen, ...]
    ahead: Mapping[Stage, Ready]
    unready: Unready | None
    coming: Sequence[tuple[AnyAir, float]] | None

    @classmethod
    def of(cls, run: CoatRun, room: RoomToCome) -> Top | None:
        """Return the coat of a run, or None before its first air; the room to come only if its stages lie far ahead."""
        if run.air is None:
            return None
        coming = None if _is_in_sight(run.ahead) else room.spans(calm(run.air), run.at_ms, HORIZON_S)
        return cls(
            film=run.film,
            air=calm(run.air),
            covered=run.covered,
            laid_ms=run.laid_ms,
            standing=run.standing,
            tests=run.tests(),
            ahead=run.ahead,
            unready=run.unready(),
            coming=coming,
        )

    def waits(self, *, through: bool) -> Waits:
        """Return what it needs from its laying on, in the room to come; looked for far ahead where that is needed.

        What its card tells already is told as it stands there.
        """
        if _is_in_sight(self.ahead):
            return waits_of(self.film.sheet, self.ahead, through=through)
        coming = None
        if self.coming is not None:
            coming = (*self.coming, (lasting(self.coming), FAR_S - HORIZON_S))
        table = outlook(self.film, self.air, horizon_s=FAR_S, covered=self.covered, coming=coming)
        times = dict(ready_times(self.film.sheet, table, self.standing.weights(table, self.tests)))
        times |= {stage: ready for stage, ready in self.ahead.items() if ready.p90_s is not None}
        return waits_of(self.film.sheet, times, through=through)


def _is_in_sight(ahead: Mapping[Stage, Ready]) -> bool:
    """Return whether the times of all stages that a plan needs are told already."""
    return all(stage in ahead and ahead[stage].p90_s is not None for stage in _NEEDED)


@dataclass(frozen=True, slots=True, kw_only=True)
class OnTheRack:
    """One piece, gathered on the keeper's thread.

    Attributes
    ----------
    stack : tuple of StackCoat
        All its coats, from the lowest up.
    top : Top or None
        The topmost coat that is on and watched; `is_bare` says that there is none at all.
    """

    piece: Piece
    labels: tuple[str, ...]
    stack: tuple[StackCoat, ...]
    top: Top | None
    is_bare: bool


def gathered(rack: Rack) -> tuple[OnTheRack, ...]:
    """Return the pieces on the rack, by place."""
    return tuple(_gathered(rack, piece) for piece in rack.on_rack())


def _gathered(rack: Rack, piece: Piece) -> OnTheRack:
    run = rack.stacks.top(piece)
    laid = [coat for coat in piece.coats if coat.laid_ms is not None]
    is_watched = run is not None and bool(laid) and run.coat.key == laid[-1].key
    return OnTheRack(
        piece=piece,
        labels=rack.stacks.labels(piece),
        stack=tuple(stack_coat(coat, rack.shelf.sheets.get(coat.sheet)) for coat in piece.coats),
        top=Top.of(run, rack.stacks.room) if run is not None and is_watched else None,
        is_bare=not laid,
    )


def stack_coat(coat: Coat, sheet: DataSheet | None) -> StackCoat:
    """Return a coat as the checks of a stack take it."""
    return StackCoat(key=coat.key, name=coat.sheet, sheet=sheet, laid=coat.laid_ms is not None)


def cards_ready(rack: Rack) -> ReadyByPiece:
    """Return by piece from when the next coat may go on what lies there, and from when perhaps, as its card says."""
    tops = [(piece, rack.stacks.top(piece)) for piece in rack.on_rack()]
    return {piece.key: next_ready_ms(rack, piece, run)[:2] for piece, run in tops if run is not None}


def is_moved(before: ReadyByPiece, after: ReadyByPiece) -> bool:
    """Return whether a time moved by what plans are told to, or is in sight or out of it only now."""
    return any(
        (was is None) != (now is None) or abs((now or 0) - (was or 0)) >= GRAIN_MS
        for key in before.keys() & after.keys()
        for was, now in zip(before[key], after[key], strict=True)
    )


def pieces_to_plan(pieces: Sequence[OnTheRack], waits: FilmWaits, now_ms: int) -> tuple[PieceToPlan, ...]:
    """Return the pieces with their coats to come and what those need."""
    return tuple(_to_plan(one, waits, now_ms) for one in pieces)


def _to_plan(one: OnTheRack, waits: FilmWaits, now_ms: int) -> PieceToPlan:
    piece = one.piece
    first = next((at for at, coat in enumerate(one.stack) if not coat.laid), len(one.stack))
    coats = tuple(_to_come(one, at) for at in range(first, len(one.stack)))
    through = bool(coats) and needs_dry_through(one.stack[first - 1].sheet if first else None, one.stack[first].sheet)
    ready, handle, cured = _now(one, through=through, now_ms=now_ms)
    return PieceToPlan(
        key=piece.key,
        title=piece.title,
        due=piece.due,
        coats=coats,
        ready=ready,
        waits=_waits_for(one, waits),
        top=one.labels[first - 1] if first else "",
        handle=handle,
        cured=cured,
        remarks=check_stack(one.stack),
        unready=None if one.top is None else one.top.unready,
    )


def _to_come(one: OnTheRack, at: int) -> CoatToCome:
    coat, sheet = one.stack[at], one.stack[at].sheet
    above = one.stack[at + 1] if at + 1 < len(one.stack) else None
    return CoatToCome(
        key=coat.key,
        label=one.labels[at],
        sheet=coat.name,
        title=coat.name if sheet is None else sheet.title,
        volume_mL=None if sheet is None else suggested_mL(one.piece.area_m2, sheet.wet_um),
        through=above is not None and needs_dry_through(sheet, above.sheet),
        solvent=sheet is not None and sheet.kind is Kind.SOLVENTBORNE,
    )


def _now(one: OnTheRack, *, through: bool, now_ms: int) -> tuple[Times, Times | None, Times | None]:
    """Return when the next coat may go on, and when what lies there is dry-hard and cured, UTC ms."""
    if one.is_bare:
        return Times(p10=now_ms, p50=now_ms, p90=now_ms), None, None
    if one.top is None:
        return NOT_IN_SIGHT, None, None
    at = Times(p10=one.top.laid_ms, p50=one.top.laid_ms, p90=one.top.laid_ms)
    told = one.top.waits(through=through)
    is_paint = one.stack[-1].paint
    following, handle, cured = (
        _beside(one.top.unready, wait.after(at)) for wait in (told.next, told.handle, told.cured)
    )
    return following, None if is_paint else handle, None if is_paint else cured


def _beside(unready: Unready | None, times: Times) -> Times:
    """Return what of modelled times stands beside her last test, UTC ms."""
    if unready is None:
        return times
    told_ms = unready.told_ms(times.p90)
    if told_ms is None:
        return NOT_IN_SIGHT
    return Times(p10=unready.likely_ms(times.p10), p50=unready.likely_ms(times.p50), p90=told_ms)


def _waits_for(one: OnTheRack, waits: FilmWaits) -> WaitsFor:
    sheets = {coat.key: coat.sheet for coat in one.stack}
    piece = one.piece

    def of(coat: CoatToCome, lay_ms: int) -> Waits | None:
        sheet = sheets[coat.key]
        if sheet is None:
            return None
        return waits.of(sheet, side_m=piece.side_m, orientation=piece.orientation, through=coat.through, lay_ms=lay_ms)

    return of
