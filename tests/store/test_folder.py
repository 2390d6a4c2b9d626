"""The lock of a studio's folder keeps a second watch out, and says what it is that keeps the first one out."""

from __future__ import annotations

import errno
import os
from pathlib import Path
from typing import IO

import pytest

from studiowatch.store import folder
from studiowatch.store.folder import FolderRefused, FolderWatched, StudioFolder, Watching


def test_that_a_second_watch_is_kept_out_until_the_first_has_ended(tmp_path: Path) -> None:
    studio = StudioFolder(path=tmp_path)
    first = Watching(studio)
    with pytest.raises(FolderWatched, match="Another studiowatch is watching"):
        Watching(studio)
    first.release()
    Watching(studio).release()


def test_that_a_disk_that_knows_no_locks_is_not_taken_for_another_watch(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def without_locks(_: IO[bytes]) -> None:
        raise OSError(errno.ENOLCK, os.strerror(errno.ENOLCK))  # flock(2): of a file system in a network, for one

    monkeypatch.setattr(folder, "_lock", without_locks)
    with pytest.raises(FolderRefused, match=os.strerror(errno.ENOLCK)) as refusal:
        Watching(StudioFolder(path=tmp_path))
    assert not isinstance(refusal.value, FolderWatched)
