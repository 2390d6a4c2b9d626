"""Nothing that she or a stranger typed stands in a CSV where a spreadsheet would take it for a formula.

What a cell must not begin with: CWE-1236 (Improper Neutralization of Formula Elements in a CSV File) and the public
guidance on it name = + - @, tab and carriage return. A cell of a plain number may begin with its sign.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest

from studiowatch.cli.commands import run
from studiowatch.compose import outfit
from studiowatch.room.readings import Channel, Reading
from studiowatch.service.leavings import Leavings, rescue
from studiowatch.ui.models.review_csv import review_csv
from tests.studio.review_scenes import gloss, isolation, reviewed, room, stack

STARTS = ("=", "+", "-", "@", "\t", "\r")
FORMULAS = [f"{sign}cmd|' /C calc'!A0" for sign in STARTS]
NOW_MS = 1_772_442_000_000
HEADS = {"time", *Channel}


def cells(text: str) -> list[list[str]]:
    return list(csv.reader(io.StringIO(text, newline="")))


def is_number_or_time(cell: str) -> bool:
    if not cell:
        return True
    try:
        float(cell)
    except ValueError:
        try:
            datetime.fromisoformat(cell)
        except ValueError:
            return False
    return True


@pytest.mark.parametrize("formula", FORMULAS)
def test_that_a_coat_named_like_a_formula_heads_no_column_with_it(formula: str) -> None:
    plain = reviewed(stack(isolation(), gloss()), room())
    review = replace(plain, films=tuple(replace(film, label=formula) for film in plain.films), piece_title=formula)
    head, *rows = cells(review_csv(review))
    assert len(head) == 6 + len(plain.films)
    assert not [cell for cell in head if cell.startswith(STARTS) or any(sign in cell for sign in "=+-@|'!\t\r")]
    assert rows
    assert all(is_number_or_time(cell) for row in rows for cell in row)


@pytest.mark.parametrize("formula", FORMULAS)
def test_that_readings_go_out_as_numbers_and_times_whatever_she_calls_her_pieces(
    formula: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    room = tmp_path / "=room.csv"
    room.write_text("time,temperature_C,humidity_pct\n2026-03-02T09:00:00Z,-3.5,50\n2026-03-02T09:00:05Z,20,50\n")
    call = _caller(tmp_path / "studio")
    call("piece", "add", f"A {formula}", "--width-cm", "40", "--height-cm", "40", f"--notes={formula}")
    call("import", room)
    call("history", "--csv", tmp_path / "out.csv")
    capsys.readouterr()
    with (tmp_path / "out.csv").open(newline="") as file:
        head, *rows = cells(file.read())
    assert set(head) == HEADS
    assert len(rows) == 2
    assert all(is_number_or_time(cell) for row in rows for cell in row)


def _caller(folder: Path) -> Callable[..., None]:
    def call(*words: str | Path) -> None:
        assert run(["--folder", str(folder), *map(str, words)], replace(outfit(), data_folder=folder)) == 0

    return call


def test_that_readings_saved_from_a_full_disk_are_numbers_and_times(tmp_path: Path) -> None:
    rescue(Leavings(readings=[Reading(time_ms=NOW_MS, temperature_C=-3.5)]), tmp_path)
    (path,) = tmp_path.glob("*.csv")
    head, row = cells(path.read_text("utf-8"))
    assert set(head) == HEADS
    assert all(is_number_or_time(cell) for cell in row)
