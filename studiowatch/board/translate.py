"""Checked lines to the room's words: hello to a name and units, data to a reading in the project's units."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from studiowatch.board.wire import WireLine
from studiowatch.room.readings import Channel, ChannelFault, Reading

KELVIN_OFFSET = -273.15  # °C, exact: SI definition of the degree Celsius

_CONVERTED_DECIMALS = 4  # finer than any sensor of a room reads, and free of the conversion's own rounding

FAULT_RANGE = "range"  # our own codes beside the board's: a value that the sensor cannot mean,
FAULT_UNIT = "unit"  # a unit that is not known for this key,
FAULT_TWICE = "twice"  # a second value for a channel that the line already gave


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """What a sensor of this kind can mean, in the channel's unit, both ends included.

    Up to `slack` outside is rounding of the sensor and is brought back to the end.
    """

    low: float
    high: float
    slack: float = 0.0

    def admit(self, value: float) -> float | None:
        """Return `value`, brought inside if it is within the slack, or None if the sensor cannot mean it."""
        if not self.low - self.slack <= value <= self.high + self.slack:
            return None
        return min(max(value, self.low), self.high)


LIMITS: Mapping[Channel, Limits] = MappingProxyType(
    {
        Channel.TEMPERATURE: Limits(low=-40.0, high=85.0),  # °C, usual span of I2C humidity chips: from memory
        Channel.HUMIDITY: Limits(low=0.0, high=100.0, slack=0.5),  # %RH, by definition; slack: assumption
        Channel.AIR_SPEED: Limits(low=0.0, high=60.0),  # m/s, far beyond any room: assumption
        Channel.AIR_SIGNAL: Limits(low=0.0, high=5500.0),  # mV, USB supply 5 V + 10 %: assumption
        Channel.SURFACE: Limits(low=-40.0, high=125.0),  # °C: assumption
        Channel.PRESSURE: Limits(low=30_000.0, high=110_000.0),  # Pa, usual span of barometer chips: from memory
        Channel.PARTICLES: Limits(low=0.0, high=1e10),  # 1/m3, beyond thick smoke: assumption
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Measure:
    """How a number on the wire becomes a channel's value: ``value * factor + offset``."""

    channel: Channel
    factor: float = 1.0
    offset: float = 0.0


def converted(value: float, factor: float, offset: float) -> float:
    """Return ``value * factor + offset``, and a value that is in its own unit already as it was sent.

    With the noise of reckoning in its last digits a column takes several times the room on disk.
    """
    is_own = factor == 1.0 and offset == 0.0
    return value if is_own else round(value * factor + offset, _CONVERTED_DECIMALS)


_TEMPERATURE = {
    "Cel": _Measure(channel=Channel.TEMPERATURE),
    "K": _Measure(channel=Channel.TEMPERATURE, offset=KELVIN_OFFSET),
}
_SURFACE = {"Cel": _Measure(channel=Channel.SURFACE), "K": _Measure(channel=Channel.SURFACE, offset=KELVIN_OFFSET)}
_AIR = {
    "m/s": _Measure(channel=Channel.AIR_SPEED),
    "mV": _Measure(channel=Channel.AIR_SIGNAL),
    "V": _Measure(channel=Channel.AIR_SIGNAL, factor=1000.0),
}

# unit names: RFC 8428 section 12.1 (Cel, K, %RH, m/s, V, Pa, count) and RFC 8798 section 3 (mV, hPa)
_MEASURES: Mapping[str, Mapping[str, _Measure]] = {
    "t": _TEMPERATURE,
    "h": {"%RH": _Measure(channel=Channel.HUMIDITY)},
    "a": _AIR,
    "v": _AIR,
    "p": {"Pa": _Measure(channel=Channel.PRESSURE), "hPa": _Measure(channel=Channel.PRESSURE, factor=100.0)},
    "pm": {"count": _Measure(channel=Channel.PARTICLES)},
    "st": _SURFACE,
}
_USUAL_UNITS: Mapping[str, str] = MappingProxyType(
    {"t": "Cel", "h": "%RH", "a": "mV", "v": "m/s", "p": "Pa", "pm": "count", "st": "Cel"}
)
_USUAL_CHANNELS = {key: _MEASURES[key][unit].channel for key, unit in _USUAL_UNITS.items()}


@dataclass(frozen=True, slots=True, kw_only=True)
class Hello:
    """What a board says about itself; a field that it did not send is empty.

    Attributes
    ----------
    boots : int or None
        How often the board has started, itself included.
    units : mapping of str to str
        Unit of each key, from ``ch=``.
    """

    board_id: str = ""
    sensor: str = ""
    sensor_serial: str = ""
    firmware: str = ""
    boots: int | None = None
    units: Mapping[str, str] = field(default_factory=dict)


def read_hello(line: WireLine) -> Hello:
    """Return what the hello `line` says. Keys that are not known here are passed over."""
    fields = line.fields
    boots = fields.get("b", "")
    pairs = (part.partition(":") for part in fields.get("ch", "").split(",") if ":" in part)
    return Hello(
        board_id=fields.get("id", ""),
        sensor=fields.get("th", ""),
        sensor_serial=fields.get("sn", ""),
        firmware=fields.get("fw", ""),
        boots=int(boots) if boots.isdigit() else None,
        units={key: unit for key, _, unit in pairs},
    )


def read_data(line: WireLine, time_ms: int, units: Mapping[str, str] = _USUAL_UNITS) -> Reading:
    """Return the reading that the data `line` carries, stamped `time_ms` (UTC ms).

    `units` maps keys to unit names; a key that is not in it has its usual unit. Each channel ends as a value inside
    `LIMITS`, or as None with a fault: the board's own code, or ``range``, ``unit`` or ``twice``. Keys that are not
    known here are left in the line.
    """
    values: dict[Channel, float] = {}
    faults: list[ChannelFault] = []
    for key, text in zip(line.keys, line.values, strict=True):
        if key not in _MEASURES:
            continue
        measure = _MEASURES[key].get(units.get(key) or _USUAL_UNITS[key])
        if measure is None:
            faults.append(ChannelFault(channel=_USUAL_CHANNELS[key], code=FAULT_UNIT))
        elif measure.channel in values:
            faults.append(ChannelFault(channel=measure.channel, code=FAULT_TWICE))
        elif text.startswith("!"):
            faults.append(ChannelFault(channel=measure.channel, code=text[1:]))
        else:
            value = LIMITS[measure.channel].admit(converted(float(text), measure.factor, measure.offset))
            if value is None:
                faults.append(ChannelFault(channel=measure.channel, code=FAULT_RANGE))
            else:
                values[measure.channel] = value
    return Reading(
        time_ms=time_ms,
        temperature_C=values.get(Channel.TEMPERATURE),
        humidity_pct=values.get(Channel.HUMIDITY),
        air_speed_m_s=values.get(Channel.AIR_SPEED),
        air_signal_mV=values.get(Channel.AIR_SIGNAL),
        surface_C=values.get(Channel.SURFACE),
        pressure_Pa=values.get(Channel.PRESSURE),
        particles_per_m3_5um=values.get(Channel.PARTICLES),
        faults=tuple(faults),
    )
