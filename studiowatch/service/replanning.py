"""The coats to come of one piece as a command leaves them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from studiowatch.service.bench import Bench, Changed
from studiowatch.service.commands import Refused
from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    PlannedCommand,
    ReplacePlanned,
    UnplanCoat,
)
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.recipes import COATS_MOST


def planned(command: PlannedCommand, bench: Bench) -> Changed:
    """Return a piece with other coats to come; those that are on stay as they are.

    Raises
    ------
    Refused
        If there is no such coat to come, no such sheet, or there would be too many.
    """
    match command:
        case PlanCoat() | PlanCoats():
            piece = bench.piece(command.piece_key)
        case _:
            piece, _ = bench.coat(command.coat_key)
    laid = tuple(coat for coat in piece.coats if coat.laid_ms is not None)
    to_come = [coat for coat in piece.coats if coat.laid_ms is None]
    after, key = _replanned(command, piece, to_come, bench)
    if len(after) > COATS_MOST and len(after) > len(to_come):
        raise Refused(
            say(
                "{title} would have {count} coats to come; {most} are the most.",
                title=piece.title,
                count=len(after),
                most=COATS_MOST,
            )
        )
    return Changed(piece=replace(piece, coats=(*laid, *after)), key=key)


def _replanned(
    command: PlannedCommand, piece: Piece, to_come: Sequence[Coat], bench: Bench
) -> tuple[Sequence[Coat], str]:
    """Return the coats to come after `command`, and the key of what was made or changed."""
    match command:
        case PlanCoat():
            coat = Coat(key=bench.new_key(), sheet=bench.sheet(command.sheet))
            return [*to_come, coat], coat.key
        case PlanCoats():
            sheets = [bench.sheet(name) for name in command.sheets]
            return _instead(to_come, sheets, bench.new_key), piece.key
    at = _place(to_come, command.coat_key, piece)
    rest = [*to_come[:at], *to_come[at + 1 :]]
    match command:
        case UnplanCoat():
            return rest, piece.key
        case ReplacePlanned():
            rest.insert(at, replace(to_come[at], sheet=bench.sheet(command.sheet)))
        case MovePlanned():
            rest.insert(min(max(command.place, 0), len(rest)), to_come[at])
    return rest, command.coat_key


def _place(planned: Sequence[Coat], key: str, piece: Piece) -> int:
    for at, coat in enumerate(planned):
        if coat.key == key:
            return at
    raise Refused(
        say(
            "That coat of {title} is on already, so the plan cannot change it; correct the coat instead.",
            title=piece.title,
        )
    )


def _instead(planned: Sequence[Coat], sheets: Sequence[str], new_key: Callable[[], str]) -> list[Coat]:
    """Return coats of `sheets`; one that was planned before keeps its key, so that a calendar knows it again."""
    left = list(planned)
    coats = []
    for name in sheets:
        same = next((coat for coat in left if coat.sheet == name), None)
        if same is not None:
            left.remove(same)
        coats.append(same or Coat(key=new_key(), sheet=name))
    return coats
