"""A painter's rules of thumb over the raw files: common practice, no source. They share nothing with the program.

Each rule gives how hard it points to its cause: 1 is "I would say so", 2 is glaring. Under `FAIR` nothing is named.
"""

from __future__ import annotations

import csv
import tomllib
from dataclasses import dataclass
from datetime import datetime
from math import isnan, log, nan
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from .sheets import numbers_of

FAIR = 0.6
HOUR_S = 3600.0
MAGNUS_A, MAGNUS_B_C = 17.62, 243.12  # -, °C: Magnus form over water as in WMO-No. 8, annex 4.B; good to 0.1 K here


@dataclass(frozen=True)
class Seen:
    """One coat as it stands in the files: numbers of the sheet, of the coat, and the room's log."""

    coat: dict[str, Any]
    sheet: dict[str, Any]
    stack: list[tuple[dict[str, Any], dict[str, Any]]]  # coats below with their sheets, undermost first
    area_m2: float
    hours: NDArray[np.float64]  # since laying
    log: dict[str, NDArray[np.float64]]

    def mean(self, column: str, from_h: float, to_h: float) -> float:
        inside = (self.hours >= from_h) & (self.hours <= to_h) & ~np.isnan(self.log[column])
        return float(self.log[column][inside].mean()) if inside.any() else nan

    @property
    def open_h(self) -> float:
        """Return how long the film counts as wet: the sheet's touch-dry time with as much again."""
        return max(1.0, 2.0 * float(self.sheet["touch_dry_min"]) / 60.0)

    @property
    def times(self) -> float:
        return times_of(self.coat, self.sheet, self.area_m2)


def times_of(coat: dict[str, Any], sheet: dict[str, Any], area_m2: float) -> float:
    grams = coat["grams"] / sheet["density_kg_m3"] * 1e3 if "grams" in coat else nan
    volume_mL = coat.get("volume_mL", grams)
    wet_um = coat.get("wet_um", volume_mL / area_m2)
    return 1.0 if isnan(wet_um) else float(wet_um / sheet["wet_um"])


def look(studio: Path, room: Path, title: str, number: int, built_in: Path) -> Seen:
    """Read the files."""
    piece = next(each for each in tomllib.loads(studio.read_text("utf-8"))["piece"] if each["title"] == title)
    coats = piece["coat"][:number]
    folders = [studio.parent if each["sheet"].endswith(".toml") else built_in for each in coats]
    sheets = [
        numbers_of(folder / f"{each['sheet'].removesuffix('.toml')}.toml")
        for folder, each in zip(folders, coats, strict=True)
    ]
    with room.open(newline="", encoding="utf-8") as lines:
        rows = list(csv.DictReader(lines))
    laid = coats[-1]["laid"]
    hours = np.array([(_moment(row) - laid.timestamp()) / HOUR_S for row in rows])
    names = ("temperature_C", "humidity_pct", "air_speed_m_s", "surface_C")
    columns = {name: np.array([float(row.get(name) or nan) for row in rows]) for name in names}
    area_m2 = piece["width_cm"] * piece["height_cm"] / 1e4
    return Seen(coats[-1], sheets[-1], list(zip(coats[:-1], sheets[:-1], strict=True)), area_m2, hours, columns)


def _moment(row: dict[str, str]) -> float:
    return float(row["time_unix"]) if "time_unix" in row else datetime.fromisoformat(row["time"]).timestamp()


def named(seen: Seen) -> tuple[str, dict[str, float]]:
    """Return the cause that the rules name, and how hard each rule points."""
    points = {cause: rule(seen) for cause, rule in RULES.items()}
    cause = max(points, key=lambda each: points[each])
    return (cause if points[cause] >= FAIR else "unknown"), points


def _slowness(temperature_C: float, humidity_pct: float, times: float) -> float:
    """Return how many times the label's wait a coat needs: double per 10 K colder, more when damp or thick."""
    cold = 2.0 ** ((23.0 - temperature_C) / 10.0)
    wet = 1.0 + max(0.0, humidity_pct - 50.0) / 30.0
    return float(cold * wet * max(1.0, times) ** 1.5)


