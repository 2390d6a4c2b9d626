"""Undo and redo: what was done goes back to what it was, or forth again, and is on disk before that is seen.

A warning and a prompt move by themselves: what she answered is forgotten once it is no longer as her answer left it.
So is what she did to a data sheet whose file another program wrote to, once that was found and told.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.service.correction_commands import Redo, Undo
from studiowatch.service.happenings import WarningHappened
from studiowatch.service.intention_desk import IntentionDesk
from studiowatch.service.plan_desk import PlanDesk
from studiowatch.service.prompt_desk import PromptDesk
from studiowatch.service.rack import Rack
from studiowatch.service.sheet_desk import SheetDesk
from studiowatch.service.sheet_folder import FileMoved
from studiowatch.service.undo_pile import Deed, UndoPile, after, before
from studiowatch.service.warning_desk import WarningDesk
from studiowatch.store.shapes import TellingRecord
from studiowatch.studio.warnings import StudioWarning

Answer = StudioWarning | TellingRecord


@dataclass(frozen=True, slots=True, kw_only=True)
class Desks:
    """Whatever a deed may have changed."""

    rack: Rack
    prompts: PromptDesk
    warnings: WarningDesk
    plans: PlanDesk
    intentions: IntentionDesk
    sheets: SheetDesk

    @property
    def pile(self) -> UndoPile:
        """What was done."""
        return self.rack.pile

    def forget_lapsed(self) -> None:
        """Forget the deeds that the room and the films have overtaken."""
        self.pile.done = self._standing(self.pile.done, 1)
        self.pile.undone = self._standing(self.pile.undone, 0)

    def _standing(self, deeds: Sequence[Deed], side: int) -> list[Deed]:
        """Return the deeds whose answers follow on one another up to what is now.

        What a deed that was done leaves (1), or one that was undone finds (0), is what the next one begins from.
        """
        begins: dict[str, Answer] = {}
        standing = []
        for deed in reversed(deeds):
            answer = deed.answered or deed.put_off
            if answer is not None:
                key = answer[side].key
                if not (_alike(answer[side], begins[key]) if key in begins else self._is_so(answer[side])):
                    continue
                begins[key] = answer[1 - side]
            standing.append(deed)
        return standing[::-1]

    def _is_so(self, answer: Answer) -> bool:
        return self.warnings.is_as(answer) if isinstance(answer, StudioWarning) else self.prompts.is_told_as(answer)


def _alike(one: Answer, other: Answer) -> bool:
    """Return whether two answers to the same are alike, whatever the room did meanwhile."""
    if isinstance(one, StudioWarning) and isinstance(other, StudioWarning):
        return (one.state, one.remind_ms) == (other.state, other.remind_ms)
    return one == other


def take_back(command: Undo | Redo, desks: Desks, now_ms: int) -> tuple[str, Sequence[WarningHappened]]:
    """Undo the last deed, or do the last one that was undone again; return its words, and what befell a warning by it.

    Raises
    ------
    Refused
        If there is none, or it cannot be any more; nothing was changed.
    StoreTrouble
        If the disk refused; nothing was changed.
    """
    desks.forget_lapsed()
    pile, side = desks.pile, 0 if isinstance(command, Undo) else 1
    deed = pile.last() if isinstance(command, Undo) else pile.next()
    if deed.ticked is not None:
        (desks.prompts.untick if side == 0 else desks.prompts.tick_again)(deed.ticked)
    try:
        happened = _put(deed, side, desks, now_ms)
    except FileMoved:
        (pile.done if side == 0 else pile.undone).pop()
        raise
    desks.rack.put((before, after)[side](deed, desks.rack.pieces.get), now_ms)
    (pile.undid, pile.redid)[side]()
    return deed.words, happened


def _put(deed: Deed, side: int, desks: Desks, now_ms: int) -> Sequence[WarningHappened]:
    """Have what is beside the pieces as it was before a deed (0), or after it (1)."""
    if deed.put_off is not None:
        desks.prompts.put_telling(deed.put_off[side])
    if deed.planned is not None:
        desks.plans.carry_out(deed.planned[side])
    if deed.meant is not None:
        key = next(one.key for one in deed.meant if one is not None)
        desks.intentions.put(key, deed.meant[side])
    if deed.filed is not None:
        desks.sheets.put(deed.filed, side)
    return desks.warnings.put(deed.answered[side], now_ms) if deed.answered is not None else ()
