"""A board without hardware: the simulated room as bytes of the wire format, through the parser that real bytes take."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Iterator
from dataclasses import replace
from threading import Condition

from studiowatch.board.clock import Clock
from studiowatch.board.port import BAUD, PortGone
from studiowatch.board.simulated_room import RoomMoment, SimulatedRoom
from studiowatch.board.wire import Kind, encode
from studiowatch.room.readings import Reading
from studiowatch.speech.words import mark, say

SIMULATED_NAME = mark("simulated board")  # the name of its port
PERIOD_MS = 1000  # one data line a second: the wire format's usual pace
HELLO_EVERY = 60  # lines: the wire format
HUMIDITY_TURNS_S = 20.0  # how fast `set_humidity` takes hold, time constant

NOISE_C = 0.02  # standard deviations of the sensors' noise: assumption
NOISE_PCT = 0.06
NOISE_M_S = 0.006


class SteppedClock:
    """A clock that stands still until it is advanced: board time without waiting."""

    def __init__(self, start_ms: int) -> None:
        self._start_ms = self._now_ms = start_ms

    def utc_ms(self) -> int:
        """Return the time it was advanced to, UTC ms."""
        return self._now_ms

    def monotonic_s(self) -> float:
        """Return the seconds it was advanced by."""
        return (self._now_ms - self._start_ms) / 1000

    def advance(self, step_ms: int) -> None:
        """Let `step_ms` pass."""
        self._now_ms += step_ms


class SimulatedPort:
    """A port with a simulated board behind it. Meets `BytePort`; give `open` to a reader as its way to open ports.

    Parameters
    ----------
    clock : Clock
        Tells the room's day and paces the lines.
    room : SimulatedRoom
        What the board measures.
    fan_spell_s : tuple of float or None
        A fan runs between these seconds after the port was made.
    advance : callable or None
        If given, the port does not wait for the next line but calls this with the period, ms: a `SteppedClock`'s
        `advance` makes board time run as fast as it is read.
    period_ms : int
        From one data line to the next, ms.

    The controls may be used from any thread.
    """

    def __init__(
        self,
        *,
        clock: Clock,
        room: SimulatedRoom,
        fan_spell_s: tuple[float, float] | None = None,
        advance: Callable[[int], None] | None = None,
        period_ms: int = PERIOD_MS,
    ) -> None:
        made_ms = clock.utc_ms()
        self._spell_ms = tuple(made_ms + round(1000 * at_s) for at_s in fan_spell_s or (0.0, 0.0))
        self._clock = clock
        self._room = room
        self._advance = advance
        self._period_ms = period_ms
        self._changed = Condition()
        self._plugged = True
        self._cancelled = False
        self._fan_since_ms: int | None = None
        self._humidity: tuple[float, float, int] | None = None
        self._boots = 0
        self._start()

    def _start(self) -> None:
        self._boots += 1
        self._number = 0
        self._started_s = self._next_s = self._clock.monotonic_s()
        self._waiting = self._hello()

    # the port

    def open(self, name: str, baud: int = BAUD) -> SimulatedPort:
        """Open the port, which starts the board again, as opening does to many boards. Raises `PortGone`."""
        del name, baud
        with self._changed:
            if not self._plugged:
                raise PortGone(say("The simulated board is unplugged: plug it in again."))
            self._start()
        return self

    def read_some(self, timeout_s: float) -> bytes:
        """Return the lines that are due, waiting at most `timeout_s` for the next. Raises `PortGone`."""
        with self._changed:
            if self._advance is not None and not self._waiting and timeout_s > 0:
                self._advance(self._period_ms)
            elif not self._waiting:
                self._changed.wait_for(self._interrupted, self._until_due_s(timeout_s))
            self._cancelled = False
            if not self._plugged:
                raise PortGone(say("The simulated board was unplugged: plug it in again."))
            data = self._waiting + b"".join(self._due_lines())
            self._waiting = b""
            return data

    def write(self, data: bytes) -> None:
        """Take what the host sends: "?" asks for the hello. Raises `PortGone`."""
        with self._changed:
            if not self._plugged:
                raise PortGone(say("The simulated board was unplugged: plug it in again."))
            self._waiting += self._hello() * data.count(b"?")

    def cancel(self) -> None:
        """End a waiting read early."""
        with self._changed:
            self._cancelled = True
            self._changed.notify_all()

    def close(self) -> None:
        """Let go of the port; the board runs on."""

    # the controls

    def fan(self, *, on: bool) -> None:
        """Switch a fan in the room on or off."""
        with self._changed:
            self._fan_since_ms = self._clock.utc_ms() if on else None

    def set_humidity(self, humidity_pct: float | None) -> None:
        """Bring the room to `humidity_pct` (0 to 100 %RH) within a minute or so, or, with None, back to its own."""
        if humidity_pct is not None and not 0 <= humidity_pct <= 100:  # noqa: PLR2004 - %RH, by definition
            raise ValueError(f"The humidity is {humidity_pct:g} %RH; it must be 0 to 100 %RH.")  # not said
        with self._changed:
            now_ms = self._clock.utc_ms()
            here_pct = self._moment(now_ms).humidity_pct
            self._humidity = None if humidity_pct is None else (here_pct, humidity_pct, now_ms)

    def unplug(self) -> None:
        """Pull the board's plug."""
        with self._changed:
            self._plugged = False
            self._changed.notify_all()

    def replug(self) -> None:
        """Push the plug home again; the board starts anew when it is opened."""
        with self._changed:
            self._plugged = True

    # the board

    def _interrupted(self) -> bool:
        return self._cancelled or not self._plugged or bool(self._waiting)

    def _until_due_s(self, timeout_s: float) -> float:
        return min(max(self._next_s - self._clock.monotonic_s(), 0.0), timeout_s)

    def _due_lines(self) -> Iterator[bytes]:
        """Yield a data line for each period that has come, and a hello every 60 lines."""
        while self._next_s <= self._clock.monotonic_s():
            behind_ms = round(1000 * (self._clock.monotonic_s() - self._next_s))
            if self._number and self._number % HELLO_EVERY == 0:
                yield self._hello()
            yield self._data(self._clock.utc_ms() - behind_ms)
            self._number += 1
            self._next_s += self._period_ms / 1000

    def _hello(self) -> bytes:
        fields = {"v": "1", "id": "51A0D3E0", "fw": "simulated/1", "b": str(self._boots), "th": "simulated"}
        fields |= {"sn": "00000001", "per": str(self._period_ms), "ch": "t:Cel,h:%RH,v:m/s,p:Pa,pm:count"}
        return encode(Kind.HELLO, fields)

    def _data(self, time_ms: int) -> bytes:
        seen = with_noise(self._moment(time_ms), time_ms)
        uptime_ms = round(1000 * (self._next_s - self._started_s))
        return encode(
            Kind.DATA,
            {
                "n": str(self._number),
                "u": str(uptime_ms % 2**32),
                "t": f"{seen.temperature_C:.2f}",
                "h": f"{seen.humidity_pct:.2f}",
                "v": f"{seen.air_speed_m_s:.3f}",
                "p": f"{seen.pressure_Pa:.0f}",
                "pm": f"{seen.particles_per_m3_5um:.0f}",
            },
        )

    def _moment(self, time_ms: int) -> RoomMoment:
        """Return the room with the controls applied."""
        moment = self._room.room_at(time_ms)
        fan_since_ms = self._fan_since_ms
        if self._spell_ms[0] <= time_ms < self._spell_ms[1]:
            fan_since_ms = self._spell_ms[0]
        if fan_since_ms is not None and time_ms >= fan_since_ms:
            fan_m_s = self._room.fan_speed(time_ms, fan_since_ms)
            moment = replace(moment, air_speed_m_s=max(moment.air_speed_m_s, fan_m_s))
        if self._humidity is not None:
            from_pct, to_pct, since_ms = self._humidity
            still_from = math.exp(-max(time_ms - since_ms, 0) / 1000 / HUMIDITY_TURNS_S)
            moment = replace(moment, humidity_pct=to_pct + (from_pct - to_pct) * still_from)
        return moment


