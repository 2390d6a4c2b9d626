"""Orders about a piece itself: registered, amended, moved, off the rack and back on it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from studiowatch.service.bench import AMOUNT, Bench, Changed, check_told, past, within
from studiowatch.service.commands import (
    AmendPiece,
    ArchivePiece,
    MovePiece,
    Paint,
    Refused,
    RegisterPiece,
)
from studiowatch.service.correction_commands import RestorePiece
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import (
    EARLIEST_YEAR,
    JOINERS,
    LATEST_YEAR,
    PANELS_MOST,
    TITLE_MOST,
    Coat,
    Piece,
    Shape,
    SIDE_cm,
    can_be_shown,
)

FINISHED_AHEAD = mark(
    "The time the paint was finished lies {minutes} min ahead of the clock; give a time that has been."
)
PAINT_THICKNESS = mark("The thickness of the paint is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.")
WIDTH = mark("The width is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.")
HEIGHT = mark("The height is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.")
PANELS = mark("The number of panels is {value} panels; allowed is {low} to {high} panels. Correct it.")
_ONE_PANEL = {
    Shape.RECTANGLE: mark("A piece that is rectangle has 1 panel, not {panels}; choose a set of panels."),
    Shape.ROUND: mark("A piece that is round has 1 panel, not {panels}; choose a set of panels."),
}
NOTES_MOST = 4000  # characters: a page; assumption
SOFT_HYPHEN = "\u00ad"  # comes along with text that is pasted, and says nothing
SUPPORT_MOST = 120  # characters
PHOTO_NAME = re.compile(r"photo-[0-9a-f]{16}\.jpg")  # what the folder of photos names its files; nothing else is taken


def registered(command: RegisterPiece, bench: Bench) -> Changed:
    """Return a new piece, behind the others."""
    piece = Piece(
        key=bench.new_key(),
        title=_title(command.title, bench, None),
        width_cm=_side(WIDTH, command.width_cm),
        height_cm=_side(HEIGHT, command.height_cm),
        due=_due(command.due),
        support=_support(command.support) or "canvas",
        orientation=command.orientation,
        place=_behind(bench),
        shape=command.shape,
        panels=_panels(command.shape, command.panels),
        photo=_photo(command.photo),
        notes=_notes(command.notes),
        coats=_planned(command.sheets, (), bench),
    )
    return Changed(piece=_painted(piece, command.paint, bench), key=piece.key)


def amended(command: AmendPiece, bench: Bench) -> Changed:
    """Return a piece with the fields that are given."""
    piece = bench.piece(command.piece_key)
    title = None if command.title is None else _title(command.title, bench, piece.key)
    shape = command.shape or piece.shape
    kept = piece.panels if shape is Shape.PANELS else 1
    panels = kept if command.panels is None else command.panels
    photo = command.photo
    piece = replace(
        piece,
        title=title or piece.title,
        width_cm=piece.width_cm if command.width_cm is None else _side(WIDTH, command.width_cm),
        height_cm=piece.height_cm if command.height_cm is None else _side(HEIGHT, command.height_cm),
        due=None if command.no_due else _due(command.due) or piece.due,
        support=_support(command.support or "") or piece.support,
        orientation=command.orientation or piece.orientation,
        shape=shape,
        panels=_panels(shape, panels),
        photo=piece.photo if photo is None or photo == piece.photo else _photo(photo),
        notes=piece.notes if command.notes is None else _notes(command.notes),
    )
    if command.sheets is not None:
        laid = tuple(coat for coat in piece.coats if coat.laid_ms is not None)
        before = tuple(coat for coat in piece.coats if coat.laid_ms is None)
        piece = replace(piece, coats=(*laid, *_planned(command.sheets, before, bench)))
    return Changed(piece=_painted(piece, command.paint, bench), key=piece.key)


def archived(command: ArchivePiece, bench: Bench) -> Changed:
    """Return a piece that is off the rack."""
    piece = bench.piece(command.piece_key)
    return Changed(piece=replace(piece, archived=True), key=piece.key)


def restored(command: RestorePiece, bench: Bench) -> Changed:
    """Return an archived piece on the rack again, behind the others."""
    piece = next((piece for piece in bench.pieces if piece.key == command.piece_key), None)
    if piece is None:
        raise Refused(say("That piece is not in the records; choose one from the archive."))
    if not piece.archived:
        raise Refused(say("{title} is on the rack already.", title=piece.title))
    if any(other.title == piece.title and not other.archived for other in bench.pieces):
        raise Refused(
            say(
                "There is another piece called {title} on the rack; give that one another title first.",
                title=repr(piece.title),
            )
        )
    return Changed(piece=replace(piece, archived=False, place=_behind(bench)), key=piece.key)


def moved(command: MovePiece, bench: Bench) -> Changed:
    """Return a piece at another place, and those that make room."""
    piece = bench.piece(command.piece_key)
    others = [old for old in bench.pieces if not old.archived and old.key != piece.key]
    others.sort(key=lambda old: old.place)
    place = min(max(command.place, 0), len(others))
    others.insert(place, piece)
    making_room = tuple(
        replace(old, place=i) for i, old in enumerate(others) if old.place != i and old.key != piece.key
    )
    return Changed(piece=replace(piece, place=place), key=piece.key, moved=making_room)


def _behind(bench: Bench) -> int:
    return 1 + max((piece.place for piece in bench.pieces if not piece.archived), default=-1)


def _planned(sheets: Sequence[str], before: Sequence[Coat], bench: Bench) -> tuple[Coat, ...]:
    """Return coats to come, each the one of its sheet that was planned before, so far as there are."""
    left = list(before)
    coats = []
    for name in sheets:
        kept = next((coat for coat in left if coat.sheet == name), None)
        if kept is not None:
            left.remove(kept)
        coats.append(kept or Coat(key=bench.new_key(), sheet=bench.sheet(name)))
    return tuple(coats)


def _painted(piece: Piece, paint: Paint | None, bench: Bench) -> Piece:
    """Return `piece` with a layer of paint as its lowest coat."""
    if paint is None:
        return piece
    if bench.sheet(paint.sheet) not in bench.paints:
        raise Refused(say("The data sheet {sheet} is not of a paint; choose one of a paint.", sheet=repr(paint.sheet)))
    finished_ms = past(FINISHED_AHEAD, paint.finished_ms, bench.now_ms)
    if paint.wet_um is not None:
        within(PAINT_THICKNESS, paint.wet_um, "µm", AMOUNT["µm"])
    lowest = piece.coats[0] if piece.coats and piece.coats[0].sheet in bench.paints else None
    above = piece.coats if lowest is None else piece.coats[1:]
    first_ms = next((coat.laid_ms for coat in above if coat.laid_ms is not None), None)
    if first_ms is not None and finished_ms > first_ms:
        raise Refused(say("The paint was finished after the first coat on it was laid; correct one of the two times."))
    before = lowest or Coat(key=bench.new_key(), sheet=paint.sheet)
    check_told(before, finished_ms)
    covered_ms = before.covered_from_ms
    coat = replace(
        before,
        sheet=paint.sheet,
        laid_ms=finished_ms,
        covered_from_ms=None if covered_ms is None else max(covered_ms, finished_ms),
        volume_mL=None,
        grams=None,
        wet_um=paint.wet_um,
    )
    return replace(piece, coats=(coat, *above))


def _title(title: str, bench: Bench, own_key: str | None) -> str:
    title = " ".join(title.split()).strip(JOINERS)
    if not can_be_shown(title):
        raise Refused(
            say("The title {title} holds signs that cannot be shown; type it with plain letters.", title=ascii(title))
        )
    if not 0 < len(title) <= TITLE_MOST:
        raise Refused(say("The title has {count} characters; give it 1 to {most}.", count=len(title), most=TITLE_MOST))
    if any(piece.title == title and piece.key != own_key and not piece.archived for piece in bench.pieces):
        raise Refused(
            say("There is a piece called {title} on the rack already; give this one another title.", title=repr(title))
        )
    return title


def _due(day: date | None) -> date | None:
    if day is not None and not EARLIEST_YEAR <= day.year <= LATEST_YEAR:
        raise Refused(
            say(
                "The day it is due is {day}; allowed is a day of the years {first} to {last}. Correct it.",
                day=day,
                first=EARLIEST_YEAR,
                last=LATEST_YEAR,
            )
        )
    return day


def _side(sentence: str, value_cm: float) -> float:
    return within(sentence, value_cm, "cm", SIDE_cm)


def _panels(shape: Shape, panels: int) -> int:
    if shape is Shape.PANELS:
        return int(within(PANELS, panels, "", (1, PANELS_MOST)))
    if panels != 1:
        raise Refused(
            say(
                _ONE_PANEL[shape],
                panels=panels,
            )
        )
    return 1


def _support(words: str) -> str:
    words = " ".join(words.split())
    if not can_be_shown(words) or len(words) > SUPPORT_MOST:
        raise Refused(
            say(
                "The support has {count} characters; give it up to {most} that can be shown.",
                count=len(words),
                most=SUPPORT_MOST,
            )
        )
    return words


def _notes(words: str) -> str:
    words = words.strip().replace(SOFT_HYPHEN, "")
    if len(words) > NOTES_MOST:
        raise Refused(
            say(
                "The notes have {count} characters; shorten them to {most}.",
                count=len(words),
                most=NOTES_MOST,
            )
        )
    if not all(can_be_shown(sign) or sign in "\n\t" for sign in words):
        raise Refused(say("The notes hold signs that cannot be shown; type them with plain letters."))
    return words


def _photo(name: str) -> str:
    if name and not PHOTO_NAME.fullmatch(name):
        raise Refused(say("{name} is not a photo of this studio; choose the picture again.", name=repr(name)))
    return name
