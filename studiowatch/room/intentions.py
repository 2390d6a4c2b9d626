"""What she means to do with the room, and what its air then does: a simple balance of heat and of moisture.

Each draw of the outlook is the room left to itself. A heater brings it to its temperature as fast as the room was
ever seen to warm; afterwards the surplus leaks away as distances from the usual do. Vapour stays when air is warmed,
so that its humidity falls by the saturation pressure alone. A dehumidifier brings the vapour to its humidity, and
afterwards the deficit fills as the room's own vapour returns to the usual. A fan changes the air's speed in its
hours, and one that stays off brings the calmest air that the room has.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from studiowatch.physics.moist_air import humidity_with, saturation_pressure, vapour_pressure
from studiowatch.physics.ranges import Array, Mask, check
from studiowatch.room.daily_round import daily_round
from studiowatch.room.hourly_log import DAY_H, HourlyLog, known_rows
from studiowatch.room.outlook import FITTED_DAYS, HUMIDITY_PCT, Outlook
from studiowatch.speech.words import mark, say

STEPS_H = 6  # steps of ten minutes an hour
STEP_H = 1.0 / STEPS_H  # h
KEEPS_WARM_H = 6.0  # h, in which a surplus of warmth falls to 1/e in a common room; assumption
KEEPS_VAPOUR_H = 3.0  # h, as an air change of a third an hour; assumption
FADE_RANGE_H = (0.5, 48.0)  # h, of either in any room; assumption
PRIOR_H = 48.0  # h of log that these weigh as much as; assumption
WARMS_K_H = 1.5  # K/h, a common heater in a common room; assumption
WARMS_RANGE_K_H = (0.5, 6.0)  # K/h; assumption
DRIES_H = 1.0  # h, in which a dehumidifier takes 1 - 1/e of what is above its humidity, walls and all; assumption
FASTEST_SHARE = 0.98  # quantile of the hourly rises that counts as the heater at work; assumption
TARGETS = {"heater": (5.0, 35.0, "°C"), "dehumidifier": (25.0, 80.0, "%"), "fan": (0.0, 3.0, "m/s")}


class Doing(StrEnum):
    """What she can mean to have on."""

    HEATER = "heater"
    DEHUMIDIFIER = "dehumidifier"
    FAN = "fan"


_TARGET = {
    Doing.HEATER: mark("target of the heater"),
    Doing.DEHUMIDIFIER: mark("target of the dehumidifier"),
    Doing.FAN: mark("target of the fan"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Intention:
    """Something on from `start_h` to `end_h`, hours from now, at `target`: °C, % or m/s.

    Raises
    ------
    OutOfRange
        If the target cannot be, or the hours do not follow each other.
    """

    doing: Doing
    start_h: float
    end_h: float
    target: float

    def __post_init__(self) -> None:
        low, high, unit = TARGETS[self.doing]
        check(say(_TARGET[self.doing]), self.target, low, high, unit)
        check(say("end of what is meant to be on"), self.end_h, max(self.start_h, 0.0), np.inf, say("h from now"))


@dataclass(frozen=True, slots=True, kw_only=True)
class Balance:
    """The room's constants.

    Attributes
    ----------
    keeps_warm_h, keeps_vapour_h : float
        h in which a surplus of warmth, or a lack of vapour, falls to 1/e.
    warms_K_h : float
        How fast it warms with a heater on, K/h.
    """

    keeps_warm_h: float = KEEPS_WARM_H
    keeps_vapour_h: float = KEEPS_VAPOUR_H
    warms_K_h: float = WARMS_K_H


def balance_of(log: HourlyLog) -> Balance:
    """Return the constants of a room from its log, drawn to those of a common room as by `PRIOR_H` hours of log."""
    pairs = log.climate[-FITTED_DAYS * DAY_H :]
    known = known_rows(pairs)
    if known.sum() < 2:  # noqa: PLR2004 - a change needs two
        return Balance()
    vapour_Pa = saturation_pressure(np.nan_to_num(pairs[:, 0])) * pairs[:, 1] / 100.0
    both = np.column_stack([pairs[:, 0], vapour_Pa])
    away = both - daily_round(both)[-np.arange(len(both))[::-1] % DAY_H]
    rises = np.diff(pairs[:, 0])
    rises = rises[np.isfinite(rises)]
    fastest = float(np.quantile(rises, FASTEST_SHARE)) if rises.size >= DAY_H else WARMS_K_H
    return Balance(
        keeps_warm_h=_keeps_h(away[:, 0], KEEPS_WARM_H),
        keeps_vapour_h=_keeps_h(away[:, 1], KEEPS_VAPOUR_H),
        warms_K_h=float(np.clip(max(fastest, WARMS_K_H), *WARMS_RANGE_K_H)),
    )


def _keeps_h(away: Array, prior_h: float) -> float:
    """Return in how many hours a distance from the usual falls to 1/e."""
    both = np.isfinite(away[:-1]) & np.isfinite(away[1:])
    before, after = away[:-1][both], away[1:][both]
    weight = PRIOR_H * float(before.var()) if before.size else 1.0
    left = float(before @ after) + weight * np.exp(-1.0 / prior_h)
    share = left / (float(before @ before) + weight) if weight else np.exp(-1.0 / prior_h)
    shortest, longest = FADE_RANGE_H
    return float(-1.0 / np.log(np.clip(share, np.exp(-1.0 / shortest), np.exp(-1.0 / longest))))


def with_intentions(free: Outlook, meant: Sequence[Intention], balance: Balance) -> Outlook:
    """Return the outlook of the room if what is meant is done, from that of the room left to itself.

    Of two of a kind at one time the one that was said last holds.
    """
    if not meant:
        return free
    temperature_C, humidity_pct = free.temperature_C.copy(), free.humidity_pct.copy()
    warmer_K = np.zeros(len(temperature_C))
    drier_Pa = np.zeros(len(temperature_C))
    for step in range(1, free.hours * STEPS_H + 1):
        at_h = step * STEP_H
        own_C, own_pct = _between(free.temperature_C, at_h), _between(free.humidity_pct, at_h)
        warmer_K = _warmed(warmer_K, own_C, _on(meant, Doing.HEATER, at_h), balance)
        own_Pa = vapour_pressure(own_C, own_pct)
        now_C = own_C + warmer_K
        drier_Pa = _dried(drier_Pa, own_Pa, now_C, _on(meant, Doing.DEHUMIDIFIER, at_h), balance)
        if step % STEPS_H == 0:
            hour = step // STEPS_H
            temperature_C[:, hour] = now_C
            humidity_pct[:, hour] = np.maximum(humidity_with(now_C, own_Pa - drier_Pa), HUMIDITY_PCT[0])
    speed_m_s, fanned = _blown(free.air_speed_m_s, [one for one in meant if one.doing is Doing.FAN])
    return replace(free, temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=speed_m_s, fanned=fanned)


def _between(draws: Array, at_h: float) -> Array:
    """Return the draws at a time between two full hours."""
    before = min(int(at_h), draws.shape[1] - 2)
    part = at_h - before
    between: Array = (1.0 - part) * draws[:, before] + part * draws[:, before + 1]
    return between


def _on(meant: Sequence[Intention], doing: Doing, at_h: float) -> Intention | None:
    return next((one for one in reversed(meant) if one.doing is doing and one.start_h < at_h <= one.end_h), None)


def is_fan_on(meant: Sequence[Intention], at_h: float) -> bool:
    """Return whether a fan is meant to be on at a time, h from now."""
    fan = _on(meant, Doing.FAN, at_h)
    return fan is not None and fan.target > 0.0


def _warmed(warmer_K: Array, own_C: Array, heater: Intention | None, balance: Balance) -> Array:
    leaked: Array = warmer_K * np.exp(-STEP_H / balance.keeps_warm_h)
    if heater is None:
        return leaked
    wanted = np.maximum(heater.target - own_C, 0.0)
    return np.where(wanted > leaked, np.minimum(wanted, warmer_K + balance.warms_K_h * STEP_H), leaked)


def _dried(drier_Pa: Array, own_Pa: Array, now_C: Array, dehumidifier: Intention | None, balance: Balance) -> Array:
    filled: Array = drier_Pa * np.exp(-STEP_H / balance.keeps_vapour_h)
    if dehumidifier is None:
        return filled
    wanted = own_Pa - saturation_pressure(now_C) * dehumidifier.target / 100.0
    nearer = wanted + (drier_Pa - wanted) * np.exp(-STEP_H / DRIES_H)
    return np.where(wanted > filled, np.maximum(nearer, filled), filled)


def _blown(speed_m_s: Array, fans: Sequence[Intention]) -> tuple[Array, Mask | None]:
    """Return the air speed with fans on, or off at a target of 0, and the hours in which one is on."""
    if not fans:
        return speed_m_s, None
    hours = np.arange(speed_m_s.shape[1])
    still_m_s = np.minimum(speed_m_s, speed_m_s.min())
    blown, fanned = speed_m_s.copy(), np.zeros(hours.size, dtype=np.bool_)
    for one in fans:
        share = np.clip(np.minimum(hours + 0.5, one.end_h) - np.maximum(hours - 0.5, one.start_h), 0.0, 1.0)
        blown += share * ((one.target if one.target > 0.0 else still_m_s) - blown)
        fanned = fanned | (share > 0.0) if one.target > 0.0 else fanned & (share < 1.0)
    return blown, fanned if fanned.any() else None
