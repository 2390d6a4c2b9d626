"""`replay`: a log in, events out, and one sentence for what is wrong with a file."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from .conftest import STUDIO, Answer, room_text

BEGAN = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)


def stamp(second: int) -> str:
    return (BEGAN + timedelta(seconds=second)).strftime("%Y-%m-%dT%H:%M:%SZ")


@pytest.fixture
def room_file(tmp_path: Path) -> Path:
    """Return a quarter of an hour at one a second, with a fan from 10:00 min to 13:20 min."""
    rows = [
        (stamp(second), 20.5, 50 + second % 3 / 10, 0.35 if 600 <= second < 800 else 0.04 + second % 5 / 1000)
        for second in range(900)
    ]
    path = tmp_path / "room.csv"
    path.write_text(room_text(rows), "utf-8")
    return path


def test_that_a_fan_in_the_log_is_an_event_with_its_beginning(
    call: Callable[..., Answer], room_file: Path, studio_file: Path
) -> None:
    answer = call("replay", room_file, "--studio", studio_file, "--json")
    assert answer.code == 0
    raised, cleared = [line for line in answer.lines if line.get("kind") == "air-moving"]
    assert raised["event"] == "warning"
    assert raised["state"] == "raised"
    assert raised["level"] == "act"
    assert raised["pieces"] == ["Kiln Light"]
    assert stamp(600) <= raised["time"] < stamp(603)
    assert raised["began"] in {stamp(599), stamp(600)}
    assert cleared["state"] == "cleared"
    assert any(line["event"] == "prompt" for line in answer.lines) is False  # due 15 min after laying: past the log


def test_that_people_get_sentences(call: Callable[..., Answer], room_file: Path, studio_file: Path) -> None:
    answer = call("replay", room_file, "--studio", studio_file)
    assert "Air is moving over a wet coat." in answer.out
    assert "over: Air was moving over a wet coat" in answer.out


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (("20.5,", "warm,"), ["room.csv", "line 2", '"warm"']),
        (("temperature_C", "temp"), ["room.csv", "temperature_C"]),
        ((stamp(5), stamp(3)), ["room.csv", "line 7"]),
        (("Z,", ","), ["room.csv", "line 2", "zone"]),
    ],
)
def test_that_a_broken_log_is_refused_by_line(
    call: Callable[..., Answer], room_file: Path, studio_file: Path, change: tuple[str, str], words: list[str]
) -> None:
    room_file.write_text(room_file.read_text("utf-8").replace(*change, 1), "utf-8")
    answer = call("replay", room_file, "--studio", studio_file, "--json")
    assert answer.code == 2
    assert answer.out == ""
    assert "Traceback" not in answer.err
    for word in words:
        assert word in answer.err


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (("40", "minus"), ["studio.toml"]),
        (("width_cm = 40", "width_cm = -4"), ["studio.toml", "Kiln Light", "width_cm", "-4"]),
        (("isolation-waterborne", "isolation"), ["studio.toml", "isolation", "isolation-waterborne"]),
        (("isolation-waterborne", "../away.toml"), ["studio.toml", "away.toml"]),
        (("volume_mL", "volume_L"), ["studio.toml", "volume_L"]),
    ],
)
def test_that_a_broken_studio_file_is_refused(
    call: Callable[..., Answer], room_file: Path, studio_file: Path, change: tuple[str, str], words: list[str]
) -> None:
    studio_file.write_text(STUDIO.replace(*change, 1), "utf-8")
    answer = call("replay", room_file, "--studio", studio_file)
    assert answer.code == 2
    assert answer.out == ""
    for word in words:
        assert word in answer.err


def test_that_a_missing_file_is_named(call: Callable[..., Answer], tmp_path: Path, studio_file: Path) -> None:
    answer = call("replay", tmp_path / "none.csv", "--studio", studio_file)
    assert answer.code == 2
    assert "none.csv" in answer.err


def test_that_another_loggers_columns_are_mapped(
    call: Callable[..., Answer], room_file: Path, studio_file: Path
) -> None:
    text = room_file.read_text("utf-8").replace("temperature_C", "Temp").replace("time,", "When,", 1)
    room_file.write_text(text, "utf-8")
    answer = call("replay", room_file, "--studio", studio_file, "--json", "--columns", "temperature_C=Temp,time=When")
    assert answer.code == 0
    assert any(line.get("kind") == "air-moving" for line in answer.lines)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (("volume_mL = 14", "grams = 100000"), "Kiln Light, coat 1: Wet film is 609756 µm"),  # 1025 g/L on 0.16 m²
        (("volume_mL = 14", "volume_mL = 0.05"), "Kiln Light, coat 1: Wet film is 0.3125 µm"),  # on 0.16 m²
    ],
)
def test_that_a_coat_that_could_not_be_watched_is_refused_and_not_passed_over(
    call: Callable[..., Answer], room_file: Path, studio_file: Path, change: tuple[str, str], words: str
) -> None:
    studio_file.write_text(STUDIO.replace(*change, 1), "utf-8")
    answer = call("replay", room_file, "--studio", studio_file, "--json")
    assert answer.code == 2
    assert words in answer.err
    assert answer.out == ""


def test_that_rare_readings_warn_too(call: Callable[..., Answer], tmp_path: Path, studio_file: Path) -> None:
    rows = [(stamp(300 * step), 20.5, 50, 0.9 if 24 <= step < 30 else 0.04) for step in range(40)]
    log = tmp_path / "rare.csv"
    log.write_text(room_text(rows), "utf-8")
    studio_file.write_text(STUDIO.replace("09:01:00", "10:55:00"), "utf-8")
    answer = call("replay", log, "--studio", studio_file, "--json")
    assert [line["state"] for line in answer.lines if line.get("kind") == "air-moving"][:1] == ["raised"]


def test_that_a_coat_laid_too_early_and_one_matting_coat_too_many_are_events(
    call: Callable[..., Answer], tmp_path: Path, room_file: Path
) -> None:
    laid = ("2026-03-02T06:00:00Z", "2026-03-02T08:30:00Z")
    coats = "".join(f'[[piece.coat]]\nsheet = "matt-waterborne"\nlaid = {one}\nwet_um = 80\n' for one in laid)
    studio = tmp_path / "matt.toml"
    studio.write_text(f'[[piece]]\ntitle = "Slate"\nwidth_cm = 30\nheight_cm = 30\n{coats}', "utf-8")
    raised = [line for line in call("replay", room_file, "--studio", studio, "--json").lines if "kind" in line]
    told = {line["kind"]: line for line in raised if line["state"] == "raised"}
    assert set(told) >= {"recoat-early", "matting-build-up"}
    assert told["recoat-early"]["began"] == told["matting-build-up"]["began"] == laid[1]
    assert told["recoat-early"]["pieces"] == ["Slate"]
