"""Pick the concrete classes; nothing else."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from platformdirs import user_cache_path, user_data_path

from studiowatch.board.loose_ways import every_way
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.mapping_memory import MappingMemory
from studiowatch.board.memory import BoardMemory
from studiowatch.board.port import PortSeen, SerialPort, ports
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SIMULATED_NAME, SimulatedPort, past_readings
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.board.ways import ChooseWay
from studiowatch.cli.commands import run
from studiowatch.language import her_language
from studiowatch.room.readings import Reading
from studiowatch.service.clock import SystemClock
from studiowatch.service.doors import Doors
from studiowatch.service.local_time import utc_offset_s
from studiowatch.service.login_entry import LoginEntry, login_entry
from studiowatch.service.outfit import OpenStore, Outfit
from studiowatch.service.past import StudioHistory
from studiowatch.service.ports import Clock, Desk, History, Ringer
from studiowatch.service.preferences import kept_choices
from studiowatch.service.screen import has_screen
from studiowatch.speech.words import say
from studiowatch.store.all_records import take_all
from studiowatch.store.corrected_history import CorrectedHistory
from studiowatch.store.database import open_database
from studiowatch.store.examine import examine, rebuild
from studiowatch.store.folder import StudioFolder, default_folder
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore
from studiowatch.store.salvage import salvage
from studiowatch.studio.finishing_record import FinishingRecord


@dataclass(frozen=True, slots=True, kw_only=True)
class SimulatedStudio:
    """The simulated room behind a port of its own."""

    room: SimulatedRoom
    clock: Clock

    def source(self, fan_spell_s: tuple[float, float] | None = None) -> Reader:
        """Return a reader on the simulated board; a fan runs between these seconds from now."""
        port = SimulatedPort(clock=self.clock, room=self.room, fan_spell_s=fan_spell_s)
        return Reader(clock=self.clock, wanted=SIMULATED_NAME, open_port=port.open, list_ports=lambda: ())

    def past(self, start_ms: int, end_ms: int, step_s: float) -> Iterator[Reading]:
        """Yield what the board would have sent."""
        return past_readings(self.room, start_ms, end_ms, step_s)


CALM_MS = 3_600_000  # ms before and after the start in which the made-up room runs no fan of its own


def simulated_studio(seed: int, clock: Clock) -> SimulatedStudio:
    """Return the made-up room as it opens now: calm, whatever the hour."""
    now_ms = clock.utc_ms()
    calm_ms = (now_ms - CALM_MS, now_ms + CALM_MS)
    return SimulatedStudio(
        room=SimulatedRoom(seed=seed, utc_offset_s=utc_offset_s(now_ms), calm_ms=calm_ms), clock=clock
    )


BUSY_MS = 250  # ms, the watch waits no longer for another program's lock: it keeps what it has and tries again


def open_store(path: Path, utc_ms: Callable[[], int]) -> OpenStore:
    """Open the store at `path` for writing."""
    database = open_database(path)
    database.rows(f"PRAGMA busy_timeout = {BUSY_MS}")
    log = ReadingsStore(database)
    return OpenStore(
        log=log,
        records=RecordsStore(database, utc_ms),
        take_in=log.take_in,
        take_studio=partial(take_all, database, utc_ms=utc_ms),
        close=database.close,
    )


def open_history(path: Path) -> History:
    """Open the log and the records at `path` for the room history."""
    return StudioHistory(CorrectedHistory(path), StudioFolder(path=path.parent).sheets)


def open_board(clock: Clock, port: str | None, folder: StudioFolder) -> Reader:
    """Return a reader on `port`, or on the board that answers, first the one that was read last."""
    memory, columns = BoardMemory(folder.last_board), MappingMemory(folder.board_columns)
    return Reader(
        clock=clock,
        wanted=port,
        last=memory.recall(),
        remember=memory.keep,
        keep_mapping=columns.keep,
        choose_way=every_way(columns.recall),
    )


def choose_way(folder: StudioFolder) -> ChooseWay:
    """Return what tells how to listen to a port."""
    return every_way(MappingMemory(folder.board_columns).recall)


def keep_columns(folder: StudioFolder, board: PortSeen, mapping: ColumnMapping) -> None:
    """Keep what was accepted of a board's columns. Raises OSError."""
    folder.make()
    MappingMemory(folder.board_columns).keep(board, mapping)


def rebuild_store(path: Path) -> None:
    """Make the overview of the sealed hours in the store at `path` anew."""
    database = open_database(path)
    try:
        rebuild(database)
    finally:
        database.close()


