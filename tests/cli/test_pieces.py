"""`piece` and `coat`: what the window does to the records is done here too, beside a watch as well."""

from __future__ import annotations

import os
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import Future
from contextlib import contextmanager
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QImage

from studiowatch.coats.stages import Orientation
from studiowatch.compose import outfit
from studiowatch.service.commands import AmendPiece, Command, LayCoat, Paint, RecordOutcome, Refused, RegisterPiece
from studiowatch.service.correction_commands import CorrectCoat, TakePhoto
from studiowatch.service.letterbox import Letterbox, ask
from studiowatch.service.letters import NoLetter, read, written
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.studio.pieces import Outcome, Shape

from .conftest import Answer

Call = Callable[..., Answer]
SIZE = ("--width-cm", "40", "--height-cm", "30")
LAID = "2026-03-02T09:00:00Z"


def shown(call: Call, title: str = "Kiln Light") -> dict[str, object]:
    document: dict[str, object] = call("piece", "show", title, "--json").document
    return document


def test_that_a_piece_is_added_edited_archived_found_and_restored(call: Call) -> None:
    paint = ("--paint", "paint-poured", "--painted", "2026-02-20T09:00:00Z", "--paint-um", "1500")
    coats = ("--coat", "isolation-waterborne", "--coat", "gloss-waterborne")
    added = call(
        "piece", "add", "Kiln Light", *SIZE, *paint, *coats, "--notes", "for the stairs", "--due", "2026-04-01"
    )
    assert (added.code, added.out) == (0, "Registered: Kiln Light\n")
    piece = shown(call)
    assert (piece["area_m2"], piece["due"], piece["notes"]) == (0.12, "2026-04-01", "for the stairs")
    assert [(coat["sheet"], coat["laid"], coat["wet_um"]) for coat in piece["coats"]] == [  # type: ignore[attr-defined]
        ("paint-poured", "2026-02-20T09:00:00Z", 1500.0),
        ("isolation-waterborne", None, None),
        ("gloss-waterborne", None, None),
    ]
    edited = call("piece", "edit", "Kiln Light", "--shape", "panels", "--panels", "3", "--no-due")
    assert edited.code == 0
    assert (shown(call)["area_m2"], shown(call)["due"]) == (0.36, None)
    assert call("piece", "archive", "Kiln Light").code == 0
    assert call("piece", "list", "--json").document == []
    (found,) = call("piece", "list", "--archived", "--find", "STAIRS kiln", "--json").document
    assert found["title"] == "Kiln Light"
    assert call("piece", "list", "--archived", "--find", "other", "--json").document == []
    assert call("piece", "restore", "Kiln Light").out == "Back on the rack: Kiln Light\n"
    assert "1 of 3 coats laid" in call("piece", "list").out


def test_that_a_piece_that_is_elsewhere_or_nowhere_is_told_so(call: Call) -> None:
    for title in ("Kiln Light", "Fog"):
        call("piece", "add", title, *SIZE)
    call("piece", "archive", "Fog")
    for words, sentence in (
        (("show", "Zinc"), "There is no piece 'Zinc' on the rack or in the archive; there are 'Kiln Light', 'Fog'."),
        (("restore", "Kiln Light"), "The piece 'Kiln Light' is on the rack already."),
        (("restore", "Zinc"), "There is no piece 'Zinc' in the archive; there are 'Fog'."),
        (("edit", "Fog", "--panels", "3"), "The piece 'Fog' is in the archive; `piece restore` brings it back."),
        (("archive", "Zinc"), "There is no piece 'Zinc' on the rack; there are 'Kiln Light'."),
    ):
        answer = call("piece", *words)
        assert (answer.code, answer.out, answer.err) == (2, "", f"studiowatch: {sentence}\n")
    for words, sentence in (
        ((), "Kiln Light: 40 × 30 cm, 0 of 0 coats laid"),
        (("--find", "zinc white"), "No piece on the rack has the words 'zinc white'."),
        (("--archived", "--find", "zinc"), "No piece in the archive has the words 'zinc'."),
    ):
        answer = call("piece", "list", *words)
        assert (answer.code, answer.out) == (0, f"{sentence}\n")


