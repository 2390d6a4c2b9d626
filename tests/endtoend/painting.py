"""Somebody at work in the studio: a coat a day, and what has all its coats makes room for the next piece."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import count

from studiowatch.service.commands import ArchivePiece, Command, LayCoat, RecordOutcome, RegisterPiece
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.plan_commands import PlanCoat
from studiowatch.service.ports import Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.pieces import Outcome

SHEETS = ("isolation-waterborne", "gloss-waterborne", "satin-waterborne")
SIZES = 2  # of pieces: each is followed ahead by itself for the plan, which would cost more than all else here
VOLUME_ML = 20.0
ANSWER_S = 120.0
DAY_MS = 86_400_000


class Painter:
    """Works at `desk`, by what a snapshot shows; nothing asked for is to be refused."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._numbers = count(1)

    def begin_piece(self, laid_ms: int, coats: int = 1) -> None:
        """Put another piece on the rack, its newest coat laid at a UTC ms, those below days before, and others planned.

        A studio that begins with as many `coats` on its pieces as it has ever after holds as much from the first day.
        """
        number = next(self._numbers)
        key = self._ask(RegisterPiece(title=f"Tide {number}", width_cm=40 + 10 * (number % SIZES), height_cm=50))
        for place, sheet in enumerate(SHEETS, start=1):
            if place <= coats:
                at_ms = laid_ms - (coats - place) * DAY_MS
                self._ask(LayCoat(piece_key=key, laid_ms=at_ms, sheet=sheet, volume_mL=VOLUME_ML))
            else:
                self._ask(PlanCoat(piece_key=key, sheet=sheet))

    def work(self, seen: Snapshot) -> None:
        """Do a day's work: on the piece whose newest coat is the oldest."""
        piece = min(seen.pieces, key=_newest_ms)
        newest = [coat for coat in piece.coats if coat.laid_ms is not None][-1]
        self._ask(RecordOutcome(coat_key=newest.key, seen_ms=seen.time_ms, outcome=Outcome.CLEAR))
        to_come = _to_come(piece.coats)
        if to_come:
            self._lay(piece, to_come[0], seen.time_ms)
            return
        self._ask(ArchivePiece(piece_key=piece.key))
        self.begin_piece(seen.time_ms)

    def _lay(self, piece: PieceView, coat: CoatView, laid_ms: int) -> None:
        self._ask(
            LayCoat(
                piece_key=piece.key,
                coat_key=coat.key,
                sheet=coat.sheet,
                laid_ms=laid_ms,
                volume_mL=VOLUME_ML,
            )
        )

    def _ask(self, command: Command) -> str:
        return self._desk.submit(command).result(ANSWER_S)


def _to_come(coats: Sequence[CoatView]) -> list[CoatView]:
    return [coat for coat in coats if coat.laid_ms is None]


def _newest_ms(piece: PieceView) -> int:
    return max(coat.laid_ms or 0 for coat in piece.coats)
