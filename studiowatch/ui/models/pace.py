"""When a new snapshot must be drawn at once, when it can wait, and when none has come for too long."""

from __future__ import annotations

from dataclasses import fields, replace
from operator import attrgetter

from studiowatch.coats.stages import Surface
from studiowatch.service.board_view import BoardView
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level, Sentence

CALM_REDRAW_MS = 1000
CARDS_REDRAW_MS = 15_000  # in which the fastest film thins by less than a pixel of its section
ROWS_REDRAW_MS = 15_000  # longest wait of the prompts' rows while what they count down is said in minutes
HISTORY_REDRAW_MS = 60_000  # longest wait of the room history for drift: the room band shows each reading
STALLED_AFTER_MS = 30_000  # while one looks the keeper gives a snapshot every three seconds: assumption
GONE_AFTER_MS = 180_000  # while nobody looks it gives one a minute, whatever comes: three that did not come
STALLED = Sentence(
    level=Level.ACT,
    headline=mark("The watch has stopped"),
    detail=mark("Nothing new has come from the watch for half a minute: these figures are old."),
    advice=mark("Close studiowatch and start it again; look after wet coats yourself until then."),
)

_DRIFTING = {  # fields that go on with time, or that are looked into apart
    *("coats", "next_ms", "next_p10_ms", "next_p90_ms", "would_seal_g_m2", "solvents", "may_cloud"),
    *("stages", "dry_um", "water_g_m2", "film_C", "film_trace", "blush_min", "risk"),
    *("sealed_in_g_m2", "trapped_g_m2", "soaked_g_m2"),
}
_PIECE, _COAT = (
    attrgetter(*(one.name for one in fields(view) if one.name not in _DRIFTING)) for view in (PieceView, CoatView)
)

NEVER_SPOKE = replace(
    STALLED,
    headline=mark("The watch has not started"),
    detail=mark("Nothing has come from the watch since the window was opened, half a minute ago or more."),
)


def is_event(before: Snapshot | None, snapshot: Snapshot) -> bool:
    """Return whether something happened since `before`, beyond drift: such a snapshot is drawn at once."""
    if before is None or _standing(before) != _standing(snapshot):
        return True
    return before.pieces is not snapshot.pieces and _coats(before) != _coats(snapshot)


def _standing(snapshot: Snapshot) -> tuple[object, ...]:
    return (
        tuple((one.key, one.state, one.level) for one in snapshot.warnings),
        (snapshot.sentence.level, snapshot.sentence.headline),
        tuple(prompt.key for prompt in snapshot.prompts),
        None if snapshot.room.typed is None else snapshot.room.typed.time_ms,
        (snapshot.board.connected, snapshot.board.silent, snapshot.store_trouble, snapshot.own_fault),
    )


def _coats(snapshot: Snapshot) -> list[tuple[object, ...]]:
    return [
        (piece.key, piece.title, *((coat.key, coat.laid_ms, coat.surface, coat.covered) for coat in piece.coats))
        for piece in snapshot.pieces
    ]


def history_due(drawn: Snapshot | None, snapshot: Snapshot, ms_per_px: float) -> bool:
    """Return whether the room history would look otherwise than when it was drawn with the snapshot `drawn`.

    It does after an event, or when the room is foretold anew; by drift once now has moved by a pixel, or after
    `HISTORY_REDRAW_MS`, whichever is sooner.
    """
    if drawn is None or is_event(drawn, snapshot) or drawn.units != snapshot.units:
        return True
    if drawn.room_band is not snapshot.room_band:
        return True
    return not 0 <= snapshot.time_ms - drawn.time_ms < min(ms_per_px, HISTORY_REDRAW_MS)


def cards_due(drawn: Snapshot, snapshot: Snapshot) -> bool:
    """Return whether the rack's cards may say something else than those that were made of `drawn`.

    Something happened to a piece, a test was learnt from, or time passed: a film thins, and time to go is counted down.
    The watch hands a piece on as the very same value while nothing of it changed.
    """
    is_soon = 0 <= snapshot.time_ms - drawn.time_ms < CARDS_REDRAW_MS
    is_same = drawn.pieces is snapshot.pieces or _lasting(drawn) == _lasting(snapshot)
    return not (is_same and is_soon and drawn.learnt == snapshot.learnt and drawn.units == snapshot.units)


def _lasting(snapshot: Snapshot) -> list[tuple[object, ...]]:
    """Return what cards say of the pieces but for figures that drift while a film dries."""
    return [
        (
            *_PIECE(piece),
            *((*_COAT(coat), tuple((one.stage, one.reached) for one in coat.stages)) for coat in piece.coats),
        )
        for piece in snapshot.pieces
    ]


def rows_due(drawn: Snapshot, snapshot: Snapshot) -> bool:
    """Return whether the prompts may say something else than the rows that were made of `drawn`, but for seconds.

    One came, went, moved or fell due, she prepares to lay a coat, or time passed. Seconds are brought up by themselves.
    """
    is_same = drawn.prompts == snapshot.prompts and not (drawn.preparations or snapshot.preparations)
    is_soon = 0 <= snapshot.time_ms - drawn.time_ms < ROWS_REDRAW_MS
    fell_due = any(drawn.time_ms < prompt.due_ms <= snapshot.time_ms for prompt in snapshot.prompts)
    return fell_due or not (is_same and is_soon and drawn.units == snapshot.units)


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


def records_changed(before: Snapshot | None, after: Snapshot) -> bool:
    """Return whether a piece or a prompt came or went."""
    if before is None:
        return True
    return [one.key for one in before.pieces] != [one.key for one in after.pieces] or [
        one.key for one in before.prompts
    ] != [one.key for one in after.prompts]