@pytest.mark.parametrize(
    ("words", "options"),
    [
        (
            ("piece", "edit", "Kiln Light"),
            (
                "title due no-due photo no-photo width-cm height-cm shape panels support orientation notes coat "
                "paint painted paint-um"
            ),
        ),
        (
            ("coat", "correct", "Kiln Light", "1"),
            "laid sheet mL grams wet-um thinned-pct as-sheet covered no-cover",
        ),
    ],
)
def test_that_a_change_without_anything_given_is_refused_with_what_there_is_to_give(
    call: Call, words: tuple[str, ...], options: str
) -> None:
    call("piece", "add", "Kiln Light", *SIZE)
    call("coat", "lay", "Kiln Light", "gloss-waterborne", "--laid", LAID, "--mL", "10")
    before = shown(call)
    answer = call(*words)
    assert (answer.code, answer.out) == (2, "")
    assert answer.err.startswith("studiowatch: one of --")
    assert answer.err.endswith(f" must be given; `studiowatch {words[0]} {words[1]} --help` shows what it takes.\n")
    assert {word for word in answer.err.split() if word.startswith("--")} == {
        *(f"--{option}" for option in options.split()),
        "--help`",
    }
    assert shown(call) == before
    assert "--sheep is not known here" in call(*words, "--sheep").err


def test_that_a_coat_is_laid_corrected_looked_at_and_taken_back_with_its_history(call: Call) -> None:
    call("piece", "add", "Kiln Light", *SIZE, "--coat", "gloss-waterborne", "--coat", "gloss-waterborne")
    assert call("coat", "lay", "Kiln Light", "gloss-waterborne", "--laid", LAID, "--mL", "10").code == 0
    assert call("coat", "cover", "Kiln Light", "1", "--at", "2026-03-02T09:20:00Z").code == 0
    assert call("coat", "look", "Kiln Light", "1", "tacky", "--at", "2026-03-02T10:00:00Z").code == 0
    assert call("coat", "look", "Kiln Light", "1", "dry", "--instead-of", "1").code == 0
    assert call("coat", "outcome", "Kiln Light", "1", "specks", "--at", "2026-03-03T10:00:00Z").code == 0
    assert call("coat", "correct", "Kiln Light", "1", "--laid", "2026-03-02T09:10:00Z", "--grams", "11").code == 0
    coats = shown(call)["coats"]
    assert isinstance(coats, list)
    assert len(coats) == 2
    assert (coats[0]["laid"], coats[0]["grams"], coats[0]["volume_mL"]) == ("2026-03-02T09:10:00Z", 11.0, None)
    assert [(look["time"], look["finding"]) for look in coats[0]["looks"]] == [("2026-03-02T10:00:00Z", "dry")]
    assert coats[0]["outcome"] == "specks"
    said = [one["words"] for one in shown(call)["corrections"]]  # type: ignore[attr-defined]
    assert any("11 g instead of 10 mL" in words for words in said)
    assert any("instead of tacky" in words for words in said)
    assert call("coat", "outcome", "Kiln Light", "1", "open").code == 0
    assert call("coat", "remove", "Kiln Light", "1", "--plan-again").code == 0
    assert [coat["laid"] for coat in shown(call)["coats"]] == [None, None]  # type: ignore[attr-defined]


def test_that_a_list_does_not_say_that_nothing_was_corrected(call: Call) -> None:
    call("piece", "add", "Kiln Light", *SIZE)
    call("piece", "edit", "Kiln Light", "--width-cm", "55")
    (listed,) = call("piece", "list", "--json").document
    assert "corrections" not in listed
    assert len(shown(call)["corrections"]) == 1  # type: ignore[arg-type]


def test_that_a_photo_is_copied_beside_the_records(call: Call, tmp_path: Path) -> None:
    picture = tmp_path / "mine.png"
    assert QImage(60, 40, QImage.Format.Format_RGB32).save(str(picture))
    call("piece", "add", "Kiln Light", *SIZE)
    assert call("piece", "edit", "Kiln Light", "--photo", picture).code == 0
    name = shown(call)["photo"]
    assert (tmp_path / "data" / "photos" / str(name)).is_file()
    broken = tmp_path / "broken.jpg"
    broken.write_text("no picture")
    answer = call("piece", "edit", "Kiln Light", "--photo", broken)
    assert answer.code == 1
    assert answer.err.startswith("studiowatch: broken.jpg cannot be shown")


