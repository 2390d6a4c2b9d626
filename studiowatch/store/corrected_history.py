"""The log for the room history as the calibrations have it; what is stored stays what the sensor said."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.corrections import Corrections, Stretch, corrections
from studiowatch.room.readings import Channel
from studiowatch.store.history import HistoryReader
from studiowatch.store.past import Past
from studiowatch.store.shapes import Series

T = TypeVar("T", bound=np.generic)


class CorrectedHistory:
    """Reads as `HistoryReader` does, with humidity put right and voltages of a calibrated bead as air speed.

    The least and the greatest value of a bucket are put right exactly. The mean speed of a bucket is the speed of its
    mean voltage, which in gusts of 40 % of the mean is 6 % less.
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
        """Return `channel` between two times, as `HistoryReader.series`, each bucket put right by its middle."""
        raw = self._reader.series(channel, start_ms, end_ms, buckets)
        if channel is Channel.HUMIDITY:
            return _humidity(raw, self._corrections())
        if channel is Channel.AIR_SPEED:
            signal = self._reader.series(Channel.AIR_SIGNAL, start_ms, end_ms, buckets)
            temperature = self._reader.series(Channel.TEMPERATURE, start_ms, end_ms, buckets)
            return _joined(raw, _speeds(signal, temperature, self._corrections()))
        return raw

    def close(self) -> None:
        """Let go of the file."""
        self._reader.close()

    def _corrections(self) -> Corrections:
        return corrections(self._reader.calibrations(), self._reader.sightings(), self._reader.imported())


def _humidity(raw: Series, known: Corrections) -> Series:
    low, high, mean = raw.low.copy(), raw.high.copy(), raw.mean.copy()
    for stretch, part in _parts(raw, known):
        if stretch.humidity is not None:
            for column in (low, high, mean):
                column[part] = stretch.humidity.corrected(column[part])
    return Series(time_ms=raw.time_ms, low=low, high=high, mean=mean, bucket_ms=raw.bucket_ms)


def _speeds(signal: Series, temperature: Series, known: Corrections) -> Series:
    """Return the voltages of a calibrated bead as speeds; where there is no calibration there is no bucket."""
    air_C = np.full(signal.time_ms.size, np.nan)
    if temperature.time_ms.size:
        air_C = np.interp(signal.time_ms, temperature.time_ms, temperature.mean)
    columns = [np.full(signal.time_ms.size, np.nan) for _ in range(3)]
    for stretch, part in _parts(signal, known):
        if stretch.air_speed is not None:
            for column, raw in zip(columns, (signal.low, signal.high, signal.mean), strict=True):
                column[part] = stretch.air_speed.law.speeds(raw[part], air_C[part])
    there = ~np.isnan(columns[0])
    low, high, mean = (column[there] for column in columns)
    return Series(time_ms=signal.time_ms[there], low=low, high=high, mean=mean, bucket_ms=signal.bucket_ms)


def _parts(series: Series, known: Corrections) -> Iterator[tuple[Stretch, slice]]:
    """Yield each stretch with the buckets whose middles lie in it."""
    if not series.time_ms.size:
        return
    for stretch, begin_ms, end_ms in known.between(int(series.time_ms[0]), int(series.time_ms[-1]) + 1):
        yield stretch, slice(*np.searchsorted(series.time_ms, [begin_ms, end_ms]))


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