def with_noise(moment: RoomMoment, time_ms: int) -> RoomMoment:
    """Return `moment` as sensors see it; the noise follows from the time, so that a moment is always seen alike."""
    drawn = random.Random(time_ms)  # noqa: S311 - a demonstration, no secret
    return replace(
        moment,
        temperature_C=moment.temperature_C + drawn.gauss(0.0, NOISE_C),
        humidity_pct=min(max(moment.humidity_pct + drawn.gauss(0.0, NOISE_PCT), 0.0), 100.0),
        air_speed_m_s=max(moment.air_speed_m_s + drawn.gauss(0.0, NOISE_M_S), 0.0),
    )


def past_readings(room: SimulatedRoom, start_ms: int, end_ms: int, step_s: float) -> Iterator[Reading]:
    """Yield what the board would have sent between two times (UTC ms, the end left out), one reading per `step_s`."""
    if step_s <= 0:
        raise ValueError(f"The step is {step_s:g} s; it must be above 0 s.")  # not said
    for time_ms in range(start_ms, end_ms, max(round(1000 * step_s), 1)):
        seen = with_noise(room.room_at(time_ms), time_ms)
        yield Reading(
            time_ms=time_ms,
            temperature_C=round(seen.temperature_C, 2),
            humidity_pct=round(seen.humidity_pct, 2),
            air_speed_m_s=round(seen.air_speed_m_s, 3),
            pressure_Pa=round(seen.pressure_Pa),
            particles_per_m3_5um=round(seen.particles_per_m3_5um),
        )
