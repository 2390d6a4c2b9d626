"""Rooms to lay a coat in, and small troubles that leave only a trace in the log."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import cos, pi

from .room import Air, Knots

SPAN_H = 75
DAY_H = 24.0
WARMEST = 15.0  # o'clock


def day(
    temperature_C: float,
    humidity_pct: float,
    *,
    swing_K: float = 0.8,
    swing_pct: float = 2.0,
    laid_at: float = 10.0,
    still_m_s: float = 0.05,
) -> Air:
    """Return a room with a daily round about these means; `laid_at` is the hour of the day at laying."""
    round_ = [(float(h), cos(2 * pi * (h + laid_at - WARMEST) / DAY_H)) for h in range(-SPAN_H, SPAN_H + 1)]
    return Air(
        temperature_C=[(h, temperature_C + swing_K * wave) for h, wave in round_],
        humidity_pct=[(h, humidity_pct - swing_pct * wave) for h, wave in round_],
        air_m_s=((0, still_m_s),),
    )


def over(knots: Knots, spell: Sequence[tuple[float, float]], ramp_h: float = 0.1) -> Knots:
    """Return `knots` with `spell` in place of what was there, reached and left within `ramp_h`."""
    begin, end = spell[0][0] - ramp_h, spell[-1][0] + ramp_h
    outside = [(at, value) for at, value in knots if at < begin or at > end]
    edges = [(at, _at(knots, at)) for at in (begin, end)]
    return sorted([*outside, *edges, *spell])


def _at(knots: Knots, hour: float) -> float:
    before = [pair for pair in knots if pair[0] <= hour] or [knots[0]]
    after = [pair for pair in knots if pair[0] > hour] or [knots[-1]]
    (h0, v0), (h1, v1) = before[-1], after[0]
    return v0 if h1 <= h0 else v0 + (v1 - v0) * min(1.0, (hour - h0) / (h1 - h0))


def level(knots: Knots, from_h: float, to_h: float, value: float, ramp_h: float = 0.1) -> Knots:
    return over(knots, [(from_h, value), (to_h, value)], ramp_h)


def fan(air: Air, from_h: float, to_h: float, speed_m_s: float) -> Air:
    """Return the room with a fan on from here to there."""
    return replace(air, air_m_s=level(air.air_m_s, from_h, to_h, speed_m_s, 0.01))


def damp(air: Air, from_h: float, to_h: float, humidity_pct: float, ramp_h: float = 0.3) -> Air:
    """Return the room with a damp spell."""
    return replace(air, humidity_pct=level(air.humidity_pct, from_h, to_h, humidity_pct, ramp_h))


def cool(air: Air, from_h: float, to_h: float, temperature_C: float, ramp_h: float = 0.5) -> Air:
    """Return the room at another temperature for a while."""
    return replace(air, temperature_C=level(air.temperature_C, from_h, to_h, temperature_C, ramp_h))


warm = cool


def small_traces(air: Air, which: int) -> Air:
    """Return the room with one or two small troubles that spoil no coat, chosen by `which`."""
    choices = (
        lambda room: fan(room, 7.0, 7.3, 0.6),  # airing, long after the film was dry to the touch
        lambda room: damp(room, 9.0, 9.6, 72.0),  # a kettle
        lambda room: fan(damp(room, 10.0, 10.5, 71.0), 11.0, 11.2, 0.8),
        lambda room: room,
        lambda room: fan(room, 0.02, 0.05, 0.18),  # somebody walks by
        lambda room: cool(room, 12.0, 13.0, _at(room.temperature_C, 12.0) - 2.5),  # a window for an hour
    )
    return choices[which % len(choices)](air)
