"""What was recorded of a piece, line by line, as it can be corrected."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo
from enum import StrEnum

from studiowatch.service.commands import Command
from studiowatch.service.correction_commands import TakeBackLook, TakeBackOutcome
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Coat, Outcome
from studiowatch.ui.models.amounts import Unit, plain_film, plain_words, volume_unit
from studiowatch.ui.models.look_form import FOUND
from studiowatch.ui.models.seen_words import OUTCOME_WORDS
from studiowatch.ui.models.times import clock_words

NONE_LAID = mark("Nothing was recorded on it yet.")
NO_CORRECTION = mark("Nothing was corrected so far.")


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
    laid = "" if kept.laid_ms is None else say("laid {time}", time=clock_words(kept.laid_ms, now_ms, zone))
    parts = [laid, amount_words(kept)]
    if kept.thinned_pct:
        parts.append(say("thinned by {share} %", share=chosen().plain(kept.thinned_pct)))
    if kept.covered_from_ms is not None:
        parts.append(say("covered {time}", time=clock_words(kept.covered_from_ms, now_ms, zone)))
    words = f"{coat.label}: {', '.join(parts)}"
    lines = [RecordedLine(kind=LineKind.COAT, key=coat.key, coat_key=coat.key, words=words)]
    lines += [
        RecordedLine(
            kind=LineKind.LOOK,
            key=look.key,
            coat_key=coat.key,
            words=say("{found} {time}", found=say(FOUND[look.finding]), time=clock_words(look.time_ms, now_ms, zone)),
            take_back=TakeBackLook(look_key=look.key),
        )
        for look in kept.looks
    ]
    if kept.outcome is not None:
        lines.append(
            RecordedLine(
                kind=LineKind.OUTCOME,
                key=coat.key,
                coat_key=coat.key,
                words=_outcome_words(kept.outcome, kept.seen_ms, now_ms, zone),
                take_back=TakeBackOutcome(coat_key=coat.key),
            )
        )
    return lines


def _outcome_words(outcome: Outcome, seen_ms: int | None, now_ms: int, zone: tzinfo | None) -> str:
    came_out = say(OUTCOME_WORDS[outcome])
    if seen_ms is None:
        return say("came out {outcome}", outcome=came_out)
    return say("came out {outcome}, seen {time}", outcome=came_out, time=clock_words(seen_ms, now_ms, zone))


def amount_words(coat: Coat) -> str:
    """Return how much of a coat was laid."""
    if coat.volume_mL is not None:
        return plain_words(coat.volume_mL, volume_unit())
    if coat.grams is not None:
        return plain_words(coat.grams, Unit.GRAMS)
    if coat.wet_um is None:
        return say("as thick as its sheet says")
    return say("{thickness} wet", thickness=plain_film(coat.wet_um))


def correction_lines(piece: PieceView, now_ms: int, zone: tzinfo | None = None) -> tuple[str, ...]:
    """Return the history of corrections, newest first."""
    return tuple(
        say("corrected {time}: {words}", time=clock_words(one.time_ms, now_ms, zone), words=one.words)
        for one in piece.corrections
    )
