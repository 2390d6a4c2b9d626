"""The rack: her pieces as recorded, and the run of every coat that is on."""

from __future__ import annotations

import uuid
from collections import deque
from dataclasses import dataclass, field, replace
from functools import partial

from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.coat_run import CoatRun, coat_fault
from studiowatch.service.commands import Refused
from studiowatch.service.happenings import StageHappened
from studiowatch.service.learning_desk import LearningDesk
from studiowatch.service.log_air import UNSEEN_AIR, JudgedLog, Moment, moments, width_for
from studiowatch.service.orders import Bench, PieceCommand, carry_out
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.room_now import BRIDGED_MS
from studiowatch.service.same_drying import dried_alike, dries_alike
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.labels import stack_labels
from studiowatch.studio.pieces import Coat, Piece

YEAR_MS = 365 * 86_400_000  # ms
AHEAD_AT_ONCE = 2  # coats that are looked ahead for in one step, so that no warning waits for twenty of them
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
    learning: LearningDesk = field(init=False)
    _judged: JudgedLog = field(init=False)
    _unfollowed: deque[tuple[Piece | None, Piece]] = field(default_factory=deque)

    def __post_init__(self) -> None:
        self._judged = JudgedLog(self.log)
        self.learning = LearningDesk(records=self.records, shelf=self.shelf)

    def open(self, now_ms: int) -> None:
        """Read the records and dry every laid coat through the log up to `now_ms`."""
        self.take_up()
        self.follow(now_ms)

    def take_up(self) -> None:
        """Read the records; no coat has a run until `follow` or `follow_next`."""
        self.learning.reopen()
        self.pieces = {piece.key: piece for piece in self.records.pieces()}
        self.dry_anew()

    def dry_anew(self) -> None:
        """Have `follow` dry every coat from the log, as that is read now."""
        self._judged.forget()
        oldest_first = sorted(self.on_rack(), key=lambda piece: piece.first_laid_ms or 0)
        self._unfollowed.extend((None, piece) for piece in oldest_first)

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
        while self.follow_next(now_ms):
            pass

    def follow_next(self, now_ms: int) -> bool:
        """Bring the runs in line with one change, as `follow` does with all; return whether there are more."""
        if self._unfollowed:
            before, piece = self._unfollowed.popleft()
            try:
                self._follow(before, piece, now_ms)
                self._heed(piece, now_ms)
            except StoreTrouble:
                self._unfollowed.appendleft((before, piece))
                raise
        if not self._unfollowed:
            self._judged.forget()
        return bool(self._unfollowed)

    def _try_out(self, piece: Piece, now_ms: int) -> None:
        """Refuse a piece whose coats could not be watched, before it is on disk."""
        known = dried_alike(self.pieces.get(piece.key), piece)
        for coat in piece.coats:
            if coat.laid_ms is None or dries_alike(known.get(coat.key), coat) or coat.sheet not in self.shelf.sheets:
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
            top = self.top_run(piece)
            alone = Moment(time_ms=now_ms, air=air)
            happened += self._take(piece, alone if top is None else Moment.after(top.air, air, top.at_ms, now_ms))
            self._heed(piece, now_ms)
        self._judged.forget()
        for run in [run for run in self.runs.values() if run.is_ahead_due][:AHEAD_AT_ONCE]:
            run.look_ahead()
        return happened

    def _take(self, piece: Piece, moment: Moment) -> list[StageHappened]:
        """Dry a piece's coats up to a moment; each whose time has come is laid on the one below as that is by then."""
        happened: list[StageHappened] = []
        for coat, laid_ms in self._due(piece, moment.time_ms):
            happened += self._dry(piece, replace(moment, time_ms=laid_ms))
            self._begin(piece, coat)
        return happened + self._dry(piece, moment)

    def _due(self, piece: Piece, now_ms: int) -> list[tuple[Coat, int]]:
        """Return the coats that are on by now and have no run yet, with the times of their laying."""
        on = [(coat, coat.laid_ms) for coat in piece.coats if coat.laid_ms is not None and coat.laid_ms <= now_ms]
        return [(coat, laid_ms) for coat, laid_ms in on if coat.key not in self.runs and coat.key not in self.unwatched]

    def _dry(self, piece: Piece, moment: Moment) -> list[StageHappened]:
        """Dry the coats that are on up to a moment."""
        top = self.top_run(piece)
        if top is None:
            return []
        began_ms = top.at_ms
        reached: list[tuple[CoatRun, Stage, int]] = [
            (run, step.stage, min(max(run.laid_ms + round(step.elapsed_s * 1000), began_ms), moment.time_ms))
            for run, step in top.advance(moment)
            if step.stage is not Stage.DRY_TO_RECOAT
        ]
        recoat_ms = top.recoat_ms()
        if recoat_ms is not None and recoat_ms <= moment.time_ms and not top.recoat_told:
            top.recoat_told = True
            reached.append((top, Stage.DRY_TO_RECOAT, max(recoat_ms, began_ms)))
        labelled = enumerate(zip(piece.coats, self.labels(piece), strict=True), start=1)
        labels = {coat.key: (place, label) for place, (coat, label) in labelled}
        return [
            StageHappened(
                time_ms=time_ms,
                piece_title=piece.title,
                coat_number=labels[run.coat.key][0],
                coat_label=labels[run.coat.key][1],
                stage=stage,
            )
            for run, stage, time_ms in reached
        ]

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
        known = dried_alike(before, piece)
        changed = [coat for coat in piece.coats if not dries_alike(known.get(coat.key), coat)]
        for coat in piece.coats:
            run = self.runs.get(coat.key)
            if run is not None:
                run.coat = coat
        if changed and any(coat.laid_ms is not None for coat in changed):
            self._run_piece(piece, now_ms, changed[0])

    def _run_piece(self, piece: Piece, now_ms: int, lowest: Coat | None = None) -> None:
        """Run the laid coats of `piece` through the log: from `lowest` up where it is laid on what is there."""
        laid = [coat for coat in piece.coats if coat.laid_ms is not None and coat.laid_ms <= now_ms]
        first = laid.index(lowest) if lowest in laid and self._bare_until(piece, lowest) else 0
        for coat in laid[first:]:
            self.runs.pop(coat.key, None)
            self.unwatched.pop(coat.key, None)
        layings_ms = [laid_ms for _, laid_ms in self._due(piece, now_ms)]
        if not layings_ms:
            return
        top = self.top_run(piece)
        since_ms = layings_ms[0] if top is None else top.at_ms
        before = None if top is None else top.air
        airs, width_ms = self._judged.airs(since_ms, now_ms), partial(self._width_ms, piece)
        for moment in moments(airs, since_ms, width_ms=width_ms, layings_ms=layings_ms, before=before):
            self._take(piece, moment)
            if self._is_over(piece, now_ms):
                break
        for coat, laid_ms in self._due(piece, now_ms):
            top = self.top_run(piece)
            if top is not None:
                self._dry(piece, Moment.after(top.air, top.air or UNSEEN_AIR, top.at_ms, laid_ms))
            self._begin(piece, coat)
        for run in [self.runs[coat.key] for coat in laid if coat.key in self.runs]:
            run.look_ahead()
            recoat_ms = run.recoat_ms()
            run.recoat_told = recoat_ms is not None and recoat_ms <= now_ms

    def _width_ms(self, piece: Piece, time_ms: int) -> int:
        top = self.top_run(piece)
        return 0 if top is None else width_for(top.film, time_ms - top.laid_ms)

    def _is_over(self, piece: Piece, now_ms: int) -> bool:
        """Return whether nothing more happens to the coats of `piece` that were laid by `now_ms`."""
        top = self.top_run(piece)
        return top is not None and top.is_cured and not self._due(piece, now_ms)

    def _bare_until(self, piece: Piece, coat: Coat) -> bool:
        """Return whether the coat below `coat` is run, not beyond its laying, and nothing lies on it."""
        below = piece.coats[: piece.coats.index(coat)]
        run = self.runs.get(below[-1].key) if below else None
        return run is not None and run.film.seal is None and run.at_ms <= (coat.laid_ms or 0)

    def _heed(self, piece: Piece, now_ms: int) -> None:
        """Learn from her tests of a piece that were not heeded yet, drying it anew where they call for other draws."""
        for coat in piece.coats:
            run = self.runs.get(coat.key)
            if run is None or run.air is None or run.tests() == run.heeded:
                continue
            if run.tests() or run.heeded:
                run.look_ahead()
            self.learning.ready(run)
            if run.standing.surprise not in (None, *run.tests()):
                run = self._dried_anew(piece, coat, now_ms)
            while (standing := run.anew()) is not None and self._is_logged(run):
                self.learning.plan(coat, standing)
                run = self._dried_anew(piece, coat, now_ms)
            run.heeded = run.tests()
            if self.learning.keep(run):
                for other in self.runs.values():
                    self.learning.renew(other)

    def _dried_anew(self, piece: Piece, coat: Coat, now_ms: int) -> CoatRun:
        self._run_piece(piece, now_ms, coat)
        return self.runs[coat.key]

    def _is_logged(self, run: CoatRun) -> bool:
        """Return whether the log reaches up to where the film is: without it the film cannot be dried anew."""
        return bool(self.log.minute_means(max(run.laid_ms, run.at_ms - BRIDGED_MS), run.at_ms + 1))

    def _begin(self, piece: Piece, coat: Coat) -> None:
        if coat.sheet not in self.shelf.sheets:
            self.unwatched[coat.key] = f"The data sheet {coat.sheet} is missing; put it back among your sheets."
            return
        sheet = self.shelf.get(coat.sheet)
        try:
            run = CoatRun.begin(coat, piece, sheet, self.top_run(piece), self.learning.standing(coat, sheet))
        except OutOfRange as fault:
            self.unwatched[coat.key] = f"{fault}."
            return
        self.runs[coat.key] = run
