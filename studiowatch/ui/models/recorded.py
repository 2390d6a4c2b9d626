"""What was recorded of a piece, line by line, as it can be corrected."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo
from enum import StrEnum

from studiowatch.service.commands import Command
from studiowatch.service.correction_commands import TakeBackLook, TakeBackOutcome
from studiowatch.service.snapshot import CoatView, PieceView
from studiowatch.studio.pieces import Coat
from studiowatch.ui.models.look_form import FOUND
from studiowatch.ui.models.times import clock_words

NONE_LAID = "Nothing was recorded on it yet."
NO_CORRECTION = "Nothing was corrected so far."


class LineKind(StrEnum):
    """What a line is about."""

    COAT = "coat"
    LOOK = "look"
    OUTCOME = "outcome"


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordedLine:
    """One thing that was recorded; `take_back` is the command for that, None where it must be asked first."""

    kind: LineKind
    key: str
    coat_key: str
    words: str
    take_back: Command | None = None


def recorded_lines(piece: PieceView, now_ms: int, zone: tzinfo | None = None) -> tuple[RecordedLine, ...]:
    """Return what was recorded on `piece`, the topmost coat first, each followed by its looks and its outcome."""
    lines: list[RecordedLine] = []
    for coat in reversed(piece.coats):
        if coat.recorded is not None and coat.laid_ms is not None:
            lines += _lines_of(coat, coat.recorded, now_ms, zone)
    return tuple(lines)


def _lines_of(coat: CoatView, kept: Coat, now_ms: int, zone: tzinfo | None) -> list[RecordedLine]:
    laid = "" if kept.laid_ms is None else f"laid {clock_words(kept.laid_ms, now_ms, zone)}"
    parts = [laid, amount_words(kept), *([f"thinned by {kept.thinned_pct:g} %"] if kept.thinned_pct else [])]
    if kept.covered_from_ms is not None:
        parts.append(f"covered {clock_words(kept.covered_from_ms, now_ms, zone)}")
    words = f"{coat.label}: {', '.join(parts)}"
    lines = [RecordedLine(kind=LineKind.COAT, key=coat.key, coat_key=coat.key, words=words)]
    lines += [
        RecordedLine(
            kind=LineKind.LOOK,
            key=look.key,
            coat_key=coat.key,
            words=f"{FOUND[look.finding]} {clock_words(look.time_ms, now_ms, zone)}",
            take_back=TakeBackLook(look_key=look.key),
        )
        for look in kept.looks
    ]
    if kept.outcome is not None:
        seen = "" if kept.seen_ms is None else f", seen {clock_words(kept.seen_ms, now_ms, zone)}"
        lines.append(
            RecordedLine(
                kind=LineKind.OUTCOME,
                key=coat.key,
                coat_key=coat.key,
                words=f"came out {kept.outcome.value}{seen}",
                take_back=TakeBackOutcome(coat_key=coat.key),
            )
        )
    return lines


def amount_words(coat: Coat) -> str:
    """Return how much of a coat was laid."""
    if coat.volume_mL is not None:
        return f"{coat.volume_mL:g} mL"
    if coat.grams is not None:
        return f"{coat.grams:g} g"
    return "as thick as its sheet says" if coat.wet_um is None else f"{coat.wet_um:g} µm wet"


def correction_lines(piece: PieceView, now_ms: int, zone: tzinfo | None = None) -> tuple[str, ...]:
    """Return the history of corrections, newest first."""
    return tuple(f"corrected {clock_words(one.time_ms, now_ms, zone)}: {one.words}" for one in piece.corrections)
