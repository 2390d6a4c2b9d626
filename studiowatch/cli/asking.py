"""Carries a command out in the records, or has the watch do so that holds them."""

from __future__ import annotations

from pathlib import Path

from studiowatch.cli.answers import FAULT, complain
from studiowatch.cli.take import opened
from studiowatch.service.commands import Refused
from studiowatch.service.intention_commands import IntentionCommand
from studiowatch.service.intention_desk import IntentionDesk, vapour_on
from studiowatch.service.letterbox import ask
from studiowatch.service.local_time import wall_clock
from studiowatch.service.orders import PieceCommand
from studiowatch.service.outfit import Outfit
from studiowatch.service.photos import PhotoFolder
from studiowatch.service.plan_commands import PlanCommand
from studiowatch.service.plan_desk import PlanDesk
from studiowatch.service.rack import Rack
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.folder import FolderWatched, StudioFolder
from studiowatch.studio.pieces import Piece


def carried_out(command: PieceCommand | PlanCommand | IntentionCommand, outfit: Outfit, folder: StudioFolder) -> str:
    """Return the key that `command` answers with: by the watch that is on, or in the records while there is none.

    Raises
    ------
    Refused
        With one sentence; nothing was changed.
    """
    try:
        return _carried_out(command, outfit, folder)
    except Refused as fault:
        unknown = _unknown_sheet(command, SheetShelf.open(folder.sheets))
        if unknown:
            raise Refused(unknown) from fault
        raise


def _carried_out(command: PieceCommand | PlanCommand | IntentionCommand, outfit: Outfit, folder: StudioFolder) -> str:
    try:
        return _in_records(command, outfit, folder)
    except FolderWatched:
        return ask(folder.letters, command)


def _unknown_sheet(command: PieceCommand | PlanCommand | IntentionCommand, shelf: SheetShelf) -> str:
    """Return a sentence on a sheet that `command` names and that is not there, with those there are, or ""."""
    paint = getattr(command, "paint", None)
    named = (
        getattr(command, "sheet", None),
        *(getattr(command, "sheets", None) or ()),
        None if paint is None else paint.sheet,
    )
    name = next((one for one in named if one is not None and one not in shelf.sheets), None)
    if name is None:
        return ""
    known = ", ".join(sorted(shelf.sheets))
    return say("There is no data sheet {name}; known are {known}.", name=repr(name), known=known)


def _in_records(command: PieceCommand | PlanCommand | IntentionCommand, outfit: Outfit, folder: StudioFolder) -> str:
    shelf = SheetShelf.open(folder.sheets)
    with opened(outfit, folder) as store:
        rack = Rack(shelf=shelf, records=store.records, log=store.log)
        rack.take_up()
        if isinstance(command, IntentionCommand):
            intentions = IntentionDesk(
                records=store.records, clock=wall_clock(), vapour=lambda now_ms: vapour_on(rack, now_ms)
            )
            intentions.reopen()
            return intentions.carry_out(command, outfit.clock.utc_ms())
        if isinstance(command, PlanCommand):
            return PlanDesk(rack=rack, records=store.records, clock=wall_clock()).carry_out(command)
        return rack.carry_out(command, outfit.clock.utc_ms())


def photo_taken(path: Path, outfit: Outfit, folder: StudioFolder) -> str:
    """Return the name of a picture that was copied into the folder of photos. Raises Refused."""
    folder.make()
    return PhotoFolder(folder=folder.photos, shrink=outfit.shrink_photo).take(path)


def pieces_in(folder: StudioFolder) -> tuple[Piece, ...]:
    """Return all pieces in the records, archived ones too; none where there are no records yet."""
    if not folder.database.exists():
        return ()
    with looking(folder.database) as database:
        return read_all(database, str(folder.database)).pieces


def refused(fault: Refused) -> int:
    """Say why nothing was done."""
    complain(str(fault))
    return FAULT
