"""What a piece of long work has come to, in words: without Qt."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum, auto

from studiowatch.speech.words import mark, say

MOST_TOLD = 2000  # sentences kept for reading; more are counted, and she mends those first


class WorkState(Enum):
    """How it stands."""

    RUNNING = auto()
    ENDING = auto()
    DONE = auto()
    FAILED = auto()
    CANCELLED = auto()


CANCELLED_WORDS = mark("Cancelled. Nothing was written.")


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkView:
    """What the dialog shows.

    Attributes
    ----------
    share : float
        How much is done, 0 to 1.
    words : str
        How much that is, and at the end what came of it.
    told : tuple of str
        Sentences on the way, each on a line of the file, in its order.
    untold : int
        How many more there were.
    """

    title: str
    cancelled_words: str = CANCELLED_WORDS
    state: WorkState = WorkState.RUNNING
    share: float = 0.0
    words: str = ""
    told: tuple[str, ...] = ()
    untold: int = 0

    @property
    def is_over(self) -> bool:
        """Whether nothing more will come."""
        return self.state in {WorkState.DONE, WorkState.FAILED, WorkState.CANCELLED}

    @property
    def pct(self) -> int:
        """How much is done, %."""
        return 100 if self.state is WorkState.DONE else min(max(round(100 * self.share), 0), 100)

    @property
    def list_words(self) -> str:
        """What stands above the list of what was told, or ""."""
        if not self.told:
            return ""
        count = len(self.told) + self.untold
        if count == 1:
            return say("One thing to look at:")
        if self.untold:
            return say("{count} to look at, the first {shown} below:", count=count, shown=len(self.told))
        return say("{count} to look at:", count=count)


def progressed(view: WorkView, share: float, words: str) -> WorkView:
    """Return `view` further on."""
    return view if view.is_over else replace(view, share=share, words=words)


def ended(view: WorkView, state: WorkState, words: str = "") -> WorkView:
    """Return `view` at its end; one that was cancelled says what that left."""
    return replace(view, state=state, words=words or say(view.cancelled_words))


def with_told(view: WorkView, sentence: str) -> WorkView:
    """Return `view` with one more sentence."""
    if len(view.told) >= MOST_TOLD:
        return replace(view, untold=view.untold + 1)
    return replace(view, told=(*view.told, sentence))
