"""A watch over a real store, with a sensor to calibrate."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from math import sqrt
from pathlib import Path

from studiowatch.board.events import BoardNamed, LineCounts, PortOpened, ReadingArrived
from studiowatch.compose import open_store
from studiowatch.room.readings import Reading
from studiowatch.service.calibration_commands import CalibrateAirSpeed, CalibrateHumidity, Spell, Walk
from studiowatch.service.happenings import Happening
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watchkeeping import Watchkeeping

from .scripted import ScriptedClock

DAY_S = 86_400
# over saturated salts at 22 °C, between Greenspan's 33.07 and 32.78, and 75.47 and 75.29
TRUE_LOW_PCT, TRUE_HIGH_PCT = 32.954, 75.398
HIGH_BY_PCT = 3.0


def room_says(humidity_pct: float = 50.0, signal_mV: float = 1000.0) -> Reading:
    """Return what a sensor says that reads 3 %RH too high."""
    return Reading(time_ms=0, temperature_C=22.0, humidity_pct=humidity_pct + HIGH_BY_PCT, air_signal_mV=signal_mV)


def bead_mV(speed_m_s: float) -> float:
    """Return the voltage of a bead by King's law; under the cup it has its own rising air of 0.03 m/s."""
    return sqrt(0.5e6 + 1.0e6 * sqrt(max(speed_m_s, 0.03)))


@dataclass
class Studio:
    """A watch over a real store, stepped as the keeper does."""

    path: Path
    clock: ScriptedClock = field(default_factory=ScriptedClock)
    told: list[Happening] = field(default_factory=list)

    def open(self) -> None:
        store = open_store(self.path, self.clock.utc_ms)
        self.log, self.records = store.log, store.records
        self.watch = Watchkeeping(
            log=store.log,
            records=store.records,
            shelf=SheetShelf.open(),
            clock_text=str,
            local_date=lambda _: None,  # type: ignore[arg-type, return-value] - no piece here has a day
            began_ms=self.clock.now_ms,
            tell=self.told.append,
            shut=store.close,
        )
        self.watch.open()

    def plug_in(self, serial: str = "CAFE0042", board_id: str = "8DF9E785") -> None:
        self.watch.take(PortOpened(time_ms=self.clock.now_ms, port="p", board="p"), self.clock.now_s)
        named = BoardNamed(
            time_ms=self.clock.now_ms, board_id=board_id, sensor="sht4x", sensor_serial=serial, firmware="f"
        )
        self.watch.take(named, self.clock.now_s)

    def read(self, seconds: int, says: Reading, step_s: int = 1) -> None:
        """Read `says` with a wobble of 0.02 %RH: a sensor that stands still is suspect."""
        for number in range(seconds // step_s):
            self.clock.pass_s(step_s)
            humidity_pct = (says.humidity_pct or 0.0) + 0.02 * (-1) ** number
            reading = replace(says, time_ms=self.clock.now_ms, humidity_pct=humidity_pct)
            self.watch.take(ReadingArrived(reading=reading, counts=LineCounts()), self.clock.now_s)
            self.look()

    def look(self) -> None:
        self.watch.look(self.clock.now_ms, self.clock.now_s)
        self.watch.speak()
        self.watch.write(self.clock.now_ms, self.clock.now_s)

    def pass_days(self, days: float) -> None:
        self.clock.pass_s(days * DAY_S)
        self.look()

    def do(self, command: object) -> str:
        return self.watch.carry_out(command, self.clock.now_ms, self.clock.now_s)  # type: ignore[arg-type]

    def snapshot(self) -> Snapshot:
        return self.watch.snapshot(self.clock.now_ms)

    def salts(self) -> CalibrateHumidity:
        """Leave the sensor over both salts until it is flat, and take it out while the board is unplugged."""
        self.read(1980, room_says(TRUE_LOW_PCT), step_s=10)
        magnesium_ms = self.clock.now_ms
        self.read(1980, room_says(TRUE_HIGH_PCT), step_s=10)
        sodium_ms = self.clock.now_ms
        self.clock.pass_s(700)
        return CalibrateHumidity(magnesium_ms=magnesium_ms, sodium_ms=sodium_ms)

    def walks(self) -> CalibrateAirSpeed:
        """Hold the cup over the bead, and walk it at three speeds."""
        spells = []
        for speed_m_s in (0.0, 0.3, 0.6, 1.2):
            start_ms = self.clock.now_ms + 1000
            self.read(12, room_says(signal_mV=bead_mV(speed_m_s)))
            spells.append((start_ms, self.clock.now_ms, speed_m_s))
        (start_ms, end_ms, _), *walked = spells
        return CalibrateAirSpeed(
            still=Spell(start_ms=start_ms, end_ms=end_ms),
            walks=tuple(
                Walk(start_ms=start_ms, end_ms=end_ms, distance_m=speed_m_s * (end_ms - start_ms) / 1000)
                for start_ms, end_ms, speed_m_s in walked
            ),
        )

    def prompts(self) -> list[str]:
        return [prompt.text for prompt in self.snapshot().prompts]
