"""Readings that cannot be right: out of any room's range, leaping, or stuck."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from math import isclose

from studiowatch.room import figures
from studiowatch.room.readings import Channel, Reading
from studiowatch.speech.units import Degrees, chosen
from studiowatch.speech.words import mark, say, say_counted

LEAP_HOLD_MS = 10_000  # ms that a channel stays suspect after a leap; assumption
STUCK_FINE_MS = 120_000  # ms identical, resolution 0.01
STUCK_COARSE_MS = 6 * 3_600_000  # ms identical, resolution 0.1
STUCK_READINGS = 30  # as many identical ones at least, so that a log of minute means is not called stuck; assumption
LINE_MS = 1_000  # ms between two lines of a board at its usual pace
GAP_MS = 600_000  # ms without readings after which a channel is judged afresh; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Plausible:
    """What a channel may do in a room.

    Attributes
    ----------
    lowest, highest : float
        Range, in `unit`.
    fastest_per_s : float
        Fastest believable change, `unit` per second.
    """

    channel: Channel
    name: str
    unit: str
    lowest: float
    highest: float
    fastest_per_s: float


TEMPERATURE = Plausible(
    channel=Channel.TEMPERATURE, name=mark("The temperature"), unit="°C", lowest=-10.0, highest=50.0, fastest_per_s=1.0
)
HUMIDITY = Plausible(
    channel=Channel.HUMIDITY, name=mark("The humidity"), unit="%", lowest=0.0, highest=100.0, fastest_per_s=10.0
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChannelHealth:
    """What is remembered of one channel.

    Attributes
    ----------
    value : float or None
        Last value, in the channel's unit.
    time_ms, same_since_ms, leapt_ms : int or None
        UTC ms of the last reading, of the first one of the present identical run, and of the last leap.
    same_count : int
        Readings in the identical run.
    is_fine : bool
        True once a value finer than 0.1 has been seen.
    sentence : str
        Why the channel is not to be believed now, or "".
    is_stuck : bool
        Whether that is only because it stands still: its value may be right all the same.
    """

    value: float | None = None
    time_ms: int | None = None
    same_since_ms: int | None = None
    leapt_ms: int | None = None
    same_count: int = 0
    is_fine: bool = False
    sentence: str = ""
    is_stuck: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class SensorHealth:
    """Health of the temperature and humidity channels."""

    temperature: ChannelHealth = field(default_factory=ChannelHealth)
    humidity: ChannelHealth = field(default_factory=ChannelHealth)

    @property
    def suspect(self) -> tuple[Channel, ...]:
        """Channels that are not to be believed now."""
        pairs = ((Channel.TEMPERATURE, self.temperature), (Channel.HUMIDITY, self.humidity))
        return tuple(channel for channel, health in pairs if health.sentence)

    @property
    def unusable(self) -> tuple[Channel, ...]:
        """Channels whose present value cannot be right; one that merely stands still may be."""
        pairs = ((Channel.TEMPERATURE, self.temperature), (Channel.HUMIDITY, self.humidity))
        return tuple(channel for channel, health in pairs if health.sentence and not health.is_stuck)

    @property
    def sentence(self) -> str:
        """Why, in one or two sentences, or ""."""
        return " ".join(health.sentence for health in (self.temperature, self.humidity) if health.sentence)


def check(health: SensorHealth, reading: Reading) -> SensorHealth:
    """Return the health after one reading; a channel that was not read keeps its state."""
    return SensorHealth(
        temperature=_checked(health.temperature, reading.time_ms, reading.temperature_C, TEMPERATURE),
        humidity=_checked(health.humidity, reading.time_ms, reading.humidity_pct, HUMIDITY),
    )


def _checked(health: ChannelHealth, time_ms: int, value: float | None, plausible: Plausible) -> ChannelHealth:
    if value is None:
        return health
    if health.time_ms is not None and not 0 <= time_ms - health.time_ms <= GAP_MS:
        health = ChannelHealth(is_fine=health.is_fine)
    same = health.value is not None and value == health.value
    is_leap = _rate_per_s(health, time_ms, value) > plausible.fastest_per_s
    seen = ChannelHealth(
        value=value,
        time_ms=time_ms,
        same_since_ms=health.same_since_ms if same else time_ms,
        leapt_ms=time_ms if is_leap else health.leapt_ms,
        same_count=health.same_count + 1 if same else 1,
        is_fine=health.is_fine or not isclose(value * 10, round(value * 10), abs_tol=1e-6),
    )
    wrong = _wrong(seen, plausible)
    stuck = "" if wrong else _stuck(seen, plausible)
    return replace(seen, sentence=wrong or stuck, is_stuck=bool(stuck))


def _rate_per_s(health: ChannelHealth, time_ms: int, value: float) -> float:
    """Return how fast a channel changed; lines that a stall delivered together were at least `LINE_MS` apart."""
    if health.value is None or health.time_ms is None:
        return 0.0
    return abs(value - health.value) * 1000 / max(time_ms - health.time_ms, LINE_MS)


def _wrong(health: ChannelHealth, plausible: Plausible) -> str:
    value, now_ms = health.value, health.time_ms
    if value is None or now_ms is None:
        return ""
    name = say(plausible.name)
    if not plausible.lowest <= value <= plausible.highest:
        return say(
            "{quantity} reads {value} {unit}; a room has {low} to {high} {unit}.",
            quantity=name,
            value=_number(value, plausible),
            low=_number(plausible.lowest, plausible),
            high=_number(plausible.highest, plausible),
            unit=_unit(plausible),
        )
    if health.leapt_ms is not None and now_ms - health.leapt_ms < LEAP_HOLD_MS:
        per_K = chosen().degrees.per_K if plausible.channel is Channel.TEMPERATURE else 1.0
        return say(
            "{quantity} leapt to {value} {unit} faster than {fastest} {unit} a second.",
            quantity=name,
            value=_number(value, plausible),
            fastest=chosen().plain(plausible.fastest_per_s * per_K),
            unit=_unit(plausible),
        )
    return ""


def _stuck(health: ChannelHealth, plausible: Plausible) -> str:
    value, now_ms = health.value, health.time_ms
    if value is None or now_ms is None:
        return ""
    same_ms = now_ms - (health.same_since_ms or now_ms)
    stuck_ms = STUCK_FINE_MS if health.is_fine else STUCK_COARSE_MS
    if same_ms > stuck_ms and health.same_count >= STUCK_READINGS:
        return say(
            "{quantity} has read exactly {value} {unit} for {time}: the sensor seems stuck.",
            quantity=say(plausible.name),
            value=_number(value, plausible),
            unit=_unit(plausible),
            time=_span(same_ms),
        )
    return ""


def _span(span_ms: int) -> str:
    minutes = span_ms // 60_000
    if minutes < 2 * 60:
        return say_counted(minutes, "{n} minute", "{n} minutes")
    return say_counted(minutes // 60, "{n} hour", "{n} hours")


def _number(value: float, plausible: Plausible) -> str:
    """Return a value of a channel as she reads it, without its unit; in °C as the sensor gave it."""
    units = chosen()
    if plausible.channel is Channel.TEMPERATURE and units.degrees is Degrees.FAHRENHEIT:
        return figures.degrees(value)
    return units.plain(value)


def _unit(plausible: Plausible) -> str:
    return chosen().degrees.value if plausible.channel is Channel.TEMPERATURE else plausible.unit
