"""What calls take from outside: files and numbers, each refused in one sentence if it is not what it should be."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from datetime import datetime
from math import isfinite
from pathlib import Path

from studiowatch.board.room_log import RoomLog, RoomLogFaults, open_room_log
from studiowatch.cli.answers import WrongCall, complain, wrong
from studiowatch.coats.data_sheet import DataSheet, SheetFaults
from studiowatch.physics.air import Air
from studiowatch.service.coat_run import coat_fault
from studiowatch.service.sheet_shelf import SheetShelf, SheetUnknown
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import read_studio
from studiowatch.studio.pieces import Piece

AIR_PARTS = ("temperature in °C", "relative humidity in %", "air speed in m/s")


def room_log(path: Path, columns: str | None) -> RoomLog:
    """Return the room log at `path`; its notes go to stderr."""
    try:
        log = open_room_log(path, _column_names(columns))
    except OSError as fault:
        wrong(f"The room log {path} cannot be read: {fault.strerror or fault}.")
    except RoomLogFaults as faults:
        raise WrongCall(str(faults)) from faults
    for note in log.notes:
        complain(note)
    return log


def _column_names(columns: str | None) -> dict[str, str] | None:
    """Return what each header of the log is called here, from "name=header,name=header"."""
    if columns is None:
        return None
    pairs = [pair.partition("=") for pair in columns.split(",")]
    for name, sign, header in pairs:
        if not (name.strip() and sign and header.strip()):
            wrong(f"--columns has {columns!r}; give name=header pairs with commas between, as temperature_C=Temp.")
    return {header.strip(): name.strip() for name, _, header in pairs}


def studio(path: Path, shelf: SheetShelf) -> tuple[tuple[Piece, ...], SheetShelf]:
    """Return the pieces of a studio file, and the shelf with the sheets that it names."""
    try:
        pieces = read_studio(path.read_text("utf-8"), str(path)).pieces
    except OSError as fault:
        wrong(f"The studio file {path} cannot be read: {fault.strerror or fault}.")
    except UnicodeDecodeError as fault:
        wrong(f"The studio file {path} is not UTF-8 text (byte {fault.start}); save it as UTF-8.")
    except StudioFileError as faults:
        raise WrongCall(str(faults)) from faults
    names = {coat.sheet for piece in pieces for coat in piece.coats}
    sheets = dict(shelf.sheets)
    faults_found = []
    for name in sorted(names):
        try:
            sheets[name] = shelf.find(name, path.parent)
        except (SheetUnknown, SheetFaults) as fault:
            faults_found.append(f"{path}: {fault}")
    shelf = SheetShelf(sheets=sheets)
    faults_found += [
        f"{path}: {piece.title}, coat {number}: {sentence}"
        for piece in pieces
        for number, coat in enumerate(piece.coats, start=1)
        if coat.sheet in sheets and (sentence := coat_fault(coat, piece, shelf))
    ]
    if faults_found:
        raise WrongCall("\n".join(faults_found))
    return pieces, shelf


def port(name: str | None) -> str | None:
    """Return the name of a port that may be a board's, or None for the first one found."""
    if name is None:
        return None
    path = Path(name)
    is_file = sys.platform != "win32" and path.exists() and not path.is_char_device()
    if not name or "\0" in name or is_file:
        wrong(f"--port is {name!r}, which is no serial port; `studiowatch boards` lists those there are.")
    return name


def seconds(value: float | None) -> float | None:
    """Return how long to run, s, or None for until it is stopped."""
    if value is not None and not (isfinite(value) and value > 0):
        wrong(f"--seconds is {value:g} s; give a number above 0.")
    return value


def sheet(name: str, shelf: SheetShelf) -> DataSheet:
    """Return a sheet by name, or from a file of that path."""
    try:
        return shelf.find(name, Path())
    except (SheetUnknown, SheetFaults) as fault:
        raise WrongCall(str(fault)) from fault


def air(text: str) -> Air:
    """Return the air from "T,RH,V"."""
    values = text.split(",")
    if len(values) != len(AIR_PARTS):
        wrong(f"--air has {text!r}; give {', '.join(AIR_PARTS)}, as 20,55,0.05.")
    return _air([_number(f"the {name} in --air", value) for name, value in zip(AIR_PARTS, values, strict=True)])


def _air(numbers: Sequence[float]) -> Air:
    temperature_C, humidity_pct, air_speed_m_s = numbers
    return Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=air_speed_m_s)


def _number(what: str, text: str) -> float:
    try:
        number = float(text)
    except ValueError:
        wrong(f"{what} is {text!r}; a number is needed, with a point for decimals.")
    if not isfinite(number):
        wrong(f"{what} is {text!r}; a finite number is needed.")
    return number


def moment_ms(text: str) -> int:
    """Return UTC ms from ISO 8601 with a zone."""
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        wrong(f"--laid is {text!r}; give date and time with zone, as 2026-03-02T09:00:00Z.")
    if moment.tzinfo is None:
        wrong(f"--laid is {text!r} without a zone; add Z or an offset, as 2026-03-02T09:00:00Z.")
    return round(moment.timestamp() * 1000)