@pytest.mark.parametrize(
    ("words", "code", "told"),
    [
        (("piece", "add", "Kiln Light", *SIZE), 1, "on the rack already"),
        (("piece", "add", "Low Tide", "--width-cm", "0", "--height-cm", "30"), 1, "0 cm"),
        (("piece", "add", "Low Tide", *SIZE, "--shape", "panels", "--panels", "0"), 1, "The number of panels is 0"),
        (("piece", "edit", "Kiln Light", "--panels", "0"), 1, "has 1 panel, not 0"),
        (("piece", "edit", "Nobody", "--title", "x"), 2, "'Kiln Light'"),
        (("piece", "edit", "Kiln Light", "--due", "soon"), 2, "--due is 'soon'"),
        (("piece", "edit", "Kiln Light", "--paint", "paint-poured"), 2, "belong together"),
        (("piece", "restore", "Kiln Light"), 2, "on the rack already"),
        (("piece", "move", "Kiln Light", "2"), 2, "allowed is 1 to 1"),
        (("coat", "lay", "Kiln Light", "glos", "--laid", LAID), 1, "no data sheet"),
        (("coat", "look", "Kiln Light", "2", "dry"), 2, "allowed is 1 to 1"),
        (("coat", "look", "Kiln Light", "1", "dry"), 1, "not on yet"),
        (("coat", "correct", "Kiln Light", "1", "--mL", "3"), 2, "nothing to correct"),
        (("coat", "forget-look", "Kiln Light", "1", "1"), 2, "nobody has looked"),
        (("piece", "edit", "Kiln Light", "--no-due", "--due", "2027-01-01"), 2, "exclude each other"),
        (("piece", "edit", "Kiln Light", "--no-photo", "--photo", "x.png"), 2, "exclude each other"),
        (("coat", "correct", "Kiln Light", "1", "--no-cover", "--covered", LAID), 2, "exclude each other"),
    ],
)
def test_that_what_cannot_be_done_is_one_sentence(call: Call, words: tuple[str, ...], code: int, told: str) -> None:
    call("piece", "add", "Kiln Light", *SIZE, "--coat", "gloss-waterborne")
    before = shown(call)
    answer = call(*words)
    assert (answer.code, answer.out) == (code, "")
    assert told in answer.err
    assert len(answer.err.splitlines()) == 1
    assert shown(call) == before


@pytest.mark.parametrize("amount", ["--mL", "--grams", "--wet-um"])
def test_that_an_amount_is_not_given_and_taken_away_in_one_call(call: Call, amount: str) -> None:
    call("piece", "add", "Kiln Light", *SIZE)
    call("coat", "lay", "Kiln Light", "gloss-waterborne", "--laid", LAID)
    before = shown(call)
    answer = call("coat", "correct", "Kiln Light", "1", "--as-sheet", amount, "30")
    assert (answer.code, answer.out) == (2, "")
    assert f"--as-sheet and {amount} exclude each other" in answer.err
    assert shown(call) == before


@contextmanager
def watched(tmp_path: Path) -> Iterator[None]:
    """Watch over the studio of the calls, with the simulated board."""
    parts = replace(outfit(), data_folder=tmp_path / "data")
    with watching(parts, StudioFolder(path=tmp_path / "data"), parts.made_up_room(1).source(), keep_backups=False):
        yield


def test_that_the_watch_that_is_on_carries_the_calls_out(call: Call, tmp_path: Path) -> None:
    with watched(tmp_path):
        assert call("piece", "add", "Kiln Light", *SIZE, "--coat", "gloss-waterborne").code == 0
        assert call("coat", "lay", "Kiln Light", "gloss-waterborne", "--mL", "10").code == 0
        assert call("piece", "add", "Kiln Light", *SIZE).err.count("on the rack already") == 1
        assert shown(call)["coats"][0]["volume_mL"] == 10  # type: ignore[index]
    assert list((tmp_path / "data" / "letters").iterdir()) == []
    assert shown(call)["coats"][0]["volume_mL"] == 10  # type: ignore[index]


def test_that_a_holder_that_does_not_answer_is_told_and_the_letter_taken_back(tmp_path: Path) -> None:
    folder = StudioFolder(path=tmp_path)
    lock = Watching(folder)
    with pytest.raises(Refused, match="nothing was done"):
        ask(folder.letters, AmendPiece(piece_key="p"), wait_s=0.0)
    lock.release()
    assert list(folder.letters.iterdir()) == []


def test_that_answers_nobody_fetched_are_thrown_away_and_fresh_ones_and_other_files_stay(tmp_path: Path) -> None:
    now_s = 2_000_000_000.0
    for name, age_s in (
        ("old.answer", 61.0),
        ("old.answer.unfinished", 61.0),
        ("old.letter.unfinished", 61.0),
        ("new.answer", 59.0),
        ("notes.txt", 1e6),
    ):
        (tmp_path / name).write_text("{}")
        os.utime(tmp_path / name, (now_s - age_s, now_s - age_s))
    assert Letterbox(tmp_path, wall_s=lambda: now_s).collect(lambda _: Future()) == 0
    assert {path.name for path in tmp_path.iterdir()} == {"new.answer", "notes.txt"}


