"""When a new snapshot must be drawn at once, and when it can wait for the next second."""

from __future__ import annotations

from studiowatch.service.snapshot import Snapshot

CALM_REDRAW_MS = 1000


def events_of(snapshot: Snapshot) -> tuple[object, ...]:
    """Return what changes by an event and not by drift: two snapshots that differ here are not drawn late."""
    return (
        tuple((one.key, one.state, one.level) for one in snapshot.warnings),
        (snapshot.sentence.level, snapshot.sentence.headline),
        tuple(_outline(piece.key, piece.title, len(piece.coats)) for piece in snapshot.pieces),
        tuple(
            (coat.key, coat.laid_ms, coat.surface, coat.covered) for piece in snapshot.pieces for coat in piece.coats
        ),
        tuple(prompt.key for prompt in snapshot.prompts),
        (snapshot.board.connected, snapshot.board.silent, snapshot.store_trouble),
    )


def _outline(key: str, title: str, coats: int) -> tuple[str, str, int]:
    return key, title, coats
