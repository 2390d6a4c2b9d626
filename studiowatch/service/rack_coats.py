"""What the coats on the rack are to each other: which comes next, when, untested, giving off vapour."""

from __future__ import annotations

from studiowatch.coats.data_sheet import Kind
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.piece_view import StageTime
from studiowatch.service.rack import Rack
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.plan_checks import needs_dry_through


def following_coat(piece: Piece) -> Coat | None:
    """Return the next coat planned, or None."""
    return next((coat for coat in piece.coats if coat.laid_ms is None), None)


def next_ready_ms(rack: Rack, piece: Piece, run: CoatRun) -> tuple[int | None, int | None, int | None]:
    """Return when the topmost coat of a piece is ready for the next one planned, UTC ms, as `told_ms_of`."""
    return told_ms_of(run.told.next_coat(through=waits_through(rack, piece, run)))


def waits_through(rack: Rack, piece: Piece, run: CoatRun) -> bool:
    """Return whether the next coat planned on that of `run` waits until it is dry through."""
    following = following_coat(piece)
    return following is not None and needs_dry_through(run.sheet, rack.shelf.sheets.get(following.sheet))


def told_ms_of(time: StageTime | None) -> tuple[int | None, int | None, int | None]:
    """Return what to tell her of a time, UTC ms, and the likely range; None where it is not known.

    What she is told is the upper bound: the next coat may go on when nine draws in ten are ready.
    """
    if time is None:
        return None, None, None
    if time.reached:
        return time.time_ms, None, None
    return time.p90_ms, time.p10_ms, time.p90_ms


def untested_label(rack: Rack, piece: Piece, coat: Coat) -> str:
    """Return the label of `coat` if it is a clear one that was neither tested nor looked at, or ""."""
    is_clear = rack.shelf.stand_in(coat.sheet).clear_film
    is_known = bool(coat.looks) or coat.outcome is not None
    return "" if is_known or not is_clear else rack.stacks.labels(piece)[piece.index_of(coat.key)]


def solvent_layings_ms(rack: Rack) -> list[int]:
    """Return the UTC ms at which solvent-borne coats were laid, on pieces that have left the rack too."""
    sheets = rack.shelf.sheets
    return [
        coat.laid_ms
        for piece in rack.pieces.values()
        for coat in piece.coats
        if coat.laid_ms is not None and coat.sheet in sheets and sheets[coat.sheet].kind is Kind.SOLVENTBORNE
    ]


def vapour_in_room(rack: Rack, *, but: str = "") -> str:
    """Return in words the coat, on another piece than that of the key `but`, that gives off solvent still, or ""."""
    for piece in rack.on_rack():
        run = rack.stacks.top(piece)
        if run is not None and piece.key != but and _gives_off_vapour(run):
            label = rack.stacks.labels(piece)[piece.index_of(run.coat.key)]
            return say("{coat} on {title}", coat=label, title=piece.title)
    return ""


def _gives_off_vapour(run: CoatRun) -> bool:
    return run.sheet.kind is Kind.SOLVENTBORNE and not run.recoat_told
