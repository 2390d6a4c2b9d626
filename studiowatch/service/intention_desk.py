"""What she means to do with the room: kept, told, and handed to its outlook."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from uuid import uuid4

from studiowatch.coats.data_sheet import Kind
from studiowatch.room.intentions import Intention
from studiowatch.service.commands import Refused
from studiowatch.service.intention_commands import AddIntention, IntentionCommand
from studiowatch.service.intention_view import IntentionView
from studiowatch.service.ports import Records
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import vapour_in_room
from studiowatch.speech.words import say
from studiowatch.studio.meant import Meant, intentions_of, meant_fault
from studiowatch.studio.meant_words import cautions, vapour_sentence, withheld_sentence, words
from studiowatch.studio.working_hours import WallClock

HOUR_MS = 3_600_000  # ms
UNFOLLOWED_TIMES = 2.0  # sheet's recoat times for which a coat nobody follows counts as giving off vapour; assumption


@dataclass(slots=True)
class IntentionDesk:
    """Holds them.

    Attributes
    ----------
    vapour : callable
        Returns in words the coat that gives off solvent vapour at a UTC ms, or "": nothing that heats or dries is then
        counted on.
    """

    records: Records
    clock: WallClock
    vapour: Callable[[int], str]
    meant: tuple[Meant, ...] = field(default=())

    def reopen(self) -> None:
        """Take them up from the records."""
        self.meant = tuple(self.records.intentions())

    def carry_out(self, command: IntentionCommand, now_ms: int) -> str:
        """Keep or forget one, on disk first; return its key.

        Raises
        ------
        Refused
            If it cannot be meant, or must not be; nothing was changed.
        """
        if isinstance(command, AddIntention):
            key = self._add(command, now_ms)
            self.reopen()
            return key
        dropped = self.one(command.intention_key)
        if dropped is None:
            raise Refused(say("That is not meant any more; look at the list again."))
        self.put(dropped.key, None)
        return dropped.key

    def one(self, key: str) -> Meant | None:
        """Return the one of `key`, or None."""
        return next((one for one in self.meant if one.key == key), None)

    def put(self, key: str, meant: Meant | None) -> None:
        """Have the one of `key` be `meant` again, or, if that is None, not be: on disk first."""
        if meant is None:
            self.records.drop_intention(key)
        else:
            self.records.save_intention(meant)
        self.reopen()

    def _add(self, command: AddIntention, now_ms: int) -> str:
        meant = Meant(
            key=uuid4().hex,
            doing=command.doing,
            from_min=command.from_min,
            to_min=command.to_min,
            target=command.target,
            first_day=command.first_day,
            days=command.days,
        )
        fault = meant_fault(meant)
        if fault:
            raise Refused(fault)
        if meant.is_over(self.clock, now_ms):
            raise Refused(say("Those hours are over; give hours to come."))
        if coat := self.vapour(now_ms):
            raise Refused(vapour_sentence(coat, meant.doing))
        self.records.save_intention(meant)
        return meant.key

    def ahead(self, now_ms: int) -> tuple[Intention, ...]:
        """Return what the room to come may count on, hours from now; nothing while a coat gives off vapour."""
        if not self.meant or self.vapour(now_ms):
            return ()
        return intentions_of(self.meant, self.clock, now_ms)

    def views(self, now_ms: int) -> tuple[IntentionView, ...]:
        """Return those that are not over."""
        to_come = [one for one in self.meant if not one.is_over(self.clock, now_ms)]
        coat = self.vapour(now_ms) if to_come else ""
        return tuple(
            IntentionView(
                meant=one,
                words=words(one),
                cautions=cautions(one.doing, is_on=one.is_on),
                withheld=withheld_sentence(coat, one.doing) if coat else "",
            )
            for one in to_come
        )


def vapour_on(rack: Rack, now_ms: int) -> str:
    """Return in words a coat that may give off solvent vapour: as followed, or by its sheet where nobody follows it."""
    followed = vapour_in_room(rack)
    if followed:
        return followed
    for piece in rack.on_rack():
        for label, coat in zip(rack.stacks.labels(piece), piece.coats, strict=True):
            sheet = rack.shelf.sheets.get(coat.sheet)
            if coat.laid_ms is None or sheet is None or sheet.kind is not Kind.SOLVENTBORNE or coat.key in rack.runs:
                continue
            if now_ms - coat.laid_ms < UNFOLLOWED_TIMES * sheet.recoat_h * HOUR_MS:
                return say("{coat} on {title}", coat=label, title=piece.title)
    return ""
