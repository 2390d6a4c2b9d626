"""The calibrations on the keeper's desk: which sensor is on, what holds for it, and when it is due to be checked."""

from __future__ import annotations

import uuid
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import partial

from studiowatch.board.events import BoardEvent, BoardNamed, PortOpened, ReadingArrived
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.corrections import UNNAMED, Corrections, Imported, Kept, Sighting, corrections, newest
from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.room.plateau import Plateau, settle
from studiowatch.room.readings import Reading
from studiowatch.room.recheck import recheck_due_ms
from studiowatch.service.calibration_commands import CalibrationCommand, TryCalibration, WithdrawCalibration
from studiowatch.service.calibration_orders import Bench, calibrated
from studiowatch.service.calibration_views import CalibrationsView, CalibrationView, DraftView
from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.prompt_desk import Reminder
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import solvent_layings_ms
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

UNNAMED_MS = 90_000  # ms after a port was opened without a hello: one comes every 60 lines, so this board says none
EXAMPLE_PCT = 50.0  # %RH, at which a correction is told

HUMIDITY_CHECK = mark("Check the humidity sensor with the two salts")
AIR_CHECK = mark("Check the air speed sensor: under a cup it should read still")
BOTH_CHECKS = mark("Check the sensors: humidity with the two salts, air speed under a cup")
AWAY_FROM_VAPOUR = mark(
    "Never in solvent vapour: the bead is hot and contacts spark. The parts' own sheets come first."
)


