"""A typed reading, checked against the room as it is known."""

from __future__ import annotations

from studiowatch.room.readings import Reading
from studiowatch.room.sensor_health import TEMPERATURE
from studiowatch.room.typed import typed_reading
from studiowatch.service.bench import past, within
from studiowatch.service.commands import Refused, TypeReading
from studiowatch.service.room_now import RoomNow
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

READ_AHEAD = mark("The time of the reading lies {minutes} min ahead of the clock; give a time that has been.")
NO_TEMPERATURE = mark("The temperature is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.")
NO_HUMIDITY = mark("The humidity is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.")
TEMPERATURE_C = (TEMPERATURE.lowest, TEMPERATURE.highest)  # °C, as of a board's sensor
HUMIDITY_PCT = (1.0, 100.0)  # %RH; a hygrometer that shows none is broken
OLDEST_MS = 86_400_000  # ms, an older reading says too little of the room now; assumption


def typed(command: TypeReading, room: RoomNow, *, now_ms: int) -> Reading:
    """Return the reading that was typed.

    Raises
    ------
    Refused
        If a board reads the room, or a value or the time cannot be right: one sentence.
    """
    if room.is_measured(now_ms):
        raise Refused(say("The board reads the room now; a typed reading is for when no board does."))
    temperature_C = within(NO_TEMPERATURE, command.temperature_C, "°C", TEMPERATURE_C)
    humidity_pct = within(NO_HUMIDITY, command.humidity_pct, "%", HUMIDITY_PCT)
    time_ms = min(past(READ_AHEAD, command.time_ms, now_ms), now_ms)
    if now_ms - time_ms > OLDEST_MS:
        old_h = (now_ms - time_ms) / 3_600_000
        raise Refused(
            say(
                "The reading is {hours} h old; allowed is 0 to 24 h. Read the hygrometer again.",
                hours=chosen().number(old_h),
            )
        )
    if room.last_ms is not None and time_ms < room.last_ms:
        early_min = max(1, round((room.last_ms - time_ms) / 60_000))
        raise Refused(
            say(
                "The reading lies {minutes} min before the latest one there is; give a later time.",
                minutes=early_min,
            )
        )
    return typed_reading(time_ms=time_ms, temperature_C=temperature_C, humidity_pct=humidity_pct, felt=command.felt)
