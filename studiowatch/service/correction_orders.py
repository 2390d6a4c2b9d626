"""Orders that correct what was recorded of a coat, or take it back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from studiowatch.service.bench import (
    COVERED_AHEAD,
    LAID_AHEAD,
    LOOKED_AHEAD,
    WATER_ADDED,
    Bench,
    Changed,
    THINNED_pct,
    check_amount,
    check_told,
    past,
    since,
    with_coat,
    within,
)
from studiowatch.service.commands import Refused
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectLook,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
)
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat


def coat_corrected(command: CorrectCoat, bench: Bench) -> Changed:
    """Return a piece with a coat as it should have been recorded, in the place that its time gives it."""
    piece, coat, _ = bench.laid(command.coat_key)
    laid_ms = past(LAID_AHEAD, command.laid_ms, bench.now_ms)
    check_amount(volume_mL=command.volume_mL, grams=command.grams, wet_um=command.wet_um)
    covered_ms = command.covered_ms
    if covered_ms is not None:
        covered_ms = since(laid_ms, past(COVERED_AHEAD, covered_ms, bench.now_ms))
    check_told(coat, laid_ms)
    corrected = replace(
        coat,
        sheet=coat.sheet if command.sheet == coat.sheet else bench.sheet(command.sheet),
        laid_ms=laid_ms,
        volume_mL=command.volume_mL,
        grams=command.grams,
        wet_um=command.wet_um,
        thinned_pct=within(WATER_ADDED, command.thinned_pct, "%", THINNED_pct),
        covered_from_ms=covered_ms,
    )
    coats = with_coat(piece, corrected)
    if laid_ms != coat.laid_ms:
        coats = in_order(coats)
    return Changed(piece=replace(piece, coats=coats), key=coat.key)


def in_order(coats: Sequence[Coat]) -> tuple[Coat, ...]:
    """Return the coats that are on by the times of their laying, then those to come; equal times keep their order."""
    laid = sorted((coat.laid_ms, at, coat) for at, coat in enumerate(coats) if coat.laid_ms is not None)
    return (*(coat for _, _, coat in laid), *(coat for coat in coats if coat.laid_ms is None))


def coat_taken_back(command: TakeBackCoat, bench: Bench) -> Changed:
    """Return a piece without a coat; planned again, the coat is a new one: what was ticked and learnt goes with it."""
    piece, coat = bench.coat(command.coat_key)
    rest = tuple(old for old in piece.coats if old.key != coat.key)
    if coat.laid_ms is None or not command.plan_again:
        return Changed(piece=replace(piece, coats=rest), key=coat.key)
    again = Coat(key=bench.new_key(), sheet=coat.sheet)
    laid = tuple(old for old in rest if old.laid_ms is not None)
    return Changed(piece=replace(piece, coats=(*laid, again, *rest[len(laid) :])), key=again.key)


def look_changed(command: CorrectLook | TakeBackLook, bench: Bench) -> Changed:
    """Return a piece with a look as it was, or without it."""
    piece, coat, look = bench.look(command.look_key)
    if isinstance(command, TakeBackLook):
        looks = tuple(old for old in coat.looks if old.key != look.key)
    else:
        time_ms = since(coat.laid_ms, past(LOOKED_AHEAD, command.time_ms, bench.now_ms))
        new = replace(look, time_ms=time_ms, finding=command.finding)
        looks = tuple(new if old.key == look.key else old for old in coat.looks)
    return Changed(piece=replace(piece, coats=with_coat(piece, replace(coat, looks=looks))), key=look.key)


def outcome_taken_back(command: TakeBackOutcome, bench: Bench) -> Changed:
    """Return a piece with a coat whose outcome is open."""
    piece, coat, _ = bench.laid(command.coat_key)
    if coat.outcome is None:
        raise Refused(
            say("No outcome was recorded for that coat of {title}; there is nothing to take back.", title=piece.title)
        )
    open_again = replace(coat, outcome=None, seen_ms=None)
    return Changed(piece=replace(piece, coats=with_coat(piece, open_again)), key=coat.key)
