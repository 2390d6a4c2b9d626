"""A heated bead's voltage as air speed: King's law with a free exponent, V² = A + B vⁿ, at any air temperature."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.physics.ranges import Array

BEAD_C = 80.0  # °C that a bead is taken to have where nobody says: under the 100 that it may have; assumption
COOLEST_BEAD_C, HOTTEST_BEAD_C = 60.0, 100.0  # °C, warm enough to compensate at 50 °C of air, and its safe limit
COLDEST_AIR_C, WARMEST_AIR_C = -10.0, 50.0  # °C, a room's range: a thermometer beyond it is not compensated by
FREE_CONVECTION_M_S = 0.03  # m/s, under which the bead's own rising air outdoes the room's: Re < Gr^⅓, Collis and
# Williams (1959), is 0.032 m/s at an overheat of 60 K, whatever the bead's size


@dataclass(frozen=True, slots=True, kw_only=True)
class KingLaw:
    """The law of one bead.

    Attributes
    ----------
    offset_mV2 : float
        A: square of the voltage that no speed at all would leave, mV².
    slope : float
        B: what a speed of 1 m/s adds to it, mV².
    exponent : float
        n, 1.
    reference_C : float
        Air temperature that A and B are given at, °C.
    bead_C : float
        Temperature that the bead is held at, °C.

    Notes
    -----
    L. V. King (1914), Phil. Trans. R. Soc. A 214, 373, has n = ½; D. C. Collis and M. J. Williams (1959), J. Fluid
    Mech. 6, 357, found 0.45 and 0.51 for wires.

    The heat that leaves the bead goes with its overheat, and so does V²: times (T_bead − T_reference)/(T_bead − T_air)
    it is what it would be at the reference. P. W. Bearman (1971), DISA Information 11, 25, as an open library cites it.
    Air's own properties, which change by 2 % in 10 K, are left out.
    """

    offset_mV2: float
    slope: float
    exponent: float
    reference_C: float
    bead_C: float = BEAD_C

    def speed_m_s(self, signal_mV: float, temperature_C: float | None = None) -> float:
        """Return the air speed, m/s, never under `FREE_CONVECTION_M_S`.

        Parameters
        ----------
        signal_mV : float
            Voltage of the bead, mV.
        temperature_C : float or None
            Air temperature, °C; where it is not known, or no room has it, the reference is taken.
        """
        temperature = np.nan if temperature_C is None else temperature_C
        return float(self.speeds(np.array([signal_mV]), np.array([temperature]))[0])

    def speeds(self, signal_mV: Array, temperature_C: Array) -> Array:
        """Return the same for arrays of one shape; NaN in `temperature_C` is "not known", in `signal_mV` stays NaN."""
        square = at_reference(signal_mV, temperature_C, reference_C=self.reference_C, bead_C=self.bead_C)
        moved = np.maximum(square - self.offset_mV2, 0.0) / self.slope
        return np.maximum(moved ** (1.0 / self.exponent), FREE_CONVECTION_M_S)

    def signals(self, speed_m_s: Array) -> Array:
        """Return the voltage at the reference temperature, mV, for drawing the law."""
        return np.sqrt(np.maximum(self.offset_mV2 + self.slope * speed_m_s**self.exponent, 0.0))


def at_reference(signal_mV: Array, temperature_C: Array, *, reference_C: float, bead_C: float) -> Array:
    """Return the square of the voltage as it would be at `reference_C`, mV²; see `KingLaw`."""
    believed = (temperature_C >= COLDEST_AIR_C) & (temperature_C <= WARMEST_AIR_C)
    air_C = np.where(believed, temperature_C, reference_C)
    return np.square(signal_mV) * (bead_C - reference_C) / (bead_C - air_C)
