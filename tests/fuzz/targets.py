"""What must hold for any bytes that come from outside: of a board, a file, or another program.

Each target takes bytes and raises AssertionError, or whatever the program should not have raised. `fuzz.py` searches
for such bytes guided by coverage, `test_targets.py` tries Hypothesis' and all that were ever found.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from io import StringIO
from itertools import pairwise
from math import isfinite

from studiowatch.board.events import BoardEvent, LineRefused, ReadingArrived
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.loose_lines import Row, Unreadable, Words, read_loose_line
from studiowatch.board.room_log import RoomLogFaults, read_room_log
from studiowatch.board.wire import LineParser, WireFault, WireLine, encode, read_line
from studiowatch.coats.sheet_file import SheetFaults, read_sheet
from studiowatch.room.readings import Channel
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import read_studio, write_studio

NOW_MS = 1_770_000_000_000
ORIGIN = "file"


def wire(data: bytes) -> None:
    """Check: each stretch is one line or one fault, however the bytes come in, and a line is what it was sent as."""
    data += b"\n"
    whole = list(LineParser().feed(data))
    parser = LineParser()
    assert [found for byte in data for found in parser.feed(bytes([byte]))] == whole
    assert len(whole) == len([part for part in re.split(rb"\n|(?=\$)", data) if part not in {b"", b"\r"}])
    for found in whole:
        if isinstance(found, WireLine):
            assert read_line(encode(found.kind, found.fields)[:-1]) == found
        else:
            assert isinstance(found, WireFault)
            assert found.quoted().isprintable() or not found.quoted()
            _is_a_sentence(found.reason)


def loose(data: bytes) -> None:
    """Check: such lines give finite numbers, words or a reason; the intake reads nothing before it was accepted."""
    for line in data.split(b"\n"):
        found = read_loose_line(line)
        if isinstance(found, Row):
            assert found.fields
        elif isinstance(found, Unreadable):
            _is_a_sentence(found.reason)
        else:
            assert isinstance(found, Words)
    intake = LooseIntake()
    intake.feed(b"\n", NOW_MS)
    before = intake.feed(data, NOW_MS)
    if not intake.is_checked:
        assert not any(isinstance(event, ReadingArrived) for event in before)
    if intake.mapping is not None:
        intake.set_mapping(intake.mapping)
    for event in intake.feed(data + b"\n", NOW_MS + 1000):
        _is_honest(event)


def _is_honest(event: BoardEvent) -> None:
    if isinstance(event, ReadingArrived):
        values = [event.reading.value(channel) for channel in Channel]
        assert all(value is None or isfinite(value) for value in values)
    elif isinstance(event, LineRefused):
        assert event.reason


def room_log(data: bytes) -> None:
    """Check that a room log is read whole, rising in time and finite, or refused with at least one sentence."""
    text = data.decode("utf-8", "backslashreplace")
    try:
        log = read_room_log(StringIO(text, newline=""), ORIGIN)
    except RoomLogFaults as faults:
        _name_the_file(faults)
        return
    readings = log.readings()
    assert all(one.time_ms < other.time_ms for one, other in pairwise(readings))
    for reading in readings:
        assert all(value is None or isfinite(value) for value in map(reading.value, Channel))


def studio(data: bytes) -> None:
    """Check: a studio file is refused with faults that are told, or is the same after writing and reading it again."""
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError:
        return
    try:
        read = read_studio(text, ORIGIN)
    except StudioFileError as faults:
        _name_the_file(faults)
        return
    again = read_studio(write_studio(read.pieces, read.rows), ORIGIN)
    assert (again.pieces, again.rows) == (read.pieces, read.rows)


def sheet(data: bytes) -> None:
    """Check that a data sheet is refused with faults that are told, or all its numbers are finite."""
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError:
        return
    try:
        read = read_sheet(text, ORIGIN)
    except SheetFaults as faults:
        _name_the_file(faults)
        return
    numbers = [
        getattr(read, field) for field in ("volume_solids", "density_kg_m3", "wet_um", "dry_um", "clear_h", "recoat_h")
    ]
    assert all(number is None or (isfinite(number) and number > 0) for number in numbers)  # not all sheets clear


def _name_the_file(faults: Exception) -> None:
    assert str(faults).startswith(ORIGIN), str(faults)


def _is_a_sentence(text: str) -> None:
    assert text.endswith((".", "…")), text
    assert "\n" not in text


TARGETS: dict[str, Callable[[bytes], None]] = {
    "wire": wire,
    "loose": loose,
    "room_log": room_log,
    "studio": studio,
    "sheet": sheet,
}
