"""Preparations on the keeper's desk: begun, ticked, their timers told, and over once the last brush is down."""

from __future__ import annotations

import uuid
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import partial, reduce

from studiowatch.coats.data_sheet import Kind
from studiowatch.service.commands import Command, LayCoat, Refused
from studiowatch.service.disk import Disk
from studiowatch.service.happenings import PromptHappened
from studiowatch.service.ports import Records
from studiowatch.service.preparation_commands import (
    ChooseTorch,
    EndPreparation,
    PreparationCommand,
    StartPreparation,
    TickChore,
)
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import vapour_in_room
from studiowatch.service.snapshot import PreparationView
from studiowatch.speech.words import mark, say
from studiowatch.studio.chores import Task
from studiowatch.studio.preparation import (
    CoatLaid,
    Ended,
    Event,
    Phase,
    Preparation,
    RoomLookedAt,
    Tick,
    Ticked,
    Told,
    TorchChosen,
    Unticked,
    advance,
    chores_now,
    phase_at,
    rested,
    shifted,
)

GONE = mark("That preparation is over; begin one from “Lay a coat”.")


def _new_key() -> str:
    return uuid.uuid4().hex


@dataclass(slots=True)
class PreparationDesk:
    """Holds the open preparations. What she does is on disk before it is answered, what the clock does soon after."""

    records: Records
    disk: Disk
    new_key: Callable[[], str] = _new_key
    _open: dict[str, Preparation] = field(default_factory=dict)

    def reopen(self) -> None:
        """Take up the preparations as they were left; timers that ran out meanwhile are told once."""
        self._open = {preparation.key: preparation for preparation in self.records.preparations()}

    def carry_out(self, command: PreparationCommand, rack: Rack, now_ms: int) -> str:
        """Carry out a command and return the key of the preparation.

        Raises
        ------
        Refused
            If it cannot be done; nothing was changed.
        StoreTrouble
            If the disk refuses; nothing was changed.
        """
        match command:
            case StartPreparation():
                return self._start(command, rack, now_ms)
            case TickChore(is_done=True):
                event: Event = Ticked(task=command.task, time_ms=now_ms)
            case TickChore():
                event = Unticked(task=command.task)
            case ChooseTorch():
                event = TorchChosen(torch=command.torch)
            case EndPreparation():
                event = Ended(time_ms=now_ms)
        self._keep_now(advance(self._of(command.preparation_key), event))
        return command.preparation_key

    def _of(self, key: str) -> Preparation:
        if key not in self._open:
            raise Refused(say(GONE))
        return self._open[key]

    def _start(self, command: StartPreparation, rack: Rack, now_ms: int) -> str:
        _check(command, rack)
        keys = {coat.piece_key for coat in command.coats}
        earlier = [one for one in self._open.values() if keys & {coat.piece_key for coat in one.coats}]
        made = Preparation(
            key=earlier[0].key if earlier else self.new_key(),
            began_ms=earlier[0].began_ms if earlier else now_ms,
            coats=command.coats,
            solvent=any(rack.shelf.sheets[coat.sheet].kind is Kind.SOLVENTBORNE for coat in command.coats),
            torch=command.torch,
            vapour_in_room=bool(vapour_in_room(rack)),
        )
        if earlier:
            made = replace(made, ticks=_still_true(earlier[0], made))
        for other in earlier[1:]:
            self._keep_now(advance(other, Ended(time_ms=now_ms)))
        self._keep_now(made)
        return made.key

    def laid(self, piece_key: str, time_ms: int) -> None:
        """Take it that the brush went down on a piece."""
        for preparation in list(self._open.values()):
            self._keep_later(advance(preparation, CoatLaid(piece_key=piece_key, time_ms=time_ms)))

    def heed(self, command: Command) -> None:
        """Take it that `command` was carried out: a coat that was laid is prepared for no longer."""
        if isinstance(command, LayCoat):
            self.laid(command.piece_key, command.laid_ms)

    def settle(self, rack: Rack, now_ms: int) -> None:
        """Look whether solvent vapour is in the room, and end what is forgotten or whose pieces left the rack."""
        vapour = bool(vapour_in_room(rack))
        on_rack = {piece.key for piece in rack.on_rack()}
        for preparation in list(self._open.values()):
            after = advance(preparation, RoomLookedAt(vapour_in_room=vapour))
            waiting = {coat.piece_key for coat in after.coats if coat.laid_ms is None}
            if phase_at(after, now_ms) is Phase.ENDED or not waiting & on_rack:
                after = advance(after, Ended(time_ms=now_ms))
            self._keep_later(after)

    def has_due(self, now_ms: int) -> bool:
        """Return whether a timer ran out of which nobody was told yet."""
        return any(rested(preparation, now_ms) for preparation in self._open.values())

    def due(self, rack: Rack, now_ms: int) -> list[PromptHappened]:
        """Return the timers that ran out, each once."""
        told = []
        for preparation in list(self._open.values()):
            over = rested(preparation, now_ms)
            if over:
                self._keep_later(advance(preparation, Told(tasks=tuple(one.chore.task for one in over))))
            title = reduce(_and, _titles(preparation, rack), "")
            told += [PromptHappened(time_ms=now_ms, piece_title=title, text=f"{one.chore.rested}.") for one in over]
        return told

    def views(self, rack: Rack, now_ms: int) -> tuple[PreparationView, ...]:
        """Return the open preparations, in the order in which they were begun."""
        return tuple(
            PreparationView(
                preparation=preparation,
                phase=phase_at(preparation, now_ms),
                chores=chores_now(preparation, now_ms),
                titles=_titles(preparation, rack),
            )
            for preparation in sorted(self._open.values(), key=lambda one: one.began_ms)
        )

    def shift(self, step_ms: int) -> None:
        """Move all timers along with a wall clock that was set."""
        for preparation in list(self._open.values()):
            self._keep_later(shifted(preparation, step_ms))

    def _keep_now(self, after: Preparation) -> None:
        self.records.save_preparation(after)
        self._hold(after)

    def _keep_later(self, after: Preparation) -> None:
        if after != self._open.get(after.key):
            self._hold(after)
            self.disk.later(partial(self.records.save_preparation, after))

    def _hold(self, after: Preparation) -> None:
        if after.ended_ms is None:
            self._open[after.key] = after
        else:
            self._open.pop(after.key, None)


