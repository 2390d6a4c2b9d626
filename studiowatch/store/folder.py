"""The folder of one studio: where its records lie, and the lock that keeps a second watcher out."""

from __future__ import annotations

import errno
import os
import shutil
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import IO

from studiowatch.speech.words import say

# what systems answer if the lock is taken; a disk that knows no locks, as some in a network, answers otherwise
_HELD_BY_ANOTHER = {errno.EACCES, errno.EAGAIN, errno.EWOULDBLOCK, errno.EDEADLK}


class FolderRefused(Exception):  # noqa: N818 - reads as the answer it is
    """The folder cannot be used; the message is one sentence that says what to do."""


class FolderWatched(FolderRefused):
    """Another studiowatch watches the studio in this folder."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioFolder:
    """Paths of one studio's files."""

    path: Path

    @property
    def database(self) -> Path:
        """The records and readings."""
        return self.path / "studio.sqlite3"

    @property
    def sheets(self) -> Path:
        """Her own data sheets."""
        return self.path / "sheets"

    @property
    def photos(self) -> Path:
        """Photos of her pieces."""
        return self.path / "photos"

    @property
    def letters(self) -> Path:
        """What a call asks of the watch that is on, and its answers."""
        return self.path / "letters"

    @property
    def board_columns(self) -> Path:
        """What she said of the columns of boards that run a sketch of their own."""
        return self.path / "columns.json"

    @property
    def last_board(self) -> Path:
        """Which board was read last."""
        return self.path / "board.json"

    @property
    def severities(self) -> Path:
        """What clouded, or might have, each coat with an outcome: made anew from the records where it is missing."""
        return self.path / "severities.json"

    @property
    def backups(self) -> Path:
        """Daily backups, each a studio folder itself."""
        return self.path / "backups"

    @property
    def lock(self) -> Path:
        """Held while a studiowatch watches this studio."""
        return self.path / "watching.lock"

    def refuse_unusable(self) -> None:
        """Refuse a folder that is none, or whose disk is not there, so that it never passes for an empty studio.

        A folder that is yet to be made is none of these.

        Raises
        ------
        FolderRefused
            If a file or a broken link stands where the folder, its records or a folder above them should.
        """
        for place in (self.database, self.path, *self.path.parents):
            if place.is_symlink() and not place.exists():
                raise FolderRefused(
                    say(
                        "The records folder {path} cannot be used: {place} is a link to {target}, which is not there. "
                        "Connect the disk it lies on, or choose another folder.",
                        path=self.path,
                        place=place,
                        target=place.readlink(),
                    )
                )
            if place != self.database and place.exists() and not place.is_dir():
                raise FolderRefused(
                    say(
                        "The records folder {path} cannot be used: {place} is no folder. "
                        "Choose a folder, or a new name.",
                        path=self.path,
                        place=place,
                    )
                )

    def make(self) -> None:
        """Make the folder with rights for its owner only.

        Raises
        ------
        FolderRefused
            If it cannot be made.
        """
        try:
            self.path.mkdir(mode=0o700, parents=True, exist_ok=True)
        except OSError as fault:
            sentence = say(
                "The records folder {path} cannot be made: {fault}. Choose another.",
                path=self.path,
                fault=fault.strerror or fault,
            )
            raise FolderRefused(sentence) from fault

    def clear(self) -> None:
        """Delete the records and all that was kept beside them: for a made-up studio only.

        Raises
        ------
        FolderRefused
            If they cannot be deleted.
        """
        try:
            for old in (
                *self.path.glob(f"{self.database.name}*"),
                self.severities,
                self.board_columns,
                self.last_board,
            ):
                old.unlink(missing_ok=True)
            for old in (self.sheets, self.photos, self.letters):
                if old.is_dir() and not old.is_symlink():
                    shutil.rmtree(old)
        except OSError as fault:
            sentence = say(
                "{path} cannot be deleted: {fault}. Delete it by hand.",
                path=fault.filename,
                fault=fault.strerror or fault,
            )
            raise FolderRefused(sentence) from fault


class Watching:
    """Holds the lock of a studio folder until it is released or the process ends, however it ends."""

    def __init__(self, folder: StudioFolder) -> None:
        """Take the lock.

        Raises
        ------
        FolderRefused
            If another studiowatch holds it, or the folder cannot be written.
        """
        try:
            folder.lock.touch(mode=0o600)
            self._file: IO[bytes] = folder.lock.open("a+b")
        except OSError as fault:
            raise FolderRefused(_unwritable(folder, fault)) from fault
        try:
            _lock(self._file)
        except OSError as fault:
            self._file.close()
            if fault.errno not in _HELD_BY_ANOTHER:
                raise FolderRefused(_unwritable(folder, fault)) from fault
            raise FolderWatched(
                say(
                    "Another studiowatch is watching this studio already ({path}). Use its window, or close it first.",
                    path=folder.path,
                )
            ) from fault

    def release(self) -> None:
        """Let the next watcher in."""
        self._file.close()


def _unwritable(folder: StudioFolder, fault: OSError) -> str:
    return say(
        "The records folder {path} cannot be written: {fault}. Give it back its rights or choose another.",
        path=folder.path,
        fault=fault.strerror or fault,
    )


if sys.platform == "win32":
    import msvcrt

    def _lock(file: IO[bytes]) -> None:
        file.seek(0)
        msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)

else:
    import fcntl

    def _lock(file: IO[bytes]) -> None:
        fcntl.flock(file.fileno(), fcntl.LOCK_EX | fcntl.LOCK_NB)


def default_folder(data_folder: Path) -> StudioFolder:
    """Return the studio in the user's own data folder, or where ``STUDIOWATCH_FOLDER`` points."""
    named = os.environ.get("STUDIOWATCH_FOLDER")
    return StudioFolder(path=Path(named).expanduser() if named else data_folder)