@dataclass(slots=True)
class CalibrationDesk:
    """Holds what is known of the sensors; `disk` takes what changes, `log` has the readings as the sensors gave them.

    Attributes
    ----------
    known : Corrections
        What holds when.
    sensor : str
        The sensor that is on now.
    plateau : Plateau
        Whether it reads flat, as in a box over a salt.
    """

    records: Records
    disk: Disk
    log: ReadingsLog
    known: Corrections = field(default_factory=Corrections)
    sensor: str = UNNAMED
    plateau: Plateau = field(default_factory=Plateau)
    _draft: DraftView | None = None
    _kept: dict[str, Kept] = field(default_factory=dict)
    _sightings: list[Sighting] = field(default_factory=list)
    _checks: list[Sighting] = field(default_factory=list)
    _imported: tuple[Imported, ...] = ()
    _opened_ms: int | None = None

    def reopen(self) -> None:
        """Take up what is on disk; the last sensor is taken for the present one until a board says its name."""
        self._kept = {kept.key: kept for kept in self.records.calibrations()}
        self._sightings = list(self.records.sightings())
        self._checks = list(self.records.checks())
        self._imported = tuple(self.records.imported())
        self.sensor = self._sightings[-1].sensor if self._sightings else UNNAMED
        self._know()

    def take_imported(self) -> None:
        """Take up what was imported since: it is corrected by no calibration."""
        self._imported = tuple(self.records.imported())
        self._know()

    def corrected(self, reading: Reading) -> Reading:
        """Return a reading as the calibrations of its time have it."""
        return self.known.corrected(reading)

    def take(self, event: BoardEvent) -> None:
        """Take one event of the board: which sensor is on, and what it says itself.

        A board without a serial number of its sensor is known by its own; one that says neither is nobody.
        """
        match event:
            case PortOpened():
                self._opened_ms = event.time_ms
            case BoardNamed():
                self._opened_ms = None
                self._see(event.time_ms, event.sensor_serial if event.sensor_serial.strip("0") else event.board_id)
            case ReadingArrived():
                self._read(event.reading)

    def _read(self, reading: Reading) -> None:
        if self._opened_ms is not None and reading.time_ms - self._opened_ms > UNNAMED_MS:
            self._see(self._opened_ms, UNNAMED)
            self._opened_ms = None
        self.plateau = settle(self.plateau, reading)

    def carry_out(self, command: CalibrationCommand, now_ms: int, rack: Rack) -> str:
        """Calibrate the present sensor from now on, or withdraw a calibration; return its key, on disk by then.

        One that is only tried is shown in `view`, and its key is "".

        What was read since a calibration that is withdrawn is as the one before has it, or raw, and the coats of `rack`
        are dried anew by that with the next look.

        Raises
        ------
        Refused
            If it cannot be right; nothing was changed.
        StoreTrouble
            If the disk refused; nothing was changed.
        """
        if isinstance(command, WithdrawCalibration):
            kept = self._withdrawn(command.calibration_key, now_ms)
            self._keep(kept)
            rack.dry_anew()
            return kept.key
        bench = Bench(readings=self.log.between, known=self.known, sensor=self.sensor, now_ms=now_ms)
        self._draft = None
        if isinstance(command, TryCalibration):
            self._draft = DraftView(of=command.of, calibration=calibrated(command.of, bench))
            return ""
        kept = Kept(key=uuid.uuid4().hex, sensor=self.sensor, made_ms=now_ms, calibration=calibrated(command, bench))
        self._keep(kept)
        return kept.key

    def _withdrawn(self, key: str, now_ms: int) -> Kept:
        kept = self._kept.get(key)
        if kept is None or kept.withdrawn_ms is not None:
            raise Refused(say("That calibration is withdrawn already; choose one that holds."))
        return replace(kept, withdrawn_ms=now_ms)

    def reminder(self, now_ms: int, rack: Rack) -> Reminder | None:
        """Return what to check on the present sensor, or None if nothing is due yet."""
        due = [view for view in self._views(rack) if view.is_present and view.recheck_ms <= now_ms]
        if not due:
            return None
        kinds = {type(view.calibration) for view in due}
        headline = HUMIDITY_CHECK if kinds == {HumidityCalibration} else AIR_CHECK
        return Reminder(
            key=f"{self.sensor}:{min(self._checked_ms(self._kept[view.key]) for view in due)}:sensor-check",
            due_ms=min(view.recheck_ms for view in due),
            headline=say(BOTH_CHECKS if len(kinds) > 1 else headline),
            caution=say(AWAY_FROM_VAPOUR),
            tick=self._check,
        )

    def view(self, rack: Rack) -> CalibrationsView:
        """Return what she may know of the calibrations."""
        return CalibrationsView(sensor=self.sensor, plateau=self.plateau, holding=self._views(rack), draft=self._draft)

    def _views(self, rack: Rack) -> tuple[CalibrationView, ...]:
        solvent_laid_ms = solvent_layings_ms(rack)
        return tuple(
            CalibrationView(
                key=kept.key,
                sensor=kept.sensor,
                made_ms=kept.made_ms,
                recheck_ms=recheck_due_ms(self._checked_ms(kept), solvent_laid_ms),
                is_present=kept.sensor == self.sensor,
                sentence=_sentence(kept.calibration),
                calibration=kept.calibration,
            )
            for kept in newest(self._kept.values())
        )

    def _checked_ms(self, kept: Kept) -> int:
        """Return when a calibration was last made or found right."""
        return max([kept.made_ms, *(check.time_ms for check in self._checks if check.sensor == kept.sensor)])

    def _check(self, now_ms: int) -> None:
        check = Sighting(time_ms=now_ms, sensor=self.sensor)
        self.records.save_check(check)
        self._checks.append(check)

    def _keep(self, kept: Kept) -> None:
        self.records.save_calibration(kept)
        self._kept[kept.key] = kept
        self._know()

    def _see(self, time_ms: int, sensor: str) -> None:
        if sensor == self.sensor:
            return
        self.sensor, self.plateau, self._draft = sensor, Plateau(), None
        self._sightings.append(Sighting(time_ms=time_ms, sensor=sensor))
        self.disk.later(partial(self.records.save_sighting, self._sightings[-1]))
        self._know()

    def _know(self) -> None:
        self.known = corrections(self._kept.values(), self._sightings, self._imported)


@dataclass(frozen=True, slots=True, kw_only=True)
class CorrectedLog:
    """A readings log that is read as the calibrations have it; what is written goes to disk as it came."""

    log: ReadingsLog
    corrected: Callable[[Reading], Reading]

    def append(self, readings: Sequence[Reading]) -> None:
        """Commit `readings` as they are."""
        self.log.append(readings)

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return the readings with start <= time < end, put right."""
        return [self.corrected(reading) for reading in self.log.between(start_ms, end_ms)]

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return one reading per minute, put right: its speed is that of the mean voltage, 6 % less in strong gusts."""
        return [self.corrected(reading) for reading in self.log.minute_means(start_ms, end_ms)]

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        """Pack the hours that ended by `before_ms`, so many at the most."""
        return self.log.seal(before_ms, most_hours)


def _sentence(calibration: HumidityCalibration | AirSpeedCalibration) -> str:
    if isinstance(calibration, AirSpeedCalibration):
        return calibration.sentence
    right_pct = calibration.corrected_pct(EXAMPLE_PCT)
    return say(
        "A reading of {reading} % is put right to {corrected} %.",
        reading=chosen().plain(EXAMPLE_PCT),
        corrected=chosen().number(right_pct, 1),
    )
