"""`prompts`: listed as the last watch left them, ticked and put off in the records, and refused beside a watch."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.store.readings import ReadingsStore
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
    assert [(one["piece"], one["key"], one["text"].partition(":")[0], one["due"]) for one in document] == [
        ("Kiln", "kiln1:bubbles", "Second pass missed", "2026-03-02T09:15:00Z"),
        ("Kiln", "kiln1:cover", "Cover missed", "2026-03-02T09:20:00Z"),
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


def test_that_a_prompt_that_no_watch_has_kept_yet_is_put_off_too(call: Callable[..., Answer]) -> None:
    assert call("piece", "add", "Marsh", "--width-cm", "30", "--height-cm", "30").code == 0
    assert call("coat", "lay", "Marsh", "gloss-waterborne").code == 0
    bubbles, cover = call("prompts", "list", "--json").document
    assert call("prompts", "snooze", "1", "--minutes", "45").out.startswith("Put off until")
    after = {one["key"]: one for one in call("prompts", "list", "--json").document}
    assert after[bubbles["key"]]["snoozed"]
    assert not after[cover["key"]]["snoozed"]


def test_that_a_prompt_that_a_watch_kept_in_another_language_is_said_in_hers(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    assert call("piece", "add", "Marsh", "--width-cm", "30", "--height-cm", "30").code == 0
    assert call("coat", "lay", "Marsh", "gloss-waterborne").code == 0
    bubbles = call("prompts", "list", "--json").document[0]
    database = open_database(tmp_path / "data" / "studio.sqlite3")
    due_ms = round(datetime.fromisoformat(bubbles["due"]).timestamp() * 1000)
    kept = PromptRecord(
        key=bubbles["key"], coat_key=bubbles["key"].partition(":")[0], due_ms=due_ms, text="Zweiter Durchgang"
    )
    RecordsStore(database, lambda: due_ms).save_prompt(kept)
    database.close()
    assert call("prompts", "list", "--json").document[0] == bubbles
    assert "Zweiter" not in call("prompts", "list").out
    assert call("prompts", "tick", "1").out.startswith("Ticked off: Marsh: Second bubble pass")


def test_that_a_coat_found_tacky_since_the_last_watch_is_not_to_be_recoated(
    call: Callable[..., Answer], folder: Path
) -> None:
    """A day-old coat: the last watch had it due to be recoated; a new test is asked for a tenth of its age later."""
    assert (
        call("piece", "add", "Marsh", "--width-cm", "30", "--height-cm", "30", "--coat", "satin-waterborne").code == 0
    )
    now = datetime.now(UTC).replace(microsecond=0)
    laid = (now - timedelta(days=1)).isoformat()
    assert call("coat", "lay", "Marsh", "gloss-waterborne", "--laid", laid).code == 0
    now_ms = round(now.timestamp() * 1000)
    database = open_database(folder / "studio.sqlite3")
    ReadingsStore(database).append(
        [
            Reading(time_ms=time_ms, temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.05)
            for time_ms in range(now_ms - 24 * 3_600_000, now_ms + 1, 300_000)
        ]
    )
    records = RecordsStore(database, lambda: DUE_MS)
    (coat,) = (coat for piece in records.pieces() if piece.title == "Marsh" for coat in piece.coats if coat.laid_ms)
    for step, text in (("recoat", "Recoat: satin"), ("touch-test", "Touch test at an edge before the next coat")):
        records.save_prompt(
            PromptRecord(key=f"{coat.key}:{step}", coat_key=coat.key, due_ms=now_ms - 3_600_000, text=text)
        )
    database.close()
    assert call("coat", "look", "Marsh", "1", "tacky", "--at", now.isoformat()).code == 0
    asked = [one for one in call("prompts", "list", "--json").document if one["piece"] == "Marsh"]
    again = (now + timedelta(hours=2, minutes=24)).strftime("%Y-%m-%dT%H:%M:%SZ")
    assert [(one["text"], one["due"]) for one in asked if one["key"].endswith(("recoat", "touch-test"))] == [
        ("Touch test at an edge before the next coat", again)
    ]


def test_that_a_tick_by_number_or_key_is_on_disk(call: Callable[..., Answer], folder: Path) -> None:
    del folder
    answer = call("prompts", "tick", "1")
    assert (answer.code, answer.out.partition(":")[0]) == (0, "Ticked off")
    assert "Kiln: Second pass" in answer.out
    assert call("prompts", "tick", "kiln1:cover").code == 0
    assert call("prompts", "list").out == "Nothing to do at the rack.\n"
    refused = call("prompts", "tick", "1")
    assert refused.code == 2
    assert "none: nothing is open" in refused.err


def test_that_a_prompt_is_put_off_and_comes_again(call: Callable[..., Answer], folder: Path) -> None:
    del folder
    assert call("prompts", "snooze", "1", "--minutes", "7").code == 0
    last = call("prompts", "list", "--json").document[-1]
    assert (last["key"], last["snoozed"], last["overdue"]) == ("kiln1:bubbles", True, False)


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
