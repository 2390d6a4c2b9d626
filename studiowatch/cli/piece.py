"""`piece`: the pieces on the rack and in the archive, as the form of the window has them."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import date

from studiowatch.cli.answers import DONE, print_document, wrong
from studiowatch.cli.asking import carried_out, photo_taken, pieces_in, refused
from studiowatch.cli.inputs import moment_ms
from studiowatch.cli.piece_words import found, piece_document, piece_line, piece_lines
from studiowatch.coats.stages import Orientation
from studiowatch.service.commands import AmendPiece, ArchivePiece, MovePiece, Paint, Refused, RegisterPiece
from studiowatch.service.correction_commands import RestorePiece
from studiowatch.service.orders import PieceCommand
from studiowatch.service.outfit import Outfit
from studiowatch.speech.words import say
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.records import RecordsStore
from studiowatch.studio.pieces import Piece, Shape
from studiowatch.studio.supports import support_named


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    shown: Mapping[str, Callable[[argparse.Namespace, StudioFolder], int]] = {"list": _list, "show": _show}
    if call.deed in shown:
        return shown[call.deed](call, folder)
    try:
        command, words = _COMMANDS[call.deed](call, outfit, folder)
        carried_out(command, outfit, folder)
    except Refused as fault:
        return refused(fault)
    print(words)
    return DONE


def piece_called(title: str, pieces: Sequence[Piece], *, archived: bool = False) -> Piece:
    """Return a piece by its title or key, the last of that title in the archive; or refuse the call."""
    named = [piece for piece in _named(title, pieces) if piece.archived is archived]
    if not named:
        wrong(_not_there(title, pieces, archived=archived))
    return named[-1]


def _not_there(title: str, pieces: Sequence[Piece], *, archived: bool) -> str:
    given = repr(title)
    if _named(title, pieces):
        if archived:
            return say("The piece {given} is on the rack already.", given=given)
        return say("The piece {given} is in the archive; `piece restore` brings it back.", given=given)
    titles = _titles(piece for piece in pieces if piece.archived is archived)
    if archived:
        return say("There is no piece {given} in the archive; there are {titles}.", given=given, titles=titles)
    return say("There is no piece {given} on the rack; there are {titles}.", given=given, titles=titles)


def _anywhere(title: str, pieces: Sequence[Piece]) -> Piece:
    """Return a piece by its title or key, on the rack before the archive; or refuse the call."""
    named = _named(title, pieces)
    if not named:
        wrong(
            say(
                "There is no piece {given} on the rack or in the archive; there are {titles}.",
                given=repr(title),
                titles=_titles(pieces),
            )
        )
    return next((piece for piece in named if not piece.archived), named[-1])


def _named(title: str, pieces: Sequence[Piece]) -> Sequence[Piece]:
    return [piece for piece in pieces if title in (piece.title, piece.key)]


def _titles(pieces: Iterable[Piece]) -> str:
    return ", ".join(repr(piece.title) for piece in pieces) or say("none")


def _list(call: argparse.Namespace, folder: StudioFolder) -> int:
    pieces = [piece for piece in pieces_in(folder) if piece.archived is call.archived and found(piece, call.find)]
    if call.json:
        print_document([piece_document(piece) for piece in pieces])
        return DONE
    for piece in pieces:
        print(piece_line(piece))
    if not pieces:
        print(_nothing_listed(call))
    return DONE


def _nothing_listed(call: argparse.Namespace) -> str:
    if not call.find:
        return say("No piece in the archive.") if call.archived else say("No piece on the rack.")
    if call.archived:
        return say("No piece in the archive has the words {words}.", words=repr(call.find))
    return say("No piece on the rack has the words {words}.", words=repr(call.find))


def _show(call: argparse.Namespace, folder: StudioFolder) -> int:
    piece = _anywhere(call.piece, pieces_in(folder))
    with looking(folder.database) as database:
        earlier = RecordsStore(database, lambda: 0).corrections(piece.key)
    if call.json:
        print_document(piece_document(piece, earlier))
        return DONE
    for line in piece_lines(piece, earlier):
        print(line)
    return DONE


def _add(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> tuple[PieceCommand, str]:
    command = RegisterPiece(
        title=call.title,
        width_cm=call.width_cm,
        height_cm=call.height_cm,
        due=_due(call),
        support=support_named(call.support or "canvas"),
        orientation=Orientation(call.orientation) if call.orientation else Orientation.FACE_UP,
        shape=_shape(call) or Shape.RECTANGLE,
        panels=1 if call.panels is None else call.panels,
        photo=_photo(call, outfit, folder) or "",
        notes=call.notes or "",
        paint=_paint(call),
        sheets=tuple(call.coat or ()),
    )
    return command, say("Registered: {title}", title=call.title)


def _edit(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> tuple[PieceCommand, str]:
    piece = piece_called(call.piece, pieces_in(folder))
    command = AmendPiece(
        piece_key=piece.key,
        title=call.title,
        width_cm=call.width_cm,
        height_cm=call.height_cm,
        due=_due(call),
        no_due=call.no_due,
        support=None if call.support is None else support_named(call.support),
        orientation=Orientation(call.orientation) if call.orientation else None,
        shape=_shape(call),
        panels=call.panels,
        photo="" if call.no_photo else _photo(call, outfit, folder),
        notes=call.notes,
        paint=_paint(call),
        sheets=None if call.coat is None else tuple(call.coat),
    )
    return command, say("Changed: {title}", title=call.title or piece.title)


def _archive(call: argparse.Namespace, _outfit: Outfit, folder: StudioFolder) -> tuple[PieceCommand, str]:
    piece = piece_called(call.piece, pieces_in(folder))
    return ArchivePiece(piece_key=piece.key), say("Taken off the rack: {title}", title=piece.title)


def _restore(call: argparse.Namespace, _outfit: Outfit, folder: StudioFolder) -> tuple[PieceCommand, str]:
    piece = piece_called(call.piece, pieces_in(folder), archived=True)
    return RestorePiece(piece_key=piece.key), say("Back on the rack: {title}", title=piece.title)


def _move(call: argparse.Namespace, _outfit: Outfit, folder: StudioFolder) -> tuple[PieceCommand, str]:
    pieces = pieces_in(folder)
    piece = piece_called(call.piece, pieces)
    count = sum(not one.archived for one in pieces)
    if not 1 <= call.place <= count:
        wrong(say("The place is {place}; allowed is 1 to {last}. Choose one of these.", place=call.place, last=count))
    return MovePiece(piece_key=piece.key, place=call.place - 1), say(
        "At place {place}: {title}", place=call.place, title=piece.title
    )


_COMMANDS: Mapping[str, Callable[[argparse.Namespace, Outfit, StudioFolder], tuple[PieceCommand, str]]] = {
    "add": _add,
    "edit": _edit,
    "archive": _archive,
    "restore": _restore,
    "move": _move,
}


def _shape(call: argparse.Namespace) -> Shape | None:
    return Shape(call.shape) if call.shape else None


def _photo(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> str | None:
    return None if call.photo is None else photo_taken(call.photo, outfit, folder)


def _due(call: argparse.Namespace) -> date | None:
    if call.due is None:
        return None
    try:
        return date.fromisoformat(call.due)
    except ValueError:
        wrong(say("--due is {given}; give a day like 2026-03-20.", given=repr(call.due)))


def _paint(call: argparse.Namespace) -> Paint | None:
    if call.paint is None and call.painted is None and call.paint_um is None:
        return None
    if call.paint is None or call.painted is None:
        wrong(say("--paint and --painted belong together: the sheet of the paint, and when the last of it was laid."))
    return Paint(sheet=call.paint, finished_ms=moment_ms(call.painted, "--painted"), wet_um=call.paint_um)
