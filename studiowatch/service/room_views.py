"""The room as the window sees it, each figure judged against the coats that are wet now."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.limits import (
    AIR_SPEED,
    Standing,
    dew_margin_standing,
    film_margin_standing,
    humidity_standing,
)
from studiowatch.room.readings import Channel
from studiowatch.service.room_now import RoomNow
from studiowatch.service.snapshot import RoomView
from studiowatch.studio.concern import AirNow, CoatAtRisk
from studiowatch.studio.words import Level


def room_view(room: RoomNow, air: AirNow, coats: Sequence[CoatAtRisk], now_ms: int) -> RoomView:
    """Return the room now; `coats` are those that it may still spoil."""
    film_C = min((coat.film_C for coat in coats if coat.film_C is not None), default=None)
    surface_C = air.temperature_C if film_C is None else film_C
    above_dew_K = None if surface_C is None or air.dew_point_C is None else surface_C - air.dew_point_C
    return RoomView(
        time_ms=now_ms if room.last_ms is None else room.last_ms,
        temperature_C=air.temperature_C,
        humidity_pct=air.humidity_pct,
        air_speed_m_s=air.air_speed_m_s,
        air_signal_mV=room.value(Channel.AIR_SIGNAL),
        particles_per_m3_5um=room.value(Channel.PARTICLES),
        dew_point_C=air.dew_point_C,
        film_C=film_C,
        film_above_dew_K=above_dew_K,
        movement=air.movement,
        moving_since_ms=air.moving_since_ms,
        temperature_level=_temperature_level(coats, above_dew_K),
        humidity_level=_humidity_level(air, coats),
        air_level=_air_level(air, coats),
        typed=air.typed,
    )


def _temperature_level(coats: Sequence[CoatAtRisk], above_dew_K: float | None) -> Level:
    standings = [
        film_margin_standing(coat.film_C - coat.mfft_C)
        for coat in coats
        if coat.forming and coat.film_C is not None and coat.mfft_C is not None
    ]
    if coats and above_dew_K is not None:
        standings.append(dew_margin_standing(above_dew_K))
    return _level(standings)


def _humidity_level(air: AirNow, coats: Sequence[CoatAtRisk]) -> Level:
    if air.humidity_pct is None:
        return Level.CALM
    return _level([humidity_standing(air.humidity_pct, coat.max_humidity_pct) for coat in coats if not coat.solvent])


def _air_level(air: AirNow, coats: Sequence[CoatAtRisk]) -> Level:
    bare = [coat for coat in coats if coat.wet and not coat.covered]
    if not bare or not air.is_moving:
        return Level.CALM
    is_strong = air.air_speed_m_s is None or air.air_speed_m_s >= AIR_SPEED.caution
    return Level.ACT if is_strong else Level.CAUTION


def _level(standings: Sequence[Standing]) -> Level:
    return Level(int(max(standings, default=Standing.FINE)))
