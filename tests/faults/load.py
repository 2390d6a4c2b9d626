"""A studio under load: deeds by number, each one transaction, and what the file must hold after so many of them.

Run as a program it does them until it is killed, with the daily backup beside it:

    python tests/faults/load.py FOLDER FIRST_DEED
"""

from __future__ import annotations

import json
import os
import sys
import threading
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from studiowatch.room.corrections import Kept, Sighting
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint
from studiowatch.room.readings import Channel, ChannelFault, Reading
from studiowatch.service.daily_backup import DAY_MS, DailyBackup
from studiowatch.store.database import Database, open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore
from studiowatch.store.rotation import daily_backups
from studiowatch.store.shapes import WarningRecord
from studiowatch.studio.pieces import Coat, Finding, Look, Piece

T0_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
BATCH = 5
STEP_MS = 45_000  # so that the 80 readings of a round are an hour, which the round's last deed seals
OPENING = "opening"  # what the program says before it opens the file
ROUND = (
    *("readings",) * 3,
    "piece",
    *("readings",) * 3,
    "warning",
    *("readings",) * 3,
    "calibration",
    *("readings",) * 3,
    "sighting",
    *("readings",) * 4,
    "note",
    "seal",
)
BATCHES_PER_ROUND = ROUND.count("readings")


@dataclass
class Held:
    """All that the deeds put into a file."""

    readings: list[Reading] = field(default_factory=list)
    pieces: dict[str, Piece] = field(default_factory=dict)
    corrected: list[str] = field(default_factory=list)
    warnings: dict[str, WarningRecord] = field(default_factory=dict)
    states: list[tuple[str, int, str]] = field(default_factory=list)
    calibrations: dict[str, Kept] = field(default_factory=dict)
    sightings: list[Sighting] = field(default_factory=list)
    notes: list[tuple[int, str, str]] = field(default_factory=list)


def held_after(deeds: int) -> Held:
    """Return what the file must hold after so many deeds."""
    held = Held()
    for number in range(deeds):
        _expect(held, number)
    return held


def _expect(held: Held, number: int) -> None:
    kind = ROUND[number % len(ROUND)]
    if kind == "readings":
        held.readings += batch(number)
    elif kind == "piece":
        piece = piece_of(number)
        if piece.key in held.pieces:
            held.corrected.append(held.pieces[piece.key].title)
        held.pieces[piece.key] = piece
    elif kind == "warning":
        warning = warning_of(number)
        held.warnings[warning.key] = warning
        held.states.append((warning.key, time_of(number), warning.state))
    elif kind == "calibration":
        held.calibrations[calibration_of(number).key] = calibration_of(number)
    elif kind == "sighting":
        held.sightings.append(sighting_of(number))
    elif kind == "note":
        held.notes.append(note_of(number))


def held_in(database: Database) -> Held:
    """Return what an open file holds."""
    records = RecordsStore(database, lambda: 0)
    corrected = database.rows("SELECT earlier FROM correction ORDER BY id")
    return Held(
        readings=list(ReadingsStore(database).between(0, 2**60)),
        pieces={piece.key: piece for piece in records.pieces()},
        corrected=[json.loads(earlier)["title"] for (earlier,) in corrected],
        warnings={warning.key: warning for warning in records.warnings(10**6)},
        states=database.rows("SELECT warning_key, time_ms, state FROM warning_state ORDER BY id"),  # type: ignore[arg-type]
        calibrations={kept.key: kept for kept in records.calibrations()},
        sightings=list(records.sightings()),
        notes=database.rows("SELECT time_ms, kind, text FROM note ORDER BY id"),  # type: ignore[arg-type]
    )


class Load:
    """Does the deeds on an open file."""

    def __init__(self, database: Database) -> None:
        self._now_ms = 0
        self._log = ReadingsStore(database)
        self._records = RecordsStore(database, lambda: self._now_ms)

    def do(self, number: int) -> None:
        """Do one deed; on return it is on disk."""
        self._now_ms = time_of(number)
        deeds: dict[str, Callable[[], Any]] = {
            "readings": lambda: self._log.append(batch(number)),
            "piece": lambda: self._records.save_piece(piece_of(number)),
            "warning": lambda: self._records.save_warning(warning_of(number)),
            "calibration": lambda: self._records.save_calibration(calibration_of(number)),
            "sighting": lambda: self._records.save_sighting(sighting_of(number)),
            "note": lambda: self._records.note(*note_of(number)),
            "seal": lambda: self._log.seal(time_of(number)),
        }
        deeds[ROUND[number % len(ROUND)]]()