def _sealed(seen: Seen) -> float:
    if not seen.stack:
        return 0.0
    coat, sheet = seen.stack[-1]
    wait_h = (seen.coat["laid"] - coat["laid"]).total_seconds() / HOUR_S
    room = (seen.mean("temperature_C", -wait_h, 0), seen.mean("humidity_pct", -wait_h, 0))
    if any(map(isnan, room)):
        room = (23.0, 50.0)
    needed_h = sheet["recoat_h"] * _slowness(*room, times_of(coat, sheet, seen.area_m2))
    return max(0.0, log(needed_h / wait_h) / log(2.0))


def _damp(seen: Seen) -> float:
    allowed = min(75.0, seen.sheet.get("max_humidity_pct", 75.0))
    return max(0.0, (seen.mean("humidity_pct", 0.1, 2 * seen.open_h) - allowed) / 12.0)


def _cold(seen: Seen) -> float:
    if "mfft_C" not in seen.sheet:
        return 0.0
    return max(0.0, (seen.sheet["mfft_C"] + 1.5 - seen.mean("temperature_C", 0.1, 2 * seen.open_h)) / 2.5)


def _dew(seen: Seen) -> float:
    temperature, humidity = seen.log["temperature_C"], seen.log["humidity_pct"]
    gamma = np.log(humidity / 100.0) + MAGNUS_A * temperature / (MAGNUS_B_C + temperature)
    dew = MAGNUS_B_C * gamma / (MAGNUS_A - gamma)
    surface = np.where(np.isnan(seen.log["surface_C"]), temperature, seen.log["surface_C"])
    wet = (seen.hours >= 0) & (seen.hours <= 4 * seen.open_h) & ~np.isnan(dew)
    below_h = float((surface[wet] - dew[wet] < 0.4).mean() * 4 * seen.open_h) if wet.any() else 0.0
    return 6.0 * min(below_h, 1.0)


def _skinned(seen: Seen) -> float:
    moved = np.nan_to_num(seen.mean("air_speed_m_s", 0.0, seen.open_h), nan=0.0)
    hot = max(0.0, seen.mean("temperature_C", 0.1, seen.open_h) - 28.0) / 4.0
    dry = max(0.0, 30.0 - seen.mean("humidity_pct", 0.1, seen.open_h)) / 10.0
    return float(max(0.0, moved - 0.15) / 0.35 + hot + dry)


def _thick(seen: Seen) -> float:
    return max(0.0, (seen.times - 1.3) / 0.6)


def _thinned(seen: Seen) -> float:
    return max(0.0, (float(seen.coat.get("thinned_pct", 0.0)) - 10.0) / 15.0)


def _matting(seen: Seen) -> float:
    sheets = [*(sheet for _, sheet in seen.stack), seen.sheet]
    count = sum(bool(sheet.get("matting_agent")) for sheet in sheets)
    return max(0.0, 1.5 * (count - 1.5)) if seen.sheet.get("matting_agent") else 0.0


def _touched(seen: Seen) -> float:
    covered = seen.coat.get("covered_from")
    if covered is None:
        return 0.0
    return max(0.0, 2.0 - (covered - seen.coat["laid"]).total_seconds() / 60.0 / 7.0)


def _clearing(seen: Seen) -> float:
    looked = seen.coat.get("seen")
    if looked is None:
        return 0.0
    looked_h = (looked - seen.coat["laid"]).total_seconds() / HOUR_S
    room = (seen.mean("temperature_C", 0, looked_h), seen.mean("humidity_pct", 0, looked_h))
    slow = 1.0 if any(map(isnan, room)) else _slowness(*room, seen.times)
    return max(0.0, 1.5 + log(seen.sheet.get("clear_h", 1.5) * slow / looked_h))


RULES = {
    "sealed-in-water": _sealed,
    "damp-air": _damp,
    "below-mfft": _cold,
    "condensation": _dew,
    "skinned": _skinned,
    "too-thick": _thick,
    "thinned": _thinned,
    "matting-build-up": _matting,
    "touched": _touched,
    "still-clearing": _clearing,
}
