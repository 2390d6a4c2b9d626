"""Preparing one coat or several: what was ticked, which timers run, and whose turn it is. Pure: the clock is passed in.

A preparation never holds her back: the brush may go down at any time, and what was not seen to is only said.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType
from typing import Any

from studiowatch.speech.words import mark, say
from studiowatch.studio.chores import Chore, Task, chores_for

FORGOTTEN_MS = 12 * 3_600_000  # ms after which a preparation that nobody ended is over; assumption


class ChoreState(StrEnum):
    """How a chore stands: to do, resting until its timer is over, done, or done too long ago."""

    TO_DO = "to do"  # not said
    RESTING = "resting"
    DONE = "done"
    STALE = "do it again"  # not said

    @property
    def word(self) -> str:
        """How it stands, in her language."""
        return say(_STATES[self])


_STATES = {
    ChoreState.TO_DO: mark("to do"),
    ChoreState.RESTING: mark("resting"),
    ChoreState.DONE: mark("done"),
    ChoreState.STALE: mark("do it again"),
}


class Phase(StrEnum):
    """How a preparation stands."""

    PREPARING = "preparing"
    RESTING = "resting"
    READY = "ready"
    LAYING = "laying"
    ENDED = "ended"


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatToLay:
    """One coat of a preparation, and when the brush went down on it, UTC ms; at most one amount is given."""

    piece_key: str
    sheet: str
    coat_key: str | None = None
    volume_mL: float | None = None
    grams: float | None = None
    thinned_pct: float = 0.0
    laid_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Tick:
    """A chore was seen to at `time_ms`, UTC ms; `told` once it was said that it has rested."""

    task: Task
    time_ms: int
    told: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Preparation:
    """What is prepared for.

    Attributes
    ----------
    coats : tuple of CoatToLay
        In the order in which they are laid.
    solvent, torch, vapour_in_room : bool
        Whether one of them is solvent-borne, whether a torch is meant to be used, and whether another coat in the
        room gave off solvent vapour when last looked at.
    """

    key: str
    began_ms: int
    coats: tuple[CoatToLay, ...]
    solvent: bool = False
    torch: bool = False
    vapour_in_room: bool = False
    ticks: tuple[Tick, ...] = ()
    ended_ms: int | None = None

    @property
    def chores(self) -> tuple[Chore, ...]:
        """What there is to see to."""
        return chores_for(solvent=self.solvent, torch=self.torch, vapour_in_room=self.vapour_in_room)

    @property
    def turn(self) -> CoatToLay | None:
        """The coat that is to be laid next, or None once all are on."""
        return next((coat for coat in self.coats if coat.laid_ms is None), None)

    def tick_of(self, task: Task) -> Tick | None:
        """Return when `task` was ticked, or None."""
        return next((tick for tick in self.ticks if tick.task is task), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChoreNow:
    """A chore as it stands at a moment; `until_ms` is when its timer is over, UTC ms, if it has one that began."""

    chore: Chore
    state: ChoreState
    until_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Ticked:
    """A chore was seen to."""

    task: Task
    time_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Unticked:
    """A tick was a slip of the hand."""

    task: Task


@dataclass(frozen=True, slots=True, kw_only=True)
class TorchChosen:
    """She means to use a torch, or not."""

    torch: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomLookedAt:
    """Whether another coat in the room gives off solvent vapour."""

    vapour_in_room: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatLaid:
    """The brush went down on a piece."""

    piece_key: str
    time_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """It was said that these have rested."""

    tasks: tuple[Task, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Ended:
    """She leaves it, or it was forgotten."""

    time_ms: int


Event = Ticked | Unticked | TorchChosen | RoomLookedAt | CoatLaid | Told | Ended


def _ticked(before: Preparation, event: Ticked) -> Preparation:
    others = tuple(tick for tick in before.ticks if tick.task is not event.task)
    return replace(before, ticks=(*others, Tick(task=event.task, time_ms=event.time_ms)))


def _unticked(before: Preparation, event: Unticked) -> Preparation:
    return replace(before, ticks=tuple(tick for tick in before.ticks if tick.task is not event.task))


def _torch_chosen(before: Preparation, event: TorchChosen) -> Preparation:
    return replace(before, torch=event.torch)


def _room_looked_at(before: Preparation, event: RoomLookedAt) -> Preparation:
    if event.vapour_in_room == before.vapour_in_room:
        return before
    # the window and the fans stand otherwise now: what was ticked of them was another thing
    ticks = tuple(tick for tick in before.ticks if tick.task not in (Task.WINDOW, Task.AIR_OFF))
    return replace(before, vapour_in_room=event.vapour_in_room, ticks=ticks)


def _coat_laid(before: Preparation, event: CoatLaid) -> Preparation:
    coats = tuple(
        replace(coat, laid_ms=event.time_ms) if coat.piece_key == event.piece_key and coat.laid_ms is None else coat
        for coat in before.coats
    )
    after = replace(before, coats=coats)
    return after if after.turn is not None else replace(after, ended_ms=event.time_ms)


def _told(before: Preparation, event: Told) -> Preparation:
    return replace(
        before, ticks=tuple(replace(tick, told=tick.told or tick.task in event.tasks) for tick in before.ticks)
    )


def _ended(before: Preparation, event: Ended) -> Preparation:
    return replace(before, ended_ms=event.time_ms)


_TRANSITIONS: Mapping[type, Callable[[Preparation, Any], Preparation]] = MappingProxyType(
    {
        Ticked: _ticked,
        Unticked: _unticked,
        TorchChosen: _torch_chosen,
        RoomLookedAt: _room_looked_at,
        CoatLaid: _coat_laid,
        Told: _told,
        Ended: _ended,
    }
)


def advance(before: Preparation, event: Event) -> Preparation:
    """Return the preparation after `event`; one that has ended stays as it is."""
    return before if before.ended_ms is not None else _TRANSITIONS[type(event)](before, event)


def chores_now(preparation: Preparation, now_ms: int) -> tuple[ChoreNow, ...]:
    """Return each chore as it stands at `now_ms`, UTC ms."""
    return tuple(_chore_now(chore, preparation.tick_of(chore.task), now_ms) for chore in preparation.chores)


def _chore_now(chore: Chore, tick: Tick | None, now_ms: int) -> ChoreNow:
    if tick is None:
        return ChoreNow(chore=chore, state=ChoreState.TO_DO)
    until_ms = tick.time_ms + chore.wait_ms if chore.wait_ms else None
    if until_ms is not None and now_ms < until_ms:
        return ChoreNow(chore=chore, state=ChoreState.RESTING, until_ms=until_ms)
    if chore.good_for_ms is not None and now_ms - tick.time_ms > chore.good_for_ms:
        return ChoreNow(chore=chore, state=ChoreState.STALE)
    return ChoreNow(chore=chore, state=ChoreState.DONE, until_ms=until_ms)


def phase_at(preparation: Preparation, now_ms: int) -> Phase:
    """Return how a preparation stands at `now_ms`, UTC ms."""
    if preparation.ended_ms is not None or now_ms - preparation.began_ms > FORGOTTEN_MS:
        return Phase.ENDED
    if any(coat.laid_ms is not None for coat in preparation.coats):
        return Phase.LAYING
    states = {one.state for one in chores_now(preparation, now_ms)}
    if states & {ChoreState.TO_DO, ChoreState.STALE}:
        return Phase.PREPARING
    return Phase.RESTING if ChoreState.RESTING in states else Phase.READY


def ready_ms(preparation: Preparation, now_ms: int) -> int | None:
    """Return when the last timer that runs is over, UTC ms, or None if none runs."""
    untils = [one.until_ms for one in chores_now(preparation, now_ms) if one.state is ChoreState.RESTING]
    return max((until_ms for until_ms in untils if until_ms is not None), default=None)


def rested(preparation: Preparation, now_ms: int) -> tuple[ChoreNow, ...]:
    """Return the chores whose timers are over, and of which nobody was told yet."""
    return tuple(
        one
        for one in chores_now(preparation, now_ms)
        if one.until_ms is not None
        and one.state is ChoreState.DONE
        and (tick := preparation.tick_of(one.chore.task)) is not None
        and not tick.told
    )


def shifted(preparation: Preparation, step_ms: int) -> Preparation:
    """Return a preparation moved along with a wall clock that was set by `step_ms`: what rests, rests no longer."""
    return replace(
        preparation,
        began_ms=preparation.began_ms + step_ms,
        ticks=tuple(replace(tick, time_ms=tick.time_ms + step_ms) for tick in preparation.ticks),
        coats=tuple(
            coat if coat.laid_ms is None else replace(coat, laid_ms=coat.laid_ms + step_ms)
            for coat in preparation.coats
        ),
    )
