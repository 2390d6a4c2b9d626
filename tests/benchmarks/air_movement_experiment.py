"""How soon a fan is noticed, how surely a swinging one, and how often a room without one is mistaken for one.

Run with ``python tests/benchmarks/air_movement_experiment.py [days] [fans]``; a day takes about 15 s, a fan 0.1 s. The
rooms are made up: slow wander, the heating's cycles, the day's drift, doors, people passing and work at the rack, all
seen through a bead's lag. None of it is measured; every number in `Room` and `ROOMS` is an assumption.

The targets: at most 0.1 false fans a day in a busy room, a steady fan shown in 3 s, 98 of 100 swinging fans declared.
"""

from __future__ import annotations

import runpy
import sys
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from studiowatch.room.air_movement import SPEED, VOLTAGE, AirMovement, AirSignal, Movement, observe
from studiowatch.room.air_points import AirPoint
from studiowatch.room.air_speed_calibration import calibrate_air_speed

DAY_S = 86_400
STILL_M_S = 0.05
BEAD_LAG_S = 2.0
LEAST_M_S = 0.02  # the bead's own warm air
AIR_C = 21.0
SIGNAL_NOISE_mV = 4.0
SIGNAL_STEP_mV = 5.0  # of a 10-bit converter at 5 V


MADE_BEAD = runpy.run_path(str(Path(__file__).parents[1] / "room" / "made_bead.py"))["MadeBead"]()
BEAD_M_S = np.linspace(0.0, 3.0, 601)
BEAD_mV = np.array([MADE_BEAD.signal_mV(speed_m_s, AIR_C) for speed_m_s in BEAD_M_S])


@dataclass(frozen=True, kw_only=True)
class Room:
    """Speeds in m/s, times in s."""

    wander_m_s: float = 0.012
    wander_s: float = 20.0
    noise_m_s: float = 0.006
    drift_m_s: float = 0.02
    heating_m_s: float = 0.015
    heating_s: float = 1500.0
    doors_a_day: int = 20
    passes_a_day: int = 300
    spells_a_day: int = 6


NOTHING = {"drift_m_s": 0.0, "heating_m_s": 0.0, "doors_a_day": 0, "passes_a_day": 0, "spells_a_day": 0}
ROOMS = {
    "busy room": Room(),
    "quiet room": Room(**NOTHING),
    "drifting room": Room(**NOTHING | {"drift_m_s": 0.06}),
    "passers-by": Room(**NOTHING | {"passes_a_day": 1500}),
    "heating cycles": Room(**NOTHING | {"heating_m_s": 0.05, "heating_s": 900.0}),
}


