"""The watch itself, from what comes in to what is told, shown and written. No thread here.

First the room is judged, then what is wrong is said, and only then anything is written: no disk holds up a warning.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date

from studiowatch.board.events import BoardEvent, BoardTrouble, ReadingArrived
from studiowatch.service.best_hours_desk import BestHoursWork
from studiowatch.service.board_now import followed, noted, stands_otherwise
from studiowatch.service.clock import JumpWatch
from studiowatch.service.command_desk import CommandDesk
from studiowatch.service.commands import Command
from studiowatch.service.curve_desk import CurveDesk
from studiowatch.service.films_to_come import FilmsToCome
from studiowatch.service.happenings import Happening
from studiowatch.service.leavings import Leavings
from studiowatch.service.outside_desk import OutsideDesk
from studiowatch.service.plan_desk import Work
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.rounds import Rounds
from studiowatch.service.set_clock import CLOCK_STEP
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.studio_desks import StudioDesks
from studiowatch.service.studio_now import studio_now
from studiowatch.speech.words import say
from studiowatch.studio.plan_shapes import FinishingPlan
from studiowatch.studio.review_curves import Curves
from studiowatch.studio.watch import SILENT_AFTER_S


@dataclass(slots=True)
class Watchkeeping:
    """Keeps the watch over one studio. `now_s` is the monotonic clock, s; `now_ms` is UTC, ms.

    Attributes
    ----------
    own_fault : str
        One sentence after a fault of ours, set by whoever caught it, else "".
    tell : callable
        Called by `speak` with each happening, before it is on disk.
    plan_work : callable or None
        Has finishing plans made; without it none is made but when it is asked for.
    best_hours_work : callable or None
        Has the best hours worked out; without it that is done when they are asked for.
    shut : callable
        Called last of all, to let go of the store.
    outside : OutsideDesk or None
        Takes readings from outside; None where there is no log of hers.
    sheet_folder : SheetFolder or None
        Keeps data sheets of hers; None where none are kept.
    is_ending : callable
        Whether the watch is to end; no coat is then dried and no plan made any more: the records hold all.
    curves : CurveDesk
        Has the curves that weigh the risks learnt anew after an outcome.
    """

    log: ReadingsLog
    records: Records
    shelf: SheetShelf
    clock_text: Callable[[int], str]
    local_date: Callable[[int], date]
    began_ms: int
    tell: Callable[[Happening], None] = lambda _: None
    shut: Callable[[], None] = lambda: None
    plan_work: Work | None = None
    best_hours_work: BestHoursWork | None = None
    silent_after_s: float = SILENT_AFTER_S
    outside: OutsideDesk | None = None
    sheet_folder: SheetFolder | None = None
    is_ending: Callable[[], bool] = lambda: False
    curves: CurveDesk = field(default_factory=CurveDesk)
    own_fault: str = ""
    desks: StudioDesks = field(init=False)
    _rounds: Rounds = field(init=False)
    _commands: CommandDesk = field(init=False)
    _jumps: JumpWatch = field(default_factory=JumpWatch)

    def __post_init__(self) -> None:
        self.desks = StudioDesks.set_up(
            log=self.log,
            records=self.records,
            shelf=self.shelf,
            clock_text=self.clock_text,
            local_date=self.local_date,
            began_ms=self.began_ms,
            silent_after_s=self.silent_after_s,
            plan_work=self.plan_work,
            best_hours_work=self.best_hours_work,
            sheet_folder=self.sheet_folder,
            is_ending=self._ends,
        )
        self._rounds = Rounds(
            desks=self.desks, curves=self.curves, silent_after_s=self.silent_after_s, is_ending=self._ends
        )
        self._commands = CommandDesk(
            rounds=self._rounds, records=self.records, outside=self.outside, curves=self.curves
        )

    def _ends(self) -> bool:
        """Return whether the watch is to end, as whoever runs it says: it is told so after it was made."""
        return self.is_ending()

    @property
    def changed(self) -> bool:
        """Whether anything happened since the last snapshot that is to be seen at once."""
        return self._rounds.changed

    @changed.setter
    def changed(self, changed: bool) -> None:
        self._rounds.changed = changed

    @property
    def drifted(self) -> bool:
        """Whether it is only that time went on: the room was read, films dried, a plan was made anew."""
        return self._rounds.drifted

    @property
    def is_stirred(self) -> bool:
        """Whether the next reading may tell that the air moves."""
        return self.desks.room.movement.is_rising

    @property
    def is_opening(self) -> bool:
        """Whether coats are still to be dried through the log."""
        return self._rounds.is_opening

    def open(self) -> None:
        """Take up the records, and dry every laid coat through the log."""
        self.take_up()
        while self.is_opening:
            self._rounds.open_next(self.began_ms)
        self._rounds.settle_prompts(self.began_ms)
        if self.desks.ahead.outlook is not None and self.desks.intentions.meant:
            self.desks.ahead.make(self.began_ms)  # now that it is known what gives off vapour

    def take_up(self) -> None:
        """Take up the records; each `look` then dries the coats of one piece, and nothing is judged until all are."""
        self._rounds.begin(self.began_ms)

    def weigh_by(self, curves: Curves) -> None:
        """Weigh the risk of each coat by these curves from now on."""
        self._rounds.weigh_by(curves)

    def take(self, event: BoardEvent, now_s: float, *, is_followed: bool = False) -> None:
        """Take one event of the board; `is_followed` says that a reading after it is there already."""
        rounds, desks = self._rounds, self.desks
        rounds.drifted = True
        desks.calibrations.take(event)
        before, rounds.board = rounds.board, followed(rounds.board, event)
        rounds.changed |= stands_otherwise(before, rounds.board)
        if (note := noted(before, rounds.board, event)) is not None:
            desks.ledger.note(*note)
        if isinstance(event, ReadingArrived):
            desks.ledger.add(event.reading, now_s)
            rounds.read(event.reading, is_followed=is_followed)
        elif isinstance(event, BoardTrouble):
            desks.room.fail(event.time_ms)

    def speak(self) -> None:
        """Tell what happened since the last call; what cannot be told is not tried again."""
        while self._rounds.unsaid:
            self.tell(self._rounds.unsaid.popleft())

    def carry_out(self, command: Command, now_ms: int, now_s: float) -> str:
        """Carry out a command; see `CommandDesk`. Films and warnings follow with the next look."""
        return self._commands.carry_out(command, now_ms, now_s)

    def look(self, now_ms: int, now_s: float, overflowed: int = 0, *, is_seen: bool = True) -> None:
        """Look at the clock: notice silence, prompts, jumps and overflow. Nothing is written here.

        While it is not seen what is only shown is brought up to date seldom.
        """
        rounds = self._rounds
        if self.desks.see(is_seen=is_seen):
            rounds.catch_up()
        self.mind_the_clock(now_ms, now_s)
        if self.is_ending():
            self.desks.plans.close()
        else:
            rounds.bring_up(now_ms)
        if overflowed != rounds.board.overflowed:
            lost = overflowed - rounds.board.overflowed
            words = say("{count} readings came faster than they could be kept.", count=lost)
            self.desks.ledger.note(now_ms, "overflow", words)
            rounds.board = replace(rounds.board, overflowed=overflowed)
            rounds.changed = True

    def write(self, now_ms: int, now_s: float) -> None:
        """Put on disk what waits, and pack an old hour unless something waits for this thread."""
        ledger = self.desks.ledger
        before = ledger.trouble
        ledger.write(now_ms, now_s, packs=not (self.is_opening or self.is_ending()))
        self._rounds.changed |= ledger.trouble != before

    def mind_the_clock(self, now_ms: int, now_s: float) -> None:
        """Notice a wall clock that was set, and take everything along: its step is no drying time."""
        jump_s = self._jumps.look(now_ms, now_s)
        if jump_s:
            step_ms = round(jump_s * 1000)
            self._rounds.shift(step_ms)
            self.desks.ledger.note(now_ms, CLOCK_STEP, self.desks.rack.note_step(now_ms, step_ms).written())
            words = say("The clock was set by {seconds} s.", seconds=f"{jump_s:+.0f}")
            self.desks.ledger.note(now_ms, "clock-set", words)

    def foretell(self, now_ms: int) -> None:
        """Read the last weeks of the room at once, so that what is told from now on knows how it may go."""
        self.desks.ahead.read_whole(now_ms)

    def make_plan(self, now_ms: int) -> FinishingPlan:
        """Return the finishing plan, made here and now."""
        return self.desks.plans.make(self.desks.room.air(now_ms), now_ms)

    def films_to_come(self, now_ms: int) -> FilmsToCome:
        """Return the films of the pieces that wait for something, lent to ask what another room would make of them."""
        return self.desks.films_to_come(now_ms)

    def snapshot(self, now_ms: int) -> Snapshot:
        """Return the studio at this moment."""
        self._rounds.changed = self._rounds.drifted = False
        return studio_now(self._rounds, now_ms, self.own_fault)

    def close(self, now_s: float) -> None:
        """Put all that waits on disk and let go of the store; see `leavings`."""
        self.desks.plans.close()
        try:
            self.desks.ledger.close(now_s)
        finally:
            self.shut()

    def leavings(self) -> Leavings:
        """Return what is not on disk."""
        return self.desks.ledger.leavings()
