"""Where commands go while a studio is watched: each is carried out by the desk that it is for."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.service.calibration_commands import CalibrationCommand
from studiowatch.service.commands import (
    BoardCommand,
    Command,
    HearWarning,
    OutsideCommand,
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
from studiowatch.service.intention_commands import DropIntention, IntentionCommand
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.log_air import TICK_MS
from studiowatch.service.outside_desk import OutsideDesk
from studiowatch.service.plan_commands import PlanCommand
from studiowatch.service.ports import Records
from studiowatch.service.preparation_commands import PreparationCommand
from studiowatch.service.rounds import Rounds
from studiowatch.service.sheet_commands import SheetCommand
from studiowatch.service.studio_desks import StudioDesks
from studiowatch.service.taking_back import take_back
from studiowatch.service.typing_in import typed
from studiowatch.service.undo_pile import Deed
from studiowatch.speech.words import say
from studiowatch.store.trouble import StoreTrouble

AtRack = TickPrompt | SnoozePrompt | PreparationCommand | IntentionCommand


@dataclass(frozen=True, slots=True, kw_only=True)
class CommandDesk:
    """Carries out commands at the desks of one studio, between two rounds.

    Attributes
    ----------
    outside : OutsideDesk or None
        Takes readings from outside; None where there is no log of hers.
    curves : CurveDesk
        Has the curves that weigh the risks learnt anew after an outcome.
    """

    rounds: Rounds
    records: Records
    outside: OutsideDesk | None
    curves: CurveDesk

    @property
    def desks(self) -> StudioDesks:
        """The desks of the studio."""
        return self.rounds.desks

    def carry_out(self, command: Command, now_ms: int, now_s: float) -> str:
        """Carry out a command; on return it is on disk. Films and warnings follow with the next look.

        That a warning was heard or put off holds at once, and is on disk as soon as that takes it.

        Raises
        ------
        Refused
            If it cannot be done, with one sentence for her; nothing was changed.
        """
        if isinstance(command, LendFilms):
            command.to(self.desks.films_to_come(now_ms))
            return ""
        self.rounds.changed = True
        try:
            if isinstance(command, OutsideCommand):
                return self._take_outside(command, now_ms)
            return self._carried_out(command, now_ms, now_s)
        except StoreTrouble as trouble:
            raise Refused(str(trouble)) from trouble
        finally:
            self.desks.forget_views()

    def _carried_out(self, command: Command, now_ms: int, now_s: float) -> str:
        match command:
            case HearWarning() | RemindLater() | SpeakIn():
                return self._carry_out_at_warnings(command, now_ms)
            case _ if isinstance(command, AtRack):
                return self._carry_out_at_rack(command, now_ms, now_s)
            case Undo() | Redo():
                self.desks.ledger.catch_up(now_s)
                key = self._take_back(command, now_ms)
            case TypeReading():
                key = self._type_in(command, now_ms, now_s)
            case _ if isinstance(command, CalibrationCommand):
                self.desks.ledger.catch_up(now_s)
                self.desks.ledger.flush(now_s)
                key = self.desks.calibrations.carry_out(command, now_ms, self.desks.rack)
            case _ if isinstance(command, SheetCommand | BoardCommand | TakePhoto | OutsideCommand | LendFilms):
                key = self._carry_out_on_a_file(command)
            case _ if isinstance(command, PlanCommand):
                before = self.desks.plans.as_it_is(command)
                key = self.desks.plans.carry_out(command)
                self.desks.rack.pile.record(Deed(words=plan_words(command), planned=(before, command)))
            case _:
                key = self.desks.rack.carry_out(command, now_ms)
                self.desks.preparations.heed(command)
        self.rounds.unfollowed = True
        self.desks.plans.mark()
        self.curves.heed(command)
        return key

    def _take_back(self, command: Undo | Redo, now_ms: int) -> str:
        meant = self.desks.intentions.meant
        key, happened = take_back(command, self.desks.undoable, now_ms)
        self.rounds.unsaid += happened
        if self.desks.intentions.meant != meant:
            self.desks.foretell_anew(now_ms)
        return key

    def _carry_out_on_a_file(
        self, command: SheetCommand | BoardCommand | TakePhoto | OutsideCommand | LendFilms
    ) -> str:
        """Carry out what is done to a sheet of hers; the rest is done by whoever has a board and photos."""
        if isinstance(command, SheetCommand):
            return self.desks.undoable.sheets.carry_out(command)
        raise Refused(say("No board is read and no file is kept here, so that cannot be done."))

    def _carry_out_at_rack(self, command: AtRack, now_ms: int, now_s: float) -> str:
        """Carry out what moves no film: it is on disk on return, and seen with the next snapshot."""
        self.desks.ledger.catch_up(now_s)
        match command:
            case TickPrompt():
                ticked = self.desks.prompts.tick(command.prompt_key, now_ms)
                if ticked is not None:
                    self.desks.rack.pile.record(Deed(words=say("ticked off “{text}”", text=ticked.text), ticked=ticked))
            case SnoozePrompt():
                prompt, *told = self.desks.prompts.snooze(command.prompt_key, command.until_ms, now_ms)
                words = say("put off “{text}”", text=prompt.headline)
                self.desks.rack.pile.record(Deed(words=words, put_off=(told[0], told[1])))
            case _ if isinstance(command, IntentionCommand):
                return self._intend(command, now_ms)
            case _:
                return self.desks.preparations.carry_out(command, self.desks.rack, now_ms)
        return command.prompt_key

    def _intend(self, command: IntentionCommand, now_ms: int) -> str:
        """Keep or forget what she means to do with the room, and foretell it anew at once."""
        before = self.desks.intentions.one(command.intention_key) if isinstance(command, DropIntention) else None
        key = self.desks.intentions.carry_out(command, now_ms)
        after = self.desks.intentions.one(key)
        self.desks.rack.pile.record(Deed(words=meant_words(before, after), meant=(before, after)))
        self.desks.foretell_anew(now_ms)
        return key

    def _carry_out_at_warnings(self, command: HearWarning | RemindLater | SpeakIn, now_ms: int) -> str:
        """Carry out what changes how warnings stand or are said; open ones are said in other units at once."""
        if isinstance(command, SpeakIn):
            self.desks.warnings.units = command.units
            self.desks.plans.mark()
            self.rounds.judge(now_ms)
            return ""
        before = self.desks.warnings.open_one(command.warning_key)
        if isinstance(command, HearWarning):
            happened = self.desks.warnings.hear(command.warning_key, now_ms)
        else:
            happened = self.desks.warnings.remind(command.warning_key, command.until_ms, now_ms)
        if before is not None and happened:
            words = answer_words(command, before)
            self.desks.rack.pile.record(Deed(words=words, answered=(before, happened[0].warning)))
        self.rounds.unsaid += happened
        return command.warning_key

    def _take_outside(self, command: OutsideCommand, now_ms: int) -> str:
        """Take readings from outside, a slice at a time; the coats that they tell of are dried anew at the end."""
        if self.outside is None:
            raise Refused(say("Nothing can be taken in here: this watch keeps no log."))
        if isinstance(command, TakeLogged):
            return self.outside.take(command.readings, now_ms)
        self.records.note(now_ms, "import", command.text)
        self.desks.calibrations.take_imported()
        if self.outside.concerns(self.desks.rack, command):
            self.desks.rack.dry_anew()
            self.rounds.unfollowed = True
        return ""

    def _type_in(self, command: TypeReading, now_ms: int, now_s: float) -> str:
        """Take a reading that she typed; the films dry in it, as it grows older, until the next."""
        reading = typed(command, self.desks.room, now_ms=now_ms)
        self.desks.ledger.put(reading, now_s)
        if self.desks.room.typed_ms is not None and not self.rounds.is_opening:
            self.rounds.dry(reading.time_ms)
        self.desks.room.take(reading)
        if now_ms - reading.time_ms >= TICK_MS:
            self.desks.rack.dry_anew()
        return str(reading.time_ms)