def busy_room(rng: np.random.Generator, seconds: int, room: Room | None = None) -> np.ndarray:
    """Return one speed a second, m/s, of a room in which somebody works and no fan runs."""
    room = room or Room()
    time_s = np.arange(seconds)
    speed = STILL_M_S + room.drift_m_s * np.sin(2 * np.pi * (time_s / DAY_S + rng.random()))
    speed += room.heating_m_s * (np.sin(2 * np.pi * (time_s / room.heating_s + rng.random())) > 0)
    speed += _wander(rng, seconds, room.wander_m_s, room.wander_s)
    days = seconds / DAY_S
    for _ in range(rng.poisson(room.doors_a_day * days)):
        _gust(speed, rng.integers(seconds), rng.uniform(0.1, 0.5), rng.uniform(5, 15))
    for _ in range(rng.poisson(room.passes_a_day * days)):
        _gust(speed, rng.integers(seconds), rng.uniform(0.05, 0.25), rng.uniform(1, 4))
    for _ in range(rng.poisson(room.spells_a_day * days)):
        start, length = rng.integers(seconds), rng.integers(180, 600)
        for offset in np.cumsum(rng.exponential(8.0, size=length // 8)).astype(int):
            _gust(speed, start + offset, rng.uniform(0.03, 0.2), 2.0)
    return _through_bead(rng, speed, room.noise_m_s)


def with_fan(rng: np.random.Generator, quiet_s: int, fan_s: int, fan_m_s: float, swing: float = 0.0) -> np.ndarray:
    """Return a quiet stretch and then a fan; `swing` is how far it turns away, in widths of its jet (0 is steady)."""
    seconds = quiet_s + fan_s
    speed = STILL_M_S + _wander(rng, seconds, Room.wander_m_s, Room.wander_s)
    since_s = np.arange(fan_s)
    period_s = rng.uniform(8.0, 20.0)
    turned = swing * np.sin(2 * np.pi * (since_s / period_s + rng.random()))
    jet = fan_m_s * np.exp(-(turned**2)) * (1 + _wander(rng, fan_s, 0.25, 1.5))
    speed[quiet_s:] = np.maximum(speed[quiet_s:], jet)
    return _through_bead(rng, speed, Room.noise_m_s)


def bead_mV(speeds: np.ndarray) -> np.ndarray:
    """Return the voltage of an uncalibrated bead, mV, as the bead of the calibration's tests has it."""
    return np.interp(speeds, BEAD_M_S, BEAD_mV)


def calibrated(rng: np.random.Generator, speeds: np.ndarray) -> np.ndarray:
    """Return the speeds that a calibrated bead gives, m/s, from voltages with noise and the steps of a converter."""
    points = [
        AirPoint(speed_m_s=speed_m_s, signal_mV=MADE_BEAD.signal_mV(speed_m_s, AIR_C), temperature_C=AIR_C)
        for speed_m_s in (0.0, 0.3, 0.6, 1.2)
    ]
    signals = bead_mV(speeds) + rng.normal(0.0, SIGNAL_NOISE_mV, size=len(speeds))
    signals = np.round(signals / SIGNAL_STEP_mV) * SIGNAL_STEP_mV
    return calibrate_air_speed(points).law.speeds(signals, np.full(len(speeds), AIR_C))


def movements(values: np.ndarray, signal: AirSignal = SPEED, step_ms: int = 1000) -> list[AirMovement]:
    """Return the detector's state after each reading."""
    state = AirMovement()
    states = []
    for index, value in enumerate(values):
        state = observe(state, index * step_ms, float(value), signal)
        states.append(state)
    return states


def beginnings(states: list[AirMovement], movement: Movement) -> int:
    """Return how often `movement` began."""
    now = np.array([state.movement is movement for state in states])
    return int(np.count_nonzero(now[1:] & ~now[:-1]))


def seconds_until(states: list[AirMovement], start: int, wanted: set[Movement]) -> int | None:
    """Return the readings from `start` until a wanted movement is shown, the first reading counting as 1."""
    return next((n for n, state in enumerate(states[start:], start=1) if state.movement in wanted), None)


def _wander(rng: np.random.Generator, seconds: int, sigma: float, lasting_s: float) -> np.ndarray:
    keep = np.exp(-1.0 / lasting_s)
    kicks = rng.normal(0.0, sigma * np.sqrt(1 - keep**2), size=seconds)
    wander = np.empty(seconds)
    last = rng.normal(0.0, sigma)
    for index, kick in enumerate(kicks):
        last = keep * last + kick
        wander[index] = last
    return wander


def _gust(speed: np.ndarray, start: int, peak: float, decay_s: float) -> None:
    tail = speed[start : start + int(6 * decay_s) + 1]
    tail += peak * np.exp(-np.arange(len(tail)) / decay_s)


def _through_bead(rng: np.random.Generator, speed: np.ndarray, noise_m_s: float) -> np.ndarray:
    share = 1 - np.exp(-1.0 / BEAD_LAG_S)
    seen = np.empty_like(speed)
    last = speed[0]
    for index, value in enumerate(speed):
        last += share * (value - last)
        seen[index] = last
    return np.maximum(0.0, np.maximum(LEAST_M_S, seen) + rng.normal(0.0, noise_m_s, size=len(speed)))


def report_rooms(rng: np.random.Generator, days: int) -> None:
    """Print how often a room without a fan is mistaken for one with, for each kind of signal and cadence."""
    ways = {
        "speed at 1 Hz": movements,
        "voltage at 1 Hz": lambda speeds: movements(bead_mV(speeds), VOLTAGE),
        "calibrated voltage at 1 Hz": lambda speeds: movements(calibrated(rng, speeds)),
        "speed once a minute": lambda speeds: movements(speeds[::60], step_ms=60_000),
        "speed as minute means": lambda speeds: movements(speeds.reshape(-1, 60).mean(axis=1), step_ms=60_000),
    }
    for title, room in ROOMS.items():
        fans, lit, shares = dict.fromkeys(ways, 0), dict.fromkeys(ways, 0), dict.fromkeys(ways, 0.0)
        for _ in range(days):
            speeds = busy_room(rng, DAY_S, room)
            for name, way in ways.items():
                states = way(speeds)
                fans[name] += beginnings(states, Movement.FAN)
                lit[name] += beginnings(states, Movement.MOVING)
                shares[name] += np.mean([state.is_on for state in states]) / days
        for name in ways:
            print(
                f"{title}, {days} days, {name}: {fans[name] / days:.3f} false fans a day; "
                f"stage one lit {lit[name] / days:.0f} times a day, {100 * shares[name]:.1f} % of the time",
                flush=True,
            )


def report_fans(rng: np.random.Generator, fans: int) -> None:
    """Print how soon a steady fan is shown, and how surely a swinging one is declared."""
    on = {Movement.MOVING, Movement.FAN}
    for fan_m_s in (0.2, 0.25, 0.34, 0.5):
        for name, signal in (("speed", SPEED), ("voltage", VOLTAGE)):
            shown, declared = [], 0
            for _ in range(fans):
                speeds = with_fan(rng, 300, 180, fan_m_s)
                states = movements(speeds if signal is SPEED else bead_mV(speeds), signal)
                shown.append(seconds_until(states, 300, on) or 999)
                declared += seconds_until(states, 300, {Movement.FAN}) is not None
            late = np.array(shown)
            print(
                f"steady fan {fan_m_s:.2f} m/s, {name}: shown within 3 readings {100 * np.mean(late <= 3):.1f} %, "
                f"median {np.median(late):.0f}, worst {late.max()}; declared {100 * declared / fans:.1f} %"
            )
    for low, high in ((0.6, 1.0), (1.0, 1.4), (1.4, 1.8)):
        declared = 0
        for _ in range(fans):
            states = movements(with_fan(rng, 300, 600, rng.uniform(0.35, 0.8), swing=rng.uniform(low, high)))
            declared += seconds_until(states, 300, {Movement.FAN}) is not None
        print(f"swinging fan, turning {low} to {high} jet widths away: declared {100 * declared / fans:.1f} %")


def main(days: int = 20, fans: int = 200) -> None:
    """Print all figures."""
    rng = np.random.default_rng(20_260_302)
    report_rooms(rng, days)
    report_fans(rng, fans)


if __name__ == "__main__":
    main(*(int(text) for text in sys.argv[1:]))
