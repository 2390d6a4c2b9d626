"""The rack: her pieces as recorded, and the run of every coat that is on."""

from __future__ import annotations

import uuid
from collections import deque
from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from studiowatch.coats.anchoring import NotModelled
from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.coat_run import CoatRun, coat_fault
from studiowatch.service.commands import Refused
from studiowatch.service.happenings import StageHappened
from studiowatch.service.log_air import Moment
from studiowatch.service.orders import Bench, PieceCommand, carry_out
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.labels import stack_labels
from studiowatch.studio.pieces import Coat, Piece

YEAR_MS = 365 * 86_400_000  # ms
AHEAD_EVERY_MS = 60_000  # ms of board time between two looks ahead of one coat
AHEAD_AT_ONCE = 2  # coats; about 20 ms each
OLDEST_MS = 10 * YEAR_MS  # ms, a coat laid before that is a slip of the date; assumption


@dataclass(slots=True)
class Rack:
    """Holds the pieces and their runs; a change is on disk before it is seen, and `follow` then dries by it.

    Attributes
    ----------
    pieces : dict
        All pieces by key, archived ones too.
    runs : dict
        The run of each laid coat of a piece on the rack, by the coat's key.
    unwatched : dict
        Why a laid coat has no run, one sentence, by the coat's key.
    """

    shelf: SheetShelf
    records: Records
    log: ReadingsLog
    pieces: dict[str, Piece] = field(default_factory=dict)
    runs: dict[str, CoatRun] = field(default_factory=dict)
    unwatched: dict[str, str] = field(default_factory=dict)
    _unfollowed: deque[tuple[Piece | None, Piece]] = field(default_factory=deque)

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
        self._try_out(changed.piece, now_ms)
        after = (changed.piece, *changed.moved)
        self.records.save_pieces(after)
        self._unfollowed += [(self.pieces.get(piece.key), piece) for piece in after]
        self.pieces |= {piece.key: piece for piece in after}
        return changed.key

    def follow(self, now_ms: int) -> None:
        """Bring the runs in line with the changes that are on disk.

        Raises
        ------
        StoreTrouble
            If the log cannot be read; the rest is followed with the next call.
        """
        while self._unfollowed:
            before, piece = self._unfollowed.popleft()
            try:
                self._follow(before, piece, now_ms)
            except StoreTrouble:
                self._unfollowed.appendleft((before, piece))
                raise

    def _try_out(self, piece: Piece, now_ms: int) -> None:
        """Refuse a piece whose coats could not be watched, before it is on disk."""
        before = self.pieces.get(piece.key)
        known = (
            {coat.key: coat for coat in before.coats} if before is not None and _face(before) == _face(piece) else {}
        )
        for coat in piece.coats:
            if coat.laid_ms is None or _dries_alike(known.get(coat.key), coat) or coat.sheet not in self.shelf.sheets:
                continue
            if now_ms - coat.laid_ms > OLDEST_MS:
                raise Refused(f"The coat was laid more than {OLDEST_MS // YEAR_MS} years ago; check its date.")
            fault = coat_fault(coat, piece, self.shelf)
            if fault:
                raise Refused(fault)

    def shift(self, step_ms: int) -> None:
        """Move all runs along with a wall clock that was set."""
        for run in self.runs.values():
            run.shift(step_ms)

    def advance(self, air: Air, now_ms: int) -> list[StageHappened]:
        """Dry every coat in `air` until `now_ms`, beginning those whose time of laying has come."""
        happened: list[StageHappened] = []
        for piece in self.on_rack():
            for number, coat in enumerate(piece.coats, start=1):
                if self._is_due(coat, now_ms):
                    self._begin(piece, coat)
                run = self.runs.get(coat.key)
                if run is not None:
                    happened += self._stages(piece, number, run, air, now_ms)
        self._look_ahead()
        return happened

    def _look_ahead(self) -> None:
        """Bring the stalest looks ahead up to date, few at once: no warning may wait for them."""
        stale = [run for run in self.runs.values() if run.ahead_age_ms >= AHEAD_EVERY_MS and not run.is_settled]
        for run in sorted(stale, key=lambda run: run.ahead_age_ms, reverse=True)[:AHEAD_AT_ONCE]:
            run.look_ahead()

    def _is_due(self, coat: Coat, now_ms: int) -> bool:
        """Return whether a coat is on by now and has not been begun."""
        is_on = coat.laid_ms is not None and coat.laid_ms <= now_ms
        return is_on and coat.key not in self.runs and coat.key not in self.unwatched

    def _stages(self, piece: Piece, number: int, run: CoatRun, air: Air, now_ms: int) -> Iterator[StageHappened]:
        began_ms = run.at_ms
        reached = run.advance(Moment.after(run.air, air, run.at_ms, now_ms))
        label = self.labels(piece)[number - 1]
        happened: list[tuple[int, Stage]] = [
            (min(max(run.laid_ms + round(step.elapsed_s * 1000), began_ms), now_ms), step.stage)
            for step in reached
            if step.stage is not Stage.DRY_TO_RECOAT
        ]
        recoat_ms = run.recoat_ms()
        if recoat_ms is not None and recoat_ms <= now_ms and not run.recoat_told:
            run.recoat_told = True
            happened.append((max(recoat_ms, began_ms), Stage.DRY_TO_RECOAT))
        for time_ms, stage in happened:
            yield StageHappened(
                time_ms=time_ms, piece_title=piece.title, coat_number=number, coat_label=label, stage=stage
            )

    def labels(self, piece: Piece) -> tuple[str, ...]:
        """Return the short names of a piece's coats."""
        return stack_labels([self.shelf.stand_in(coat.sheet) for coat in piece.coats])

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
        known = _dried_alike(before, piece)
        changed = [coat for coat in piece.coats if not _dries_alike(known.get(coat.key), coat)]
        for coat in piece.coats:
            run = self.runs.get(coat.key)
            if run is not None:
                run.coat = coat
        if changed and any(coat.laid_ms is not None for coat in changed):
            self._run_piece(piece, now_ms, changed[0])

    def _run_piece(self, piece: Piece, now_ms: int, lowest: Coat | None = None) -> None:
        """Run the laid coats of `piece` through the log, from `lowest` up, each on the one below as it then was."""
        laid = [coat for coat in piece.coats if coat.laid_ms is not None and coat.laid_ms <= now_ms]
        again = laid[laid.index(lowest) if lowest in laid else 0 :]
        if not again:
            return
        for coat in again:
            self.runs.pop(coat.key, None)
        means = self.log.minute_means(again[0].laid_ms or 0, now_ms)
        for coat, above in zip(again, [*again[1:], None], strict=True):
            run = self._begin(piece, coat)
            until_ms = now_ms if above is None or above.laid_ms is None else above.laid_ms
            if run is not None:
                run.catch_up(means, until_ms)
        for coat in again:
            run = self.runs.get(coat.key)
            if run is not None:
                run.catch_up(means, now_ms)
                run.look_ahead()
                recoat_ms = run.recoat_ms()
                run.recoat_told = recoat_ms is not None and recoat_ms <= now_ms

    def _begin(self, piece: Piece, coat: Coat) -> CoatRun | None:
        below = [self.runs[old.key].film for old in piece.coats[: piece.coats.index(coat)] if old.key in self.runs]
        self.runs.pop(coat.key, None)
        self.unwatched.pop(coat.key, None)
        if coat.sheet not in self.shelf.sheets:
            self.unwatched[coat.key] = f"The data sheet {coat.sheet} is missing; put it back among your sheets."
            return None
        try:
            run = CoatRun.begin(coat, piece, self.shelf.get(coat.sheet), below[-1] if below else None)
        except (NotModelled, OutOfRange) as fault:
            self.unwatched[coat.key] = f"{fault}."
            return None
        self.runs[coat.key] = run
        return run


def _dried_alike(before: Piece | None, piece: Piece) -> dict[str, Coat]:
    """Return the coats by key whose runs may stand after a change of their piece: none if its face is another."""
    if before is None or _face(before) != _face(piece):
        return {}
    return {coat.key: coat for coat in before.coats}


def _face(piece: Piece) -> tuple[object, ...]:
    return piece.width_cm, piece.height_cm, piece.orientation


def _dries_alike(before: Coat | None, after: Coat) -> bool:
    """Return whether a coat's run stands after a change: looks and outcomes do not change how it dried."""
    if before is None:
        return False
    return replace(before, looks=after.looks, outcome=after.outcome, seen_ms=after.seen_ms) == after
