"""What a command about a piece is checked against, and the checks that orders share."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import isfinite

from studiowatch.service.commands import Refused
from studiowatch.studio.pieces import Coat, Look, Piece

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
    paints : set of str
        Those of the sheets that are of paint.
    """

    pieces: Sequence[Piece]
    sheets: frozenset[str]
    now_ms: int
    new_key: Callable[[], str]
    paints: frozenset[str] = frozenset()

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

    def laid(self, key: str) -> tuple[Piece, Coat, int]:
        """Return a coat that is on, its piece, and when it was laid, or refuse."""
        piece, coat = self.coat(key)
        if coat.laid_ms is None:
            raise Refused(f"That coat of {piece.title} is not on yet; lay it first.")
        return piece, coat, coat.laid_ms

    def look(self, key: str) -> tuple[Piece, Coat, Look]:
        """Return a look at a coat on the rack by the look's key, or refuse."""
        for piece in self.pieces:
            for coat in piece.coats:
                for look in coat.looks:
                    if look.key == key and not piece.archived:
                        return piece, coat, look
        raise Refused("That look is not in the records any more; choose one from the list.")

    def sheet(self, name: str) -> str:
        """Return the name of a sheet that is there, or refuse."""
        if name not in self.sheets:
            raise Refused(f"There is no data sheet {name!r}; choose one from the list.")
        return name


def within(what: str, value: float, unit: str, allowed: tuple[float, float]) -> float:
    """Return `value` if it lies within `allowed`, or refuse."""
    low, high = allowed
    if not (isfinite(value) and low <= value <= high):
        raise Refused(f"The {what} is {value:g} {unit}; allowed is {low:g} to {high:g} {unit}. Correct it.")
    return value


def past(what: str, time_ms: int, now_ms: int) -> int:
    """Return `time_ms` if it has been, but for a slip of the hand, or refuse."""
    if time_ms > now_ms + AHEAD_MS:
        ahead_min = (time_ms - now_ms) / 60_000
        raise Refused(f"{what} lies {ahead_min:.0f} min ahead of the clock; give a time that has been.")
    return time_ms


def since(laid_ms: int | None, time_ms: int) -> int:
    """Return `time_ms` if the coat was on by then, or refuse."""
    if laid_ms is not None and time_ms < laid_ms:
        raise Refused("That time is before the coat was laid; give a later one.")
    return time_ms


def check_amount(*, volume_mL: float | None, grams: float | None, wet_um: float | None) -> None:
    """Refuse an amount that is given twice or cannot be."""
    given = {"mL": volume_mL, "g": grams, "µm": wet_um}
    measured = {unit: value for unit, value in given.items() if value is not None}
    if len(measured) > 1:
        raise Refused("Give the amount once: in mL, or in grams, or as a thickness in µm.")
    for unit, value in measured.items():
        within("amount laid", value, unit, AMOUNT[unit])


def with_coat(piece: Piece, coat: Coat) -> tuple[Coat, ...]:
    """Return the coats of `piece` with `coat` in the place of the one with its key."""
    return tuple(coat if old.key == coat.key else old for old in piece.coats)
