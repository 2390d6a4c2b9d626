"""Quiet hours: from when to when nothing but the worst may be heard, and that once and softly.

The rule: in quiet hours a caution makes no sound. What must be acted on sounds once, softly, and then only shows; where
she chose to be woken for it, moving air over a wet coat sounds as by day.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import Enum, auto

from studiowatch.service.snapshot import WarningView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.concern import Kind
from studiowatch.studio.words import Level

DAY_MIN = 1440  # min


class Voice(Enum):
    """How loud a warning may be."""

    FULL = auto()
    ONCE_SOFTLY = auto()
    SILENT = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class QuietHours:
    """When it is quiet.

    Attributes
    ----------
    on : bool
        Whether there are quiet hours at all.
    from_min, to_min : int
        Minutes of her day at which they begin and end, 0 to 1439; they may lie over midnight. Alike means all day.
    wakes : bool
        Whether moving air over a wet coat sounds as by day all the same.
    """

    on: bool = False
    from_min: int = 22 * 60
    to_min: int = 7 * 60
    wakes: bool = False

    def hold(self, minute: int) -> bool:
        """Return whether it is quiet at `minute` of her day."""
        if not self.on:
            return False
        return (minute - self.from_min) % DAY_MIN < ((self.to_min - self.from_min) % DAY_MIN or DAY_MIN)

    def voice(self, warning: WarningView, minute: int) -> Voice:
        """Return how loud `warning` may be at `minute` of her day."""
        if not self.hold(minute):
            return Voice.FULL
        if warning.level is not Level.ACT:
            return Voice.SILENT
        return Voice.FULL if self.wakes and warning.kind == Kind.AIR_MOVING else Voice.ONCE_SOFTLY

    def words(self) -> str:
        """Return what holds, for a line."""
        if not self.on:
            return say("No quiet hours")
        return say("Quiet from {start} to {end}", start=clock(self.from_min), end=clock(self.to_min))


def kept_quiet_hours(kept: Mapping[str, str]) -> QuietHours:
    """Return the quiet hours in the window's choices by name; anything else there counts as the usual."""
    usual = QuietHours()
    return QuietHours(
        on=kept.get("quiet") == "yes",
        from_min=_minute(kept.get("quiet_from", ""), usual.from_min),
        to_min=_minute(kept.get("quiet_to", ""), usual.to_min),
        wakes=kept.get("quiet_wakes") == "yes",
    )


def _minute(kept: str, usual: int) -> int:
    return int(kept) if kept.isdecimal() and int(kept) < DAY_MIN else usual


def clock(minute: int) -> str:
    """Return "22:00"."""
    return chosen().clock(datetime(2001, 1, 1, minute // 60, minute % 60))  # noqa: DTZ001 - a wall clock
