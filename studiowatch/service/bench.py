"""What a command about a piece is checked against, and the checks that orders share."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import isfinite

from studiowatch.service.commands import Refused
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Coat, Look, Piece

THINNED_pct = (0.0, 60.0)  # % of volume; beyond this the binder no longer closes: from memory
AMOUNT = {"mL": (0.05, 20_000.0), "g": (0.05, 20_000.0), "µm": (5.0, 5_000.0)}  # a brush mark to a flood; assumption
AMOUNT_LAID = mark("The amount laid is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.")
WATER_ADDED = mark(
    "The water added is {value} % of the volume; allowed is {low} to {high} % of the volume. Correct it."
)
LAID_AHEAD = mark("The time the coat was laid lies {minutes} min ahead of the clock; give a time that has been.")
COVERED_AHEAD = mark("The time of covering lies {minutes} min ahead of the clock; give a time that has been.")
LOOKED_AHEAD = mark("The time of the look lies {minutes} min ahead of the clock; give a time that has been.")
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
        raise Refused(say("That piece is not on the rack any more; choose one from the rack."))

    def coat(self, key: str) -> tuple[Piece, Coat]:
        """Return a coat on the rack and its piece by the coat's key, or refuse."""
        for piece in self.pieces:
            for coat in piece.coats:
                if coat.key == key and not piece.archived:
                    return piece, coat
        raise Refused(say("That coat is not on the rack any more; choose one from the rack."))

    def laid(self, key: str) -> tuple[Piece, Coat, int]:
        """Return a coat that is on, its piece, and when it was laid, or refuse."""
        piece, coat = self.coat(key)
        if coat.laid_ms is None:
            raise Refused(say("That coat of {title} is not on yet; lay it first.", title=piece.title))
        return piece, coat, coat.laid_ms

    def look(self, key: str) -> tuple[Piece, Coat, Look]:
        """Return a look at a coat on the rack by the look's key, or refuse."""
        for piece in self.pieces:
            for coat in piece.coats:
                for look in coat.looks:
                    if look.key == key and not piece.archived:
                        return piece, coat, look
        raise Refused(say("That look is not in the records any more; choose one from the list."))

    def sheet(self, name: str) -> str:
        """Return the name of a sheet that is there, or refuse."""
        if name not in self.sheets:
            raise Refused(say("There is no data sheet {name}; choose one from the list.", name=repr(name)))
        return name


def within(sentence: str, value: float, unit: str, allowed: tuple[float, float]) -> float:
    """Return `value` if it lies within `allowed`, or refuse by `sentence`, which names value, unit, low and high."""
    low, high = allowed
    if not (isfinite(value) and low <= value <= high):
        raise Refused(
            say(
                sentence,
                value=_figure(value, unit),
                unit=_sign(unit),
                low=_figure(low, unit),
                high=_figure(high, unit),
            )
        )
    return value


def _figure(value: float, unit: str) -> str:
    """Return a value of one of our units as she reads it, without the sign of hers."""
    units = chosen()
    in_hers = {
        "mL": lambda: value / units.volume.mL,
        "µm": lambda: value / units.thickness.um,
        "cm": lambda: value / units.length.cm,
        "°C": lambda: units.degrees.from_celsius(value),
    }
    return units.plain(in_hers[unit]() if unit in in_hers else value)


def _sign(unit: str) -> str:
    """Return the sign of her unit for one of ours."""
    units = chosen()
    signs = {
        "mL": units.volume.value,
        "µm": units.thickness.value,
        "cm": units.length.value,
        "°C": units.degrees.value,
    }
    return signs.get(unit, unit)


def past(sentence: str, time_ms: int, now_ms: int) -> int:
    """Return `time_ms` if it has been, but for a slip of the hand, or refuse by `sentence`, which names minutes."""
    if time_ms > now_ms + AHEAD_MS:
        ahead_min = (time_ms - now_ms) / 60_000
        raise Refused(
            say(
                sentence,
                minutes=chosen().number(ahead_min),
            )
        )
    return time_ms


def since(laid_ms: int | None, time_ms: int) -> int:
    """Return `time_ms` if the coat was on by then, or refuse."""
    if laid_ms is not None and time_ms < laid_ms:
        raise Refused(say("That time is before the coat was laid; give a later one."))
    return time_ms


def check_amount(*, volume_mL: float | None, grams: float | None, wet_um: float | None) -> None:
    """Refuse an amount that is given twice or cannot be."""
    given = {"mL": volume_mL, "g": grams, "µm": wet_um}
    measured = {unit: value for unit, value in given.items() if value is not None}
    if len(measured) > 1:
        raise Refused(
            say(
                "Give the amount once: in {volume}, or in grams, or as a thickness in {thickness}.",
                volume=chosen().volume.value,
                thickness=chosen().thickness.value,
            )
        )
    for unit, value in measured.items():
        within(AMOUNT_LAID, value, unit, AMOUNT[unit])


def check_told(coat: Coat, laid_ms: int) -> None:
    """Refuse a time of laying that is later than what she saw of the coat."""
    told_ms = [look.time_ms for look in coat.looks] + ([] if coat.seen_ms is None else [coat.seen_ms])
    if told_ms and min(told_ms) < laid_ms:
        raise Refused(say("A look at this coat would be before it was laid; correct or take back that look first."))


def with_coat(piece: Piece, coat: Coat) -> tuple[Coat, ...]:
    """Return the coats of `piece` with `coat` in the place of the one with its key."""
    return tuple(coat if old.key == coat.key else old for old in piece.coats)
