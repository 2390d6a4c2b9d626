"""Looks at a file's first bytes before the library does, so that a file that is not ours is never touched."""

from __future__ import annotations

import os
import struct
from dataclasses import dataclass
from pathlib import Path

from studiowatch.speech.words import say
from studiowatch.store.held_files import first_bytes
from studiowatch.store.trouble import StoreRefused

APPLICATION_ID = 0x73747764  # "stwd", our own mark in the header
_MAGIC = b"SQLite format 3\x00"  # "Database File Format", sqlite.org/fileformat2.html, section 1.3
_HEADER_BYTES = 100  # same section: user version at offset 60, application id at offset 68, both big-endian
_VERSION_AT, _APPLICATION_AT = 60, 68
_FORMAT_AT, _LOGGED = 18, 2  # same section: the write version at offset 18 is 2 for a write-ahead log


@dataclass(frozen=True, slots=True, kw_only=True)
class Header:
    """What the first bytes of a database say about it; `logged` is True if it is written by way of a log beside it."""

    user_version: int
    application_id: int
    logged: bool = False


def read_header(path: Path) -> Header | None:
    """Return the header of the file at `path`, or None if there is no file yet or it is empty.

    Raises
    ------
    StoreRefused
        If it cannot be read or is not a database.
    """
    try:
        start = first_bytes(path, _HEADER_BYTES)
    except FileNotFoundError:
        return None
    except OSError as error:
        raise StoreRefused(
            say(
                "{path} cannot be read ({fault}); choose a file that may be read.",
                path=path,
                fault=error.strerror,
            )
        ) from error
    if not start:
        return None
    if len(start) < _HEADER_BYTES or not start.startswith(_MAGIC):
        raise StoreRefused(
            say("{path} is not a database; choose another file, or restore a backup of this one.", path=path)
        )
    (version,) = struct.unpack_from(">i", start, _VERSION_AT)
    (application,) = struct.unpack_from(">i", start, _APPLICATION_AT)
    return Header(user_version=version, application_id=application, logged=start[_FORMAT_AT] == _LOGGED)


def refuse_foreign(path: Path, header: Header, newest: int) -> None:
    """Raise `StoreRefused` if `header` is another program's, or of a version above `newest`."""
    if header.logged and header.application_id == header.user_version == 0:
        raise StoreRefused(
            say(
                "{path} belongs to another program, or is a copy whose log {name}-wal was left behind; "
                "choose another file, or copy both.",
                path=path,
                name=path.name,
            ),
        )
    if header.application_id != APPLICATION_ID:
        raise StoreRefused(
            say(
                "{path} belongs to another program (its mark is {mark}, ours is {ours}); choose another file.",
                path=path,
                mark=f"{header.application_id:#x}",
                ours=f"{APPLICATION_ID:#x}",
            ),
        )
    if header.user_version > newest:
        raise StoreRefused(
            say(
                "{path} has version {version}, made by a newer studiowatch; this one reads up to "
                "version {newest}: update it, or choose another file.",
                path=path,
                version=header.user_version,
                newest=newest,
            ),
        )


def refuse_unwritable(path: Path) -> None:
    """Raise `StoreRefused` if the file at `path`, or the folder that must hold its log, may not be written."""
    folder = path.parent
    if not folder.is_dir():
        raise StoreRefused(
            say(
                "The folder {folder} is not there; make it, or choose another place for {name}.",
                folder=folder,
                name=path.name,
            )
        )
    if path.exists() and not _may_write(path):
        raise StoreRefused(
            say("{path} may only be read, not written; allow writing to it, or choose another file.", path=path)
        )
    if not _may_write(folder):
        raise StoreRefused(
            say(
                "The folder {folder} may only be read, and the log of {name} must be written there; allow "
                "writing to it, or choose another folder.",
                folder=folder,
                name=path.name,
            ),
        )


def _may_write(path: Path) -> bool:
    return os.access(path, os.W_OK, effective_ids=os.access in os.supports_effective_ids)
