"""What her touch tests taught: said on the card and in the form, and what the last one moved."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.product_views import LearntView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say, say_counted
from studiowatch.ui.models.times import MINUTE_MS, SECOND_MS, near_words, near_words_beside

MOVED_MS = 5 * MINUTE_MS  # a ready time wanders by less with the room alone while a test is taken up: assumption
WAIT_MS = 30 * SECOND_MS  # within which a test has been taken up: assumption, wide margin


@dataclass(frozen=True, slots=True, kw_only=True)
class AnsweredTest:
    """A touch test that was recorded, and the studio as it was before."""

    piece_key: str
    before: Snapshot

    def is_over(self, after: Snapshot) -> bool:
        """Return whether the ready time will not move for this test any more."""
        return not 0 <= after.time_ms - self.before.time_ms <= WAIT_MS

    def moved_words(self, after: Snapshot, zone: tzinfo | None = None) -> str:
        """Return from when to when the ready time of the piece moved, or "" while it did not."""
        old, new = _piece(self.before, self.piece_key), _piece(after, self.piece_key)
        if old is None or new is None or old.next_step != new.next_step:
            return ""
        moved = _moved(old.next_ms, new.next_ms, after.time_ms, zone)
        return f"{moved} · {new.title}" if moved else ""


def _piece(snapshot: Snapshot, key: str) -> PieceView | None:
    return next((piece for piece in snapshot.pieces if piece.key == key), None)


def _moved(old_ms: int | None, new_ms: int | None, now_ms: int, zone: tzinfo | None) -> str:
    if old_ms is None:
        if new_ms is None:
            return ""
        return say("Ready time in sight now: {time}", time=near_words(new_ms, now_ms, zone))
    old = near_words(old_ms, now_ms, zone)
    if new_ms is None:
        return say("Ready time was {time}, none is in sight now", time=old)
    new = near_words(new_ms, now_ms, zone)
    if abs(new_ms - old_ms) < MOVED_MS or new == old:
        return ""
    beside = near_words_beside(new_ms, old_ms, now_ms, zone)
    return say("Ready time moved from {earlier} to {later}", earlier=old, later=beside)


def learnt_of(piece: PieceView, learnt: Sequence[LearntView]) -> tuple[CoatView, LearntView] | None:
    """Return the top coat of `piece`, else its next, with what was learnt of its product; None if that is nothing."""
    by_sheet = {one.sheet: one for one in learnt}
    following = next((coat for coat in piece.coats if coat.laid_ms is None), None)
    coats = [coat for coat in (piece.top, following) if coat is not None]
    return next(((coat, by_sheet[coat.sheet]) for coat in coats if coat.sheet in by_sheet), None)


def learnt_line(piece: PieceView, learnt: Sequence[LearntView]) -> str:
    """Return what was learnt in a few words that fit a card, or ""."""
    found = learnt_of(piece, learnt)
    if found is None:
        return ""
    coat, one = found
    return say_counted(
        one.tests,
        "{coat}: {times} × the sheet's time here, 1 test",
        "{coat}: {times} × the sheet's time here, {n} tests",
        coat=coat.label,
        times=chosen().number(one.times_as_long, 1),
    )


def learnt_sentence(piece: PieceView, learnt: Sequence[LearntView]) -> str:
    """Return what was learnt in a whole sentence, or ""."""
    found = learnt_of(piece, learnt)
    return "" if found is None else found[1].sentence
