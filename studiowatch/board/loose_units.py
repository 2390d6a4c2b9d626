"""Units that sketches use: how they are written, and how a value becomes the channel's own unit."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from types import MappingProxyType

from studiowatch.board.translate import KELVIN_OFFSET, LIMITS
from studiowatch.room.readings import Channel
from studiowatch.speech.words import mark


class Dimension(StrEnum):
    """What kind of quantity a unit measures."""

    TEMPERATURE = "temperature"
    HUMIDITY = "humidity"
    SPEED = "speed"
    VOLTAGE = "voltage"
    PRESSURE = "pressure"
    NUMBER_DENSITY = "particles"


CHANNELS: Mapping[Dimension, tuple[Channel, ...]] = MappingProxyType(
    {
        Dimension.TEMPERATURE: (Channel.TEMPERATURE, Channel.SURFACE),
        Dimension.HUMIDITY: (Channel.HUMIDITY,),
        Dimension.SPEED: (Channel.AIR_SPEED,),
        Dimension.VOLTAGE: (Channel.AIR_SIGNAL,),
        Dimension.PRESSURE: (Channel.PRESSURE,),
        Dimension.NUMBER_DENSITY: (Channel.PARTICLES,),
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Unit:
    """A unit; ``value * factor + offset`` is in the channel's own unit.

    Attributes
    ----------
    integers_only : bool
        True if a sketch uses it to send whole numbers: tenths, hundredths, counts.
    """

    name: str
    dimension: Dimension
    factor: float = 1.0
    offset: float = 0.0
    integers_only: bool = False

    def convert(self, value: float) -> float:
        """Return `value` in the channel's own unit."""
        return value * self.factor + self.offset

    def allows(self, values: Iterable[float], channel: Channel) -> bool:
        """Tell whether a sensor of this kind can mean all `values` in this unit."""
        return all(LIMITS[channel].admit(self.convert(value)) is not None for value in values)


_ALL = (
    Unit(name="°C", dimension=Dimension.TEMPERATURE),
    Unit(name="°F", dimension=Dimension.TEMPERATURE, factor=5 / 9, offset=-160 / 9),  # exact: NIST SP 811
    Unit(name="K", dimension=Dimension.TEMPERATURE, offset=KELVIN_OFFSET),
    Unit(name="0.1 °C", dimension=Dimension.TEMPERATURE, factor=0.1, integers_only=True),
    Unit(name="0.01 °C", dimension=Dimension.TEMPERATURE, factor=0.01, integers_only=True),
    Unit(name="%", dimension=Dimension.HUMIDITY),
    Unit(name="0.1 %", dimension=Dimension.HUMIDITY, factor=0.1, integers_only=True),
    Unit(name="0.01 %", dimension=Dimension.HUMIDITY, factor=0.01, integers_only=True),
    Unit(name=mark("fraction"), dimension=Dimension.HUMIDITY, factor=100.0),
    Unit(name="m/s", dimension=Dimension.SPEED),
    Unit(name="km/h", dimension=Dimension.SPEED, factor=1 / 3.6),  # exact
    Unit(name="mph", dimension=Dimension.SPEED, factor=0.44704),  # m/s, exact: NIST SP 811
    Unit(name="ft/min", dimension=Dimension.SPEED, factor=0.00508),  # m/s, exact: NIST SP 811
    Unit(name="kn", dimension=Dimension.SPEED, factor=1852 / 3600),  # m/s, exact: NIST SP 811
    Unit(name="mV", dimension=Dimension.VOLTAGE),
    Unit(name="V", dimension=Dimension.VOLTAGE, factor=1000.0),
    # a converter's counts; the supply is an assumption, but a signal shows change at any scale
    Unit(name=mark("10-bit count at 5 V"), dimension=Dimension.VOLTAGE, factor=5000 / 1024, integers_only=True),
    Unit(name=mark("12-bit count at 3.3 V"), dimension=Dimension.VOLTAGE, factor=3300 / 4096, integers_only=True),
    Unit(name="Pa", dimension=Dimension.PRESSURE),
    Unit(name="hPa", dimension=Dimension.PRESSURE, factor=100.0),
    Unit(name="kPa", dimension=Dimension.PRESSURE, factor=1000.0),
    Unit(name="mmHg", dimension=Dimension.PRESSURE, factor=133.3224),  # Pa: NIST SP 811
    Unit(name="inHg", dimension=Dimension.PRESSURE, factor=3386.389),  # Pa: NIST SP 811
    Unit(name="1/m³", dimension=Dimension.NUMBER_DENSITY),
)
UNITS: Mapping[str, Unit] = MappingProxyType({unit.name: unit for unit in _ALL})

OTHER_UNIT = "other"
_DEGREE = r"(?:[°º˚*\ufffd]|\\xb0|Â°|(?i:deg(?:rees?|s)?)\.?|(?i:grad))\s?"
_SPELLINGS = (
    ("°C", rf"{_DEGREE}[Cc](?i:elsius|entigrade)?|℃|[Cc]|(?i:celsius|centigrade|cel)"),
    ("°F", rf"{_DEGREE}[Ff](?i:ahrenheit)?|℉|[Ff]|(?i:fahrenheit)"),
    ("K", rf"{_DEGREE}K(?:elvin)?|K|(?i:kelvin)"),
    ("%RH", r"%\s?(?i:r\.?\s?[hf]\.?)|(?i:rh\s?%)|(?i:percent|pct|prozent)\s?(?i:rh)"),
    ("%", r"%|(?i:percent|pct|prct|perc|prozent)"),
    ("m/s", r"m/s(?:ec)?|mps|m\ss-1|m\*s-1|ms-1"),
    ("km/h", r"(?i:km/h|kmh|kph|km_h)"),
    ("mph", r"(?i:mph)"),
    ("ft/min", r"(?i:ft/min|fpm)"),
    ("kn", r"(?i:knots?|kts?|kn)"),
    ("mV", r"mV|(?i:millivolts?)"),
    ("V", r"V|(?i:volts?)"),
    ("hPa", r"(?i:hpa|mbar|mb|millibars?)"),
    ("kPa", r"(?i:kpa)"),
    ("Pa", r"Pa|PA|(?i:pascals?)"),
    ("mmHg", r"(?i:mm\s?hg|torr)"),
    ("inHg", r"(?i:in\s?hg)"),
    (
        OTHER_UNIT,
        (
            r"(?i:ppm|ppb|lx|lux|dbm?|rpm|[kmg]?hz|[µu]g/m(?:\^?3|³)|g/m(?:\^?3|³)|g/kg|l/min|k?ohms?|k?Ω|m?bytes|kb)"
            r"|m[sAWm]|us|µs|cm|ft|sec(?:onds?)?|min(?:utes?)?|hrs?|[sAWm]"
        ),
    ),
)
UNIT = "|".join(f"(?:{pattern})" for _, pattern in _SPELLINGS)  # a pattern for `re`, without groups
_KNOWN = tuple((name, re.compile(pattern)) for name, pattern in _SPELLINGS)


@lru_cache(maxsize=512)  # the same few units come with every line
def read_unit(text: str) -> str:
    """Return the name of the unit that `text` spells: one of `UNITS`, ``%RH``, ``other``, or "" if it is none.

    ``%`` is a per cent of anything; ``%RH`` names its quantity too.
    """
    text = text.strip()
    return next((name for name, pattern in _KNOWN if pattern.fullmatch(text)), "")
