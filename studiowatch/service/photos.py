"""Photos of pieces: copies in a folder beside the records, small enough to be shown and printed at once."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from studiowatch.service.commands import Refused
from studiowatch.service.whole_file import put_whole
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

LARGEST_MB = 80  # of a picture that is taken: beyond any camera's own; assumption


OUTSIDE = mark("The photo {name} does not lie in the folder of photos; the record is made without it.")


class NoPicture(Exception):  # noqa: N818 - reads as the answer it is
    """A file that cannot be shown; the message says why, without a stop."""


def photo_path(folder: Path, name: str) -> Path | None:
    """Return where the photo `name` lies in `folder`, or None if that, or a link there, leads out of it."""
    path = folder / Path(name).name
    try:
        return path if path.resolve().is_relative_to(folder.resolve()) else None
    except (OSError, ValueError, RuntimeError):  # no name of a file, or links in a circle
        return None


@dataclass(frozen=True, slots=True, kw_only=True)
class PhotoFolder:
    """Takes pictures into `folder`; `shrink` makes a JPEG of a file's picture, or raises `NoPicture` or OSError."""

    folder: Path
    shrink: Callable[[Path], bytes]

    def take(self, path: Path) -> str:
        """Copy the picture at `path`, scaled down; return its name, which is made from what it shows.

        Raises
        ------
        Refused
            With one sentence if it is no picture, is too large, or cannot be read or kept.
        """
        try:
            size_MB = path.stat().st_size / 1e6 if path.is_file() else None
        except (OSError, ValueError) as fault:
            raise Refused(
                say("The picture {path} cannot be read: {fault}. Choose another.", path=path.name, fault=fault)
            ) from fault
        if size_MB is None:
            raise Refused(say("There is no picture {path}; choose a file that is there.", path=repr(path.name)))
        if size_MB > LARGEST_MB:
            raise Refused(
                say(
                    "{path} has {size} MB; a picture may have up to {most} MB. Choose another.",
                    path=path.name,
                    size=chosen().number(size_MB),
                    most=LARGEST_MB,
                )
            )
        try:
            picture = self.shrink(path)
        except NoPicture as fault:
            raise Refused(
                say("{path} cannot be shown: {fault}. Choose another picture.", path=path.name, fault=fault)
            ) from fault
        except OSError as fault:
            raise Refused(
                say("The picture {path} cannot be read: {fault}.", path=path.name, fault=fault.strerror or fault)
            ) from fault
        return self._keep(picture)

    def _keep(self, picture: bytes) -> str:
        name = f"photo-{hashlib.sha256(picture).hexdigest()[:16]}.jpg"
        try:
            self.folder.mkdir(mode=0o700, exist_ok=True)
            put_whole(self.folder / name, picture)
        except OSError as fault:
            raise Refused(
                say(
                    "The photo could not be kept in {folder}: {fault}.",
                    folder=self.folder,
                    fault=fault.strerror or fault,
                )
            ) from fault
        return name
