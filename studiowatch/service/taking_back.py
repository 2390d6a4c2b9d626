"""Undo and redo: pieces go back to what they were, or forth again, and are on disk before that is seen."""

from __future__ import annotations

from studiowatch.service.correction_commands import Redo, Undo
from studiowatch.service.prompt_desk import PromptDesk
from studiowatch.service.rack import Rack
from studiowatch.service.undo_pile import after, before


def take_back(command: Undo | Redo, rack: Rack, prompts: PromptDesk, now_ms: int) -> str:
    """Undo the last deed, or do the last one that was undone again; return its words.

    Raises
    ------
    Refused
        If there is none, or it cannot be any more; nothing was changed.
    StoreTrouble
        If the disk refused; nothing was changed.
    """
    if isinstance(command, Undo):
        deed = rack.pile.last()
        if deed.ticked is not None:
            prompts.untick(deed.ticked)
        rack.put(before(deed, rack.pieces.get), now_ms)
        rack.pile.undid()
    else:
        deed = rack.pile.next()
        if deed.ticked is not None:
            prompts.tick_again(deed.ticked)
        rack.put(after(deed, rack.pieces.get), now_ms)
        rack.pile.redid()
    return deed.words
