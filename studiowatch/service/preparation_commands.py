"""What she can do before the brush goes down."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.studio.chores import Task
from studiowatch.studio.preparation import CoatToLay


@dataclass(frozen=True, slots=True, kw_only=True)
class StartPreparation:
    """Prepare to lay `coats`, one after the other. One that is open for any of these pieces becomes this one."""

    coats: tuple[CoatToLay, ...]
    torch: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class TickChore:
    """A chore was seen to, or, with `is_done` False, its tick was a slip of the hand."""

    preparation_key: str
    task: Task
    is_done: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class ChooseTorch:
    """She means to use a torch, or not."""

    preparation_key: str
    torch: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class EndPreparation:
    """Leave it: nothing more is laid from it."""

    preparation_key: str


PreparationCommand = StartPreparation | TickChore | ChooseTorch | EndPreparation
