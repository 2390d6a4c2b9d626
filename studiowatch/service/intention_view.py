"""What she means to do with the room, as the window and the terminal see it."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.studio.meant import Meant


@dataclass(frozen=True, slots=True, kw_only=True)
class IntentionView:
    """One that is not over; `words` say it, and `cautions` belong beside it, at the step where they bite.

    `withheld` says why the room to come does not count on it, or "".
    """

    meant: Meant
    words: str
    cautions: tuple[str, ...] = ()
    withheld: str = ""
