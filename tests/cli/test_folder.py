"""A records folder that is none never passes for a studio without records, whatever is called."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from .conftest import Answer

CALLS = (
    ("check",),
    ("piece", "list"),
    ("piece", "show", "Kiln Light"),
    ("intend",),
    ("plan",),
    ("boards", "--listen-s", "0.1"),
    ("login",),
    ("backup",),
    ("prompts", "list"),
)


@pytest.mark.parametrize("words", CALLS, ids=" ".join)
def test_that_a_file_for_a_folder_is_refused_by_every_call(
    call: Callable[..., Answer], tmp_path: Path, words: tuple[str, ...]
) -> None:
    file = tmp_path / "notes.txt"
    file.write_text("hello", "utf-8")
    for folder in (file, file / "records"):
        answer = call("--folder", folder, *words)
        assert (answer.code, answer.out) == (1, "")
        assert answer.err == (
            f"studiowatch: The records folder {folder} cannot be used: {file} is no folder. "
            "Choose a folder, or a new name.\n"
        )


@pytest.mark.parametrize("words", CALLS, ids=" ".join)
def test_that_a_link_to_what_is_not_there_is_refused_by_every_call(
    call: Callable[..., Answer], tmp_path: Path, words: tuple[str, ...]
) -> None:
    disk, folder, records = tmp_path / "disk", tmp_path / "records", tmp_path / "studio"
    folder.symlink_to(disk)
    records.mkdir()
    (records / "studio.sqlite3").symlink_to(disk)
    for named, link in ((folder, folder), (folder / "mine", folder), (records, records / "studio.sqlite3")):
        answer = call("--folder", named, *words)
        assert (answer.code, answer.out) == (1, "")
        assert answer.err == (
            f"studiowatch: The records folder {named} cannot be used: {link} is a link to {disk}, which is not there. "
            "Connect the disk it lies on, or choose another folder.\n"
        )
    assert not disk.exists()


def test_that_a_folder_that_is_yet_to_be_made_and_a_link_to_one_that_is_there_are_taken(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    (tmp_path / "there").mkdir()
    (tmp_path / "link").symlink_to(tmp_path / "there")
    for folder in (tmp_path / "new" / "deeper", tmp_path / "link"):
        assert call("--folder", folder, "piece", "list").code == 0
