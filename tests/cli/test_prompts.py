"""`prompts`: listed as the last watch left them, ticked and put off in the records, and refused beside a watch."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import PromptRecord
from studiowatch.studio.pieces import Coat, Piece

from .conftest import Answer

DUE_MS = 1_772_442_900_000  # 2026-03-02T09:15:00Z


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    folder = tmp_path / "data"
    folder.mkdir()
    database = open_database(folder / "studio.sqlite3")
    records = RecordsStore(database, lambda: DUE_MS)
    for key, archived in (("kiln", False), ("gone", True)):
        coat = Coat(key=f"{key}1", sheet="gloss-waterborne", laid_ms=DUE_MS - 900_000)
        records.save_piece(
            Piece(key=key, title=key.title(), width_cm=40, height_cm=40, archived=archived, coats=(coat,))
        )
        for minute, step in ((5, "cover"), (0, "bubbles")):
            records.save_prompt(
                PromptRecord(key=f"{key}1:{step}", coat_key=f"{key}1", due_ms=DUE_MS + minute * 60_000, text=step)
            )
    database.close()
    return folder


def test_that_prompts_of_pieces_on_the_rack_are_listed_soonest_first(call: Callable[..., Answer], folder: Path) -> None:
    document = call("prompts", "list", "--json").document
    assert [(one["piece"], one["text"], one["due"]) for one in document] == [
        ("Kiln", "bubbles", "2026-03-02T09:15:00Z"),
        ("Kiln", "cover", "2026-03-02T09:20:00Z"),
    ]
    lines = call("prompts", "list").out.splitlines()
    assert [line.split()[0] for line in lines] == ["1", "2"]
    assert all("now, since" in line for line in lines)
    assert (folder / "studio.sqlite3").exists()


def test_that_a_coat_laid_by_command_has_its_prompts_before_any_watch(call: Callable[..., Answer]) -> None:
    """The second bubble pass comes a quarter of an hour after the laying: common practice, no source."""
    assert call("piece", "add", "Marsh", "--width-cm", "30", "--height-cm", "30").code == 0
    assert call("coat", "lay", "Marsh", "gloss-waterborne").code == 0
    bubbles, cover = call("prompts", "list", "--json").document
    assert bubbles["text"].startswith("Second bubble pass")
    assert cover["text"].startswith("Set the mesh cover")
    assert call("prompts", "tick", "1").out.startswith("Ticked off: Marsh: Second bubble pass")
    assert [one["key"] for one in call("prompts", "list", "--json").document] == [cover["key"]]


def test_that_a_tick_by_number_or_key_is_on_disk(call: Callable[..., Answer], folder: Path) -> None:
    del folder
    answer = call("prompts", "tick", "1")
    assert (answer.code, answer.out) == (0, "Ticked off: Kiln: bubbles\n")
    assert call("prompts", "tick", "kiln1:cover").code == 0
    assert call("prompts", "list").out == "Nothing to do at the rack.\n"
    refused = call("prompts", "tick", "1")
    assert refused.code == 2
    assert "none: nothing is open" in refused.err


def test_that_a_prompt_is_put_off_and_comes_again(call: Callable[..., Answer], folder: Path) -> None:
    del folder
    assert call("prompts", "snooze", "1", "--minutes", "7").code == 0
    last = call("prompts", "list", "--json").document[-1]
    assert (last["text"], last["snoozed"], last["overdue"]) == ("bubbles", True, False)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("tick", "9"), "no prompt '9'; allowed is a number from 1 to 2"),
        (("snooze", "1", "--minutes", "0"), "--minutes is 0; allowed is 1 to 360 min"),
        (("snooze", "1", "--minutes", "nan"), "allowed is 1 to 360 min"),
        (("tick",), "must be given"),
        ((), "must be given"),
    ],
)
def test_that_a_wrong_call_is_one_sentence_and_changes_nothing(
    call: Callable[..., Answer], folder: Path, words: tuple[str, ...], said: str
) -> None:
    del folder
    before = call("prompts", "list", "--json").document
    answer = call("prompts", *words)
    assert answer.code == 2
    assert said in answer.err
    assert answer.err.count("\n") == 1
    assert call("prompts", "list", "--json").document == before


def test_that_a_tick_beside_a_watch_is_refused_and_a_list_is_not(call: Callable[..., Answer], folder: Path) -> None:
    lock = Watching(StudioFolder(path=folder))
    try:
        assert call("prompts", "list").code == 0
        answer = call("prompts", "tick", "1")
        assert answer.code == 1
        assert "Another studiowatch is watching" in answer.err
    finally:
        lock.release()