def open_window(clock: Clock, desk: Desk, doors: Doors, note: str) -> int:
    """Open the window; Qt is only imported for those who want one."""
    from studiowatch.ui.unread import leave_sources_unread  # noqa: PLC0415

    leave_sources_unread()
    from studiowatch.ui.app import run_window  # noqa: PLC0415

    folder = None if doors.folder == default_folder(data_folder()) else doors.folder
    login = None if note else start_at_login(folder)
    demo = () if note else (*program(), "demo")
    return run_window(desk, doors, clock, title_note=note, login=login, demo=demo, language=her_language())


def shrink_photo(path: Path) -> bytes:
    """Return the picture in a file as a small JPEG; Qt is only imported for those who have one."""
    from studiowatch.ui.photo_shrinker import shrink_photo as shrink  # noqa: PLC0415

    return shrink(path)


def bring_to_front(folder: StudioFolder) -> bool:
    """Ask the window that is open on `folder` to come to the front; return whether there is one."""
    from studiowatch.ui.one_window import bring_to_front as bring  # noqa: PLC0415

    return bring(folder.path)


def data_folder() -> Path:
    """Return the user's own data folder."""
    return user_data_path("studiowatch", appauthor=False)


def program() -> list[str]:
    """Return how this program is started again, before its own words."""
    return [sys.executable] if getattr(sys, "frozen", False) else [sys.executable, "-m", "studiowatch"]


def start_at_login(folder: StudioFolder | None) -> LoginEntry:
    """Return what starts the window at login, as it was started now."""
    words = [] if folder is None else ["--folder", str(folder.path.resolve())]
    return login_entry([*program(), *words], environ=os.environ, home=Path.home())


def sound_trouble() -> str:
    """Return why a warning would not be heard here, or ""; one is played without a sound."""
    from studiowatch.ui.sound import tried_silently  # noqa: PLC0415

    return tried_silently()


def sound_way() -> str:
    """Return what a warning would be heard through here."""
    from studiowatch.ui.sound import sound_way as way  # noqa: PLC0415

    return way()


def ringer(clock: Clock) -> Ringer:
    """Return what sounds the warnings of a watch without a window, as she chose it in the window."""
    from studiowatch.ui.models.quiet_hours import kept_quiet_hours  # noqa: PLC0415
    from studiowatch.ui.sound import DeviceSpeaker  # noqa: PLC0415
    from studiowatch.ui.terminal_bell import TerminalBell  # noqa: PLC0415

    return TerminalBell(DeviceSpeaker(), clock, kept_quiet_hours(kept_choices(os.environ, sys.platform)))


def display_trouble() -> str:
    """Return why no window can be shown here, or ""."""
    if has_screen(os.environ, sys.platform):
        return ""
    return say(
        "There is no screen for a window; `studiowatch record` watches without one, `demo --headless` shows how."
    )


def print_record(record: FinishingRecord, path: Path, photo: bytes, paper: str) -> None:
    """Write a finishing record as PDF; Qt is only imported for those who want one. Raises OSError."""
    from studiowatch.ui.print.without_screen import print_record as written  # noqa: PLC0415

    written(record, path, photo, paper)


def photo_or_why(path: Path) -> tuple[bytes, str]:
    """Return a photo as a JPEG, or none and one sentence that says why."""
    from studiowatch.ui.print.without_screen import photo_or_why as read  # noqa: PLC0415

    return read(path)


def outfit() -> Outfit:
    """Return the program's own parts."""
    clock = SystemClock()
    return Outfit(
        clock=clock,
        data_folder=data_folder(),
        demo_folder=user_cache_path("studiowatch", appauthor=False) / "demo",
        open_store=partial(open_store, utc_ms=clock.utc_ms),
        open_history=open_history,
        check_store=examine,
        rebuild_store=rebuild_store,
        salvage_store=salvage,
        board=partial(open_board, clock),
        choose_way=choose_way,
        keep_columns=keep_columns,
        made_up_room=lambda seed: simulated_studio(seed, clock),
        list_ports=ports,
        open_port=SerialPort,
        window=partial(open_window, clock),
        shrink_photo=shrink_photo,
        bring_to_front=bring_to_front,
        login_entry=start_at_login,
        sound_trouble=sound_trouble,
        sound_way=sound_way,
        ringer=partial(ringer, clock),
        display_trouble=display_trouble,
        print_record=print_record,
        photo=photo_or_why,
    )


def answer(words: Sequence[str]) -> int:
    """Answer a call and return its exit code."""
    return run(words, outfit())
