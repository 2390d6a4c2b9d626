"""The desks of one studio, set up and tied to each other: who keeps what, over one set of records."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from studiowatch.service.best_hours_desk import BestHoursDesk, BestHoursWork
from studiowatch.service.calibration_desk import CalibrationDesk, CorrectedLog
from studiowatch.service.films_to_come import FilmsToCome, films_to_come
from studiowatch.service.intention_desk import IntentionDesk, vapour_on
from studiowatch.service.ledger import Ledger
from studiowatch.service.local_time import wall_clock
from studiowatch.service.log_air import remember
from studiowatch.service.plan_air import foretold_by
from studiowatch.service.plan_desk import PlanDesk, Work
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.preparation_desk import PreparationDesk
from studiowatch.service.prompt_desk import PromptDesk
from studiowatch.service.rack import Rack
from studiowatch.service.rack_seen import RackSeen
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.room_foretold import RoomForetold
from studiowatch.service.room_now import RoomNow
from studiowatch.service.sheet_desk import SheetDesk
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.taking_back import Desks
from studiowatch.service.verdicts import RoomChecks
from studiowatch.service.warning_desk import WarningDesk


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioDesks:
    """What is kept of a studio while it is watched; made by `set_up`.

    Attributes
    ----------
    seen : RackSeen
        What the rack looks like, made anew only where it changed.
    ahead : RoomAhead
        The room to come.
    undoable : Desks
        Those of them whose deeds can be taken back.
    """

    log: ReadingsLog
    ledger: Ledger
    calibrations: CalibrationDesk
    rack: Rack
    seen: RackSeen
    room: RoomNow
    ahead: RoomAhead
    warnings: WarningDesk
    checks: RoomChecks
    prompts: PromptDesk
    preparations: PreparationDesk
    intentions: IntentionDesk
    plans: PlanDesk
    best_hours: BestHoursDesk
    undoable: Desks

    @classmethod
    def set_up(
        cls,
        *,
        log: ReadingsLog,
        records: Records,
        shelf: SheetShelf,
        clock_text: Callable[[int], str],
        local_date: Callable[[int], date],
        began_ms: int,
        silent_after_s: float,
        plan_work: Work | None,
        best_hours_work: BestHoursWork | None,
        sheet_folder: SheetFolder | None,
        is_ending: Callable[[], bool],
    ) -> StudioDesks:
        """Set up the desks over a log and its records; see `Watchkeeping` for what is asked."""
        ledger = Ledger(log=log, records=records)
        calibrations = CalibrationDesk(records=records, disk=ledger.disk, log=log)
        corrected_log = CorrectedLog(log=log, corrected=calibrations.corrected)
        rack = Rack(shelf=shelf, records=records, log=corrected_log)
        warnings = WarningDesk(records=records, disk=ledger.disk, clock_text=clock_text, silent_after_s=silent_after_s)
        prompts = PromptDesk(records=records, disk=ledger.disk)
        intentions = IntentionDesk(records=records, clock=wall_clock(), vapour=lambda now_ms: vapour_on(rack, now_ms))
        ahead = RoomAhead(log=corrected_log, meant=intentions.ahead)
        foretold = RoomForetold(room=ahead)
        warnings.heading = foretold
        rack.stacks.room, rack.stacks.is_ending = ahead, is_ending
        plans = PlanDesk(rack=rack, records=records, clock=wall_clock(), work=plan_work, room_ahead=foretold_by(ahead))
        return cls(
            log=log,
            ledger=ledger,
            calibrations=calibrations,
            rack=rack,
            seen=RackSeen(rack=rack, local_date=local_date),
            room=RoomNow(began_ms=began_ms, correct=calibrations.corrected),
            ahead=ahead,
            warnings=warnings,
            checks=RoomChecks(rack=rack, desk=warnings, outlook=foretold),
            prompts=prompts,
            preparations=PreparationDesk(records=records, disk=ledger.disk),
            intentions=intentions,
            plans=plans,
            best_hours=BestHoursDesk(room=ahead, shelf=shelf, clock=wall_clock(), work=best_hours_work),
            undoable=Desks(
                rack=rack,
                prompts=prompts,
                warnings=warnings,
                plans=plans,
                intentions=intentions,
                sheets=SheetDesk(rack=rack, folder=sheet_folder),
            ),
        )

    def reopen(self, began_ms: int) -> str:
        """Take up the records; return why the last hours of the log could not be read, or ""."""
        self.calibrations.reopen()
        unread = remember(self.room, self.log)
        self.rack.take_up()
        self.warnings.reopen({piece.title: piece.key for piece in self.rack.on_rack()}, began_ms)
        self.prompts.reopen()
        self.preparations.reopen()
        self.plans.reopen()
        self.intentions.reopen()
        return unread

    def shift(self, step_ms: int) -> None:
        """Take everything along with a wall clock that was set."""
        self.seen.moved()
        self.ledger.keep(self.rack.shift(step_ms))
        self.room.shift(step_ms)
        self.warnings.shift(step_ms)
        self.rack.pile.shift_answers(step_ms)
        self.prompts.shift(step_ms)
        self.preparations.shift(step_ms)
        self.ahead.forget()

    def see(self, *, is_seen: bool) -> bool:
        """Take it whether somebody looks again, and return that.

        While nobody does, what is only shown is brought up to date seldom.
        """
        is_again = is_seen and not self.plans.is_seen
        self.rack.stacks.is_seen = self.plans.is_seen = self.best_hours.is_seen = is_seen
        return is_again

    def forget_views(self) -> None:
        """Show all anew: something was done."""
        self.seen.forget()
        self.checks.forget()

    def foretell_anew(self, now_ms: int) -> None:
        """Foretell the room at once: what is meant to be on in it has changed."""
        if self.ahead.outlook is not None:
            self.ahead.make(now_ms)
        for run in self.rack.runs.values():
            run.heed_the_room()
        self.plans.heed_the_room()

    def films_to_come(self, now_ms: int) -> FilmsToCome:
        """Return the films of the pieces that wait for something, lent to ask what another room would make of them."""
        vapour = vapour_on(self.rack, now_ms)
        return films_to_come(self.rack, self.ahead, self.room.air_now(now_ms), now_ms, vapour)
