"""What was read from the log, carried on to the newest live value."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from studiowatch.service.ports import Series
from studiowatch.service.snapshot import Snapshot

EMPTY = Series(time_ms=np.empty(0, np.int64), low=np.empty(0), high=np.empty(0), mean=np.empty(0), bucket_ms=1000)


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomData:
    """What was read from the log for one stretch of time; `signal` tells that `air` is in mV, not in m/s."""

    temperature: Series = EMPTY
    dew: Series = EMPTY
    humidity: Series = EMPTY
    air: Series = EMPTY
    signal: bool = False


def with_live(data: RoomData, film: Series, snapshot: Snapshot | None) -> tuple[RoomData, Series]:
    """Return the room's curves and the film's, each ended by the live value at now; a silent board adds nothing."""
    if snapshot is None or snapshot.board.silent:
        return data, film
    room, now_ms = snapshot.room, snapshot.time_ms
    signal = data.signal or (not len(data.air.time_ms) and room.air_speed_m_s is None)
    air = room.air_signal_mV if signal else room.air_speed_m_s
    live = replace(
        data,
        temperature=carried_on(data.temperature, now_ms, room.temperature_C),
        dew=carried_on(data.dew, now_ms, room.dew_point_C),
        humidity=carried_on(data.humidity, now_ms, room.humidity_pct),
        air=carried_on(data.air, now_ms, air),
        signal=data.signal or (signal and air is not None),
    )
    return live, carried_on(film, now_ms, room.film_C)


def carried_on(series: Series, now_ms: int, value: float | None) -> Series:
    """Return `series` with `value` as its last at `now_ms`, or just after a bucket whose middle lies beyond."""
    if value is None:
        return series
    last_ms = int(series.time_ms[-1]) if len(series.time_ms) else now_ms - 1
    return Series(
        time_ms=np.append(series.time_ms, max(now_ms, last_ms + 1)),
        low=np.append(series.low, value),
        high=np.append(series.high, value),
        mean=np.append(series.mean, value),
        bucket_ms=series.bucket_ms,
    )