def batches_before(number: int) -> int:
    """Return how many deeds before this one append readings."""
    turn, place = divmod(number, len(ROUND))
    return turn * BATCHES_PER_ROUND + ROUND[:place].count("readings")


def time_of(number: int) -> int:
    """Return the UTC ms of a deed: that of the reading that comes next."""
    return T0_MS + batches_before(number) * BATCH * STEP_MS


def batch(number: int) -> list[Reading]:
    """Return the readings of a deed; each is told from all others by its temperature."""
    first = batches_before(number) * BATCH
    return [
        Reading(
            time_ms=T0_MS + at * STEP_MS,
            temperature_C=at / 8,
            humidity_pct=None if at % 7 == 0 else 40.0 + at % 13 / 10,
            air_speed_m_s=0.04,
            faults=(ChannelFault(channel=Channel.HUMIDITY, code="crc"),) if at % 7 == 0 else (),
        )
        for at in range(first, first + BATCH)
    ]


def piece_of(number: int) -> Piece:
    """Return one of three pieces in a new form, with a coat and a look."""
    turn = number // len(ROUND)
    key = f"piece {turn % 3}"
    look = Look(key=f"look {turn}", time_ms=time_of(number), finding=Finding.TACKY)
    coat = Coat(key=f"coat of {key}", sheet="gloss", laid_ms=T0_MS, volume_mL=14.0, looks=(look,))
    return Piece(key=key, title=f"Form {turn}", width_cm=40.0, height_cm=30.0, place=turn % 3, coats=(coat,))


def warning_of(number: int) -> WarningRecord:
    """Return a warning as it is raised, then heard, then cleared."""
    turn = number // len(ROUND)
    state = ("raised", "heard", "cleared")[turn % 3]
    return WarningRecord(
        key=f"warning {turn // 3}",
        kind="damp",
        level=2,
        state=state,
        headline="Damp",
        detail="The air is damp.",
        advice="Wait.",
        began_ms=T0_MS,
        raised_ms=time_of(turn // 3 * 3 * len(ROUND)),
        cleared_ms=time_of(number) if state == "cleared" else None,
        pieces=("piece 0",),
    )


def calibration_of(number: int) -> Kept:
    """Return a calibration as it is made, then as it is withdrawn."""
    turn = number // len(ROUND)
    kept = Kept(
        key=f"calibration {turn // 2}",
        sensor="CAFE0042",
        made_ms=time_of(turn // 2 * 2 * len(ROUND)),
        calibration=HumidityCalibration(
            magnesium=SaltPoint(raw_pct=34.0 + turn // 2 % 10 / 10, temperature_C=21.0, time_ms=T0_MS),
            sodium=SaltPoint(raw_pct=77.0, temperature_C=21.5, time_ms=T0_MS + 1_000),
        ),
    )
    return replace(kept, withdrawn_ms=time_of(number)) if turn % 2 else kept


def sighting_of(number: int) -> Sighting:
    """Return that a sensor was on the board."""
    return Sighting(time_ms=time_of(number), sensor=f"CAFE{number:06d}")


def note_of(number: int) -> tuple[int, str, str]:
    """Return a fact about the log."""
    return time_of(number), "clock-step", f"Deed {number}."


@dataclass
class _Days:
    """A clock by which a day has passed whenever it is looked at."""

    now_ms: int

    def utc_ms(self) -> int:
        self.now_ms += DAY_MS
        return self.now_ms

    def monotonic_s(self) -> float:
        return self.now_ms / 1000


def _back_up_for_ever(folder: StudioFolder, first: int) -> None:
    there = daily_backups(folder.backups)
    last_ms = round(there[-1][0].timestamp() * 1000) if there else T0_MS
    daily = DailyBackup(folder, _Days(last_ms + first * 1000))  # no start meets the names of an earlier one
    pause = threading.Event()
    while not pause.wait(0.01):
        daily.look()
        if daily.trouble:
            sys.stderr.write(f"{daily.trouble}\n")
            os._exit(1)


def main(folder: Path, first: int) -> None:
    """Do deed after deed and tell after each how many are done."""
    studio = StudioFolder(path=folder)
    print(OPENING, flush=True)
    load = Load(open_database(studio.database))
    threading.Thread(target=_back_up_for_ever, args=(studio, first), daemon=True).start()
    number = first
    while True:
        load.do(number)
        number += 1
        print(number, flush=True)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
