"""`check --sheet`: what is wrong with a data sheet, for people and for other programs."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from .conftest import Answer

CLEAN = """
name = "mine"
kind = "waterborne"
volume_solids = 0.38
wet_um = 80
touch_dry_min = 32
recoat_h = 4
mfft_C = 10
"""
FIELDS = {"file", "sheet", "usable", "kappa", "faults", "assumed"}


@pytest.fixture
def check(call: Callable[..., Answer], tmp_path: Path) -> Callable[..., Answer]:
    def answer(text: str, *words: str) -> Answer:
        path = tmp_path / "mine.toml"
        path.write_text(text, "utf-8")
        return call("check", "--sheet", path, *words)

    return answer


def test_that_a_clean_sheet_is_fine_and_what_it_leaves_open_is_told(check: Callable[..., Answer]) -> None:
    answer = check(CLEAN)
    assert answer.code == 0
    assert answer.out.splitlines()[-1].startswith("fine ")
    assert "kappa is 1." in answer.out
    document = check(CLEAN, "--json").document
    assert set(document) == FIELDS
    assert (document["sheet"], document["usable"], document["faults"]) == ("mine", True, [])
    assert [sentence.split()[0] for sentence in document["assumed"]] == [
        "density_kg_m3", "clear_h", "cure_days", "apply_C", "max_humidity_pct",
    ]  # fmt: skip


def test_that_all_faults_are_told_one_a_line_and_the_sheet_refused(check: Callable[..., Answer]) -> None:
    text = CLEAN.replace("wet_um = 80", "wet_mils = 3.2").replace("recoat_h = 4", "recoat_h = 3000\nsheeen = 'gloss'")
    answer = check(text)
    assert answer.code == 1
    looks = [line for line in answer.out.splitlines() if line.startswith("LOOK ")]
    assert len(looks) == 3
    assert all("mine.toml: " in line for line in looks)
    assert "cannot be used" in answer.out
    document = check(text, "--json").document
    assert (document["sheet"], document["usable"], len(document["faults"])) == (None, False, 3)


def test_that_times_that_disagree_with_thickness_are_a_fault_of_a_usable_sheet(check: Callable[..., Answer]) -> None:
    text = CLEAN.replace("touch_dry_min = 32", "touch_dry_min = 8")
    answer = check(text)
    assert answer.code == 1
    assert "times and thickness disagree" in answer.out
    assert "can be used as it stands" in answer.out
    document = check(text, "--json").document
    assert document["usable"] is True
    assert document["kappa"] > 2.5


def test_that_a_file_that_is_not_there_or_no_text_is_a_wrong_call(call: Callable[..., Answer], tmp_path: Path) -> None:
    answer = call("check", "--sheet", tmp_path / "none.toml")
    assert answer.code == 2
    assert "cannot be read" in answer.err
    path = tmp_path / "bytes.toml"
    path.write_bytes(b"\xff\xfe")
    answer = call("check", "--sheet", path)
    assert answer.code == 2
    assert "not UTF-8" in answer.err


def test_that_every_built_in_sheet_passes(check: Callable[..., Answer]) -> None:
    folder = Path(__file__).parents[2] / "resources" / "sheets"
    for path in sorted(folder.glob("*.toml")):
        answer = check(path.read_text("utf-8"))
        assert answer.code == 0, answer.out


def test_that_it_tells_what_a_warning_would_be_heard_through(call: Callable[..., Answer]) -> None:
    said = call("check", "--json").document["sound"]["says"]
    assert "heard through" in said or "What is left: " in said


def test_that_starting_at_login_is_put_on_and_off(
    call: Callable[..., Answer], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))
    answers = [call("login", word, "--json").document for word in ("--status", "--on", "--status", "--off", "--status")]
    assert [one["on"] for one in answers] == [False, True, True, False, False]
    assert answers[0]["file"].startswith(str(tmp_path))
    assert "does not start at login" in call("login").out
