"""Rooms with a day and a night and weather of their own, and what ready ranges over them are worth.

A room's truth: a mean, a swing over the day, weather that wanders for a day or so, warm air being drier at the same
vapour, and now and then a heater in the evening. Made anew for each seed; the program's own outlook knows none of it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.belief import PRIOR
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import Film, lay
from studiowatch.coats.readiness import outlook
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import Standing, standing_on
from studiowatch.physics.air import Air, AnyAir
from studiowatch.physics.ranges import Array
from studiowatch.room.hourly_log import DAY_H, HourlyLog
from studiowatch.room.outlook import look_ahead
from studiowatch.service.coming_air import coming_air

HOUR_S = 3600.0
AHEAD_H = 96
STILL_M_S = 0.06
Room = tuple[Array, Array]  # temperature, °C, and humidity, %, by the hour
Ahead = Callable[[Room, int, int], Sequence[tuple[AnyAir, float]]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Worth:
    """What ranges were worth: the share of truths inside, and the mean score of the draws, h; less is better."""

    held: float
    score_h: float
    cases: int


def swinging_room(seed: int, days: int) -> Room:
    """Return a room's hours."""
    chance = np.random.default_rng(seed)
    hours = np.arange(days * DAY_H)
    phase = 2.0 * np.pi * (hours - chance.uniform(12.0, 16.0)) / DAY_H
    temperature_C = chance.uniform(16.0, 23.0) + chance.uniform(1.5, 5.0) * np.cos(phase)
    humidity_pct = chance.uniform(50.0, 72.0) - chance.uniform(4.0, 12.0) * np.cos(phase)
    lasts_h = chance.uniform(12.0, 36.0)
    weather = _wandering(chance, hours.size, lasts_h)
    temperature_C += chance.uniform(0.5, 1.5) * weather[:, 0]
    humidity_pct += chance.uniform(2.0, 6.0) * (0.8 * weather[:, 1] - 0.4 * weather[:, 0])
    if chance.random() < 0.5:  # half of them: a heater on some evenings
        evenings = np.repeat(chance.random(days) < 0.5, DAY_H) & (hours % DAY_H >= 18) & (hours % DAY_H < 22)
        temperature_C += np.where(evenings, 2.0, 0.0)
        humidity_pct -= np.where(evenings, 5.0, 0.0)
    temperature_C += chance.normal(0.0, 0.1, hours.size)
    humidity_pct += chance.normal(0.0, 0.4, hours.size)
    return temperature_C, np.clip(humidity_pct, 15.0, 98.0)


def _wandering(chance: np.random.Generator, hours: int, lasts_h: float) -> Array:
    keeps = np.exp(-1.0 / lasts_h)
    shocks = chance.normal(0.0, np.sqrt(1.0 - keeps**2), (hours, 2))
    made = np.empty_like(shocks)
    made[0] = chance.normal(size=2)
    for at in range(1, hours):
        made[at] = keeps * made[at - 1] + shocks[at]
    return made


def as_it_is(room: Room, now: int, _draws: int) -> Sequence[tuple[AnyAir, float]]:
    """Return the present air, held."""
    return ((_air(room, now, now), AHEAD_H * HOUR_S),)


def as_foretold(room: Room, now: int, draws: int) -> Sequence[tuple[AnyAir, float]]:
    """Return the program's outlook of the room, from its past alone."""
    past = slice(None, now + 1)
    speed = np.full(now + 1, STILL_M_S)
    log = HourlyLog(temperature_C=room[0][past], humidity_pct=room[1][past], air_speed_m_s=speed)
    return coming_air(look_ahead(log, AHEAD_H, draws=draws, seed=now), draws, passed_s=0.0, horizon_s=AHEAD_H * HOUR_S)


def as_it_came(room: Room, now: int, _draws: int) -> Sequence[tuple[AnyAir, float]]:
    """Return the room as it truly was."""
    return tuple((_air(room, now + hour, now + hour + 1), HOUR_S) for hour in range(AHEAD_H))


def _air(room: Room, first: int, last: int) -> Air:
    temperature_C, humidity_pct = (float(values[first] + values[last]) / 2.0 for values in room)
    return Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=STILL_M_S)


def worth(sheet: DataSheet, foretell: Ahead, stage: Stage, *, rooms: int, known_days: float, draws: int = 128) -> Worth:
    """Return what the ranges of one stage were worth, over rooms of which `known_days` of log are known.

    In each room a coat whose amount was measured is laid at every fifth hour of a day. The truths are films of the
    same product, drawn anew, in the room as it came.
    """
    guessed, true = (standing_on(PRIOR, draws, seed, measured=True) for seed in (1, 2))
    first = round(known_days * DAY_H)
    held, scores = [], []
    for seed in range(rooms):
        room = swinging_room(seed, int(known_days) + 7)
        for now in range(first, first + DAY_H, 5):
            told_s, came_s = (
                _reached_s(sheet, standing, ahead(room, now, draws), stage)
                for standing, ahead in ((guessed, foretell), (true, as_it_came))
            )
            low, high = np.quantile(told_s, [0.1, 0.9])
            held.append(np.mean((low <= came_s) & (came_s <= high)))
            scores.append(_score(told_s, came_s) / HOUR_S)
    return Worth(held=float(np.mean(held)), score_h=float(np.mean(scores)), cases=len(held))


def _reached_s(sheet: DataSheet, standing: Standing, coming: Sequence[tuple[AnyAir, float]], stage: Stage) -> Array:
    film: Film = lay(sheet, anchor(sheet, standing.particles.draws), wet_um=sheet.wet_um, side_m=0.4)
    table = outlook(film, Air(temperature_C=20.0, humidity_pct=50.0), horizon_s=AHEAD_H * HOUR_S, coming=coming)
    reached_s: Array = np.minimum(table[ROW[stage]][1:], AHEAD_H * HOUR_S)
    return reached_s


def _score(told: Array, came: Array) -> float:
    """Return the continuous ranked probability score of the draws `told`, over all that `came`."""
    ordered = np.sort(told)
    ranks = 2.0 * np.arange(1, told.size + 1) - told.size - 1.0
    apart = float(ranks @ ordered) / told.size**2
    return float(np.abs(told[:, np.newaxis] - came).mean()) - apart
