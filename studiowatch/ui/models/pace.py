"""When a new snapshot must be drawn at once, when it can wait, and when none has come for too long."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.coats.stages import Surface
from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level, Sentence

CALM_REDRAW_MS = 1000
CARDS_REDRAW_MS = 5000  # as often as a wet film moves
HISTORY_REDRAW_MS = 5000  # longest wait of the room history for drift: the room band shows each reading
STALLED_AFTER_MS = 30_000  # the keeper gives a snapshot every second or so: assumption, wide margin
STALLED = Sentence(
    level=Level.ACT,
    headline=mark("The watch has stopped"),
    detail=mark("Nothing new has come from the watch for half a minute: these figures are old."),
    advice=mark("Close studiowatch and start it again; look after wet coats yourself until then."),
)

NEVER_SPOKE = replace(
    STALLED,
    headline=mark("The watch has not started"),
    detail=mark("Nothing has come from the watch since the window was opened, half a minute ago or more."),
)


def events_of(snapshot: Snapshot) -> tuple[object, ...]:
    """Return what changes by an event and not by drift: a snapshot that differs here is drawn at once."""
    coats = ((coat.key, coat.laid_ms, coat.surface, coat.covered) for one in snapshot.pieces for coat in one.coats)
    return (
        tuple((one.key, one.state, one.level) for one in snapshot.warnings),
        (snapshot.sentence.level, snapshot.sentence.headline),
        tuple((piece.key, piece.title) for piece in snapshot.pieces),
        tuple(coats),
        tuple(prompt.key for prompt in snapshot.prompts),
        None if snapshot.room.typed is None else snapshot.room.typed.time_ms,
        (snapshot.board.connected, snapshot.board.silent, snapshot.store_trouble, snapshot.own_fault),
    )


def history_due(drawn: Snapshot | None, snapshot: Snapshot, ms_per_px: float) -> bool:
    """Return whether the room history would look otherwise than when it was drawn with the snapshot `drawn`.

    It does after an event; by drift once now has moved by a pixel, or after `HISTORY_REDRAW_MS`, whichever is sooner.
    """
    if drawn is None or events_of(drawn) != events_of(snapshot) or drawn.units != snapshot.units:
        return True
    return not 0 <= snapshot.time_ms - drawn.time_ms < min(ms_per_px, HISTORY_REDRAW_MS)


def cards_due(before: Snapshot, snapshot: Snapshot) -> bool:
    """Return whether the rack's cards may say something else: a piece moved on, a test was learnt from, or time passed.

    The watch hands a piece on as the very same value while nothing of it changed.
    """
    is_same = len(before.pieces) == len(snapshot.pieces) and all(
        one is other for one, other in zip(before.pieces, snapshot.pieces, strict=True)
    )
    is_soon = before.time_ms // CARDS_REDRAW_MS == snapshot.time_ms // CARDS_REDRAW_MS
    return not (is_same and is_soon and before.learnt == snapshot.learnt and before.units == snapshot.units)


def stalled(snapshot: Snapshot | None, now_ms: int) -> Snapshot:
    """Return the last snapshot as it must be shown once nothing newer comes; None if none ever came."""
    if snapshot is None:
        return Snapshot(
            time_ms=now_ms, board=BoardView(silent=True), room=RoomView(time_ms=now_ms), sentence=_said(NEVER_SPOKE)
        )
    return replace(snapshot, sentence=_said(STALLED), board=replace(snapshot.board, silent=True))


def _said(one: Sentence) -> Sentence:
    return replace(one, headline=say(one.headline), detail=say(one.detail), advice=say(one.advice))


def wet_titles(snapshot: Snapshot) -> tuple[str, ...]:
    """Return the titles of the pieces whose top coat is not dry yet."""
    tops = ((piece.title, piece.top) for piece in snapshot.pieces)
    return tuple(title for title, top in tops if top is not None and top.surface in {Surface.WET, Surface.TACKY})
