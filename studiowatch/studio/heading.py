"""Where the room is heading, as the rules ask for it. Whoever knows better than a line may stand in here."""

from __future__ import annotations

from enum import StrEnum
from typing import Protocol

from studiowatch.room.trend import Crossing


class Figure(StrEnum):
    """What may pass a limit: the humidity, %RH; the air's temperature, °C; how far it is above the dew point, K."""

    HUMIDITY = "humidity"
    TEMPERATURE = "temperature"
    ABOVE_DEW = "above dew point"  # not said


class Heading(Protocol):
    """Says when a figure of the room will have changed by so much."""

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        """Return in how long `figure` will have moved by `distance`, in its unit; None if it will not, or who knows."""
        ...

    def fan_from_ms(self, now_ms: int) -> int | None:
        """Return the UTC ms at which a fan is meant to go on within the next hours, or None."""
        ...


class NotKnown:
    """A room of which nobody knows where it is heading."""

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        """Return None."""
        del figure, distance, said_before
        return None

    def fan_from_ms(self, now_ms: int) -> int | None:
        """Return None."""
        del now_ms
        return None


NOT_KNOWN: Heading = NotKnown()
