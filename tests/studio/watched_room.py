"""A room with two coats in it, and what the watch says of it."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.room.air_movement import Movement
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.watch import find_concerns

NOW_MS = 1_772_460_000_000
CALM = AirNow(
    temperature_C=20.6, humidity_pct=57.0, air_speed_m_s=0.05, dew_point_C=11.8, movement=Movement.STILL, age_s=0.4
)
MARSH = CoatAtRisk(
    piece_key="p1", piece_title="Salt Marsh", coat_label="gloss 1", wet=True, forming=True, film_C=18.9, mfft_C=9.0
)
KILN = replace(MARSH, piece_key="p2", piece_title="Kiln Light", coat_label="isolation")
FAN = replace(CALM, air_speed_m_s=0.34, movement=Movement.FAN, moving_since_ms=NOW_MS - 300_000)
STIRRED = replace(FAN, movement=Movement.MOVING)


def clock_text(time_ms: int) -> str:
    minutes = (14 * 60 + 12) + (time_ms - NOW_MS) // 60_000
    return f"{minutes // 60}:{minutes % 60:02d}"


def look(
    air: AirNow,
    *coats: CoatAtRisk,
    before: tuple[Concern, ...] = (),
    after_s: float = 0.0,
    silent_after_s: float = 10.0,
) -> tuple[Concern, ...]:
    now_ms = NOW_MS + round(after_s * 1000)
    return find_concerns(air, coats, now_ms=now_ms, clock_text=clock_text, before=before, silent_after_s=silent_after_s)


def kinds(concerns: tuple[Concern, ...]) -> list[Kind]:
    return [concern.kind for concern in concerns]
