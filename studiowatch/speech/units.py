"""How she reads figures: each quantity in the unit that she chose. Inside everything is °C, K, m/s, cm, µm and mL.

Exact: 1 ft = 0.3048 m, 1 in = 2.54 cm, 1 mil = 25.4 µm and t/°F = 1.8 t/°C + 32, NIST SP 811 (2008), appendix B.
The fluid ounce is that of the United States, a 128th of a gallon of 231 in³: NIST Handbook 44 (2024), appendix C.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import Enum
from typing import TypeVar

from studiowatch.speech.words import say

FOOT_M = 0.3048  # m, exact: NIST SP 811 (2008), B.6
MINUTE_S = 60.0  # s
FAHRENHEIT_PER_K = 1.8  # °F in a kelvin, exact: NIST SP 811 (2008), B.8
FAHRENHEIT_AT_0_C = 32.0  # °F, exact: NIST SP 811 (2008), B.8
INCH_CM = 2.54  # cm, exact: NIST SP 811 (2008), B.6
MIL_UM = 25.4  # µm, exact: NIST SP 811 (2008), B.8
FLUID_OUNCE_ML = 231.0 * INCH_CM**3 / 128.0  # mL, exact: NIST Handbook 44 (2024), appendix C
NOON_H = 12

Choice = TypeVar("Choice", bound=Enum)


class Degrees(Enum):
    """The unit of a temperature; the value is its sign."""

    CELSIUS = "°C"
    FAHRENHEIT = "°F"

    @property
    def per_K(self) -> float:
        """How many of its degrees a kelvin is."""
        return 1.0 if self is Degrees.CELSIUS else FAHRENHEIT_PER_K

    def from_celsius(self, temperature_C: float) -> float:
        """Return a temperature, °C, in this unit."""
        return temperature_C if self is Degrees.CELSIUS else temperature_C * FAHRENHEIT_PER_K + FAHRENHEIT_AT_0_C

    def to_celsius(self, value: float) -> float:
        """Return a temperature in this unit as °C."""
        return value if self is Degrees.CELSIUS else (value - FAHRENHEIT_AT_0_C) / FAHRENHEIT_PER_K


class Speed(Enum):
    """The unit of the speed of air; the value is its sign."""

    METRES_PER_SECOND = "m/s"
    FEET_PER_MINUTE = "ft/min"

    @property
    def places(self) -> int:
        """Decimal places that a sensor of a few hundredths of a metre a second deserves."""
        return 2 if self is Speed.METRES_PER_SECOND else 0

    def from_si(self, speed_m_s: float) -> float:
        """Return a speed, m/s, in this unit."""
        return speed_m_s if self is Speed.METRES_PER_SECOND else speed_m_s / FOOT_M * MINUTE_S


class Length(Enum):
    """The unit of the side of a piece; the value is its sign."""

    CENTIMETRES = "cm"
    INCHES = "in"

    @property
    def cm(self) -> float:
        """How many centimetres it is."""
        return 1.0 if self is Length.CENTIMETRES else INCH_CM


class Thickness(Enum):
    """The unit of the thickness of a film; the value is its sign."""

    MICROMETRES = "µm"
    MILS = "mil"

    @property
    def um(self) -> float:
        """How many micrometres it is."""
        return 1.0 if self is Thickness.MICROMETRES else MIL_UM

    @property
    def places(self) -> int:
        """Decimal places that a film deserves."""
        return 0 if self is Thickness.MICROMETRES else 1


class Volume(Enum):
    """The unit of what is poured; the value is its sign."""

    MILLILITRES = "mL"
    FLUID_OUNCES = "fl oz"  # not said

    @property
    def mL(self) -> float:
        """How many millilitres it is."""
        return 1.0 if self is Volume.MILLILITRES else FLUID_OUNCE_ML

    @property
    def more_places(self) -> int:
        """Decimal places that it needs beyond millilitres to say as much."""
        return 0 if self is Volume.MILLILITRES else 2


class Hours(Enum):
    """How the time of day is written; the value is the number of hours that a clock counts."""

    TWENTY_FOUR = 24
    TWELVE = 12


class Numbers(Enum):
    """How numbers are written; the value is the decimal sign."""

    POINT = "."
    COMMA = ","

    @property
    def thousands(self) -> str:
        """What stands between thousands: never a sign that the other way of writing takes for the decimal sign."""
        return "," if self is Numbers.POINT else "\N{NARROW NO-BREAK SPACE}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Units:
    """What she chose, each by itself; as made it is all metric."""

    degrees: Degrees = Degrees.CELSIUS
    speed: Speed = Speed.METRES_PER_SECOND
    numbers: Numbers = Numbers.POINT
    length: Length = Length.CENTIMETRES
    thickness: Thickness = Thickness.MICROMETRES
    volume: Volume = Volume.MILLILITRES
    hours: Hours = Hours.TWENTY_FOUR

    def number(self, value: float, places: int = 0) -> str:
        """Return a number, "20.6" or "20,6"; one that rounds to 0 has no sign."""
        return f"{value:z.{places}f}".replace(".", self.numbers.value)

    def beside(self, value: float, limit: float) -> str:
        """Return a whole number, with a tenth where it would else read as the limit itself."""
        return self.number(value, 1 if round(value) == round(limit) else 0)

    def plain(self, value: float) -> str:
        """Return a number without needless places, "9" or "48,2"; 0 has no sign."""
        return f"{value:zg}".replace(".", self.numbers.value)

    def count(self, value: float) -> str:
        """Return a whole number in groups of thousands, "29,300"."""
        return f"{value:,.0f}".replace(",", self.numbers.thousands)

    def temperature(self, temperature_C: float, places: int = 1) -> str:
        """Return a temperature, "20.6 °C"."""
        return f"{self.number(self.degrees.from_celsius(temperature_C), places)} {self.degrees.value}"

    def limit(self, temperature_C: float) -> str:
        """Return a temperature that a sheet or a rule names, without needless places: "9 °C", "48.2 °F"."""
        return f"{self.plain(round(self.degrees.from_celsius(temperature_C), 1))} {self.degrees.value}"

    def difference(self, difference_K: float, places: int = 1) -> str:
        """Return how far two temperatures lie apart, "2.1 °C"."""
        return f"{self.number(difference_K * self.degrees.per_K, places)} {self.degrees.value}"

    def difference_limit(self, difference_K: float) -> str:
        """Return a difference that a rule names, "3 °C", "5.4 °F"."""
        return f"{self.plain(round(difference_K * self.degrees.per_K, 1))} {self.degrees.value}"

    def air_speed(self, speed_m_s: float) -> str:
        """Return the speed of the air, "0.34 m/s"."""
        return f"{self.number(self.speed.from_si(speed_m_s), self.speed.places)} {self.speed.value}"

    def air_speed_limit(self, speed_m_s: float) -> str:
        """Return a speed that a rule names, "0.1 m/s", "20 ft/min"."""
        return f"{self.plain(round(self.speed.from_si(speed_m_s), self.speed.places))} {self.speed.value}"

    def side(self, length_cm: float) -> str:
        """Return the side of a piece, "40 cm", "15.7 in"."""
        return f"{self._side(length_cm)} {self.length.value}"

    def size(self, width_cm: float, height_cm: float) -> str:
        """Return width and height, "40 × 60 cm"."""
        return f"{self._side(width_cm)} × {self._side(height_cm)} {self.length.value}"

    def _side(self, length_cm: float) -> str:
        return self.plain(round(length_cm / self.length.cm, 1))

    def film(self, thickness_um: float) -> str:
        """Return the thickness of a film, "90 µm", "3.5 mil"."""
        return f"{self.number(thickness_um / self.thickness.um, self.thickness.places)} {self.thickness.value}"

    def poured(self, volume_mL: float, places: int = 0) -> str:
        """Return a volume with so many places of a millilitre, "12 mL", "0.41 fl oz"."""
        return f"{self.number(volume_mL / self.volume.mL, places + self.volume.more_places)} {self.volume.value}"

    def clock(self, moment: datetime, *, seconds: bool = False) -> str:
        """Return the time of day of a moment in her zone, "14:07", "2:07 pm"; with `seconds` "14:07:05"."""
        past_hour = f"{moment.minute:02}:{moment.second:02}" if seconds else f"{moment.minute:02}"
        if self.hours is Hours.TWENTY_FOUR:
            return f"{moment.hour:02}:{past_hour}"
        clock = f"{(moment.hour - 1) % NOON_H + 1}:{past_hour}"
        return say("{clock} am", clock=clock) if moment.hour < NOON_H else say("{clock} pm", clock=clock)


METRIC = Units()
US = Units(
    degrees=Degrees.FAHRENHEIT,
    speed=Speed.FEET_PER_MINUTE,
    length=Length.INCHES,
    thickness=Thickness.MILS,
    volume=Volume.FLUID_OUNCES,
    hours=Hours.TWELVE,
)

CHOICES: dict[str, type[Enum]] = {
    "degrees": Degrees,
    "air_speed": Speed,
    "decimal_sign": Numbers,
    "length": Length,
    "thickness": Thickness,
    "volume": Volume,
    "hours": Hours,
}
"""What may be chosen, by the name it is kept under."""


def kept_as(units: Units) -> dict[str, str]:
    """Return the names of what was chosen, to be kept."""
    chosen_ones = (
        units.degrees,
        units.speed,
        units.numbers,
        units.length,
        units.thickness,
        units.volume,
        units.hours,
    )
    return {name: choice.name.lower() for name, choice in zip(CHOICES, chosen_ones, strict=True)}


def from_kept(kept: Mapping[str, str], usual: Units) -> Units:
    """Return the units of kept names; what is missing or unknown is as in `usual`."""

    def choice(name: str, otherwise: Choice) -> Choice:
        return next((one for one in type(otherwise) if one.name.lower() == kept.get(name)), otherwise)

    return Units(
        degrees=choice("degrees", usual.degrees),
        speed=choice("air_speed", usual.speed),
        numbers=choice("decimal_sign", usual.numbers),
        length=choice("length", usual.length),
        thickness=choice("thickness", usual.thickness),
        volume=choice("volume", usual.volume),
        hours=choice("hours", usual.hours),
    )


_chosen = METRIC


def chosen() -> Units:
    """Return what she reads figures in, wherever no one hands it on."""
    return _chosen


def choose(units: Units) -> None:
    """Show and say all figures in `units` from now on."""
    global _chosen  # noqa: PLW0603 - a process speaks to one person
    _chosen = units
