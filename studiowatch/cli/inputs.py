"""What calls take from outside: files and numbers, each refused in one sentence if it is not what it should be."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from datetime import date, datetime, timedelta, tzinfo
from io import BufferedReader, StringIO
from math import isfinite
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from studiowatch.board.room_log import LogForm, RoomLog, RoomLogFaults, open_room_log
from studiowatch.board.room_log_header import NEEDED
from studiowatch.cli.answers import WrongCall, complain, wrong
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.sheet_file import SheetFaults
from studiowatch.physics.air import Air
from studiowatch.room.readings import Channel
from studiowatch.service.coat_fault import coat_fault
from studiowatch.service.local_time import wall_clock
from studiowatch.service.sheet_shelf import SheetShelf, SheetUnknown
from studiowatch.speech.words import mark, say
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import Studio, read_studio
from studiowatch.studio.pieces import Piece

MEGABYTE = 1_000_000  # bytes
LARGEST_TEXT = 64 * MEGABYTE  # bytes of a studio file or sheet: decades of records; assumption
FIRST_YEAR = 1970  # of the clock that readings are stamped by
OPEN_END_MS = 2**62  # ms, later than any reading
AIR_PARTS = (
    mark("the temperature in °C in --air"),
    mark("the relative humidity in % in --air"),
    mark("the air speed in m/s in --air"),
)
LOG_FORM = ("columns", "zone", "time_format")  # options that say how a room log is written


def room_log(path: Path, form: LogForm) -> RoomLog:
    """Return the room log at `path`; its notes go to stderr."""
    try:
        log = open_room_log(path, form)
    except OSError as fault:
        wrong(say("The room log {file} cannot be read: {fault}.", file=path, fault=fault.strerror or fault))
    except RoomLogFaults as faults:
        raise WrongCall(str(faults)) from faults
    for note in log.notes:
        complain(note)
    return log


def log_form(call: argparse.Namespace, needed: tuple[Channel, ...] = NEEDED) -> LogForm:
    """Return how the call says that its room log is written; `needed` must have columns."""
    return LogForm(
        columns=_column_names(call.columns),
        zone=_zone(call.zone),
        time_form=call.time_format,
        needed=needed,
    )


def refuse_log_form(call: argparse.Namespace) -> None:
    """Refuse options that say how a room log is written where there is none."""
    for option in LOG_FORM:
        if getattr(call, option) is not None:
            name = f"--{option.replace('_', '-')}"
            wrong(say("{option} belongs to --room: it says how a room log is written.", option=name))


def _zone(name: str | None) -> tzinfo | None:
    if name is None:
        return None
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        wrong(
            say("--zone is {given}, which is not known here; give one such as Europe/Berlin, or UTC.", given=repr(name))
        )


def _column_names(columns: str | None) -> dict[str, str]:
    """Return what each header of the log is called here, from "name=header,name=header"."""
    if columns is None:
        return {}
    pairs = [pair.partition("=") for pair in columns.split(",")]
    for name, sign, header in pairs:
        if not (name.strip() and sign and header.strip()):
            wrong(
                say(
                    "--columns has {given}; give name=header pairs with commas between, as temperature_C=Temp.",
                    given=repr(columns),
                )
            )
    return {header.strip(): name.strip() for name, _, header in pairs}


def opened(path: Path) -> BufferedReader:
    """Return a file open for reading its bytes."""
    try:
        return path.open("rb")
    except OSError as fault:
        wrong(say("{file} cannot be read: {fault}.", file=path, fault=fault.strerror or fault))


def whole_text(path: Path) -> str:
    """Return what a text file holds. Raises OSError and UnicodeDecodeError; too large a file is a wrong call."""
    with path.open("rb") as stream:
        read = stream.read(LARGEST_TEXT + 1)
    if len(read) > LARGEST_TEXT:
        wrong(
            say(
                "{file} holds more than {limit} MB of text; give the file that was meant.",
                file=path,
                limit=LARGEST_TEXT // MEGABYTE,
            )
        )
    return StringIO(read.decode("utf-8"), newline=None).read()


def studio_file(path: Path) -> Studio:
    """Return what a studio file holds."""
    try:
        return read_studio(whole_text(path), str(path))
    except OSError as fault:
        wrong(say("The studio file {file} cannot be read: {fault}.", file=path, fault=fault.strerror or fault))
    except UnicodeDecodeError as fault:
        wrong(
            say(
                "The studio file {file} is not UTF-8 text (byte {place}); save it as UTF-8.",
                file=path,
                place=fault.start,
            )
        )
    except StudioFileError as faults:
        raise WrongCall(str(faults)) from faults


def studio(path: Path, shelf: SheetShelf) -> tuple[tuple[Piece, ...], SheetShelf]:
    """Return the pieces of a studio file, and the shelf with the sheets that it names."""
    told, shelf = whole_studio(path, shelf)
    return told.pieces, shelf


def whole_studio(path: Path, shelf: SheetShelf) -> tuple[Studio, SheetShelf]:
    """Return all that a studio file holds, and the shelf with the sheets that it names."""
    told = studio_file(path)
    pieces = told.pieces
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
        say(
            "{file}: {title}, coat {number}: {sentence}",
            file=path,
            title=piece.title,
            number=number,
            sentence=sentence,
        )
        for piece in pieces
        for number, coat in enumerate(piece.coats, start=1)
        if coat.sheet in sheets and (sentence := coat_fault(coat, piece, shelf))
    ]
    if faults_found:
        raise WrongCall("\n".join(faults_found))
    return told, shelf


def port(name: str | None, option: str = "--port") -> str | None:
    """Return the name of a port that may be a board's, as `option` gives it, or None for the first one found."""
    if name is None:
        return None
    path = Path(name)
    is_file = sys.platform != "win32" and path.exists() and not path.is_char_device()
    if not name or "\0" in name or is_file:
        wrong(
            say(
                "{option} is {given}, which is no serial port; `studiowatch boards` lists those there are.",
                option=option,
                given=repr(name),
            )
        )
    return name


