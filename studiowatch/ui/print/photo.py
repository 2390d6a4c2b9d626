"""The photo of a piece, upright and small enough to print."""

from __future__ import annotations

from pathlib import Path

from studiowatch.service.photos import NoPicture
from studiowatch.speech.words import say
from studiowatch.ui.photo_shrinker import shrink_photo


class PhotoRefused(Exception):  # noqa: N818 - reads as the answer it is
    """A photo that cannot be used: one sentence."""


def photo_jpeg(path: Path) -> bytes:
    """Return the photo as a JPEG, turned as its camera says.

    Raises
    ------
    PhotoRefused
        If it is missing, broken, or too large.
    """
    try:
        path.stat()
        return shrink_photo(path)
    except OSError as fault:
        reason = fault.strerror or str(fault)
    except NoPicture as fault:
        reason = str(fault)
    raise PhotoRefused(
        say("The photo {path} cannot be used ({reason}); the record is made without it.", path=path, reason=reason)
    )
