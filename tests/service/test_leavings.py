"""What was not stored is said, and its readings come back from the room log as they were."""

from __future__ import annotations

from dataclasses import replace
from math import nan
from pathlib import Path

import pytest

from studiowatch.board.room_log import open_room_log
from studiowatch.service.leavings import Leavings, rescue

from .rooms import room


def test_that_rescued_readings_are_read_back_as_a_room_log(tmp_path: Path) -> None:
    readings = [replace(reading, time_ms=reading.time_ms + 123, pressure_Pa=101_325.0) for reading in room(30)]
    said = rescue(Leavings(readings=readings, trouble="The disk is full."), tmp_path)
    (path,) = tmp_path.glob("*.csv")
    assert str(path) in said
    assert "30" in said
    assert said.endswith("The disk is full.")
    assert list(open_room_log(path).readings()) == readings


def test_that_readings_of_one_time_or_with_a_broken_channel_can_still_be_read_back(tmp_path: Path) -> None:
    first, second = room(2)
    same = replace(first, air_speed_m_s=nan)
    rescue(Leavings(readings=[first, same, second]), tmp_path)
    (path,) = tmp_path.glob("*.csv")
    assert list(open_room_log(path).readings()) == [
        first,
        replace(first, time_ms=first.time_ms + 1, air_speed_m_s=None),
        second,
    ]


def test_that_an_earlier_room_log_is_never_overwritten(tmp_path: Path) -> None:
    for _ in range(3):
        rescue(Leavings(readings=room(5)), tmp_path)
    assert len(list(tmp_path.glob("*.csv"))) == 3


def test_that_a_folder_that_takes_nothing_is_said_with_what_is_lost(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    no_folder = tmp_path / "a file"
    no_folder.write_text("", "utf-8")
    monkeypatch.setattr(Path, "home", lambda: no_folder)
    said = rescue(Leavings(readings=room(5), records=2, trouble="The disk is full."), no_folder / "nowhere")
    assert "lost: 5 of the readings from 2026-03-02T09:00:00.000Z to 2026-03-02T09:00:04.000Z" in said
    assert "notes: 2" in said


def test_that_nothing_left_is_nothing_said(tmp_path: Path) -> None:
    assert rescue(Leavings(), tmp_path) == ""
    assert list(tmp_path.iterdir()) == []
