"""The log for the room history as the calibrations have it; what is stored stays what the sensor said."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.corrections import Corrections, Stretch, corrections
from studiowatch.room.readings import Channel
from studiowatch.store.buckets import Buckets, bucket_values, merge
from studiowatch.store.history import Grid, HistoryReader, asked_grid
from studiowatch.store.packing import Integers, Numbers
from studiowatch.store.past import Past
from studiowatch.store.sealing import HOUR_MS
from studiowatch.store.shapes import Series

T = TypeVar("T", bound=np.generic)
PutRight = Callable[[Stretch, Integers, Numbers], Numbers]  # a stretch, times and values in it, (n,) each


class CorrectedHistory:
    """Reads as `HistoryReader` does, with humidity put right and voltages of a calibrated bead as air speed.

    The least and the greatest value of a bucket are put right exactly, and so is a bucket that holds typed readings or
    those of two sensors. The mean speed of a bucket (of an hour in wider ones) is the speed of its mean voltage, which
    in gusts of 40 % of the mean is 6 % less.
    """

    def __init__(self, path: Path) -> None:
        self._reader = HistoryReader(path)

    def past(self) -> Past:
        """Return what her records hold of the time behind; the same value until they change."""
        return self._reader.past()

    def span_ms(self) -> tuple[int, int] | None:
        """Return the times of the first and the last reading, UTC ms, or None if there is none."""
        return self._reader.span_ms()

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        """Return `channel` between two times, as `HistoryReader.series`, put right by the calibrations of the time."""
        if channel not in {Channel.HUMIDITY, Channel.AIR_SPEED}:
            return self._reader.series(channel, start_ms, end_ms, buckets)
        grid = asked_grid(start_ms, end_ms, buckets)
        known = self._corrections()
        stretches = [stretch for stretch, _, _ in known.between(grid.first_ms, grid.after_ms)]
        if channel is Channel.HUMIDITY and any(stretch.humidity for stretch in stretches):
            return self._put_right(Channel.HUMIDITY, grid, known, _humidity)
        raw = self._reader.series(channel, start_ms, end_ms, buckets)
        if channel is Channel.HUMIDITY or not any(stretch.air_speed for stretch in stretches):
            return raw
        temperature = self._reader.series(Channel.TEMPERATURE, start_ms, end_ms, buckets)
        return _joined(raw, self._put_right(Channel.AIR_SIGNAL, grid, known, _speeds_in(temperature)))

    def _put_right(self, channel: Channel, grid: Grid, known: Corrections, put_right: PutRight) -> Series:
        """Return `channel` put right: steps that hold what different calibrations hold for reading by reading."""
        grid = replace(grid, step_ms=min(grid.step_ms, HOUR_MS))
        typed_ms = self._reader.typed_ms(grid)
        edges_ms = [from_ms for _, from_ms, _ in known.between(grid.first_ms, grid.after_ms)]
        mixed = {edge_ms // grid.step_ms for edge_ms in edges_ms if edge_ms % grid.step_ms}
        mixed |= set((typed_ms // grid.step_ms).tolist())
        steps = self._reader.buckets(channel, grid)
        parts = [_whole(steps.part(~np.isin(steps.index, list(mixed))), grid.step_ms, known, put_right)]
        for step in sorted(mixed):
            start_ms = step * grid.step_ms
            time_ms, values, unchecked = self._reader.values(channel, start_ms, start_ms + grid.step_ms)
            is_typed = unchecked & np.isin(time_ms, typed_ms)
            values = np.where(is_typed, values, _at(time_ms, values, known, put_right))
            parts.append(bucket_values(time_ms, values, grid.step_ms))
        return grid.series(merge(parts))

    def close(self) -> None:
        """Let go of the file."""
        self._reader.close()

    def _corrections(self) -> Corrections:
        return corrections(self._reader.calibrations(), self._reader.sightings(), self._reader.imported())


def _humidity(stretch: Stretch, _: Integers, humidity_pct: Numbers) -> Numbers:
    return humidity_pct if stretch.humidity is None else stretch.humidity.corrected(humidity_pct)


def _speeds_in(temperature: Series) -> PutRight:
    """Return what makes voltages speeds; where there is no calibration there is none."""

    def speeds(stretch: Stretch, time_ms: Integers, signal_mV: Numbers) -> Numbers:
        air_C = np.full(time_ms.size, np.nan)
        if stretch.air_speed is None:
            return air_C
        if temperature.time_ms.size:
            air_C = np.interp(time_ms, temperature.time_ms, temperature.mean)
        return stretch.air_speed.law.speeds(signal_mV, air_C)

    return speeds


def _whole(steps: Buckets, step_ms: int, known: Corrections, put_right: PutRight) -> Buckets:
    """Return steps that lie within one stretch each, put right; those without a value any more are left out."""
    time_ms = steps.index * step_ms + step_ms // 2
    low, high, mean = (_at(time_ms, column, known, put_right) for column in (steps.low, steps.high, steps.mean))
    right = replace(steps, low=low, high=high, total=mean * steps.count)
    return right.part(~np.isnan(low))


def _at(time_ms: Integers, values: Numbers, known: Corrections, put_right: PutRight) -> Numbers:
    """Return `values` (n,) at `time_ms` (n,) put right, each by the stretch that its time lies in."""
    right = values.copy()
    if time_ms.size:
        for stretch, begin_ms, end_ms in known.between(int(time_ms.min()), int(time_ms.max()) + 1):
            part = (time_ms >= begin_ms) & (time_ms < end_ms)
            right[part] = put_right(stretch, time_ms[part], values[part])
    return right


def _joined(stored: Series, worked: Series) -> Series:
    """Return speeds that a board sent itself, and between them those worked out from voltages."""
    if not stored.time_ms.size or not worked.time_ms.size:
        return stored if stored.time_ms.size else worked
    width_ms = max(stored.bucket_ms, worked.bucket_ms)
    fresh = ~np.isin(worked.time_ms // width_ms, stored.time_ms // width_ms)
    order = np.argsort(np.concatenate([stored.time_ms, worked.time_ms[fresh]]), kind="stable")

    def join(one: NDArray[T], other: NDArray[T]) -> NDArray[T]:
        return np.concatenate([one, other[fresh]])[order]

    return Series(
        time_ms=join(stored.time_ms, worked.time_ms),
        low=join(stored.low, worked.low),
        high=join(stored.high, worked.high),
        mean=join(stored.mean, worked.mean),
        bucket_ms=width_ms,
    )
