"""A studio's file with a year of readings at one a second, made up, for the benchmarks of the store and the history.

    python tests/benchmarks/year_file.py year.db          about four minutes
    python tests/benchmarks/year_file.py week.db 7        so many days

Each reading has temperature, humidity and air speed with the noise of usual sensors, and comes a few milliseconds early
or late as over USB. One second in each 30 days has a gust, at `PEAK_M_S`, and one day in the middle has no readings.
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.readings import Channel
from studiowatch.store.database import open_database
from studiowatch.store.sealing import HOUR_MS, HourColumns, seal_columns

END_MS = 1_772_442_000_000 // HOUR_MS * HOUR_MS  # 2026-03-02T09:00:00Z
DAYS = 365
HOUR_S = 3600
PEAK_EVERY_H = 30 * 24
PEAK_S = 1234  # within its hour
PEAK_M_S = 1.25  # no other reading comes near it
SEED = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Year:
    """Which hours the made-up log has."""

    days: int = DAYS

    @property
    def start_ms(self) -> int:
        """UTC ms of the first hour."""
        return END_MS - self.days * 24 * HOUR_MS

    def is_silent(self, hour: int) -> bool:
        """Tell whether nothing was logged in an hour."""
        return hour // 24 == self.days // 2

    def hour(self, hour: int) -> HourColumns:
        """Return the readings of an hour."""
        drawn = np.random.default_rng((SEED, hour))
        second = np.arange(HOUR_S) + hour * HOUR_S
        day, season = 2.0 * np.pi * second / 86_400.0, 2.0 * np.pi * hour / (24.0 * DAYS)
        air_m_s = np.abs(0.04 + drawn.normal(0.0, 0.006, HOUR_S))
        if hour % PEAK_EVERY_H == 0:
            air_m_s[PEAK_S] = PEAK_M_S
        return HourColumns(
            ids=second + 1,
            time_ms=self.start_ms
            + 1000 * second
            + np.rint(np.clip(drawn.normal(1.0, 3.0, HOUR_S), 0, 9)).astype(np.int64),
            values={
                Channel.TEMPERATURE: _printed(20.5 + 1.5 * np.sin(day) - 2.0 * np.cos(season), 0.02, 2, drawn),
                Channel.HUMIDITY: _printed(52.0 + 6.0 * np.sin(day + 1.0) + 5.0 * np.sin(season), 0.06, 2, drawn),
                Channel.AIR_SPEED: np.round(air_m_s, 3),
            },
            checked=np.ones(HOUR_S, dtype=np.int64),
            faults=[None] * HOUR_S,
        )


def _printed(
    course: NDArray[np.float64], noise: float, decimals: int, drawn: np.random.Generator
) -> NDArray[np.float64]:
    return np.round(course + drawn.normal(0.0, noise, course.size), decimals)


def make(path: Path, year: Year) -> None:
    """Write the file at `path`, which must not be there yet."""
    if path.exists():
        raise SystemExit(f"{path} is there already; name a new file.")
    database = open_database(path)
    try:
        for hour in range(year.days * 24):
            if not year.is_silent(hour):
                with database.transaction() as connection:
                    seal_columns(connection, year.hour(hour))
    finally:
        database.close()


def main() -> None:
    """Make the file that was asked for."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("path", type=Path)
    parser.add_argument("days", type=int, nargs="?", default=DAYS)
    asked = parser.parse_args()
    make(asked.path, Year(days=asked.days))
    print(f"{asked.path}: {asked.path.stat().st_size / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
