"""Readings of any range out of the records, as a room log (CSV) or as SenML: for the terminal and for the window."""

from __future__ import annotations

import platform
from collections.abc import Callable
from dataclasses import dataclass
from typing import TextIO
from uuid import NAMESPACE_URL, uuid5

from studiowatch.speech.words import say
from studiowatch.store.database import Database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.log_out import RoomLogWriter, SenmlWriter, span_ms, stream
from studiowatch.store.trouble import StoreRefused

Show = Callable[[float, str], None]


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """What to write: readings with start <= time < end, UTC ms; as SenML where `senml_name` begins its names."""

    start_ms: int
    end_ms: int
    senml_name: str | None = None


def senml_name(folder: StudioFolder) -> str:
    """Return a name for this studio on this computer that no other has (RFC 8428, section 4.5.1)."""
    return f"urn:uuid:{uuid5(NAMESPACE_URL, f'studiowatch:{platform.node()}:{folder.path.resolve()}')}:"


def write_readings(database: Database, out: TextIO, wanted: Wanted, show: Show) -> tuple[str, ...]:
    """Write what is wanted, an hour at a time, and return what to say of it: one sentence each.

    Parameters
    ----------
    show : callable
        Called after each hour with the share that is done and how many readings that were; what it raises ends it.

    Raises
    ------
    StoreRefused
        If the records hold no readings at all.
    """
    span = span_ms(database)
    if span is None:
        raise StoreRefused(say("{path} holds no readings yet; there is nothing to write.", path=database.path))
    first_ms, after_ms = max(wanted.start_ms, span[0]), min(wanted.end_ms, span[1] + 1)
    writer = RoomLogWriter(out) if wanted.senml_name is None else SenmlWriter(out, wanted.senml_name)
    for readings in stream(database, first_ms, after_ms):
        writer.write(readings)
        show((readings[-1].time_ms - first_ms) / (after_ms - first_ms), say("{count} readings", count=writer.rows))
    writer.close()
    return tuple(_told(writer))


def _told(writer: RoomLogWriter | SenmlWriter) -> list[str]:
    told = [say("as they were read: {count} readings.", count=writer.rows)]
    if isinstance(writer, RoomLogWriter) and writer.same_time:
        told.append(
            say(
                "{count} of them share their time with the one before: they came at once, or the clock was set back "
                "there.",
                count=writer.same_time,
            )
        )
    if isinstance(writer, RoomLogWriter) and writer.typed:
        told.append(
            say(
                "{count} of them were typed: a room log does not tell that, and an import takes them for a logger's.",
                count=writer.typed,
            )
        )
    if isinstance(writer, SenmlWriter) and writer.empty:
        told.append(say("{count} of them hold no value, and SenML has no record for such.", count=writer.empty))
    return told
