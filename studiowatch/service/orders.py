"""Commands as pure changes of one piece: what is asked, checked, and the piece as it then is."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from studiowatch.service.bench import (
    COVERED_AHEAD,
    LAID_AHEAD,
    LOOKED_AHEAD,
    WATER_ADDED,
    Bench,
    Changed,
    THINNED_pct,
    check_amount,
    past,
    since,
    with_coat,
    within,
)
from studiowatch.service.commands import (
    AmendPiece,
    ArchivePiece,
    CoverCoat,
    LayCoat,
    MovePiece,
    RecordLook,
    RecordOutcome,
    Refused,
    RegisterPiece,
)
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectionCommand,
    CorrectLook,
    RestorePiece,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
)
from studiowatch.service.correction_orders import (
    coat_corrected,
    coat_taken_back,
    in_order,
    look_changed,
    outcome_taken_back,
)
from studiowatch.service.piece_orders import amended, archived, moved, registered, restored
from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    PlannedCommand,
    ReplacePlanned,
    UnplanCoat,
)
from studiowatch.service.replanning import planned
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Coat, Look, Piece

SEEN_AHEAD = mark("The time it was seen lies {minutes} min ahead of the clock; give a time that has been.")

PieceCommand = (
    RegisterPiece
    | AmendPiece
    | ArchivePiece
    | MovePiece
    | LayCoat
    | PlannedCommand
    | CoverCoat
    | RecordLook
    | RecordOutcome
    | CorrectionCommand
)


def carry_out(command: PieceCommand, bench: Bench) -> Changed:
    """Return the piece as `command` leaves it.

    Raises
    ------
    Refused
        With one sentence naming what, the value, its unit, what is allowed and what to do; nothing is changed.
    """
    return _ORDERS[type(command)](command, bench)


def _lay(command: LayCoat, bench: Bench) -> Changed:
    piece = bench.piece(command.piece_key)
    laid_ms = past(LAID_AHEAD, command.laid_ms, bench.now_ms)
    below = [coat for coat in piece.coats if coat.laid_ms is not None]
    if below and laid_ms < (below[-1].laid_ms or 0) and not command.below:
        raise Refused(say("The coat below was laid later than this one; check the time, or lay the lower coat first."))
    check_amount(volume_mL=command.volume_mL, grams=command.grams, wet_um=command.wet_um)
    coat = Coat(
        key=_planned_key(command, piece, bench),
        sheet=bench.sheet(command.sheet),
        laid_ms=laid_ms,
        volume_mL=command.volume_mL,
        grams=command.grams,
        wet_um=command.wet_um,
        thinned_pct=within(WATER_ADDED, command.thinned_pct, "%", THINNED_pct),
    )
    to_come = tuple(old for old in piece.coats if old.laid_ms is None and old.key != coat.key)
    return Changed(piece=replace(piece, coats=in_order((*below, coat, *to_come))), key=coat.key)


def _planned_key(command: LayCoat, piece: Piece, bench: Bench) -> str:
    if command.coat_key is None:
        return bench.new_key()
    laid_ms = {coat.key: coat.laid_ms for coat in piece.coats}
    if command.coat_key not in laid_ms:
        raise Refused(
            say("The planned coat is not on {title} any more; choose the sheet and lay it anew.", title=piece.title)
        )
    if laid_ms[command.coat_key] is not None:
        raise Refused(say("That coat of {title} is on already; choose the next one.", title=piece.title))
    return command.coat_key


def _note(command: CoverCoat | RecordLook | RecordOutcome, bench: Bench) -> Changed:
    piece, coat, laid_ms = bench.laid(command.coat_key)
    match command:
        case CoverCoat():
            covered_ms = since(laid_ms, past(COVERED_AHEAD, command.covered_ms, bench.now_ms))
            changed, key = replace(coat, covered_from_ms=covered_ms), coat.key
        case RecordLook():
            time_ms = since(laid_ms, past(LOOKED_AHEAD, command.time_ms, bench.now_ms))
            look = Look(key=bench.new_key(), time_ms=time_ms, finding=command.finding)
            changed, key = replace(coat, looks=(*coat.looks, look)), look.key
        case RecordOutcome():
            seen_ms = since(laid_ms, past(SEEN_AHEAD, command.seen_ms, bench.now_ms))
            changed, key = replace(coat, outcome=command.outcome, seen_ms=seen_ms), coat.key
    return Changed(piece=replace(piece, coats=with_coat(piece, changed)), key=key)


_ORDERS: Mapping[type[Any], Callable[[Any, Bench], Changed]] = {
    RegisterPiece: registered,
    AmendPiece: amended,
    ArchivePiece: archived,
    RestorePiece: restored,
    MovePiece: moved,
    PlanCoat: planned,
    PlanCoats: planned,
    UnplanCoat: planned,
    ReplacePlanned: planned,
    MovePlanned: planned,
    LayCoat: _lay,
    CoverCoat: _note,
    RecordLook: _note,
    RecordOutcome: _note,
    CorrectCoat: coat_corrected,
    TakeBackCoat: coat_taken_back,
    CorrectLook: look_changed,
    TakeBackLook: look_changed,
    TakeBackOutcome: outcome_taken_back,
}