def test_that_a_file_that_is_gone_before_it_is_looked_at_stops_no_sweep(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its writer names it otherwise once it is whole, at any moment."""
    (tmp_path / "old.answer").write_text("{}")
    renamed = tmp_path / "just.letter.unfinished"
    monkeypatch.setattr(Path, "iterdir", lambda _: iter([renamed, tmp_path / "old.answer"]))
    monkeypatch.setattr(Path, "is_file", lambda _: True)
    assert Letterbox(tmp_path, wall_s=lambda: 4e9).collect(lambda _: Future()) == 0
    assert not (tmp_path / "old.answer").exists()


def test_that_the_folder_is_listed_only_where_a_letter_may_have_come_and_none_is_missed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    done: list[Command] = []

    def submit(command: Command) -> Future[str]:
        done.append(command)
        return Future()

    listed: list[str] = []
    scandir = os.scandir
    monkeypatch.setattr(os, "scandir", lambda folder: (listed.append(str(folder)), scandir(folder))[1])
    now_s = [2_000_000_000.0]
    box = Letterbox(tmp_path, wall_s=lambda: now_s[0])
    os.utime(tmp_path, (now_s[0], now_s[0]))
    for _ in range(60):
        box.collect(submit)
        now_s[0] += 1.0
    assert len(listed) in range(1, 6)  # within four seconds of its change, whose time may be coarse
    for minute in range(3):
        letter = tmp_path / f"{minute}.letter"
        letter.write_text(written(AmendPiece(piece_key=str(minute))))
        os.utime(letter, (now_s[0], now_s[0]))
        os.utime(tmp_path, (now_s[0], now_s[0]))
        assert box.collect(submit) == 1
        letter.write_text(written(AmendPiece(piece_key="same")))
        os.utime(letter, (now_s[0], now_s[0]))
        os.utime(tmp_path, (now_s[0], now_s[0]))  # within the grain of the folder's time
        assert box.collect(submit) == 1
        now_s[0] += 60.0
    assert done == [AmendPiece(piece_key=key) for key in ("0", "same", "1", "same", "2", "same")]


def test_that_a_letter_is_carried_out_once_and_a_stale_one_not_at_all(tmp_path: Path) -> None:
    done: list[Command] = []

    def submit(command: Command) -> Future[str]:
        done.append(command)
        answer: Future[str] = Future()
        answer.set_result("key")
        return answer

    box = Letterbox(tmp_path)
    answers: list[str] = []
    asking = threading.Thread(target=lambda: answers.append(ask(tmp_path, AmendPiece(piece_key="p"))))
    asking.start()
    while not done:
        box.collect(submit)
    asking.join()
    assert answers == ["key"]
    (tmp_path / "old.letter").write_text(written(AmendPiece(piece_key="p")))
    assert Letterbox(tmp_path, wall_s=lambda: 4e9).collect(submit) == 0
    (tmp_path / "mad.letter").write_text("{")
    assert box.collect(submit) == 1
    assert done == [AmendPiece(piece_key="p")]
    assert "could not be read" in (tmp_path / "mad.answer").read_text()


@pytest.mark.parametrize(
    "command",
    [
        RegisterPiece(
            title="Kiln Light",
            width_cm=40,
            height_cm=30.5,
            due=date(2026, 4, 1),
            orientation=Orientation.VERTICAL,
            shape=Shape.PANELS,
            panels=2,
            paint=Paint(sheet="paint-poured", finished_ms=5, wet_um=1500),
            sheets=("a", "b"),
        ),
        AmendPiece(piece_key="p", sheets=(), no_due=True),
        LayCoat(piece_key="p", laid_ms=7, sheet="a", grams=3.5, below=True),
        RecordOutcome(coat_key="c", seen_ms=9, outcome=Outcome.SPECKS),
        CorrectCoat(coat_key="c", sheet="a", laid_ms=7, covered_ms=8),
        TakePhoto(path=Path("of mine.png")),
    ],
)
def test_that_a_command_comes_out_of_its_letter_as_it_went_in(command: Command) -> None:
    assert read(written(command)) == command


@given(st.text(max_size=60) | st.sampled_from(['{"command": "Undo", "fields": {}}', "[]", "1", '{"command": []}']))
def test_that_any_other_text_is_no_letter(text: str) -> None:
    with pytest.raises(NoLetter):
        read(text)


def test_that_a_letter_with_values_of_other_kinds_is_none() -> None:
    good = written(LayCoat(piece_key="p", laid_ms=7, sheet="a"))
    for bad in (good.replace("7", '"7"'), good.replace("7", "true"), good.replace("laid_ms", "laid"), good[:-1]):
        with pytest.raises(NoLetter):
            read(bad)
