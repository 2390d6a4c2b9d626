"""Names that sketches give their numbers, in several languages: which quantity a label means, and how plainly."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from studiowatch.board.loose_units import OTHER_UNIT, UNIT, read_unit


class Quantity(StrEnum):
    """What a name can mean. `OTHER` is understood but not used: dew point, battery, clock."""

    TEMPERATURE = "temperature"
    HUMIDITY = "humidity"
    AIR = "air"
    SURFACE = "surface"
    PRESSURE = "pressure"
    OTHER = "other"


_T, _H, _A, _S, _P, _O = Quantity


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


# words of English, German, French, Spanish, Italian, Dutch, Swedish, Finnish, Polish and Czech: from memory
_STEMS: Mapping[Quantity, tuple[str, ...]] = {
    _T: ("temperat", "lampotil", "teplot"),
    _H: (
        *("humid", "humed", "umid", "feucht", "luftfeucht", "vochtig", "luchtvochtig", "fuktig", "luftfuktig"),
        *("kosteu", "wilgotn", "vlhkost"),
    ),
    _A: ("anemom", "windspeed", "windgeschw", "luftgeschw", "airspeed", "airflow", "airvel", "luftstrom"),
    _P: ("pressure", "barom", "luftdruck", "pression", "presion", "luchtdruk"),
    _O: ("outdoor", "aussen", "exterieur", "batter", "illumin", "altitud", "threshold", "resist", "millis", "heatind"),
}
_WORDS: Mapping[Quantity, frozenset[str]] = {
    _T: frozenset(("temp", "temps", "tmp")),
    _H: frozenset(("hum", "humi", "rh", "hygro")),
    _A: frozenset(("wind", "anemo", "draft", "draught", "viento", "vento")),
    _S: frozenset(("surface", "surf", "oberflache", "superficie", "object", "obj", "infrared", "canvas")),
    _P: frozenset(("press", "pres", "baro")),
    _O: _words(
        """
        dew dewpoint taupunkt dp frost heat hi feels apparent wet wetbulb bulb alt height elevation sea slp qnh
        bat batt vbat vcc vin vdd supply usb light lux ldr co2 eco2 tvoc voc gas iaq aqi dust rssi snr wifi time
        timestamp date ms uptime sec secs second seconds minute minutes hour hours day count counter cnt seq
        sequence index idx id node sample frame line packet pkt loop soil water tank set setpoint target min max
        minimum maximum outside out cpu mcu core die chip internal heap ram version ver baud port pin status
        relay fan rpm motor servo distance dist abs absolute mixing enthalpy vpd vapor vapour crc checksum
        offset alarm oven kiln fridge freezer boiler radiator heater ph direction dir richtung
        """  # not said
    ),
}
_INITIALS: Mapping[str, Quantity] = {
    **dict.fromkeys(("t", "tc", "tf", "tk", "c", "f", "k"), _T),
    **dict.fromkeys(("h", "hr", "ur", "rf", "hu"), _H),
    **dict.fromkeys(("v", "w", "flow", "speed", "velocity", "vel", "vent"), _A),
    "p": _P,
    "ir": _S,
}
_NEUTRAL = _words(
    """
    the a is of in and at current currently now actual aktuell value val reading read measured sensor sens room
    raum air inside indoor ambient rel relative relativ relativa degree degrees deg dht sht bme bmp aht htu hdc
    si am ds lm mcp data avg mean average corrected calibrated environment env
    """  # not said
)
_PIECES = re.compile(r"pm ?[0-9]+(?:[._][0-9]+)?|e?co2|[^\W\d_]+|[0-9]+", re.IGNORECASE)
_CAMEL = re.compile(r"(?<=[a-z])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z]{2})")
_BRACKETED = re.compile(rf"[\[(]\s*(?:in\s+)?({UNIT})\s*[\])]")
_LAST = re.compile(rf"(?:^|[\s_/.,-])({UNIT})\s*$")
_FIRST = re.compile(rf"^\s*({UNIT})(?=\s)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Name:
    """What a label says.

    Attributes
    ----------
    quantities : frozenset of Quantity
        What it can mean; empty if it says nothing, more than one if it names several.
    is_whole : bool
        True if whole words say it, not initials alone.
    is_understood : bool
        True if no word is left over that is not known here: "rack temperature" may be of any rack.
    is_relative : bool
        True if it says that a humidity is the relative one.
    unit : str
        The unit in the label, as from `read_unit`, or "".
    """

    quantities: frozenset[Quantity] = frozenset()
    is_whole: bool = True
    is_understood: bool = True
    is_relative: bool = False
    unit: str = ""


@lru_cache(maxsize=512)  # the same few labels come with every line
def read_label(label: str) -> Name:
    """Return what `label` means."""
    unit, rest = _take_unit(label)
    spaced = _CAMEL.sub(" ", rest)
    if not unit:
        unit, spaced = _take_unit(spaced)
    words = [word.casefold() for word in _PIECES.findall(_without_accents(spaced))]
    meant = [_meaning(word) for word in words]
    known = (*_NEUTRAL, *_INITIALS)
    return Name(
        quantities=_settle(frozenset(quantity for quantity in meant if quantity), words),
        is_whole=not any(word in _INITIALS for word in words),
        is_understood=all(
            quantity or word in known or word.isdigit() for word, quantity in zip(words, meant, strict=True)
        ),
        is_relative=any(word == "rh" or word.startswith("rel") for word in words),
        unit=unit,
    )


def _without_accents(text: str) -> str:
    return "".join(c for c in unicodedata.normalize("NFKD", text) if not unicodedata.combining(c))


def _take_unit(label: str) -> tuple[str, str]:
    """Return the unit in `label`, or "", and the rest of it. A bare letter is an initial, not a unit."""
    for pattern in (_BRACKETED, _LAST, _FIRST):
        found = pattern.search(label)
        if found is None or (pattern is not _BRACKETED and read_unit(found[1]) == OTHER_UNIT):
            continue
        rest = f"{label[: found.start()]} {label[found.end() :]}"
        if len(found[1]) > 1 or rest.strip() or found[1] == "%":
            return read_unit(found[1]), rest
    return "", label


def _meaning(word: str) -> Quantity | None:
    if word.startswith("pm") and word[2:].strip()[:1].isdigit():
        return Quantity.OTHER
    for quantity, words in _WORDS.items():
        if word in words:
            return quantity
    for quantity, stems in _STEMS.items():
        if word.startswith(stems):
            return quantity
    return _INITIALS.get(word)


def _settle(found: frozenset[Quantity], words: Sequence[str]) -> frozenset[Quantity]:
    """Resolve words that belong together: "dew temperature", "relative pressure", "surface temperature"."""
    is_reduced = Quantity.PRESSURE in found and not {"relative", "rel"}.isdisjoint(words)
    if Quantity.OTHER in found or is_reduced:
        return frozenset({Quantity.OTHER})
    if Quantity.SURFACE in found:
        return found - {Quantity.TEMPERATURE}
    return found
