"""Readings as columns: how a log of millions of rows travels."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.readings import Channel, Reading


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LogColumns:
    """Readings that no board sent, rising in time; columns of n.

    Attributes
    ----------
    time_ms : (n,) int64
        UTC ms.
    values : mapping of Channel to (n,) float64
        In the channel's own unit, NaN where nothing was read; a channel that is not there was never read.
    """

    time_ms: NDArray[np.int64]
    values: Mapping[Channel, NDArray[np.float64]]

    @property
    def size(self) -> int:
        """How many readings these are."""
        return int(self.time_ms.size)

    def part(self, first: int, after: int) -> LogColumns:
        """Return the readings from number `first` up to before `after`."""
        values = {channel: column[first:after] for channel, column in self.values.items()}
        return LogColumns(time_ms=self.time_ms[first:after], values=values)

    def column(self, channel: Channel) -> NDArray[np.float64]:
        """Return a channel's values, NaN throughout where it was never read."""
        return self.values.get(channel, np.full(self.size, np.nan))


def columns_of(readings: Sequence[Reading]) -> LogColumns:
    """Return readings as columns."""
    read = [channel for channel in Channel if any(one.value(channel) is not None for one in readings)]
    return LogColumns(
        time_ms=np.array([one.time_ms for one in readings], dtype=np.int64),
        values={channel: np.array([one.value(channel) for one in readings], dtype=np.float64) for channel in read},
    )


def joined(parts: Sequence[LogColumns]) -> LogColumns:
    """Return parts that follow each other as one."""
    if len(parts) == 1:
        return parts[0]
    read = [channel for channel in Channel if any(channel in part.values for part in parts)]
    return LogColumns(
        time_ms=np.concatenate([part.time_ms for part in parts]),
        values={channel: np.concatenate([part.column(channel) for part in parts]) for channel in read},
    )