def seconds(value: float | None) -> float | None:
    """Return how long to run, s, or None for until it is stopped."""
    if value is not None and not (isfinite(value) and value > 0):
        wrong(say("--seconds is {given} s; give a number above 0.", given=f"{value:g}"))
    return value


def sheet(name: str, shelf: SheetShelf) -> DataSheet:
    """Return a sheet by name, or from a file of that path."""
    try:
        return shelf.find_anywhere(name)
    except (SheetUnknown, SheetFaults) as fault:
        raise WrongCall(str(fault)) from fault


def air(text: str) -> Air:
    """Return the air from "T,RH,V"."""
    values = text.split(",")
    if len(values) != len(AIR_PARTS):
        wrong(
            say(
                "--air has {given}; give temperature in °C, relative humidity in %, air speed in m/s, as 20,55,0.05.",
                given=repr(text),
            )
        )
    return _air([_number(say(what), value) for what, value in zip(AIR_PARTS, values, strict=True)])


def _air(numbers: Sequence[float]) -> Air:
    temperature_C, humidity_pct, air_speed_m_s = numbers
    return Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=air_speed_m_s)


def _number(what: str, text: str) -> float:
    try:
        number = float(text)
    except ValueError:
        wrong(say("{what} is {given}; a number is needed, with a point for decimals.", what=what, given=repr(text)))
    if not isfinite(number):
        wrong(say("{what} is {given}; a finite number is needed.", what=what, given=repr(text)))
    return number


def moment_ms(text: str, option: str = "--laid") -> int:
    """Return UTC ms from ISO 8601 with a zone."""
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        wrong(
            say(
                "{option} is {given}; give date and time with zone, as 2026-03-02T09:00:00Z.",
                option=option,
                given=repr(text),
            )
        )
    if moment.tzinfo is None:
        wrong(
            say(
                "{option} is {given} without a zone; add Z or an offset, as 2026-03-02T09:00:00Z.",
                option=option,
                given=repr(text),
            )
        )
    return round(moment.timestamp() * 1000)


def time_range_ms(start: str | None, end: str | None) -> tuple[int, int]:
    """Return the range from --from to --to, UTC ms, the end left out; what is not given is open, a day counts whole."""
    start_ms = 0 if start is None else _edge_ms(start, "--from", days=0)
    end_ms = OPEN_END_MS if end is None else _edge_ms(end, "--to", days=1)
    if end_ms <= 0:
        wrong(say("--to is {end}, which is before any reading; give a later end.", end=end))
    if start_ms >= end_ms:
        wrong(say("--to is {end}, which is not after --from, {start}; give a later end.", end=end, start=start))
    return start_ms, end_ms


def _edge_ms(text: str, option: str, *, days: int) -> int:
    try:
        day = date.fromisoformat(text)
        if day.year < FIRST_YEAR:
            return 0  # the beginning: there was no reading before
        return wall_clock().at(day + timedelta(days=days), 0)
    except ValueError:
        return moment_ms(text, option)
    except OverflowError:
        wrong(say("{option} is {given}; allowed is up to 9999-12-30.", option=option, given=repr(text)))
