"""What she accepted of a board's columns is found again for that board, whatever its port is called."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.mapping_memory import MappingMemory
from studiowatch.board.port import PortSeen

BOARD = PortSeen(name="COM7", vid=0x1A86, pid=0x7523, serial="5")


def accepted() -> ColumnMapping:
    intake = LooseIntake()
    intake.feed(b"\n" + b"Temp: 21.0 C, Humidity: 47.0 %\n" * 8, 0)
    assert intake.mapping is not None
    return intake.mapping


def test_that_a_mapping_is_recalled_for_the_same_board_on_another_port(tmp_path: Path) -> None:
    MappingMemory(tmp_path / "columns.json").keep(BOARD, accepted())
    memory = MappingMemory(tmp_path / "columns.json")
    assert memory.recall(replace(BOARD, name="COM9")) == accepted()
    assert memory.recall(replace(BOARD, serial="6")) is None
    assert memory.recall(PortSeen(name="COM7")) is None


def test_that_boards_without_numbers_are_known_by_their_port(tmp_path: Path) -> None:
    memory = MappingMemory(tmp_path / "columns.json")
    memory.keep(PortSeen(name="/dev/ttyS0"), accepted())
    memory.keep(BOARD, accepted())
    assert memory.recall(PortSeen(name="/dev/ttyS0")) == accepted()
    assert memory.recall(PortSeen(name="/dev/ttyS1")) is None


@pytest.mark.parametrize("text", ["", "[1]", '{"usb 1a86:7523 5": 3}', '{"usb 1a86:7523 5": {"style": "x"}}', "\x00"])
def test_that_a_spoilt_file_costs_the_memory_and_nothing_else(
    tmp_path: Path, text: str, caplog: pytest.LogCaptureFixture
) -> None:
    path = tmp_path / "columns.json"
    path.write_text(text, "utf-8")
    memory = MappingMemory(path)
    assert memory.recall(BOARD) is None
    assert "columns.json" in caplog.text
    memory.keep(BOARD, accepted())
    assert memory.recall(BOARD) == accepted()


def test_that_a_file_that_cannot_be_read_just_now_loses_no_other_board(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    other = replace(BOARD, serial="6")
    memory = MappingMemory(tmp_path / "columns.json")
    memory.keep(BOARD, accepted())

    def locked(path: Path, *_how: object) -> str:
        raise PermissionError(13, "in use by another program", str(path))

    with monkeypatch.context() as while_locked:
        while_locked.setattr(Path, "read_text", locked)
        assert memory.recall(BOARD) is None
        with pytest.raises(PermissionError, match="in use by another program"):
            memory.keep(other, accepted())
    assert memory.recall(BOARD) == accepted()
