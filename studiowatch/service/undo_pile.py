"""What was done in this session, so that it can be undone and done again: each deed as pieces before and after."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace

from studiowatch.service.commands import Refused
from studiowatch.service.plan_commands import PlanCommand
from studiowatch.service.sheet_folder import Filed
from studiowatch.service.snapshot import UndoView
from studiowatch.speech.words import say
from studiowatch.store.shapes import PromptRecord, TellingRecord
from studiowatch.studio.meant import Meant
from studiowatch.studio.pieces import Piece
from studiowatch.studio.warnings import StudioWarning

MOST = 30  # deeds that are kept, those of some days: what lies further back is changed where it stands; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Deed:
    """One thing that was done.

    Attributes
    ----------
    words : str
        What it was: "laid gloss 1 on Kiln Light".
    changes : tuple of (Piece or None, Piece)
        Each piece before and after; before is None for one that was registered.
    ticked : PromptRecord or None
        The prompt that was ticked, if it was that.
    answered : (StudioWarning, StudioWarning) or None
        The warning that was heard or put off, before and after.
    put_off : (TellingRecord, TellingRecord) or None
        What was told of the prompt that was put off, before and after.
    planned : (PlanCommand, PlanCommand) or None
        What sets her hours or a recipe back, and forth again.
    meant : (Meant or None, Meant or None) or None
        What she means to do with the room, before and after; None where it was not meant.
    filed : Filed or None
        The file of the data sheet that was made, edited or deleted, before and after.
    """

    words: str
    changes: tuple[tuple[Piece | None, Piece], ...] = ()
    ticked: PromptRecord | None = None
    answered: tuple[StudioWarning, StudioWarning] | None = None
    put_off: tuple[TellingRecord, TellingRecord] | None = None
    planned: tuple[PlanCommand, PlanCommand] | None = None
    meant: tuple[Meant | None, Meant | None] | None = None
    filed: Filed | None = None


@dataclass(slots=True)
class UndoPile:
    """Deeds, the newest last, and those that were taken back, the newest of these last."""

    done: list[Deed] = field(default_factory=list)
    undone: list[Deed] = field(default_factory=list)

    def record(self, deed: Deed) -> None:
        """Put a new deed on the pile; what was taken back before it cannot be done again."""
        self.done = [*self.done, deed][-MOST:]
        self.undone = []

    def last(self) -> Deed:
        """Return the deed that would be undone, or refuse."""
        if not self.done:
            raise Refused(say("There is nothing to undo: nothing was done since studiowatch was started."))
        return self.done[-1]

    def next(self) -> Deed:
        """Return the deed that would be done again, or refuse."""
        if not self.undone:
            raise Refused(say("There is nothing to do again: nothing was undone."))
        return self.undone[-1]

    def undid(self) -> None:
        """Take note that the last deed was undone."""
        self.undone.append(self.done.pop())

    def redid(self) -> None:
        """Take note that the deed undone last was done again."""
        self.done.append(self.undone.pop())

    def map_pieces(self, change: Callable[[Piece], Piece]) -> None:
        """Change all pieces that are kept, as all the others were."""
        self.done = [_mapped(deed, change) for deed in self.done]
        self.undone = [_mapped(deed, change) for deed in self.undone]

    def shift_answers(self, step_ms: int) -> None:
        """Move the warnings and prompts that were answered along with a wall clock that was set, as all others are."""
        self.done = [_shifted(deed, step_ms) for deed in self.done]
        self.undone = [_shifted(deed, step_ms) for deed in self.undone]

    def view(self) -> UndoView:
        """Return what undo and redo would do, in words."""
        return UndoView(
            undo=self.done[-1].words if self.done else "",
            redo=self.undone[-1].words if self.undone else "",
        )


def before(deed: Deed, pieces: Callable[[str], Piece | None]) -> Sequence[Piece]:
    """Return the pieces of a deed as they were before it, or refuse; one that was registered is taken off the rack."""
    if any(pieces(after.key) != after for _, after in deed.changes):
        raise Refused(say("That can no longer be undone: it was changed since."))
    return [earlier or replace(after, archived=True) for earlier, after in deed.changes]


def after(deed: Deed, pieces: Callable[[str], Piece | None]) -> Sequence[Piece]:
    """Return the pieces of a deed that was undone as they were after it, or refuse."""
    undone = [earlier or replace(later, archived=True) for earlier, later in deed.changes]
    if any(pieces(piece.key) != piece for piece in undone):
        raise Refused(say("That can no longer be done again: it was changed since."))
    return [later for _, later in deed.changes]


def _mapped(deed: Deed, change: Callable[[Piece], Piece]) -> Deed:
    changes = tuple((earlier and change(earlier), change(later)) for earlier, later in deed.changes)
    return replace(deed, changes=changes)


def _shifted(deed: Deed, step_ms: int) -> Deed:
    answered, put_off = deed.answered, deed.put_off
    return replace(
        deed,
        answered=answered and (answered[0].shifted(step_ms), answered[1].shifted(step_ms)),
        put_off=put_off and (put_off[0].shifted(step_ms), put_off[1].shifted(step_ms)),
    )
