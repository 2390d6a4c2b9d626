"""The air that a film dried in, from the log: as the live room was judged, coarser where that is enough."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service.room_now import BRIDGED_MS, STILL_M_S, RoomNow

DAY_MS = 86_400_000  # ms
COARSE = ((7 * DAY_MS, 3_600_000), (DAY_MS, 600_000))  # ms after laying, and width of means from then on; assumption
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


def airs(readings: Iterable[Reading]) -> Iterator[tuple[int, Air]]:
    """Yield the air at the films at each reading, UTC ms, judged as the live room is.

    Parameters
    ----------
    readings : iterable of Reading
        In the order of time; those of a moment at which the air is not known are left out.
    """
    room = RoomNow(began_ms=0)
    for reading in readings:
        room.take(reading)
        air = room.mean_air()
        if air is not None:
            yield reading.time_ms, air


def moments(
    means: Iterable[Reading], since_ms: int, layings_ms: Sequence[int], *, before: Air | None = None
) -> Iterator[Moment]:
    """Yield the air of the log after `since_ms`, at times that rise.

    Parameters
    ----------
    means : iterable of Reading
        One a minute at most, in the order of time.
    layings_ms : sequence of int
        UTC ms at which the coats of the stack were laid: the longer ago the last one, the wider the means.
    before : Air or None
        The air that the stack was last in.
    """
    before_ms = since_ms
    group: list[tuple[int, Air]] = []
    for time_ms, air in airs(means):
        moment = Moment.after(before, air, before_ms, time_ms)
        width_ms = 0 if moment.unseen else _width_ms(time_ms, layings_ms)
        if group and time_ms - group[0][0] >= width_ms:
            yield _mean(group)
            group = []
        if width_ms:
            group.append((time_ms, air))
        else:
            yield moment
        before, before_ms = air, time_ms
    if group:
        yield _mean(group)


def _width_ms(time_ms: int, layings_ms: Sequence[int]) -> int:
    ages_ms = [time_ms - laid_ms for laid_ms in layings_ms if laid_ms <= time_ms]
    return next((width_ms for from_ms, width_ms in COARSE if ages_ms and min(ages_ms) >= from_ms), 0)


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
