"""The rack: her pieces as recorded, and the run of every coat that is on."""

from __future__ import annotations

import uuid
from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from studiowatch.coats.anchoring import NotModelled
from studiowatch.coats.data_sheet import Kind
from studiowatch.physics.air import Air
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.happenings import StageHappened
from studiowatch.service.log_air import Moment, moments
from studiowatch.service.orders import Bench, PieceCommand, carry_out
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.labels import stack_labels
from studiowatch.studio.pieces import Coat, Piece


@dataclass(slots=True)
class Rack:
    """Holds the pieces and their runs; every change is on disk before it is seen.

    Attributes
    ----------
    pieces : dict
        All pieces by key, archived ones too.
    runs : dict
        The run of each laid coat of a piece on the rack, by the coat's key.
    """

    shelf: SheetShelf
    records: Records
    log: ReadingsLog
    pieces: dict[str, Piece] = field(default_factory=dict)
    runs: dict[str, CoatRun] = field(default_factory=dict)

    def open(self, now_ms: int) -> None:
        """Read the records and dry every laid coat through the log up to `now_ms`."""
        self.pieces = {piece.key: piece for piece in self.records.pieces()}
        for piece in self.on_rack():
            self._run_piece(piece, now_ms)

    def on_rack(self) -> list[Piece]:
        """Return the pieces on the rack, by place."""
        return sorted((piece for piece in self.pieces.values() if not piece.archived), key=lambda piece: piece.place)

    def carry_out(self, command: PieceCommand, now_ms: int) -> str:
        """Change a piece as asked, put it on disk, and return the key of what was made or changed.

        Raises
        ------
        Refused
            If it cannot be done; nothing was changed.
        StoreTrouble
            If the disk refused; nothing was changed.
        """
        bench = Bench(
            pieces=tuple(self.pieces.values()),
            sheets=frozenset(self.shelf.sheets),
            now_ms=now_ms,
            new_key=lambda: uuid.uuid4().hex,
            unmodelled=frozenset(name for name, sheet in self.shelf.sheets.items() if sheet.kind is Kind.SOLVENTBORNE),
        )
        changed = carry_out(command, bench)
        for piece in (changed.piece, *changed.moved):
            self.records.save_piece(piece)
            before = self.pieces.get(piece.key)
            self.pieces[piece.key] = piece
            self._follow(before, piece, now_ms)
        return changed.key

    def advance(self, air: Air, now_ms: int) -> list[StageHappened]:
        """Dry every coat in `air` until `now_ms`, beginning those whose time of laying has come."""
        happened: list[StageHappened] = []
        for piece in self.on_rack():
            for number, coat in enumerate(piece.coats, start=1):
                if coat.laid_ms is not None and coat.laid_ms <= now_ms and coat.key not in self.runs:
                    self._begin(piece, coat)
                run = self.runs.get(coat.key)
                if run is not None:
                    happened += self._stages(piece, number, run, air, now_ms)
        return happened

    def _stages(self, piece: Piece, number: int, run: CoatRun, air: Air, now_ms: int) -> Iterator[StageHappened]:
        began_ms = run.at_ms
        reached = run.advance(Moment.after(run.air, air, run.at_ms, now_ms))
        run.look_ahead()
        label = self.labels(piece)[number - 1]
        for step in reached:
            time_ms = min(max(run.laid_ms + round(step.elapsed_s * 1000), began_ms), now_ms)
            yield StageHappened(
                time_ms=time_ms, piece_title=piece.title, coat_number=number, coat_label=label, stage=step.stage
            )

    def labels(self, piece: Piece) -> tuple[str, ...]:
        """Return the short names of a piece's coats."""
        return stack_labels([self.shelf.get(coat.sheet) for coat in piece.coats])

    def top_run(self, piece: Piece) -> CoatRun | None:
        """Return the run of the topmost laid coat, or None."""
        laid = [self.runs[coat.key] for coat in piece.coats if coat.key in self.runs]
        return laid[-1] if laid else None

    def _follow(self, before: Piece | None, piece: Piece, now_ms: int) -> None:
        """Bring the runs in line with a changed piece, re-running only what dries differently now."""
        if piece.archived:
            for coat in piece.coats:
                self.runs.pop(coat.key, None)
            return
        same_face = before is not None and _face(before) == _face(piece)
        known = {coat.key: coat for coat in before.coats} if before is not None and same_face else {}
        changed = [coat for coat in piece.coats if not _dries_alike(known.get(coat.key), coat)]
        for coat in piece.coats:
            run = self.runs.get(coat.key)
            if run is not None:
                run.coat = coat
        if changed and any(coat.laid_ms is not None for coat in changed):
            self._run_piece(piece, now_ms, changed[0])

    def _run_piece(self, piece: Piece, now_ms: int, lowest: Coat | None = None) -> None:
        """Run the laid coats of `piece` through the log, from `lowest` up."""
        laid = [coat for coat in piece.coats if coat.laid_ms is not None and coat.laid_ms <= now_ms]
        first = laid.index(lowest) if lowest in laid else 0
        for coat in laid[first:]:
            run = self._begin(piece, coat)
            if run is not None:
                self._catch_up(run, now_ms)

    def _begin(self, piece: Piece, coat: Coat) -> CoatRun | None:
        below = [self.runs[old.key].film for old in piece.coats[: piece.coats.index(coat)] if old.key in self.runs]
        try:
            run = CoatRun.begin(coat, piece, self.shelf.get(coat.sheet), below[-1] if below else None)
        except NotModelled:
            self.runs.pop(coat.key, None)
            return None
        self.runs[coat.key] = run
        return run

    def _catch_up(self, run: CoatRun, now_ms: int) -> None:
        for moment in moments(self.log.minute_means(run.laid_ms, now_ms), run.laid_ms):
            run.advance(moment)
        run.look_ahead(now=True)


def _face(piece: Piece) -> tuple[object, ...]:
    return piece.width_cm, piece.height_cm, piece.orientation


def _dries_alike(before: Coat | None, after: Coat) -> bool:
    """Return whether a coat's run stands after a change: looks and outcomes do not change how it dried."""
    if before is None:
        return False
    return replace(before, looks=after.looks, outcome=after.outcome, seen_ms=after.seen_ms) == after
