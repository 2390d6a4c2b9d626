"""The watch itself: each reading dries every coat and is judged; commands are carried out. No thread here.

First the room is judged, then what is wrong is said, and only then anything is written: no disk holds up a warning.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date

from studiowatch.board.events import BoardEvent, BoardTrouble, ReadingArrived
from studiowatch.room.readings import Reading
from studiowatch.service.best_hours_desk import BestHoursDesk, BestHoursWork
from studiowatch.service.board_now import followed, noted, stands_otherwise
from studiowatch.service.board_view import BoardView
from studiowatch.service.calibration_desk import CalibrationDesk, CorrectedLog
from studiowatch.service.clock import JumpWatch
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.commands import (
    BoardCommand,
    CalibrationCommand,
    Command,
    HearWarning,
    OutsideCommand,
    PlanCommand,
    Refused,
    RemindLater,
    SnoozePrompt,
    SpeakIn,
    TakeLogged,
    TickPrompt,
    TypeReading,
)
from studiowatch.service.correction_commands import Redo, TakePhoto, Undo
from studiowatch.service.curve_desk import CurveDesk
from studiowatch.service.deed_words import answer_words, meant_words, plan_words
from studiowatch.service.films_to_come import FilmsToCome, films_to_come
from studiowatch.service.happenings import Happening
from studiowatch.service.intention_commands import DropIntention, IntentionCommand
from studiowatch.service.intention_desk import IntentionDesk, vapour_on
from studiowatch.service.leavings import Leavings
from studiowatch.service.ledger import Ledger
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.local_time import wall_clock
from studiowatch.service.log_air import TICK_MS, remember
from studiowatch.service.outside_desk import OutsideDesk
from studiowatch.service.plan_air import foretold_by
from studiowatch.service.plan_desk import PlanDesk, Work
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.preparation_commands import PreparationCommand
from studiowatch.service.preparation_desk import PreparationDesk
from studiowatch.service.prompt_desk import PromptDesk
from studiowatch.service.rack import Rack
from studiowatch.service.rack_seen import RackSeen
from studiowatch.service.rack_tending import coats_to_tend
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.room_foretold import RoomForetold
from studiowatch.service.room_now import RoomNow
from studiowatch.service.room_views import room_view
from studiowatch.service.sheet_commands import SheetCommand
from studiowatch.service.sheet_desk import SheetDesk
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.stacks import DryingDropped
from studiowatch.service.taking_back import Desks, take_back
from studiowatch.service.typing_in import typed
from studiowatch.service.undo_pile import Deed
from studiowatch.service.verdicts import RoomChecks, sentence_now
from studiowatch.service.warning_desk import WarningDesk
from studiowatch.speech.words import say
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import Kind
from studiowatch.studio.plan_shapes import FinishingPlan
from studiowatch.studio.review_curves import Curves
from studiowatch.studio.sentence import OPENING
from studiowatch.studio.watch import SILENT_AFTER_S

ADVANCE_MS = 5_000  # ms of readings that dry the films in one step
AtRack = TickPrompt | SnoozePrompt | PreparationCommand | IntentionCommand
JUDGE_EVERY_MS = 1_000  # ms without a reading after which the room is judged by the clock alone


@dataclass(slots=True)
class Watchkeeping:
    """Keeps the watch over one studio. `now_s` is the monotonic clock, s; `now_ms` is UTC, ms.

    Attributes
    ----------
    changed : bool
        Whether anything happened since the last snapshot that is to be seen at once.
    drifted : bool
        Whether it is only that time went on: the room was read, films dried, a plan was made anew.
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
    changed: bool = True
    drifted: bool = False
    is_opening: bool = False
    own_fault: str = ""
    _ledger: Ledger = field(init=False)
    _calibrations: CalibrationDesk = field(init=False)
    _rack: Rack = field(init=False)
    _seen: RackSeen = field(init=False)
    _room: RoomNow = field(init=False)
    _warnings: WarningDesk = field(init=False)
    _prompts: PromptDesk = field(init=False)
    _preparations: PreparationDesk = field(init=False)
    _foretold: RoomForetold = field(init=False)
    _checks: RoomChecks = field(init=False)
    _ahead: RoomAhead = field(init=False)
    _plans: PlanDesk = field(init=False)
    _best_hours: BestHoursDesk = field(init=False)
    _intentions: IntentionDesk = field(init=False)
    _jumps: JumpWatch = field(default_factory=JumpWatch)
    _board: BoardView = field(default_factory=BoardView)
    _unsaid: deque[Happening] = field(default_factory=deque)
    _runs: dict[str, CoatRun] = field(default_factory=dict)
    _unfollowed: bool = False
    _unread: str = ""
    _dried_ms: int | None = None
    _judged_ms: int | None = None

    def __post_init__(self) -> None:
        self._ledger = Ledger(log=self.log, records=self.records)
        self._calibrations = CalibrationDesk(records=self.records, disk=self._ledger.disk, log=self.log)
        log = CorrectedLog(log=self.log, corrected=self._calibrations.corrected)
        self._rack = Rack(shelf=self.shelf, records=self.records, log=log)
        self._seen = RackSeen(rack=self._rack, local_date=self.local_date)
        self._room = RoomNow(began_ms=self.began_ms, correct=self._calibrations.corrected)
        self._warnings = WarningDesk(
            records=self.records,
            disk=self._ledger.disk,
            clock_text=self.clock_text,
            silent_after_s=self.silent_after_s,
        )
        self._prompts = PromptDesk(records=self.records, disk=self._ledger.disk)
        self._preparations = PreparationDesk(records=self.records, disk=self._ledger.disk)
        self._intentions = IntentionDesk(
            records=self.records, clock=wall_clock(), vapour=lambda now_ms: vapour_on(self._rack, now_ms)
        )
        self._ahead = RoomAhead(log=log, meant=self._intentions.ahead)
        self._foretold = RoomForetold(room=self._ahead)
        self._warnings.heading = self._foretold
        self._checks = RoomChecks(rack=self._rack, desk=self._warnings, outlook=self._foretold)
        self._rack.stacks.room = self._ahead
        self._rack.stacks.is_ending = self._ends
        self._plans = PlanDesk(
            rack=self._rack,
            records=self.records,
            clock=wall_clock(),
            work=self.plan_work,
            room_ahead=foretold_by(self._ahead),
        )
        self._best_hours = BestHoursDesk(
            room=self._ahead, shelf=self.shelf, clock=wall_clock(), work=self.best_hours_work
        )

    @property
    def _desks(self) -> Desks:
        return Desks(
            rack=self._rack,
            prompts=self._prompts,
            warnings=self._warnings,
            plans=self._plans,
            intentions=self._intentions,
            sheets=SheetDesk(rack=self._rack, folder=self.sheet_folder),
        )

    def open(self) -> None:
        """Take up the records, and dry every laid coat through the log."""
        self.take_up()
        while self.is_opening:
            self._open_next(self.began_ms)
        self._prompts.settle(coats_to_tend(self._rack, self._room.typed_ms), self.began_ms)
        if self._ahead.outlook is not None and self._intentions.meant:
            self._ahead.make(self.began_ms)  # now that it is known what gives off vapour

    def take_up(self) -> None:
        """Take up the records; each `look` then dries the coats of one piece, and nothing is judged until all are."""
        self._calibrations.reopen()
        self._unread = remember(self._room, self.log)
        self._unfollowed = bool(self._unread)
        self._rack.take_up()
        self._warnings.reopen({piece.title: piece.key for piece in self._rack.on_rack()}, self.began_ms)
        self._prompts.reopen()
        self._preparations.reopen()
        self._plans.reopen()
        self._intentions.reopen()
        self.is_opening = True

    def weigh_by(self, curves: Curves) -> None:
        """Weigh the risk of each coat by these curves from now on."""
        self._rack.stacks.curves = curves
        self._seen.moved()

    def _open_next(self, now_ms: int) -> None:
        self.changed = True
        self._seen.moved()
        try:
            self.is_opening = self._rack.follow_next(now_ms)
        except DryingDropped:
            self._drop()
            return
        except StoreTrouble as trouble:
            self.is_opening, self._unfollowed, self._unread = False, True, str(trouble)
        if not self.is_opening:
            self._judged_ms = None  # the next look judges at once what was dried until now

    def take(self, event: BoardEvent, now_s: float) -> None:
        """Take one event of the board."""
        self.drifted = True
        self._calibrations.take(event)
        before, self._board = self._board, followed(self._board, event)
        self.changed |= stands_otherwise(before, self._board)
        if (note := noted(before, self._board, event)) is not None:
            self._ledger.note(*note)
        if isinstance(event, ReadingArrived):
            self._read(event.reading, now_s)
        elif isinstance(event, BoardTrouble):
            self._room.fail(event.time_ms)

    def _read(self, reading: Reading, now_s: float) -> None:
        self._ledger.add(reading, now_s)
        self._room.take(reading)
        self._judge(reading.time_ms)
        since_ms = reading.time_ms - (self._dried_ms or 0)
        if not (self.is_opening or self.is_ending() or 0 <= since_ms < ADVANCE_MS):
            self._dry(reading.time_ms)

    def _dry(self, now_ms: int) -> None:
        air = self._room.mean_air(now_ms)
        self._dried_ms = now_ms
        try:
            self._unsaid += () if air is None else self._rack.advance(air, now_ms)
        except DryingDropped:
            self._drop()
            return
        self._seen.moved()
        self._tend(now_ms)

    def _ends(self) -> bool:
        """Return whether the watch is to end, as whoever runs it says: it is told so after it was made."""
        return self.is_ending()

    def _drop(self) -> None:
        """Judge nothing any more: a film stands somewhere between its laying and now."""
        self.is_opening = self._unfollowed = True

    def _tend(self, now_ms: int) -> None:
        corrected = {key for key, run in self._runs.items() if self._rack.runs.get(key, run) is not run}
        self._runs = dict(self._rack.runs)
        self._prompts.settle(coats_to_tend(self._rack, self._room.typed_ms), now_ms, corrected=corrected)
        self._prompts.reminder = self._calibrations.reminder(now_ms, self._rack)
        self._preparations.settle(self._rack, now_ms)
        self._ahead.look(self._room.air_now(now_ms), now_ms)
        if not self._is_waiting(now_ms):
            self._unsaid += self._prompts.due(now_ms)
            self._unsaid += self._preparations.due(self._rack, now_ms)
        self.changed |= bool(self._unsaid)

    def _judge(self, now_ms: int) -> None:
        self._judged_ms = now_ms
        if self._is_waiting(now_ms):
            return
        happened = self._warnings.settle(self._room.air_now(now_ms), self._seen.facts.at_risk, now_ms)
        self._unsaid += happened
        self.changed |= bool(happened)

    def _is_waiting(self, now_ms: int) -> bool:
        """Return whether coats, or the first reading, are still to come: until then an empty room says nothing."""
        is_young = 0 <= now_ms - self._room.began_ms <= self.silent_after_s * 1000
        return self.is_opening or (self._board.last_ms is None and is_young)

    def speak(self) -> None:
        """Tell what happened since the last call; what cannot be told is not tried again."""
        while self._unsaid:
            self.tell(self._unsaid.popleft())

    def carry_out(self, command: Command, now_ms: int, now_s: float) -> str:
        """Carry out a command; on return it is on disk. Films and warnings follow with the next look.

        That a warning was heard or put off holds at once, and is on disk as soon as that takes it.

        Raises
        ------
        Refused
            If it cannot be done, with one sentence for her; nothing was changed.
        """
        if isinstance(command, LendFilms):
            command.to(self.films_to_come(now_ms))
            return ""
        self.changed = True
        try:
            if isinstance(command, OutsideCommand):
                return self._take_outside(command, now_ms)
            return self._carried_out(command, now_ms, now_s)
        except StoreTrouble as trouble:
            raise Refused(str(trouble)) from trouble
        finally:
            self._forget()

    def _carried_out(self, command: Command, now_ms: int, now_s: float) -> str:
        match command:
            case HearWarning() | RemindLater() | SpeakIn():
                return self._carry_out_at_warnings(command, now_ms)
            case _ if isinstance(command, AtRack):
                return self._carry_out_at_rack(command, now_ms, now_s)
            case Undo() | Redo():
                self._ledger.catch_up(now_s)
                key = self._take_back(command, now_ms)
            case TypeReading():
                key = self._type_in(command, now_ms, now_s)
            case _ if isinstance(command, CalibrationCommand):
                self._ledger.catch_up(now_s)
                self._ledger.flush(now_s)
                key = self._calibrations.carry_out(command, now_ms, self._rack)
            case _ if isinstance(command, SheetCommand | BoardCommand | TakePhoto | OutsideCommand | LendFilms):
                key = self._carry_out_on_a_file(command)
            case _ if isinstance(command, PlanCommand):
                before = self._plans.as_it_is(command)
                key = self._plans.carry_out(command)
                self._rack.pile.record(Deed(words=plan_words(command), planned=(before, command)))
            case _:
                key = self._rack.carry_out(command, now_ms)
                self._preparations.heed(command)
        self._unfollowed = True
        self._plans.mark()
        self.curves.heed(command)
        return key

    def _take_back(self, command: Undo | Redo, now_ms: int) -> str:
        meant = self._intentions.meant
        key, happened = take_back(command, self._desks, now_ms)
        self._unsaid += happened
        if self._intentions.meant != meant:
            self._foretell_anew(now_ms)
        return key

    def _carry_out_on_a_file(
        self, command: SheetCommand | BoardCommand | TakePhoto | OutsideCommand | LendFilms
    ) -> str:
        """Carry out what is done to a sheet of hers; the rest is done by whoever has a board and photos."""
        if isinstance(command, SheetCommand):
            return self._desks.sheets.carry_out(command)
        raise Refused(say("No board is read and no file is kept here, so that cannot be done."))

    def _carry_out_at_rack(self, command: AtRack, now_ms: int, now_s: float) -> str:
        """Carry out what moves no film: it is on disk on return, and seen with the next snapshot."""
        self._ledger.catch_up(now_s)
        match command:
            case TickPrompt():
                ticked = self._prompts.tick(command.prompt_key, now_ms)
                if ticked is not None:
                    self._rack.pile.record(Deed(words=say("ticked off “{text}”", text=ticked.text), ticked=ticked))
            case SnoozePrompt():
                prompt, *told = self._prompts.snooze(command.prompt_key, command.until_ms, now_ms)
                words = say("put off “{text}”", text=prompt.headline)
                self._rack.pile.record(Deed(words=words, put_off=(told[0], told[1])))
            case _ if isinstance(command, IntentionCommand):
                return self._intend(command, now_ms)
            case _:
                return self._preparations.carry_out(command, self._rack, now_ms)
        return command.prompt_key

    def _intend(self, command: IntentionCommand, now_ms: int) -> str:
        """Keep or forget what she means to do with the room, and foretell it anew at once."""
        before = self._intentions.one(command.intention_key) if isinstance(command, DropIntention) else None
        key = self._intentions.carry_out(command, now_ms)
        after = self._intentions.one(key)
        self._rack.pile.record(Deed(words=meant_words(before, after), meant=(before, after)))
        self._foretell_anew(now_ms)
        return key

    def _foretell_anew(self, now_ms: int) -> None:
        if self._ahead.outlook is not None:
            self._ahead.make(now_ms)
        for run in self._rack.runs.values():
            run.heed_the_room()
        self._plans.heed_the_room()

    def _carry_out_at_warnings(self, command: HearWarning | RemindLater | SpeakIn, now_ms: int) -> str:
        """Carry out what changes how warnings stand or are said; open ones are said in other units at once."""
        if isinstance(command, SpeakIn):
            self._warnings.units = command.units
            self._judge(now_ms)
            return ""
        before = self._warnings.open_one(command.warning_key)
        if isinstance(command, HearWarning):
            happened = self._warnings.hear(command.warning_key, now_ms)
        else:
            happened = self._warnings.remind(command.warning_key, command.until_ms, now_ms)
        if before is not None and happened:
            words = answer_words(command, before)
            self._rack.pile.record(Deed(words=words, answered=(before, happened[0].warning)))
        self._unsaid += happened
        return command.warning_key

    def _take_outside(self, command: OutsideCommand, now_ms: int) -> str:
        """Take readings from outside, a slice at a time; the coats that they tell of are dried anew at the end."""
        if self.outside is None:
            raise Refused(say("Nothing can be taken in here: this watch keeps no log."))
        if isinstance(command, TakeLogged):
            return self.outside.take(command.readings, now_ms)
        self.records.note(now_ms, "import", command.text)
        self._calibrations.take_imported()
        if self.outside.concerns(self._rack, command):
            self._rack.dry_anew()
            self._unfollowed = True
        return ""

    def _forget(self) -> None:
        """Show all anew: something was done."""
        self._seen.forget()
        self._checks.forget()

    def _type_in(self, command: TypeReading, now_ms: int, now_s: float) -> str:
        """Take a reading that she typed; the films dry in it, as it grows older, until the next."""
        reading = typed(command, self._room, now_ms=now_ms)
        self._ledger.put(reading, now_s)
        if self._room.typed_ms is not None and not self.is_opening:
            self._dry(reading.time_ms)
        self._room.take(reading)
        if now_ms - reading.time_ms >= TICK_MS:
            self._rack.dry_anew()
        return str(reading.time_ms)

    def look(self, now_ms: int, now_s: float, overflowed: int = 0) -> None:
        """Look at the clock: notice silence, prompts, jumps and overflow. Nothing is written here."""
        self.mind_the_clock(now_ms, now_s)
        if self.is_ending():
            self._plans.close()
        else:
            self._bring_up(now_ms)
        if overflowed != self._board.overflowed:
            lost = overflowed - self._board.overflowed
            self._ledger.note(
                now_ms, "overflow", say("{count} readings came faster than they could be kept.", count=lost)
            )
            self._board = replace(self._board, overflowed=overflowed)
            self.changed = True

    def _bring_up(self, now_ms: int) -> None:
        """Bring films, warnings, prompts and the plan up to now."""
        if self.is_opening:
            self._open_next(now_ms)
        elif self._unfollowed:
            self._follow(now_ms)
        elif self._judged_ms is None or abs(now_ms - self._judged_ms) >= JUDGE_EVERY_MS:
            self.drifted = True
            self._judge(now_ms)
            is_held = self._room.typed_ms is not None and now_ms - (self._dried_ms or 0) >= TICK_MS
            (self._dry if is_held else self._tend)(now_ms)
        if not self.is_opening and not self._unfollowed and self._plans.tend(self._room.air(now_ms), now_ms):
            self.drifted = True
        self._take_curves()

    def _take_curves(self) -> None:
        if (learnt := self.curves.tend()) is not None:
            self.weigh_by(learnt)
            self.changed = True

    def _follow(self, now_ms: int) -> None:
        """Bring films, warnings and prompts in line with what she changed."""
        self._unfollowed, self._unread = False, ""
        self._seen.moved()
        try:
            self._rack.follow(now_ms)
        except DryingDropped:
            self._drop()
            return
        except StoreTrouble as trouble:
            self._unfollowed, self._unread = True, str(trouble)
        self._dry(now_ms)
        self._judge(now_ms)

    def write(self, now_ms: int, now_s: float) -> None:
        """Put on disk what waits, and pack an old hour unless something waits for this thread."""
        before = self._ledger.trouble
        self._ledger.write(now_ms, now_s, packs=not (self.is_opening or self.is_ending()))
        self.changed |= self._ledger.trouble != before

    def mind_the_clock(self, now_ms: int, now_s: float) -> None:
        """Notice a wall clock that was set, and take everything along: its step is no drying time."""
        jump_s = self._jumps.look(now_ms, now_s)
        if not jump_s:
            return
        step_ms = round(jump_s * 1000)
        self._seen.moved()
        self._ledger.keep(self._rack.shift(step_ms))
        self._room.shift(step_ms)
        self._prompts.shift(step_ms)
        self._preparations.shift(step_ms)
        self._ahead.forget()
        self._dried_ms = None if self._dried_ms is None else self._dried_ms + step_ms
        self._judged_ms = None
        self._ledger.note(now_ms, "clock-set", say("The clock was set by {seconds} s.", seconds=f"{jump_s:+.0f}"))

    def foretell(self, now_ms: int) -> None:
        """Read the last weeks of the room at once, so that what is told from now on knows how it may go."""
        self._ahead.read_whole(now_ms)

    def make_plan(self, now_ms: int) -> FinishingPlan:
        """Return the finishing plan, made here and now."""
        return self._plans.make(self._room.air(now_ms), now_ms)

    def films_to_come(self, now_ms: int) -> FilmsToCome:
        """Return the films of the pieces that wait for something, lent to ask what another room would make of them."""
        vapour = vapour_on(self._rack, now_ms)
        return films_to_come(self._rack, self._ahead, self._room.air_now(now_ms), now_ms, vapour)

    def snapshot(self, now_ms: int) -> Snapshot:
        """Return the studio at this moment."""
        self.changed = self.drifted = False
        self._desks.forget_lapsed()
        rack, air = self._seen.facts, self._room.air_now(now_ms)
        silent = any(concern.kind is Kind.BOARD_SILENT for concern in self._warnings.concerns)
        return Snapshot(
            time_ms=now_ms,
            board=replace(self._board, silent=silent, health=self._room.health.sentence),
            room=room_view(self._room, air, rack.at_risk, now_ms),
            sentence=OPENING.said
            if self.is_opening
            else sentence_now(rack, self._room, self._warnings, self._board, now_ms),
            pieces=self._plans.told(self._seen.views(now_ms)),
            prompts=self._prompts.views(now_ms),
            preparations=self._preparations.views(self._rack, now_ms),
            vapour_near=rack.vapour,
            warnings=self._warnings.views(),
            room_checks=self._checks.told(air, now_ms),
            learnt=self._rack.learning.views(),
            calibrations=self._calibrations.view(self._rack),
            store_trouble=self._ledger.trouble or self._rack.trouble or self._unread,
            plan=self._plans.plan,
            best_hours=self._best_hours.views(self._plans.plan, self._plans.hours, now_ms, self._intentions.meant),
            intentions=self._intentions.views(now_ms),
            recipes=self._plans.recipes,
            hours=self._plans.hours,
            own_fault=self.own_fault,
            archived=rack.archived,
            undo=self._rack.pile.view(),
            room_band=self._ahead.band,
            units=self._warnings.units,
        )

    def close(self, now_s: float) -> None:
        """Put all that waits on disk and let go of the store; see `leavings`."""
        self._plans.close()
        try:
            self._ledger.close(now_s)
        finally:
            self.shut()

    def leavings(self) -> Leavings:
        """Return what is not on disk."""
        return self._ledger.leavings()
