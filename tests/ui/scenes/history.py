"""Made-up records behind the window: two days of a room, half a year of pieces, and a log that holds nothing."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from studiowatch.room.readings import Channel, Reading
from studiowatch.service.ports import PastView, Series
from studiowatch.ui.models.times import DAY_MS, HOUR_MS, MINUTE_MS
from tests.service.unwritten import UnwrittenLog
from tests.ui.past_scenes import past

from .clock import NOW_MS

PAST = past(NOW_MS)


class NoLog(UnwrittenLog):
    """A log that holds nothing: what is laid now needs none."""

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        del start_ms, end_ms
        return ()

    minute_means = between


class MadeUpHistory:
    """Two days of a believable room, drawn from a few sines: only for the eye."""

    def span_ms(self) -> tuple[int, int] | None:
        return NOW_MS - 2 * DAY_MS, NOW_MS

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        end_ms = min(end_ms, NOW_MS)
        start_ms = max(start_ms, NOW_MS - 2 * DAY_MS)
        step = max(1000, (end_ms - start_ms) // max(1, buckets))
        times = np.arange(start_ms, max(start_ms, end_ms), step, dtype=np.int64)
        phase = 2 * np.pi * (times % DAY_MS) / DAY_MS
        wobble = 0.5 * np.sin(times / 61_000.0) + 0.5 * np.sin(times / 173_000.0)
        mean, noise = {
            Channel.TEMPERATURE: (20.0 - 1.4 * np.cos(phase - 0.6) + 0.06 * wobble, 0.08),
            Channel.HUMIDITY: (56.0 + 8.0 * np.cos(phase - 0.3) + 0.5 * wobble, 0.5),
            Channel.AIR_SPEED: (_fan(times) + 0.012 * wobble, 0.02),
        }.get(channel, (np.empty(0), 0.0))
        if not len(mean):
            times = np.empty(0, dtype=np.int64)
        return Series(time_ms=times, low=mean - noise, high=mean + noise, mean=mean, bucket_ms=int(step))

    def past(self) -> PastView:
        return PAST

    def close(self) -> None:
        """Nothing is held."""


def _fan(times: np.ndarray) -> np.ndarray:
    ago = NOW_MS - times
    on = (ago < 5 * MINUTE_MS) | ((ago > 5 * HOUR_MS) & (ago < 5.8 * HOUR_MS))
    return np.where(on, 0.33, 0.05)
