"""Commands as pure changes of one piece: what is asked, checked, and the piece as it then is."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from math import isfinite

from studiowatch.service.commands import (
    AmendPiece,
    ArchivePiece,
    CoverCoat,
    LayCoat,
    MovePiece,
    PlanCoat,
    RecordLook,
    RecordOutcome,
    Refused,
    RegisterPiece,
)
from studiowatch.studio.pieces import TITLE_MOST, Coat, Look, Piece

SIDE_cm = (1.0, 1000.0)  # cm, a piece's sides: from a sample chip to a wall; assumption
THINNED_pct = (0.0, 60.0)  # % of volume; beyond this the binder no longer closes: from memory
AMOUNT = {"mL": (0.05, 20_000.0), "g": (0.05, 20_000.0), "µm": (5.0, 5_000.0)}  # a brush mark to a flood; assumption
AHEAD_MS = 60_000  # ms, how far ahead of the clock a time may lie: a form filled in by hand


@dataclass(frozen=True, slots=True, kw_only=True)
class Changed:
    """The piece after a command, the key of what was made or changed, and other pieces that had to move."""

    piece: Piece
    key: str
    moved: tuple[Piece, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Bench:
    """What a command is checked against.

    Attributes
    ----------
    pieces : sequence of Piece
        All pieces, archived ones too.
    sheets : set of str
        Names of the data sheets there are.
    now_ms : int
        UTC ms.
    new_key : callable
        Makes a key that was never used.
    """

    pieces: Sequence[Piece]
    sheets: frozenset[str]
    now_ms: int
    new_key: Callable[[], str]

    def piece(self, key: str) -> Piece:
        """Return a piece on the rack by its key, or refuse."""
        for piece in self.pieces:
            if piece.key == key and not piece.archived:
                return piece
        raise Refused("That piece is not on the rack any more; choose one from the rack.")

    def coat(self, key: str) -> tuple[Piece, Coat]:
        """Return a coat on the rack and its piece by the coat's key, or refuse."""
        for piece in self.pieces:
            for coat in piece.coats:
                if coat.key == key and not piece.archived:
                    return piece, coat
        raise Refused("That coat is not on the rack any more; choose one from the rack.")


PieceCommand = (
    RegisterPiece | AmendPiece | ArchivePiece | MovePiece | LayCoat | PlanCoat | CoverCoat | RecordLook | RecordOutcome
)


def carry_out(command: PieceCommand, bench: Bench) -> Changed:
    """Return the piece as `command` leaves it.

    Raises
    ------
    Refused
        With one sentence naming what, the value, its unit, what is allowed and what to do; nothing is changed.
    """
    match command:
        case RegisterPiece():
            changed = _register(command, bench)
        case AmendPiece():
            changed = _amend(command, bench)
        case LayCoat():
            changed = _lay(command, bench)
        case PlanCoat():
            changed = _plan(command, bench)
        case ArchivePiece():
            changed = _archive(command, bench)
        case MovePiece():
            changed = _move(command, bench)
        case CoverCoat() | RecordLook() | RecordOutcome():
            changed = _note(command, bench)
    return changed


def _register(command: RegisterPiece, bench: Bench) -> Changed:
    title = _title(command.title, bench, None)
    width_cm, height_cm = _side("width", command.width_cm), _side("height", command.height_cm)
    coats = tuple(Coat(key=bench.new_key(), sheet=_sheet(name, bench)) for name in command.sheets)
    piece = Piece(
        key=bench.new_key(),
        title=title,
        width_cm=width_cm,
        height_cm=height_cm,
        due=command.due,
        support=command.support.strip() or "canvas",
        orientation=command.orientation,
        place=1 + max((piece.place for piece in bench.pieces if not piece.archived), default=-1),
        coats=coats,
    )
    return Changed(piece=piece, key=piece.key)


def _amend(command: AmendPiece, bench: Bench) -> Changed:
    piece = bench.piece(command.piece_key)
    if command.title is not None:
        piece = replace(piece, title=_title(command.title, bench, piece.key))
    if command.width_cm is not None:
        piece = replace(piece, width_cm=_side("width", command.width_cm))
    if command.height_cm is not None:
        piece = replace(piece, height_cm=_side("height", command.height_cm))
    if command.due is not None:
        piece = replace(piece, due=command.due)
    if command.support is not None:
        piece = replace(piece, support=command.support.strip() or piece.support)
    return Changed(piece=piece, key=piece.key)


def _archive(command: ArchivePiece, bench: Bench) -> Changed:
    piece = bench.piece(command.piece_key)
    return Changed(piece=replace(piece, archived=True), key=piece.key)


def _move(command: MovePiece, bench: Bench) -> Changed:
    piece = bench.piece(command.piece_key)
    others = [old for old in bench.pieces if not old.archived and old.key != piece.key]
    others.sort(key=lambda old: old.place)
    place = min(max(command.place, 0), len(others))
    others.insert(place, piece)
    moved = tuple(replace(old, place=i) for i, old in enumerate(others) if old.place != i and old.key != piece.key)
    return Changed(piece=replace(piece, place=place), key=piece.key, moved=moved)


