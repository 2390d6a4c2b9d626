"""The room as last read: what each sensor says, whether the air moves, and the air that the films dry in."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from functools import lru_cache

from studiowatch.physics.air import Air, carried, speed_that_carries
from studiowatch.physics.moist_air import dew_point_if_any
from studiowatch.room.air_movement import SPEED, VOLTAGE, AirMovement, AirSignal, Movement, observe
from studiowatch.room.readings import Channel, Reading
from studiowatch.room.sensor_health import SensorHealth, check
from studiowatch.room.typed import Felt, felt_in, is_typed
from studiowatch.studio.concern import AirNow, TypedAir
from studiowatch.studio.otherwise import STILL_M_S

MOVING_M_S = 0.3  # m/s, air under a fan, where an uncalibrated sensor only says that it moves; assumption
STORM_M_S = 20.0  # m/s, as fast as the transfer at a plate is taken to go on; no room has it
LEAST_PA, MOST_PA = 60_000.0, 108_000.0  # Pa, a barometer at the highest towns and the deepest lows; assumption
MINUTE_MS = 60_000  # ms, that a board may be gone before a typed reading stands in for it; assumption
STALE_MS = 10_000  # ms, a channel that failed for this long is "not measured"
WARM_UP_MS = 1_200_000  # ms of the log that tell what still air was here: assumption
BRIDGED_MS = 600_000  # ms, a film goes on drying in the last air known for this long, no longer
_MOVES = {None: Movement.UNKNOWN, Felt.STILL: Movement.STILL, Felt.MOVING: Movement.MOVING}


@lru_cache(maxsize=4)  # the same reading is judged, tended by and shown
def _dew_point_C(temperature_C: float, humidity_pct: float) -> float | None:
    return dew_point_if_any(temperature_C, humidity_pct)


@dataclass(slots=True)
class _Last:
    """The last good value of a channel; one that was typed holds until the next, whoever reads it."""

    value: float
    time_ms: int
    is_typed: bool = False


@dataclass(slots=True)
class _Sums:
    """Sums of the air since the films were last advanced; of its speed what it `carried` off."""

    count: int = 0
    temperature_C: float = 0.0
    humidity_pct: float = 0.0
    carried: float = 0.0


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
    _felt: Felt | None = None
    _sums: _Sums = field(default_factory=_Sums)

    def take(self, reading: Reading) -> None:
        """Take one reading into account, as the board sent it or as she typed it."""
        typed = is_typed(reading)
        self._felt = felt_in(reading) if typed else self._felt
        self.health = SensorHealth() if typed else check(self.health, reading)  # a hygrometer is not the board
        unusable = self.health.unusable
        if Channel.TEMPERATURE in unusable:
            reading = replace(reading, temperature_C=None)
        reading = self.correct(reading)
        for channel in Channel:
            value = reading.value(channel)
            if value is not None and channel not in unusable:
                self._last[channel] = _Last(value, reading.time_ms, typed)
                self._failed.discard(channel)
        self._watch_movement(reading)
        self.last_ms = reading.time_ms
        air = self.air()
        if air is not None:
            self._sums.count += 1
            self._sums.temperature_C += air.temperature_C
            self._sums.humidity_pct += air.humidity_pct
            self._sums.carried += carried(air.air_speed_m_s)

    def fail(self, time_ms: int) -> None:
        """Take it that the board spoke, but measured nothing: each channel counts as not measured until it is read."""
        self.last_ms = time_ms
        self._failed.update(channel for channel, last in self._last.items() if not last.is_typed)

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
        if last is None or self.last_ms is None:
            return None
        return last.value if last.is_typed or abs(self.last_ms - last.time_ms) <= age_ms else None

    @property
    def typed_ms(self) -> int | None:
        """UTC ms at which the temperature or the humidity that the room is known by was typed; None if no board."""
        lasts = [self._last.get(channel) for channel in (Channel.TEMPERATURE, Channel.HUMIDITY)]
        return min((last.time_ms for last in lasts if last is not None and last.is_typed), default=None)

    def is_measured(self, now_ms: int) -> bool:
        """Return whether a board measures both temperature and humidity at `now_ms`, or did a moment ago."""
        known = self.value(Channel.TEMPERATURE) is not None and self.value(Channel.HUMIDITY) is not None
        return known and self.typed_ms is None and now_ms - (self.last_ms or 0) < MINUTE_MS

    @property
    def moves(self) -> Movement:
        """What the air does; UNKNOWN where it is not measured, or no longer."""
        if self._signal is not None and self.value(self._air_channel) is not None:
            return self.movement.movement
        return Movement.UNKNOWN if self.typed_ms is None else _MOVES[self._felt]

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

    def air(self, now_ms: int | None = None) -> Air | None:
        """Return the air at the films, or None if temperature or humidity is not known.

        For ten minutes a failed channel keeps its last good value here: a film goes on drying while a sensor is out.
        What was typed holds until the next reading, and is so much older at `now_ms`; None means the last reading.
        """
        temperature_C = self._value_within(Channel.TEMPERATURE, BRIDGED_MS)
        humidity_pct = self._value_within(Channel.HUMIDITY, BRIDGED_MS)
        if temperature_C is None or humidity_pct is None:
            return None
        air = Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=self._air_speed_m_s())
        if self.typed_ms is not None:
            age_s = max(0, (now_ms or self.last_ms or 0) - self.typed_ms) / 1000.0
            is_measured = self.value(Channel.AIR_SPEED) is not None
            air = replace(air, age_s=age_s, speed_is_measured=is_measured)
        pressure_Pa = self._value_within(Channel.PRESSURE, BRIDGED_MS)
        return air if pressure_Pa is None else replace(air, pressure_Pa=min(max(pressure_Pa, LEAST_PA), MOST_PA))

    def _air_speed_m_s(self) -> float:
        speed_m_s = self.value(Channel.AIR_SPEED)
        if speed_m_s is not None:
            return min(speed_m_s, STORM_M_S)
        if self._felt_only:
            return STILL_M_S  # what was felt may be over by now: no time is to come out too early for it
        return MOVING_M_S if self.moves in (Movement.MOVING, Movement.FAN) else STILL_M_S

    def mean_air(self, now_ms: int | None = None) -> Air | None:
        """Return the mean air since the last call, or the present one if hardly a reading came, or it was typed."""
        air, sums = self.air(now_ms), self._sums
        self._sums = _Sums()
        if air is None or air.age_s is not None or sums.count <= 1:
            return air
        return replace(
            air,
            temperature_C=sums.temperature_C / sums.count,
            humidity_pct=sums.humidity_pct / sums.count,
            air_speed_m_s=speed_that_carries(sums.carried / sums.count),
        )

    def dew_point_C(self) -> float | None:
        """Return the dew point of the room's air, °C, or None if it is not measured or too dry to have one."""
        temperature_C, humidity_pct = self.value(Channel.TEMPERATURE), self.value(Channel.HUMIDITY)
        if temperature_C is None or humidity_pct is None:
            return None
        return _dew_point_C(temperature_C, humidity_pct)

    def air_now(self, now_ms: int) -> AirNow:
        """Return the room as the watch judges it at `now_ms`."""
        return AirNow(
            temperature_C=self.value(Channel.TEMPERATURE),
            humidity_pct=self.value(Channel.HUMIDITY),
            air_speed_m_s=self.value(Channel.AIR_SPEED),
            dew_point_C=self.dew_point_C(),
            movement=self.moves,
            moving_since_ms=self._moving_since_ms(),
            age_s=max(0, now_ms - (self.last_ms or self.began_ms)) / 1000.0,
            implausible=self.health.sentence,
            typed=self._typed_air(now_ms),
            particles_per_m3_5um=self.value(Channel.PARTICLES),
        )

    @property
    def _felt_only(self) -> bool:
        """Whether no board says whether the air moves, so that only what was felt does."""
        return self.value(self._air_channel) is None

    def _moving_since_ms(self) -> int | None:
        if self._felt_only:
            return self.typed_ms if self.moves is Movement.MOVING else None
        return self.movement.began_ms if self.moves is not Movement.UNKNOWN else None

    def _typed_air(self, now_ms: int) -> TypedAir | None:
        if self.typed_ms is None:
            return None
        felt = self._felt if self._felt_only else None
        return TypedAir(time_ms=self.typed_ms, age_s=max(0, now_ms - self.typed_ms) / 1000.0, felt=felt)
