"""A made-up room: what its air did around the laying of a coat, and what a logger beside the rack wrote down of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, timezone
from math import ceil

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Knots = Sequence[tuple[float, float]]  # (hours since the coat was laid, value), straight in between, level outside
SECONDS = 3600.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Air:
    """What truly happened. All hours count from the laying of the reviewed coat."""

    temperature_C: Knots
    humidity_pct: Knots
    air_m_s: Knots = ((0, 0.05),)
    surface_C: Knots = ()
    covered_from_h: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Logger:
    """How the logger saw it: its step, its noise and drift, what it missed, and how it writes."""

    every_s: float = 60.0
    noise_K: float = 0.05
    noise_pct: float = 0.4
    drift_pct: float = 0.0  # from the first row to the last
    offset_K: float = 0.0
    gaps_h: Sequence[tuple[float, float]] = ()
    empty_share: float = 0.0
    air_column: bool = True
    air_cells: bool = True
    unix_time: bool = False
    zone_h: float = 0.0


def along(knots: Knots, hours: Floats) -> Floats:
    at, value = zip(*knots, strict=True)
    return np.interp(hours, at, value)


def wander(rng: np.random.Generator, count: int, size: float, keep: float) -> Floats:
    """Return a slow random wandering (first-order autoregressive) with the standard deviation `size`."""
    steps = rng.normal(0.0, size * np.sqrt(1 - keep**2), count)
    steps[0] = rng.normal(0.0, size)
    out = np.empty(count)
    held = 0.0
    for index, step in enumerate(steps):
        held = keep * held + step
        out[index] = held
    return out


def room_log(air: Air, logger: Logger, *, laid: datetime, from_h: float, to_h: float, rng: np.random.Generator) -> str:
    """Return the room log as CSV text."""
    count = max(2, ceil((to_h - from_h) * SECONDS / logger.every_s))
    hours = from_h + np.arange(count) * logger.every_s / SECONDS
    keep = float(np.exp(-logger.every_s / 1800.0))
    temperature = along(air.temperature_C, hours) + wander(rng, count, 0.15, keep)
    humidity = along(air.humidity_pct, hours) + wander(rng, count, 0.6, keep)
    temperature += logger.offset_K + rng.normal(0.0, logger.noise_K, count)
    humidity += logger.drift_pct * np.linspace(0.0, 1.0, count) + rng.normal(0.0, logger.noise_pct, count)
    speed = along(air.air_m_s, hours) * np.exp(rng.normal(0.0, 0.12, count))
    columns = {"temperature_C": (temperature, 2), "humidity_pct": (np.clip(humidity, 1.0, 100.0), 1)}
    if logger.air_column:
        columns["air_speed_m_s"] = (speed if logger.air_cells else np.full(count, np.nan), 3)
    if air.surface_C:
        columns["surface_C"] = (along(air.surface_C, hours) + rng.normal(0.0, 0.1, count), 2)
    cells = {name: _cells(values, digits, logger, rng) for name, (values, digits) in columns.items()}
    if air.covered_from_h is not None:
        cells["cover"] = [str(int(hour >= air.covered_from_h)) for hour in hours]
    times = _times(hours, laid, logger)
    kept = [not any(begin <= hour < end for begin, end in logger.gaps_h) for hour in hours]
    head = ",".join(["time_unix" if logger.unix_time else "time", *cells])
    rows = (
        ",".join(row) for row, keep_it in zip(zip(times, *cells.values(), strict=True), kept, strict=True) if keep_it
    )
    return "\r\n".join([head, *rows]) + "\r\n"


def _cells(values: Floats, digits: int, logger: Logger, rng: np.random.Generator) -> list[str]:
    lost = rng.random(len(values)) < logger.empty_share
    return ["" if gone or np.isnan(value) else f"{value:.{digits}f}" for value, gone in zip(values, lost, strict=True)]


def _times(hours: Floats, laid: datetime, logger: Logger) -> list[str]:
    moments = (laid + timedelta(seconds=round(float(hour) * SECONDS)) for hour in hours)
    if logger.unix_time:
        return [str(int(moment.timestamp())) for moment in moments]
    zone = timezone(timedelta(hours=logger.zone_h)) if logger.zone_h else UTC
    return [moment.astimezone(zone).isoformat().replace("+00:00", "Z") for moment in moments]
