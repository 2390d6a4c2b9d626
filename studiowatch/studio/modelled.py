"""When a coat of the records was set and ready by the model, in the room that was read."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeRange:
    """When something came to pass, UTC ms: as likely before as after `middle_ms`, eight in ten within the others."""

    earliest_ms: int
    middle_ms: int
    latest_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Modelled:
    """What the model says of one coat; None for what was not reached in the room that was read.

    Attributes
    ----------
    clear, recoat : TimeRange or None
        When it cleared, and when it was dry to recoat.
    ready_ms : int or None
        When she was told that the next coat may go on, UTC ms: not before the wait that the sheet asks for, and under
        a solvent-borne coat not before it was dry through.
    set_ms : int or None
        When it was set to touch, UTC ms, nominal; None while it is not.
    read_ms : int
        How far the coat was followed, UTC ms: to the last reading, the coat above, or two days after its laying.
    """

    clear: TimeRange | None = None
    recoat: TimeRange | None = None
    ready_ms: int | None = None
    set_ms: int | None = None
    read_ms: int

    @property
    def has_times(self) -> bool:
        """Whether any of its times can be told."""
        return self.clear is not None or self.recoat is not None
