"""Readings: what the room was at one moment, and which channels could not be read."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Channel(StrEnum):
    """The quantities that a reading may carry; the value is the column's name in a room log."""

    TEMPERATURE = "temperature_C"
    HUMIDITY = "humidity_pct"
    AIR_SPEED = "air_speed_m_s"
    AIR_SIGNAL = "air_signal_mV"
    SURFACE = "surface_C"
    PRESSURE = "pressure_Pa"
    PARTICLES = "particles_per_m3_5um"


@dataclass(frozen=True, slots=True, kw_only=True)
class ChannelFault:
    """A channel that the board itself reported as failed, with the board's own code (``nak``, ``crc``, ``busy``)."""

    channel: Channel
    code: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """One moment of the room. A channel that was not read is None, never a stale or made-up number.

    Attributes
    ----------
    time_ms : int
        UTC, milliseconds since 1970-01-01.
    air_speed_m_s : float or None
        Calibrated air speed, m/s.
    air_signal_mV : float or None
        Voltage of an anemometer that has no calibration yet, mV: it shows change, not speed.
    checked : bool
        True if the line carried a checksum that was right.
    faults : tuple of ChannelFault
        Channels that the board reported as failed in this line; see `room.typed` for a reading that no board sent.
    """

    time_ms: int
    temperature_C: float | None = None
    humidity_pct: float | None = None
    air_speed_m_s: float | None = None
    air_signal_mV: float | None = None
    surface_C: float | None = None
    pressure_Pa: float | None = None
    particles_per_m3_5um: float | None = None
    checked: bool = True
    faults: tuple[ChannelFault, ...] = ()

    def value(self, channel: Channel) -> float | None:
        """Return the value of `channel`, or None if it was not read."""
        value: float | None = getattr(self, channel.value)
        return value
