"""What goes out of the records and into them while the watch is on, for the window: as the commands do it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from studiowatch.service.ports import Clock
from studiowatch.service.readings_out import Show, Wanted, senml_name, write_readings
from studiowatch.service.whole_file import whole_file
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.examine import Examination
from studiowatch.store.folder import StudioFolder
from studiowatch.store.rotation import backup_studio
from studiowatch.store.studio_file import write_studio
from studiowatch.store.trouble import StoreTrouble


class Interrupted(Exception):  # noqa: N818 - she asked for it
    """She cancelled; nothing of what was begun is left but what was said to be taken."""


class ExchangeFault(Exception):  # noqa: N818 - reads as the answer it is
    """It could not be done; the message is one sentence for her."""


class Exchange(Protocol):
    """What the window may do with files. Calls take long: from a thread of their own, never the window's."""

    def readings_out(self, path: Path, start_ms: int, end_ms: int, show: Show, *, senml: bool = False) -> str:
        """Write the readings with start <= time < end as CSV or SenML; return what was done, in words."""
        ...

    def records_out(self, path: Path, show: Show) -> str:
        """Write all records but readings as a studio file; return what was done, in words."""
        ...

    def back_up(self, into: Path, show: Show) -> str:
        """Copy the whole studio into a new folder in `into`, checked; return what was done, in words."""
        ...


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
        return f"Written to {path}, {' '.join(told)}"

    def records_out(self, path: Path, show: Show) -> str:
        """Write all records; see `Exchange`. Raises ExchangeFault, or what `show` raises."""
        try:
            with looking(self.folder.database) as database:
                studio = read_all(database, str(self.folder.database))
            show(0.5, f"{len(studio.pieces)} pieces")
            with whole_file(path) as out:
                out.write(write_studio(studio.pieces, studio.rows))
        except (OSError, StoreTrouble) as fault:
            raise ExchangeFault(_sentence(path, fault)) from fault
        return f"Written to {path}: {len(studio.pieces)} pieces and {len(studio.rows)} rows of what belongs to them."

    def back_up(self, into: Path, show: Show) -> str:
        """Make a backup; see `Exchange`. Raises ExchangeFault, or what `show` raises."""
        show(0.1, "copying")
        try:
            copy = backup_studio(self.folder, into, self.clock.utc_ms())
            show(0.6, "checking the copy")
            faults = self.check(copy.database).faults
        except (OSError, StoreTrouble) as fault:
            raise ExchangeFault(_sentence(into, fault)) from fault
        if faults:
            raise ExchangeFault(f"The copy {copy.path} was made, but the records have faults: {' '.join(faults)}")
        return f"Backed up to {copy.path}, and the copy is whole."


def _sentence(path: Path, fault: OSError | StoreTrouble) -> str:
    if isinstance(fault, StoreTrouble):
        return str(fault)
    return f"{fault.filename or path} cannot be used: {fault.strerror or fault}. Choose another place."
