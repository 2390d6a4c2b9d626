"""A file that is replaced is on disk before it takes the name of the one before: a power cut leaves either, whole."""

from __future__ import annotations

import errno
import os
from collections.abc import Callable
from pathlib import Path

import pytest

from studiowatch.board.kept_file import write_kept
from studiowatch.service.whole_file import put_whole, whole_file


def written(path: Path) -> None:
    with whole_file(path) as out:
        out.write("after")


WAYS = (written, lambda path: put_whole(path, b"after"), lambda path: write_kept(path, "after"))


@pytest.mark.parametrize("write", WAYS)
def test_that_a_file_has_its_name_only_once_the_disk_has_taken_all_of_it(
    write: Callable[[Path], None], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "kept.json"
    path.write_text("before")
    held: list[int] = []

    def refuse(number: int) -> None:
        held.append(os.fstat(number).st_size)
        raise OSError(errno.EIO, "Input/output error")

    monkeypatch.setattr(os, "fsync", refuse)
    with pytest.raises(OSError, match="Input/output error"):
        write(path)
    assert path.read_text() == "before"
    assert held in ([len("after")], [len('"after"')])


@pytest.mark.parametrize("write", WAYS)
def test_that_the_new_file_takes_the_place_of_the_old_one_and_leaves_nothing_beside_it(
    write: Callable[[Path], None], tmp_path: Path
) -> None:
    path = tmp_path / "kept.json"
    path.write_text("before")
    write(path)
    assert path.read_text().strip('"') == "after"
    assert list(tmp_path.iterdir()) == [path]
