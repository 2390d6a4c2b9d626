"""The air that films dried in, from the log: as the live room was judged, coarser where that is enough."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise
from math import isnan, nan

import numpy as np

from studiowatch.coats.film_state import Film
from studiowatch.physics.air import Air, steady_speed
from studiowatch.physics.ranges import Array
from studiowatch.room.readings import Reading
from studiowatch.room.typed import is_typed
from studiowatch.service.ports import ReadingsLog
from studiowatch.service.room_now import BRIDGED_MS, WARM_UP_MS, RoomNow
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.otherwise import STILL_M_S

DAY_MS = 86_400_000  # ms
PART_MS = DAY_MS // 4  # ms of the log that are read and judged at once: who lays a coat now waits for no whole day
OLD_MS = 7 * DAY_MS  # ms after the last laying; assumption
TICK_MS = 60_000  # ms between two looks at air that nothing measures as it goes
BACK_MS = (0, WARM_UP_MS, *range(DAY_MS, 15 * DAY_MS, DAY_MS))  # ms back, between which a reading is sought; assumption
DRY_WIDTH_MS, OLD_WIDTH_MS = 600_000, 3_600_000  # ms, of the means for a coat that is dry to touch; assumption
UNSEEN_AIR = Air(temperature_C=18.0, humidity_pct=65.0, air_speed_m_s=0.05)  # where no reading says more; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Moment:
    """The air up to a time. `unseen` says that nobody watched since the moment before."""

    time_ms: int
    air: Air
    unseen: bool = False

    @classmethod
    def after(cls, before: Air | None, air: Air, before_ms: int, time_ms: int) -> Moment:
        """Return the moment when `air` was read; a hole since `before_ms` takes the harsher of its ends.

        There is no hole where the reading is older than `before_ms` and has held since.
        """
        if time_ms - before_ms <= max(BRIDGED_MS, 1000.0 * (air.age_s or 0.0)):
            return cls(time_ms=time_ms, air=air)
        return cls(time_ms=time_ms, air=_harsher(before, air), unseen=True)


def airs(
    readings: Iterable[Reading],
    room: RoomNow | None = None,
    *,
    since_ms: int | None = None,
    until_ms: int | None = None,
) -> Iterator[tuple[int, Air]]:
    """Yield the air at the films at each reading, UTC ms, judged as the live room is; a typed one by the minute.

    Parameters
    ----------
    readings : iterable of Reading
        In the order of time; those of a moment at which the air is not known are left out.
    room : RoomNow or None
        The room as it was judged up to then; None if nothing is known of it.
    since_ms, until_ms : int or None
        UTC ms from which the room is `room`, and up to which the last typed reading holds; None is its own time.
    """
    room = RoomNow(began_ms=0) if room is None else room
    at_ms = since_ms
    for reading in readings:
        if at_ms is not None:
            yield from _held(room, at_ms, reading.time_ms)
        room.take(reading)
        at_ms = reading.time_ms
        air = room.mean_air(at_ms)
        if air is not None:
            yield at_ms, air
    if at_ms is not None and until_ms is not None:
        yield from _held(room, at_ms, until_ms)


def _held(room: RoomNow, after_ms: int, until_ms: int) -> Iterator[tuple[int, Air]]:
    """Yield the air of a typed reading, growing older, from one time up to another."""
    if room.typed_ms is None or until_ms <= after_ms:
        return
    for time_ms in (*range(after_ms + TICK_MS, until_ms, TICK_MS), until_ms):
        air = room.air(time_ms)
        if air is not None:
            yield time_ms, air


def remember(room: RoomNow, log: ReadingsLog) -> str:
    """Tell the room what the log holds of it up to when its watch began; return why that cannot be read, or ""."""
    try:
        room.warm_up(log.between(room.began_ms - WARM_UP_MS, room.began_ms))
        standing = standing_typed(log, room.began_ms)
    except StoreTrouble as trouble:
        return str(trouble)
    if standing is not None:
        room.take(standing)
    return ""


def standing_typed(log: ReadingsLog, time_ms: int) -> Reading | None:
    """Return the typed reading that the room is still known by at a time, UTC ms, or None."""
    for near_ms, far_ms in pairwise(BACK_MS):
        readings = log.minute_means(time_ms - far_ms, time_ms - near_ms)
        known = [one for one in readings if one.temperature_C is not None or one.humidity_pct is not None]
        if known:
            return known[-1] if is_typed(known[-1]) else None
    return None


@dataclass(frozen=True, slots=True, eq=False)
class _Part:
    """Airs and their times as rows of numbers: weeks of them as objects would be megabytes in small pieces."""

    rows: Array

    @classmethod
    def of(cls, airs: Iterable[tuple[int, Air]]) -> _Part:
        rows = [
            (
                time_ms,
                air.temperature_C,
                air.humidity_pct,
                air.air_speed_m_s,
                air.pressure_Pa,
                nan if air.age_s is None else air.age_s,
                air.speed_is_measured,
            )
            for time_ms, air in airs
        ]
        return cls(np.array(rows, dtype=np.float64).reshape(-1, 7))

    def between(self, start_ms: int, end_ms: int) -> Iterator[tuple[int, Air]]:
        """Yield those with start <= time < end."""
        for row in self.rows[slice(*np.searchsorted(self.rows[:, 0], (start_ms, end_ms)))]:
            time_ms, temperature_C, humidity_pct, air_speed_m_s, pressure_Pa, age_s, is_measured = row.tolist()
            yield (
                int(time_ms),
                Air(
                    temperature_C=temperature_C,
                    humidity_pct=humidity_pct,
                    air_speed_m_s=air_speed_m_s,
                    pressure_Pa=pressure_Pa,
                    age_s=None if isnan(age_s) else age_s,
                    speed_is_measured=bool(is_measured),
                ),
            )


@dataclass(slots=True)
class JudgedLog:
    """The log's air, judged once for all the coats that dry through it, and remembered until `forget`."""

    log: ReadingsLog
    _parts: dict[int, _Part] = field(default_factory=dict)
    _rooms: dict[int, RoomNow] = field(default_factory=dict)

    def airs(self, start_ms: int, end_ms: int) -> Iterator[tuple[int, Air]]:
        """Yield the air at the films by the minute, UTC ms with start <= time < end; parts are read as needed."""
        for part in range(start_ms // PART_MS, -(-end_ms // PART_MS)):
            if part not in self._parts:
                self._parts[part] = _Part.of(self._judged(part))
            yield from self._parts[part].between(start_ms, end_ms)

    def forget(self) -> None:
        """Let go of the parts: more may have been logged by the next time."""
        self._parts.clear()
        self._rooms.clear()

    def _judged(self, part: int) -> Iterator[tuple[int, Air]]:
        start_ms = part * PART_MS
        room = self._rooms.pop(part, None)
        if room is None:
            room = RoomNow(began_ms=0)
            typed = standing_typed(self.log, start_ms)
            recent = self.log.minute_means(start_ms - PART_MS, start_ms)
            deque(airs([*([typed] if typed else []), *recent], room), maxlen=0)
        end_ms = start_ms + PART_MS
        yield from airs(self.log.minute_means(start_ms, end_ms), room, since_ms=start_ms, until_ms=end_ms)
        self._rooms[part + 1] = room


def moments(
    airs: Iterable[tuple[int, Air]],
    since_ms: int,
    *,
    width_ms: Callable[[int], int],
    layings_ms: Sequence[int] = (),
    before: Air | None = None,
) -> Iterator[Moment]:
    """Yield the air of the log after `since_ms`, at times that rise.

    Parameters
    ----------
    airs : iterable of (int, Air)
        One a minute at most, in the order of time, UTC ms.
    width_ms : callable
        How wide the means may be at a time, ms; 0 takes each as it is. Asked after the moment before was used.
    layings_ms : sequence of int
        UTC ms at which coats were laid: no mean reaches over one.
    before : Air or None
        The air that the stack was last in.
    """
    before_ms = since_ms
    group: list[tuple[int, Air]] = []
    for time_ms, air in airs:
        moment = Moment.after(before, air, before_ms, time_ms)
        if group and (moment.unseen or any(before_ms < laid_ms <= time_ms for laid_ms in layings_ms)):
            yield _mean(group)
            group = []
        width = 0 if moment.unseen else width_ms(time_ms)
        if group and time_ms - group[0][0] >= width:
            yield _mean(group)
            group = []
        if width:
            group.append((time_ms, air))
        else:
            yield moment
        before, before_ms = air, time_ms
    if group:
        yield _mean(group)


def width_for(film: Film, age_ms: int) -> int:
    """Return how wide the means may be for a stack under `film`, laid `age_ms` ago: 0 while any of it is wet, ms."""
    if film.is_wet:
        return 0
    return OLD_WIDTH_MS if age_ms >= OLD_MS else DRY_WIDTH_MS


def _mean(group: Sequence[tuple[int, Air]]) -> Moment:
    count = len(group)
    air = Air(
        temperature_C=sum(air.temperature_C for _, air in group) / count,
        humidity_pct=sum(air.humidity_pct for _, air in group) / count,
        air_speed_m_s=steady_speed([air.air_speed_m_s for _, air in group]),
        pressure_Pa=sum(air.pressure_Pa for _, air in group) / count,
        age_s=max((air.age_s for _, air in group if air.age_s is not None), default=None),
        speed_is_measured=all(air.speed_is_measured for _, air in group),
    )
    return Moment(time_ms=group[-1][0], air=air)


def _harsher(before: Air | None, after: Air) -> Air:
    """Return the colder and damper of the ends of a hole, and still air, so that no time comes out too early."""
    ends = (after,) if before is None else (before, after)
    return replace(
        after,
        temperature_C=min(air.temperature_C for air in ends),
        humidity_pct=max(air.humidity_pct for air in ends),
        air_speed_m_s=min(STILL_M_S, *(air.air_speed_m_s for air in ends)),
    )
