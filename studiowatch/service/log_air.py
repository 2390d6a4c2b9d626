"""The air that films dried in, from the log: as the live room was judged, coarser where that is enough."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

from studiowatch.coats.film_state import Film
from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service.ports import ReadingsLog
from studiowatch.service.room_now import BRIDGED_MS, STILL_M_S, WARM_UP_MS, RoomNow

DAY_MS = 86_400_000  # ms
OLD_MS = 7 * DAY_MS  # ms after the last laying; assumption
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
        """Return the moment when `air` was read; a hole since `before_ms` takes the harsher of its ends."""
        if time_ms - before_ms <= BRIDGED_MS:
            return cls(time_ms=time_ms, air=air)
        return cls(time_ms=time_ms, air=_harsher(before, air), unseen=True)


def airs(readings: Iterable[Reading], room: RoomNow | None = None) -> Iterator[tuple[int, Air]]:
    """Yield the air at the films at each reading, UTC ms, judged as the live room is.

    Parameters
    ----------
    readings : iterable of Reading
        In the order of time; those of a moment at which the air is not known are left out.
    room : RoomNow or None
        The room as it was judged up to then; None if nothing is known of it.
    """
    room = RoomNow(began_ms=0) if room is None else room
    for reading in readings:
        room.take(reading)
        air = room.mean_air()
        if air is not None:
            yield reading.time_ms, air


@dataclass(slots=True)
class JudgedLog:
    """The log's air, judged once for all the coats that dry through it, and remembered until `forget`."""

    log: ReadingsLog
    _days: dict[int, tuple[tuple[int, Air], ...]] = field(default_factory=dict)
    _rooms: dict[int, RoomNow] = field(default_factory=dict)

    def airs(self, start_ms: int, end_ms: int) -> Iterator[tuple[int, Air]]:
        """Yield the air at the films by the minute, UTC ms with start <= time < end; days are read as needed."""
        for day in range(start_ms // DAY_MS, -(-end_ms // DAY_MS)):
            if day not in self._days:
                self._days[day] = tuple(self._judged(day))
            yield from ((time_ms, air) for time_ms, air in self._days[day] if start_ms <= time_ms < end_ms)

    def forget(self) -> None:
        """Let go of the days: more may have been logged by the next time."""
        self._days.clear()
        self._rooms.clear()

    def _judged(self, day: int) -> Iterator[tuple[int, Air]]:
        start_ms = day * DAY_MS
        room = self._rooms.pop(day, None)
        if room is None:
            room = RoomNow(began_ms=0)
            deque(airs(self.log.minute_means(start_ms - WARM_UP_MS, start_ms), room), maxlen=0)
        yield from airs(self.log.minute_means(start_ms, start_ms + DAY_MS), room)
        self._rooms[day + 1] = room


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
        air_speed_m_s=sum(air.air_speed_m_s for _, air in group) / count,
        pressure_Pa=sum(air.pressure_Pa for _, air in group) / count,
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
