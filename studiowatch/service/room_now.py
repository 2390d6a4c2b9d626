"""The room as last read: what each sensor says, whether the air moves, and the air that the films dry in."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace

from studiowatch.physics.air import Air
from studiowatch.physics.moist_air import dew_point
from studiowatch.room.air_movement import SPEED, VOLTAGE, AirMovement, AirSignal, Movement, observe
from studiowatch.room.readings import Channel, Reading
from studiowatch.room.sensor_health import SensorHealth, check
from studiowatch.studio.concern import AirNow

STILL_M_S = 0.05  # m/s, air in a room with nothing on, where no calibrated sensor says more; assumption
MOVING_M_S = 0.3  # m/s, air under a fan, where an uncalibrated sensor only says that it moves; assumption
STORM_M_S = 20.0  # m/s, as fast as the transfer at a plate is taken to go on; no room has it
LEAST_PA, MOST_PA = 60_000.0, 108_000.0  # Pa, a barometer at the highest towns and the deepest lows; assumption
STALE_MS = 10_000  # ms, a channel that failed for this long is "not measured"
WARM_UP_MS = 1_200_000  # ms of the log that tell what still air was here: assumption
BRIDGED_MS = 600_000  # ms, a film goes on drying in the last air known for this long, no longer


@dataclass(slots=True)
class _Last:
    """The last good value of a channel."""

    value: float
    time_ms: int


@dataclass(slots=True)
class _Sums:
    """Sums of the air since the films were last advanced."""

    count: int = 0
    temperature_C: float = 0.0
    humidity_pct: float = 0.0
    air_speed_m_s: float = 0.0


@dataclass(slots=True)
class RoomNow:
    """Takes readings and answers what the room is now.

    Attributes
    ----------
    began_ms : int
        UTC ms since which this room has been watched.
    last_ms : int or None
        UTC ms of the last reading.
    correct : callable
        Puts a reading right by the calibrations; a sensor's health is judged by what it said itself.
    """

    began_ms: int
    correct: Callable[[Reading], Reading] = lambda reading: reading
    last_ms: int | None = None
    movement: AirMovement = field(default_factory=AirMovement)
    health: SensorHealth = field(default_factory=SensorHealth)
    _signal: AirSignal | None = None
    _air_channel: Channel = Channel.AIR_SPEED
    _last: dict[Channel, _Last] = field(default_factory=dict)
    _failed: set[Channel] = field(default_factory=set)
    _sums: _Sums = field(default_factory=_Sums)

    def take(self, reading: Reading) -> None:
        """Take one reading into account, as the board sent it."""
        self.health = check(self.health, reading)
        unusable = self.health.unusable
        if Channel.TEMPERATURE in unusable:
            reading = replace(reading, temperature_C=None)
        reading = self.correct(reading)
        for channel in Channel:
            value = reading.value(channel)
            if value is not None and channel not in unusable:
                self._last[channel] = _Last(value, reading.time_ms)
                self._failed.discard(channel)
        self._watch_movement(reading)
        self.last_ms = reading.time_ms
        air = self.air()
        if air is not None:
            self._sums.count += 1
            self._sums.temperature_C += air.temperature_C
            self._sums.humidity_pct += air.humidity_pct
            self._sums.air_speed_m_s += air.air_speed_m_s

    def fail(self, time_ms: int) -> None:
        """Take it that the board spoke, but measured nothing: each channel counts as not measured until it is read."""
        self.last_ms = time_ms
        self._failed.update(self._last)

    def _watch_movement(self, reading: Reading) -> None:
        if reading.air_speed_m_s is not None:
            value, signal, channel = reading.air_speed_m_s, SPEED, Channel.AIR_SPEED
        elif reading.air_signal_mV is not None:
            value, signal, channel = reading.air_signal_mV, VOLTAGE, Channel.AIR_SIGNAL
        else:
            return
        if signal is not self._signal:
            self._signal, self._air_channel, self.movement = signal, channel, AirMovement()
        self.movement = observe(self.movement, reading.time_ms, value, signal)

    def value(self, channel: Channel) -> float | None:
        """Return the last good value of `channel`, or None if it is not measured or failed for too long."""
        return None if channel in self._failed else self._value_within(channel, STALE_MS)

    def _value_within(self, channel: Channel, age_ms: int) -> float | None:
        last = self._last.get(channel)
        if last is None or self.last_ms is None or abs(self.last_ms - last.time_ms) > age_ms:
            return None
        return last.value

    @property
    def moves(self) -> Movement:
        """What the air does; UNKNOWN where it is not measured, or no longer."""
        if self._signal is None or self.value(self._air_channel) is None:
            return Movement.UNKNOWN
        return self.movement.movement

    def warm_up(self, readings: Iterable[Reading]) -> None:
        """Learn from the log what still air is here, so that a fan that ran on over a restart is not taken for it."""
        for reading in readings:
            self._watch_movement(self.correct(reading))

    def shift(self, step_ms: int) -> None:
        """Move what is remembered along with a wall clock that was set."""
        self.began_ms += step_ms
        if self.last_ms is not None:
            self.last_ms += step_ms
        for last in self._last.values():
            last.time_ms += step_ms

    def air(self) -> Air | None:
        """Return the air at the films, or None if temperature or humidity is not known.

        For ten minutes a failed channel keeps its last good value here: a film goes on drying while a sensor is out.
        """
        temperature_C = self._value_within(Channel.TEMPERATURE, BRIDGED_MS)
        humidity_pct = self._value_within(Channel.HUMIDITY, BRIDGED_MS)
        if temperature_C is None or humidity_pct is None:
            return None
        air = Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=self._air_speed_m_s())
        pressure_Pa = self._value_within(Channel.PRESSURE, BRIDGED_MS)
        return air if pressure_Pa is None else replace(air, pressure_Pa=min(max(pressure_Pa, LEAST_PA), MOST_PA))

    def _air_speed_m_s(self) -> float:
        speed_m_s = self.value(Channel.AIR_SPEED)
        if speed_m_s is not None:
            return min(speed_m_s, STORM_M_S)
        return MOVING_M_S if self.moves in (Movement.MOVING, Movement.FAN) else STILL_M_S

    def mean_air(self) -> Air | None:
        """Return the mean air since the last call, or the present one if nothing came since."""
        air, sums = self.air(), self._sums
        self._sums = _Sums()
        if air is None or sums.count == 0:
            return air
        return replace(
            air,
            temperature_C=sums.temperature_C / sums.count,
            humidity_pct=sums.humidity_pct / sums.count,
            air_speed_m_s=sums.air_speed_m_s / sums.count,
        )

    def dew_point_C(self) -> float | None:
        """Return the dew point of the room's air, °C, or None if it is not measured."""
        temperature_C, humidity_pct = self.value(Channel.TEMPERATURE), self.value(Channel.HUMIDITY)
        if temperature_C is None or not humidity_pct:
            return None
        return float(dew_point(temperature_C, humidity_pct))

    def air_now(self, now_ms: int) -> AirNow:
        """Return the room as the watch judges it at `now_ms`."""
        return AirNow(
            temperature_C=self.value(Channel.TEMPERATURE),
            humidity_pct=self.value(Channel.HUMIDITY),
            air_speed_m_s=self.value(Channel.AIR_SPEED),
            dew_point_C=self.dew_point_C(),
            movement=self.moves,
            moving_since_ms=self.movement.began_ms if self.moves is not Movement.UNKNOWN else None,
            age_s=max(0, now_ms - (self.last_ms or self.began_ms)) / 1000.0,
            implausible=self.health.sentence,
        )
