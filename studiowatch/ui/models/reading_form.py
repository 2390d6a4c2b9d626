"""A reading typed from any hygrometer: its fields, checked, and the words around them."""

from __future__ import annotations

import re

from studiowatch.room.typed import Felt
from studiowatch.service.commands import TypeReading
from studiowatch.service.typing_in import HUMIDITY_PCT, TEMPERATURE_C
from studiowatch.speech.units import Degrees, chosen
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.forms import FormError, number

HOW_TO_READ = mark(
    "Hold the hygrometer near the pieces, out of the sun and off the wall, until it stands still. What you type holds "
    "until the next reading: the older it is, the wider the ready times."
)
HOW_TO_FEEL = mark("Air speed is not measured: hang a strip of tissue beside the pieces and see whether it moves.")
AIR_ANSWERS: dict[str, Felt | None] = {
    mark("not looked"): None,
    mark("the tissue hangs still"): Felt.STILL,
    mark("the tissue moves"): Felt.MOVING,
}
_WRITTEN = re.compile(
    r"(?P<value>.*?[\d.,])\s*(?:°\s*|deg(?:rees)?\s*)?(?P<unit>[CF]|celsius|fahrenheit)", re.IGNORECASE
)
_AIR_WORDS = {None: mark("air not looked at"), Felt.STILL: mark("air still"), Felt.MOVING: mark("air moving")}
USUAL_C = (5.0, 40.0)  # °C, a room outside is asked about once: it may be the other unit; assumption


def read_reading(
    *, temperature: str, degrees: Degrees, humidity: str, felt: Felt | None, time_ms: int, now_ms: int
) -> TypeReading:
    """Return the command to take a reading; a unit that stands behind the temperature goes before `degrees`.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    temperature, degrees = written_degrees(temperature, degrees)
    low_C, high_C = TEMPERATURE_C
    low_pct, high_pct = HUMIDITY_PCT
    value = number(
        temperature,
        field="temperature",
        name=say("The temperature"),
        unit=degrees.value,
        low=degrees.from_celsius(low_C),
        high=degrees.from_celsius(high_C),
        example="20.5" if degrees is Degrees.CELSIUS else "69",
    )
    humidity_pct = number(
        humidity, field="humidity", name=say("The humidity"), unit="%", low=low_pct, high=high_pct, example="48"
    )
    if time_ms > now_ms:
        raise FormError("read", say("The hygrometer was read in the future: choose a time that has passed."))
    return TypeReading(time_ms=time_ms, temperature_C=degrees.to_celsius(value), humidity_pct=humidity_pct, felt=felt)


def written_degrees(text: str, chosen: Degrees) -> tuple[str, Degrees]:
    """Return what was typed without its unit, and that unit: "70 F" is °F whatever was chosen, "70" is in `chosen`."""
    found = _WRITTEN.fullmatch(text.strip())
    if found is None:
        return text, chosen
    unit = Degrees.CELSIUS if found["unit"].lower().startswith("c") else Degrees.FAHRENHEIT
    return found["value"], unit


def reading_doubt(command: TypeReading) -> str:
    """Return what to ask once more before so odd a room is recorded, or ""."""
    low_C, high_C = USUAL_C
    if low_C <= command.temperature_C <= high_C:
        return ""
    fahrenheit = Degrees.FAHRENHEIT.from_celsius(command.temperature_C)
    return say(
        "That is {celsius} °C, or {fahrenheit} °F: press again if the room is like that.",
        celsius=f"{command.temperature_C:.0f}",
        fahrenheit=f"{fahrenheit:.0f}",
    )


def reading_words(command: TypeReading, degrees: Degrees) -> str:
    """Return what was recorded, in her unit."""
    return say(
        "Recorded: {temperature}, {humidity} %, {air}",
        temperature=f"{chosen().number(degrees.from_celsius(command.temperature_C), 1)} {degrees.value}",
        humidity=f"{command.humidity_pct:.0f}",
        air=say(_AIR_WORDS[command.felt]),
    )