def _titles(preparation: Preparation, rack: Rack) -> tuple[str, ...]:
    """Return the title of each coat's piece, "" for one that is gone."""
    return tuple(piece.title if (piece := rack.pieces.get(coat.piece_key)) else "" for coat in preparation.coats)


def _still_true(earlier: Preparation, made: Preparation) -> tuple[Tick, ...]:
    """Return the ticks of `earlier` that hold for `made` too: of another product, another bottle is rolled."""
    chores = {chore.task: chore for chore in earlier.chores}
    same = {chore.task for chore in made.chores if chores.get(chore.task) == chore}
    if {coat.sheet for coat in earlier.coats} != {coat.sheet for coat in made.coats}:
        same -= {Task.BOTTLE}
    if not {coat.piece_key for coat in made.coats} <= {coat.piece_key for coat in earlier.coats}:
        same -= {Task.WIPE, Task.LEVEL, Task.TAPE}
    return tuple(tick for tick in earlier.ticks if tick.task in same)


def _and(before: str, title: str) -> str:
    return say("{before} and {title}", before=before, title=title) if before else title


def _check(command: StartPreparation, rack: Rack) -> None:
    on_rack = {piece.key: piece for piece in rack.on_rack()}
    keys: Sequence[str] = [coat.piece_key for coat in command.coats]
    if not keys:
        raise Refused(say("No piece was chosen; choose at least one to prepare for."))
    if len(set(keys)) < len(keys):
        raise Refused(say("A piece was chosen twice; one coat at a time is laid on it."))
    for coat in command.coats:
        if coat.piece_key not in on_rack:
            raise Refused(say("That piece is not on the rack any more; choose one from the rack."))
        if coat.sheet not in rack.shelf.sheets:
            raise Refused(say("There is no data sheet {name}; choose one from the list.", name=repr(coat.sheet)))
