"""How she reads figures: each quantity in the unit that she chose. Inside everything is °C, K and m/s.

Exact: 1 ft = 0.3048 m and t/°F = 1.8 t/°C + 32, NIST SP 811 (2008), appendix B.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

FOOT_M = 0.3048  # m, exact: NIST SP 811 (2008), B.6
MINUTE_S = 60.0  # s
FAHRENHEIT_PER_K = 1.8  # °F in a kelvin, exact: NIST SP 811 (2008), B.8
FAHRENHEIT_AT_0_C = 32.0  # °F, exact: NIST SP 811 (2008), B.8


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

    def number(self, value: float, places: int = 0) -> str:
        """Return a number, "20.6" or "20,6"."""
        return f"{value:.{places}f}".replace(".", self.numbers.value)

    def plain(self, value: float) -> str:
        """Return a number without needless places, "9" or "48,2"."""
        return f"{value:g}".replace(".", self.numbers.value)

    def count(self, value: float) -> str:
        """Return a whole number in groups of thousands, "29,300"."""
        return f"{value:,.0f}".replace(",", self.numbers.thousands)

    def temperature(self, temperature_C: float, places: int = 1) -> str:
        """Return a temperature, "20.6 °C"."""
        return f"{self.number(self.degrees.from_celsius(temperature_C), places)} {self.degrees.value}"

    def limit(self, temperature_C: float) -> str:
        """Return a temperature that a sheet or a rule names, without needless places: "9 °C", "48.2 °F"."""
        return f"{self.plain(round(self.degrees.from_celsius(temperature_C), 1))} {self.degrees.value}"

    def difference(self, difference_K: float) -> str:
        """Return how far two temperatures lie apart, "2.1 °C"."""
        return f"{self.number(difference_K * self.degrees.per_K, 1)} {self.degrees.value}"

    def difference_limit(self, difference_K: float) -> str:
        """Return a difference that a rule names, "3 °C", "5.4 °F"."""
        return f"{self.plain(round(difference_K * self.degrees.per_K, 1))} {self.degrees.value}"

    def air_speed(self, speed_m_s: float) -> str:
        """Return the speed of the air, "0.34 m/s"."""
        return f"{self.number(self.speed.from_si(speed_m_s), self.speed.places)} {self.speed.value}"

    def air_speed_limit(self, speed_m_s: float) -> str:
        """Return a speed that a rule names, "0.1 m/s", "20 ft/min"."""
        return f"{self.plain(round(self.speed.from_si(speed_m_s), self.speed.places))} {self.speed.value}"


METRIC = Units()
US = Units(degrees=Degrees.FAHRENHEIT, speed=Speed.FEET_PER_MINUTE)
