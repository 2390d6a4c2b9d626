"""What she means to do with the room, and that she does not after all."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from studiowatch.room.intentions import Doing


@dataclass(frozen=True, slots=True, kw_only=True)
class AddIntention:
    """Something will be on from `from_min` to `to_min`, minutes into her day, `days` days in a row from `first_day` on.

    `target` is what it is set to: °C of a heater, % of a dehumidifier, m/s of a fan at the pieces, 0 if it stays off.
    With `days` None it is every day until she says otherwise.
    """

    doing: Doing
    from_min: int
    to_min: int
    target: float
    first_day: date
    days: int | None = 1


@dataclass(frozen=True, slots=True, kw_only=True)
class DropIntention:
    """It will not."""

    intention_key: str


IntentionCommand = AddIntention | DropIntention
