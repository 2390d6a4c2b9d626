"""What was read of the room while a coat was wet, for the finishing record."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from statistics import fmean

from studiowatch.room.readings import Reading
from studiowatch.service.review_log import MINUTE_MS, MinuteLog
from studiowatch.studio.finishing_record import RoomWhileWet, Spread

MOVING_M_S = 0.15  # m/s, minute mean from which air is called moving: low end of the draught range of ISO 7730


def room_while_wet(
    log: MinuteLog, start_ms: int, end_ms: int, correct: Callable[[Reading], Reading] = lambda reading: reading
) -> RoomWhileWet | None:
    """Return the room between two times, UTC ms, or None if nothing was read.

    Parameters
    ----------
    correct : callable
        Puts a reading right by the calibrations.
    """
    readings = [correct(reading) for reading in log.minute_means(start_ms, end_ms)]
    if not readings:
        return None
    speeds = [reading.air_speed_m_s for reading in readings if reading.air_speed_m_s is not None]
    whole_min = -(-(end_ms - start_ms) // MINUTE_MS)
    return RoomWhileWet(
        temperature_C=_spread([reading.temperature_C for reading in readings]),
        humidity_pct=_spread([reading.humidity_pct for reading in readings]),
        moving_min=sum(speed >= MOVING_M_S for speed in speeds) if speeds else None,
        read_min=min(len({(reading.time_ms - start_ms) // MINUTE_MS for reading in readings}), whole_min),
        whole_min=whole_min,
        trace=tuple((reading.time_ms, reading.temperature_C, reading.humidity_pct) for reading in readings),
    )


def _spread(values: Sequence[float | None]) -> Spread | None:
    read = [value for value in values if value is not None]
    return Spread(least=min(read), mean=fmean(read), greatest=max(read)) if read else None
