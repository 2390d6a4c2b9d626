"""The rack: her pieces as recorded, and the run of every coat that is on."""

from __future__ import annotations

import uuid
from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, field

from studiowatch.coats.data_sheet import Kind
from studiowatch.physics.air import Air
from studiowatch.service.ahead_due import is_ahead_due
from studiowatch.service.bench import Bench
from studiowatch.service.coat_fault import coat_fault
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.commands import LayCoat, Refused
from studiowatch.service.correction_desk import CorrectionDesk
from studiowatch.service.deed_words import deed_words
from studiowatch.service.happenings import StageHappened
from studiowatch.service.learning_desk import LearningDesk
from studiowatch.service.orders import PieceCommand, carry_out
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.same_drying import dried_alike, dries_alike
from studiowatch.service.set_clock import CLOCK_STEP, ClockStep, clock_steps, moved_along
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.stacks import DryingDropped, Stacks
from studiowatch.service.undo_pile import Deed, UndoPile
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.pieces import Coat, Piece

AHEAD_AT_ONCE = 2  # coats that are looked ahead for in one step, so that no warning waits for twenty of them


@dataclass(slots=True)
class Rack:
    """Holds the pieces and their runs; a change is on disk before it is seen, and `follow` then dries by it.

    Attributes
    ----------
    pieces : dict
        All pieces by key, archived ones too.
    stacks : Stacks
        The runs of their coats.
    pile : UndoPile
        What was done in this session.
    corrections : CorrectionDesk
        What was corrected.
    is_behind : bool
        Whether more coats are to be looked ahead for than the last step could take.
    """

    shelf: SheetShelf
    records: Records
    log: ReadingsLog
    pieces: dict[str, Piece] = field(default_factory=dict)
    learning: LearningDesk = field(init=False)
    stacks: Stacks = field(init=False)
    corrections: CorrectionDesk = field(init=False)
    pile: UndoPile = field(default_factory=UndoPile)
    is_behind: bool = False
    _unfollowed: deque[tuple[Piece | None, Piece]] = field(default_factory=deque)
    _laid_here: set[str] = field(default_factory=set)  # coats laid in this session: their times follow the clock

    def __post_init__(self) -> None:
        self.learning = LearningDesk(records=self.records, shelf=self.shelf)
        self.stacks = Stacks(shelf=self.shelf, log=self.log, learning=self.learning)
        self.corrections = CorrectionDesk(records=self.records, labels=self.stacks.labels)

    @property
    def runs(self) -> dict[str, CoatRun]:
        """The run of each laid coat of a piece on the rack, by the coat's key."""
        return self.stacks.runs

    @property
    def trouble(self) -> str:
        """One sentence while something of it cannot be put on disk or read from it, else ""."""
        return self.learning.trouble or self.corrections.trouble

    def open(self, now_ms: int) -> None:
        """Read the records and dry every laid coat through the log up to `now_ms`."""
        self.take_up()
        self.follow(now_ms)

    def take_up(self) -> None:
        """Read the records; no coat has a run until `follow` or `follow_next`."""
        self.learning.reopen()
        self.corrections.forget()
        self.pieces = {piece.key: piece for piece in self.records.pieces()}
        self.stacks.clock_steps = clock_steps(self.records.noted(CLOCK_STEP))
        self.dry_anew()

    def dry_anew(self) -> None:
        """Have `follow` dry every coat from the log, as that is read now."""
        self.stacks.forget_log()
        oldest_first = sorted(self.on_rack(), key=lambda piece: piece.first_laid_ms or 0)
        self._unfollowed.extend((None, piece) for piece in oldest_first)

    def dry_anew_by(self, sheet: str) -> None:
        """Have `follow` dry the pieces anew that have a coat of `sheet`: its figures are others now."""
        self.learning.forget_plans(sheet)
        self.stacks.forget_log()
        used = [piece for piece in self.on_rack() if any(coat.sheet == sheet for coat in piece.coats)]
        self._unfollowed.extend((None, piece) for piece in used)

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
            paints=frozenset(name for name, sheet in self.shelf.sheets.items() if sheet.kind is Kind.PAINT),
        )
        changed = carry_out(command, bench)
        after = (changed.piece, *changed.moved)
        changes = tuple((self.pieces.get(piece.key), piece) for piece in after)
        words = deed_words(command, changes[0][0], changed.piece, self.stacks.labels)
        self.put(after, now_ms)
        if isinstance(command, LayCoat):
            self._laid_here.add(changed.key)
        if any(before != piece for before, piece in changes):
            self.pile.record(Deed(words=words, changes=changes))
        return changed.key

    def put(self, pieces: Sequence[Piece], now_ms: int) -> None:
        """Have `pieces` be as they are given: on disk, and from the next `follow` on in their runs.

        Raises
        ------
        Refused
            If a coat of theirs could not be watched; nothing was changed.
        StoreTrouble
            If the disk refused; nothing was changed.
        """
        for piece in pieces:
            self._try_out(piece, now_ms)
        self.records.save_pieces(pieces)
        self._unfollowed += [(self.pieces.get(piece.key), piece) for piece in pieces]
        self.pieces |= {piece.key: piece for piece in pieces}

    def follow(self, now_ms: int) -> None:
        """Bring the runs in line with the changes that are on disk.

        Raises
        ------
        DryingDropped, StoreTrouble
            If the watch is to end, or the log cannot be read; the rest is followed with the next call.
        """
        while self.follow_next(now_ms):
            pass

    def follow_next(self, now_ms: int) -> bool:
        """Bring the runs in line with one change, as `follow` does with all; return whether there are more.

        Raises
        ------
        DryingDropped, StoreTrouble
            If the watch is to end, or the log cannot be read; the change is followed with the next call.
        """
        if self._unfollowed:
            if self.stacks.is_ending():
                raise DryingDropped
            before, piece = self._unfollowed.popleft()
            try:
                self._follow(before, piece, now_ms)
                self._heed(piece, now_ms)
            except (StoreTrouble, DryingDropped):
                self._unfollowed.appendleft((before, piece))
                raise
        if not self._unfollowed:
            self.stacks.forget_log()
        return bool(self._unfollowed)

    def _try_out(self, piece: Piece, now_ms: int) -> None:
        """Refuse a piece whose coats could not be watched, before it is on disk."""
        known = dried_alike(self.pieces.get(piece.key), piece)
        for coat in piece.coats:
            if coat.laid_ms is None or dries_alike(known.get(coat.key), coat) or coat.sheet not in self.shelf.sheets:
                continue
            fault = coat_fault(coat, piece, self.shelf, now_ms)
            if fault:
                raise Refused(fault)

    def shift(self, step_ms: int) -> Sequence[Piece]:
        """Move all runs along with a wall clock that was set, and what was recorded of coats laid by it before.

        Returns
        -------
        sequence of Piece
            Those changed by it, to be put on disk: from there a restart takes the coats to be as old as they are.
        """
        for coat in (coat for piece in self.pieces.values() for coat in piece.coats if coat.key in self.runs):
            self.runs[coat.key].record(coat)
        for run in self.runs.values():
            run.shift(step_ms)
        ahead = {key for key, run in self.runs.items() if (run.coat.laid_ms or 0) > run.at_ms}
        self._laid_here |= ahead  # none that dries was laid in a time to come
        moved = {key: moved_along(piece, step_ms, self._laid_here) for key, piece in self.pieces.items()}
        changed = [piece for key, piece in moved.items() if piece != self.pieces[key]]
        self._unfollowed = deque(
            (before and moved_along(before, step_ms, self._laid_here), moved[piece.key])
            for before, piece in self._unfollowed
        )
        self.pieces = moved
        self.pile.map_pieces(lambda piece: moved_along(piece, step_ms, self._laid_here))
        for coat in (coat for piece in changed for coat in piece.coats if coat.key in self.runs):
            self.runs[coat.key].coat = coat
        return changed

    def note_step(self, now_ms: int, step_ms: int) -> ClockStep:
        """Remember a step of the clock after `shift`, and return it to be put on disk.

        A coat that is dried through the log from now on, here or after a restart, does not live what it left out.
        """
        on = {
            coat.key
            for piece in self.on_rack()
            for coat in piece.coats
            if coat.laid_ms is not None and coat.laid_ms <= now_ms - step_ms
        }
        step = ClockStep(time_ms=now_ms, step_ms=step_ms, stayed=frozenset(on - self._laid_here))
        self.stacks.clock_steps.append(step)
        return step

    def advance(self, air: Air, now_ms: int) -> list[StageHappened]:
        """Dry every coat in `air` until `now_ms`, beginning those whose time of laying has come.

        What the disk refused of what was learnt is tried again.
        """
        happened: list[StageHappened] = []
        for piece in self.on_rack():
            happened += self.stacks.advance(piece, air, now_ms)
            self._heed(piece, now_ms)
        self.stacks.forget_log()
        self.learning.save_rest()
        room = self.stacks.room
        due = [run for run in self.runs.values() if is_ahead_due(run, room, is_seen=self.stacks.is_seen)]
        self.is_behind = len(due) > AHEAD_AT_ONCE
        for run in due[:AHEAD_AT_ONCE]:
            run.look_ahead(room)
        return happened

    def _follow(self, before: Piece | None, piece: Piece, now_ms: int) -> None:
        """Bring the runs in line with a changed piece, re-running only what dries differently now."""
        if piece.archived:
            self.stacks.let_go(piece)
            self.learning.let_go(piece)
            return
        gone = self._let_go_of_coats(before, piece)
        is_back = before is not None and before.archived  # its runs were let go of when it left the rack
        known = {} if is_back else dried_alike(before, piece)
        changed = [coat for coat in piece.coats if not dries_alike(known.get(coat.key), coat)]
        for coat in piece.coats:
            run = self.runs.get(coat.key)
            if run is not None:
                run.record(coat)
                run.heard_ms = now_ms
        if gone or _reordered(before, piece):
            self.stacks.dry_through_log(piece, now_ms)
        elif changed and any(coat.laid_ms is not None for coat in changed):
            self.stacks.dry_through_log(piece, now_ms, changed[0])

    def _let_go_of_coats(self, before: Piece | None, piece: Piece) -> bool:
        """Let go of the coats that are not on any more, and what they taught; return whether there are any."""
        there = {coat.key: coat for coat in piece.coats}
        gone = is_unlearnt = False
        for coat in () if before is None else before.coats:
            now = there.get(coat.key)
            if coat.laid_ms is not None and (now is None or now.laid_ms is None):
                self.stacks.let_go_of(coat)
                is_unlearnt |= self.learning.forget(coat.key, is_there=now is not None)
                gone = True
            elif now is not None and coat.looks and not now.looks:
                is_unlearnt |= self.learning.forget(coat.key, is_there=True)
        if is_unlearnt:
            self._renew()
        return gone

    def _renew(self) -> None:
        """Have the ranges of all coats stand on what is held now."""
        for run in self.runs.values():
            self.learning.renew(run)

    def _heed(self, piece: Piece, now_ms: int) -> None:
        """Learn from her tests of a piece that were not heeded yet, drying it anew where they call for other draws."""
        for coat in piece.coats:
            run = self.runs.get(coat.key)
            if run is None or run.air is None or run.tests() == run.heeded:
                continue
            if run.tests() or run.heeded:
                run.look_ahead(self.stacks.room)
            self.learning.ready(run)
            if run.standing.surprise not in (None, *run.tests()):
                run = self._dried_anew(piece, coat, now_ms)
            while (standing := run.anew()) is not None and self.stacks.is_logged(run):
                self.learning.plan(coat, standing)
                run = self._dried_anew(piece, coat, now_ms)
            run.heeded = run.tests()
            if self.learning.keep(run):
                self._renew()

    def _dried_anew(self, piece: Piece, coat: Coat, now_ms: int) -> CoatRun:
        self.stacks.dry_through_log(piece, now_ms, coat)
        return self.runs[coat.key]


def _reordered(before: Piece | None, piece: Piece) -> bool:
    """Return whether coats that were on before lie on each other in another order now."""
    now = [coat.key for coat in piece.coats if coat.laid_ms is not None]
    old = [
        coat.key for coat in (() if before is None else before.coats) if coat.laid_ms is not None and coat.key in now
    ]
    return old != [key for key in now if key in old]
