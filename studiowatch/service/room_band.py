"""What the room may do from now on, as few numbers: the middle of its draws, and where four in five of them lie."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.physics.ranges import Array
from studiowatch.room.hourly_log import HOUR_MS
from studiowatch.room.outlook import Outlook

SHARES = (0.1, 0.5, 0.9)  # of the draws that lie below: four in five are between the outer two


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class RoomBand:
    """The room ahead, hour by hour.

    Attributes
    ----------
    time_ms : ndarray of int64, (hours + 1,)
        UTC ms, from when the outlook was made.
    temperature_C, humidity_pct : ndarray, (3, hours + 1)
        By `SHARES`.
    is_meant : bool
        Whether what she means to do with the room is counted in.
    """

    time_ms: NDArray[np.int64]
    temperature_C: Array
    humidity_pct: Array
    is_meant: bool = False


def band_of(outlook: Outlook, made_ms: int, *, is_meant: bool = False) -> RoomBand:
    """Return the band of an outlook that was made at `made_ms`, UTC ms."""
    return RoomBand(
        time_ms=made_ms + HOUR_MS * np.arange(outlook.hours + 1, dtype=np.int64),
        temperature_C=np.quantile(outlook.temperature_C, SHARES, axis=0),
        humidity_pct=np.quantile(outlook.humidity_pct, SHARES, axis=0),
        is_meant=is_meant,
    )
