"""A review's evidence as figures: one row a moment of the room, RFC 4180."""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime
from math import isfinite

import numpy as np

from studiowatch.studio.review_views import FilmTrace, Review

_HEAD = ("time", "air_temperature_C", "dew_point_C", "humidity_pct", "air_speed_m_s", "film_C")
_DECIMALS = 4


def review_csv(review: Review) -> str:
    """Return the room and the films of `review` as CSV; an empty cell is what nobody read, or a coat not yet on."""
    room, films = review.room, review.films
    out = io.StringIO()
    rows = csv.writer(out, lineterminator="\r\n")
    rows.writerow((*_HEAD, *(f"held_g_m2_coat_{place}_{_name(film)}" for place, film in enumerate(films, start=1))))
    for row, time_ms in enumerate(room.time_ms):
        films_now = [_at(film, int(time_ms)) for film in films]
        air = (room.temperature_C[row], room.dew_point_C[row], room.humidity_pct[row], room.air_speed_m_s[row])
        film_C = films_now[-1][0] if films_now else np.nan
        held = (held for _, held in films_now)
        moment = datetime.fromtimestamp(time_ms / 1000, UTC).isoformat(timespec="seconds").replace("+00:00", "Z")
        rows.writerow((moment, *(_cell(float(value)) for value in (*air, film_C, *held))))
    return out.getvalue()


def _name(film: FilmTrace) -> str:
    """Return a coat's label as part of a column's name, letters and digits alone: no sheet reads it as a formula."""
    return "".join(sign if sign.isalnum() else "_" for sign in film.label)


def _at(film: FilmTrace, time_ms: int) -> tuple[float, float]:
    """Return temperature and what is held as last known at a time, NaN outside the film's own time."""
    place = int(np.searchsorted(film.time_ms, time_ms, side="right")) - 1
    if place < 0 or time_ms > film.time_ms[-1]:
        return np.nan, np.nan
    return float(film.film_C[place]), float(film.water_g_m2[place])


def _cell(value: float) -> str:
    return f"{value:.{_DECIMALS}g}" if isfinite(value) else ""
