"""What a command did, in words that follow "Undo: "."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.commands import (
    ArchivePiece,
    CoverCoat,
    HearWarning,
    LayCoat,
    MovePiece,
    RecordLook,
    RecordOutcome,
    RegisterPiece,
    RemindLater,
)
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectLook,
    RestorePiece,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
)
from studiowatch.service.orders import PieceCommand
from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    PlanCommand,
    ReplacePlanned,
    SetWorkingHours,
    UnplanCoat,
)
from studiowatch.speech.words import mark, say
from studiowatch.studio.meant import Meant
from studiowatch.studio.meant_words import words
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.warnings import StudioWarning

Labels = Callable[[Piece], Sequence[str]]

_OF_A_PIECE = {
    RegisterPiece: mark("registered {title}"),
    ArchivePiece: mark("took {title} off the rack"),
    RestorePiece: mark("put {title} back on the rack"),
    MovePiece: mark("moved {title}"),
    PlanCoats: mark("planned other coats on {title}"),
    UnplanCoat: mark("took a coat to come off {title}"),
    ReplacePlanned: mark("planned another coat on {title}"),
    MovePlanned: mark("moved a coat to come on {title}"),
}
_OF_A_COAT = {
    LayCoat: mark("laid {coat} on {title}"),
    PlanCoat: mark("planned {coat} on {title}"),
    CoverCoat: mark("set the cover over {coat} on {title}"),
    RecordLook: mark("tested {coat} on {title}"),
    RecordOutcome: mark("said how {coat} on {title} came out"),
    CorrectCoat: mark("corrected {coat} on {title}"),
    TakeBackCoat: mark("took back {coat} on {title}"),
    CorrectLook: mark("corrected a look at {coat} on {title}"),
    TakeBackLook: mark("took back a look at {coat} on {title}"),
    TakeBackOutcome: mark("took back how {coat} on {title} came out"),
}


def deed_words(command: PieceCommand, before: Piece | None, after: Piece, labels: Labels) -> str:
    """Return what `command` did: "laid gloss 1 on Kiln Light"; `labels` gives the short names of a piece's coats."""
    of_piece = _OF_A_PIECE.get(type(command))
    if of_piece is not None:
        return say(of_piece, title=after.title)
    of_coat = _OF_A_COAT.get(type(command))
    if of_coat is None:
        return say("changed {title}", title=after.title)
    return say(of_coat, title=after.title, coat=_coat_label(before, after, labels))


def answer_words(command: HearWarning | RemindLater, warning: StudioWarning) -> str:
    """Return how she answered a warning."""
    answer = mark("heard “{headline}”") if isinstance(command, HearWarning) else mark("put off “{headline}”")
    return say(answer, headline=warning.sentence.headline)


def plan_words(command: PlanCommand) -> str:
    """Return what she did to her hours or a recipe."""
    if isinstance(command, SetWorkingHours):
        return say("set your working hours")
    name = " ".join(command.name.split())
    return say("kept the recipe {name}", name=name) if command.sheets else say("deleted the recipe {name}", name=name)


def meant_words(before: Meant | None, after: Meant | None) -> str:
    """Return what she came to mean for the room, or not to mean any more."""
    if after is not None:
        return say("meant for the room: {intention}", intention=words(after))
    return "" if before is None else say("no longer meant for the room: {intention}", intention=words(before))


def sheet_words(before: DataSheet | None, after: DataSheet | None) -> str:
    """Return what she did to a data sheet of hers."""
    if after is None:
        return say("deleted the sheet {title}", title="" if before is None else before.title)
    made = mark("made the sheet {title}") if before is None else mark("edited the sheet {title}")
    return say(made, title=after.title)


def _coat_label(before: Piece | None, after: Piece, labels: Labels) -> str:
    """Return the name of the coat that a command changed: as it is now, or as it was if it is gone."""
    known: dict[str, Coat] = {} if before is None else {coat.key: coat for coat in before.coats}
    for coat, label in zip(after.coats, labels(after), strict=True):
        if known.get(coat.key) != coat and (coat.laid_ms is not None or len(after.coats) > len(known)):
            return label
    if before is not None:
        there = {coat.key for coat in after.coats}
        for coat, label in zip(before.coats, labels(before), strict=True):
            if coat.key not in there:
                return label
    return say("a coat")