def _plan(command: PlanCoat, bench: Bench) -> Changed:
    piece = bench.piece(command.piece_key)
    coat = Coat(key=bench.new_key(), sheet=_sheet(command.sheet, bench))
    return Changed(piece=replace(piece, coats=(*piece.coats, coat)), key=coat.key)


def _lay(command: LayCoat, bench: Bench) -> Changed:
    piece = bench.piece(command.piece_key)
    laid_ms = past("The time the coat was laid", command.laid_ms, bench.now_ms)
    below = [coat for coat in piece.coats if coat.laid_ms is not None]
    if below and laid_ms < (below[-1].laid_ms or 0):
        raise Refused("The coat below was laid later than this one; check the time, or lay the lower coat first.")
    _check_amount(command)
    coat = Coat(
        key=_planned_key(command, piece, bench),
        sheet=_sheet(command.sheet, bench),
        laid_ms=laid_ms,
        volume_mL=command.volume_mL,
        grams=command.grams,
        wet_um=command.wet_um,
        thinned_pct=within("water added", command.thinned_pct, "% of the volume", THINNED_pct),
    )
    planned = tuple(old for old in piece.coats if old.laid_ms is None and old.key != coat.key)
    return Changed(piece=replace(piece, coats=(*below, coat, *planned)), key=coat.key)


def _planned_key(command: LayCoat, piece: Piece, bench: Bench) -> str:
    if command.coat_key is None:
        return bench.new_key()
    planned = {coat.key: coat.laid_ms for coat in piece.coats}
    if command.coat_key not in planned:
        raise Refused(f"The planned coat is not on {piece.title} any more; choose the sheet and lay it anew.")
    if planned[command.coat_key] is not None:
        raise Refused(f"That coat of {piece.title} is on already; choose the next one.")
    return command.coat_key


def _check_amount(command: LayCoat) -> None:
    given = {"mL": command.volume_mL, "g": command.grams, "µm": command.wet_um}
    measured = {unit: value for unit, value in given.items() if value is not None}
    if len(measured) > 1:
        raise Refused("Give the amount once: in mL, or in grams, or as a thickness in µm.")
    for unit, value in measured.items():
        within("amount laid", value, unit, AMOUNT[unit])


def _note(command: CoverCoat | RecordLook | RecordOutcome, bench: Bench) -> Changed:
    piece, coat = bench.coat(command.coat_key)
    if coat.laid_ms is None:
        raise Refused(f"That coat of {piece.title} is not on yet; lay it first.")
    match command:
        case CoverCoat():
            covered_ms = _since(coat, past("The time of covering", command.covered_ms, bench.now_ms))
            changed, key = replace(coat, covered_from_ms=covered_ms), coat.key
        case RecordLook():
            time_ms = _since(coat, past("The time of the look", command.time_ms, bench.now_ms))
            look = Look(key=bench.new_key(), time_ms=time_ms, finding=command.finding)
            changed, key = replace(coat, looks=(*coat.looks, look)), look.key
        case RecordOutcome():
            seen_ms = _since(coat, past("The time it was seen", command.seen_ms, bench.now_ms))
            changed, key = replace(coat, outcome=command.outcome, seen_ms=seen_ms), coat.key
    coats = tuple(changed if old.key == coat.key else old for old in piece.coats)
    return Changed(piece=replace(piece, coats=coats), key=key)


def _title(title: str, bench: Bench, own_key: str | None) -> str:
    title = " ".join(title.split())
    if not title.isprintable():
        raise Refused(f"The title {title!a} holds signs that cannot be shown; type it with plain letters.")
    if not 0 < len(title) <= TITLE_MOST:
        raise Refused(f"The title has {len(title)} characters; give it 1 to {TITLE_MOST}.")
    if any(piece.title == title and piece.key != own_key and not piece.archived for piece in bench.pieces):
        raise Refused(f"There is a piece called {title!r} on the rack already; give this one another title.")
    return title


def _side(which: str, value_cm: float) -> float:
    return within(which, value_cm, "cm", SIDE_cm)


def within(what: str, value: float, unit: str, allowed: tuple[float, float]) -> float:
    """Return `value` if it lies within `allowed`, or refuse."""
    low, high = allowed
    if not (isfinite(value) and low <= value <= high):
        raise Refused(f"The {what} is {value:g} {unit}; allowed is {low:g} to {high:g} {unit}. Correct it.")
    return value


def _sheet(name: str, bench: Bench) -> str:
    if name not in bench.sheets:
        raise Refused(f"There is no data sheet {name!r}; choose one from the list.")
    return name


def past(what: str, time_ms: int, now_ms: int) -> int:
    """Return `time_ms` if it has been, but for a slip of the hand, or refuse."""
    if time_ms > now_ms + AHEAD_MS:
        ahead_min = (time_ms - now_ms) / 60_000
        raise Refused(f"{what} lies {ahead_min:.0f} min ahead of the clock; give a time that has been.")
    return time_ms


def _since(coat: Coat, time_ms: int) -> int:
    if coat.laid_ms is not None and time_ms < coat.laid_ms:
        raise Refused("That time is before the coat was laid; give a later one.")
    return time_ms
