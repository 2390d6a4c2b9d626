"""What goes out of one studio and into it while the watch is on: the same as the commands do."""

from __future__ import annotations

import os
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from studiowatch.board.room_log import LogForm, RoomLogFaults, log_text
from studiowatch.board.room_log_blocks import log_blocks
from studiowatch.room.log_columns import LogColumns
from studiowatch.service.commands import EndTaking, Refused, TakeLogged
from studiowatch.service.exchange import ExchangeFault
from studiowatch.service.importing import Summary, import_note, take_log
from studiowatch.service.outside_desk import verdicts_of
from studiowatch.service.ports import Clock, Desk
from studiowatch.service.readings_out import Show, Wanted, senml_name, write_readings
from studiowatch.service.whole_file import whole_file
from studiowatch.speech.words import mark, say
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.examine import Examination
from studiowatch.store.folder import StudioFolder
from studiowatch.store.rotation import backup_studio
from studiowatch.store.studio_file import write_studio
from studiowatch.store.taking_in import Verdicts
from studiowatch.store.trouble import StoreTrouble

NOT_WHILE_WATCHING = mark(
    "A studio file changes coats, so it is taken in while nothing is being watched: quit "
    "studiowatch (Ctrl+Q), then run `studiowatch import {path}` in a terminal."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioExchange:
    """The exchange of the studio in `folder`.

    Attributes
    ----------
    check : callable
        Looks through a file of records.
    """

    folder: StudioFolder
    clock: Clock
    desk: Desk
    check: Callable[[Path], Examination]

    def readings_out(self, path: Path, start_ms: int, end_ms: int, show: Show, *, senml: bool = False) -> str:
        """Write readings; see `Exchange`. Raises ExchangeFault, or what `show` raises."""
        name = senml_name(self.folder) if senml else None
        wanted = Wanted(start_ms=start_ms, end_ms=end_ms, senml_name=name)
        try:
            with whole_file(path) as out, looking(self.folder.database) as database:
                told = write_readings(database, out, wanted, show)
        except (OSError, StoreTrouble) as fault:
            raise ExchangeFault(_sentence(path, fault)) from fault
        return say("Written to {path}, {told}", path=path, told=" ".join(told))

    def records_out(self, path: Path, show: Show) -> str:
        """Write all records; see `Exchange`. Raises ExchangeFault, or what `show` raises."""
        try:
            with looking(self.folder.database) as database:
                studio = read_all(database, str(self.folder.database))
            show(0.5, say("{count} pieces", count=len(studio.pieces)))
            with whole_file(path) as out:
                out.write(write_studio(studio.pieces, studio.rows))
        except (OSError, StoreTrouble) as fault:
            raise ExchangeFault(_sentence(path, fault)) from fault
        return say(
            "Written to {path}: {count} pieces and {rows} rows of what belongs to them.",
            path=path,
            count=len(studio.pieces),
            rows=len(studio.rows),
        )

    def back_up(self, into: Path, show: Show) -> str:
        """Make a backup; see `Exchange`. Raises ExchangeFault, or what `show` raises."""
        show(0.1, say("copying"))
        try:
            copy = backup_studio(self.folder, into, self.clock.utc_ms())
            show(0.6, say("checking the copy"))
            faults = self.check(copy.database).faults
        except (OSError, StoreTrouble) as fault:
            raise ExchangeFault(_sentence(into, fault)) from fault
        if faults:
            raise ExchangeFault(
                say(
                    "The copy {path} was made, but the records have faults: {faults}",
                    path=copy.path,
                    faults=" ".join(faults),
                )
            )
        return say("Backed up to {path}, and the copy is whole.", path=copy.path)

    def take_in(self, path: Path, show: Show, tell: Callable[[str], None]) -> str:
        """Take readings in; see `Exchange`. Raises ExchangeFault, or what `show` raises."""
        if path.suffix.lower() == ".toml":
            raise ExchangeFault(say(NOT_WHILE_WATCHING, path=path))
        summary = Summary()
        try:
            with path.open("rb") as file, log_text(file, path.name) as lines:
                size = max(os.fstat(file.fileno()).st_size, 1)
                events = log_blocks(lines, LogForm(needed=()))
                now_ms = self.clock.utc_ms()
                for summary in take_log(events, self._through_watch, origin=path.name, now_ms=now_ms, tell=tell):
                    show(min(file.tell() / size, 1.0), say("{count} readings", count=summary.taken))
        except (OSError, RoomLogFaults, Refused) as fault:
            raise ExchangeFault(_sentence(path, fault)) from fault
        finally:
            self._end_taking(path, summary)
        if summary.header:
            raise ExchangeFault(
                say("Nothing could be taken from {path}; the list says what is wrong with its header.", path=path.name)
            )
        return f"{path.name}: {summary.sentence()}"

    def _through_watch(self, readings: LogColumns, *, seal_before_ms: int) -> Verdicts:
        """Have the keeper take a slice: it owns the log, and goes on watching between two of them."""
        del seal_before_ms  # the keeper knows the time
        return verdicts_of(self.desk.submit(TakeLogged(readings=readings)).result())

    def _end_taking(self, path: Path, summary: Summary) -> None:
        if summary.first_ms is None or summary.last_ms is None:
            return
        text = import_note(path.name, summary)
        with suppress(Refused):  # the watch has ended: what was taken is on disk, and marked
            self.desk.submit(EndTaking(text=text, first_ms=summary.first_ms, last_ms=summary.last_ms)).result()


def _sentence(path: Path, fault: Exception) -> str:
    if not isinstance(fault, OSError):
        return str(fault)
    return say(
        "{path} cannot be used: {fault}. Choose another place.",
        path=fault.filename or path,
        fault=fault.strerror or fault,
    )
