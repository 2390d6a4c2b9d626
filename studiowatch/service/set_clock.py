"""Records made by a wall clock that was then set: the coats they tell of are as old as they were."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from studiowatch.studio.pieces import Coat, Piece


def moved_along(piece: Piece, step_ms: int, keys: Collection[str]) -> Piece:
    """Return `piece` with all times of the coats in `keys` moved by `step_ms`, but none below the coat it lies on."""
    coats: list[Coat] = []
    for coat in piece.coats:
        below_ms = coats[-1].laid_ms if coats else None
        coats.append(_moved(coat, step_ms, below_ms) if coat.key in keys else coat)
    return replace(piece, coats=tuple(coats))


def _moved(coat: Coat, step_ms: int, below_ms: int | None) -> Coat:
    if coat.laid_ms is None:
        return coat
    if below_ms is not None:
        step_ms = max(step_ms, below_ms - coat.laid_ms)
    return replace(
        coat,
        laid_ms=coat.laid_ms + step_ms,
        covered_from_ms=None if coat.covered_from_ms is None else coat.covered_from_ms + step_ms,
        seen_ms=None if coat.seen_ms is None else coat.seen_ms + step_ms,
        looks=tuple(replace(look, time_ms=look.time_ms + step_ms) for look in coat.looks),
    )
