"""What the entry point picks and hands in: the concrete board, store, clock and window."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import BytePort, PortSeen
from studiowatch.board.ways import ChooseWay
from studiowatch.room.readings import Reading
from studiowatch.service.doors import Doors
from studiowatch.service.login_entry import LoginEntry
from studiowatch.service.ports import BoardSource, Clock, Desk, History, ReadingsLog, Records, Ringer
from studiowatch.service.take_readings import TakeReadings
from studiowatch.store.all_records import TakenOver
from studiowatch.store.examine import Examination
from studiowatch.store.folder import StudioFolder
from studiowatch.store.salvage import Salvaged
from studiowatch.store.studio_file import Studio
from studiowatch.studio.finishing_record import FinishingRecord


class TakeStudio(Protocol):
    """Takes a studio file into the records."""

    def __call__(self, studio: Studio, *, replace: bool) -> TakenOver:
        """Take it over; raises StudioConflict if the records have something of it otherwise."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenStore:
    """The store, open on the thread that asked for it.

    Attributes
    ----------
    take_in : callable
        Commits readings from outside; see `studiowatch.store.readings.ReadingsStore.take_in`.
    take_studio : callable
        Takes all records of a studio file over, or nothing; see `studiowatch.store.all_records.take_all`.
    """

    log: ReadingsLog
    records: Records
    take_in: TakeReadings
    take_studio: TakeStudio
    close: Callable[[], None]


class MadeUpRoom(Protocol):
    """The simulated board, and what it would have sent before now."""

    def source(self, fan_spell_s: tuple[float, float] | None = None) -> BoardSource:
        """Return the board as a source of events; a fan runs between these seconds from now."""
        ...

    def past(self, start_ms: int, end_ms: int, step_s: float) -> Iterator[Reading]:
        """Yield its past readings."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Outfit:
    """The concrete parts.

    Attributes
    ----------
    data_folder, demo_folder : Path
        Where records lie unless she names another folder, and where the made-up studio is built.
    check_store, rebuild_store, salvage_store : callable
        Looks through a file; makes its overview anew; saves what a damaged one holds into a new one.
    board : callable
        Makes the source for a port's name, or for whichever board answers if that is None; what is known of boards is
        kept in the folder.
    choose_way : callable
        Makes what tells how to listen to a port, by what is kept in the folder.
    keep_columns : callable
        Keeps in the folder what was accepted of a board's columns; may raise OSError.
    open_port : callable
        Opens one port, by name and baud, to listen on it.
    window : callable
        Opens the window, given desk, doors and a note for its title; returns the exit code.
    shrink_photo : callable
        Makes a small JPEG of the picture in a file; may raise NoPicture or OSError.
    bring_to_front : callable
        Asks the window that is open on a folder to come to the front; returns whether there is one.
    login_entry : callable
        Returns what starts the window at login, on a folder or, if that is None, on the usual one.
    sound_trouble, display_trouble : callable
        Returns why nothing can be heard, or no window shown, on this machine, or "".
    sound_way : callable
        Returns what a warning would be heard through.
    ringer : callable
        Makes what sounds the warnings where there is no window, in her quiet hours as quietly as there.
    print_record : callable
        Writes a finishing record as PDF, with its photo (JPEG or empty), on "a4" or "letter"; may raise OSError.
    photo : callable
        Reads a photo as JPEG; or returns none and one sentence that says why.
    """

    clock: Clock
    data_folder: Path
    demo_folder: Path
    open_store: Callable[[Path], OpenStore]
    open_history: Callable[[Path], History]
    check_store: Callable[[Path], Examination]
    rebuild_store: Callable[[Path], None]
    salvage_store: Callable[[Path, Path], Salvaged]
    board: Callable[[str | None, StudioFolder], BoardSource]
    choose_way: Callable[[StudioFolder], ChooseWay]
    keep_columns: Callable[[StudioFolder, PortSeen, ColumnMapping], None]
    made_up_room: Callable[[int], MadeUpRoom]
    list_ports: Callable[[], Sequence[PortSeen]]
    open_port: Callable[[str, int], BytePort]
    window: Callable[[Desk, Doors, str], int]
    shrink_photo: Callable[[Path], bytes]
    bring_to_front: Callable[[StudioFolder], bool]
    login_entry: Callable[[StudioFolder | None], LoginEntry]
    sound_trouble: Callable[[], str]
    sound_way: Callable[[], str]
    ringer: Callable[[], Ringer]
    display_trouble: Callable[[], str]
    print_record: Callable[[FinishingRecord, Path, bytes, str], None]
    photo: Callable[[Path], tuple[bytes, str]]
