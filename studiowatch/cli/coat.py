"""`coat`: what was laid, covered, looked at and how it came out; recorded, corrected and taken back."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping

from studiowatch.cli.answers import DONE, wrong
from studiowatch.cli.asking import carried_out, pieces_in, refused
from studiowatch.cli.inputs import moment_ms
from studiowatch.cli.piece import piece_called
from studiowatch.cli.piece_calls import OPEN
from studiowatch.service.commands import CoverCoat, LayCoat, RecordLook, RecordOutcome, Refused
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectLook,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
)
from studiowatch.service.orders import PieceCommand
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_commands import PlanCoat
from studiowatch.speech.words import mark, say
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece

_AMOUNTS = ("--mL", "--grams", "--wet-um")


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    piece = piece_called(call.piece, pieces_in(folder))
    command = _COMMANDS[call.deed](call, piece, outfit.clock.utc_ms())
    try:
        carried_out(command, outfit, folder)
    except Refused as fault:
        return refused(fault)
    print(say(_DONE[call.deed], title=piece.title))
    return DONE


def _lay(call: argparse.Namespace, piece: Piece, now_ms: int) -> PieceCommand:
    following = next((coat for coat in piece.coats if coat.laid_ms is None), None)
    is_planned = following is not None and following.sheet == call.sheet and not call.below
    return LayCoat(
        piece_key=piece.key,
        laid_ms=now_ms if call.laid is None else moment_ms(call.laid),
        sheet=call.sheet,
        coat_key=following.key if following is not None and is_planned else None,
        volume_mL=call.volume_mL,
        grams=call.grams,
        wet_um=call.wet_um,
        thinned_pct=call.thinned_pct or 0.0,
        below=call.below,
    )


def _correct(call: argparse.Namespace, piece: Piece, _now_ms: int) -> PieceCommand:
    coat = _coat(call, piece)
    if coat.laid_ms is None:
        wrong(
            say(
                "Coat {number} of {title} is not on yet; there is nothing to correct.",
                number=call.number,
                title=piece.title,
            )
        )
    given = (call.volume_mL, call.grams, call.wet_um)
    kept = (coat.volume_mL, coat.grams, coat.wet_um)
    amounts = [option for option, value in zip(_AMOUNTS, given, strict=True) if value is not None]
    if call.as_sheet and amounts:
        wrong(
            say("{first} and {second} exclude each other; leave one out", first="--as-sheet", second=amounts[0]) + "."
        )
    amount = (None, None, None) if call.as_sheet else given if given != (None, None, None) else kept
    covered_ms = coat.covered_from_ms if call.covered is None else moment_ms(call.covered, "--covered")
    return CorrectCoat(
        coat_key=coat.key,
        sheet=call.sheet or coat.sheet,
        laid_ms=coat.laid_ms if call.laid is None else moment_ms(call.laid),
        volume_mL=amount[0],
        grams=amount[1],
        wet_um=amount[2],
        thinned_pct=coat.thinned_pct if call.thinned_pct is None else call.thinned_pct,
        covered_ms=None if call.no_cover else covered_ms,
    )


def _look(call: argparse.Namespace, piece: Piece, now_ms: int) -> PieceCommand:
    coat, finding = _coat(call, piece), Finding(call.finding)
    if call.instead_of is None:
        return RecordLook(coat_key=coat.key, time_ms=_at(call, now_ms), finding=finding)
    look = _nth(coat, call.instead_of)
    return CorrectLook(look_key=look.key, time_ms=_at(call, look.time_ms), finding=finding)


def _outcome(call: argparse.Namespace, piece: Piece, now_ms: int) -> PieceCommand:
    coat = _coat(call, piece)
    if call.outcome == OPEN:
        return TakeBackOutcome(coat_key=coat.key)
    return RecordOutcome(coat_key=coat.key, seen_ms=_at(call, now_ms), outcome=Outcome(call.outcome))


_COMMANDS: Mapping[str, Callable[[argparse.Namespace, Piece, int], PieceCommand]] = {
    "lay": _lay,
    "plan": lambda call, piece, _: PlanCoat(piece_key=piece.key, sheet=call.sheet),
    "correct": _correct,
    "remove": lambda call, piece, _: TakeBackCoat(coat_key=_coat(call, piece).key, plan_again=call.plan_again),
    "cover": lambda call, piece, now_ms: CoverCoat(coat_key=_coat(call, piece).key, covered_ms=_at(call, now_ms)),
    "look": _look,
    "forget-look": lambda call, piece, _: TakeBackLook(look_key=_nth(_coat(call, piece), call.look).key),
    "outcome": _outcome,
}
_DONE = {
    "lay": mark("Recorded: a coat laid on {title}"),
    "plan": mark("Recorded: a coat to come on {title}"),
    "correct": mark("Recorded: a correction on {title}"),
    "remove": mark("Recorded: a coat taken back on {title}"),
    "cover": mark("Recorded: a cover set on {title}"),
    "look": mark("Recorded: a look on {title}"),
    "forget-look": mark("Recorded: a look taken back on {title}"),
    "outcome": mark("Recorded: how a coat came out on {title}"),
}


def _coat(call: argparse.Namespace, piece: Piece) -> Coat:
    if not piece.coats:
        wrong(
            say(
                "There is no coat {number} on {title}; allowed is none: it has no coat.",
                number=call.number,
                title=piece.title,
            )
        )
    if not 1 <= call.number <= len(piece.coats):
        wrong(
            say(
                "There is no coat {number} on {title}; allowed is 1 to {last}.",
                number=call.number,
                title=piece.title,
                last=len(piece.coats),
            )
        )
    number: int = call.number
    return piece.coats[number - 1]


def _nth(coat: Coat, number: int) -> Look:
    if not coat.looks:
        wrong(say("There is no look {number} at that coat; allowed is none: nobody has looked at it.", number=number))
    if not 1 <= number <= len(coat.looks):
        wrong(
            say("There is no look {number} at that coat; allowed is 1 to {last}.", number=number, last=len(coat.looks))
        )
    return coat.looks[number - 1]


def _at(call: argparse.Namespace, otherwise_ms: int) -> int:
    return otherwise_ms if call.at is None else moment_ms(call.at, "--at")
