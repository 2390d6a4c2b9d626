"""The air that a film dried in, from the log: by the minute, coarser where that is enough, honest about holes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading

BRIDGED_MS = 600_000  # ms, a hole in the log up to this long is bridged; a longer one is said
COARSE_AFTER_MS = 86_400_000  # ms after laying from which wider means will do: the fast part is over; assumption
COARSE_MS = 600_000  # ms, width of those means
STILL_M_S = 0.05  # m/s, air in a room with nothing on, where no calibrated sensor says more; assumption


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


def moments(means: Iterable[Reading], laid_ms: int) -> Iterator[Moment]:
    """Yield the air of the log after `laid_ms`, at times that rise.

    Parameters
    ----------
    means : iterable of Reading
        One a minute at most, in the order of time.
    """
    before: Air | None = None
    before_ms = laid_ms
    group: list[tuple[int, Air]] = []
    for time_ms, air in _airs(means):
        moment = Moment.after(before, air, before_ms, time_ms)
        is_fine = moment.unseen or time_ms - laid_ms < COARSE_AFTER_MS
        if group and (is_fine or time_ms - group[0][0] >= COARSE_MS):
            yield _mean(group)
            group = []
        if is_fine:
            yield moment
        else:
            group.append((time_ms, air))
        before, before_ms = air, time_ms
    if group:
        yield _mean(group)


def _airs(means: Iterable[Reading]) -> Iterator[tuple[int, Air]]:
    for reading in means:
        if reading.temperature_C is not None and reading.humidity_pct is not None:
            speed_m_s = STILL_M_S if reading.air_speed_m_s is None else reading.air_speed_m_s
            yield (
                reading.time_ms,
                Air(temperature_C=reading.temperature_C, humidity_pct=reading.humidity_pct, air_speed_m_s=speed_m_s),
            )


def _mean(group: Sequence[tuple[int, Air]]) -> Moment:
    count = len(group)
    air = Air(
        temperature_C=sum(air.temperature_C for _, air in group) / count,
        humidity_pct=sum(air.humidity_pct for _, air in group) / count,
        air_speed_m_s=sum(air.air_speed_m_s for _, air in group) / count,
    )
    return Moment(time_ms=group[-1][0], air=air)


def _harsher(before: Air | None, after: Air) -> Air:
    """Return the colder and damper of the ends of a hole, and still air, so that no time comes out too early."""
    ends = (after,) if before is None else (before, after)
    return Air(
        temperature_C=min(air.temperature_C for air in ends),
        humidity_pct=max(air.humidity_pct for air in ends),
        air_speed_m_s=STILL_M_S,
    )
